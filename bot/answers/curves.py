"""Curves of UVI against distance for an answer: the engine's own figures, and the same in words."""

from collections.abc import Sequence

import numpy as np

from bot.answers.figures import length, length_range_away, uvi, uvi_estimate, uvi_range
from bot.drawing import Axis, Chart, Line, Mark, Point, PointKind, Range, Tone
from bot.language.quantities import Units
from bot.questions.scales import lengths
from bot.questions.uv.curves import curve_of, shortened, shown_distances
from bot.reply import Picture
from calc.uncertainty import Estimate
from calc.uv.lamp import Lamp
from calc.uv.placement import COMFORTABLE_MINIMUM_M, Spot
from calc.uv.screen import Screen

__all__ = [
    "length_axis",
    "too_near",
    "uvi_axis",
    "uvi_picture",
]

_POINTS = 49
_HEADROOM = 2.0
_NOTE = "Line: best estimate. Blue band: where it may really lie; a UV index meter narrows it."


def length_axis(title: str, low_m: float, high_m: float, units: Units) -> Axis:
    """Return an axis of lengths in both units."""
    return Axis(title, low_m, high_m, lengths(units))


def uvi_axis(high: float) -> Axis:
    """Return an axis of the UV index from 0."""
    return Axis("UV index (UVI)", 0.0, high)


def uvi_picture(
    *,
    title: str,
    subtitle: str,
    lamp: Lamp,
    screen: Screen,
    wanted: tuple[float, float],
    units: Units,
    advised_m: tuple[float, float] | None = None,
    spots: Sequence[tuple[str, Spot, PointKind]] = (),
    marks: Sequence[Mark] = (),
    readings: Sequence[Point] = (),
) -> Picture:
    """Return the picture of one lamp: its curve, what is wanted, what is advised, and points."""
    low, high = wanted
    shown = [spot.distance_m for _, spot, _ in spots] + [p.x for p in readings]
    shown += [mark.x for mark in marks] + list(advised_m or ())
    near, far = shown_distances(shown)
    line = curve_of(lamp, screen, np.linspace(near, far, _POINTS))
    tops = [spot.uvi.high for _, spot, _ in spots] + [p.high for p in readings]
    top = max([_HEADROOM * high, *(1.15 * t for t in tops)])
    points = tuple(
        Point(s.distance_m, s.uvi.best, s.uvi.low, s.uvi.high, label, kind)
        for label, s, kind in spots
    )
    spans = [too_near(near)]
    if advised_m:
        spans.append(Range(*advised_m, f"keep {length_range_away(*advised_m, units)}"))
    drawing = Chart(
        title=title,
        subtitle=subtitle,
        x=length_axis("From the tube to the animal's back", near, far, units),
        y=uvi_axis(top),
        lines=(line,),
        bands=(Range(low, high, f"wanted {uvi_range(low, high)}"),),
        spans=tuple(spans),
        marks=tuple(marks),
        points=(*points, *readings),
        note=_NOTE,
    )
    return Picture(alt=_told(drawing, line, advised_m, units), drawing=drawing)


def too_near(from_m: float) -> Range:
    """Return the stretch in which no tube should hang, whatever its UVI."""
    return Range(from_m, COMFORTABLE_MINIMUM_M, "too near", Tone.BAD)


def _told(drawing: Chart, line: Line, advised_m: tuple[float, float] | None, units: Units) -> str:
    first, last = (
        f"{uvi_estimate(Estimate(line.low[i], line.y[i], line.high[i]))} at "
        f"{length(line.x[i], units)}"
        for i in (0, -1)
    )
    band = drawing.bands[0]
    told = [
        f"Chart: {drawing.title}, {drawing.subtitle}.",
        f"UVI falls steeply with distance, from {first} to {last}.",
        f"Wanted is UVI {uvi_range(band.low, band.high)}.",
    ]
    if advised_m:
        told.append(f"The advised distance is {length_range_away(*advised_m, units)}.")
    told += [f"A line marks {mark.label}." for mark in drawing.marks]
    told += [
        f"Point at {length(point.x, units)}, UVI {uvi(point.y)}: {point.label}."
        for point in drawing.points
    ]
    told.append(f"Nearer than {length(COMFORTABLE_MINIMUM_M, units)} is hatched as too near.")
    return shortened(told)
