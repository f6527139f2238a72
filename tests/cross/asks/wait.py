"""Wait or sow again, by a quadrature over both unknowns: Gauss-Jacobi over the share
that comes up, which is exact for the polynomials that the likelihoods are, and the
trapezoidal rule over ln s, by a grid of its own."""

import math

import numpy as np
from scipy import special, stats

from . import sowing


def make_wait(chance):
    seeds = chance.choice([1, 4, 6, 12, 20, 40, 84])
    a, b = sowing.a_beta(chance)
    sigma, tau = chance.choice([0.12, 0.28, 0.28, 0.41]), chance.choice([0.0, 0.15, 0.25, 0.4, 0.8])
    # A sowing as it might go, by another law than the one that judges it: logistic, miscounted.
    share = chance.choice([0.0, chance.betavariate(a, b)])
    slow = math.exp(chance.gauss(0, 0.25))
    times = [slow * math.exp(0.16 * math.log(1 / chance.uniform(1e-3, 0.999) - 1)) for _ in range(seeds)]
    alive = [t for t in times if chance.random() < share]
    counts = []
    for p in sorted(chance.choice([chance.uniform(0.2, 2.5), round(chance.uniform(0.2, 2.5), 1)])
                    for _ in range(chance.randrange(6))):
        up = sum(t <= p for t in alive)
        counts.append([p, max(0, up + chance.choice([0, 0, 0, 0, -1, 1]))])
    if chance.random() < 0.1:
        counts.insert(0, [0.0, 0])
    wait = {"seeds": seeds, "counts": counts, "beta": [a, b], "tau": tau, "sigma": sigma,
            "dead": chance.choice([0.05, 0.0, 0.3]), "wanted": chance.randrange(seeds + 3)}
    if chance.random() < 0.3:
        wait["mean_ln_s"] = chance.choice([0.2, -0.1])
    if chance.random() < 0.3:
        last = counts[-1][0] if counts else 0.0
        wait["horizon"] = chance.choice([0.0, last, last + chance.uniform(0, 1.2), last + chance.uniform(0, 1.2)])
    left = seeds - max([0] + [up for _, up in counts])
    if chance.random() < 0.3 and left >= 3:
        wait["dug"] = [chance.randrange(2), chance.randrange(3)]
    return wait


def ln_between(low, high):
    """ln(Phi(high) - Phi(low)), from the side where both are small."""
    flip = (low + high) > 0
    low, high = np.where(flip, -high, low), np.where(flip, -low, high)
    ln_high = special.log_ndtr(high)
    return ln_high + np.log(-np.expm1(np.minimum(special.log_ndtr(low) - ln_high, -1e-300)))


def binomial(x, n, p):
    """By logarithms: SciPy's own overflows for the smallest p."""
    ways = special.gammaln(n + 1) - special.gammaln(x + 1) - special.gammaln(np.maximum(n - x, 0) + 1)
    ln = ways + special.xlogy(x, p) + special.xlog1py(np.maximum(n - x, 0), -p)
    return np.where(x <= n, np.exp(ln), 0.0)


