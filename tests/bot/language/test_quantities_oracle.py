"""Thousands of generated quantities against pint's own full registry and the printed factors.

The reader converts with a small registry of its own; here pint's default registry, made and kept
by others, says what each quantity is. NIST Special Publication 811, appendix B, prints inch and
foot as exact and gives the two temperature conversions.
"""

from fractions import Fraction
from functools import cache

import pint
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.language.quantities import (
    Units,
    convert,
    read_duration,
    read_length,
    read_power,
    read_temperature,
    read_temperature_difference,
    read_volume,
)
from tests.some import some


@cache
def registry() -> "pint.UnitRegistry[float]":
    return pint.UnitRegistry()


SPELLINGS = {
    "in": ["in", " in", '"', " inches", "”", "″", "''", "IN"],
    "ft": ["ft", " feet", "'", "’", " foot"],
    "cm": ["cm", " cm", " centimetres", "CM", "㎝"],
    "mm": ["mm", " mm", " millimeters"],
    "m": ["m", " m", " metres"],
}
DEGREES = {
    "degF": ["F", " F", "°F", " °F", "℉", " deg f", " fahrenheit"],
    "degC": ["C", " C", "°C", "º c", "℃", " celsius"],
}
TIMES = {
    "second": [" s", " seconds"],
    "minute": [" min"],
    "hour": ["h", " hours", " hrs"],
    "day": [" days", "d"],
    "week": [" weeks"],
    "month": [" months", " mo"],
    "year": [" years", "yr"],
}


@st.composite
def numbers(draw: st.DrawFn, most: int = 2000) -> tuple[str, float]:
    """A number as somebody may write it, and its value."""
    whole = draw(st.integers(0, most))
    form = draw(st.sampled_from(["whole", "point", "comma", "fraction", "vulgar", "wide"]))
    if form == "whole":
        return str(whole), float(whole)
    if form == "wide":
        return str(whole).translate({48 + d: 0xFF10 + d for d in range(10)}), float(whole)
    if form == "fraction":
        bottom = draw(st.sampled_from([2, 4, 8, 16]))
        top = draw(st.integers(1, bottom - 1))
        return f"{whole} {top}/{bottom}", float(whole + Fraction(top, bottom))
    if form == "vulgar":
        sign, value = draw(st.sampled_from([("½", 0.5), ("¼", 0.25), ("¾", 0.75), ("⅛", 0.125)]))
        return f"{whole}{sign}", whole + value
    places = f"{draw(st.integers(0, 99)):0{draw(st.integers(1, 2))}}"[:2]
    return f"{whole}{'.' if form == 'point' else ','}{places}", float(f"{whole}.{places}")


def spelt(table: dict[str, list[str]]) -> st.SearchStrategy[tuple[str, str]]:
    """A unit of the table with one of its spellings."""
    return st.sampled_from([(unit, text) for unit, texts in table.items() for text in texts])


@settings(max_examples=some(1500))
@given(numbers(), spelt(SPELLINGS))
def test_a_length_is_what_pint_says(number: tuple[str, float], unit: tuple[str, str]) -> None:
    measure = read_length(number[0] + unit[1])
    expected = registry().Quantity(number[1], unit[0]).to("m").magnitude
    assert measure.low == pytest.approx(expected, rel=1e-12, abs=1e-15)
    assert measure.unit == unit[0]


@settings(max_examples=some(1000))
@given(numbers(500), st.sampled_from(["", "-", "−", "+"]), spelt(DEGREES))
def test_a_temperature_is_what_pint_says(
    number: tuple[str, float], sign: str, unit: tuple[str, str]
) -> None:
    value = -number[1] if sign in ("-", "−") else number[1]
    if value < -270:
        return
    measure = read_temperature(sign + number[0] + unit[1])
    expected = registry().Quantity(value, unit[0]).to("degC").magnitude
    assert measure.low == pytest.approx(expected, rel=1e-12, abs=1e-9)


@settings(max_examples=some(300))
@given(numbers(300), spelt(DEGREES))
def test_a_difference_is_what_pint_says(number: tuple[str, float], unit: tuple[str, str]) -> None:
    measure = read_temperature_difference(number[0] + unit[1])
    expected = registry().Quantity(number[1], f"delta_{unit[0]}").to("kelvin").magnitude
    assert measure.low == pytest.approx(expected, rel=1e-12)


