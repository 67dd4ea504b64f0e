"""How figures are shown in the answers that still make their own English sentences.

Rounding and both units are those of ``bot/saying/figures.py``, in English.
"""

from datetime import date

from bot.facts import Figure, Kind
from bot.language.quantities import Units
from bot.saying.figures import Form, Manners, as_given, number, said_figure

__all__ = [
    "calendar_day",
    "difference",
    "length",
    "length_range",
    "month_name",
    "number",
    "percent",
    "temperature",
    "temperature_range",
    "uvi_range",
]

_ENGLISH = Manners(".", "{0} to {1}", "{0} ({1})", "{0} ({1} to {2})")


def _told(figure: Figure, form: Form, units: Units) -> str:
    return said_figure(figure, form, units, _ENGLISH).replace("\u00a0", " ")


def _one(kind: Kind, value: float, units: Units) -> str:
    return _told(Figure(kind, value, value, value), "best", units)


def _span(kind: Kind, low: float, high: float, units: Units) -> str:
    return _told(Figure(kind, low, low, high), "range", units)


def length(value_m: float, units: Units) -> str:
    """Return a length in both units, such as ``16 in (41 cm)``."""
    return _one(Kind.LENGTH, value_m, units)


def length_range(low_m: float, high_m: float, units: Units) -> str:
    """Return a range of lengths in both units, such as ``15 to 20 in (38 to 51 cm)``."""
    return _span(Kind.LENGTH, low_m, high_m, units)


def temperature(value_c: float, units: Units) -> str:
    """Return a temperature in both units, such as ``103 °F (39.5 °C)``."""
    return _one(Kind.TEMPERATURE, value_c, units)


def temperature_range(low_c: float, high_c: float, units: Units) -> str:
    """Return a range of temperatures in both units."""
    return _span(Kind.TEMPERATURE, low_c, high_c, units)


def difference(value_k: float, units: Units) -> str:
    """Return a temperature difference in both units, such as ``10 °F (5.5 °C)``."""
    return _one(Kind.DIFFERENCE, value_k, units)


def uvi_range(low: float, high: float) -> str:
    """Return a range of UV indices, such as ``3 to 5`` or ``0.05 to 0.1``."""
    return f"{as_given(low)} to {as_given(high)}"


def percent(fraction: float) -> str:
    """Return a fraction as a whole percentage, such as ``45 %``."""
    return _one(Kind.SHARE, fraction, Units.IN)


_MONTHS = "January February March April May June July August September October November December"


def calendar_day(day: date) -> str:
    """Return a day that no country reads in two ways, such as ``3 January 2026``."""
    return f"{day.day} {month_name(day.month)} {day.year}"


def month_name(month: int) -> str:
    """Return the name of a month, 1 to 12."""
    return _MONTHS.split()[month - 1]
