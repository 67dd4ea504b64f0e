"""A keeper's readings, and what speaks against believing them."""

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from enum import Enum, auto
from math import inf

from calc.animal import Animal, Target
from calc.judgement import Judged, Move, judge_value, with_doubt
from calc.limits import Met, limits_of, passed
from calc.quantities import Quantity
from calc.validity import check

__all__ = [
    "PLACES",
    "SOON_H",
    "Doubtful",
    "Finding",
    "Instrument",
    "Readings",
    "doubts_about",
    "finding_for",
    "is_asked_for",
    "target_at",
]

SOON_H = 2.0
"""Lamp time before a reading counts [h]; three are better. Source: common_practice."""

_COLDEST_C, _HOTTEST_C = -10.0, 150.0
_LONGEST_ON_H = 24.0
_EDGE_K = 0.05
_BEAM_SPREAD_K = 10.0
_NEAR_SURFACE_K = 1.0
_SWAPPED_K = 1.0
PLACES = (
    Quantity.BASKING_SURFACE,
    Quantity.COOL_AIR,
    Quantity.WARM_AIR,
    Quantity.NIGHT_AIR,
    Quantity.WATER,
)
"""Where temperatures are read, in order of importance."""

_MET: dict[Quantity, Callable[[float], Met]] = {
    Quantity.BASKING_SURFACE: lambda read_c: Met(surface_c=read_c),
    Quantity.COOL_AIR: lambda read_c: Met(coolest_air_c=read_c),
    Quantity.WARM_AIR: lambda read_c: Met(warm_air_c=read_c),
    Quantity.NIGHT_AIR: lambda read_c: Met(night_c=read_c),
    Quantity.WATER: lambda read_c: Met(water_c=read_c),
}


class Instrument(Enum):
    """What measured."""

    INFRARED_GUN = auto()
    DIGITAL_PROBE = auto()
    DIAL_OR_STRIP = auto()


class Doubtful(Enum):
    """A reason not to believe a reading yet."""

    NOT_YET_A_READING = auto()
    LAMP_TIME_NOT_SAID = auto()
    DIAL_NOT_TRUSTED = auto()
    PROBE_FOR_SURFACE = auto()
    GUN_FOR_AIR = auto()
    COOL_END_ABOVE_SURFACE = auto()
    COOL_END_ABOVE_WARM_END = auto()
    WARM_PROBE_IN_BEAM = auto()


@dataclass(frozen=True, slots=True)
class Readings:
    """What the keeper measured [degC], -10 to 150; None where nothing was given.

    ``lamp_on_h`` is how long the lamp had been on [h], 0 to 24; ``instruments`` is empty where
    not said.
    """

    basking_surface_c: float | None = None
    cool_air_c: float | None = None
    warm_air_c: float | None = None
    night_low_c: float | None = None
    lamp_on_h: float | None = None
    instruments: frozenset[Instrument] = frozenset()
    water_c: float | None = None

    def __post_init__(self) -> None:
        for place, reading in self.by_place().items():
            if reading is not None:
                check(place.value.replace("_", " "), reading, _COLDEST_C, _HOTTEST_C, "degC")
        if self.lamp_on_h is not None:
            check("lamp time", self.lamp_on_h, 0.0, _LONGEST_ON_H, "h")

    def by_place(self) -> dict[Quantity, float | None]:
        """Return the readings in order of importance."""
        return {
            Quantity.BASKING_SURFACE: self.basking_surface_c,
            Quantity.COOL_AIR: self.cool_air_c,
            Quantity.WARM_AIR: self.warm_air_c,
            Quantity.NIGHT_AIR: self.night_low_c,
            Quantity.WATER: self.water_c,
        }

    @property
    def is_too_soon(self) -> bool:
        """Whether the lamp is known not to have been on for long enough."""
        return self.lamp_on_h is not None and self.lamp_on_h < SOON_H


@dataclass(frozen=True, slots=True)
class Finding:
    """One reading against its target; not judged where no target is known.

    ``keepers_differ``: a night between the two ends of the floor.
    """

    place: Quantity
    reading_c: float
    target: Target | None
    judged: Judged | None
    keepers_differ: bool = False

    @property
    def is_fine(self) -> bool:
        """Whether the reading is what is wanted, and nobody says otherwise."""
        return self.judged is not None and self.judged.is_fine and not self.keepers_differ

    @property
    def is_unsure(self) -> bool:
        """Whether it is off, but by so little that it is read again before anything changes."""
        judged = self.judged
        return judged is not None and not (judged.is_fine or judged.verdict.wants_change)

    @property
    def is_unchecked(self) -> bool:
        """Whether a thermometer leaves no doubt that it is off, and only the range may be wrong."""
        judged = self.judged
        return self.is_unsure and judged is not None and judged.is_surely_off

    @property
    def is_low(self) -> bool:
        """Whether the place has to be warmer."""
        return self._has_to(Move.UP)

    @property
    def is_high(self) -> bool:
        """Whether the place has to be cooler."""
        return self._has_to(Move.DOWN)

    @property
    def is_likely_high(self) -> bool:
        """Whether it is likelier too warm than not: enough for what only cools a little."""
        return self.judged is not None and self.judged.is_likely_above

    @property
    def wants_heat(self) -> bool:
        """Whether a night wants heat: on a thermostat it does no harm before that is sure."""
        judged = self.judged
        return self.is_low or (
            self.is_unsure and judged is not None and judged.value.best < judged.low
        )

    def _has_to(self, move: Move) -> bool:
        judged = self.judged
        return judged is not None and judged.verdict.wants_change and judged.move is move


