"""Curves: best line, doubt as a pale ribbon, what is wanted, what is advised, readings."""

import itertools
from collections.abc import Sequence

from bot.drawing import Axis, Chart, Line, Stroke, Ticks, Tone
from bot.render.picture.axes import ticks_of
from bot.render.picture.chart_words import labels, points
from bot.render.picture.due import due_bar
from bot.render.picture.geometry import Rect, thinned
from bot.render.picture.inks import TONE_SIGN, Ink
from bot.render.picture.lettering import SIZE, leading, width, wrapped
from bot.render.picture.page import MARGIN, WIDE, Page
from bot.render.picture.plot import Plot
from bot.render.picture.spread import spread
from bot.render.picture.svg import Point, path, polygon, polyline, rect, stroke
from bot.render.picture.textures import slanted
from bot.render.picture.uv_zones import name_zones, zone_grounds

__all__ = ["draw_chart"]

_TALL = 440.0
_LEFT, _RIGHT = 92.0, 40.0
_LABEL_ROOM, _TITLE_ROOM = 180.0, 520.0
_STROKES: dict[Stroke, dict[str, float | Ink | str]] = {
    Stroke.MAIN: {"stroke": Ink.UV, "stroke_width": 5.0},
    Stroke.SOLID: {"stroke": Ink.INK, "stroke_width": 3.0},
    Stroke.DASHED: {"stroke": Ink.INK, "stroke_width": 3.0, "stroke_dasharray": "11 6"},
    Stroke.DOTTED: {"stroke": Ink.SOFT, "stroke_width": 3.4, "stroke_dasharray": "3 6"},
    Stroke.AHEAD: {"stroke": Ink.UV, "stroke_width": 5.0, "stroke_dasharray": "14 9"},
}


def draw_chart(chart: Chart) -> Page:
    """Return the chart on its sheet."""
    page = Page(chart.title, chart.subtitle, over=chart.over, sign=TONE_SIGN[chart.tone])
    named = [line for line in chart.lines if line.label]
    parts = {line.label: wrapped(line.label, _LABEL_ROOM, SIZE)[:4] for line in named}
    side = max((width(part, SIZE) for lines in parts.values() for part in lines), default=0.0)
    right = side + 44.0 if named else _RIGHT
    title = wrapped(_titled(chart.y), _TITLE_ROOM, SIZE)[0]
    page.text(MARGIN, page.y + 20.0, title, ink=Ink.SOFT)
    for scale in chart.x.scales[1:2]:
        page.text(WIDE - right, page.y + 20.0, scale.unit, ink=Ink.SOFT, anchor="end")
    page.y += 34.0 + (leading(SIZE) if len(chart.x.scales) > 1 else 0.0)
    field = Rect(_LEFT, page.y, WIDE - right, page.y + _TALL)
    plot = Plot(chart, field)
    page.draw(rect(field.x0, field.y0, field.x1 - field.x0, _TALL, fill=Ink.AIR))
    _grounds(page, chart, plot)
    _level_axis(page, chart.y, plot, crossed=bool(chart.zones))
    _foot(page, chart.x, plot)
    for line in chart.lines:
        _line(page, line, plot)
    _line_names(page, named, parts, plot)
    points(page, chart, plot)
    if chart.zones:
        _keep_off(page, chart, plot)
    labels(page, chart, plot)
    name_zones(page, chart.zones, field, plot.held)
    page.y = max(page.y, field.y1 + 40.0)
    if chart.due is not None:
        due_bar(page, chart.due, plot)
    page.finish(chart.note)
    return page


def _titled(axis: Axis) -> str:
    unit = axis.scales[0].unit
    return f"{axis.title} ({unit})" if unit else axis.title


def _grounds(page: Page, chart: Chart, plot: Plot) -> None:
    """Draw what is wanted across the field, and what is advised or to be avoided up it."""
    field = plot.field
    zone_grounds(page, chart.zones, (field,), plot.held)
    for span in chart.spans:
        if span.tone is Tone.BAD:
            low, high = (min(max(plot.x(v), field.x0), field.x1) for v in (span.low, span.high))
            page.draw(
                rect(low, field.y0, high - low, _TALL, fill=Ink.SHADE),
                slanted(Rect(low, field.y0, high, field.y1), Ink.SHADE_LINE),
            )
    for band in chart.bands:
        top, foot = plot.held(band.high), plot.held(band.low)
        page.draw(rect(field.x0, top, field.x1 - field.x0, foot - top, fill=Ink.COOL_PALE))
        for end in (top, foot):
            page.draw(stroke((field.x0, end), (field.x1, end), Ink.COOL, 3.0))


def _level_axis(page: Page, axis: Axis, plot: Plot, *, crossed: bool) -> None:
    field = plot.field
    for tick in ticks_of(axis, axis.scales[0]):
        y = plot.y(tick.at)
        if not crossed:
            page.draw(stroke((field.x0, y), (field.x1, y), Ink.LINE, 1.4))
        page.text(field.x0 - 16.0, y + 8.0, tick.lines[0], anchor="end")
    page.draw(
        path(
            f"M{field.x0:.1f} {field.y0:.1f}V{field.y1:.1f}H{field.x1:.1f}",
            stroke=Ink.WALL,
            stroke_width=2.5,
        )
    )


