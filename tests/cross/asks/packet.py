"""What packets are worth, and how compost dries."""

from datetime import date, timedelta

import numpy as np
from scipy import stats

# Legal minimum (7 CFR 201.31) and life in years (the handbook list of Knott and Harrington).
CROPS = {"tomato": (0.75, 4), "onion": (0.70, 1), "lettuce": (0.80, 6), "pepper": (0.55, 2),
         "carrot": (0.55, 3), "cucumber": (0.80, 5)}
STORAGE = {"fridge_sealed": (5, -2), "cool_cupboard": (15, 0), "warm_room": (20, 0), "damp_shed": (15, 2)}


def make_packet(chance):
    packed = date(2015, 1, 1) + timedelta(chance.randrange(3000))
    tests = []
    for _ in range(chance.randrange(3)):
        n = chance.randrange(1, 60)
        tests.append([chance.randrange(n + 1), n])
    return {"crop": chance.choice(sorted(CROPS)), "packed": str(packed),
            "on": str(packed + timedelta(chance.randrange(2500))),
            "stated": chance.choice([None, 0.0, 1.0, chance.uniform(0.3, 1)]),
            "storage": chance.choice(sorted(STORAGE)), "tests": tests}


def answer_packet(q):
    least, life = CROPS[q["crop"]]
    warmth, moisture = STORAGE[q["storage"]]
    multiplier = 2 ** ((warmth - 15) / 5.6) * 2 ** moisture
    years = (date.fromisoformat(q["on"]) - date.fromisoformat(q["packed"])).days / 365.25
    half = (least + 1) / 2
    packed = half if q["stated"] is None else np.clip(q["stated"], 0.01, 0.99)
    fall = (stats.norm.ppf(half) - stats.norm.ppf(least)) * multiplier / life
    g = stats.norm.cdf(stats.norm.ppf(packed) - fall * years)
    up, sown = (sum(column) for column in zip(*q["tests"], (0, 0)))
    # Seed long dead is held to the least parameter that a Beta has here.
    return {"germination": float(g), "beta": [max(12 * g + up, 1e-9), max(12 * (1 - g) + sown - up, 1e-9)]}


def vapour(t):
    return 0.6108 * np.exp(17.27 * t / (t + 237.3))


def make_drying(chance):
    return {"mean_c": chance.uniform(0, 45), "covered": chance.random() < 0.5, "tray_factor": chance.uniform(0.2, 3)}


def answer_drying(q):
    pull = (1 - 0.65) * vapour(q["mean_c"]) * (0.25 if q["covered"] else 1)
    days = np.clip(2 * (1 - 0.65) * vapour(18) / pull, 1, 4)
    return {"days": float(np.clip(days * np.clip(q["tray_factor"], 0.5, 2), 1, 4))}


ASKS = {
    "packet_outlook": (800, make_packet, answer_packet, 1e-9),
    "drying_interval": (600, make_drying, answer_drying, 1e-9),
    "vapour_pressure": (500, lambda chance: {"temperature_c": chance.uniform(-40, 60)},
                        lambda q: {"kpa": float(vapour(q["temperature_c"]))}, 1e-9),
}