def target_at(place: Quantity, animal: Animal) -> Target | None:
    """Return what an animal wants at a place; None where it is not known."""
    return {
        Quantity.BASKING_SURFACE: animal.basking_surface_c,
        Quantity.COOL_AIR: animal.cool_air_c,
        Quantity.WARM_AIR: animal.warm_air_c,
        Quantity.NIGHT_AIR: animal.night_floor_c,
        Quantity.WATER: animal.water_c,
    }[place]


def is_asked_for(place: Quantity, animal: Animal) -> bool:
    """Whether a place may be read at all: water only of what swims, air not of water alone."""
    if place is Quantity.WATER:
        return animal.water_c is not None
    return not animal.is_of_water_alone


def finding_for(place: Quantity, reading_c: float, animal: Animal) -> Finding:
    """Return the verdict on one reading, with the doubt of its instrument.

    A night between the two ends of the floor is a matter on which keepers differ; one warmer
    than the cool end's day is too high. What is past a limit of life is dangerous.
    """
    target = target_at(place, animal)
    if target is None:
        return Finding(place, reading_c, None, None)
    high_c = target.high
    if place is Quantity.NIGHT_AIR:
        high_c = inf if animal.cool_air_c is None else animal.cool_air_c.high
    met = _MET[place](reading_c)
    past = bool(passed(limits_of(animal), met))
    estimate = with_doubt(place, reading_c)
    judged = judge_value(
        place,
        estimate,
        target.low,
        max(target.low, high_c),
        past_limit=past,
        unchecked=target.is_unchecked,
    )
    between = target.low < target.high and reading_c < target.high - _EDGE_K
    differ = place is Quantity.NIGHT_AIR and judged.is_fine and between
    return Finding(place, reading_c, target, judged, differ)


def doubts_about(readings: Readings) -> tuple[Doubtful, ...]:
    """Return what speaks against believing the readings: lamp time, instruments, contradictions.

    Source: common_practice.

    Examples
    --------
    >>> doubts_about(Readings(basking_surface_c=39.0, lamp_on_h=0.5))
    (<Doubtful.NOT_YET_A_READING: 1>,)
    """
    return (*_lamp_time(readings), *_instruments(readings), *_contradictions(readings))


def _lamp_time(readings: Readings) -> Iterator[Doubtful]:
    by_day = (readings.basking_surface_c, readings.cool_air_c, readings.warm_air_c)
    if all(reading is None for reading in by_day):
        return
    if readings.is_too_soon:
        yield Doubtful.NOT_YET_A_READING
    elif readings.lamp_on_h is None:
        yield Doubtful.LAMP_TIME_NOT_SAID


def _instruments(readings: Readings) -> Iterator[Doubtful]:
    used = readings.instruments
    air = (readings.cool_air_c, readings.warm_air_c, readings.night_low_c)
    if used == {Instrument.DIAL_OR_STRIP}:
        yield Doubtful.DIAL_NOT_TRUSTED
        return
    if used and Instrument.INFRARED_GUN not in used and readings.basking_surface_c is not None:
        yield Doubtful.PROBE_FOR_SURFACE
    if used and Instrument.DIGITAL_PROBE not in used and any(c is not None for c in air):
        yield Doubtful.GUN_FOR_AIR


def _contradictions(readings: Readings) -> Iterator[Doubtful]:
    surface, cool, warm = readings.basking_surface_c, readings.cool_air_c, readings.warm_air_c
    if surface is not None and cool is not None and cool >= surface:
        yield Doubtful.COOL_END_ABOVE_SURFACE
    if cool is not None and warm is not None and cool > warm + _SWAPPED_K:
        yield Doubtful.COOL_END_ABOVE_WARM_END
    near_surface = warm is not None and surface is not None and warm > surface - _NEAR_SURFACE_K
    far_from_cool = warm is not None and cool is not None and warm > cool + _BEAM_SPREAD_K
    if near_surface or far_from_cool:
        yield Doubtful.WARM_PROBE_IN_BEAM
