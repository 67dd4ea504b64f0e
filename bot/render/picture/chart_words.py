"""The points of a chart, and the words in its field: each clear of the others and of the points."""

from bot.drawing import Chart, Mark, PointKind, Range, Tone
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import Ink
from bot.render.picture.lettering import SIZE, wrapped
from bot.render.picture.page import Page
from bot.render.picture.placing import Label
from bot.render.picture.plot import Plot
from bot.render.picture.svg import Shape, circle, path, polygon, polyline, stroke

__all__ = ["labels", "point_shape", "points"]


def points(page: Page, chart: Chart, plot: Plot) -> None:
    """Draw every point with its doubt."""
    for point in chart.points:
        x, y = plot.x(point.x), plot.held(point.y)
        if point.low < point.high:
            top, foot = plot.held(point.high), plot.held(point.low)
            d = f"M{x:.1f} {top:.1f}V{foot:.1f}M{x - 7:.1f} {top:.1f}h14M{x - 7:.1f} {foot:.1f}h14"
            page.draw_over(path(d, stroke=Ink.INK, stroke_width=2.6))
        page.draw_over(point_shape(point.kind, x, y))
        page.thing(Rect(x - 12.0, y - 12.0, x + 12.0, y + 12.0))


def point_shape(kind: PointKind, x: float, y: float) -> Shape:
    """Return a point of a chart as it is drawn, by what it stands for."""
    edge: dict[str, float | Ink | str] = {"stroke": Ink.PAPER, "stroke_width": 2.6}
    match kind:
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


def labels(page: Page, chart: Chart, plot: Plot) -> None:
    """Write what stretches, marks, bands and points are called, all clear of each other."""
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


def _band_name(page: Page, band: Range, plot: Plot, inside: Rect) -> None:
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


def _span(page: Page, span: Range, plot: Plot) -> None:
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


def _mark(page: Page, mark: Mark, plot: Plot) -> None:
    field, at, ink = plot.field, plot.x(mark.x), Ink.INK if mark.is_now else Ink.HEAT
    page.draw(
        polyline(
            [(at, field.y0), (at, field.y1)],
            stroke=ink,
            stroke_width=2.4 if mark.is_now else 3.0,
            stroke_dasharray="3 7" if mark.is_now else "12 5",
        )
    )
    lines = tuple(wrapped(mark.label, 300.0, SIZE, bold=True))
    late = (at - field.x0) / (field.x1 - field.x0) > 0.55
    label = Label(
        lines, (at, field.y0 + 26.0), SIZE, bold=True, away=8.0, liked=(-1.0 if late else 1.0, 0.0)
    )
    page.place([label], Rect(field.x0 + 4.0, field.y0 + 2.0, field.x1, field.y1), Ink.AIR, ink)
