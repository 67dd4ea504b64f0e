"""Every spelling of every unit that the pattern matches has a unit."""

import re

import pytest

from bot.language.quantities import read_temperature
from bot.language.units import (
    _ALIASES,
    Dimension,
    _asked_of_pint,
    _lines,
    alias_pattern,
    unit_named,
)

SPELLINGS = [
    (dimension, unit, alias)
    for dimension, units in _ALIASES.items()
    for unit, aliases in units.items()
    for alias in aliases.split("|")
]


@pytest.mark.parametrize(("dimension", "unit", "alias"), SPELLINGS)
def test_an_alias_is_known_with_and_without_its_spaces(
    dimension: Dimension, unit: str, alias: str
) -> None:
    for spelt in (alias, alias.replace(" ", ""), alias.replace(" ", "  "), alias.upper()):
        assert re.fullmatch(alias_pattern(dimension), spelt, re.IGNORECASE)
        assert unit_named(spelt, dimension) == unit


@pytest.mark.parametrize("text", ["10degC", "10 degc", "50degF", "50 DegreesF", "10degreeC"])
def test_degrees_may_be_written_in_one_word(text: str) -> None:
    assert read_temperature(text).low == pytest.approx(10.0)


def test_what_is_kept_of_units_is_what_pint_says() -> None:
    assert _lines() == _asked_of_pint()
