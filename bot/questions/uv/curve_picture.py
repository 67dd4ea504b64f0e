"""The picture of one lamp: its UVI over the distance. Words: ``uvcurve.ftl``."""

from collections.abc import Sequence
from dataclasses import dataclass

import numpy as np

from bot.drawing import Axis, Chart, Line, Point, PointKind, Range, Tone
from bot.facts import Bound, Length, Say, Uvi, metres, uvi
from bot.layered import Teller
from bot.questions.scales import lengths
from bot.questions.uv.curves import curve_of, shortened, shown_distances
from bot.reply import Picture
from calc.uncertainty import Estimate
from calc.uv.lamp import Lamp
from calc.uv.placement import COMFORTABLE_MINIMUM_M, Spot
from calc.uv.screen import Screen

__all__ = ["Shown", "curve_picture", "distance_axis", "too_near_span", "uvi_axis"]

_POINTS = 49
_NO_BREAK = "\u00a0"
_HEADROOM = 2.0
_ABOVE_THE_TOP = 1.15


@dataclass(frozen=True, slots=True)
class Shown:
    """A point of the curve, and what it is."""

    label: Say
    spot: Spot
    kind: PointKind


@dataclass(frozen=True, slots=True)
class Curve:
    """What the words of the picture tell of the whole."""

    title: Say
    below: tuple[Say, ...]
    wanted: Uvi
    advised: Length | None
    first: Uvi
    first_at: Length
    last: Uvi
    last_at: Length
    nearest: Length


@dataclass(frozen=True, slots=True)
class CurvePoint:
    """A point as the words of the picture tell it."""

    label: Say
    uvi: Uvi
    at: Length


def distance_axis(low_m: float, high_m: float, teller: Teller) -> Axis:
    """Return an axis of distances in both units."""
    return Axis(teller.say(Say("uvcurve-distance")), low_m, high_m, lengths(teller.units))


def uvi_axis(high: float, teller: Teller) -> Axis:
    """Return an axis of the UV index from 0."""
    return Axis(teller.say(Say("uvcurve-uvi")), 0.0, high)


def too_near_span(from_m: float, teller: Teller) -> Range:
    """Return the stretch in which no tube should hang, whatever its UVI."""
    return Range(from_m, COMFORTABLE_MINIMUM_M, teller.say(Say("uvcurve-too-near")), Tone.BAD)


def curve_picture(
    titles: tuple[Say, tuple[Say, ...]],
    lamp: tuple[Lamp, Screen],
    wanted: tuple[float, float],
    advised_m: tuple[float, float] | None,
    shown: Sequence[Shown],
    teller: Teller,
) -> Picture:
    """Return the picture of a lamp through a screen, with its title and what stands below it."""
    low, high = wanted
    near, far = shown_distances([one.spot.distance_m for one in shown] + list(advised_m or ()))
    line = curve_of(*lamp, np.linspace(near, far, _POINTS))
    told = _told(titles, line, wanted, advised_m)
    top = max([_HEADROOM * high, *(_ABOVE_THE_TOP * one.spot.uvi.high for one in shown)])
    spans = [too_near_span(near, teller)]
    if advised_m:
        spans.append(Range(*advised_m, teller.say(Say("uvcurve-keep", told))))
    drawing = Chart(
        title=teller.say(told.title),
        subtitle=teller.say(Say("uvcurve-below", told)),
        x=distance_axis(near, far, teller),
        y=uvi_axis(top, teller),
        lines=(line,),
        bands=(Range(low, high, teller.say(Say("uvcurve-wanted", told))),),
        spans=tuple(spans),
        points=tuple(_point(one, teller) for one in shown),
        note=teller.say(Say("uvcurve-note")),
    )
    words = [Say("uvcurve-alt", told), Say("uvcurve-alt-falls", told)]
    words += [Say("uvcurve-alt-keep", told)] if advised_m else []
    words += [Say("uvcurve-alt-point", _told_point(one)) for one in shown]
    words.append(Say("uvcurve-alt-near", told))
    return Picture(
        alt=shortened([teller.say(say).replace(_NO_BREAK, " ") for say in words]), drawing=drawing
    )


def _told(
    titles: tuple[Say, tuple[Say, ...]],
    line: Line,
    wanted: tuple[float, float],
    advised_m: tuple[float, float] | None,
) -> Curve:
    first, last = (uvi(Estimate(line.low[i], line.y[i], line.high[i])) for i in (0, -1))
    return Curve(
        *titles,
        wanted=uvi(wanted[0], wanted),
        advised=None if advised_m is None else metres(advised_m[0], advised_m, Bound.INWARD),
        first=first,
        first_at=metres(line.x[0]),
        last=last,
        last_at=metres(line.x[-1]),
        nearest=metres(COMFORTABLE_MINIMUM_M),
    )


def _point(one: Shown, teller: Teller) -> Point:
    there = one.spot.uvi
    label = teller.say(one.label)
    return Point(one.spot.distance_m, there.best, there.low, there.high, label, one.kind)


def _told_point(one: Shown) -> CurvePoint:
    return CurvePoint(one.label, uvi(one.spot.uvi), metres(one.spot.distance_m))
