"""The units people write, a closed table, and their conversion by pint.

Text never reaches pint: it would read 25C as coulombs, 2 ft 6 in as a product, and 9**9**9 as
work for the rest of the day. Pint gets a number and a unit of its own small registry, which
holds these units and no others and counts in exact fractions. What it says is kept beside the
bytecode, so that a cold question need not load it.
"""

import re
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction
from functools import cache
from itertools import product
from math import isfinite, lcm
from pathlib import Path
from typing import Any
from zlib import crc32

from calc.tables import made_once

__all__ = [
    "Dimension",
    "Units",
    "alias_pattern",
    "convert",
    "exact",
    "first_letters",
    "system_of",
    "unit_named",
]


class Units(StrEnum):
    """The asker's system: inches go with °F, centimetres with °C."""

    IN = "in"
    CM = "cm"


class Dimension(StrEnum):
    """What kind of quantity a text is read as; a difference of temperatures is its own kind."""

    LENGTH = "length"
    TEMPERATURE = "temperature"
    TEMPERATURE_DIFFERENCE = "temperature difference"
    POWER = "power"
    DURATION = "duration"
    VOLUME = "volume"


_DEFINITIONS = """
meter = [length] = m
centimeter = 1/100 * meter = cm
millimeter = 1/1000 * meter = mm
inch = 254/10000 * meter = in
foot = 12 * inch = ft
kelvin = [temperature] = K
degree_Celsius = kelvin; offset: 273.15 = °C = degC
degree_Fahrenheit = 5/9 * kelvin; offset: 233.15 + 200/9 = °F = degF
second = [time] = s
minute = 60 * second = min
hour = 60 * minute = h
day = 24 * hour
week = 7 * day
year = 36525/100 * day
month = 1/12 * year
watt = [power] = W
liter = 1/1000 * meter ** 3 = l
gallon = 231 * inch ** 3 = gal
"""

_F = (
    "f|° f|deg f|degree f|degrees f|fahrenheit|fahr|fahrenhiet|farenheit|farenheight"
    "|degree fahrenheit|degrees fahrenheit"
)
_C = (
    "c|° c|deg c|degree c|degrees c|celsius|centigrade|celcius"
    "|degree celsius|degrees celsius|degrees celcius"
)

_ALIASES = {
    Dimension.LENGTH: {
        "in": "in|\"|''|inch|inches|ins|inchs|inche",
        "ft": "ft|'|foot|feet|fts",
        "cm": "cm|cms|centimeter|centimeters|centimetre|centimetres",
        "mm": "mm|mms|millimeter|millimeters|millimetre|millimetres",
        "m": "m|meter|meters|metre|metres",
    },
    Dimension.TEMPERATURE: {"degF": _F, "degC": _C},
    Dimension.TEMPERATURE_DIFFERENCE: {
        "delta_degF": _F,
        "delta_degC": f"{_C}|k|kelvin|kelvins",
    },
    Dimension.POWER: {"W": "w|watt|watts|wt|wts"},
    Dimension.DURATION: {
        "s": "s|sec|secs|second|seconds",
        "min": "min|mins|minute|minutes",
        "h": "h|hr|hrs|hour|hours",
        "day": "d|day|days",
        "week": "wk|wks|week|weeks",
        "month": "mo|mos|mth|mths|month|months",
        "year": "y|yr|yrs|year|years|yo|y/o",
    },
    Dimension.VOLUME: {
        "gal": "gal|gals|gallon|gallons|gallan",
        "l": "l|liter|liters|litre|litres",
    },
}
# What else a quantity of a kind is counted in: SI where nobody writes it so.
_INSIDE = {Dimension.TEMPERATURE_DIFFERENCE: ("K",), Dimension.VOLUME: ("meter ** 3",)}
# Another side of a size may follow at once: 6ftx2ftx2ft.
_ENDS = r"(?![a-wyz°]|x(?![0-9]))"

