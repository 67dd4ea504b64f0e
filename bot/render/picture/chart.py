"""Curves: best line, doubt as a pale ribbon, what is wanted, what is advised, readings."""

import itertools
from collections.abc import Sequence

from bot.drawing import Axis, Chart, Line, Mark, PointKind, Range, Stroke, Ticks, Tone
from bot.drawing import Point as Reading
from bot.render.picture.axes import ticks_of
from bot.render.picture.geometry import Rect, thinned
from bot.render.picture.inks import Ink
from bot.render.picture.lettering import SIZE, leading, width, wrapped
from bot.render.picture.page import MARGIN, WIDE, Page
from bot.render.picture.placing import Label
from bot.render.picture.spread import spread
from bot.render.picture.svg import Point, Shape, circle, path, polygon, polyline, rect, stroke
from bot.render.picture.textures import slanted

__all__ = ["draw_chart"]

_TALL = 440.0
_LEFT, _RIGHT = 92.0, 40.0
_LABEL_ROOM, _TITLE_ROOM = 160.0, 520.0
_MOST_OFF = 0.35
_STROKES: dict[Stroke, dict[str, float | Ink | str]] = {
    Stroke.MAIN: {"stroke": Ink.UV, "stroke_width": 5.0},
    Stroke.SOLID: {"stroke": Ink.INK, "stroke_width": 3.0},
    Stroke.DASHED: {"stroke": Ink.INK, "stroke_width": 3.0, "stroke_dasharray": "11 6"},
    Stroke.DOTTED: {"stroke": Ink.SOFT, "stroke_width": 3.4, "stroke_dasharray": "3 6"},
}


class _Plot:
    """The field of a chart: where a value of x and y lies on the sheet."""

    def __init__(self, chart: Chart, field: Rect) -> None:
        self.field = field
        self._x, self._y = chart.x, chart.y

    def x(self, value: float) -> float:
        share = (value - self._x.low) / (self._x.high - self._x.low)
        return self.field.x0 + share * (self.field.x1 - self.field.x0)

    def y(self, value: float) -> float:
        share = (value - self._y.low) / (self._y.high - self._y.low)
        return self.field.y1 - share * (self.field.y1 - self.field.y0)

    def held(self, value: float) -> float:
        """The height of a value, held inside the field."""
        return min(max(self.y(value), self.field.y0), self.field.y1)


def draw_chart(chart: Chart) -> Page:
    """Return the chart on its sheet."""
    page = Page(chart.title, chart.subtitle)
    named = [line for line in chart.lines if line.label]
    parts = {line.label: wrapped(line.label, _LABEL_ROOM, SIZE)[:3] for line in named}
    side = max((width(part, SIZE) for lines in parts.values() for part in lines), default=0.0)
    right = side + 44.0 if named else _RIGHT
    title = wrapped(_titled(chart.y), _TITLE_ROOM, SIZE)[0]
    page.text(MARGIN, page.y + 20.0, title, ink=Ink.SOFT)
    for scale in chart.x.scales[1:2]:
        page.text(WIDE - right, page.y + 20.0, scale.unit, ink=Ink.SOFT, anchor="end")
    page.y += 34.0 + (leading(SIZE) if len(chart.x.scales) > 1 else 0.0)
    field = Rect(_LEFT, page.y, WIDE - right, page.y + _TALL)
    plot = _Plot(chart, field)
    page.draw(rect(field.x0, field.y0, field.x1 - field.x0, _TALL, fill=Ink.AIR))
    _grounds(page, chart, plot)
    _level_axis(page, chart.y, plot)
    _foot(page, chart.x, plot)
    for line in chart.lines:
        _line(page, line, plot)
    _line_names(page, named, parts, plot)
    _points(page, chart, plot)
    _labels(page, chart, plot)
    page.y = max(page.y, field.y1 + 40.0)
    page.finish(chart.note)
    return page


def _titled(axis: Axis) -> str:
    unit = axis.scales[0].unit
    return f"{axis.title} ({unit})" if unit else axis.title


