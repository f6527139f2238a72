"""Progress and dates, from the published table of days (golden/emergence_days.csv)."""

import csv
import math
from datetime import date, timedelta
from pathlib import Path

import numpy as np
from scipy import special, stats

# Maximum soil temperatures: Oregon State University Extension (Harrington, 2013); for lima
# bean the California list, for celery the handbook's as recalled, for okra the Florida list.
MAXIMUM = dict(
    asparagus=35.0, bean_lima=29.4, bean_snap=35.0, beet=35.0, cabbage=37.8, carrot=35.0,
    cauliflower=37.8, celery=29.4, corn_sweet=40.6, cucumber=40.6, eggplant=35.0, lettuce=35.0,
    muskmelon=37.8, okra=41.1, onion=35.0, parsley=32.2, parsnip=29.4, pea=29.4, pepper=35.0,
    radish=35.0, spinach=29.4, tomato=35.0, turnip=40.6, watermelon=40.6)


def read_table():
    path = Path(__file__).parents[2] / "golden" / "emergence_days.csv"
    rows = csv.DictReader(line for line in path.read_text(encoding="utf-8").splitlines() if line[0] != "#")
    table = {}
    for row in rows:
        crop = row.pop("crop")
        nodes = [(float(t), 0.0 if d == "NG" else 1 / float(d)) for t, d in row.items() if d != "NT"]
        (t0, r0), (t1, r1) = nodes[0], nodes[1]
        top, last = nodes[-1]
        # A node where each end line meets 0, and the lines are those of interpolation.
        if last > 0:
            nodes.append((MAXIMUM[crop] if MAXIMUM[crop] > top else top + 5, 0.0))
        if r0 > 0 and r1 > r0:
            nodes.insert(0, (t0 - r0 * (t1 - t0) / (r1 - r0), 0.0))
        table[crop] = np.array(nodes).T
    return table


TABLE = read_table()
HOURS = np.arange(24) + 0.5
SINE = np.sin(2 * np.pi * (HOURS - 9) / 24)


def rate(crop, temperature):
    nodes, rates = TABLE[crop]
    return np.interp(temperature, nodes, rates)


def day(crop, low, high):
    return float(np.mean(rate(crop, (low + high) / 2 + (high - low) / 2 * SINE)))


def a_crop(chance):
    return chance.choice(sorted(TABLE))


def a_day(chance, most=26):
    low = round(chance.uniform(-5, most), chance.choice([0, 1, 6]))
    return [low, max(low, round(low + chance.uniform(0, 15), chance.choice([0, 1, 6])))]


def make_rate(chance):
    return {"crop": a_crop(chance), "temperature_c": chance.uniform(-10, 48)}


def make_day(chance):
    low, high = a_day(chance, 36)
    return {"crop": a_crop(chance), "min_c": low, "max_c": high}


def make_share(chance):
    return {"progress": chance.choice([0.0, math.exp(chance.uniform(-3, 2))]),
            "time_factor": math.exp(chance.gauss(0, 0.4)), "sigma": chance.uniform(0.05, 0.8)}


def answer_share(q):
    return {"share": stats.lognorm.cdf(q["progress"], q["sigma"], scale=q["time_factor"])}


def make_forecast(chance):
    return {"crop": a_crop(chance), "seeds": chance.choice([1, 3, 6, 20, 84, 300]),
            "beta": [chance.uniform(0.3, 30), chance.uniform(0.3, 10)],
            "tau": chance.choice([0.0, 0.15, 0.25, 0.4]), "sigma": chance.choice([0.12, 0.28, 0.41]),
            "mean_ln_s": chance.choice([0.0, 0.2, -0.1]),
            "sown": str(date(2024, 1, 1) + timedelta(chance.randrange(1500))),
            "days": [a_day(chance) for _ in range(chance.choice([1, 1, 7, 40]))]}


def none_up(q, progress):
    """P(none is up): the trapezoidal rule over ln s, the Beta-binomial over how many will come."""
    r = np.arange(q["seeds"] + 1)
    chances = stats.betabinom.pmf(r, q["seeds"], *q["beta"])
    x = np.linspace(-8, 8, 641)
    w = stats.norm.pdf(x)
    left = special.ndtr(-(math.log(progress) - q["mean_ln_s"] - q["tau"] * x) / q["sigma"])
    return float(w @ (left[:, None] ** r @ chances) / w.sum())


def answer_forecast(q):
    gains = [day(q["crop"], *d) for d in q["days"]]
    gains += [gains[-1]] * 365
    by_day = np.cumsum(gains)[:365]
    spread = math.hypot(q["sigma"], q["tau"])
    sown = date.fromisoformat(q["sown"])

    def dated(reached):
        days = np.flatnonzero(reached)
        return str(sown + timedelta(int(days[0]))) if len(days) else None

    answer = {key: dated((by_day > 0) & (by_day >= math.exp(q["mean_ln_s"] + spread * special.ndtri(share)) - 1e-9))
              for key, share in (("d10", 0.1), ("d50", 0.5), ("d90", 0.9))}
    low, high = -1, 365
    while high - low > 1:
        middle = (low + high) // 2
        if by_day[middle] > 0 and none_up(q, by_day[middle]) <= 0.5:
            high = middle
        else:
            low = middle
    answer["first"] = str(sown + timedelta(high)) if high < 365 else None
    answer["progress_by_day"] = by_day[:30].tolist()
    return answer


ASKS = {
    "rate": (800, make_rate, lambda q: {"rate_per_day": float(rate(q["crop"], q["temperature_c"]))}, 1e-9),
    "day_progress": (800, make_day, lambda q: {"progress": day(q["crop"], q["min_c"], q["max_c"])}, 1e-9),
    "emerged_share": (800, make_share, answer_share, 1e-9),
    "forecast": (500, make_forecast, answer_forecast, {"progress_by_day": 1e-9}),
}
