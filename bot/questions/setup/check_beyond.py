"""Figures of a set-up beyond what can be believed: each is told by itself, the rest is judged."""

from collections.abc import Callable
from dataclasses import dataclass, replace
from math import isfinite

from bot.facts import Bound, Hours, Length, Say, Temp, degrees, hours, metres
from bot.language.hearing import FactName
from bot.questions.setup.check_parts import Part, Piece, Todo, Urgency
from bot.questions.setup.told import SetUpTold
from calc.animal import Animal
from calc.heat.night import night_plan
from calc.heat.readings import Readings
from calc.setup.set_up import Sign
from calc.validity import OutsideModelError

__all__ = ["beyond_part", "set_aside"]

_HOUR_S = 3600.0
# How each figure is given again, and which part it belongs to.
_PIECES = {
    FactName.BASKING: (Piece.BASKING, "basking:98F"),
    FactName.COOL: (Piece.COOL, "cool:78F"),
    FactName.WARM: (Piece.WARM, "warm:83F"),
    FactName.WATER: (Piece.WATER, "water:78F"),
    FactName.ON_FOR: (Piece.LAMP_TIME, "lamp_on:3h"),
    FactName.NIGHT: (Piece.NIGHT, "night:64F"),
    FactName.ROOM_NIGHT: (Piece.NIGHT, "night:64F"),
}


@dataclass(frozen=True, slots=True)
class Again:
    """A figure that cannot be judged, and how it is given again."""

    piece: Piece
    again: str


@dataclass(frozen=True, slots=True)
class BeyondTemp:
    """A temperature beyond what can be believed."""

    temp: Temp
    temps: Temp
    again: str


@dataclass(frozen=True, slots=True)
class BeyondLength:
    """A length beyond what can be believed."""

    length: Length
    lengths: Length
    again: str


@dataclass(frozen=True, slots=True)
class BeyondTime:
    """A time beyond what can be believed."""

    time: Hours
    most: Hours
    again: str


def beyond_part(piece: Piece, error: OutsideModelError, again: str) -> Part:
    """Return the part that says which figure cannot be judged, and what is accepted."""
    facts = Again(piece, again)
    todo = Todo(Urgency.MEASURE, Say("check-do-again", facts), Say("check-do-again-short", facts))
    return Part(piece, Sign.CANNOT_TELL, _why(error, facts), todo=(todo,))


def _why(error: OutsideModelError, facts: Again) -> Say:
    ends, again = (error.low, error.high), facts.again
    if not all(map(isfinite, (*ends, error.value))):
        return Say("check-beyond-other", facts)
    # Both ends are rounded inward: who gives a shown end again is answered.
    if error.unit == "degC":
        believed = replace(degrees(ends[0], ends), bound=Bound.INWARD)
        return Say("check-beyond-temp", BeyondTemp(degrees(error.value), believed, again))
    if error.unit == "m":
        believed = metres(ends[0], ends, Bound.INWARD)
        return Say("check-beyond-length", BeyondLength(metres(error.value), believed, again))
    if error.unit == "h":
        return Say("check-beyond-time", BeyondTime(hours(error.value), hours(ends[1]), again))
    return Say("check-beyond-other", facts)


def set_aside(told: SetUpTold, animal: Animal) -> tuple[SetUpTold, dict[FactName, Part]]:
    """Return the set-up without the readings that cannot be believed, and a part for each."""
    tried: dict[FactName, Callable[[float], object]] = {
        FactName.BASKING: lambda value: Readings(basking_surface_c=value),
        FactName.COOL: lambda value: Readings(cool_air_c=value),
        FactName.WARM: lambda value: Readings(warm_air_c=value),
        FactName.WATER: lambda value: Readings(water_c=value),
        FactName.ON_FOR: lambda value: Readings(lamp_on_h=value / _HOUR_S),
        FactName.NIGHT: lambda value: night_plan(animal, value),
        FactName.ROOM_NIGHT: lambda value: night_plan(animal, value),
    }
    beyond: dict[FactName, Part] = {}
    for name, believe in tried.items():
        said = told.measure(name)
        if said is None:
            continue
        piece, again = _PIECES[name]
        try:
            believe(said.value.low)
            believe(said.value.high)
        except OutsideModelError as error:
            beyond[name] = beyond_part(piece, error, again)
    facts = {name: rows for name, rows in told.facts.items() if name not in beyond}
    return replace(told, facts=facts), beyond
