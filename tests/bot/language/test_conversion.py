"""Conversion in whole numbers, against the same in fractions."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.language.units import convert, exact

PAIRS = [
    ("degF", "degC"),
    ("degC", "degF"),
    ("in", "m"),
    ("m", "in"),
    ("ft", "mm"),
    ("week", "h"),
    ("delta_degF", "delta_degC"),
    ("gal", "l"),
]


@pytest.mark.parametrize(("one", "other"), PAIRS)
@given(value=st.floats(-1e9, 1e9))
def test_a_value_is_converted_as_exactly_as_by_fractions(
    one: str, other: str, value: float
) -> None:
    assert convert(value, one, other) == float(exact(Fraction(str(value)), one, other))
