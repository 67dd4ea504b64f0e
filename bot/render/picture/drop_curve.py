"""The UV index over the distance, hung from the lamp: down is farther, right is stronger."""

from collections.abc import Callable, Iterator, Sequence
from itertools import pairwise

from bot.drawing import Drop, PointKind
from bot.render.picture.axes import ticks_of
from bot.render.picture.chart_words import point_shape
from bot.render.picture.geometry import Rect, thinned
from bot.render.picture.inks import Ink
from bot.render.picture.lettering import SIZE, leading, width
from bot.render.picture.page import MARGIN, WIDE, Page
from bot.render.picture.svg import Point, path, polygon, polyline

__all__ = ["curve"]


def curve(page: Page, drop: Drop, side: Rect, y: Callable[[float], float]) -> None:
    """Draw the curve with its doubt, what is wanted, and the points, in a field."""
    high = drop.across.high

    def x(uvi: float) -> float:
        return side.x0 + min(max(uvi / high, 0.0), 1.0) * (side.x1 - side.x0)

    line = drop.line
    for end in (drop.wanted.low, drop.wanted.high):
        at = [(x(end), side.y0), (x(end), side.y1)]
        page.draw(polyline(at, stroke=Ink.UV, stroke_width=2.4, stroke_dasharray="7 5"))
    if line.low and line.high:
        there = [y(d) for d in line.x]
        most = list(zip(map(x, line.high), there, strict=True))
        least = list(zip(map(x, line.low), there, strict=True))
        page.draw(polygon([*most, *reversed(least)], fill=Ink.UV, fill_opacity=0.22))
    for part in _within(line.x, line.y, high):
        drawn = thinned([(x(uvi), y(d)) for d, uvi in part])
        page.draw(polyline(drawn, stroke=Ink.UV, stroke_width=5.0, stroke_linejoin="round"))
    _points(page, drop, side, x, y)
    _axis(page, drop, side, x)


def _within(
    distances: Sequence[float], values: Sequence[float], most: float
) -> Iterator[list[Point]]:
    """Return the parts of a falling curve that lie in the field, the first cut where it enters."""
    part: list[Point] = []
    for (d0, v0), (d1, v1) in pairwise(zip(distances, values, strict=True)):
        if v1 > most:
            continue
        if not part:
            share = (v0 - most) / (v0 - v1) if v0 > most and v0 > v1 else 0.0
            part.append((d0 + share * (d1 - d0), v0 + share * (v1 - v0)))
        part.append((d1, v1))
    if part:
        yield part


def _points(
    page: Page,
    drop: Drop,
    side: Rect,
    x: Callable[[float], float],
    y: Callable[[float], float],
) -> None:
    for point in drop.points:
        at = x(point.y), y(point.x)
        if point.low < point.high and point.kind is not PointKind.READING:
            a, b, top = x(point.low), x(point.high), at[1] - 8.0
            d = f"M{a:.1f} {at[1]:.1f}H{b:.1f}M{a:.1f} {top:.1f}v16M{b:.1f} {top:.1f}v16"
            page.draw_over(path(d, stroke=Ink.INK, stroke_width=2.6))
        page.draw_over(point_shape(point.kind, *at))
        page.thing(Rect(at[0] - 12.0, at[1] - 12.0, at[0] + 12.0, at[1] + 12.0))
    for point in drop.points:
        if point.kind in (PointKind.READING, PointKind.SET_ASIDE):
            at = x(point.y), y(point.x)
            for along, anchor in ((18.0, "start"), (-18.0, "end")):
                box = width(point.label, SIZE) * (1.0 if along > 0 else -1.0)
                inside = side.x0 + 4.0 < at[0] + along + box < side.x1 - 4.0
                if inside and page.text_where_free(
                    at[0] + along, at[1] + 8.0, point.label, anchor=anchor, halo=Ink.AIR, clear=1.0
                ):
                    break


def _axis(page: Page, drop: Drop, side: Rect, x: Callable[[float], float]) -> None:
    """Write what is wanted below the field in bold, the ends where there is room."""
    foot = side.y1 + 26.0
    ends = (f"{drop.wanted.low:g}", f"{drop.wanted.high:g}")
    for value, words in zip((drop.wanted.low, drop.wanted.high), ends, strict=True):
        page.text_where_free(x(value), foot, words, bold=True, anchor="middle", clear=2.0)
    for tick in ticks_of(drop.across, drop.across.scales[0], 4):
        half = width(tick.lines[0], SIZE) / 2.0
        at = min(max(x(tick.at), side.x0 + half), WIDE - MARGIN - half)
        page.text_where_free(at, foot, tick.lines[0], anchor="middle", clear=8.0)
    title = drop.across.title
    page.text(WIDE - MARGIN, foot + leading(SIZE), title, ink=Ink.SOFT, anchor="end")