_SYSTEMS = {
    **dict.fromkeys(("in", "ft", "degF", "delta_degF", "gal"), Units.IN),
    **dict.fromkeys(("cm", "mm", "m", "degC", "delta_degC", "l"), Units.CM),
}


def system_of(unit: str) -> Units | None:
    """Return the system a unit belongs to, or None for one that all share."""
    return _SYSTEMS.get(unit)


@cache
def _names(dimension: Dimension) -> dict[str, str]:
    return {a: unit for unit, aliases in _ALIASES[dimension].items() for a in aliases.split("|")}


def unit_named(alias: str, dimension: Dimension) -> str:
    """Return the canonical unit of an alias that ``alias_pattern`` matched."""
    squeezed = _squeezed(dimension)
    return squeezed.get(alias) or squeezed[_squeeze(alias)]


@cache
def _squeezed(dimension: Dimension) -> dict[str, str]:
    # Every space of an alias may be left out: 10degC, 38° C.
    return {_squeeze(alias): unit for alias, unit in _names(dimension).items()}


def _squeeze(alias: str) -> str:
    return "".join(alias.casefold().split())


@cache
def alias_pattern(dimension: Dimension) -> str:
    """Return a pattern for every alias of the dimension, longest first."""
    longest_first = sorted(_names(dimension), key=len, reverse=True)
    spelt = (re.escape(a).replace(r"\ ", " *") + _ENDS * a[-1].isalpha() for a in longest_first)
    return f"(?:{'|'.join(spelt)})"


@cache
def first_letters(dimension: Dimension) -> frozenset[str]:
    """Return the characters that an alias of the dimension may start with."""
    return frozenset(alias[0] for alias in _names(dimension))


@cache
def _lines() -> dict[tuple[str, str], tuple[int, int, int]]:
    """Return scale and offset between units, in whole numbers over a third."""
    told = repr((_DEFINITIONS, _ALIASES, _INSIDE))
    found: dict[tuple[str, str], tuple[int, int, int]] = made_once(
        Path(__file__), crc32(told.encode()), _asked_of_pint
    )
    return found


def _asked_of_pint() -> dict[tuple[str, str], tuple[int, int, int]]:
    import pint

    registry: Any = pint.UnitRegistry(None, non_int_type=Fraction)
    registry.load_definitions(_DEFINITIONS.strip().splitlines())

    def line(from_unit: str, to_unit: str) -> tuple[int, int, int]:
        zero, one = (registry.Quantity(Fraction(n), from_unit).to(to_unit) for n in (0, 1))
        offset = Fraction(zero.magnitude)
        scale = Fraction(one.magnitude) - offset
        parts = lcm(scale.denominator, offset.denominator)
        return int(scale * parts), int(offset * parts), parts

    kinds = ((*_ALIASES[dimension], *_INSIDE.get(dimension, ())) for dimension in Dimension)
    return {pair: line(*pair) for units in kinds for pair in product(units, repeat=2)}


def exact(value: Fraction, from_unit: str, to_unit: str) -> Fraction:
    """Return ``value`` in another unit of the same dimension, exactly."""
    times, plus, parts = _lines()[from_unit, to_unit]
    over, under = value.as_integer_ratio()
    return Fraction(over * times + under * plus, under * parts)


def convert(value: float, from_unit: str, to_unit: str) -> float:
    """Return ``value`` in another unit, rounded once; the float is taken as it prints.

    >>> convert(104, "degF", "degC"), convert(14, "in", "mm"), convert(0.3556, "m", "in")
    (40.0, 355.6, 14.0)
    """
    amount = float(value)
    if not isfinite(amount):
        raise ValueError(f"{amount} is no amount of {from_unit}")
    times, plus, parts = _lines()[from_unit, to_unit]
    over, under = Decimal(str(amount)).as_integer_ratio()
    return (over * times + under * plus) / (under * parts)
