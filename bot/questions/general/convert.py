"""Length and temperature the other way; a difference is never shown as a reading.

Words: ``words/<language>/convert.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto
from math import ceil, log10

from bot.command import Command
from bot.facts import Digits, Figure, Kind, Say, Says, degrees, kelvins, metres
from bot.language.quantities import Dimension, Measure
from bot.language.units import Units, convert
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.queries.general import ConvertQuery

__all__ = ["CONVERT", "Converted", "converted", "tell"]

_MOST_DECIMALS = 9
# Less than this share is a slip of the conversion, and no digit that was asked about.
_SLIP = 1e-12


class Sign(Enum):
    """A unit as it is shown."""

    INCH = auto()
    FOOT = auto()
    CENTIMETRE = auto()
    MILLIMETRE = auto()
    FAHRENHEIT = auto()
    CELSIUS = auto()


@dataclass(frozen=True, slots=True)
class _Unit:
    """A unit by its name to the conversion, and the decimals it has at least."""

    sign: Sign
    name: str
    least: int


_SHOWN: dict[Dimension, dict[Units, tuple[_Unit, ...]]] = {
    Dimension.LENGTH: {
        Units.IN: (_Unit(Sign.INCH, "in", 2), _Unit(Sign.FOOT, "ft", 3)),
        Units.CM: (_Unit(Sign.CENTIMETRE, "cm", 2), _Unit(Sign.MILLIMETRE, "mm", 1)),
    },
    Dimension.TEMPERATURE: {
        Units.IN: (_Unit(Sign.FAHRENHEIT, "degF", 1),),
        Units.CM: (_Unit(Sign.CELSIUS, "degC", 1),),
    },
    Dimension.TEMPERATURE_DIFFERENCE: {
        Units.IN: (_Unit(Sign.FAHRENHEIT, "delta_degF", 1),),
        Units.CM: (_Unit(Sign.CELSIUS, "delta_degC", 1),),
    },
}
_SI = {
    Dimension.LENGTH: "m",
    Dimension.TEMPERATURE: "degC",
    Dimension.TEMPERATURE_DIFFERENCE: "delta_degC",
}
_FIGURES = {
    Dimension.LENGTH: metres,
    Dimension.TEMPERATURE: degrees,
    Dimension.TEMPERATURE_DIFFERENCE: kelvins,
}


@dataclass(frozen=True, slots=True)
class ShownIn:
    """A measure in one unit, as finely as it was asked; ``high`` where it is a range."""

    sign: Sign
    low: Digits
    high: Digits | None
    differs: bool


@dataclass(frozen=True, slots=True)
class Converted:
    """A measure in the units of the system that it was asked in, and in those of the other."""

    value: Figure
    asked: tuple[ShownIn, ...]
    other: tuple[ShownIn, ...]

    @property
    def first(self) -> Say:
        """Return the measure as it was asked."""
        return Say("convert-in", self.asked[0])

    @property
    def second(self) -> Say:
        """Return the measure in the other system."""
        return Say("convert-in", self.other[0])

    @property
    def also(self) -> tuple[Say, ...]:
        """Return the measure in the further units."""
        return tuple(Say("convert-in", one) for one in (*self.asked[1:], *self.other[1:]))


def converted(query: ConvertQuery, context: Context) -> Converted:
    """Work out the same quantity in the other system."""
    measure = query.value
    asked = measure.system or context.units
    other = Units.CM if asked is Units.IN else Units.IN
    middle = measure.middle
    return Converted(
        value=_FIGURES[measure.dimension](middle, (measure.low, measure.high)),
        asked=tuple(_shown(measure, asked)),
        other=tuple(_shown(measure, other)),
    )


def _shown(measure: Measure, units: Units) -> Iterator[ShownIn]:
    """Yield the measure in each unit of a system, as finely as it was asked."""
    si, finest = _SI[measure.dimension], _asked_step(measure)
    for unit in _SHOWN[measure.dimension][units]:
        step = abs(convert(finest, si, unit.name) - convert(0.0, si, unit.name))
        decimals = max(unit.least, min(ceil(-log10(step) - _SLIP), _MOST_DECIMALS))
        low, high = (convert(end, si, unit.name) for end in (measure.low, measure.high))
        is_range = round(low, decimals) != round(high, decimals)
        yield ShownIn(
            sign=unit.sign,
            low=Digits(low, decimals),
            high=Digits(high, decimals) if is_range else None,
            differs=measure.dimension is Dimension.TEMPERATURE_DIFFERENCE,
        )


def _asked_step(measure: Measure) -> float:
    """Return the last digit that was asked about, in SI; the usual one where there is no last."""
    si = _SI[measure.dimension]
    zero = convert(0.0, measure.unit, si)
    ends = [convert(end, si, measure.unit) for end in (measure.low, measure.high)]
    for decimals in range(_MOST_DECIMALS):
        if all(abs(round(end, decimals) - end) <= _SLIP * max(abs(end), _SLIP) for end in ends):
            return abs(convert(10.0**-decimals, measure.unit, si) - zero)
    return abs(convert(1.0, measure.unit, si) - zero)


def tell(facts: Converted) -> Layered:
    """Tell the same measure in both systems."""
    say = Says("convert", facts)
    return Layered(
        command="convert",
        title=say("title"),
        brief=Brief(head=say("head"), range=tuple(_more(facts, say))),
        numbers=tuple(Row(say("label-also"), one) for one in facts.also),
        values=(("value", facts.value),),
        sources=("nist_sp811",),
    )


def _more(facts: Converted, say: Says) -> Iterator[Say]:
    match facts.value.kind:
        case Kind.LENGTH:
            yield say("also")
        case Kind.TEMPERATURE:
            yield say("reading")
        case _:
            yield say("difference")


CONVERT = Command(
    name="convert",
    query=ConvertQuery,
    facts=converted,
    tell=tell,
    examples=("convert 14in", "convert 39,5 C", "convert difference 10F"),
    guide=(),
    positional="value",
)
