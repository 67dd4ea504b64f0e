"""Readings weighed together: by Student's table, by least squares of another hand, and by hand."""

from math import log, sqrt

import numpy as np
import pytest
from scipy.special import ndtr, stdtrit

from calc.uv.evidence import scatter_of, t_nine_in_ten, weigh


@pytest.mark.parametrize(
    ("freedom", "published"),
    [(4, 2.132), (5, 2.015), (6, 1.943), (8, 1.860), (10, 1.812), (20, 1.725), (120, 1.658)],
)
def test_students_t_is_that_of_any_table(freedom: float, published: float) -> None:
    # published: the column of 0.95 of any table of Student's t; the docstring promises 0.2 %.
    assert t_nine_in_ten(freedom) == pytest.approx(published, rel=2e-3)


@pytest.mark.parametrize("freedom", [8.0, 30.0, 100.0, 400.0, 1000.0])
def test_students_t_is_off_by_its_next_term_alone(freedom: float) -> None:
    """Reference: scipy's own, where 1.645 holds nine in ten; what is left falls as 1/v to 4."""
    wanted = float(stdtrit(freedom, float(ndtr(1.645))))
    assert t_nine_in_ten(freedom) == pytest.approx(wanted, rel=1e-13, abs=0.6 / freedom**4)


def test_a_level_is_the_weighted_mean_and_a_slope_that_of_least_squares() -> None:
    logs, weights = np.log(np.array([4.1, 3.2, 3.4, 2.1])), np.array([100.0, 400.0, 50.0, 200.0])
    level = weigh(logs, weights)
    assert level.at(7.0) == pytest.approx(float(np.average(logs, weights=weights)))
    assert (level.middle, level.slope, level.spread) == (0.0, 0.0, 0.0)
    assert level.total == 750.0
    along = np.array([1.0, 5.0, 6.0, 11.0])
    line = weigh(logs, weights, along)
    # reference: numpy's own fit, which takes the roots of the weights.
    slope, start = np.polyfit(along, logs, 1, w=np.sqrt(weights))
    assert line.slope == pytest.approx(slope)
    assert line.at(0.0) == pytest.approx(start)
    assert line.at(9.0) == pytest.approx(start + 9.0 * slope)
    assert line.middle == pytest.approx(float(np.average(along, weights=weights)))


def test_the_scatter_of_a_line_is_about_the_line() -> None:
    # By hand: logs 0, 1, 0 at -1, 0, 1 with weight 3: level 1/3, no slope, left 3 · 6/9 = 2.
    found = weigh(np.array([0.0, 1.0, 0.0]), np.full(3, 3.0), np.array([-1.0, 0.0, 1.0]))
    assert (found.level, found.slope) == pytest.approx((1.0 / 3.0, 0.0))
    assert (found.total, found.spread) == pytest.approx((9.0, 6.0))
    assert (found.scatter, found.freedom) == pytest.approx(scatter_of(2.0, 1))
    assert found.freedom == 9.0
    # A level through the same has one reading more beyond what was fitted.
    level = weigh(np.array([0.0, 1.0, 0.0]), np.full(3, 3.0))
    assert (level.scatter, level.freedom) == pytest.approx(scatter_of(2.0, 2))


def test_the_band_of_a_line_widens_away_from_its_middle() -> None:
    found = weigh(np.array([0.0, 1.0, 0.0]), np.full(3, 3.0), np.array([-1.0, 0.0, 1.0]))
    reach = t_nine_in_ten(9.0) * found.scatter
    assert found.reach == pytest.approx(reach)
    assert found.half(0.0) == pytest.approx(reach * sqrt(1.0 / 9.0))
    assert found.half(3.0) == found.half(-3.0) == pytest.approx(reach * sqrt(1.0 / 9.0 + 9.0 / 6.0))
    assert found.slope_half == pytest.approx(reach / sqrt(6.0))
    # By hand: 1, 0, 4 at 4, 5, 6 with weight 2: middle 5, slope 3/2, spread 4, left 2 · 25/6.
    aside = weigh(np.array([1.0, 0.0, 4.0]), np.full(3, 2.0), np.array([4.0, 5.0, 6.0]))
    assert (aside.middle, aside.slope, aside.spread) == pytest.approx((5.0, 1.5, 4.0))
    assert (aside.scatter, aside.freedom) == pytest.approx(scatter_of(25.0 / 3.0, 1))
    assert aside.half(7.0) == pytest.approx(aside.reach * sqrt(1.0 / 6.0 + 4.0 / 4.0))
    close = weigh(np.array([1.0, 0.0, 4.0]), np.full(3, 0.1), np.array([4.0, 5.0, 6.0]))
    assert close.half(7.0) == pytest.approx(close.reach * sqrt(1.0 / 0.3 + 4.0 / 0.2))
    level = weigh(np.array([0.0, 1.0]), np.full(2, 4.0))
    assert level.half(50.0) == pytest.approx(level.reach / sqrt(8.0))


def test_a_single_reading_is_doubted_by_its_own_deviations() -> None:
    one = weigh(np.array([log(4.2)]), np.array([16.0]))
    assert one.half(3.0) == pytest.approx(1.645 / 4.0)
    assert one.freedom == 8.0


def test_many_readings_tell_the_scatter_themselves() -> None:
    # By hand with ν₀ = 8: s₀ = 1.645/1.860; (8 s₀² + 12)/(8 + 12) of 12 free readings.
    before = 1.645 / 1.860
    scatter, freedom = scatter_of(12.0, 12)
    assert freedom == 20.0
    assert scatter == pytest.approx(sqrt((8.0 * before**2 + 12.0) / 20.0), rel=1e-3)
    # Just as careful as readings may be, four for each, nothing is taken from ν₀.
    assert scatter_of(48.0, 12)[1] == 20.0


def test_a_wide_scatter_is_believed_though_it_was_not_expected() -> None:
    # Twice what careful readings leave: ν₀ counts a quarter, 2 of 8.
    before = 1.645 / 1.860
    scatter, freedom = scatter_of(8.0 * 3.0, 3)
    assert freedom == pytest.approx(2.0 + 3.0)
    assert scatter == pytest.approx(sqrt((2.0 * before**2 + 24.0) / 5.0), rel=1e-3)
    # What is left to stand on is never fewer than four degrees, and nothing is no scatter.
    assert scatter_of(1e6, 1)[1] == 4.0
    assert scatter_of(0.0, 0) == pytest.approx((before, 8.0), rel=1e-3)
