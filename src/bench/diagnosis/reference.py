#!/usr/bin/env python3
"""Posteriors of the shipped catalogue by a second method, written from the definitions.

    python3 src/bench/diagnosis/reference.py --cars 50 > posteriors.jsonl

Every line is one random car with random evidence: what was seen, log P(evidence) and the posterior of
every item. The method shares nothing with the Java engine. A finding seen present has probability
1 - (1 - leak) prod (1 - p_i), so a product of m of them is a sum over 2^m subsets with signs, and each
term is a product of weights on single items (inclusion and exclusion: Heckerman 1989, UAI 5:163). The
sum over the items themselves is done once for all subsets, by summing items out one after another from
full conditional tables; posteriors are derivatives of that sum. Numbers are 80-bit floats; a car whose
signed sum may have lost more than 1e-10 to cancellation is left out and another one drawn.
"""
import argparse
import csv
import itertools
import json
import math
import random
import sys
import time
from pathlib import Path

import numpy as np

FOLDER = Path(__file__).resolve().parents[3] / "shared" / "catalogue"
REAL = np.longdouble
MOST_LOST = 1e-10
USUAL = {"AUTOMATIC": 0.68, "CVT": 0.17, "MANUAL": 0.10, "DUAL_CLUTCH": 0.05}
ENGINES = {"PETROL": 0.68, "PETROL_TURBO": 0.20, "DIESEL": 0.04, "HYBRID": 0.06, "ELECTRIC": 0.02}
GEARBOXES = {"PETROL": USUAL, "PETROL_TURBO": USUAL, "DIESEL": USUAL,
             "HYBRID": {"ELECTRIC_DRIVE": 0.85, "AUTOMATIC": 0.15}, "ELECTRIC": {"ELECTRIC_DRIVE": 1.0}}
TIMINGS = {"CHAIN": 0.75, "BELT": 0.25}
DRIVES = {"FRONT": 0.60, "REAR": 0.15, "ALL": 0.25}
HAZARDS = ["LOW_OIL_PRESSURE", "OVERHEATING", "WORN_TIMING_DRIVE", "MISFIRE", "SLIPPING_GEARBOX"]


def rows(name):
    with open(FOLDER / name, encoding="utf-8") as file:
        return list(csv.DictReader(line for line in file if not line.startswith("#")))


ITEMS, DAMAGE = rows("items.csv"), rows("damage.csv")
FINDINGS, LINKS = rows("findings.csv"), rows("finding_links.csv")


def prior(item, age, miles):
    event = float(item["event"] or 0)
    if item["scale_years"] in ("", "never"):
        return event
    share = float(item["mileage_share"])
    wear = min((1 - share) * age + share * miles / 12000, 20)
    return 1 - (1 - event) * math.exp(-((wear / float(item["scale_years"])) ** float(item["shape"])))


def chance(link, exposure):
    level = exposure.get(link["hazard"], "UNKNOWN") if link["hazard"] else "UNKNOWN"
    column = {"STOPPED_AT_ONCE": "if_stopped", "DRIVEN_ON": "if_driven_on", "UNKNOWN": "mode"}[level]
    return float(link[column] or link["mode"])


def powertrains(car):
    """Every powertrain that the car may have, with its share."""
    known = car["powertrain"]
    weighed = []
    for engine, timing, drive in itertools.product(ENGINES, TIMINGS, DRIVES):
        for gearbox in set(USUAL) | {"ELECTRIC_DRIVE"}:
            values = {"engine": engine, "timing": timing, "gearbox": gearbox, "drive": drive}
            if any(known.get(k) not in (None, v) for k, v in values.items()):
                continue
            share = (1 if "timing" in known else TIMINGS[timing]) * (1 if "drive" in known else DRIVES[drive])
            if "engine" not in known:
                share *= ENGINES[engine] * (0 if engine == "ELECTRIC" and "timing" in known else 1)
                share *= GEARBOXES[engine].get(gearbox, 0)
            elif "gearbox" not in known:
                share *= GEARBOXES[engine].get(gearbox, 0)
            if share > 0:
                weighed.append((share, values))
    total = sum(share for share, _ in weighed)
    return [(share / total, values) for share, values in weighed]