def _grounds(page: Page, chart: Chart, plot: _Plot) -> None:
    """Draw what is wanted across the field, and what is advised or to be avoided up it."""
    field = plot.field
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


def _level_axis(page: Page, axis: Axis, plot: _Plot) -> None:
    field = plot.field
    for tick in ticks_of(axis, axis.scales[0]):
        y = plot.y(tick.at)
        page.draw(stroke((field.x0, y), (field.x1, y), Ink.LINE, 1.4))
        page.text(field.x0 - 16.0, y + 8.0, tick.lines[0], anchor="end")
    page.draw(
        path(
            f"M{field.x0:.1f} {field.y0:.1f}V{field.y1:.1f}H{field.x1:.1f}",
            stroke=Ink.WALL,
            stroke_width=2.5,
        )
    )


def _foot(page: Page, axis: Axis, plot: _Plot) -> None:
    """Write the ticks below the field, the second unit's above it, and what they count."""
    field, lowest = plot.field, 1
    for tick in ticks_of(axis, axis.scales[0], 6):
        x = plot.x(tick.at)
        if axis.ticks is not Ticks.MONTHS:
            page.draw(stroke((x, field.y1), (x, field.y1 + 8.0), Ink.WALL, 2.4))
        for number, line in enumerate(tick.lines):
            half = width(line, SIZE) / 2.0
            middle = min(max(x, MARGIN + half), WIDE - MARGIN - half)
            foot = field.y1 + 30.0 + number * leading(SIZE)
            if page.text_where_free(middle, foot, line, anchor="middle"):
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


def _line(page: Page, line: Line, plot: _Plot) -> None:
    if line.low and line.high:
        top = _course(line.x, line.high, plot, stepped=line.stepped)
        foot = _course(line.x, line.low, plot, stepped=line.stepped)
        page.draw(polygon([*top, *reversed(foot)], fill=Ink.UV, fill_opacity=0.16))
    told = _STROKES[line.stroke]
    for part in _inside(_course(line.x, line.y, plot, stepped=line.stepped, held=False), plot):
        page.draw(polyline(thinned(part), stroke_linejoin="round", **told))


def _course(
    xs: Sequence[float], ys: Sequence[float], plot: _Plot, *, stepped: bool, held: bool = True
) -> list[Point]:
    points: list[Point] = []
    for x, y in zip(xs, ys, strict=True):
        at = plot.x(x), plot.held(y) if held else plot.y(y)
        if stepped and points:
            points.append((at[0], points[-1][1]))
        points.append(at)
    return points


def _inside(points: list[Point], plot: _Plot) -> list[list[Point]]:
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


def _line_names(
    page: Page, lines: Sequence[Line], parts: dict[str, list[str]], plot: _Plot
) -> None:
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
        for number, word in enumerate(words):
            page.text(field.x1 + 24.0, top + number * leading(SIZE) + SIZE * 0.95, word)


def _points(page: Page, chart: Chart, plot: _Plot) -> None:
    for point in chart.points:
        x, y = plot.x(point.x), plot.held(point.y)
        if point.low < point.high:
            top, foot = plot.held(point.high), plot.held(point.low)
            d = f"M{x:.1f} {top:.1f}V{foot:.1f}M{x - 7:.1f} {top:.1f}h14M{x - 7:.1f} {foot:.1f}h14"
            page.draw_over(path(d, stroke=Ink.INK, stroke_width=2.6))
        page.draw_over(_drawn(point, x, y))
        page.thing(Rect(x - 12.0, y - 12.0, x + 12.0, y + 12.0))


def _drawn(point: Reading, x: float, y: float) -> Shape:
    edge: dict[str, float | Ink | str] = {"stroke": Ink.PAPER, "stroke_width": 2.6}
    match point.kind:
        case PointKind.START:
            return circle(x, y, 12.0, fill=Ink.COOL, **edge)
        case PointKind.HERE:
            turned = [(x, y - 15.0), (x + 15.0, y), (x, y + 15.0), (x - 15.0, y)]
            return polygon(turned, fill=Ink.UV, stroke_linejoin="round", **edge)
        case PointKind.READING:
            return circle(x, y, 9.0, fill=Ink.PAPER, stroke=Ink.INK, stroke_width=3.2)
        case PointKind.SET_ASIDE:
            d = f"M{x - 9:.1f} {y - 9:.1f}l18 18M{x - 9:.1f} {y + 9:.1f}l18-18"
            return path(d, stroke=Ink.HEAT, stroke_width=3.6, stroke_linecap="round")


