"""Days of sun and lamp: symmetry, poles, and what is refused."""

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.sources import bibliography
from calc.uv.dose import SUN_DOUBTS, clear_sky_uvi, dose_sed, safe_time, sun_day
from calc.uv.vitamin_d import vitamin_d_weight
from calc.validity import OutsideModelError


@given(st.floats(-90.0, 90.0), st.integers(1, 12))
def test_a_day_of_sun_is_between_nothing_and_noon_all_day(latitude: float, month: int) -> None:
    day = sun_day(latitude, month)
    assert 0.0 <= day.dose.best <= dose_sed(day.noon_uvi.best, 24.0)
    assert 0.0 <= day.strong_hours <= 24.0
    assert day.strong_hours == 0.0 or day.noon_uvi.best >= 3.0


def test_half_a_year_later_the_other_half_of_the_earth_has_the_same_sun() -> None:
    # June at 40° north and December at 40° south.
    north, south = sun_day(40.0, 6), sun_day(-40.0, 12)
    assert north.noon_uvi.best == pytest.approx(south.noon_uvi.best, rel=0.01)
    assert north.dose.best == pytest.approx(south.dose.best, rel=0.01)


def test_the_polar_night_is_dark_and_the_polar_day_even() -> None:
    assert sun_day(90.0, 12).dose.best == 0.0
    pole = sun_day(90.0, 6)
    assert pole.dose.best == pytest.approx(dose_sed(pole.noon_uvi.best, 24.0), rel=1e-6)


def test_a_sun_overhead_at_noon_has_the_strongest_uvi() -> None:
    assert sun_day(0.0, 3).noon_uvi.best == pytest.approx(12.5, rel=0.01)


def test_the_dose_is_the_sum_of_small_steps() -> None:
    # A finer sum of the printed formula than the one inside, with mu written out.
    day = sun_day(40.0, 6)
    tilt = np.radians(23.45) * np.sin(2 * np.pi * (284 + 162) / 365)
    hours = np.linspace(-12.0, 12.0, 200_001)
    mu = np.sin(np.radians(40.0)) * np.sin(tilt) + np.cos(np.radians(40.0)) * np.cos(tilt) * np.cos(
        np.radians(15.0) * hours
    )
    total = 0.9 * float(np.trapezoid(clear_sky_uvi(mu), hours))
    assert day.dose.best == pytest.approx(total, rel=1e-4)


def test_less_ozone_lets_more_through() -> None:
    assert sun_day(40.0, 6, 250.0).dose.best > sun_day(40.0, 6, 350.0).dose.best


def test_below_the_horizon_there_is_nothing() -> None:
    assert clear_sky_uvi([-1.0, -0.1, 0.0]).tolist() == [0.0, 0.0, 0.0]


def test_a_weak_lamp_may_light_a_whole_working_day() -> None:
    assert safe_time(0.05).whole_day
    assert safe_time(0.05).seconds == 8 * 3600
    assert not safe_time(0.1).whole_day


@given(st.floats(0.1, 100.0))
def test_twice_the_uvi_is_half_the_time(uvi: float) -> None:
    assert safe_time(uvi).seconds == pytest.approx(1875.0 / uvi)


def test_the_doubts_of_the_sun_have_sources() -> None:
    assert {doubt.source for doubt in SUN_DOUBTS} <= set(bibliography())


def test_vitamin_d_is_straight_between_rows_and_nothing_outside() -> None:
    assert float(vitamin_d_weight(300.5)) == pytest.approx((0.951 + 0.917) / 2)
    assert vitamin_d_weight([251.9, 330.1]).tolist() == [0.0, 0.0]


@pytest.mark.parametrize(
    ("latitude", "month", "ozone"),
    [(91.0, 6, 300.0), (float("nan"), 6, 300.0), (0.0, 0, 300.0), (0.0, 13, 300.0), (0.0, 6, 50.0)],
)
def test_a_sun_outside_the_model_is_refused(latitude: float, month: int, ozone: float) -> None:
    with pytest.raises(OutsideModelError):
        sun_day(latitude, month, ozone)


@pytest.mark.parametrize("uvi", [0.0, -1.0, 200.0, float("nan")])
def test_a_uvi_that_is_none_has_no_safe_time(uvi: float) -> None:
    with pytest.raises(OutsideModelError):
        safe_time(uvi)


def test_a_cosine_above_one_is_refused() -> None:
    with pytest.raises(OutsideModelError):
        clear_sky_uvi(1.1)
