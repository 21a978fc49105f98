"""Chance that each item stands failed, secondary damage included, from the tables of the catalogue.

Used by fit_onsets.py and ../presenting/calibrate.py. Causes are taken as independent when they damage
the same item; they are not quite (chain and pickup share the chain), and the exact network comes out a
little lower. What a car's description leaves open is averaged over how common each kind is, as in
worthsaving.diagnosis.PowertrainShares.USUAL (a guess).
"""
import csv
import itertools
import math

ENGINES = {"PETROL": 0.68, "PETROL_TURBO": 0.20, "DIESEL": 0.04, "HYBRID": 0.06, "ELECTRIC": 0.02}
TIMINGS = {"CHAIN": 0.75, "BELT": 0.25}
USUAL_GEARBOXES = {"AUTOMATIC": 0.68, "CVT": 0.17, "MANUAL": 0.10, "DUAL_CLUTCH": 0.05}
GEARBOXES = {
    "PETROL": USUAL_GEARBOXES, "PETROL_TURBO": USUAL_GEARBOXES, "DIESEL": USUAL_GEARBOXES,
    "HYBRID": {"ELECTRIC_DRIVE": 0.85, "AUTOMATIC": 0.15}, "ELECTRIC": {"ELECTRIC_DRIVE": 1.0}}
DRIVES = {"FRONT": 0.60, "REAR": 0.15, "ALL": 0.25}

CARS = [
    ((engine, timing, gearbox, drive), a * b * c * d)
    for (engine, a), (timing, b), (drive, d) in itertools.product(ENGINES.items(), TIMINGS.items(), DRIVES.items())
    for gearbox, c in GEARBOXES[engine].items()]


def table(path):
    with open(path, encoding="utf-8") as lines:
        return list(csv.DictReader(line for line in lines if not line.startswith("#")))


def wear(age, miles, mileage_share):
    return (1 - mileage_share) * age + mileage_share * miles / 12_000


def law(t, shape, scale, event):
    return 1 - (1 - event) * math.exp(-((t / scale) ** shape))


def own(item, age, miles):
    """The chance that a line of items.csv gives, without secondary damage."""
    scale = math.inf if item["scale_years"] == "never" else float(item["scale_years"])
    return law(wear(age, miles, float(item["mileage_share"])), float(item["shape"]), scale, float(item["event"]))


def exists(item, car):
    return all(item[column] == "any" or kind in item[column].split()
               for column, kind in zip(("engines", "timing", "gearboxes", "drives"), car))


def causes_first(items, damage):
    """Ids, every item after all that damages it."""
    causes = {}
    for link in damage:
        causes.setdefault(link["effect"], []).append(link["cause"])
    order = []

    def visit(item):
        if item not in order:
            for cause in causes.get(item, ()):
                visit(cause)
            order.append(item)

    for item in items:
        visit(item)
    return order


class Marginals:
    """Filled item by item, causes first; one value per kind of car."""

    def __init__(self, items, damage):
        self.items = {item["id"]: item for item in items}
        self.causes = {}
        for link in damage:
            self.causes.setdefault(link["effect"], []).append((link["cause"], float(link["mode"])))
        self.values = {}

    def spared(self, item):
        """By kind of car on which the item exists: its weight and the chance that no cause has killed it."""
        rows = []
        for car, weight in CARS:
            if exists(self.items[item], car):
                chance = 1.0
                for cause, link in self.causes.get(item, ()):
                    chance *= 1 - link * self.values[cause].get(car, 0.0)
                rows.append((car, weight, chance))
        return rows

    def mean_spared(self, item):
        rows = self.spared(item)
        return sum(w * s for _, w, s in rows) / sum(w for _, w, _ in rows)

    def put(self, item, own_chance):
        self.values[item] = {car: 1 - (1 - own_chance) * spared for car, _, spared in self.spared(item)}

    def mean(self, item):
        rows = self.spared(item)
        return sum(w * self.values[item][car] for car, w, _ in rows) / sum(w for _, w, _ in rows)


def marginals(items, damage, age, miles):
    """Of every item as the tables stand."""
    result = Marginals(items, damage)
    for item in causes_first(result.items, damage):
        result.put(item, own(result.items[item], age, miles))
    return result
