"""Day length against ephemerides and published days (sources in day_lengths.toml)."""

from datetime import UTC, date
from math import pi
from typing import Any

import ephem
import numpy as np
import pytest
from pvlib import spa

from calc.daylight import DayDefinition, DayKind, day, day_hours
from calc.timer import monthly_mean_hours
from tests.published.printed import half_digit, printed_table

TABLE = printed_table("day_lengths")
LATITUDES = [0.0, -23.7, -35.0, 40.0, 51.5]


def seconds(length: str) -> float:
    parts = [int(part) for part in length.split(":")]
    return sum(part * unit for part, unit in zip(parts, (3600, 60, 1), strict=False))


@pytest.mark.parametrize("row", TABLE["ephemeris"], ids=lambda r: f"{r['lat']} {r['date']}")
def test_days_are_those_of_the_ephemeris_within_five_seconds(row: dict[str, Any]) -> None:
    found = day(row["lat"], date.fromisoformat(row["date"]))
    assert found.hours * 3600.0 == pytest.approx(seconds(row["length"]), abs=5.0)


@pytest.mark.parametrize("row", TABLE["published"], ids=lambda row: row["place"])
def test_days_are_the_published_ones_within_a_minute(row: dict[str, Any]) -> None:
    # Published to the minute or the second, for a city and not for a point: ten seconds hold.
    found = day(row["lat"], date.fromisoformat(row["date"]), row["lon"])
    last_digit = 30.0 if row["length"].count(":") == 1 else 0.5
    assert found.hours * 3600.0 == pytest.approx(seconds(row["length"]), abs=10.0 + last_digit)


@pytest.mark.parametrize("row", TABLE["monthly"], ids=lambda row: str(row["lat"]))
def test_monthly_means_are_those_of_the_ephemeris(row: dict[str, Any]) -> None:
    for found, text in zip(monthly_mean_hours(row["lat"], 2025), row["hours"], strict=True):
        assert found == pytest.approx(float(text), abs=2.0 * half_digit(text))


@pytest.mark.parametrize("latitude", [*LATITUDES, 60.0])
@pytest.mark.parametrize(
    ("definition", "horizon"),
    [(DayDefinition.SUNRISE_TO_SUNSET, "-0:50"), (DayDefinition.CIVIL_TWILIGHT, "-6")],
)
def test_sunrise_and_sunset_are_those_of_ephem_all_year(
    latitude: float, definition: DayDefinition, horizon: str
) -> None:
    observer, sun = ephem.Observer(), ephem.Sun()
    observer.lat, observer.lon = latitude * pi / 180.0, 0.0
    observer.pressure, observer.horizon = 0, horizon
    for when in np.arange("2025-01-01", "2025-12-31", 9, dtype="datetime64[D]"):
        found = day(latitude, when.astype(date), 0.0, definition)
        observer.date = f"{when} 12:00"
        try:
            rise = observer.previous_rising(sun, use_center=True).datetime()
            sets = observer.next_setting(sun, use_center=True).datetime()
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
