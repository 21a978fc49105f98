#!/usr/bin/env python3
"""Sets the links of the presenting conditions (does not crank, knocks, ...) from usual shares.

Usage: python3 src/bench/presenting/calibrate.py [--write] [catalogue folder] < weights.csv > links.csv

In:  finding, item, weight, rate, base, least. rate: how many cars of the reference age are in that state;
     weight: how often the item is behind it among cars offered so, in any unit that is common to the
     finding; least: the chance that a car on which this item has failed must be in that state, whatever
     the shares (a broken timing belt does not start).
Out: finding, item, link = rate * weight / (base * prior), at least least and at most CAP, where base is
     the sum that weights of the causes on one car reach and prior the chance that the item stands failed
     on a car of 10 years and 120,000 miles, secondary damage included. Low and high of the range let the
     chance of silence vary by the powers 0.6 and 1.7. With --write finding_links.csv is changed as well.
"""
import csv
import sys
from pathlib import Path

sys.path.insert(0, str(Path(__file__).resolve().parent.parent / "onset"))

from fit_onsets import joined
from marginals import marginals, table

AGE, MILES = 10, 120_000
CAP = 0.9


def two_digits(x):
    return float(f"{x:.2g}")


def links(weights, folder):
    prior = marginals(table(folder / "items.csv"), table(folder / "damage.csv"), AGE, MILES)
    return {
        (row["finding"], row["item"]): two_digits(min(CAP, max(
            float(row["least"] or 0),
            float(row["rate"]) * float(row["weight"]) / (float(row["base"]) * prior.mean(row["item"])))))
        for row in weights}


def with_range(mode):
    return [f"{1 - (1 - mode) ** 0.6:.3f}", f"{mode:g}", f"{1 - (1 - mode) ** 1.7:.3f}"]


def write(path, chances):
    lines = path.read_text(encoding="utf-8").splitlines()
    for n, line in enumerate(lines):
        cells = next(csv.reader([line]))
        if tuple(cells[:2]) in chances:
            lines[n] = joined(cells[:2] + with_range(chances[tuple(cells[:2])]) + cells[5:])
    path.write_text("\n".join(lines) + "\n", encoding="utf-8")


def main():
    places = [a for a in sys.argv[1:] if a != "--write"]
    folder = Path(places[0] if places else "shared/catalogue")
    weights = csv.DictReader(line for line in sys.stdin if not line.startswith("#"))
    chances = links(weights, folder)
    out = csv.writer(sys.stdout, lineterminator="\n")
    out.writerow(["finding", "item", "link"])
    for (finding, item), chance in chances.items():
        out.writerow([finding, item, f"{chance:g}"])
    if "--write" in sys.argv:
        write(folder / "finding_links.csv", chances)


if __name__ == "__main__":
    main()
