"""What is off among placed readings: that they cannot be, or that one of them does not count."""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Length, Share, Uvi, metres, share, uvi
from bot.language.readings import PlacedReading
from bot.language.uv_lamps import TUBES, UvLamp
from calc.uv.choice import STRENGTHS_PERCENT
from calc.uv.lamp import Fixture, Lamp, OwnPoint, lamp_constant, uvi_at
from calc.uv.meter import MeterFit, Reading
from calc.uv.screen import NoScreen
from calc.uv.slips import Slip, slip_among, slip_of_all

__all__ = ["NOTHING_OFF", "Aside", "Meant", "Off", "OffBy", "WasIt", "off_of"]

_STRONGEST = Lamp(max(STRENGTHS_PERCENT), Fixture.POLISHED)
# Lamps of one class differ by a third: a lamp three times its class, or twice the strongest
# class there is, was not read as it was meant; a third of these holds where a slip explains it.
_MOST, _MOST_OF_STRONGEST, _MOST_BY_SLIP = 3.0, 2.0, 2.0
_LEAST, _LEAST_BY_SLIP = 0.2, 0.45
# A lost point makes ten times as much; beyond twice that it explains nothing.
_POINT = 10.0
_OTHER_UNIT = {"in": Slip.CM_AS_INCHES, "cm": Slip.INCHES_AS_CM}
_OF_UVI = (Slip.UVI_TOO_HIGH, Slip.UVI_TOO_LOW)
_TENFOLD = (*_OF_UVI, Slip.TOO_FAR, Slip.TOO_NEAR)
_CM_M, _INCH_M = 0.01, 0.0254


class OffBy(Enum):
    """Why readings are not gone by."""

    NOTHING = auto()
    CONTRADICT = auto()
    STRONG = auto()
    WEAK = auto()


class Meant(Enum):
    """What was perhaps meant in place of what was told."""

    UVI = auto()
    CENTIMETRES = auto()
    INCHES = auto()
    DISTANCE = auto()


@dataclass(frozen=True, slots=True)
class WasIt:
    """A reading that was perhaps meant otherwise; distances as they are typed."""

    meant: Meant
    uvi_meant: Uvi
    uvi_read: Uvi
    number_meant: str
    number_read: str
    inches: bool


@dataclass(frozen=True, slots=True)
class Aside:
    """A reading that does not fit the others, and what it would be by them."""

    read: Uvi
    at: Length
    typed: str
    by_others: Uvi
    was_it: WasIt | None


@dataclass(frozen=True, slots=True)
class Off:
    """What must be known before any figure: ``by`` forbids to go by the readings.

    ``class_percent`` is the class that they are held against; ``times`` and ``part`` how much of it
    was read.
    """

    by: OffBy = OffBy.NOTHING
    tube: bool = True
    strongest: bool = False
    class_percent: float = 0.0
    times: float = 1.0
    was_it: WasIt | None = None
    aside: Aside | None = None

    @property
    def strength(self) -> Share:
        """Return the class that they are held against."""
        return share(self.class_percent / 100.0)

    @property
    def many(self) -> int:
        """Return how many times as much was read, in whole numbers."""
        return max(2, round(self.times))

    @property
    def part(self) -> Share:
        """Return the share of the class that was read."""
        return share(self.times)


NOTHING_OFF = Off()


def off_of(
    fit: MeterFit,
    given: Sequence[Reading],
    typed: Sequence[PlacedReading],
    lamps: tuple[Lamp, Lamp, Lamp | None],
    kind: UvLamp,
) -> Off:
    """Return what is off among readings.

    ``lamps``: the lamp as it was told, as its readings give it, and the class that it was named
    as, if it was.
    """
    told, found, like = lamps
    allowed = [_allowed(reading) for reading in typed]
    if fit.contradicts:
        slip = slip_among(given, told, allowed) if len(given) > 1 and kind in TUBES else None
        was_it = _was_it(typed[slip[0]], slip[1]) if slip else None
        return Off(OffBy.CONTRADICT, tube=kind in TUBES, was_it=was_it)
    aside = _aside(fit, given, typed, told, allowed)
    if kind not in TUBES:
        return Off(tube=False, aside=aside)
    every = [slip for slip in allowed[0] if all(slip in others for others in allowed)]
    slip_all = slip_of_all(given, told, like, every) if like and not _is_point(found) else None
    return (
        _far_too_strong(_times(found, like or _STRONGEST), like, typed[0], slip_all, aside)
        or (like and _far_too_weak(_times(found, like), like, typed[0], slip_all, aside))
        or Off(aside=aside)
    )


