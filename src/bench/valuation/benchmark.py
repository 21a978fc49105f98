"""Price models on the same seeded splits: this project's, scikit-learn's and XGBoost's. See run.sh.

Usage: benchmark.py tables|time DATA_FOLDER [set ...] prints Markdown; benchmark.py curve DATA_FOLDER set [quick]
prints CSV. Settings of the libraries are tuned on the training part alone; the other part is judged once.
"""
import json
import multiprocessing
import os
import resource
import subprocess
import sys

import numpy as np
import pandas as pd

import rivals
from price_sets import SETS, WORK, codes, repeats, splits, write

CLASSES = os.environ.get("BENCH_CLASSES", "target/benchmark/classes" + os.pathsep + "target/classes")
JAVA = ["java", "-Xmx3g", "-cp", CLASSES + os.pathsep + "target/lib/*", "Benchmark"]
FEW_REPEATS = 0.02
HEADER = ("| model | median % | mean % | R2 ln | pinball 10 | 50 | 90 | coverage % | width ln | by predicted band | "
          "by real band | point fit s | all s | processor s | peak MB |\n|" + "---|" * 15)


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


def shape(name):
    own = f"src/bench/valuation/{name}.properties"
    return own if os.path.exists(own) else f"shared/market/{name}.properties"


def ours(name, kind, train, test, setting):
    stem = f"{name}_{kind}"
    out = f"{WORK}/{stem}_{setting}_out.csv"
    arguments = [write(train, stem + "_train"), write(test, stem + "_test"), shape(name), out, kind, setting]
    process = subprocess.Popen(JAVA + arguments, stdout=subprocess.PIPE, text=True)
    text = process.stdout.read()
    _, status, usage = os.wait4(process.pid, 0)
    if status != 0:
        raise RuntimeError(f"Benchmark {arguments} failed")
    q = pd.read_csv(out).set_index("line").reindex(np.arange(len(test)) + 2)
    q = np.log(q[["q10", "q50", "q90"]].to_numpy())
    times = tuple(float(t) for t in text.split())
    return (q[:, 0], q[:, 1], q[:, 2], times, times), usage.ru_maxrss / 1024


# The rivals' settings are chosen on so many rows at most; beyond, only the quick ones take part.
MOST_TUNED = 200_000


def pinball(y, q, p):
    return np.mean(np.maximum(p * (y - q), (p - 1) * (y - q)))


def inside_by(bands, inside):
    return " ".join(f"{100 * inside[bands == b].mean():.0f}" for b in range(5))


def report(label, parts, y):
    """One line from the answers on all the parts of one set, joined."""
    y = np.concatenate(y)
    low, middle, high = (None if parts[0][0][i] is None else np.concatenate([p[0][i] for p in parts]) for i in range(3))
    point, whole = (np.sum([p[0][i] for p in parts], axis=0) for i in (3, 4))
    ok = np.isfinite(middle)
    y, middle = y[ok], middle[ok]
    error = np.abs(np.expm1(middle - y))
    r2 = 1 - np.sum((y - middle) ** 2) / np.sum((y - y.mean()) ** 2)
    row = [label, f"{100 * np.median(error):.2f}", f"{100 * error.mean():.1f}", f"{r2:.4f}"]
    if low is None:
        row += ["-", f"{pinball(y, middle, .5):.5f}"] + ["-"] * 5
    else:
        low, high = low[ok], high[ok]
        inside = (y >= low) & (y <= high)
        row += [f"{pinball(y, q, p):.5f}" for q, p in ((low, .1), (middle, .5), (high, .9))]
        row += [f"{100 * inside.mean():.1f}", f"{np.mean(high - low):.3f}"]
        row += [inside_by(np.searchsorted(np.quantile(v, [.2, .4, .6, .8]), v), inside) for v in (middle, y)]
    row += [f"{point[0]:.1f}", f"{whole[0]:.1f}", f"{whole[1]:.1f}", f"{max(p[1] for p in parts):.0f}"]
    print("| " + " | ".join(row) + " |", flush=True)


def table(name, kind, folder, settings=("standard", "quick"), libraries=("hist", "xgboost", "linear"), resample=0):
    spec = SETS[name]
    cats = list(range(len(spec["words"])))
    pairs = list(splits(name, kind, folder))
    if resample:
        more = np.random.default_rng(1).integers(0, len(pairs[0][0]), resample)
        pairs = [(pairs[0][0].iloc[more].reset_index(drop=True), pairs[0][1])]
    y = [np.log(train[spec["price"]].to_numpy()) for train, _ in pairs]
    yt = [np.log(test[spec["price"]].to_numpy()) for _, test in pairs]
    xs = [codes(train, test, spec) for train, test in pairs]
    few = slice(0, MOST_TUNED if resample > MOST_TUNED else None)
    setting = rivals.tuned(xs[0][0][few], y[0][few], cats) if "hist" in libraries else None
    print(f"\n### {name}, split by {kind}: {len(y[0]):,} rows to fit, {sum(map(len, yt)):,} judged"
          + (f" in {len(yt)} parts (times are of all)" if len(yt) > 1 else "") + "\n")
    print(f"scikit-learn's boosting chose {json.dumps(setting)}.\n\n{HEADER}", flush=True)
    for s in settings:
        report(f"this project, {s}", [ours(name, kind, train, test, s) for train, test in pairs], yt)
    if "hist" in libraries:
        report("scikit-learn boosting, tuned",
               [apart(rivals.hist, x, b, xt, cats, setting) for (x, xt), b in zip(xs, y)], yt)
    if "xgboost" in libraries:
        report("XGBoost", [apart(rivals.boosted, x, b, xt, cats) for (x, xt), b in zip(xs, y)], yt)
    if "linear" in libraries:
        report("scikit-learn linear", [apart(rivals.linear, a, t, b, spec) for (a, t), b in zip(pairs, y)], yt)


def curve(name, folder, setting="standard"):
    """Error against rows to fit on, for the picture; 20 % of the cars judge every point."""
    kind = "cars" if repeats(name, folder) > FEW_REPEATS else "adverts"
    train, test = next(iter(splits(name, kind, folder)))
    y = np.log(test[SETS[name]["price"]].to_numpy())
    print("rows,median,mean", flush=True)
    for share in (1 / 16, 1 / 8, 1 / 4, 1 / 2, 1):
        part = train.iloc[:int(len(train) * share)]
        (_, middle, _, _, _), _ = ours(name, kind, part, test, setting)
        error = np.abs(np.expm1(middle - y))
        print(f"{len(part)},{np.nanmedian(error):.5f},{np.nanmean(error):.5f}", flush=True)


def main():
    what, folder, names = sys.argv[1], sys.argv[2], sys.argv[3:]
    if what == "time":
        for rows in [int(n) for n in names] or [100_000]:
            many = rows > MOST_TUNED
            table("uk_listings_2020", "adverts", folder, ("quick",) if many else ("standard", "quick"),
                  ("hist",) if many else ("hist", "xgboost", "linear"), rows)
        return
    if what == "curve":
        curve(names[0], folder, *names[1:])
        return
    for name in names or list(SETS):
        share = repeats(name, folder)
        for kind in ("adverts", "cars") if share > FEW_REPEATS else ("adverts",):
            table(name, kind, folder)
        if share <= FEW_REPEATS:
            print(f"\n{100 * share:.1f} % of the rows are repeated adverts: a split by cars would be the same.")


if __name__ == "__main__":
    main()
