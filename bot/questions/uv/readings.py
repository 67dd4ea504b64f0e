"""A lamp as its keeper read it, and what is told of the readings. Words: ``reading.ftl``."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Self

from bot.facts import Length, Say, metres
from bot.language.readings import PlacedReading
from bot.language.uv_lamps import TUBES, UvLamp
from bot.layered import Brief, Row
from bot.questions.uv.lamp_asked import engine_readings
from bot.questions.uv.readings_off import NOTHING_OFF, Off, OffBy, off_of
from calc.uv.lamp import Lamp, OwnPoint
from calc.uv.meter import MeterFit
from calc.uv.point import Shape
from calc.uv.screen import Screen

__all__ = [
    "Falls",
    "LampRead",
    "again_briefly",
    "enough_read",
    "expected_shape",
    "off_before",
    "off_brief",
    "off_briefly",
    "off_told",
    "read_again",
    "read_lamp",
    "readings_rows",
]

_TO_FIT_A_POINT, _TO_NAME_A_SHAPE = 2, 3
_AT_THE_FACE_M = 0.01
# Readings that fix the lamp no better than this are too weak to go by.
_LOOSE = 1.25


@dataclass(frozen=True, slots=True)
class LampRead:
    """A lamp with what its readings say of it; without readings nothing is off.

    ``off`` is what must be known before any figure.
    """

    lamp: Lamp
    fit: MeterFit | None = None
    readings: tuple[PlacedReading, ...] = ()
    off: Off = NOTHING_OFF

    @property
    def contradicts(self) -> bool:
        """Whether the readings do not fit one lamp."""
        return self.off.by is OffBy.CONTRADICT

    @property
    def cannot_be(self) -> bool:
        """Whether no such lamp gives what was read, so that nothing is moved by it."""
        return self.off.by is not OffBy.NOTHING

    @property
    def is_loose(self) -> bool:
        """Whether the readings are too weak to go by."""
        return self.fit is not None and self.fit.fit.factor > _LOOSE

    def with_class(self, named: Lamp | None) -> Self:
        """Return it with what the class named gives; nothing is added to readings in doubt."""
        if named is None or self.cannot_be or self.off.aside:
            return self
        from calc.uv.class_prior import lamp_with_class

        return replace(self, lamp=lamp_with_class(self.lamp, named))


def read_lamp(
    lamp: Lamp,
    readings: Sequence[PlacedReading] | None,
    screen: Screen,
    kind: UvLamp = UvLamp.T5_HO,
    *,
    is_named: bool,
) -> LampRead:
    """Return the lamp with the constant its readings give it, or as it is without readings."""
    if not readings:
        return LampRead(lamp)
    from calc.uv.shapes import fit_lamp, lamp_by_readings

    read = engine_readings(readings, screen)
    fit = fit_lamp(read, lamp, expected_shape(kind))
    like = replace(lamp, own=None, age_s=None) if is_named else None
    found = lamp_by_readings(read, lamp, fit)
    off = off_of(fit, read, readings, (lamp, found, like), kind)
    return LampRead(found, fit, tuple(readings), off).with_class(lamp if is_named else None)


def expected_shape(kind: UvLamp) -> Shape:
    """Return how the UV of a kind of lamp is expected to fall, until readings say otherwise."""
    return Shape.LINE if kind in TUBES else Shape.POINT


def enough_read(readings: Sequence[PlacedReading] | None, kind: UvLamp) -> bool:
    """Say whether readings take the place of figures for a kind of lamp.

    One place tells the law of a tube; of a small lamp two, and of one that nobody can name three.
    """
    places = len({reading.distance.low for reading in readings or ()})
    if kind in TUBES:
        return places > 0
    return places >= (_TO_NAME_A_SHAPE if kind is UvLamp.UNKNOWN else _TO_FIT_A_POINT)


@dataclass(frozen=True, slots=True)
class Falls:
    """How the UV of a small lamp falls, by its readings or by its kind."""

    by_readings: bool
    at_face: bool
    behind: Length


def readings_rows(read: LampRead) -> Iterator[Row]:
    """Yield how the UV falls where it is not as under a tube, and the reading that was left out."""
    if read.fit is not None and isinstance(read.fit.own, OwnPoint):
        behind_m = read.fit.own.source.behind_m
        falls = Falls(read.fit.told_by_readings, behind_m < _AT_THE_FACE_M, metres(behind_m))
        yield Row(Say("reading-falls-label"), Say("reading-falls", falls))
    if read.off.aside:
        yield Row(Say("reading-aside-label"), Say("reading-aside", read.off.aside))


def off_told(off: Off) -> Iterator[Say]:
    """Yield what is off, and what was perhaps meant."""
    if off.by is not OffBy.NOTHING:
        yield Say.by("reading-off", off.by, off)
        if off.was_it:
            yield Say("reading-was-it", off.was_it)
    elif off.aside:
        yield Say("reading-left-out", off.aside)
        if off.aside.was_it:
            yield Say("reading-was-it", off.aside.was_it)


def off_before(off: Off) -> tuple[Say, ...]:
    """Return what must be known before a wish that is refused: that the readings cannot be."""
    return tuple(off_told(off)) if off.by is not OffBy.NOTHING else ()


def off_briefly(off: Off) -> tuple[Say, ...]:
    """Return in brief what was perhaps meant, and what was left out."""
    if off.by is not OffBy.NOTHING:
        return (Say("reading-was-it", off.was_it),) if off.was_it else ()
    return (Say("reading-left-out-short", off.aside),) if off.aside else ()


def again_briefly(read: LampRead) -> tuple[Say, ...]:
    """Return in brief what to do where the readings cannot be."""
    weak = read.off.by is OffBy.WEAK
    first = Say("reading-wipe-short" if weak else "reading-again-short")
    return (first, Say("reading-nothing-moves"))


def off_brief(read: LampRead) -> Brief:
    """Return what is told of readings that cannot be: nothing is hung by them."""
    return Brief(
        head=Say.by("reading-head", read.off.by),
        range=off_briefly(read.off),
        steps=again_briefly(read),
    )


def read_again(read: LampRead) -> Iterator[Say]:
    """Yield what to do before anything else, where the readings ask for it."""
    match read.off.by:
        case OffBy.CONTRADICT:
            yield Say("reading-again")
        case OffBy.WEAK:
            yield Say("reading-wipe")
            yield Say("reading-worn")
        case OffBy.STRONG:
            yield Say("reading-check")
        case OffBy.NOTHING if read.is_loose:
            yield Say("reading-nearer")
        case _:
            return
    if read.cannot_be:
        yield Say("reading-then-ask")
