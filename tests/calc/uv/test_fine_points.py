"""Fine points of the ultraviolet engine, each worked out in another way than the engine does."""

from datetime import date, timedelta
from math import degrees, exp, hypot, log

import numpy as np
import pytest

from calc.sources import bibliography
from calc.uv.choice import LengthFit, tube_length_for
from calc.uv.decline import DatedReading, Trend, decline_of, trend_at
from calc.uv.dose import clear_sky_uvi, declination_rad, safe_time, sun_day
from calc.uv.ground import Platform
from calc.uv.lamp import AgeBand, Fixture, Lamp, age_band, lamp_constant, uvi_at
from calc.uv.meter import Reading, fit_readings, screen_from_readings
from calc.uv.patches import patches
from calc.uv.placement import (
    COMFORTABLE_MINIMUM_M,
    SAFE_MINIMUM_M,
    Placement,
    Reason,
    check_place,
    place,
    spot,
)
from calc.uv.residuals import Pattern, pattern_of
from calc.uv.screen import NoScreen, Weave
from calc.uv.section import Box, HungTube, uvi_field

LAMP = Lamp(12.0, Fixture.POLISHED)
BOX = Box(1.2, 0.6, 0.9)
YEAR_S = 365.25 * 86_400.0


@pytest.mark.parametrize("length", [0.4, 0.6, 0.9, 1.2, 1.8, 3.0])
def test_a_choice_tells_the_half_and_the_two_thirds_it_went_by(length: float) -> None:
    choice = tube_length_for(length)
    assert choice.wanted_low_m == pytest.approx(length / 2.0)
    assert choice.wanted_high_m == pytest.approx(2.0 * length / 3.0)


def test_a_tube_outside_the_half_and_two_thirds_is_near_or_none() -> None:
    fits = {tube_length_for(length / 100.0).fit for length in range(30, 400)}
    assert fits == set(LengthFit)


@pytest.mark.parametrize("length", [0.549, 0.849])
def test_a_tube_exactly_as_long_as_the_box_still_goes_in(length: float) -> None:
    longer = tube_length_for(length).longer
    assert longer is not None
    assert longer.face_to_face_m == length
    shorter_box = tube_length_for(length - 1e-6).longer
    assert shorter_box is None or shorter_box.face_to_face_m < length


def on_each_side_of_the_tube(y_m: float) -> tuple[float, bool]:
    """Return the least way from the tube to a platform's back, and what is said of it."""
    tube = HungTube(LAMP, 0.6, 0.3, 0.5, NoScreen())
    platform = Platform(0.5, 0.7, y_m, y_m + 0.01, 0.42)
    found = patches([tube], BOX, platform, 0.0, 3.0, 5.0)
    away = min(abs(y_m - 0.3), abs(y_m + 0.01 - 0.3))
    return hypot(away, 0.08), found.too_near


def test_how_near_a_back_is_goes_by_the_way_to_the_side_too() -> None:
    told = [on_each_side_of_the_tube(y / 100.0) for y in range(12, 48)]
    assert {near for way, near in told if way < SAFE_MINIMUM_M} == {True}
    assert {near for way, near in told if way > SAFE_MINIMUM_M} == {False}


def test_how_near_a_back_is_goes_by_the_way_past_the_end_too() -> None:
    tube = HungTube(LAMP, 0.6, 0.3, 0.5, NoScreen())
    end = 0.6 + LAMP.lit_length_m / 2.0
    for past in (-0.05, 0.02, 0.06, 0.09, 0.11, 0.13, 0.14, 0.2):
        platform = Platform(end + past, end + past + 0.02, 0.29, 0.31, 0.42)
        found = patches([tube], BOX, platform, 0.0, 3.0, 5.0)
        assert found.too_near is (hypot(max(past, 0.0), 0.08) < SAFE_MINIMUM_M)