class Network:
    """Items of one car with everything about the powertrain known."""

    def __init__(self, car, powertrain):
        columns = {"engines": "engine", "timing": "timing", "gearboxes": "gearbox", "drives": "drive"}
        present = [i for i in ITEMS
                   if all(i[c] == "any" or powertrain[f] in i[c].split() for c, f in columns.items())]
        self.items = [i["id"] for i in present]
        self.prior = {i["id"]: prior(i, car["age"], car["miles"]) for i in present}
        self.causes = {i: [] for i in self.items}
        for link in DAMAGE:
            if link["cause"] in self.causes and link["effect"] in self.causes:
                self.causes[link["effect"]].append((link["cause"], chance(link, car["exposure"])))
        self.groups = {}
        for item in present:
            if item["exclusive_group"]:
                self.groups.setdefault(item["exclusive_group"], []).append(item["id"])
        self.leak = {f["id"]: float(f["false_mode"]) for f in FINDINGS}
        self.shown_by = {f["id"]: {} for f in FINDINGS}
        for link in LINKS:
            if link["item"] in self.causes:
                self.shown_by[link["finding"]][link["item"]] = float(link["mode"])
        self.tables = self.conditional_tables()
        self.order = summing_order([scope for scope, _ in self.tables])

    def conditional_tables(self):
        tables = []
        for item in self.items:
            names = [item] + [c for c, _ in self.causes[item]]
            table = np.empty((2,) * len(names), dtype=REAL)
            for state in itertools.product((0, 1), repeat=len(names)):
                sound = REAL(1) - REAL(self.prior[item])
                for (_, p), failed in zip(self.causes[item], state[1:]):
                    sound *= 1 - REAL(p) if failed else 1
                table[state] = 1 - sound if state[0] else sound
            tables.append((names, table))
        for members in self.groups.values():
            table = np.zeros((2,) * len(members), dtype=REAL)
            for state in itertools.product((0, 1), repeat=len(members)):
                table[state] = 1 if sum(state) <= 1 else 0
            tables.append((members, table))
        return tables

    def sums(self, findings, items):
        """P(evidence), what cancelled at most, and P(evidence and item failed) by item."""
        coefficients = np.ones(1, dtype=REAL)
        weights = {i: np.ones((1, 2), dtype=REAL) for i in self.items}
        for finding, (yes, no) in findings.items():
            silent = 1 - REAL(self.leak[finding])
            parts = [(REAL(yes), None), ((REAL(no) - REAL(yes)) * silent, self.shown_by[finding])]
            parts = [p for p in parts if p[0] != 0]
            coefficients = np.concatenate([coefficients * c for c, _ in parts])
            for item in self.items:
                scaled = []
                for _, shown in parts:
                    factor = np.array([1, 1 - REAL((shown or {}).get(item, 0))], dtype=REAL)
                    scaled.append(weights[item] * factor)
                weights[item] = np.concatenate(scaled)
        for item, (yes, no) in items.items():
            if item in weights:
                weights[item] = weights[item] * np.array([no, yes], dtype=REAL)
            else:
                coefficients = coefficients * REAL(no)
        values, derivatives = self.sum_out(weights)
        terms = coefficients * values
        failed = {i: float(np.sum(coefficients * weights[i][:, 1] * derivatives[i])) for i in self.items}
        return float(np.sum(terms)), float(np.sum(np.abs(terms))) * 1.1e-19, failed

    def sum_out(self, weights):
        """The sum over all states for each row of weights, and its derivative by each item's failed weight."""
        waiting = [(list(scope), table[np.newaxis]) for scope, table in self.tables]
        waiting += [([item], weight) for item, weight in weights.items()]
        steps = []
        for item in self.order:
            here = [w for w in waiting if item in w[0]]
            waiting = [w for w in waiting if item not in w[0]]
            scope = [item] + sorted({v for s, _ in here for v in s if v != item})
            product = np.ones(1, dtype=REAL)
            for names, table in here:
                product = product * spread(names, table, scope)
            message = (scope[1:], product.sum(axis=1))
            steps.append((scope, here, message))
            waiting.append(message)
        total = np.ones(1, dtype=REAL)
        for _, table in waiting:
            total = total * table
        rows_of = max(w.shape[0] for w in weights.values())
        by_message, derivatives = {}, {}
        for scope, here, message in reversed(steps):
            others = [w for w in waiting if w is not message]
            outer = by_message.pop(id(message), None)
            if outer is None:
                outer = np.ones(1, dtype=REAL)
                for _, table in others:
                    outer = outer * table
            outer = np.expand_dims(outer, 1) if outer.ndim > 1 else outer.reshape((-1,) + (1,) * len(scope))
            for one in here:
                rest = outer * np.ones((rows_of,) + (2,) * len(scope), dtype=REAL)
                for names, table in here:
                    if table is not one[1]:
                        rest = rest * spread(names, table, scope)
                axes = tuple(k + 1 for k, v in enumerate(scope) if v not in one[0])
                kept = [v for v in scope if v in one[0]]
                rest = np.transpose(rest.sum(axis=axes), [0] + [kept.index(v) + 1 for v in one[0]])
                if len(one[0]) == 1 and one[1] is weights.get(one[0][0]):
                    derivatives[one[0][0]] = rest[:, 1]
                else:
                    by_message[id(one)] = rest
        return total, derivatives


def spread(names, table, scope):
    """The table with axes in the order of the scope, length one where it does not have the variable."""
    present = [v for v in scope if v in names]
    moved = np.transpose(table, [0] + [names.index(v) + 1 for v in present])
    return moved.reshape([table.shape[0]] + [2 if v in names else 1 for v in scope])


