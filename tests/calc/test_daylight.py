"""Day length: symmetry, poles, definitions; and the timer in the keeper's time."""

import time as clock
from collections.abc import Iterator
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.daylight import DayDefinition, DayKind, day, day_hours, kind_of, solar_noon
from calc.timer import LightMonth, flat_times, month_plan, monthly_mean_hours
from calc.validity import OutsideModelError
from tests.some import some

FEW = settings(max_examples=some(60), deadline=None)
CHICAGO, LONDON, SYDNEY = (
    ZoneInfo(name) for name in ("America/Chicago", "Europe/London", "Australia/Sydney")
)
DATES = st.dates(date(1901, 1, 1), date(2099, 12, 31))


@FEW
@given(latitude=st.floats(-90.0, 90.0), when=DATES)
def test_a_day_has_from_none_to_twenty_four_hours(latitude: float, when: date) -> None:
    found = day(latitude, when)
    assert 0.0 <= found.hours <= 24.0
    assert (found.sunrise is None) == (found.kind is not DayKind.ORDINARY)
    assert found.kind is kind_of(found.hours)
    if found.sunrise is not None and found.sunset is not None:
        assert found.sunrise.tzinfo is UTC
        assert (found.sunset - found.sunrise).total_seconds() / 3600.0 == pytest.approx(
            found.hours, abs=1e-3
        )


@FEW
@given(latitude=st.floats(-60.0, 60.0), when=DATES)
def test_opposite_latitudes_share_a_day_and_a_little_twilight(latitude: float, when: date) -> None:
    # Refraction and the Sun's size lengthen both: by 13 minutes in all at the equator, by 44 at 60
    # degrees in midsummer (hour angles of a Sun 0.833 degrees below the horizon).
    total = day(latitude, when).hours + day(-latitude, when).hours
    assert 24.0 < total < 24.0 + 45.0 / 60.0


@FEW
@given(latitude=st.floats(-60.0, 60.0), when=DATES, longitude=st.floats(-179.0, 179.0))
def test_twilight_is_longer_and_longitude_hardly_matters(
    latitude: float, when: date, longitude: float
) -> None:
    here = day(latitude, when)
    civil = day(latitude, when, definition=DayDefinition.CIVIL_TWILIGHT)
    assert civil.hours > here.hours
    assert day(latitude, when, longitude).hours == pytest.approx(here.hours, abs=0.1)


def test_the_sun_never_sets_or_never_rises_beyond_the_circles() -> None:
    assert day(70.0, date(2025, 6, 21)).kind is DayKind.NEVER_SETS
    assert day(70.0, date(2025, 12, 21)).kind is DayKind.NEVER_RISES
    assert day(-90.0, date(2025, 6, 21)).hours == 0.0
    assert day(90.0, date(2025, 6, 21)).hours == 24.0


@pytest.mark.parametrize("latitude", [-90.0, -75.0, -66.5, 0.0, 52.0, 66.0, 68.0, 80.0])
def test_many_days_at_once_are_the_single_days(latitude: float) -> None:
    days = np.arange("2025-01-01", "2026-01-01", dtype="datetime64[D]")
    many = day_hours(latitude, days)
    assert many.tolist() == [day(latitude, d).hours for d in days.tolist()]


def test_days_grow_to_midsummer_and_shrink_after_it() -> None:
    days = np.arange("2025-01-01", "2026-01-01", dtype="datetime64[D]")
    hours = day_hours(50.0, days)
    longest = int(np.argmax(hours))
    assert abs(longest - 171) <= 1
    assert np.all(np.diff(hours[10:longest]) > 0)
    assert np.all(np.diff(hours[longest:350]) < 0)


def test_noon_moves_four_minutes_a_degree() -> None:
    greenwich, west = solar_noon(date(2025, 5, 1), 0.0), solar_noon(date(2025, 5, 1), -15.0)
    assert (west - greenwich) == pytest.approx(timedelta(hours=1), abs=timedelta(seconds=1))


@pytest.mark.parametrize(
    ("latitude", "longitude", "when"),
    [(91.0, 0.0, date(2025, 1, 1)), (0.0, 181.0, date(2025, 1, 1)), (0.0, 0.0, date(2150, 1, 1))],
)
def test_a_place_or_year_off_the_map_is_refused(
    latitude: float, longitude: float, when: date
) -> None:
    with pytest.raises(OutsideModelError):
        day(latitude, when, longitude)


