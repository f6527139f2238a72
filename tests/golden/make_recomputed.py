"""Writes recomputed.jsonl: progress and forecasts worked out again, by the plainest means,
from emergence_days.csv beside it. Run: python3 make_recomputed.py (needs only Python)."""

import csv
import json
import math
import random
from statistics import NormalDist

random.seed(201)
PHI = NormalDist()

# Maximum soil temperatures: Oregon State University Extension (Harrington, 2013); for lima bean
# the California list, for celery the handbook's as recalled, for okra the Florida list.
MAXIMUM = dict(
    asparagus=35.0, bean_lima=29.4, bean_snap=35.0, beet=35.0, cabbage=37.8, carrot=35.0,
    cauliflower=37.8, celery=29.4, corn_sweet=40.6, cucumber=40.6, eggplant=35.0, lettuce=35.0,
    muskmelon=37.8, okra=41.1, onion=35.0, parsley=32.2, parsnip=29.4, pea=29.4, pepper=35.0,
    radish=35.0, spinach=29.4, tomato=35.0, turnip=40.6, watermelon=40.6)

with open("emergence_days.csv", encoding="utf-8") as file:
    TABLE = {
        row.pop("crop"): [(float(t), 0.0 if d == "NG" else 1 / float(d)) for t, d in row.items() if d != "NT"]
        for row in csv.DictReader(line for line in file if not line.startswith("#"))}


def rate(crop, t):
    nodes = TABLE[crop]
    (t0, r0), (t1, r1) = nodes[0], nodes[1]
    if t < t0:
        return max(0.0, r0 + (r1 - r0) * (t - t0) / (t1 - t0))
    for (t0, r0), (t1, r1) in zip(nodes, nodes[1:]):
        if t0 <= t <= t1:
            return r0 + (r1 - r0) * (t - t0) / (t1 - t0)
    top, last = nodes[-1]
    end = MAXIMUM[crop] if MAXIMUM[crop] > top else top + 5
    return max(0.0, last * (end - t) / (end - top))


def day(crop, low, high, start=0.0, end=24.0):
    total = 0.0
    for i in range(24):
        h = i + 0.5
        if start <= h < end:
            total += rate(crop, (low + high) / 2 + (high - low) / 2 * math.sin(2 * math.pi * (h - 9) / 24))
    return total / 24


def none_up(n, a, b, m, tau, sigma, p):
    """By a crude sum: 400 slices of ln s, and the Beta-binomial from its recurrence."""
    weights, w = [], math.exp(math.lgamma(b + n) - math.lgamma(b) + math.lgamma(a + b) - math.lgamma(a + b + n))
    for r in range(n + 1):
        weights.append(w)
        if r < n:
            w *= (n - r) * (a + r) / ((r + 1) * (b + n - r - 1))
    total = mass = 0.0
    for i in range(400):
        z = -6 + 12 * (i + 0.5) / 400
        q = 1 - PHI.cdf((math.log(p) - m - tau * z) / sigma)
        inner, power = 0.0, 1.0
        for w in weights:
            inner += w * power
            power *= q
        total += PHI.pdf(z) * inner
        mass += PHI.pdf(z)
    return total / mass


def forecast(days, crop, n, a, b, m, tau, sigma):
    p, reached, by_day = 0.0, {}, []
    marks = {k: math.exp(m + math.hypot(sigma, tau) * PHI.inv_cdf(q)) for k, q in
             (("d10", 0.1), ("d50", 0.5), ("d90", 0.9))}
    gains = [day(crop, *d) for d in days]
    for i in range(365):
        p += gains[min(i, len(gains) - 1)]
        by_day.append(p)
        for key, mark in marks.items():
            if key not in reached and p >= mark - 1e-9:
                reached[key] = i
    # The first seedling: halve, since the chance only grows.
    low, high = -1, 365
    while high - low > 1:
        middle = (low + high) // 2
        if by_day[middle] > 0 and none_up(n, a, b, m, tau, sigma, by_day[middle]) <= 0.5:
            high = middle
        else:
            low = middle
    return dict(first=None if high == 365 else high, **{k: reached.get(k) for k in marks}), by_day[:30]


lines = []
crops = sorted(TABLE)
for i in range(300):
    crop = crops[i % len(crops)]
    low = round(random.uniform(-8, 36), random.choice([0, 1, 6]))
    high = low + round(random.uniform(0, 18), random.choice([0, 1, 6]))
    start, end = sorted(random.choice([random.uniform(0, 24), float(random.randrange(25))]) for _ in range(2))
    t = random.uniform(-10, 48)
    lines.append(dict(what="progress", crop=crop, temperature_c=t, rate=rate(crop, t), min_c=low, max_c=high,
                      day=day(crop, low, high), start=start, end=end, part=day(crop, low, high, start, end)))
for i in range(96):
    crop = crops[i % len(crops)]
    days = []
    for _ in range(random.choice([1, 1, 7, 40])):
        low = round(random.uniform(2, 26), 1)
        days.append([low, round(low + random.uniform(0, 12), 1)])
    n, a, b = random.choice([1, 6, 20, 84]), random.uniform(0.3, 30), random.uniform(0.3, 10)
    m, tau, sigma = random.choice([0.0, 0.2]), random.choice([0.15, 0.25, 0.4]), random.choice([0.28, 0.41])
    dates, by_day = forecast(days, crop, n, a, b, m, tau, sigma)
    lines.append(dict(what="forecast", crop=crop, days=days, seeds=n, a=a, b=b, mean_ln=m, tau=tau,
                      sigma=sigma, progress=by_day, **dates))

with open("recomputed.jsonl", "w") as out:
    for line in lines:
        out.write(json.dumps(line) + "\n")
