"""Figures as an English answer shows them, for the tests that look for one in a text."""

from bot.facts import Figure, Kind
from bot.language.quantities import Units
from bot.saying.figures import number
from bot.saying.voice import voice

__all__ = [
    "difference",
    "length",
    "length_range",
    "number",
    "temperature",
    "temperature_range",
]


def _told(kind: Kind, low: float, high: float, units: Units) -> str:
    form = "best" if low == high else "range"
    told = voice("en", units).figure(Figure(kind, low, low, high), form, False)
    return told.replace("\u00a0", " ")


def length(value_m: float, units: Units) -> str:
    return _told(Kind.LENGTH, value_m, value_m, units)


def length_range(low_m: float, high_m: float, units: Units) -> str:
    return _told(Kind.LENGTH, low_m, high_m, units)


def temperature(value_c: float, units: Units) -> str:
    return _told(Kind.TEMPERATURE, value_c, value_c, units)


def temperature_range(low_c: float, high_c: float, units: Units) -> str:
    return _told(Kind.TEMPERATURE, low_c, high_c, units)


def difference(value_k: float, units: Units) -> str:
    return _told(Kind.DIFFERENCE, value_k, value_k, units)
