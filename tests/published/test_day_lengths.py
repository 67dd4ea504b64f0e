"""Day lengths against published days (sources in day_lengths.toml)."""

from datetime import date
from typing import Any

import pytest

from calc.daylight import day
from tests.published.printed import printed_table

# Printed for a city, of which a part may lie a tenth of a degree from its middle.
CITY_S = 10.0


def seconds(length: str) -> float:
    parts = [int(part) for part in length.split(":")]
    return sum(part * unit for part, unit in zip(parts, (3600, 60, 1), strict=False))


@pytest.mark.parametrize("row", printed_table("day_lengths")["days"], ids=lambda row: row["place"])
def test_a_day_is_as_long_as_printed(row: dict[str, Any]) -> None:
    found = day(row["lat"], date.fromisoformat(row["date"]), row["lon"])
    half_of_last_digit = 30.0 if row["length"].count(":") == 1 else 0.5
    assert found.hours * 3600.0 == pytest.approx(
        seconds(row["length"]), abs=CITY_S + half_of_last_digit
    )
