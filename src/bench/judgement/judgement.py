"""One judgement of a car in numpy, every step over all points at once: the named alternative to ours.

    python3 src/bench/judgement/judgement.py target/bench/cars.jsonl [points]

Simpler than ours wherever that is quicker: failure patterns by likelihood weighting and resampling instead of draws from
the exact posterior; each item mended by its own job, with access and tools shared, instead of a search for the
cheapest set of jobs; money lines at their means but for speed and the price of parts. Then the same
answers: profit of four ways out with mean, worst 5 % and chance of loss, the most to pay, and what each check not yet
made is worth. Prints processor milliseconds per car on one thread.
"""
import json
import os
import sys
import time

for name in ("OMP_NUM_THREADS", "OPENBLAS_NUM_THREADS", "MKL_NUM_THREADS"):
    os.environ[name] = "1"
import numpy as np  # noqa: E402  (after the number of threads is set)


def prepared(car):
    """Everything that does not depend on the draw, as arrays; not counted in the time."""
    items = car["items"]
    n = len(items)
    steps = sorted({s for i in items for s in i["job"]["access"]})
    tools = sorted({t for i in items for t in i["job"]["tools"]})
    hours = {}
    for i in items:
        hours.update(i["job"]["access"])
    price = {}
    for i in items:
        price.update(i["job"]["tools"])
    silent = np.zeros((n, len(car["findings"])))
    leak = np.zeros(len(car["findings"]))
    for f, finding in enumerate(car["findings"]):
        leak[f] = finding["leak"]
        for cause, chance in zip(finding["causes"], finding["chances"]):
            silent[cause, f] = np.log1p(-min(chance, 1 - 1e-12))
    return {
        "order": car["order"], "items": items, "silent": silent, "leak": leak,
        "seen": [(f, x["if_true"], x["if_false"]) for f, x in enumerate(car["findings"]) if "if_true" in x],
        "unseen": np.array([f for f, x in enumerate(car["findings"]) if "if_true" not in x]),
        "silences": car["silences"],
        "access": np.array([[s in i["job"]["access"] for s in steps] for i in items], dtype=np.float32),
        "tools": np.array([[t in i["job"]["tools"] for t in tools] for i in items], dtype=np.float32),
        "tool_price": np.array([price[t] for t in tools]),
        "step_hours": [hours[s] for s in steps],
        "parts": [i["job"]["parts"] for i in items], "more": [i["job"]["consumables"] for i in items],
        "hours": [i["job"]["hours"] for i in items],
        "value": np.array(car["value"]), "terms": {k: mean(v) for k, v in car["terms"].items()},
        "speed": car["terms"]["SPEED"], "prices": car["terms"]["PARTS_PRICE"],
        "rate": car["rate"], "target": car["target"], "most_loss": car["most_chance_of_loss"],
    }


def mean(r):
    return (r[0] + 4 * r[1] + r[2]) / 6


def pert(rng, r, size):
    low, mode, high = r
    if high <= low:
        return np.full(size, low)
    a = 1 + 4 * (mode - low) / (high - low)
    return low + (high - low) * rng.beta(a, 6 - a, size)


def chance(draws, leak, causes, chances):
    quiet = np.full(len(draws), 1 - leak)
    for cause, c in zip(causes, chances):
        quiet *= np.where(draws[:, cause], 1 - c, 1)
    return 1 - quiet


def patterns(car, rng, points):
    draws = np.zeros((points, len(car["items"])), dtype=bool)
    weight = np.ones(points)
    uniform = rng.random((len(car["items"]), points))
    for i in car["order"]:
        item = car["items"][i]
        p = chance(draws, item["leak"], item["causes"], item["chances"])
        yes = p * item["if_failed"]
        either = yes + (1 - p) * item["if_sound"]
        draws[:, i] = uniform[i] * either < yes
        weight *= either
    present = 1 - (1 - car["leak"]) * np.exp(draws.astype(float) @ car["silent"])
    for f, if_true, if_false in car["seen"]:
        weight *= if_true * present[:, f] + if_false * (1 - present[:, f])
    for s in car["silences"]:
        weight *= 1 - chance(draws, s["leak"], s["causes"], s["chances"])
    cumulative = np.cumsum(weight)
    chosen = np.searchsorted(cumulative, (np.arange(points) + rng.random()) / points * cumulative[-1])
    chosen = np.minimum(chosen, points - 1)
    return draws[chosen], present[chosen]


