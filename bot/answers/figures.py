"""How figures are shown: rounding and both units, chosen here once for every renderer.

The asker's unit comes first, the other follows in brackets. Lengths are shown to half an
inch and to a centimetre, temperatures to a degree F and half a degree C: finer digits would
promise what no tape measure or lamp keeps.
"""

from collections.abc import Callable
from datetime import date
from math import ceil, floor

from bot.language.quantities import Units, convert
from calc.uncertainty import Estimate

__all__ = [
    "calendar_day",
    "difference",
    "hours",
    "length",
    "length_away",
    "length_range",
    "length_range_away",
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

# unit shown, unit of the conversion, step of the rounding, finer step below 10 of it
_LENGTHS = {Units.IN: ("in", "in", 0.5, 0.5), Units.CM: ("cm", "cm", 1.0, 0.5)}
_TEMPERATURES = {Units.IN: ("°F", "degF", 1.0), Units.CM: ("°C", "degC", 0.5)}
# A UV index is shown as it was given to within this share; below this it would be rounded away.
_NEARLY = 0.02
# Less than this of a step is a slip of the conversion.
_SLIP = 1e-6
_FINEST = 0.5
_WEAK_UVI, _FAINT_UVI = 0.05, 0.3
_DIFFERENCES = {Units.IN: ("°F", "delta_degF", 1.0), Units.CM: ("°C", "delta_degC", 0.5)}


def number(value: float, step: float = 1.0) -> str:
    """Return a value rounded to a step, without trailing zeros or a minus before zero."""
    rounded = round(value / step) * step + 0.0
    text = f"{rounded:.3f}".rstrip("0").rstrip(".")
    return "0" if text == "-0" else text


def _both(units: Units, show: Callable[[Units], str]) -> str:
    other = Units.CM if units is Units.IN else Units.IN
    return f"{show(units)} ({show(other)})"


def length(value_m: float, units: Units) -> str:
    """Return a length in both units, such as ``16 in (41 cm)``."""

    return _both(units, lambda system: _lengths((value_m,), system))


def length_away(value_m: float, units: Units) -> str:
    """Return how far away something is kept, rounded up: rounding never brings it nearer."""
    return _both(units, lambda system: _shown((_up(value_m, system),), system))


def length_within(value_m: float, units: Units) -> str:
    """Return how far away something is kept at most, rounded down."""
    return _both(units, lambda system: _shown((_down(value_m, system),), system))


def length_range_away(low_m: float, high_m: float, units: Units) -> str:
    """Return from where to where something is kept away; both ends are rounded inward."""

    def show(system: Units) -> str:
        near, far = _up(low_m, system), _down(high_m, system)
        return _shown((near, max(near, far)), system)

    return _both(units, show)


def length_start(start_m: float, ends_m: tuple[float, float], units: Units) -> str:
    """Return where in a range to start, rounded up, yet never past the far end as it is shown."""
    low_m, high_m = ends_m

    def show(system: Units) -> str:
        far = max(_up(low_m, system), _down(high_m, system))
        return _shown((min(_up(start_m, system), far),), system)

    return _both(units, show)


def length_typed(value_m: float, units: Units) -> str:
    """Return a length as one types it, rounded down, such as ``9.5in``."""
    sign, unit, step, _ = _LENGTHS[units]
    steps = floor(convert(value_m, "m", unit) / step + _SLIP)
    return f"{number(steps * step, step)}{sign}"


def length_range(low_m: float, high_m: float, units: Units) -> str:
    """Return a range of lengths in both units, such as ``15 to 20 in (38 to 51 cm)``."""

    return _both(units, lambda system: _lengths((low_m, high_m), system))


def _lengths(values_m: tuple[float, ...], system: Units) -> str:
    return _shown(tuple(_nearest(value, system) for value in values_m), system)


def _nearest(value_m: float, system: Units) -> float:
    value, step = _step(value_m, system)
    return round(value / step) * step


def _up(value_m: float, system: Units) -> float:
    value, step = _step(value_m, system)
    return ceil(value / step - _SLIP) * step


def _down(value_m: float, system: Units) -> float:
    value, step = _step(value_m, system)
    return floor(value / step + _SLIP) * step


def _step(value_m: float, system: Units) -> tuple[float, float]:
    """Return a length in the unit that is shown, and the step of its rounding."""
    _, unit, step, finer = _LENGTHS[system]
    value = convert(value_m, "m", unit)
    return value, finer if abs(value) < 10.0 else step


def _shown(values: tuple[float, ...], system: Units) -> str:
    texts = (number(value, _FINEST) for value in values)
    return f"{' to '.join(dict.fromkeys(texts))} {_LENGTHS[system][0]}"


def temperature(value_c: float, units: Units) -> str:
    """Return a temperature in both units, such as ``103 °F (39.5 °C)``."""

    def show(system: Units) -> str:
        sign, unit, step = _TEMPERATURES[system]
        return f"{number(convert(value_c, 'degC', unit), step)} {sign}"

    return _both(units, show)


def temperature_range(low_c: float, high_c: float, units: Units) -> str:
    """Return a range of temperatures in both units."""

    def show(system: Units) -> str:
        sign, unit, step = _TEMPERATURES[system]
        low, high = (number(convert(v, "degC", unit), step) for v in (low_c, high_c))
        return f"{low} {sign}" if low == high else f"{low} to {high} {sign}"

    return _both(units, show)


def difference(value_k: float, units: Units) -> str:
    """Return a temperature difference in both units, such as ``10 °F (5.5 °C)``."""

    def show(system: Units) -> str:
        sign, unit, step = _DIFFERENCES[system]
        return f"{number(convert(value_k, 'delta_degC', unit), step)} {sign}"

    return _both(units, show)


def uvi(value: float) -> str:
    """Return a UV index to one decimal, as meters show it."""
    return f"{value:.1f}"


def uvi_wanted(value: float) -> str:
    """Return a UV index as it was given, such as ``0.75``: rounding never hides it."""
    enough = (s for s in (0.1, 0.01) if abs(round(value / s) * s - value) <= _NEARLY * abs(value))
    return number(value, next(enough, 0.001))


def uvi_range(low: float, high: float) -> str:
    """Return a range of UV indices, such as ``3 to 5`` or ``0.05 to 0.1``."""
    return f"{uvi_wanted(low)} to {uvi_wanted(high)}"


def uvi_estimate(estimate: Estimate) -> str:
    """Return a UV index with its doubt, such as ``4.0 (2.9 to 5.5)``; a weak one finer."""
    hidden = 0.0 < estimate.low < _WEAK_UVI or 0.0 < estimate.best < _FAINT_UVI
    digits = 2 if hidden else 1
    low, best, high = (f"{v:.{digits}f}" for v in (estimate.low, estimate.best, estimate.high))
    return f"{best} ({low} to {high})"


def percent(fraction: float) -> str:
    """Return a fraction as a whole percentage, such as ``45 %``."""
    return f"{round(fraction * 100)} %"


def watts(value_w: float) -> str:
    """Return a power in whole watts."""
    return f"{round(value_w)} W"


def watts_range(low_w: float, high_w: float) -> str:
    """Return a range of powers in whole watts."""
    low, high = round(low_w), round(high_w)
    return f"{low} W" if low == high else f"{low} to {high} W"


def hours(value_h: float) -> str:
    """Return a duration as hours and minutes, such as ``13 h 20 min``."""
    minutes = round(value_h * 60)
    whole, rest = divmod(minutes, 60)
    return f"{whole} h {rest:02d} min" if rest else f"{whole} h"


_MONTHS = "January February March April May June July August September October November December"


def calendar_day(day: date) -> str:
    """Return a day that no country reads in two ways, such as ``3 January 2026``."""
    return f"{day.day} {month_name(day.month)} {day.year}"


def month_name(month: int) -> str:
    """Return the name of a month, 1 to 12."""
    return _MONTHS.split()[month - 1]
