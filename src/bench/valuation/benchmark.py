"""Price models on the same split: this project's, scikit-learn's and XGBoost's.

Needs Debian's python3-sklearn, python3-xgboost and python3-pandas, a compiled project (mvn package) and the
folder of data sets. Usage: /usr/bin/python3 src/bench/valuation/benchmark.py DATA_FOLDER [set ...]
Prints Markdown. Splits: "adverts", 80/20 of all rows at random; "cars", 80/20 of distinct cars (same build and
odometer, and same price where the odometer is a round figure), which is the honest one: a repeated advert never lies
on both sides.
"""
import multiprocessing
import os
import resource
import subprocess
import sys
import time

os.environ.setdefault("OMP_WAIT_POLICY", "passive")

import numpy as np
import pandas as pd
import xgboost as xgb
from sklearn.compose import make_column_transformer
from sklearn.ensemble import HistGradientBoostingRegressor as Hist
from sklearn.linear_model import LinearRegression
from sklearn.model_selection import GroupKFold
from sklearn.pipeline import make_pipeline
from sklearn.preprocessing import OneHotEncoder

WORK = "target/benchmark"
SETS = {
    "us_classifieds_2018_19": dict(
        price="price_usd", year="year", odo="odometer_mi", date="date_posted",
        words=["make", "model", "condition", "fuel", "transmission", "body"],
        numbers=["year", "odometer_mi", "cylinders", "awd"]),
    "uk_listings_2020": dict(
        price="price_gbp", year="reg_year", odo="odometer_mi", date=None,
        words=["make", "model", "transmission", "fuel"], numbers=["reg_year", "odometer_mi", "engine_l"]),
    "de_classifieds_2016_damage": dict(
        price="price_eur", year="reg_year", odo="odometer_km_band", date=None,
        words=["make", "model", "gearbox", "fuel", "body"],
        numbers=["reg_year", "odometer_km_band", "power_ps", "unrepaired_damage"]),
    "us_classifieds_2020_21_title": dict(
        price="price_usd", year="year", odo="odometer_mi", date=None,
        words=["make", "model", "condition", "title", "body", "fuel"], numbers=["year", "odometer_mi"]),
}
JAVA = ["java", "-Xmx3g", "-cp", "target/classes" + os.pathsep + "target/lib/*"]


def split(name, spec, folder, kind):
    """Writes the two halves and returns the frames; group is the car."""
    d = pd.read_csv(f"{folder}/{name}.csv")
    d = d[d[spec["price"]] > 0].reset_index(drop=True)
    build = [c for c in spec["words"] + spec["numbers"] if c not in ("condition", "title", "unrepaired_damage", "awd")]
    odo = d[spec["odo"]]
    shared = odo.isna() | (odo % 500 == 0) | (odo < 1000)
    same = d[build].astype(str).agg("|".join, axis=1)
    same = same.where(~shared, same + "|" + d[spec["price"]].astype(str))
    d["group"] = pd.factorize(same)[0]
    rng = np.random.default_rng(20260101)
    if kind == "cars":
        d = d.drop_duplicates("group").reset_index(drop=True)
    order = rng.permutation(len(d))
    cut = int(0.8 * len(d))
    train, test = d.iloc[order[:cut]].reset_index(drop=True), d.iloc[order[cut:]].reset_index(drop=True)
    os.makedirs(WORK, exist_ok=True)
    for part, frame in (("train", train), ("test", test)):
        frame.drop(columns="group").to_csv(f"{WORK}/{name}_{kind}_{part}.csv", index=False)
    return train, test


def codes(train, test, spec):
    """Words as codes (most frequent 250 levels), numbers as they are."""
    columns = []
    for w in spec["words"]:
        top = train[w].fillna("?").value_counts().index[:250]
        place = {v: i for i, v in enumerate(top)}
        columns.append([f[w].fillna("?").map(place).astype(float) for f in (train, test)])
    for n in spec["numbers"]:
        columns.append([pd.to_numeric(f[n], errors="coerce") for f in (train, test)])
    return [np.column_stack([c[i] for c in columns]) for i in (0, 1)]


def tuned(x, y, groups, cats):
    """Setting of histogram boosting with the least median error in 3-fold cross-validation on the training rows."""
    best = None
    for loss in ("squared_error", "absolute_error"):
        for leaves, rate, rounds in ((31, 0.06, 300), (64, 0.06, 600), (31, 0.06, 600)):
            errors = []
            for a, b in GroupKFold(3).split(x, y, groups):
                m = Hist(loss=loss, max_leaf_nodes=leaves, learning_rate=rate, max_iter=rounds,
                         categorical_features=cats, early_stopping=False, random_state=0).fit(x[a], y[a])
                errors.append(np.median(np.abs(np.expm1(m.predict(x[b]) - y[b]))))
            if best is None or np.mean(errors) < best[0]:
                best = (np.mean(errors), dict(loss=loss, max_leaf_nodes=leaves, learning_rate=rate, max_iter=rounds))
    return best[1]


