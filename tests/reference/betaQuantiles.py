"""Writes betaQuantiles.json: quantiles of beta distributions, by bisection at 40 digits on a series of positive terms
(DLMF 8.17.8), which is another way than the continued fraction that the tests hold against it.

Run: python3 betaQuantiles.py > betaQuantiles.json   (needs mpmath)
"""
import json
from mpmath import mp, mpf, beta

mp.dps = 40


def regularized(x, a, b):
    if x > a / (a + b):
        return 1 - regularized(1 - x, b, a)
    term = total = mpf(1)
    n = 0
    while term > mpf(10) ** -38 * total:
        term *= (a + b + n) * x / (a + 1 + n)
        total += term
        n += 1
    return x**a * (1 - x) ** b / (a * beta(a, b)) * total


def quantile(p, a, b):
    low, high = mpf(0), mpf(1)
    for _ in range(80):
        middle = (low + high) / 2
        low, high = (middle, high) if regularized(middle, a, b) < p else (low, middle)
    return low


CASES = [
    (0.025, 3.5, 7.5), (0.975, 3.5, 7.5), (0.975, 0.5, 10.5), (0.05, 1.5, 1.5), (0.3, 0.5, 0.5), (0.001, 0.5, 3.5),
    (0.999, 20.5, 0.5), (0.025, 50.5, 950.5), (0.975, 50.5, 950.5), (0.025, 4000.5, 6000.5), (0.9, 12.25, 3.75),
]
rows = [{"p": p, "a": a, "b": b, "x": float(quantile(mpf(p), mpf(a), mpf(b)))} for p, a, b in CASES]
print("[\n" + ",\n".join("  " + json.dumps(row) for row in rows) + "\n]")