def judged(car, rng, points):
    draws, present = patterns(car, rng, points)
    on = draws.astype(np.float32)
    opened = (on @ car["access"]) > 0
    bought = (on @ car["tools"]) > 0
    hours = np.zeros(points)
    for s, r in enumerate(car["step_hours"]):
        hours += np.where(opened[:, s], pert(rng, r, points), 0)
    cash = bought @ car["tool_price"]
    for i in range(draws.shape[1]):
        failed = np.flatnonzero(draws[:, i])
        cash[failed] += pert(rng, car["parts"][i], len(failed)) + pert(rng, car["more"][i], len(failed))
        hours[failed] += pert(rng, car["hours"][i], len(failed))
    hours *= pert(rng, car["speed"], points) / 100
    cash *= pert(rng, car["prices"], points) / 100
    t = car["terms"]
    value = np.interp(rng.random(points), (np.arange(257) + 0.5) / 257, car["value"])
    days = t["DAYS_WAITING"] + hours / t["WORK_PER_DAY"] + t["DAYS_TO_SELL"]
    fixed = t["GATE_FEES"] + t["TOW_HOOK_UP"] + t["TITLE_TRANSFER"] + t["TITLE_HISTORY"]
    ways = [
        value * (1 - t["HAGGLE"] / 100) * (1 - t["COMEBACK_RESERVE"] / 100) - cash - hours * car["rate"]
        - t["HOLDING_PER_DAY_OWN"] * days - t["CAPITAL_RATE"] / 100 * days / 365 * (fixed + cash) - fixed,
        value * (1 - t["HAGGLE"] / 100) * t["ASIS_SHARE"] / 100 - t["LISTING_FEE"] - fixed,
        np.full(points, t["PARTOUT_GROSS"] * (1 - t["PARTOUT_LOSS"] / 100) - fixed),
        np.full(points, t["SCRAP_PER_TON"] * t["SCRAP_TONS"] - t["TOW_HOOK_UP"] - fixed),
    ]
    results = []
    for way in ways:
        ordered = np.sort(way)
        most = min(ordered.mean() - car["target"], ordered[int(car["most_loss"] * points)])
        results.append((ordered.mean(), ordered[: points // 20].mean(), (way < 0).mean(), most))
    price = max(r[3] for r in results)
    actions = np.vstack([way - price - car["target"] for way in ways] + [np.zeros(points)])
    now = actions.mean(axis=1).max()
    unseen = present[:, car["unseen"]]
    yes = actions @ unseen / points
    no = actions.sum(axis=1, keepdims=True) / points - yes
    worth = yes.max(axis=0) + no.max(axis=0) - now
    return results, worth


def main():
    points = int(sys.argv[2]) if len(sys.argv) > 2 else 4096
    with open(sys.argv[1], encoding="utf-8") as file:
        cars = [prepared(json.loads(line)) for line in file]
    for _ in range(3):
        times = []
        for number, car in enumerate(cars):
            rng = np.random.default_rng(number)
            start = time.process_time()
            results, worth = judged(car, rng, points)
            times.append(1000 * (time.process_time() - start))
            if not np.isfinite(worth).all() or not all(np.isfinite(r).all() for r in results):
                sys.exit("a judgement came out as no number")
    times.sort()
    print(f"{sum(times) / len(times):.1f},{times[len(times) // 2]:.1f}")


if __name__ == "__main__":
    main()