def _foot(page: Page, axis: Axis, plot: Plot) -> None:
    """Write the ticks below the field, the second unit's above it, and what they count."""
    field, lowest = plot.field, 1
    for tick in ticks_of(axis, axis.scales[0], 6):
        x = plot.x(tick.at)
        if axis.ticks is not Ticks.MONTHS:
            page.draw(stroke((x, field.y1), (x, field.y1 + 8.0), Ink.WALL, 2.4))
        for number, line in enumerate(tick.lines):
            half = width(line, SIZE) / 2.0
            middle = min(max(x, MARGIN + half), WIDE - MARGIN - half)
            foot = field.y1 + 32.0 + number * leading(SIZE)
            if page.text_where_free(middle, foot, line, anchor="middle", clear=1.5):
                lowest = max(lowest, number + 1)
    page.y = field.y1 + 14.0 + lowest * leading(SIZE)
    if axis.ticks is Ticks.NUMBERS:
        title = wrapped(_titled(axis), field.x1 - MARGIN, SIZE)[0]
        page.text(field.x1, page.y + 20.0, title, ink=Ink.SOFT, anchor="end")
        page.y += leading(SIZE) + 8.0
    for scale in axis.scales[1:2]:
        for tick in ticks_of(axis, scale, 6):
            x = plot.x(tick.at)
            page.draw(stroke((x, field.y0), (x, field.y0 - 8.0), Ink.WALL, 2.4))
            page.text_where_free(x, field.y0 - 13.0, tick.lines[0], anchor="middle")


def _line(page: Page, line: Line, plot: Plot) -> None:
    if line.low and line.high:
        top = _course(line.x, line.high, plot, stepped=line.stepped)
        foot = _course(line.x, line.low, plot, stepped=line.stepped)
        page.draw(polygon([*top, *reversed(foot)], fill=Ink.UV, fill_opacity=0.16))
    told = _STROKES[line.stroke]
    for part in _inside(_course(line.x, line.y, plot, stepped=line.stepped, held=False), plot):
        page.draw(polyline(thinned(part), stroke_linejoin="round", **told))


def _course(
    xs: Sequence[float], ys: Sequence[float], plot: Plot, *, stepped: bool, held: bool = True
) -> list[Point]:
    points: list[Point] = []
    for x, y in zip(xs, ys, strict=True):
        at = plot.x(x), plot.held(y) if held else plot.y(y)
        if stepped and points:
            points.append((at[0], points[-1][1]))
        points.append(at)
    return points


def _inside(points: list[Point], plot: Plot) -> list[list[Point]]:
    """Return the parts of a line that lie in the field, each cut where it leaves it."""
    parts: list[list[Point]] = []
    part: list[Point] = []
    for start, end in itertools.pairwise(points):
        cut = _cut(start, end, plot.field)
        if cut is None:
            continue
        if not part or part[-1] != cut[0]:
            part = [cut[0]]
            parts.append(part)
        part.append(cut[1])
    return parts


def _cut(start: Point, end: Point, field: Rect) -> tuple[Point, Point] | None:
    (x0, y0), (x1, y1) = start, end
    first, last = 0.0, 1.0
    for y_end, sign in ((field.y0, 1.0), (field.y1, -1.0)):
        a, b = (y0 - y_end) * sign, (y1 - y_end) * sign
        if a < 0.0 and b < 0.0:
            return None
        if a < 0.0:
            first = max(first, a / (a - b))
        elif b < 0.0:
            last = min(last, a / (a - b))
    if first > last:
        return None

    def at(share: float) -> Point:
        return x0 + (x1 - x0) * share, y0 + (y1 - y0) * share

    return (start if first == 0.0 else at(first)), (end if last == 1.0 else at(last))


def _keep_off(page: Page, chart: Chart, plot: Plot) -> None:
    """Keep all words off the lines of a chart and its marks."""
    for line in chart.lines:
        course = _course(line.x, line.y, plot, stepped=line.stepped, held=False)
        for part in _inside(course, plot):
            for ends in itertools.pairwise(thinned(part, 2.0)):
                page.line(*ends)
    for mark in chart.marks:
        at = plot.x(mark.x)
        page.line((at, plot.field.y0), (at, plot.field.y1))


def _line_names(page: Page, lines: Sequence[Line], parts: dict[str, list[str]], plot: Plot) -> None:
    """Write each line's name beside its end, all clear of each other."""
    if not lines:
        return
    field = plot.field
    sizes = [len(parts[line.label]) * leading(SIZE) + 6.0 for line in lines]
    ends = [plot.held(line.y[-1]) for line in lines]
    places = spread(ends, sizes, field.y0 - 20.0, field.y1 + 20.0)
    for line, end, place in zip(lines, ends, places, strict=True):
        words = parts[line.label]
        top = place - len(words) * leading(SIZE) / 2.0
        page.draw(stroke((field.x1, end), (field.x1 + 18.0, place), Ink.SOFT, 2.0))
        page.lines(field.x1 + 24.0, top + SIZE * 0.95, words)
