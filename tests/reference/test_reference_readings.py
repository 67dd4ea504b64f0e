"""What readings leave open, against scipy: least squares, and the posterior summed on a grid."""

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.linalg import inv, lstsq
from scipy.stats import chi2, norm, t

from calc.uv.evidence import t_nine_in_ten, weigh
from tests.some import some

LOGS = st.lists(st.floats(-2.0, 2.0), min_size=3, max_size=9)


@given(LOGS, st.integers(0, 2**32 - 1))
@settings(max_examples=some(60), deadline=None)
def test_level_and_slope_are_those_of_weighted_least_squares(logs: list[float], seed: int) -> None:
    random = np.random.default_rng(seed)
    y = np.array(logs)
    along, weights = random.uniform(0.0, 10.0, y.size), random.uniform(1.0, 400.0, y.size)
    found = weigh(y, weights, along)
    design = np.column_stack((np.ones(y.size), along - found.middle)) * np.sqrt(weights)[:, None]
    (level, slope), *_ = lstsq(design, y * np.sqrt(weights))
    cov = inv(design.T @ design)
    assert found.level == pytest.approx(level, abs=1e-9)
    assert found.slope == pytest.approx(slope, abs=1e-9)
    ends = found.at(3.0), found.half(3.0)
    assert ends[0] == pytest.approx(level + slope * (3.0 - found.middle), abs=1e-9)
    one = np.sqrt(cov[0, 0] + (3.0 - found.middle) ** 2 * cov[1, 1])
    assert ends[1] / found.reach == pytest.approx(one, rel=1e-9)


@pytest.mark.parametrize("freedom", [3, 4, 5, 8, 9, 12, 30, 300])
def test_students_t_is_that_of_scipy(freedom: int) -> None:
    assert t_nine_in_ten(freedom) == pytest.approx(t.ppf(0.95, freedom), rel=4e-3)


@pytest.mark.parametrize(
    "read", [[0.0], [0.06, -0.05], [0.01, -0.01, 0.0, 0.005], [0.06, -0.06, 0.05, -0.05]]
)
def test_the_range_is_that_of_the_posterior_on_a_grid(read: list[float]) -> None:
    """Eight readings beforehand, whose one deviation is such that one more holds 1.645 of them."""
    y, one, before = np.array(read), 0.05, 8.0
    scale = one * 1.645 / t.ppf(0.95, before)
    mu = np.linspace(-1.5, 1.5, 6001)[:, None]
    sigma = np.exp(np.linspace(np.log(0.003), np.log(3.0), 500))[None, :]
    # σ² is scaled inverse chi-squared: ν s²/σ² is chi-squared; ln σ is the grid's own measure.
    prior = chi2.logpdf(before * scale**2 / sigma**2, before) + np.log(1.0 / sigma**2)
    likely = sum(norm.logpdf(v, mu, sigma) for v in y)
    weight = np.exp(prior + likely - np.max(prior + likely)).sum(axis=1)
    chance = np.cumsum(weight) / weight.sum()
    low, high = (float(np.interp(p, chance, mu[:, 0])) for p in (0.05, 0.95))
    found = weigh(y, np.full(y.size, one**-2.0))
    assert found.at(0.0) - found.half(0.0) == pytest.approx(low, abs=2e-3)
    assert found.at(0.0) + found.half(0.0) == pytest.approx(high, abs=2e-3)


def test_readings_that_conflict_are_doubted_as_far_as_they_lie_apart() -> None:
    """What was taken beforehand yields: two readings of 3 and 6 leave both of them possible."""
    found = weigh(np.log([3.0, 6.0]), np.full(2, 300.0))
    assert found.at(0.0) - found.half(0.0) < np.log(3.0)
    assert found.at(0.0) + found.half(0.0) > np.log(6.0)


def test_more_scatter_is_never_less_doubt() -> None:
    halves = [
        weigh(apart * np.array([1.0, -1.0, 1.0, -1.0]), np.full(4, 400.0)).half(0.0)
        for apart in np.linspace(0.0, 0.6, 121)
    ]
    assert all(b >= a for a, b in pairwise(halves))


def test_scatter_narrows_what_was_taken_beforehand_as_well_as_it_widens_it() -> None:
    weights = np.full(8, 400.0)
    before = 1.645 / np.sqrt(8 * 400.0)
    close, usual, apart = (
        weigh(0.05 * times * np.array([1.0, -1.0] * 4), weights).half(0.0)
        for times in (0.2, 0.95, 2.0)
    )
    assert close < 0.8 * before
    assert usual == pytest.approx(before, rel=0.05)
    assert apart > 1.4 * before


def test_few_readings_lean_on_what_was_taken_and_many_replace_it() -> None:
    def over_usual(count: int) -> float:
        calm = 0.005 * np.array([1.0, -1.0] * (count // 2))
        return float(weigh(calm, np.full(count, 400.0)).half(0.0) * np.sqrt(count * 400.0) / 1.645)

    two, many = over_usual(2), over_usual(200)
    assert 0.85 < two < 1.0
    assert many < 0.25
