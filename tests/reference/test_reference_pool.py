"""Robust figures and partial pooling against printed results, scipy, and joint normals by numpy."""

from math import exp, sqrt

import numpy as np
import pytest
from numpy.typing import NDArray
from scipy.optimize import least_squares
from scipy.stats import median_abs_deviation, theilslopes

from calc.unknowns import NINE_IN_TEN
from calc.uv.lamp import Fixture, Lamp, uvi_at
from calc.uv.pool import Lean, Prior, Values, lean, partly_pooled, prior_of_class, spread_between
from calc.uv.pool_read import PoolRead, by_class
from calc.uv.robust import huber_middle, middle_slope, spread_of
from calc.uv.screen import NoScreen

# Copper in wholemeal flour [µg/g]: Analytical Methods Committee (1989), the figures from memory.
COPPER = [
    2.9, 3.1, 3.4, 3.4, 3.7, 3.7, 2.8, 2.5, 2.4, 2.4, 2.7, 2.2,
    5.28, 3.37, 3.03, 3.03, 28.95, 3.77, 3.4, 2.2, 3.5, 3.6, 3.7, 3.7,
]  # fmt: skip
# Eight schools: Rubin (1981) as in Gelman and others, Bayesian Data Analysis, from memory.
EFFECTS = (28.0, 8.0, -3.0, 7.0, -1.0, 1.0, 18.0, 12.0)
ERRORS = (15.0, 10.0, 16.0, 11.0, 9.0, 11.0, 10.0, 18.0)


def test_published_copper_in_flour() -> None:
    """Venables and Ripley print a middle of 3.2067 with k = 1.5 and a spread of 0.5263."""
    assert spread_of(COPPER) == pytest.approx(0.5263, abs=5e-5)
    assert huber_middle(COPPER, spread_of(COPPER)) == pytest.approx(3.2067, abs=5e-5)


@pytest.mark.parametrize("seed", range(4))
def test_the_robust_figures_are_those_of_scipy(seed: int) -> None:
    rng = np.random.default_rng(seed)
    values = np.concatenate([rng.normal(0.3, 0.2, 15), rng.normal(3.0, 1.0, 3)])
    spread = spread_of(values.tolist())
    assert spread == pytest.approx(float(median_abs_deviation(values, scale="normal")), rel=1e-6)

    def left(at: NDArray[np.float64]) -> NDArray[np.float64]:
        return np.asarray((values - at[0]) / spread)

    fitted = least_squares(left, [0.0], loss="huber", f_scale=1.5, xtol=1e-14, gtol=1e-14)
    assert huber_middle(values.tolist(), spread) == pytest.approx(float(fitted.x[0]), abs=1e-6)
    days = rng.uniform(0.0, 300.0, values.size)
    slope = theilslopes(values, days).slope
    assert middle_slope(days.tolist(), values.tolist()) == pytest.approx(float(slope))


def test_published_pooled_schools() -> None:
    """All eight as one: 7.7 with a variance of 16.6."""
    found = Prior(0.0, 1e12)
    for effect, error in zip(EFFECTS, ERRORS, strict=True):
        leant = lean(effect, error**2, found)
        found = Prior(leant.mean, leant.variance)
    assert found.mean == pytest.approx(7.7, abs=0.05)
    assert found.variance == pytest.approx(16.6, abs=0.05)


def test_partial_pooling_is_what_a_joint_normal_says() -> None:
    """The whole, each group and each value as one normal, conditioned on the values by numpy."""
    sizes, spread, before = (1, 4, 9), 0.05, Prior(-0.18, 0.017)
    besides = (Prior(0.0, 0.01), Prior(0.1, 0.02), Prior(-0.05, 0.005))
    rng = np.random.default_rng(8)
    values = [tuple(rng.normal(0.1, 0.01, n).tolist()) for n in sizes]
    pairs = enumerate(zip(values, besides, strict=True))
    groups = {i: Lean(Values(v, 1, 1), b) for i, (v, b) in pairs}
    whole, each = partly_pooled(groups, before, spread)
    count = 1 + len(sizes)
    mean = np.array([before.mean, *(before.mean + b.mean for b in besides)])
    covariance = np.full((count, count), before.variance)
    for i, beside in enumerate(besides, start=1):
        covariance[i, i] += beside.variance
    rows = np.array([i for i, n in enumerate(sizes, start=1) for _ in range(n)])
    seen = np.concatenate(values)
    of_seen = covariance[np.ix_(rows, rows)] + spread * np.eye(seen.size)
    gain = covariance[:, rows] @ np.linalg.inv(of_seen)
    posterior = mean + gain @ (seen - mean[rows])
    left = covariance - gain @ covariance[rows, :]
    assert (whole.mean, whole.variance) == pytest.approx((posterior[0], left[0, 0]))
    for i, leant in each.items():
        assert (leant.mean, leant.variance) == pytest.approx((posterior[i + 1], left[i + 1, i + 1]))


def test_a_range_of_one_tube_holds_nine_in_ten_of_them() -> None:
    """Groups of 8 to 20 keepers out of the stated prior; then new tubes, as a meter reads them."""
    rng = np.random.default_rng(20261129)
    lamp = Lamp(12.0, Fixture.POLISHED, 0.814, age_s=120.0 * 86_400.0)
    expected = uvi_at(lamp, 0.35, NoScreen())
    prior, of_lamp = prior_of_class(lamp)
    inside = tried = 0
    for _ in range(300):
        shared, deviation = rng.normal(prior.mean, sqrt(prior.variance)), sqrt(of_lamp)
        deviation *= exp(rng.normal(0.0, 0.25))
        logs = rng.normal(shared, deviation, int(rng.integers(8, 21)))
        # The age was told: between 0.8 and 1, every step alike.
        logs += np.log(rng.uniform(0.8, 1.0, logs.size))
        reads = [
            PoolRead(n, None, 0.0, lamp, NoScreen(), 0.35, float(expected * exp(v)))
            for n, v in enumerate(logs)
        ]
        (found,) = by_class(reads).values()
        half = NINE_IN_TEN * sqrt(found.leant.variance + found.lamp_variance)
        new = rng.normal(shared, deviation, 20)
        inside += int(np.sum(np.abs(new - found.leant.mean) <= half))
        tried += new.size
    assert 0.87 <= inside / tried <= 0.93


def test_the_spread_is_a_posterior_between_what_was_thought_and_what_is_read() -> None:
    rng = np.random.default_rng(5)
    wide = [rng.normal(0.0, 0.3, 200).tolist()]
    assert spread_between(wide, 0.02) == pytest.approx(0.09, rel=0.15)
    few = spread_between([[-0.3, 0.3]], 0.02)
    assert 0.02 < few < 0.09