@settings(max_examples=some(300))
@given(numbers(500), spelt(TIMES))
def test_a_time_is_what_pint_says(number: tuple[str, float], unit: tuple[str, str]) -> None:
    expected = registry().Quantity(number[1], unit[0]).to("s").magnitude
    assert read_duration(number[0] + unit[1]).low == pytest.approx(expected, rel=1e-12)


@settings(max_examples=some(200))
@given(numbers(500))
def test_watts_and_volumes_are_what_pint_says(number: tuple[str, float]) -> None:
    text, value = number
    litres = registry().Quantity(value, "litre").to("m**3").magnitude
    gallons = registry().Quantity(value, "US_liquid_gallon").to("m**3").magnitude
    assert read_power(f"{text} W").low == value
    assert read_volume(f"{text} l").low == pytest.approx(litres, rel=1e-12)
    assert read_volume(f"{text} gallons").low == pytest.approx(gallons, rel=1e-12)


@settings(max_examples=some(500))
@given(
    st.integers(0, 40),
    numbers(10),
    st.sampled_from(["'{}\"", " ft {} in", "ft{}in", " feet, {} inches"]),
)
def test_feet_and_inches_add_up(feet: int, inches: tuple[str, float], form: str) -> None:
    text = str(feet) + form.format(inches[0])
    expected = registry().Quantity(feet, "ft") + registry().Quantity(inches[1], "in")
    assert read_length(text).low == pytest.approx(expected.to("m").magnitude, rel=1e-12)


@settings(max_examples=some(500))
@given(
    numbers(200), numbers(200), st.sampled_from(["-", " - ", "–", " to ", "~"]), spelt(SPELLINGS)
)
def test_a_range_holds_the_two_values(
    one: tuple[str, float], two: tuple[str, float], joint: str, unit: tuple[str, str]
) -> None:
    if joint == "-" and "/" in two[0] + one[0] + "½" * (two[0][-1] in "½¼¾⅛"):
        # A hyphen right before a fraction is 14-1/2, a number and no range.
        joint = " to "
    measure = read_length(f"{one[0]}{joint}{two[0]}{unit[1]}")
    ends = sorted(read_length(f"{text}{unit[1]}").low for text in (one[0], two[0]))
    assert [measure.low, measure.high] == ends


@given(st.floats(-1e6, 1e6), st.sampled_from([("in", "m"), ("degF", "degC"), ("ft", "cm")]))
def test_there_and_back_is_the_same(value: float, units: tuple[str, str]) -> None:
    there = convert(value, units[0], units[1])
    assert convert(there, units[1], units[0]) == pytest.approx(value, rel=1e-12, abs=1e-9)


@given(numbers(500))
def test_inches_and_centimetres_give_the_same_place(number: tuple[str, float]) -> None:
    centimetres = convert(number[1], "in", "cm")
    assert read_length(number[0], Units.IN).low == pytest.approx(
        read_length(f"{centimetres:.6f}", Units.CM).low, abs=1e-8
    )


@pytest.mark.parametrize(
    ("value", "unit", "other", "printed"),
    [
        (1, "in", "cm", "2.54"),
        (1, "ft", "cm", "30.48"),
        (104, "degF", "degC", "40"),
        (95, "degF", "degC", "35"),
        (88, "degF", "degC", "31.11"),
        (80, "degF", "degC", "26.67"),
        (75, "degF", "degC", "23.89"),
        (110, "degF", "degC", "43.33"),
        (10, "delta_degF", "K", "5.56"),
        (5, "delta_degC", "delta_degF", "9"),
        (14, "in", "cm", "35.56"),
    ],
)
def test_the_conversions_agree_with_the_printed_factors(
    value: float, unit: str, other: str, printed: str
) -> None:
    """NIST SP 811 appendix B: inch and foot exact, t/°C = (t/°F − 32)/1.8, 1 °F = 5/9 K."""
    places = len(printed.partition(".")[2])
    assert round(convert(value, unit, other), places) == float(printed)
