"""Writes distributions.jsonl: SciPy's answers to random questions about emergence,
packets and the first seedling. Run: python3 make_distributions.py (needs numpy, scipy)."""

import json
import math
import random

import numpy as np
from scipy import integrate, stats

random.seed(1954)
lines = []


def add(**line):
    lines.append(line)


for _ in range(200):
    p = math.exp(random.uniform(-3, 2))
    s = math.exp(random.gauss(0, 0.4))
    sigma = random.uniform(0.05, 0.8)
    add(what="share", progress=p, time_factor=s, sigma=sigma,
        share=stats.lognorm.cdf(p, sigma, scale=s))

for _ in range(100):
    p = math.exp(random.uniform(-2, 1.5))
    m, tau, sigma = random.uniform(-0.5, 0.5), random.uniform(0.05, 0.6), random.uniform(0.1, 0.6)
    mean = integrate.quad(
        lambda x: stats.norm.pdf(x, m, tau) * stats.norm.cdf((math.log(p) - x) / sigma),
        m - 10 * tau, m + 10 * tau, epsabs=1e-12, limit=200)[0]
    add(what="average_share", progress=p, mean_ln=m, tau=tau, sigma=sigma, share=mean)

for i in range(100):
    a, b = (math.exp(random.uniform(-4, 6)) for _ in range(2))
    level = random.choice([0.5, 0.8, 0.9, 0.95])
    low, high = stats.beta.interval(level, a, b)
    add(what="span", a=a, b=b, level=level, mean=stats.beta.mean(a, b), low=low, high=high)


def none_up(n, a, b, f):
    """E[(1 - pi f)^n] by adaptive quadrature with the Beta's end points as weight."""
    value = integrate.quad(lambda x: (1 - x * f) ** n, 0, 1,
                           weight="alg", wvar=(a - 1, b - 1), epsabs=0, epsrel=1e-11)[0]
    whole = integrate.quad(lambda x: 1.0, 0, 1,
                           weight="alg", wvar=(a - 1, b - 1), epsabs=0, epsrel=1e-11)[0]
    return value / whole


def none_up_small(n, a, b, f):
    """The same for parameters near 0, where that weight is too steep: over how many would come up."""
    r = np.arange(n + 1)
    return float(np.sum(stats.betabinom.pmf(r, n, a, b) * (1 - f) ** r))


for i in range(60):
    small = i % 4 == 0
    a, b = (math.exp(random.uniform(-4, 0) if small else random.uniform(-0.5, 4)) for _ in range(2))
    n = random.choice([1, 2, 5, 12, 20, 60] if small else [1, 2, 5, 12, 40, 100, 300])
    p, m = math.exp(random.uniform(-1.2, 0.8)), random.uniform(-0.3, 0.3)
    tau, sigma = random.choice([0.0, 0.15, 0.25, 0.4]), random.choice([0.1, 0.28, 0.41])
    inner = none_up_small if small else none_up
    if tau == 0.0:
        none = inner(n, a, b, stats.norm.cdf((math.log(p) - m) / sigma))
    else:
        x = np.linspace(-8, 8, 401)
        y = [stats.norm.pdf(z) * inner(n, a, b, stats.norm.cdf((math.log(p) - m - tau * z) / sigma))
             for z in x]
        none = integrate.simpson(y, x=x)
    add(what="any_up", progress=p, seeds=n, a=a, b=b, mean_ln=m, tau=tau, sigma=sigma, any_up=1 - none)

# Expected germination on the probit scale: legal minimum and life of six crops, typed from
# 7 CFR 201.31 and the handbook list of Knott and Harrington.
CROPS = {"tomato": (0.75, 4), "onion": (0.70, 1), "lettuce": (0.80, 6), "pepper": (0.55, 2),
         "carrot": (0.55, 3), "cucumber": (0.80, 5)}
STORAGE = {"fridge_sealed": (5, -2), "cool_cupboard": (15, 0), "warm_room": (20, 0), "damp_shed": (15, 2)}
probit, phi = stats.norm.ppf, stats.norm.cdf
for _ in range(150):
    crop = random.choice(sorted(CROPS))
    least, life = CROPS[crop]
    storage = random.choice(sorted(STORAGE))
    warmth, moisture = STORAGE[storage]
    m = 2 ** ((warmth - 15) / 5.6) * 2 ** moisture
    age = random.uniform(0, 8)
    stated = random.choice([None, 0.0, 1.0, random.uniform(0.3, 1)])
    half = (least + 1) / 2
    packed = half if stated is None else min(max(stated, 0.01), 0.99)
    per_year = (probit(half) - probit(least)) * m / life
    g = phi(probit(packed) - per_year * age)
    a, b, tests = 12 * g, 12 * (1 - g), []
    for _ in range(random.randrange(3)):
        of = random.randrange(1, 60)
        up, old = random.randrange(of + 1), random.choice([0.0, 0.9, random.uniform(1.1, 4)])
        tests.append([up, of, old])
        counted = up
        if old > 1:
            then = min(max(up / of, 0.01), 0.99)
            counted = min(up, of * phi(probit(then) - per_year * old))
        a, b = a + counted, b + of - counted
    add(what="packet", crop=crop, age=age, stated=stated, storage=storage, tests=tests,
        germination=g, a=a, b=b)

with open("distributions.jsonl", "w") as out:
    for line in lines:
        out.write(json.dumps(line) + "\n")
