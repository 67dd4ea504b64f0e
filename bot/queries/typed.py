"""A value of an option as text: what somebody would type for it, made for the echo alone."""

from collections.abc import Mapping

from bot.language.lamps import OtherLamp, TubeStrength
from bot.language.light import Lux
from bot.language.light_lamps import LightLamp
from bot.language.quantities import SI, Dimension, Measure, convert
from bot.language.readings import DatedReading, PlacedReading
from bot.language.screens import Blocks, NoScreen, Pane, Passes, Weave
from bot.language.sizes import Size
from bot.language.unsure import Unsure

__all__ = ["typed", "typed_all"]

_UNITS = {"degF": "F", "degC": "C", "delta_degF": "F", "delta_degC": "C"}


def typed(value: object) -> str:
    """Return the text that an option reads as this value; a text stays as it was typed.

    >>> from bot.language.quantities import read_length
    >>> typed(read_length("1'2\\"")), typed((3.0, 5.0)), typed("12%")
    ('1.16667 ft', '3-5', '12%')
    """
    match value:
        case Measure():
            return _measure(value)
        case Size():
            sides = (value.length_m, value.depth_m, value.height_m)
            return f"{'x'.join(_in(side, 'm', value.unit) for side in sides)} {value.unit}"
        case NoScreen():
            return "none"
        case Blocks(fraction):
            return f"{100 * fraction:.4g}%"
        case Passes(fraction):
            return f"passes {100 * fraction:.4g}%"
        case Pane():
            return value.material
        case TubeStrength() | OtherLamp() | Unsure() | Weave() | Lux() | LightLamp():
            return value.text
        case PlacedReading():
            return f"{value.value:g} at {typed(value.distance)}"
        case DatedReading():
            return f"{value.day} {value.value:g}"
        case (float(low), float(high)):
            return f"{low:g}-{high:g}" if low < high else f"{low:g}"
        case tuple():
            return ", ".join(map(typed, value))
        case frozenset():
            return ", ".join(sorted(map(typed, value)))
    return str(value)


def typed_all(values: Mapping[str, object]) -> dict[str, str]:
    """Return the text of each option."""
    return {name: typed(value) for name, value in values.items()}


def _measure(measure: Measure) -> str:
    """Return a measure with its unit, a range from end to end."""
    si = SI[measure.dimension]
    ends = dict.fromkeys(_in(end, si, measure.unit) for end in (measure.low, measure.high))
    told = f"{' to '.join(ends)} {_UNITS.get(measure.unit, measure.unit)}"
    is_difference = measure.dimension is Dimension.TEMPERATURE_DIFFERENCE
    return f"difference {told}" if is_difference else told


def _in(value: float, si: str, unit: str) -> str:
    return f"{convert(value, si, unit):.6g}"
