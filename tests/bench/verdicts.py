"""The same verdicts by NumPy and SciPy: the share integrated out by its exact
beta-binomial weights, ln s by the trapezoidal rule, all questions of a block at once.

Prints the seconds that the answers took and their sums, one JSON object."""

import json
import sys
import time

import numpy as np
from scipy import special

BLOCK = 250
# As fine as the answers on the other side: over +-8 tau by tau/8 or finer.
POINTS = 129


def padded(rows, width, fill):
    table = np.full((len(rows), width), fill)
    for line, row in zip(table, rows):
        line[: len(row)] = row
    return table


def answer(block):
    seeds = np.array([q["seeds"] for q in block], float)
    a, b = np.array([q["beta"] for q in block]).T
    tau = np.array([q["tau"] for q in block])
    sigma = np.array([q["sigma"] for q in block])
    dead = np.array([q["dead"] for q in block])
    wanted = np.array([q["wanted"] for q in block], float)
    longest = max([1] + [len(q["counts"]) for q in block])
    at = padded([[p for p, _ in q["counts"]] for q in block], longest, np.nan)
    up = padded([[n for _, n in q["counts"]] for q in block], longest, np.nan)
    ever = np.nan_to_num(np.nanmax(np.hstack([up, np.zeros((len(block), 1))]), axis=1))
    last = np.nanmax(np.hstack([at, np.zeros((len(block), 1))]), axis=1)
    new = np.diff(np.hstack([np.zeros((len(block), 1)), np.nan_to_num(up, nan=0.0)]), axis=1)
    new = np.where(np.isnan(up), 0.0, new)

    z = np.linspace(-8, 8, POINTS)
    ln_s = tau[:, None] * z
    weight = np.broadcast_to(-z * z / 2, ln_s.shape).copy()
    before = np.full(ln_s.shape, -np.inf)
    for i in range(longest):
        with np.errstate(divide="ignore", invalid="ignore"):
            here = (np.log(at[:, i])[:, None] - ln_s) / sigma[:, None]
            ln_here = special.log_ndtr(here)
            step = ln_here + np.log(-np.expm1(np.minimum(special.log_ndtr(before) - ln_here, -1e-300)))
        some = new[:, i] > 0
        weight[some] += new[some, i][:, None] * step[some]
        known = ~np.isnan(at[:, i])
        before[known] = here[known]
    ln_left = special.log_ndtr(-before)

    m = (seeds - ever).astype(int)
    r = np.arange(m.max() + 1)[None, :]
    rest = np.maximum(m[:, None] - r, 0)
    ways = special.gammaln(m + 1.0)[:, None] - special.gammaln(r + 1.0) - special.gammaln(rest + 1.0)
    ways = ways + special.betaln((a + ever)[:, None] + r, b[:, None] + rest)
    ways = np.where(r <= m[:, None], ways, -np.inf)
    ln = ways[:, :, None] + r[:, :, None] * ln_left[:, None, :] + weight[:, None, :]
    whole = special.logsumexp(ln, axis=(1, 2))
    by_more = special.logsumexp(ln, axis=2) - whole[:, None]
    # The prior of all of it, against which a dead sowing weighs.
    prior = special.logsumexp(np.broadcast_to(-z * z / 2, ln_s.shape), axis=1) + special.betaln(a, b)
    alive = whole - prior + np.log1p(-dead)
    with np.errstate(divide="ignore"):
        ln_dead = np.where(ever == 0, np.log(dead), -np.inf)
    p_alive = np.exp(alive - np.logaddexp(alive, ln_dead))
    chances = np.exp(by_more) * p_alive[:, None]
    any_more = chances[:, 1:].sum(axis=1)
    need = wanted - ever
    reach = np.where(need <= 0, 1.0, np.where(r >= need[:, None], chances, 0.0).sum(axis=1))
    return any_more.sum(), reach.sum()


questions = [json.loads(line) for line in open(sys.argv[1], encoding="utf-8")]
answer(questions[:BLOCK])
begun = time.perf_counter()
sums = np.array([answer(questions[i : i + BLOCK]) for i in range(0, len(questions), BLOCK)]).sum(axis=0)
print(json.dumps({"seconds": time.perf_counter() - begun, "any_more": sums[0], "reach": sums[1]}))
