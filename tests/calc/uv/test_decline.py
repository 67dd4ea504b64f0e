"""Fading: the line through dated readings, its band, and what few readings say."""

from itertools import permutations
from math import exp, log

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.uv.dated import DatedReading
from calc.uv.decline import (
    READ_AGAIN_DAYS,
    Decline,
    Trend,
    decline_of,
    trend_at,
)
from calc.validity import OutsideModelError
from tests.some import some


def fading(rate_per_day: float, days: list[float], start: float = 5.0) -> list[DatedReading]:
    return [DatedReading(day, start * exp(-rate_per_day * day)) for day in days]


@given(st.floats(0.0015, 0.006), st.floats(60.0, 200.0))
@settings(max_examples=some(40), deadline=None)
def test_a_clean_decline_crosses_on_its_day(rate: float, span: float) -> None:
    low = 5.0 * exp(-rate * span * 1.5)
    found = decline_of(fading(rate, list(np.linspace(0.0, span, 8)), 5.0), max(low, 0.06))
    if found.trend is not Trend.FALLING:
        assert rate * span < 0.25
        return
    assert found.falls_below_day is not None
    assert found.falls_below_day == pytest.approx(1.5 * span, rel=1e-6)
    assert found.month_factor is not None
    assert found.month_factor.best == pytest.approx(exp(-30.0 * rate))
    assert found.earliest_day is not None
    assert found.last_day <= found.earliest_day <= found.falls_below_day
    assert found.latest_day is None or found.latest_day >= found.falls_below_day


def test_the_line_is_that_of_scipy() -> None:
    from scipy.stats import linregress

    days = [0.0, 20.0, 45.0, 90.0, 120.0]
    uvis = [5.0, 4.2, 4.4, 3.1, 3.3]
    found = decline_of([DatedReading(d, u) for d, u in zip(days, uvis, strict=True)], 1.0)
    line = linregress(days, np.log(uvis))
    assert found.month_factor is not None
    assert log(found.month_factor.best) / 30.0 == pytest.approx(line.slope)


def test_the_line_is_told_day_by_day() -> None:
    readings = fading(0.003, [0.0, 50.0, 100.0])
    now, later = trend_at(readings, [100.0, 130.0])
    found = decline_of(readings, 3.0)
    assert now.best == found.now.best
    assert found.now.low < now.low < now.high < found.now.high
    assert found.month_factor is not None
    assert later.best == pytest.approx(now.best * found.month_factor.best)
    assert later.high / later.low > now.high / now.low
    assert trend_at(readings[:2], [0.0]) == ()


def test_the_order_of_readings_does_not_matter() -> None:
    readings = fading(0.003, [0.0, 50.0, 100.0])
    results = {decline_of(list(order), 3.0) for order in permutations(readings)}
    assert len(results) == 1


def test_a_steady_lamp_is_steady_and_is_read_again_late() -> None:
    found = decline_of([DatedReading(d, u) for d, u in ((0, 4.4), (60, 4.5), (150, 4.3))], 3.0)
    assert found.trend is Trend.STEADY
    assert not found.change_is_real
    assert found.falls_below_day is None
    assert found.read_again_day == 150 + READ_AGAIN_DAYS[1]


def test_noise_alone_is_seldom_called_a_trend() -> None:
    random = np.random.default_rng(3)
    days = np.linspace(0.0, 180.0, 6)
    called = 0
    for _ in range(200):
        seen = 4.0 * np.exp(random.normal(0.0, 0.07, 6))
        found = decline_of([DatedReading(d, u) for d, u in zip(days, seen, strict=True)], 1.0)
        called += found.trend is not Trend.STEADY
    assert called / 200 < 0.15


def test_a_tube_that_gains_is_called_rising() -> None:
    found = decline_of([DatedReading(d, u) for d, u in ((0, 3.0), (60, 4.0), (120, 5.2))], 2.0)
    assert found.trend is Trend.RISING
    assert found.falls_below_day is None


def test_a_lamp_already_too_weak_says_so() -> None:
    found = decline_of(fading(0.01, [0.0, 40.0, 80.0, 120.0]), 3.0)
    assert found.below_already
    assert found.falls_below_day is not None
    assert found.falls_below_day < found.last_day
    assert found.earliest_day == found.last_day
    assert found.read_again_day == found.last_day + READ_AGAIN_DAYS[0]


def test_a_day_far_beyond_the_readings_is_not_told() -> None:
    found = decline_of(fading(0.02, [0.0, 8.0, 16.0, 24.0]), 0.2)
    assert found.trend is Trend.FALLING
    assert found.falls_below_day is None
    assert found.horizon_day == pytest.approx(24.0 + 2.0 * 24.0)


@pytest.mark.parametrize(
    ("seen", "real"), [([4.0], False), ([4.0, 3.7], False), ([4.0, 2.4], True)]
)
def test_fewer_than_three_readings_say_what_they_can(seen: list[float], real: bool) -> None:
    found = decline_of([DatedReading(60.0 * i, u) for i, u in enumerate(seen)], 3.0)
    assert found.trend is Trend.TOO_FEW
    assert found.change_is_real is real
    assert found.changed == pytest.approx(seen[-1] / seen[0])
    assert found.now.low < seen[-1] < found.now.high
    assert found.month_factor is None
    assert found.below_already is (seen[-1] < 3.0)


def test_three_readings_on_one_day_make_no_line() -> None:
    found: Decline = decline_of([DatedReading(5.0, u) for u in (4.0, 4.1, 4.2)], 3.0)
    assert found.trend is Trend.TOO_FEW


@pytest.mark.parametrize("low", [0.0, -1.0, 30.0, float("nan")])
def test_an_impossible_range_is_refused(low: float) -> None:
    with pytest.raises(OutsideModelError):
        decline_of([DatedReading(0.0, 4.0)], low)


def test_an_impossible_reading_is_refused() -> None:
    with pytest.raises(OutsideModelError):
        DatedReading(0.0, 0.0)
    with pytest.raises(OutsideModelError):
        decline_of([], 3.0)
