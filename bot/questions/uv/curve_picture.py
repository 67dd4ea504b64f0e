"""The picture of one lamp: its UVI over the distance. Words: ``uvcurve.ftl``."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

import numpy as np

from bot.drawing import Axis, Behind, Drop, Line, Point, PointKind, Range, Tone, Zone, ZoneKind
from bot.facts import Bound, Length, Name, Say, Uvi, metres, uvi
from bot.language.lamps import Fixture as TypedFixture
from bot.layered import Teller
from bot.questions.scales import lengths
from bot.questions.setup.drawn_animal import drawn_animal
from bot.questions.uv.curves import alt_of, curve_of, shown_distances
from bot.reply import Picture
from calc.uncertainty import Estimate
from calc.uv.lamp import Fixture, Lamp, OwnPoint
from calc.uv.placement import COMFORTABLE_MINIMUM_M, Spot
from calc.uv.screen import Screen

__all__ = [
    "Heading",
    "Shown",
    "behind_of",
    "behind_told",
    "curve_picture",
    "distance_axis",
    "too_near_span",
    "uvi_axis",
]

_POINTS = 49
_KINDS = (ZoneKind.TOO_NEAR, ZoneKind.STRONGER, ZoneKind.RIGHT, ZoneKind.WEAKER)
_NO_BREAK = "\u00a0"
_HEADROOM = 2.0
_ABOVE_THE_TOP = 1.15
_BELOW_THE_BACK = 1.14


@dataclass(frozen=True, slots=True)
class Shown:
    """A point of the curve, what it is, and how far from the lamp it is said to be."""

    label: Say
    spot: Spot
    kind: PointKind
    at: Length


@dataclass(frozen=True, slots=True)
class Heading:
    """What stands over a picture: what it is of, the answer and its sign, the lamp; and whose."""

    over: Say
    head: Say
    tone: Tone
    below: tuple[Say, ...]
    animal: Name | None
    behind: Behind | None = None


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


def behind_of(lamp: Lamp) -> Behind | None:
    """Return what is behind a tube of a class; readings hold it unsaid."""
    return None if lamp.own is not None else behind_told(lamp.fixture)


def behind_told(fixture: Fixture | TypedFixture | None) -> Behind | None:
    """Return what is behind a tube as it is drawn."""
    return None if fixture is None else Behind[fixture.name]


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
    heading: Heading,
    lamp: tuple[Lamp, Screen],
    wanted: tuple[float, float],
    advised_m: tuple[float, float] | None,
    shown: Sequence[Shown],
    teller: Teller,
) -> Picture:
    """Return the picture of a lamp through a screen, the back where the first of ``shown`` is."""
    low, high = wanted
    near, far = shown_distances([one.spot.distance_m for one in shown] + list(advised_m or ()))
    line = curve_of(*lamp, np.linspace(near, far, _POINTS))
    told = _told(heading, line, wanted, advised_m)
    top = max([_HEADROOM * high, *(_ABOVE_THE_TOP * one.spot.uvi.high for one in shown)])
    first, back_m = _told_point(shown[0]), shown[0].spot.distance_m
    lowest = max(far, back_m * _BELOW_THE_BACK)
    keep = None
    if advised_m:
        keep = Range(*advised_m, teller.say(Say("uvcurve-keep", told)))
    read = any(one.kind is PointKind.READING for one in shown)
    figure, long_m = drawn_animal(
        heading.animal.key.removeprefix("animal-") if heading.animal else ""
    )
    drawing = Drop(
        over=teller.say(told.title),
        title=teller.say(heading.head),
        tone=heading.tone,
        subtitle=teller.say(Say("uvcurve-below", told)),
        down=distance_axis(0.0, lowest, teller),
        across=uvi_axis(top, teller),
        line=line,
        wanted=Range(low, high, teller.say(Say("uvcurve-wanted", told))),
        zones=tuple(_zones(line, wanted, lowest, teller)),
        points=tuple(_point(one, teller) for one in shown),
        back_m=back_m,
        away=teller.say(Say("uvcurve-away", first)).replace(_NO_BREAK, " "),
        keep=keep,
        animal=figure,
        animal_m=long_m,
        is_small=isinstance(lamp[0].own, OwnPoint),
        behind=heading.behind or behind_of(lamp[0]),
        note=teller.say(Say("uvcurve-note-read" if read else "uvcurve-note")),
    )
    words = [Say("uvcurve-alt", told), heading.head, Say("uvcurve-alt-falls", told)]
    words += [Say("uvcurve-alt-keep", told)] if advised_m else []
    words += [Say("uvcurve-alt-point", _told_point(one)) for one in shown]
    words.append(Say("uvcurve-alt-near", told))
    return Picture(alt=alt_of(map(teller.say, words)), drawing=drawing)


def _zones(
    line: Line, wanted: tuple[float, float], lowest_m: float, teller: Teller
) -> Iterator[Zone]:
    """Yield where no lamp should hang, and below that where it is stronger, right and weaker."""
    edges = [0.0, COMFORTABLE_MINIMUM_M, *(_reached(line, uvi) for uvi in reversed(wanted))]
    edges = [min(max(edge, *edges[: n + 1]), lowest_m) for n, edge in enumerate(edges)]
    for kind, low, high in zip(_KINDS, edges, [*edges[1:], lowest_m], strict=True):
        if high > low:
            yield Zone(kind, low, high, teller.say(Say.by("uvcurve-zone", kind)))


def _reached(line: Line, uvi: float) -> float:
    """Return where a falling curve reaches a UV index [m]: its ends where that is beyond them."""
    return float(np.interp(-uvi, [-y for y in line.y], line.x))


def _told(
    heading: Heading,
    line: Line,
    wanted: tuple[float, float],
    advised_m: tuple[float, float] | None,
) -> Curve:
    first, last = (uvi(Estimate(line.low[i], line.y[i], line.high[i])) for i in (0, -1))
    return Curve(
        heading.over,
        heading.below,
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
    return CurvePoint(one.label, uvi(one.spot.uvi), one.at)
