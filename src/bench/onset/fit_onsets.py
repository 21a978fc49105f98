#!/usr/bin/env python3
"""Fits the onset columns of shared/catalogue/items.csv to three points each.

Usage: python3 src/bench/onset/fit_onsets.py [--write] [catalogue folder] < points.csv > onsets.csv

In:  item, p6, p10, p15 (chance of standing failed, for whatever reason, at 6 years/60,000 miles,
     10/120,000 and 15/180,000) and mileage_share, with a header.
Out: item, shape, scale_years, mileage_share, event, then for the worst of the three points the figure
     asked for and the one reached, and "secondary" where damage from elsewhere alone exceeds a point.
     With --write the onset columns of items.csv are replaced as well.

The answers are chances of finding the item failed, secondary damage included. What is fitted is the
item's own part, causes first: own = 1 - (1 - asked) / P(no cause has killed it), at least FLOOR of the
answer, with the causes as already fitted.

Law: F = 1 - (1 - event) exp(-(t / scale)^shape), t = (1 - w) age + w miles / 12,000, as in
worthsaving.catalog.Onset. Least squares on the relative error, the ten-year point counting four times,
by pattern search from the log-log regression line; no library needed, no random start.
"""
import csv
import math
import sys
from pathlib import Path

from marginals import Marginals, causes_first, law, table, wear

AGES = ((6, 60_000), (10, 120_000), (15, 180_000))
WEIGHTS = (1, 4, 1)
LEAST = 0.01  # below this probability errors are judged absolutely
FLOOR = 0.1  # every item keeps this share of its chance for itself
NO_WEAR = 0.001  # wear that adds less than this by the last point is left out
LEAST_SHAPE = 0.7  # below, parts would fail mainly in their first year


def loss(par, times, points):
    shape, scale, event = par
    if not (LEAST_SHAPE <= shape <= 8 and 1 <= scale <= 2000 and 0 <= event < 1):
        return math.inf
    return sum(
        g * ((law(t, shape, scale, event) - p) / max(p, LEAST)) ** 2 for g, t, p in zip(WEIGHTS, times, points))


def start(times, points):
    xs = [math.log(t) for t in times]
    ys = [math.log(-math.log(1 - max(p, 0.0005))) for p in points]
    mx, my = sum(xs) / 3, sum(ys) / 3
    slope = sum((x - mx) * (y - my) for x, y in zip(xs, ys)) / sum((x - mx) ** 2 for x in xs)
    shape = min(7.5, max(LEAST_SHAPE, slope))
    return [shape, min(1900.0, math.exp(mx - my / shape)), 0.0]


def search(times, points, with_event):
    par = start(times, points)
    steps = [0.3, 0.1 * par[1], 0.002 if with_event else 0.0]
    best = loss(par, times, points)
    while max(steps[0], steps[1] / par[1]) > 1e-7:
        moved = False
        for i, step in enumerate(steps):
            for sign in (1, -1):
                trial = list(par)
                trial[i] += sign * step
                value = loss(trial, times, points)
                if step and value < best:
                    par, best, moved = trial, value, True
        if not moved:
            steps = [s / 2 for s in steps]
    return par, best


def fit(points, w):
    """Shape, scale in years (None: only the event counts), event. What wears with miles has no event."""
    if max(points) == min(points):
        return 1.0, None, round(points[0], 5)
    times = [wear(age, miles, w) for age, miles in AGES]
    par, best = search(times, points, False)
    if w == 0:
        other, value = search(times, points, True)
        if value < 0.5 * best and value < best - 1e-3:
            par = other
    shape, scale, event = round(par[0], 2), round(par[1], 1), round(par[2], 4)
    if law(max(times), shape, scale, 0) < NO_WEAR:
        return 1.0, None, event
    return shape, scale, event


def worst(asked, reached):
    return max(zip(asked, reached), key=lambda pair: abs(pair[1] - pair[0]) / max(pair[0], LEAST))


def fit_all(points, items, damage):
    """One row per item, in the order of the points."""
    ages = [Marginals(items, damage) for _ in AGES]
    rows = {}
    for item in causes_first([p["item"] for p in points], damage):
        point = next(p for p in points if p["item"] == item)
        asked = [float(point[k]) for k in ("p6", "p10", "p15")]
        left = [1 - (1 - p) / m.mean_spared(item) for p, m in zip(asked, ages)]
        w = float(point["mileage_share"])
        shape, scale, event = fit([max(FLOOR * p, o) for p, o in zip(asked, left)], w)
        for (age, miles), m in zip(AGES, ages):
            m.put(item, law(wear(age, miles, w), shape, math.inf if scale is None else scale, event))
        bad = worst(asked, [m.mean(item) for m in ages])
        rows[item] = [item, shape, "never" if scale is None else scale, w, event, bad[0], f"{bad[1]:.4f}",
                      "secondary" if min(left) < 0 else ""]
    return [rows[p["item"]] for p in points]


def write(path, rows):
    """Only the onset cells change: the file is somebody's, quotes and all."""
    fitted = {row[0]: row for row in rows}
    lines = path.read_text(encoding="utf-8").splitlines()
    header = next(csv.reader([next(line for line in lines if not line.startswith("#"))]))
    columns = [header.index(name) for name in ("shape", "scale_years", "mileage_share", "event")]
    for n, line in enumerate(lines):
        cells = next(csv.reader([line]))
        if cells[0] in fitted:
            for column, value in zip(columns, fitted[cells[0]][1:5]):
                cells[column] = f"{value:g}" if isinstance(value, float) else value
            lines[n] = joined(cells)
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")


def joined(cells):
    class Line(list):
        def write(self, text):
            self.append(text)

    out = Line()
    csv.writer(out, lineterminator="").writerow(cells)
    return "".join(out)


def main():
    places = [a for a in sys.argv[1:] if a != "--write"]
    folder = Path(places[0] if places else "shared/catalogue")
    points = list(csv.DictReader(line for line in sys.stdin if not line.startswith("#")))
    rows = fit_all(points, table(folder / "items.csv"), table(folder / "damage.csv"))
    out = csv.writer(sys.stdout, lineterminator="\n")
    out.writerow(["item", "shape", "scale_years", "mileage_share", "event", "asked", "reached", "note"])
    out.writerows(rows)
    if "--write" in sys.argv:
        write(folder / "items.csv", rows)


if __name__ == "__main__":
    main()