def _labels(page: Page, chart: Chart, plot: _Plot) -> None:
    field = plot.field
    for span in chart.spans:
        _span(page, span, plot)
    for mark in chart.marks:
        _mark(page, mark, plot)
    inside = Rect(field.x0 + 6.0, field.y0 + 4.0, field.x1 - 4.0, field.y1 - 4.0)
    for band in chart.bands:
        if band.label:
            _band_name(page, band, plot, inside)
    labels = [
        Label(
            tuple(wrapped(point.label, 300.0, SIZE)[:3]),
            (plot.x(point.x), plot.held(point.high)),
            SIZE,
            bold=point.kind is not PointKind.READING,
            away=16.0,
        )
        for point in chart.points
        if point.label
    ]
    page.place(labels, inside, Ink.AIR)


def _band_name(page: Page, band: Range, plot: _Plot, inside: Rect) -> None:
    """Name what is wanted at its right end, or above or below where the band is too thin."""
    top, foot = plot.held(band.high), plot.held(band.low)
    middle = (top + foot) / 2.0 + 8.0
    places = (middle, top - 12.0, foot + 26.0) if foot - top > 30.0 else (top - 12.0, foot + 26.0)
    for right in (inside.x1 - 6.0, inside.x1 - 150.0, inside.x1 - 300.0):
        for at in places:
            if inside.y0 + 20.0 < at < inside.y1 and page.text_where_free(
                right, at, band.label, bold=True, anchor="end", halo=Ink.AIR
            ):
                return
    page.place(
        [
            Label(
                (band.label,), ((inside.x0 + inside.x1) / 2.0, (top + foot) / 2.0), SIZE, bold=True
            )
        ],
        inside,
        Ink.AIR,
    )


def _span(page: Page, span: Range, plot: _Plot) -> None:
    """Draw an advised stretch as a bar along the foot with its name above it."""
    field = plot.field
    low, high = (min(max(plot.x(v), field.x0), field.x1) for v in (span.low, span.high))
    if span.tone is not Tone.BAD:
        for end in (low, high):
            page.draw(
                polyline(
                    [(end, field.y0), (end, field.y1)],
                    stroke=Ink.COOL,
                    stroke_width=2.2,
                    stroke_dasharray="3 6",
                )
            )
        page.draw(stroke((low, field.y1 - 7.0), (high, field.y1 - 7.0), Ink.COOL, 12.0))
        page.thing(Rect(low, field.y1 - 14.0, high, field.y1))
    lines = tuple(wrapped(span.label, 320.0, SIZE, bold=True))
    inside = Rect(field.x0 + 6.0, field.y0 + 4.0, field.x1 - 4.0, field.y1 - 18.0)
    page.place(
        [Label(lines, ((low + high) / 2.0, field.y1 - 14.0), SIZE, bold=True, liked=(0.0, -1.0))],
        inside,
        Ink.AIR,
    )


def _mark(page: Page, mark: Mark, plot: _Plot) -> None:
    field, at = plot.field, plot.x(mark.x)
    page.draw(
        polyline(
            [(at, field.y0), (at, field.y1)],
            stroke=Ink.HEAT,
            stroke_width=3.0,
            stroke_dasharray="12 5",
        )
    )
    lines = tuple(wrapped(mark.label, 300.0, SIZE, bold=True))
    late = (at - field.x0) / (field.x1 - field.x0) > 0.55
    label = Label(
        lines, (at, field.y0 + 26.0), SIZE, bold=True, away=8.0, liked=(-1.0 if late else 1.0, 0.0)
    )
    page.place([label], Rect(field.x0 + 4.0, field.y0 + 2.0, field.x1, field.y1), Ink.AIR, Ink.HEAT)
