#!/usr/bin/env python3
"""Fits the onset columns of shared/catalogue/items.csv to three points each.

Usage: python3 src/bench/onset/fit_onsets.py < points.csv > onsets.csv

In:  item, p6, p10, p15 (chance of standing failed at 6 years/60,000 miles, 10/120,000, 15/180,000)
     and mileage_share, with a header.
Out: item, shape, scale_years, mileage_share, event, worst (largest relative error of the three).

Law: F = 1 - (1 - event) exp(-(t / scale)^shape), t = (1 - w) age + w miles / 12,000, as in
worthsaving.catalog.Onset. Least squares on the relative error, the ten-year point counting four times,
by pattern search from the log-log regression line; no library needed, no random start.
"""
import csv
import math
import sys

AGES = ((6, 60_000), (10, 120_000), (15, 180_000))
WEIGHTS = (1, 4, 1)
FLOOR = 0.004  # below this probability errors are judged absolutely


def wear(w):
    return [(1 - w) * age + w * miles / 12_000 for age, miles in AGES]


def law(t, shape, scale, event):
    return 1 - (1 - event) * math.exp(-((t / scale) ** shape))


def loss(par, times, points):
    shape, scale, event = par
    if not (0.1 <= shape <= 8 and 1 <= scale <= 2000 and 0 <= event < 1):
        return math.inf
    return sum(
        g * ((law(t, shape, scale, event) - p) / max(p, FLOOR)) ** 2 for g, t, p in zip(WEIGHTS, times, points))


def start(times, points):
    xs = [math.log(t) for t in times]
    ys = [math.log(-math.log(1 - max(p, 0.0005))) for p in points]
    mx, my = sum(xs) / 3, sum(ys) / 3
    slope = sum((x - mx) * (y - my) for x, y in zip(xs, ys)) / sum((x - mx) ** 2 for x in xs)
    shape = min(7.5, max(0.15, slope))
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
    """Shape, scale in years (None: only the event counts), event, worst relative error."""
    if max(points) == min(points):
        return 1.0, None, points[0], 0.0
    times = wear(w)
    par, best = search(times, points, False)
    other, value = search(times, points, True)
    if value < 0.5 * best and value < best - 1e-3:
        par = other
    shape, scale, event = round(par[0], 2), round(par[1], 1), round(par[2], 4)
    worst = max(abs(law(t, shape, scale, event) - p) / max(p, FLOOR) for t, p in zip(times, points))
    return shape, scale, event, worst


def main():
    out = csv.writer(sys.stdout, lineterminator="\n")
    out.writerow(["item", "shape", "scale_years", "mileage_share", "event", "worst"])
    for row in csv.DictReader(line for line in sys.stdin if not line.startswith("#")):
        w = float(row["mileage_share"])
        shape, scale, event, worst = fit([float(row[k]) for k in ("p6", "p10", "p15")], w)
        out.writerow([row["item"], shape, "never" if scale is None else scale, w, event, f"{worst:.3f}"])


if __name__ == "__main__":
    main()
