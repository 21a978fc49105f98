"""The other libraries: each function gives (low, middle, high, seconds and processor seconds of the point fit, of all)."""
import multiprocessing
import os
import time
from concurrent.futures import ProcessPoolExecutor

os.environ.setdefault("OMP_WAIT_POLICY", "passive")

import numpy as np
import pandas as pd
import xgboost as xgb
from sklearn.compose import make_column_transformer
from sklearn.ensemble import HistGradientBoostingRegressor as Hist
from sklearn.linear_model import LinearRegression
from sklearn.model_selection import KFold
from sklearn.pipeline import make_pipeline
from sklearn.preprocessing import OneHotEncoder

NORMAL_90 = 1.2815515655446004
MOST_TO_TUNE = 10_000


class Watch:
    def __init__(self):
        self.wall, self.busy = time.time(), time.process_time()

    def read(self):
        return time.time() - self.wall, time.process_time() - self.busy


def error(setting, x, y, cats):
    errors = []
    for a, b in KFold(3, shuffle=True, random_state=0).split(x):
        m = Hist(**setting, categorical_features=cats, early_stopping=False, random_state=0).fit(x[a], y[a])
        errors.append(np.median(np.abs(np.expm1(m.predict(x[b]) - y[b]))))
    return np.mean(errors)


def errors(settings, x, y, cats):
    """Of each setting, side by side in processes of one thread, which is quicker than one after another in threads."""
    threads = os.environ.get("OMP_NUM_THREADS")
    os.environ["OMP_NUM_THREADS"] = "1"
    try:
        with ProcessPoolExecutor(os.cpu_count(), multiprocessing.get_context("spawn")) as pool:
            return [f.result() for f in [pool.submit(error, s, x, y, cats) for s in settings]]
    finally:
        del os.environ["OMP_NUM_THREADS"]
        if threads:
            os.environ["OMP_NUM_THREADS"] = threads


def tuned(x, y, cats):
    """
    Setting of histogram boosting with the least median error in 3-fold cross-validation of at most 10,000 training
    rows: first the loss, then size, step and number of the trees, then the least leaf.
    """
    some = np.random.default_rng(0).permutation(len(y))[:MOST_TO_TUNE]
    x, y = x[some], y[some]
    best = dict(loss="squared_error", max_leaf_nodes=31, learning_rate=0.1, max_iter=300, min_samples_leaf=20)
    stages = [
        [dict(), dict(loss="absolute_error")],
        [dict(), dict(max_leaf_nodes=64, learning_rate=0.06), dict(max_leaf_nodes=16), dict(learning_rate=0.05)],
        [dict(), dict(min_samples_leaf=5)]]
    for changes in stages:
        scores = errors([best | change for change in changes], x, y, cats)
        best = best | changes[int(np.argmin(scores))]
    return best


def hist(x, y, xt, cats, setting):
    common = dict(categorical_features=cats, early_stopping=False, random_state=0)
    watch = Watch()
    middle = Hist(**setting, **common).fit(x, y).predict(xt)
    point = watch.read()
    quantile = {k: v for k, v in setting.items() if k != "loss"}
    low, high = (Hist(loss="quantile", quantile=q, **quantile, **common).fit(x, y).predict(xt) for q in (0.1, 0.9))
    return low, middle, high, point, watch.read()


def boosted(x, y, xt, cats):
    names = [f"f{i}" for i in range(x.shape[1])]
    types = ["c" if i in cats else "q" for i in range(x.shape[1])]
    watch = Watch()
    a = xgb.DMatrix(x, y, feature_names=names, feature_types=types, enable_categorical=True)
    b = xgb.DMatrix(xt, feature_names=names, feature_types=types, enable_categorical=True)
    m = xgb.train(dict(tree_method="hist", nthread=2, seed=0, max_depth=0, max_leaves=64, grow_policy="lossguide",
                       eta=0.05, subsample=0.8, colsample_bytree=0.7, min_child_weight=5), a, 400)
    middle = m.predict(b)
    return None, middle, None, watch.read(), watch.read()


def linear(train, test, y, spec):
    """Dummies, make with model, squares; interval of a normal residual."""
    watch = Watch()
    frames = []
    for f in (train, test):
        g = f[spec["words"]].fillna("?").astype(str).copy()
        if "model" in g:
            g["mm"] = g["make"] + "|" + g["model"]
        for n in spec["numbers"]:
            v = pd.to_numeric(f[n], errors="coerce")
            g["has_" + n] = v.notna().astype(float)
            known = pd.to_numeric(train[n], errors="coerce")
            z = ((v.fillna(known.median()) - known.median()) / max(known.std(), 1e-9)).clip(-5, 5)
            g[n], g[n + "2"] = z, z ** 2
        frames.append(g)
    words = [c for c in frames[0] if c in spec["words"] + ["mm"]]
    encode = make_column_transformer((OneHotEncoder(handle_unknown="ignore"), words), remainder="passthrough")
    model = make_pipeline(encode, LinearRegression()).fit(frames[0], y)
    middle = model.predict(frames[1])
    reach = NORMAL_90 * np.std(y - model.predict(frames[0]))
    return middle - reach, middle, middle + reach, watch.read(), watch.read()