def answer_wait(q, nodes=170):
    seen, ever, at = [], 0, 0.0
    last = 0
    for i, (p, up) in enumerate(q["counts"]):
        if i + 1 < len(q["counts"]) and q["counts"][i + 1][0] == p:
            continue
        if up > ever:
            seen.append((at, p, up - ever))
            ever = up
        at, last = p, up
    n = max(q["seeds"], ever)
    firm, soft = q.get("dug", (0, 0))
    undug = n - ever - firm - soft
    a, b = q["beta"]
    need = q["wanted"] - last

    share, weight = sowing.beta_nodes(a, b, nodes)
    tau = q["tau"]
    ln_s = q.get("mean_ln_s", 0.0) + (np.linspace(-20, 20, 3001) * tau if tau > 0 else np.zeros(1))
    prior = stats.norm.logpdf(np.linspace(-20, 20, 3001)) if tau > 0 else np.zeros(1)
    prior -= special.logsumexp(prior)
    z = lambda p: (math.log(p) - ln_s) / q["sigma"] if p > 0 else np.full_like(ln_s, -np.inf)
    ln_left = special.log_ndtr(-z(at))
    ln_s_only = prior + firm * ln_left
    for before, after, number in seen:
        ln_s_only = ln_s_only + number * ln_between(z(before), z(after))
    # Points of ln s that weigh nothing are dropped before the grid is spread out.
    keep = ln_s_only > ln_s_only.max() - 300
    ln_left, ln_s_only = ln_left[keep], ln_s_only[keep]
    left = np.exp(ln_left)
    pi = share[:, None]
    not_up = pi * left + (1 - pi)
    ln = (np.log(weight)[:, None] + (ever + firm) * np.log(pi) + soft * np.log1p(-pi)
          + undug * np.log(not_up) + ln_s_only)
    ln_alive = special.logsumexp(ln) + math.log1p(-q["dead"])
    ln_dead = -np.inf
    if ever == 0 and q["dead"] > 0:
        ln_dead = math.log(q["dead"]) + firm * math.log(0.1) + soft * math.log(0.9)
    p_dead = math.exp(ln_dead - np.logaddexp(ln_alive, ln_dead))
    joint = np.exp(ln - special.logsumexp(ln)) * (1 - p_dead)

    coming = pi * left / not_up
    none = joint * (1 - coming) ** undug * (firm == 0)
    any_more = float((joint - none).sum())
    final = last + float((joint * (firm + undug * coming)).sum())
    by_then, firm_by_then = coming, np.ones_like(left)
    if "horizon" in q:
        ln_then = special.log_ndtr(-z(q["horizon"]))[keep]
        firm_by_then = -np.expm1(np.minimum(ln_then - ln_left, 0.0))
        by_then = pi * left * firm_by_then / not_up
    if need <= 0:
        return {"p_dead": p_dead, "p_any_more": any_more, "expected_final": final, "p_reach": 1.0, "seeds_beside": None}

    # For each share: the chances of 0, 1 ... need - 1 coming by then.
    live = joint > joint.max() * 1e-13
    rows, columns = np.nonzero(live)
    number = np.arange(need)[:, None]
    few = binomial(number, undug, by_then[rows, columns])
    if firm:
        few_firm = binomial(np.arange(firm + 1)[:, None], firm, firm_by_then[columns])
        few = sum(np.vstack([np.zeros((i, few.shape[1])), few])[:need] * few_firm[i] for i in range(firm + 1))
    short = np.array([np.bincount(rows, few[x] * joint[rows, columns], len(share)) for x in range(need)])
    reach = float((joint[rows, columns] * (1 - few.sum(axis=0))).sum())

    def with_new(m):
        missed = sum(short[x] @ stats.binom.cdf(need - x - 1, m, share) for x in range(need))
        return 1 - missed - p_dead * stats.betabinom.cdf(need - 1, m, a, b)

    beside = None
    if reach < 0.9:
        most = 1
        while most < sowing.MOST and with_new(most) < 0.9:
            most = min(2 * most, sowing.MOST)
        beside = sowing.smallest(1, most, lambda m: with_new(m) >= 0.9)
        # So many new seeds make a polynomial of a higher degree than is summed exactly.
        if nodes == 170 and (beside or sowing.MOST) > 250:
            return answer_wait(q, 700)
    return {"p_dead": p_dead, "p_any_more": any_more, "expected_final": final, "p_reach": reach,
            "seeds_beside": beside}


POSTERIOR = {key: 1e-3 for key in ("p_dead", "p_any_more", "expected_final", "p_reach")}
ASKS = {"wait_or_sow_again": (1500, make_wait, answer_wait, POSTERIOR)}
