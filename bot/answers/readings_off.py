"""What is said of placed readings before any figure: that they cannot be, or one of them not."""

from collections.abc import Sequence
from dataclasses import dataclass

from bot.answers.figures import number, percent, uvi_wanted
from bot.language.readings import PlacedReading
from bot.language.uv_lamps import TUBES, UvLamp
from calc.uv.choice import CLASS_STRENGTHS_PERCENT
from calc.uv.lamp import Fixture, Lamp, OwnPoint, lamp_constant, uvi_at
from calc.uv.meter import MeterFit, Reading
from calc.uv.screen import NoScreen
from calc.uv.slips import Slip, slip_among, slip_of_all

__all__ = ["NOTHING_OFF", "Off", "off_of"]

_STRONGEST = Lamp(max(CLASS_STRENGTHS_PERCENT), Fixture.POLISHED)
# Lamps of one class differ by a third: a lamp three times its class, or twice the strongest
# class there is, was not read as it was meant; a third of these holds where a slip explains it.
_MOST, _MOST_OF_STRONGEST, _MOST_BY_SLIP = 3.0, 2.0, 2.0
_LEAST, _LEAST_BY_SLIP = 0.2, 0.45
# A lost point makes ten times as much; beyond twice that it explains nothing.
_POINT = 10.0
_OTHER_UNIT = {"in": Slip.CM_AS_INCHES, "cm": Slip.INCHES_AS_CM}
_TENFOLD = (Slip.UVI_TOO_HIGH, Slip.UVI_TOO_LOW, Slip.TOO_FAR, Slip.TOO_NEAR)
_CM_M, _INCH_M = 0.01, 0.0254


@dataclass(frozen=True, slots=True)
class Off:
    """What is off: ``warning`` forbids to go by the readings, ``aside`` tells what was left out."""

    contradicts: bool = False
    is_weak: bool = False
    warning: str = ""
    aside: str = ""


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
        one = "tube" if kind in TUBES else "lamp"
        slip = slip_among(given, told, allowed) if len(given) > 1 and kind in TUBES else None
        asked = _was_it(typed[slip[0]], slip[1]) if slip else ""
        warning = f"Your readings do not fit one {one}: read again before you move anything.{asked}"
        return Off(contradicts=True, warning=warning)
    aside = _aside(fit, given, typed, told, allowed)
    if kind not in TUBES:
        return Off(aside=aside)
    every = [slip for slip in allowed[0] if all(slip in others for others in allowed)]
    slip_all = slip_of_all(given, told, like, every) if like and not _is_point(found) else None
    strong = _far_too_strong(_times(found, like or _STRONGEST), like, typed[0], slip_all)
    if strong:
        return Off(warning=strong, aside=aside)
    weak = _far_too_weak(_times(found, like), like, typed[0], slip_all) if like else ""
    return Off(is_weak=bool(weak), warning=weak, aside=aside)


def _allowed(reading: PlacedReading) -> tuple[Slip, ...]:
    other = _OTHER_UNIT.get(reading.distance.unit)
    return (other, *_TENFOLD) if other else _TENFOLD


def _aside(
    fit: MeterFit,
    given: Sequence[Reading],
    typed: Sequence[PlacedReading],
    lamp: Lamp,
    allowed: Sequence[Sequence[Slip]],
) -> str:
    if fit.set_aside is None:
        return ""
    wild = typed[fit.set_aside]
    only = [slips if i == fit.set_aside else () for i, slips in enumerate(allowed)]
    slip = slip_among(given, lamp, only)
    asked = _was_it(wild, slip[1]) if slip else ""
    return (
        f"UVI {number(wild.value, 0.01)} at {wild.distance.text} does not fit the others, so I "
        f"left it out.{asked}"
    )


def _far_too_strong(
    times: float, like: Lamp | None, first: PlacedReading, slip: Slip | None
) -> str:
    most = _MOST_OF_STRONGEST if like is None else _MOST
    if times <= (_MOST_BY_SLIP if slip else most):
        return ""
    asked = _was_it(first, slip or Slip.UVI_TOO_HIGH) if slip or times < _POINT * most else ""
    kind = f"a {_class(like)} tube" if like else f"the strongest tube sold ({_class(_STRONGEST)})"
    return (
        f"You read far more than {kind} gives, about {_as_many(times)} times as much: do not let "
        f"the animal under it, and read again.{asked}"
    )


def _far_too_weak(times: float, like: Lamp, first: PlacedReading, slip: Slip | None) -> str:
    if times >= (_LEAST_BY_SLIP if slip else _LEAST):
        return ""
    asked = _was_it(first, slip) if slip else ""
    return (
        f"You read far less than a {_class(like)} tube gives, about {percent(times)} of it: do not "
        "hang it nearer, and read again. Is the sensor or the tube dirty, or a screen between?"
        f"{asked}"
    )


def _class(lamp: Lamp) -> str:
    return f"T5 HO, {number(lamp.strength_percent, 0.1)} %"


def _as_many(times: float) -> str:
    return str(round(times)) if times >= _MOST else number(times, 0.1)


def _is_point(lamp: Lamp) -> bool:
    return isinstance(lamp.own, OwnPoint)


def _times(lamp: Lamp, like: Lamp) -> float:
    """Return how many times as strong as a class a lamp is, where it was read."""
    if isinstance(lamp.own, OwnPoint):
        around_m = lamp.own.source.around_m
        return uvi_at(lamp, around_m, NoScreen()) / uvi_at(like, around_m, NoScreen())
    return lamp_constant(lamp) / lamp_constant(like)


def _was_it(reading: PlacedReading, slip: Slip) -> str:
    """Return the question whether a reading was meant otherwise."""
    far_m, unit = reading.distance.low, reading.distance.unit
    if slip in (Slip.UVI_TOO_HIGH, Slip.UVI_TOO_LOW):
        meant = reading.value * slip.value[1]
        told = f"{meant:.1f}" if slip is Slip.UVI_TOO_HIGH else number(meant, 0.1)
        return f" Was it {told}, not {uvi_wanted(reading.value)}?"
    if slip is Slip.CM_AS_INCHES:
        return f" Was it {number(far_m / _INCH_M, 0.1)} cm, not inches?"
    if slip is Slip.INCHES_AS_CM:
        return f" Was it {number(far_m / _CM_M, 0.1)} inches, not cm?"
    size = _INCH_M if unit == "in" else _CM_M
    sign = "in" if unit == "in" else "cm"
    meant = number(far_m * slip.value[0] / size, 0.1)
    return f" Was it {meant} {sign}, not {number(far_m / size, 0.1)} {sign}?"