def test_a_place_too_near_to_answer_is_one_within_five_centimetres_of_the_lit_part() -> None:
    tube = HungTube(LAMP, 0.6, 0.3, 0.5, NoScreen())
    half = LAMP.lit_length_m / 2.0
    for along, across, below in (
        (0.0, 0.0, 0.049),
        (half, 0.03, 0.039),
        (half + 0.03, 0.0, 0.039),
        (half + 0.02, 0.03, 0.034),
    ):
        near = uvi_field([tube], 0.6 + along, 0.3 + across, 0.5 - below)
        beyond = max(along - half, 0.0)
        far = uvi_field([tube], 0.6 + along + 0.02, 0.3 + across, 0.5 - below - 0.02)
        assert (beyond**2 + across**2 + below**2) ** 0.5 < 0.05
        assert np.isnan(near)
        assert np.isfinite(far)
    past_the_end = uvi_field([tube], 0.6 + half + 0.048, 0.3, 0.5 - 0.03)
    assert np.isfinite(past_the_end)


def test_a_lamp_without_an_age_is_as_one_that_was_never_lit() -> None:
    assert Lamp(12.0, Fixture.POLISHED, age_s=None).age_s is None
    assert lamp_constant(LAMP) == lamp_constant(Lamp(12.0, Fixture.POLISHED, age_s=0.0))


def test_a_tube_of_exactly_a_year_is_not_old_yet() -> None:
    assert age_band(YEAR_S) is AgeBand.AGEING
    assert age_band(YEAR_S + 1.0) is AgeBand.OLD


def test_a_fit_sets_the_constant_against_the_class_whatever_the_length() -> None:
    longer = Lamp(12.0, Fixture.POLISHED, 1.1)
    readings = [Reading(d, float(uvi_at(longer, d, NoScreen()))) for d in (0.2, 0.3, 0.45)]
    assert fit_readings(readings, longer).against_class == pytest.approx(1.0, rel=1e-6)


def test_the_doubt_of_several_screens_is_that_of_the_worst() -> None:
    fine, open_ = Weave(1200.0, 1200.0, 0.0003), Weave(100.0, 100.0, 0.0003)
    factors = []
    for screens in ((fine, fine), (open_, open_), (fine, open_), (open_, fine)):
        readings = [Reading(0.3, float(uvi_at(LAMP, 0.3, screen)), screen) for screen in screens]
        factors.append(fit_readings(readings, LAMP).own.doubt.factor)
    worst = max(factors[:2])
    assert factors[2:] == pytest.approx([worst, worst], rel=0.01)


def test_a_screen_that_seems_to_add_a_little_is_told_as_one_that_takes_nothing() -> None:
    bare = [Reading(0.3, 4.0), Reading(0.3, 4.1)]
    passed = screen_from_readings(bare, [Reading(0.3, 4.1), Reading(0.3, 4.2)], LAMP)
    assert passed.best == passed.high == 1.0
    assert passed.low <= 1.0
    even = screen_from_readings(bare, bare, LAMP)
    assert even.low < even.best == 1.0


def test_a_placement_tells_the_uvi_at_the_nearest_that_is_safe() -> None:
    for low, high in ((3.0, 5.0), (0.0, 1.0), (12.0, 15.0)):
        found = place(LAMP, NoScreen(), low, high)
        assert found.at_safe_minimum == spot(LAMP, SAFE_MINIMUM_M, NoScreen())


def test_a_checked_place_is_told_with_its_own_uvi() -> None:
    found = check_place(LAMP, NoScreen(), 0.5, 3.0, 5.0)
    assert found.here == spot(LAMP, 0.5, NoScreen())


def test_a_tube_that_falls_has_a_first_a_likely_and_a_last_day_where_its_band_crosses() -> None:
    readings = [DatedReading(float(day), 6.0 * exp(-day / 300.0)) for day in range(0, 210, 30)]
    found = decline_of(readings, 2.5)
    assert found.trend is Trend.FALLING
    assert found.earliest_day is not None
    assert found.falls_below_day is not None
    assert found.falls_below_day == pytest.approx(300.0 * log(6.0 / 2.5))
    early, likely = trend_at(readings, (found.earliest_day, found.falls_below_day))
    assert early.low == pytest.approx(2.5, rel=1e-6)
    assert likely.best == pytest.approx(2.5, rel=1e-6)
    near = decline_of(readings, 2.9)
    assert near.latest_day is not None
    (late,) = trend_at(readings, (near.latest_day,))
    assert late.high == pytest.approx(2.9, rel=1e-6)