def hist(x, y, xt, cats, setting):
    common = dict(categorical_features=cats, early_stopping=False, random_state=0)
    start = time.time()
    middle = Hist(**setting, **common).fit(x, y).predict(xt)
    point = time.time() - start
    quantile = {k: v for k, v in setting.items() if k != "loss"}
    quantile["max_iter"] = min(300, quantile["max_iter"])
    low, high = (Hist(loss="quantile", quantile=q, **quantile, **common).fit(x, y).predict(xt) for q in (0.1, 0.9))
    return low, middle, high, time.time() - start, point


def boosted(x, y, xt, cats):
    names = [f"f{i}" for i in range(x.shape[1])]
    types = ["c" if i in cats else "q" for i in range(x.shape[1])]
    start = time.time()
    a = xgb.DMatrix(x, y, feature_names=names, feature_types=types, enable_categorical=True)
    b = xgb.DMatrix(xt, feature_names=names, feature_types=types, enable_categorical=True)
    m = xgb.train(dict(tree_method="hist", nthread=2, seed=0, max_depth=0, max_leaves=64, grow_policy="lossguide",
                       eta=0.05, subsample=0.8, colsample_bytree=0.7, min_child_weight=5), a, 600)
    middle = m.predict(b)
    seconds = time.time() - start
    return None, middle, None, seconds, seconds


def linear(train, test, y, spec):
    start = time.time()
    frames = []
    for f in (train, test):
        g = f[spec["words"]].fillna("?").astype(str).copy()
        g["mm"] = g["make"] + "|" + g["model"]
        for n in spec["numbers"]:
            v = pd.to_numeric(f[n], errors="coerce")
            g["has_" + n] = v.notna().astype(float)
            known = pd.to_numeric(train[n], errors="coerce")
            z = ((v.fillna(known.median()) - known.median()) / max(known.std(), 1e-9)).clip(-5, 5)
            g[n], g[n + "2"] = z, z ** 2
        frames.append(g)
    words = spec["words"] + ["mm"]
    encode = make_column_transformer((OneHotEncoder(handle_unknown="ignore"), words), remainder="passthrough")
    middle = make_pipeline(encode, LinearRegression()).fit(frames[0], y).predict(frames[1])
    seconds = time.time() - start
    return None, middle, None, seconds, seconds


def child(pipe, function, args):
    pipe.send((function(*args), resource.getrusage(resource.RUSAGE_SELF).ru_maxrss / 1024))


def apart(function, *args):
    """Runs in a fresh process (a forked one would hang in OpenMP) and adds its peak memory in MB."""
    context = multiprocessing.get_context("spawn")
    ours, theirs = context.Pipe()
    process = context.Process(target=child, args=(theirs, function, args))
    process.start()
    answer = ours.recv()
    process.join()
    return answer


def picture(name, spec, test, residual):
    """Held-out residuals of ln price by age, mileage and make: 10, 50 and 90 % in each bin, as SVG."""
    odo = pd.to_numeric(test[spec["odo"]], errors="coerce")
    panels = [
        ("model year", test[spec["year"]].where(test[spec["year"]] > 1990), 12),
        ("odometer, as in the data", odo.where(odo < odo.quantile(0.99)), 12),
        ("make, by count", test["make"], 0)]
    out = ['<svg xmlns="http://www.w3.org/2000/svg" width="980" height="330" font-family="sans-serif" font-size="11">',
           f'<text x="20" y="18" font-size="13">{name}: ln price less prediction, held out (10, 50, 90 %)</text>']
    for p, (title, value, bins) in enumerate(panels):
        left = 40 + 320 * p
        out.append(f'<text x="{left}" y="40">{title}</text>')
        for tick in (-1, -0.5, 0, 0.5, 1):
            y = 160 - 110 * tick
            out.append(f'<line x1="{left}" x2="{left + 270}" y1="{y}" y2="{y}" stroke="#ccc"/>'
                       f'<text x="{left - 28}" y="{y + 4}">{tick}</text>')
        if bins:
            group = pd.cut(value, np.unique(value.quantile(np.linspace(0, 1, bins + 1))), include_lowest=True)
            groups = [(f"{c.right:.0f}", residual[(group == c).to_numpy()]) for c in group.cat.categories]
        else:
            groups = [(m, residual[(value == m).to_numpy()]) for m in value.value_counts().index[:12]]
        for i, (label, r) in enumerate(groups):
            if len(r) == 0:
                continue
            x = left + 10 + i * 260 / len(groups)
            low, mid, high = (160 - 110 * np.clip(q, -1.1, 1.1) for q in np.quantile(r, [0.1, 0.5, 0.9]))
            out.append(f'<line x1="{x:.1f}" x2="{x:.1f}" y1="{low:.1f}" y2="{high:.1f}" stroke="#357" stroke-width="5"/>'
                       f'<circle cx="{x:.1f}" cy="{mid:.1f}" r="4" fill="#c40"/>'
                       f'<text transform="translate({x - 3:.1f},290) rotate(60)" font-size="9">{label}</text>')
    os.makedirs("docs/valuation", exist_ok=True)
    with open(f"docs/valuation/{name}_residuals.svg", "w") as f:
        f.write("\n".join(out + ["</svg>\n"]))


