"""Pictures for a model card: held-out residuals by age, mileage and make, and the learning curve.

Usage: pictures.py MODEL OUT.csv [CURVE.csv], for example
    pictures.py us target/benchmark/us_classifieds_2018_19_cars_standard_out.csv target/benchmark/us_curve.csv
OUT.csv is what Benchmark.java wrote, CURVE.csv what `benchmark.py curve` printed; their names tell the setting.
Writes docs/valuation/MODEL_*.png and puts them at the end of models/MODEL.md.
"""
import sys

import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt
import numpy as np
import pandas as pd

INK, BAND, ZERO = "#1f3a5f", "#9db8d9", "#999999"
MAKES = 14
HEADING = "\n## Pictures\n"


def by_bins(ax, value, left, title, bins=14):
    """10, 50 and 90 % of the residuals in bins of equally many cars, at the middle of each."""
    known = np.isfinite(value)
    value, left = value[known], left[known]
    edges = np.unique(np.quantile(value, np.linspace(0, 1, bins + 1)))
    place = np.clip(np.searchsorted(edges, value, side="right") - 1, 0, len(edges) - 2)
    groups = [g for g in range(len(edges) - 1) if (place == g).sum() >= 10]
    x = [np.median(value[place == g]) for g in groups]
    q = np.array([np.quantile(left[place == g], [.1, .5, .9]) for g in groups])
    ax.fill_between(x, q[:, 0], q[:, 2], color=BAND, label="10 to 90 %")
    ax.plot(x, q[:, 1], color=INK, marker="o", markersize=3, label="median")
    ax.set_xlabel(title)


def by_make(ax, make, left):
    top = make.value_counts().index[:MAKES][::-1]
    for i, m in enumerate(top):
        low, middle, high = np.quantile(left[(make == m).to_numpy()], [.1, .5, .9])
        ax.plot([low, high], [i, i], color=BAND, linewidth=6, solid_capstyle="butt")
        ax.plot(middle, i, "o", color=INK, markersize=4)
    ax.set_yticks(range(len(top)), [f"{m} ({(make == m).sum()})" for m in top], fontsize=7)


def residuals(model, out):
    d = pd.read_csv(out)
    left = (np.log(d["price"]) - np.log(d["q50"])).to_numpy()
    figure, axes = plt.subplots(1, 3, figsize=(11, 4), gridspec_kw=dict(width_ratios=[1, 1, 1.1]))
    by_bins(axes[0], d["age"].to_numpy(), left, "age, years")
    by_bins(axes[1], d["miles"].to_numpy() / 1000, left, "odometer, thousand miles")
    by_make(axes[2], d["make"], left)
    limit = 1.1 * max(max(abs(v) for v in ax.get_ylim()) for ax in axes[:2])
    for ax in axes[:2]:
        ax.set_ylim(-limit, limit)
        ax.axhline(0, color=ZERO, linewidth=0.8)
        ax.set_ylabel("ln price less predicted median")
    axes[2].axvline(0, color=ZERO, linewidth=0.8)
    axes[2].set_xlabel("the same by make (adverts)")
    axes[0].legend(frameon=False, fontsize=8)
    figure.suptitle(f"{len(d):,} adverts kept apart from the fit", fontsize=10)
    return save(figure, f"{model}_residuals")


def curve(model, file):
    d = pd.read_csv(file)
    figure, ax = plt.subplots(figsize=(5.5, 3.4))
    ax.plot(d["rows"], 100 * d["median"], color=INK, marker="o")
    for rows, error in zip(d["rows"], d["median"]):
        ax.annotate(f"{100 * error:.1f}", (rows, 100 * error), textcoords="offset points", xytext=(4, 6), fontsize=8)
    ax.set_xscale("log")
    ax.set_xticks(d["rows"], [f"{r:,}" for r in d["rows"]], fontsize=8)
    ax.minorticks_off()
    ax.margins(0.12)
    ax.set_xlabel("rows fitted on")
    ax.set_ylabel(f"median error, %, {setting_of(file)} setting")
    return save(figure, f"{model}_curve")


def setting_of(file):
    return "quick" if "quick" in file else "standard"


def save(figure, name):
    figure.tight_layout()
    path = f"docs/valuation/{name}.png"
    figure.savefig(path, dpi=90, metadata={"Software": None})
    return path


def main():
    model, out = sys.argv[1:3]
    pictures = {"Residuals by age, mileage and make": residuals(model, out)}
    if len(sys.argv) > 3:
        pictures["Learning curve"] = curve(model, sys.argv[3])
    held = "single adverts" if "_adverts_" in out else "all adverts of a car"
    card = f"models/{model}.md"
    with open(card, encoding="utf-8") as f:
        text = f.read().split(HEADING)[0]
    with open(card, "w", encoding="utf-8") as f:
        f.write(text + HEADING + f"\nOf a model ({setting_of(out)} setting) fitted on four fifths and judged on the rest, "
                f"{held} kept apart; `src/bench/valuation/pictures.py`.\n")
        f.write("".join(f"\n![{title}](../{path})\n" for title, path in pictures.items()))


if __name__ == "__main__":
    main()