def test_a_very_strong_sun_still_has_a_safe_time() -> None:
    assert safe_time(100.0).seconds > 0.0
    assert not safe_time(100.0).whole_day


@pytest.mark.parametrize("day_of_year", [47, 135, 258, 288, 318])
def test_a_sun_straight_overhead_is_answered(day_of_year: int) -> None:
    # The days of klein1977 for these months; there rounding lifts a cosine over 1.
    month = (date(2025, 12, 31) + timedelta(days=day_of_year)).month
    straight = float(clear_sky_uvi(1.0))
    overhead = degrees(declination_rad(day_of_year))
    for step in range(-200, 200):
        noon = sun_day(overhead + step * 1e-10, month).noon_uvi
        assert noon.best == pytest.approx(straight)


def read_once(uvi: float, low: float = 3.0) -> tuple[float, float, float]:
    """Return what one reading may be wrong by, and when it was taken and is to be taken again."""
    found = decline_of([DatedReading(40.0, uvi)], low)
    assert found.now.best == uvi
    assert found.now.high / uvi == pytest.approx(uvi / found.now.low)
    return found.now.high / uvi, found.first_day, found.read_again_day


@pytest.mark.parametrize("uvi", [0.2, 0.6, 4.0, 12.0])
def test_a_weak_reading_is_doubted_by_its_last_digit_too(uvi: float) -> None:
    # Two readings repeat to 5 % each; a digit of 0.1 stands at 0.06; the meter within 15 %.
    factor, first, _ = read_once(uvi)
    repeated = 1.645 * hypot(log(1.05), log(1.05), 0.06 / uvi)
    assert log(factor) == pytest.approx(hypot(repeated, log(1.15)))
    assert first == 40.0


def test_a_reading_that_may_be_too_low_already_is_repeated_soon() -> None:
    assert read_once(3.1)[2] == 40.0 + 14.0
    assert read_once(2.0)[2] == 40.0 + 14.0
    assert read_once(6.0)[2] == 40.0 + 90.0


def test_a_line_begins_on_the_first_day_and_a_lamp_surely_too_weak_has_no_day_to_come() -> None:
    readings = [DatedReading(float(day), 6.0 * exp(-day / 100.0)) for day in (130, 10, 50, 90)]
    found = decline_of(readings, 4.0)
    assert (found.first_day, found.last_day) == (10.0, 130.0)
    assert found.now.high < 4.0
    assert found.earliest_day == found.latest_day == 130.0


@pytest.mark.parametrize(("wide", "pattern"), [(1.97, "CONSISTENT"), (2.03, "SCATTERED")])
def test_readings_scatter_where_chi_squared_is_four_for_each_degree(
    wide: float, pattern: str
) -> None:
    off = np.array([wide, -wide, 0.0])
    same = np.full(3, 0.3)
    assert pattern_of(off, np.ones(3), same, np.arange(3)) is Pattern[pattern]


def test_the_doubt_of_a_fit_has_its_source() -> None:
    fit = fit_readings([Reading(0.3, 5.0), Reading(0.4, 3.5)], LAMP)
    assert fit.fit.source in bibliography()


def told(found: Placement) -> tuple[float, float, float]:
    return found.low_uvi, found.high_uvi, found.target_uvi


@pytest.mark.parametrize(("low", "high"), [(3.0, 5.0), (0.0, 1.0), (16.0, 20.0), (0.02, 0.08)])
def test_a_placement_tells_the_range_it_went_by_whether_it_fits_or_not(
    low: float, high: float
) -> None:
    wanted = (low * high) ** 0.5 if low else high / 2.0
    assert told(place(LAMP, NoScreen(), low, high)) == pytest.approx((low, high, wanted))


def test_each_end_held_for_safety_is_told_as_that_end() -> None:
    safe = spot(LAMP, SAFE_MINIMUM_M, NoScreen()).uvi.best
    start = spot(LAMP, COMFORTABLE_MINIMUM_M, NoScreen()).uvi.best
    target = (safe + start) / 2.0
    high = 1.1 * safe
    found = place(LAMP, NoScreen(), target**2 / high, high)
    assert found.reasons == (
        Reason.NEAR_END_HELD_FOR_SAFETY,
        Reason.START_NEARER_THAN_COMFORT,
    )