def _allowed(reading: PlacedReading) -> tuple[Slip, ...]:
    if reading.kept:
        return _OF_UVI
    other = _OTHER_UNIT.get(reading.distance.unit)
    return (other, *_TENFOLD) if other else _TENFOLD


def _aside(
    fit: MeterFit,
    given: Sequence[Reading],
    typed: Sequence[PlacedReading],
    lamp: Lamp,
    allowed: Sequence[Sequence[Slip]],
) -> Aside | None:
    if fit.set_aside is None:
        return None
    wild = typed[fit.set_aside]
    only = [slips if i == fit.set_aside else () for i, slips in enumerate(allowed)]
    slip = slip_among(given, lamp, only)
    return Aside(
        read=uvi(wild.value),
        at=metres(wild.distance.low),
        typed=wild.distance.text,
        by_others=uvi(wild.value / fit.ratios[fit.set_aside]),
        was_it=_was_it(wild, slip[1]) if slip else None,
    )


def _far_too_strong(
    times: float, like: Lamp | None, first: PlacedReading, slip: Slip | None, aside: Aside | None
) -> Off | None:
    most = _MOST_OF_STRONGEST if like is None else _MOST
    if times <= (_MOST_BY_SLIP if slip else most):
        return None
    asked = slip or times < _POINT * most
    return Off(
        OffBy.STRONG,
        strongest=like is None,
        class_percent=(like or _STRONGEST).strength_percent,
        times=times,
        was_it=_was_it(first, slip or Slip.UVI_TOO_HIGH) if asked else None,
        aside=aside,
    )


def _far_too_weak(
    times: float, like: Lamp, first: PlacedReading, slip: Slip | None, aside: Aside | None
) -> Off | None:
    if times >= (_LEAST_BY_SLIP if slip else _LEAST):
        return None
    was_it = _was_it(first, slip) if slip else None
    return Off(
        OffBy.WEAK, class_percent=like.strength_percent, times=times, was_it=was_it, aside=aside
    )


def _is_point(lamp: Lamp) -> bool:
    return isinstance(lamp.own, OwnPoint)


def _times(lamp: Lamp, like: Lamp) -> float:
    """Return how many times as strong as a class a lamp is, where it was read."""
    if isinstance(lamp.own, OwnPoint):
        around_m = lamp.own.source.around_m
        return uvi_at(lamp, around_m, NoScreen()) / uvi_at(like, around_m, NoScreen())
    return lamp_constant(lamp) / lamp_constant(like)


_MEANT = {
    Slip.UVI_TOO_HIGH: Meant.UVI,
    Slip.UVI_TOO_LOW: Meant.UVI,
    Slip.CM_AS_INCHES: Meant.CENTIMETRES,
    Slip.INCHES_AS_CM: Meant.INCHES,
}


def _was_it(reading: PlacedReading, slip: Slip) -> WasIt:
    """Return what a reading was perhaps meant as."""
    far_m, inches = reading.distance.low, reading.distance.unit == "in"
    size = _INCH_M if inches or slip is Slip.CM_AS_INCHES else _CM_M
    # As many of the other unit were typed as were meant of this one.
    factor = 1.0 if _MEANT.get(slip) in (Meant.CENTIMETRES, Meant.INCHES) else slip.value[0]
    return WasIt(
        meant=_MEANT.get(slip, Meant.DISTANCE),
        uvi_meant=uvi(round(reading.value * slip.value[1], 1)),
        uvi_read=uvi(reading.value),
        number_meant=f"{round(far_m * factor / size, 1):g}",
        number_read=f"{round(far_m / size, 1):g}",
        inches=inches,
    )
