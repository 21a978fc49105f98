"""The price sets of the benchmark, and how their rows are parted."""
import os

import numpy as np
import pandas as pd

WORK = "target/benchmark"
SEED = 20260101
SMALL = 5000

# words and numbers are all the columns that the other libraries get; "ours" is the mapping this project reads.
SETS = {
    "us_classifieds_2018_19": dict(
        price="price_usd", year="year", odo="odometer_mi", words=["make", "model", "condition", "fuel", "transmission", "body"],
        numbers=["year", "odometer_mi", "cylinders", "awd", "day"], date="date_posted"),
    "uk_listings_2020": dict(
        price="price_gbp", year="reg_year", odo="odometer_mi",
        words=["make", "model", "transmission", "fuel"], numbers=["reg_year", "odometer_mi", "engine_l"]),
    "de_classifieds_2016_damage": dict(
        price="price_eur", year="reg_year", odo="odometer_km_band", words=["make", "model", "gearbox", "fuel", "body"],
        numbers=["reg_year", "odometer_km_band", "power_ps", "unrepaired_damage", "reg_month", "day"], date="date"),
    "us_classifieds_2020_21_title": dict(
        price="price_usd", year="year", odo="odometer_mi",
        words=["make", "model", "condition", "title", "body", "fuel", "region"],
        numbers=["year", "odometer_mi", "day"], date="month"),
    "us_auction_2020_title": dict(
        price="bid_usd", year="year", odo="odometer_mi", words=["make", "model", "title", "colour", "state"],
        numbers=["year", "odometer_mi"]),
    "us_cars_2005": dict(
        price="Price", year=None, odo="Mileage", words=["make", "body"],
        numbers=["Mileage", "Cylinder", "Doors", "Cruise", "Sound", "Leather"]),
    "us_wholesale_2009_10_badbuy": dict(
        price="costAtPurch", year="year", odo="odomRead", words=["make", "body"],
        numbers=["year", "odomRead", "purchIn2010", "ageAtSale", "transEqManual"]),
}


def named(frame, headers, other):
    """The header of the first column that holds a 1, as a word."""
    word = pd.Series(other, index=frame.index)
    for header, name in reversed(list(headers.items())):
        word = word.where(frame[header] != 1, name)
    return word


def load(name, folder):
    """Rows with a price and a day, with columns of words gathered from columns of 0 and 1 where the table has those."""
    file = f"datasets/{name}.csv" if name == "us_cars_2005" else f"{folder}/{name}.csv"
    d = pd.read_csv(file)
    spec = SETS[name]
    if name == "us_cars_2005":
        d["make"] = named(d, {m: m for m in ("Buick", "Cadillac", "Chevy", "Pontiac", "Saab", "Saturn")}, "")
        d["body"] = named(d, {b: b for b in ("convertible", "coupe", "hatchback", "sedan", "wagon")}, "")
    if name == "us_wholesale_2009_10_badbuy":
        d["make"] = named(d, {f"makeEq{m}": m for m in ("Chevrolet", "Ford", "Dodge", "Chrysler")}
                          | {"AmericanMade": "other American", "otherAsianMade": "other Asian"}, "other")
        d["body"] = named(d, {f"sizeEq{s}": s for s in ("Truck", "Medium", "SUV", "Compact", "Van")}, "other")
        d["year"] = 2009 + d["purchIn2010"] - d["ageAtSale"]
        d["date"] = (2009 + d["purchIn2010"]).astype(str) + "-07-01"
    d = d[d[spec["price"]] > 0].reset_index(drop=True)
    if "day" in spec["numbers"]:
        day = pd.to_datetime(d[spec["date"]], errors="coerce")
        d["day"] = (day - pd.Timestamp(2000, 1, 1)).dt.days
        d = d[day.notna()].reset_index(drop=True)
    return d


def cars(d, spec):
    """A number for each car: same build and odometer, and same price where the odometer is a round figure."""
    changing = ("condition", "title", "unrepaired_damage", "awd", "day", "region", "colour", "state")
    build = [c for c in spec["words"] + spec["numbers"] if c not in changing]
    odo = d[spec["odo"]]
    shared = odo.isna() | (odo % 500 == 0) | (odo < 1000)
    same = d[build].astype(str).agg("|".join, axis=1)
    return pd.factorize(same.where(~shared, same + "|" + d[spec["price"]].astype(str)))[0]


def repeats(name, folder):
    """Share of rows that are further adverts of a car."""
    d = load(name, folder)
    return 1 - len(set(cars(d, SETS[name]))) / len(d)


def splits(name, kind, folder):
    """
    Pairs of frames to fit on and to judge by. "adverts": 80/20 of all rows at random; "cars": the same of distinct
    cars, so that no repeated advert lies on both sides. A set of few rows is parted into fifths, each judged once.
    """
    spec = SETS[name]
    d = load(name, folder)
    if kind == "cars":
        d = d.iloc[np.unique(cars(d, spec), return_index=True)[1]].sort_index().reset_index(drop=True)
    order = np.random.default_rng(SEED).permutation(len(d))
    fifths = np.array_split(order, 5)
    for k in range(5 if len(d) < SMALL else 1):
        test = fifths[4 - k]
        train = np.concatenate([f for i, f in enumerate(fifths) if i != 4 - k])
        yield d.iloc[train].reset_index(drop=True), d.iloc[test].reset_index(drop=True)


def write(frame, name):
    os.makedirs(WORK, exist_ok=True)
    path = f"{WORK}/{name}.csv"
    frame.drop(columns=["day"], errors="ignore").to_csv(path, index=False)
    return path


def codes(train, test, spec):
    """Words as codes (the 250 commonest), numbers as they are."""
    columns = []
    for w in spec["words"]:
        place = {v: i for i, v in enumerate(train[w].fillna("?").value_counts().index[:250])}
        columns.append([f[w].fillna("?").map(place).astype(float) for f in (train, test)])
    for n in spec["numbers"]:
        columns.append([pd.to_numeric(f[n], errors="coerce") for f in (train, test)])
    return [np.column_stack([c[i] for c in columns]) for i in (0, 1)]
