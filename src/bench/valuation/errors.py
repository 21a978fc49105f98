"""One picture of the tables in docs/valuation-benchmark.md: median error of each model by set.

Usage: errors.py writes docs/valuation/errors.png from the tables below the headings "### SET ...".
"""
import re

import matplotlib

matplotlib.use("Agg")
import matplotlib.pyplot as plt

PAGE, PICTURE = "docs/valuation-benchmark.md", "docs/valuation/errors.png"
MODELS = {
    "this project, standard": ("#1f3a5f", "o"), "this project, quick": ("#6c93c4", "o"),
    "scikit-learn boosting, tuned": ("#c2571a", "s"), "XGBoost": ("#8a8a3a", "^"),
    "scikit-learn linear": ("#999999", "D"),
}


def tables():
    """Pairs of a heading and the median error of each model named in it."""
    found = {}
    for part in re.split(r"^### ", open(PAGE, encoding="utf-8").read(), flags=re.M)[1:]:
        heading = part.split("\n", 1)[0].split(":")[0]
        errors = {}
        for line in part.split("\n"):
            cells = [c.strip() for c in line.strip("|").split("|")]
            name = next((m for m in MODELS if cells[0].startswith(m)), None)
            if line.startswith("| ") and name:
                errors.setdefault(name, float(cells[1]))
        if errors:
            found[heading] = errors
    return found


def main():
    found = tables()
    figure, ax = plt.subplots(figsize=(8, 1.2 + 0.5 * len(found)))
    for row, (heading, errors) in enumerate(found.items()):
        ax.plot([min(errors.values()), max(errors.values())], [row, row], color="#dddddd", zorder=0)
        for name, error in errors.items():
            colour, marker = MODELS[name]
            ax.plot(error, row, marker, color=colour, markersize=6, label=name if row == 0 else None)
    ax.set_yticks(range(len(found)), list(found), fontsize=8)
    ax.invert_yaxis()
    ax.set_xscale("log")
    ax.set_xticks([5, 10, 20, 30], ["5", "10", "20", "30"])
    ax.minorticks_off()
    ax.set_xlabel("median absolute error, % of the price (further left is better)")
    handles = [plt.Line2D([], [], linestyle="", marker=m, color=c, label=n) for n, (c, m) in MODELS.items()]
    ax.legend(handles=handles, frameon=False, fontsize=7, loc="upper center", bbox_to_anchor=(0.35, -0.22), ncol=3)
    figure.savefig(PICTURE, dpi=90, bbox_inches="tight", metadata={"Software": None})


if __name__ == "__main__":
    main()
