"""How sowings did: indices, intervals and comparisons."""

import math

import numpy as np
from scipy import stats


def make_indices(chance):
    counts = [chance.choice([0, 0, chance.randrange(12)]) for _ in range(chance.randrange(1, 30))]
    return {"new_counts": counts, "seeds": max(1, sum(counts) + chance.choice([0, chance.randrange(40)]))}


def answer_indices(q):
    counts = np.array(q["new_counts"])
    days = np.repeat(np.arange(1, len(counts) + 1), counts)
    up = len(days)
    answer = {"percent": 100 * up / q["seeds"]}
    missing = dict.fromkeys(["t50_coolbear", "mean_time", "variance", "cvg", "synchrony", "uncertainty"])
    if up == 0:
        return answer | missing
    together = np.concatenate([[0], np.cumsum(counts)])
    after = int(np.argmax(together >= (up + 1) / 2))
    answer |= missing | {
        "t50_coolbear": float(np.interp((up + 1) / 2, together[after - 1:after + 1], [after - 1, after])),
        "mean_time": float(days.mean()), "cvg": 100 / float(days.mean()),
        "uncertainty": float(stats.entropy(counts, base=2))}
    if up > 1:
        pairs = sum(math.comb(int(n), 2) for n in counts)
        answer |= {"variance": float(days.var(ddof=1)), "synchrony": pairs / math.comb(up, 2)}
    return answer


def a_count(chance, most):
    n = chance.choice([1, chance.randrange(1, 30), chance.randrange(1, most)])
    return [chance.choice([0, n, chance.randrange(n + 1)]), n]


def make_interval(chance):
    k, n = a_count(chance, 2000)
    return {"successes": k, "trials": n, "level": chance.choice([0.5, 0.8, 0.9, 0.95, 0.99])}


def answer_interval(q):
    k, n, tail = q["successes"], q["trials"], (1 - q["level"]) / 2
    low = 0.0 if k == 0 else stats.beta.ppf(tail, k, n - k + 1)
    high = 1.0 if k == n else stats.beta.isf(tail, k + 1, n - k)
    return {"low": float(low), "high": float(high)}


NODES, WEIGHTS = np.polynomial.legendre.leggauss(400)


def answer_higher(q):
    """Gauss-Legendre, exact for the polynomial that the integrand is."""
    (ka, na), (kb, nb) = q["a"], q["b"]
    x = (1 + NODES) / 2
    return {"p_a_higher": float(WEIGHTS / 2 @ (stats.beta.pdf(x, kb + 1, nb - kb + 1) * stats.beta.sf(x, ka + 1, na - ka + 1)))}


ASKS = {
    "germination_indices": (700, make_indices, answer_indices, 1e-9),
    "interval": (600, make_interval, answer_interval, 1e-9),
    "higher": (500, lambda chance: {"a": a_count(chance, 300), "b": a_count(chance, 300)}, answer_higher, 1e-9),
}
