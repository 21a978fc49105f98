#!/usr/bin/env python3
"""Sets the links of the presenting conditions (does not crank, knocks, ...) from usual shares.

Usage: python3 src/bench/presenting/calibrate.py [catalogue folder] < weights.csv > links.csv

In:  finding, item, weight, rate, base. rate: how often cars of the reference age are offered so (a scale,
     nothing more); weight: how often the item is behind it among cars offered so, in any unit that is
     common to the finding.
Out: finding, item, link = min(0.9, rate * weight / (base * prior)), where base is the sum that weights
     of the causes on one car reach and prior the chance that the item stands failed on a car of
     10 years and 120,000 miles, secondary damage included.

Secondary damage is added up cause by cause as if causes were independent: near enough for a guess, and
the same on every machine. Items that exist on several powertrains take the first of POWERTRAINS.
"""
import csv
import math
import sys
from pathlib import Path

AGE, MILES = 10, 120_000
CAP = 0.9
POWERTRAINS = (
    ("PETROL_TURBO", "CHAIN", "AUTOMATIC", "FRONT"), ("PETROL", "BELT", "MANUAL", "ALL"),
    ("DIESEL", "BELT", "DUAL_CLUTCH", "REAR"), ("HYBRID", "CHAIN", "ELECTRIC_DRIVE", "FRONT"),
    ("PETROL", "CHAIN", "CVT", "FRONT"), ("ELECTRIC", "CHAIN", "ELECTRIC_DRIVE", "FRONT"))


def table(path):
    with open(path, encoding="utf-8") as lines:
        return list(csv.DictReader(line for line in lines if not line.startswith("#")))


def own(item):
    w = float(item["mileage_share"])
    wear = (1 - w) * AGE + w * MILES / 12_000
    scale = math.inf if item["scale_years"] == "never" else float(item["scale_years"])
    survival = math.exp(-((wear / scale) ** float(item["shape"])))
    return 1 - (1 - float(item["event"])) * survival


def exists(item, powertrain):
    return all(item[column] == "any" or kind in item[column].split()
               for column, kind in zip(("engines", "timing", "gearboxes", "drives"), powertrain))


def priors(items, damage):
    causes = {}
    for link in damage:
        causes.setdefault(link["effect"], []).append((link["cause"], float(link["mode"])))
    by_id = {item["id"]: item for item in items}

    def prior(item_id, powertrain, known):
        if item_id not in known:
            item = by_id[item_id]
            if not exists(item, powertrain):
                known[item_id] = 0.0
            else:
                sound = 1 - own(item)
                for cause, chance in causes.get(item_id, ()):
                    sound *= 1 - chance * prior(cause, powertrain, known)
                known[item_id] = 1 - sound
        return known[item_id]

    result = {}
    for powertrain in POWERTRAINS:
        known = {}
        for item in items:
            if exists(item, powertrain):
                result.setdefault(item["id"], prior(item["id"], powertrain, known))
    return result


def links(weights, folder):
    prior = priors(table(folder / "items.csv"), table(folder / "damage.csv"))
    return [(row["finding"], row["item"], min(CAP, float(row["rate"]) * float(row["weight"])
            / (float(row["base"]) * prior[row["item"]]))) for row in weights]


def main():
    folder = Path(sys.argv[1] if len(sys.argv) > 1 else "shared/catalogue")
    weights = csv.DictReader(line for line in sys.stdin if not line.startswith("#"))
    out = csv.writer(sys.stdout, lineterminator="\n")
    out.writerow(["finding", "item", "link"])
    for finding, item, link in links(weights, folder):
        out.writerow([finding, item, f"{link:.2g}"])


if __name__ == "__main__":
    main()
