"""How many seeds and cells to sow."""

import math

import numpy as np
from scipy import special, stats

MOST = 10_000


def a_beta(chance):
    return [math.exp(chance.uniform(-2, 5)), math.exp(chance.uniform(-2, 4))]


def smallest(least, most, enough):
    """By halving: more are always enough where fewer are."""
    if least > most or not enough(most):
        return None
    low, high = least - 1, most
    while high - low > 1:
        middle = (low + high) // 2
        if enough(middle):
            high = middle
        else:
            low = middle
    return high


def make_seeds(chance):
    return {"wanted": chance.choice([0, 1, 2, 6, 12, 40, 150]), "confidence": chance.choice([0.5, 0.8, 0.9, 0.95, 0.99]),
            "beta": a_beta(chance)}


def answer_seeds(q):
    fewer = np.arange(q["wanted"])
    enough = lambda n: 1 - stats.betabinom.pmf(fewer, n, *q["beta"]).sum() >= q["confidence"]
    return {"seeds": 0 if q["wanted"] == 0 else smallest(q["wanted"], MOST, enough)}


def make_cells(chance):
    return {"wanted": chance.choice([1, 2, 6, 12, 24]), "confidence": chance.choice([0.5, 0.8, 0.9, 0.95]),
            "beta": [math.exp(chance.uniform(-1, 4)), math.exp(chance.uniform(-1, 3))],
            "seeds_per_cell": chance.choice([1, 2, 3, 5])}


NODES = {}


def beta_nodes(a, b, number):
    """Gauss-Jacobi: exact over a Beta for polynomials of degree 2 number - 1."""
    if (a, b, number) not in NODES:
        NODES.clear()
        x, w = special.roots_jacobi(number, b - 1, a - 1)
        NODES[a, b, number] = ((1 + x) / 2, w / w.sum())
    return NODES[a, b, number]


def answer_cells(q):
    a, b = q["beta"]
    j = q["seeds_per_cell"]

    def enough(cells):
        # Beyond a few hundred nodes nothing is left to resolve: the integrand is flat there.
        share, weight = beta_nodes(a, b, min(cells * j // 2 + 1, 600))
        return weight @ stats.binom.sf(q["wanted"] - 1, cells, 1 - (1 - share) ** j) >= q["confidence"]

    # Doubling first: the large numbers are slow.
    most = max(q["wanted"], 1)
    while most < MOST // j and not enough(most):
        most = min(2 * most, MOST // j)
    return {"cells": smallest(q["wanted"], most, enough)}


ASKS = {
    "seeds_to_sow": (600, make_seeds, answer_seeds, 0.0),
    "cells_to_sow": (300, make_cells, answer_cells, 0.0),
}
