"""How figures are shown in the answers that still make their own English sentences.

Rounding and both units are those of ``bot/saying/figures.py``, in English.
"""

from datetime import date
from math import floor

from bot.facts import Bound, Figure, Kind
from bot.language.quantities import Units, convert
from bot.saying.figures import Form, Manners, as_given, number, said_figure
from calc.uncertainty import Estimate

__all__ = [
    "calendar_day",
    "difference",
    "hours",
    "length",
    "length_away",
    "length_range",
    "length_range_away",
    "length_start",
    "length_typed",
    "length_within",
    "month_name",
    "number",
    "percent",
    "temperature",
    "temperature_range",
    "uvi",
    "uvi_estimate",
    "uvi_range",
    "uvi_wanted",
    "watts",
    "watts_range",
]

_ENGLISH = Manners(".", "{0} to {1}", "{0} ({1})", "{0} ({1} to {2})")
_TYPED = {Units.IN: ("in", 0.5), Units.CM: ("cm", 1.0)}
# Less than this of a step is a slip of the conversion.
_SLIP = 1e-6


def _told(figure: Figure, form: Form, units: Units) -> str:
    return said_figure(figure, form, units, _ENGLISH).replace("\u00a0", " ")


def _one(kind: Kind, value: float, units: Units, bound: Bound = Bound.NEAREST) -> str:
    return _told(Figure(kind, value, value, value, bound), "best", units)


def _span(kind: Kind, low: float, high: float, units: Units, bound: Bound = Bound.NEAREST) -> str:
    return _told(Figure(kind, low, low, high, bound), "range", units)


def length(value_m: float, units: Units) -> str:
    """Return a length in both units, such as ``16 in (41 cm)``."""
    return _one(Kind.LENGTH, value_m, units)


def length_away(value_m: float, units: Units) -> str:
    """Return how far away something is kept, rounded up: rounding never brings it nearer."""
    return _one(Kind.LENGTH, value_m, units, Bound.AT_LEAST)


def length_within(value_m: float, units: Units) -> str:
    """Return how far away something is kept at most, rounded down."""
    return _one(Kind.LENGTH, value_m, units, Bound.AT_MOST)


def length_range_away(low_m: float, high_m: float, units: Units) -> str:
    """Return from where to where something is kept away; both ends are rounded inward."""
    return _span(Kind.LENGTH, low_m, high_m, units, Bound.INWARD)


def length_start(start_m: float, ends_m: tuple[float, float], units: Units) -> str:
    """Return where in a range to start, rounded up, yet never past the far end as it is shown."""
    return _told(Figure(Kind.LENGTH, start_m, *ends_m, Bound.START), "best", units)


def length_typed(value_m: float, units: Units) -> str:
    """Return a length as one types it, rounded down, such as ``9.5in``."""
    sign, step = _TYPED[units]
    steps = floor(convert(value_m, "m", sign) / step + _SLIP)
    return f"{number(steps * step, step)}{sign}"


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


def uvi(value: float) -> str:
    """Return a UV index to one decimal, as meters show it."""
    return f"{value:.1f}"


def uvi_wanted(value: float) -> str:
    """Return a UV index as it was given, such as ``0.75``: rounding never hides it."""
    return as_given(value)


def uvi_range(low: float, high: float) -> str:
    """Return a range of UV indices, such as ``3 to 5`` or ``0.05 to 0.1``."""
    return f"{as_given(low)} to {as_given(high)}"


def uvi_estimate(estimate: Estimate) -> str:
    """Return a UV index with its doubt, such as ``4.0 (2.9 to 5.5)``; a weak one finer."""
    figure = Figure(Kind.UVI, estimate.best, estimate.low, estimate.high)
    return said_figure(figure, "doubt", Units.IN, _ENGLISH)


def percent(fraction: float) -> str:
    """Return a fraction as a whole percentage, such as ``45 %``."""
    return _one(Kind.SHARE, fraction, Units.IN)


def watts(value_w: float) -> str:
    """Return a power in whole watts."""
    return _one(Kind.POWER, value_w, Units.IN)


def watts_range(low_w: float, high_w: float) -> str:
    """Return a range of powers in whole watts."""
    return _span(Kind.POWER, low_w, high_w, Units.IN)


def hours(value_h: float) -> str:
    """Return a duration as hours and minutes, such as ``13 h 20 min``."""
    return _one(Kind.TIME, value_h, Units.IN)


_MONTHS = "January February March April May June July August September October November December"


def calendar_day(day: date) -> str:
    """Return a day that no country reads in two ways, such as ``3 January 2026``."""
    return f"{day.day} {month_name(day.month)} {day.year}"


def month_name(month: int) -> str:
    """Return the name of a month, 1 to 12."""
    return _MONTHS.split()[month - 1]
