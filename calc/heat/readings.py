"""A keeper's readings, and what speaks against believing them."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, StrEnum, auto

from calc.animals import Animal, Target
from calc.validity import check

__all__ = [
    "SOON_H",
    "Doubtful",
    "Finding",
    "Instrument",
    "Place",
    "Readings",
    "Verdict",
    "doubts_about",
    "finding_for",
]

SOON_H = 2.0
"""Lamp time before a reading counts [h]; three are better. Source: common_practice."""

_COLDEST_C, _HOTTEST_C = -10.0, 150.0
_LONGEST_ON_H = 24.0
_EDGE_K = 0.05
_BEAM_SPREAD_K = 10.0
_NEAR_SURFACE_K = 1.0
_SWAPPED_K = 1.0


class Place(StrEnum):
    """Where a reading was taken, in order of importance."""

    BASKING_SURFACE = "basking surface"
    COOL_AIR = "cool-end air"
    WARM_AIR = "warm-end air"
    NIGHT = "night low"


class Instrument(Enum):
    """What measured."""

    INFRARED_GUN = auto()
    DIGITAL_PROBE = auto()
    DIAL_OR_STRIP = auto()


class Verdict(Enum):
    """A reading against its target."""

    TOO_LOW = auto()
    KEEPERS_DIFFER = auto()
    IN_RANGE = auto()
    TOO_HIGH = auto()
    NO_TARGET = auto()


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

    def __post_init__(self) -> None:
        for place, reading in self.by_place().items():
            if reading is not None:
                check(place.value, reading, _COLDEST_C, _HOTTEST_C, "degC")
        if self.lamp_on_h is not None:
            check("lamp time", self.lamp_on_h, 0.0, _LONGEST_ON_H, "h")

    def by_place(self) -> dict[Place, float | None]:
        """Return the readings in order of importance."""
        return {
            Place.BASKING_SURFACE: self.basking_surface_c,
            Place.COOL_AIR: self.cool_air_c,
            Place.WARM_AIR: self.warm_air_c,
            Place.NIGHT: self.night_low_c,
        }

    @property
    def is_too_soon(self) -> bool:
        """Whether the lamp is known not to have been on for long enough."""
        return self.lamp_on_h is not None and self.lamp_on_h < SOON_H


@dataclass(frozen=True, slots=True)
class Finding:
    """One reading against its target; ``off_by_k`` is how far outside it lies [K], 0 inside."""

    place: Place
    reading_c: float
    target: Target | None
    verdict: Verdict
    off_by_k: float


def finding_for(place: Place, reading_c: float, animal: Animal) -> Finding:
    """Return the verdict on one reading.

    A night between the two ends of the floor is a matter on which keepers differ; one warmer
    than the cool end's day is too high. Readings within 0.05 K of an end count as inside.
    """
    target = {
        Place.BASKING_SURFACE: animal.basking_surface_c,
        Place.COOL_AIR: animal.cool_air_c,
        Place.WARM_AIR: animal.warm_air_c,
        Place.NIGHT: animal.night_floor_c,
    }[place]
    if target is None:
        return Finding(place, reading_c, None, Verdict.NO_TARGET, 0.0)
    high_c: float | None = target.high
    if place is Place.NIGHT:
        high_c = None if animal.cool_air_c is None else animal.cool_air_c.high
    if reading_c < target.low - _EDGE_K:
        return Finding(place, reading_c, target, Verdict.TOO_LOW, target.low - reading_c)
    if high_c is not None and reading_c > high_c + _EDGE_K:
        return Finding(place, reading_c, target, Verdict.TOO_HIGH, reading_c - high_c)
    if place is Place.NIGHT and reading_c < target.high - _EDGE_K:
        return Finding(place, reading_c, target, Verdict.KEEPERS_DIFFER, 0.0)
    return Finding(place, reading_c, target, Verdict.IN_RANGE, 0.0)


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
