"""Conversion in whole numbers, against the same in fractions."""

from fractions import Fraction

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.ask import ask
from bot.language.units import convert, exact
from bot.preferences import Preferences

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


@pytest.mark.parametrize(
    ("asked", "told"),
    [
        ("0.009in", "0.009 in is 0.023 cm."),
        ("0.5mm", "0.05 cm is 0.02 in."),
        ("12.3456 in", "12.3456 in is 31.3578 cm."),
        ("98.65F", "98.65 °F is 37.028 °C."),
        ("14 1/3 in", "14.33 in is 36.41 cm."),
        ("0in", "0 in is 0 cm."),
        ("14in", "14 in is 35.56 cm."),
    ],
)
def test_every_digit_that_was_asked_about_is_told(asked: str, told: str) -> None:
    # Exact: an inch is 2.54 cm, a degree Fahrenheit five ninths of a degree Celsius.
    assert ask(f"convert {asked}", Preferences()).brief[0].text == told