def hours_between(row: LightMonth) -> float:
    base = datetime(2025, 1, 1)
    on, off = (datetime.combine(base, t) for t in (row.times.on, row.times.off))
    return ((off - on).total_seconds() / 3600.0) % 24.0


@FEW
@given(
    latitude=st.floats(-90.0, 90.0),
    zone=st.sampled_from([CHICAGO, LONDON, SYDNEY]),
    later=st.booleans(),
)
def test_a_plan_keeps_its_bounds_and_its_times(
    latitude: float, zone: ZoneInfo, later: bool
) -> None:
    plan = month_plan(latitude, zone, 2026, half_year_later=later)
    assert [row.month for row in plan] == list(range(1, 13))
    for row in plan:
        assert 10.0 <= row.times.hours <= 14.0
        assert hours_between(row) == pytest.approx(row.times.hours)
        assert row.times.on.minute % 5 == 0
        assert (row.daylight_h in (0.0, 24.0)) <= row.is_bounded


def test_a_plan_follows_the_clocks_and_names_the_day_they_change() -> None:
    plan = month_plan(0.0, CHICAGO, 2026)
    assert {row.month: row.clocks_change for row in plan if row.clocks_change} == {
        3: date(2026, 3, 8),
        11: date(2026, 11, 1),
    }
    assert (plan[0].times.on, plan[0].times.off) == (time(6), time(18))
    assert (plan[6].times.on, plan[6].times.off) == (time(7), time(19))


@pytest.fixture(params=["UTC", "America/Chicago", "Australia/Sydney"])
def computers_zone(request: pytest.FixtureRequest) -> Iterator[None]:
    """Let the computer itself live in a zone while the test runs."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setenv("TZ", request.param)
        clock.tzset()
        yield
    clock.tzset()


@pytest.mark.usefixtures("computers_zone")
def test_a_plan_does_not_know_where_the_computer_stands() -> None:
    january, july = (month_plan(0.0, LONDON, 2026)[i].times for i in (0, 6))
    assert (january.on, january.off) == (time(6), time(18))
    assert (july.on, july.off) == (time(7), time(19))


def test_a_plan_turned_round_has_summer_in_the_other_half_of_the_year() -> None:
    native = month_plan(-30.0, CHICAGO, 2026)
    turned = month_plan(-30.0, CHICAGO, 2026, half_year_later=True)
    assert native[5].times.hours < 12.0 < turned[5].times.hours
    assert [row.daylight_h for row in turned] == [
        *[row.daylight_h for row in native[6:]],
        *[row.daylight_h for row in native[:6]],
    ]


def test_a_plan_by_longitude_is_centred_on_solar_noon() -> None:
    for row in month_plan(51.5, LONDON, 2026, longitude_deg=0.0):
        noon = solar_noon(date(2026, row.month, 15), 0.0).astimezone(LONDON)
        start = datetime.combine(noon.date(), row.times.on, LONDON)
        middle = start + timedelta(hours=row.times.hours / 2)
        assert abs((middle - noon).total_seconds()) <= 151


def test_polar_months_are_held_at_the_bound_and_named() -> None:
    plan = month_plan(75.0, LONDON, 2026)
    assert plan[5].kind is DayKind.NEVER_SETS
    assert plan[5].times.hours == 14.0
    assert plan[11].kind is DayKind.NEVER_RISES
    assert plan[11].times.hours == 10.0
    assert plan[5].is_bounded


def test_own_bounds_are_kept_and_nonsense_bounds_refused() -> None:
    plan = month_plan(60.0, LONDON, 2026, shortest_h=8.0, longest_h=16.0)
    assert max(row.times.hours for row in plan) == 16.0
    assert min(row.times.hours for row in plan) == 8.0
    with pytest.raises(OutsideModelError):
        month_plan(60.0, LONDON, 2026, shortest_h=15.0, longest_h=12.0)


def test_a_flat_day_is_twelve_hours() -> None:
    assert flat_times().hours == 12.0
    assert flat_times(13.5, time(20)).off == time(9, 30)
    with pytest.raises(OutsideModelError):
        flat_times(24.0)


def test_the_months_of_the_equator_are_alike() -> None:
    assert max(monthly_mean_hours(0.0, 2025)) - min(monthly_mean_hours(0.0, 2025)) < 0.03