def summing_order(scopes):
    """Items in the order that keeps the next table smallest."""
    neighbours = {}
    for scope in scopes:
        for item in scope:
            neighbours.setdefault(item, set()).update(v for v in scope if v != item)
    order = []
    while neighbours:
        def missing(item):
            return sum(b not in neighbours[a] for a, b in itertools.combinations(sorted(neighbours[item]), 2))
        item = min(sorted(neighbours), key=lambda i: (missing(i), len(neighbours[i])))
        joined = neighbours.pop(item)
        for other in joined:
            neighbours[other].update(joined)
            neighbours[other] -= {item, other}
        order.append(item)
    return order


def posteriors(car):
    total, error, failed, base = 0.0, 0.0, {}, 0.0
    for share, powertrain in powertrains(car):
        network = Network(car, powertrain)
        weight, lost, sums = network.sums(car["findings"], car["items"])
        total += share * weight
        error += share * lost
        base += share * network.sums({}, {})[0]
        for item, value in sums.items():
            failed[item] = failed.get(item, 0.0) + share * value
    if not error / total < MOST_LOST:
        return None
    return math.log(total / base), {item: value / total for item, value in failed.items()}


def random_car(rng, most_present, options):
    """A random car with evidence drawn from the network itself, so that it is not absurd."""
    engine = rng.choice(["PETROL", "PETROL_TURBO", "DIESEL"] if options.plain else list(ENGINES))
    powertrain = {"engine": engine, "timing": rng.choice(list(TIMINGS)), "drive": rng.choice(list(DRIVES)),
                  "gearbox": rng.choice(list(GEARBOXES[engine]))}
    car = {"year": rng.randint(2004, 2020), "miles": rng.randint(30, 240) * 1000,
           "exposure": {h: rng.choice(["STOPPED_AT_ONCE", "DRIVEN_ON"]) for h in HAZARDS if rng.random() < 0.4}}
    car["age"] = 2026 - (car["year"] + 0.5)
    truth = Network(car, powertrain)
    state = {}
    while len(state) < len(truth.items):
        for item in truth.items:
            if item not in state and all(c in state for c, _ in truth.causes[item]):
                sound = (1 - truth.prior[item]) * math.prod(1 - p for c, p in truth.causes[item] if state[c])
                rivals = [g for members in truth.groups.values() if item in members for g in members]
                state[item] = rng.random() > sound and not any(state.get(r) for r in rivals)
    car["findings"], car["items"] = {}, {}
    looked_at = []
    for finding in rng.sample(sorted(truth.leak), len(truth.leak)):
        shown = truth.shown_by[finding]
        silent = (1 - truth.leak[finding]) * math.prod(1 - p for i, p in shown.items() if state[i])
        if len(shown) <= options.most_causes:
            looked_at.append((finding, rng.random() > silent))
    if options.plain:
        looked_at.sort(key=lambda pair: not pair[1])
    present = 0
    for finding, seen in looked_at:
        if len(car["findings"]) < 20 and (not seen or present < most_present):
            present += seen
            doubtful = not options.plain and rng.random() < 0.15 and present < most_present
            present += doubtful and not seen
            sure = [1.0, 0.0] if seen else [0.0, 1.0]
            car["findings"][finding] = [0.9, 0.2] if doubtful and seen else [0.3, 0.6] if doubtful else sure
    for item in rng.sample(truth.items, 3):
        if not options.plain and rng.random() < 0.5:
            car["items"][item] = [float(state[item]), float(not state[item])] if rng.random() < 0.7 else [0.5, 0.1]
    hidden = rng.choice([[], [], [], ["timing"], ["drive"], ["engine"], ["gearbox", "timing"]])
    car["powertrain"] = {k: v for k, v in powertrain.items() if options.plain or k not in hidden}
    return car


def main():
    parser = argparse.ArgumentParser(description="posteriors by a second method")
    parser.add_argument("--cars", type=int, default=50)
    parser.add_argument("--seed", type=int, default=1)
    parser.add_argument("--present", type=int, default=0, help="findings present; 0: at most one to eight in turn")
    parser.add_argument("--most-causes", type=int, default=1000, help="leave findings with more causes out")
    parser.add_argument("--plain", action="store_true", help="combustion engine, powertrain known; twenty findings, all certain, as many present as asked for")
    options = parser.parse_args()
    rng = random.Random(options.seed)
    spent = []
    left_out = 0
    while len(spent) < options.cars:
        most_present = options.present or 1 + len(spent) % 8
        car = random_car(rng, most_present, options)
        if options.plain and list(car["findings"].values()).count([1.0, 0.0]) < most_present:
            continue
        begun = time.perf_counter()
        answer = posteriors(car)
        if answer is None:
            left_out += 1
            continue
        spent.append(time.perf_counter() - begun)
        car["logEvidence"], car["posteriors"] = answer
        print(json.dumps(car), flush=True)
    middle = sorted(spent)[len(spent) // 2]
    print(f"{len(spent)} cars, median {1000 * middle:.0f} ms each; {left_out} left out", file=sys.stderr)


if __name__ == "__main__":
    main()