def curve(name, spec, train, test, yt):
    """Median error of this project against the number of rows it is fitted on."""
    print(f"\nLearning curve of {name}, split by cars:\n\n| rows | median % |\n|---|---|")
    for share in (0.125, 0.25, 0.5, 1):
        part = train.iloc[:int(len(train) * share)]
        part.drop(columns="group").to_csv(f"{WORK}/{name}_curve_train.csv", index=False)
        test.drop(columns="group").to_csv(f"{WORK}/{name}_curve_test.csv", index=False)
        (_, middle, _, _, _), _ = ours(name, "curve", test)
        error = np.abs(np.expm1(middle - yt))
        print(f"| {len(part):,} | {100 * np.nanmedian(error):.2f} |", flush=True)


def ours(name, kind, test):
    out = f"{WORK}/{name}_{kind}_out.csv"
    before = resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss
    run = subprocess.run(
        JAVA + ["src/bench/valuation/Benchmark.java", f"{WORK}/{name}_{kind}_train.csv",
                          f"{WORK}/{name}_{kind}_test.csv", f"shared/market/{name}.properties", out,
                          "all" if kind == "adverts" else "distinct"],
        check=True, capture_output=True, text=True)
    memory = max(before, resource.getrusage(resource.RUSAGE_CHILDREN).ru_maxrss) / 1024
    q = pd.read_csv(out).set_index("line").reindex(np.arange(len(test)) + 2)
    q = np.log(q[["q10", "q50", "q90"]].to_numpy())
    seconds = float(run.stdout)
    return (q[:, 0], q[:, 1], q[:, 2], seconds, seconds), memory


def pinball(y, q, p):
    return np.mean(np.maximum(p * (y - q), (p - 1) * (y - q)))


def report(label, result, y):
    (low, middle, high, seconds, point), memory = result
    ok = np.isfinite(middle)
    y, middle = y[ok], middle[ok]
    error = np.abs(np.expm1(middle - y))
    r2 = 1 - np.sum((y - middle) ** 2) / np.sum((y - y.mean()) ** 2)
    row = [label, f"{100 * np.median(error):.2f}", f"{100 * error.mean():.1f}", f"{r2:.4f}"]
    if low is None:
        row += ["-", f"{pinball(y, middle, .5):.5f}", "-"] + ["-"] * 7
    else:
        low, high = low[ok], high[ok]
        inside = (y >= low) & (y <= high)
        band = np.searchsorted(np.quantile(middle, [.2, .4, .6, .8]), middle)
        real = np.searchsorted(np.quantile(y, [.2, .4, .6, .8]), y)
        row += [f"{pinball(y, low, .1):.5f}", f"{pinball(y, middle, .5):.5f}", f"{pinball(y, high, .9):.5f}",
                f"{100 * inside.mean():.1f}", f"{np.mean(high - low):.3f}"]
        row += [" ".join(f"{100 * inside[band == b].mean():.0f}" for b in range(5)),
                " ".join(f"{100 * inside[real == b].mean():.0f}" for b in range(5))]
        row += [f"{point:.1f}", f"{seconds:.1f}"]
    if low is None:
        row = row[:7] + ["-", "-", "-", "-", f"{point:.1f}", f"{seconds:.1f}"]
    print("| " + " | ".join(row + [f"{memory:.0f}"]) + " |", flush=True)


def main():
    folder, names = sys.argv[1], sys.argv[2:] or list(SETS)
    for name in names:
        spec = SETS[name]
        for kind in ("adverts", "cars"):
            train, test = split(name, spec, folder, kind)
            y, yt = np.log(train[spec["price"]].to_numpy()), np.log(test[spec["price"]].to_numpy())
            x, xt = codes(train, test, spec)
            cats = list(range(len(spec["words"])))
            setting = tuned(x, y, train["group"], cats)
            print(f"\n### {name}, split by {kind}: {len(train):,} to fit, {len(test):,} kept apart\n")
            print(f"Histogram boosting chose {setting}.\n")
            print("| model | median % | mean % | R2 ln | pinball 10 | 50 | 90 | coverage % | width ln | by predicted band "
                  "| by real band | fit point s | fit all s | peak MB |")
            print("|" + "---|" * 14)
            result = ours(name, kind, test)
            report("this project", result, yt)
            if kind == "cars":
                picture(name, spec, test, yt - result[0][1])
            report("scikit-learn hist. boosting, tuned", apart(hist, x, y, xt, cats, setting), yt)
            report("XGBoost", apart(boosted, x, y, xt, cats), yt)
            report("scikit-learn linear", apart(linear, train, test, y, spec), yt)
            if kind == "cars" and name == "us_classifieds_2018_19":
                curve(name, spec, train, test, yt)


if __name__ == "__main__":
    main()
