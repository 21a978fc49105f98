"""Reads what JudgeBench and judgement.py printed and writes one table, and a picture of it."""
import re
import sys

import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt  # noqa: E402  (after the way of drawing is set)


def number(x):
    return f"{x:,.0f}" if x >= 20 else f"{x:.1f}"


def main():
    with open(sys.argv[1], encoding="utf-8") as file:
        lines = file.read().splitlines()
    rounds = [line for line in lines if re.match(r"\s*\d+\s", line)]
    last = [float(x) for x in re.findall(r"([\d.]+) \(", rounds[-1])]
    first = float(re.findall(r"([\d.]+) \(", rounds[0])[0])
    ours, anew = (float(x) for x in re.findall(r"([\d.]+) \(", next(l for l in lines if l.startswith("tornado"))))
    with open(sys.argv[2], encoding="utf-8") as file:
        numpy = float(file.read().split(",")[0])
    rows = [
        ("judgement, exact, cheapest repair", last[0], "numpy: weighted draws, each item its own job", numpy),
        ("the same in the first round, not yet compiled", first, "", None),
        ("price moved", last[2], "judging anew", last[0]),
        ("money line moved", last[3], "judging anew", last[0]),
        ("tornado over the money lines", ours, "drawing anew for each end", anew),
    ]
    print("| what | ms | alternative | ms | alternative takes |\n|---|---|---|---|---|")
    for what, ms, other, theirs in rows:
        times = "" if theirs is None else f"{number(theirs / ms)} times as long"
        print(f"| {what} | {number(ms)} | {other} | {'' if theirs is None else number(theirs)} | {times} |")
    figure, axes = plt.subplots(figsize=(7, 2.6))
    shown = [r for r in rows if r[3] is not None]
    places = range(len(shown))
    axes.barh([p - 0.2 for p in places], [r[1] for r in shown], 0.38, label="Worthsaving", color="#2b5b8c")
    axes.barh([p + 0.2 for p in places], [r[3] for r in shown], 0.38, label="alternative", color="#b9c4d0")
    for p, row in zip(places, shown):
        axes.text(row[3] * 1.06, p + 0.2, row[2], va="center", fontsize=7)
    axes.set_yticks(list(places), [r[0] for r in shown], fontsize=8)
    axes.set_xscale("log")
    axes.set_xlim(0.5, max(r[3] for r in shown) * 40)
    axes.set_xlabel("processor milliseconds per car, one thread", fontsize=8)
    axes.tick_params(axis="x", labelsize=8)
    axes.invert_yaxis()
    axes.xaxis.set_major_formatter(lambda x, _: f"{x:,.0f}")
    axes.legend(fontsize=7, loc="center right")
    for side in ("top", "right"):
        axes.spines[side].set_visible(False)
    figure.tight_layout()
    figure.savefig(sys.argv[3], dpi=130)


if __name__ == "__main__":
    main()
