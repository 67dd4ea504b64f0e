"""Body temperatures and sizes against databases and a ministry's code (sources in animals.toml)."""

from typing import Any

import pytest

from calc.animal import Animal, BodyKind
from calc.animals import animals
from calc.limits import limits_of
from calc.setup.space import smallest_floor
from tests.published.printed import half_digit, printed, printed_table

TABLE = printed_table("animals")


def named(row: dict[str, Any]) -> str:
    return str(row["animal"])


def kept(animal: Animal, what: BodyKind, row: dict[str, Any]) -> bool:
    """Say whether the animal's own rows hold a printed range."""
    low, high = row["celsius"]
    return any(
        body.what is what and body.low_c == printed(low) and body.high_c == printed(high)
        for body in animal.bodies
    )


@pytest.mark.parametrize("row", TABLE["critical_maximum"], ids=named)
def test_every_limit_of_heat_lies_below_where_it_loses_control_of_its_body(
    row: dict[str, Any],
) -> None:
    animal = animals()[row["animal"]]
    limits, low = limits_of(animal), row["celsius"][0]
    least = float(low) - half_digit(low)
    for limit in (limits.caution_c, limits.coolest_air_c, limits.water_c, limits.room_c):
        assert limit is None or limit.value < least - 2.0


@pytest.mark.parametrize("row", TABLE["critical_minimum"], ids=named)
def test_every_limit_of_cold_lies_above_where_it_loses_control_of_its_body(
    row: dict[str, Any],
) -> None:
    animal = animals()[row["animal"]]
    night, high = limits_of(animal).night_c, row["celsius"][1]
    assert night is not None
    assert night.value > float(high) + half_digit(high)
    assert animal.night_floor_c is None or animal.night_floor_c.low >= night.value


@pytest.mark.parametrize("row", TABLE["preferred"], ids=named)
def test_what_it_chose_is_kept_and_is_no_colder_than_its_cool_end(row: dict[str, Any]) -> None:
    animal = animals()[row["animal"]]
    assert kept(animal, BodyKind.CHOSEN, row)
    cool = animal.cool_air_c or animal.water_c or animal.warm_air_c
    assert cool is not None
    assert cool.low <= float(row["celsius"][1])


@pytest.mark.parametrize("row", TABLE["smallest_floor"], ids=named)
def test_no_floor_here_is_smaller_than_the_code_asks_for(row: dict[str, Any]) -> None:
    found = smallest_floor(row["animal"])
    assert found is not None
    assert found.floor_m2 >= float(row["m2"]) - half_digit(row["m2"])
