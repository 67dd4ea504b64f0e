"""Day lengths against ephem and pvlib, which are asked while the test runs."""

from datetime import UTC, date, datetime
from math import pi

import ephem
import numpy as np
import pytest
from pvlib import spa

from calc.daylight import DayDefinition, DayKind, day, day_hours
from calc.timer import monthly_mean_hours

LATITUDES = [0.0, -23.7, -35.0, 40.0, 51.5]


def observer_at(latitude: float, horizon: str = "-0:50") -> ephem.Observer:
    """Return who sees the Sun's centre at the horizon, without refraction of ephem's own."""
    observer = ephem.Observer()
    observer.lat, observer.lon = latitude * pi / 180.0, 0.0
    observer.pressure, observer.horizon = 0, horizon
    return observer


def rise_and_set(observer: ephem.Observer, when: np.datetime64) -> tuple[datetime, datetime]:
    sun = ephem.Sun()
    observer.date = f"{when} 12:00"
    rise = observer.previous_rising(sun, use_center=True).datetime()
    return rise, observer.next_setting(sun, use_center=True).datetime()


def hours_by_ephem(latitude: float, when: np.datetime64) -> float:
    rise, sets = rise_and_set(observer_at(latitude), when)
    return (sets - rise).total_seconds() / 3600.0


@pytest.mark.parametrize("latitude", LATITUDES)
def test_days_are_those_of_ephem_within_five_seconds(latitude: float) -> None:
    for when in np.array(
        ["2025-03-20", "2025-06-21", "2025-09-22", "2025-12-21"], dtype="datetime64[D]"
    ):
        found = day(latitude, when.astype(date)).hours
        assert found == pytest.approx(hours_by_ephem(latitude, when), abs=5.0 / 3600.0)


@pytest.mark.parametrize("latitude", [-35.0, 51.5])
def test_monthly_means_are_those_of_ephem(latitude: float) -> None:
    days = np.arange("2025-01-01", "2026-01-01", dtype="datetime64[D]")
    months = days.astype("datetime64[M]").astype(int) % 12
    hours = np.array([hours_by_ephem(latitude, when) for when in days])
    means = [float(hours[months == month].mean()) for month in range(12)]
    assert monthly_mean_hours(latitude, 2025) == pytest.approx(means, abs=0.005)


@pytest.mark.parametrize("latitude", [*LATITUDES, 60.0])
@pytest.mark.parametrize(
    ("definition", "horizon"),
    [(DayDefinition.SUNRISE_TO_SUNSET, "-0:50"), (DayDefinition.CIVIL_TWILIGHT, "-6")],
)
def test_sunrise_and_sunset_are_those_of_ephem_all_year(
    latitude: float, definition: DayDefinition, horizon: str
) -> None:
    observer = observer_at(latitude, horizon)
    for when in np.arange("2025-01-01", "2025-12-31", 9, dtype="datetime64[D]"):
        found = day(latitude, when.astype(date), 0.0, definition)
        try:
            rise, sets = rise_and_set(observer, when)
        except ephem.AlwaysUpError:
            assert found.kind is DayKind.NEVER_SETS
            continue
        if (sets - rise).total_seconds() > 86_400:
            # In the nights around midsummer at 60 degrees twilight ends only on other days.
            continue
        assert found.sunrise is not None
        assert found.sunset is not None
        for mine, theirs in ((found.sunrise, rise), (found.sunset, sets)):
            assert abs((mine - theirs.replace(tzinfo=UTC)).total_seconds()) < 15.0


@pytest.mark.parametrize("latitude", LATITUDES)
def test_days_are_those_of_the_algorithm_of_pvlib(latitude: float) -> None:
    dates = np.array([f"2025-{month:02d}-21" for month in range(1, 13)], dtype="datetime64[D]")
    midnights = dates.astype("datetime64[s]").astype(float)
    _, rise, sets = spa.transit_sunrise_sunset(midnights, latitude, 0.0, 69.0, 1)
    assert day_hours(latitude, dates) * 3600.0 == pytest.approx(sets - rise, abs=10.0)
