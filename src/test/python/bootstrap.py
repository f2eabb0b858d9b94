"""Limits of a ratio of sums that RatioBootstrapTest holds the project's own against.

Run: python3 src/test/python/bootstrap.py  (needs numpy and scipy; prints their versions).
"""
import numpy
import scipy
from scipy.stats import bootstrap

y = numpy.array([12, 3, 30, 7, 18, 2, 44, 9, 15, 5.0])
x = numpy.array([4.5, 5, 5, 4, 5, 3.5, 6, 5, 4.5, 5])
print("numpy", numpy.__version__, "scipy", scipy.__version__)
for method in ("percentile", "BCa"):
    result = bootstrap(
        (y, x),
        lambda a, b, axis=-1: a.sum(axis=axis) / b.sum(axis=axis),
        paired=True,
        vectorized=True,
        n_resamples=200_000,
        batch=20_000,
        confidence_level=0.95,
        method=method,
        rng=numpy.random.default_rng(1),
    )
    print(method, *result.confidence_interval)
