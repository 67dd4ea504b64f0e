"""Stretches of time as bars below each other, the nights dark behind them."""

from collections.abc import Callable

from bot.drawing import Mark, Stretch, StretchKind, Timeline
from bot.render.picture.axes import ticks_of
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import TONE_SIGN, Ink
from bot.render.picture.lettering import SIZE, leading, width
from bot.render.picture.page import BIG, MARGIN, WIDE, Page
from bot.render.picture.spread import spread
from bot.render.picture.svg import path, polygon, rect, stroke
from bot.render.picture.textures import slanted

__all__ = ["draw_timeline"]

_Across = Callable[[float], float]

_ROW, _LONE_ROW, _BAR = 58.0, 84.0, 34.0
_EDGE = 14.0
_FILL = {
    StretchKind.UV: (Ink.UV_RIGHT, Ink.UV),
    StretchKind.HEAT: (Ink.HEAT_PALE, Ink.HEAT),
    StretchKind.LIGHT: (Ink.LAMP_LIGHT, Ink.SUN),
}


def draw_timeline(line: Timeline) -> Page:
    """Return the rows on their sheet."""
    page = Page(line.title, line.subtitle, over=line.over, sign=TONE_SIGN[line.tone])
    named = max(width(row.label, SIZE, bold=True) for row in line.rows)
    left = MARGIN + (named + 16.0 if named else _EDGE)
    top = page.y + (leading(SIZE) + 14.0 if line.marks else 0.0)
    tall = _ROW if len(line.rows) > 1 else _LONE_ROW
    field = Rect(left, top, WIDE - MARGIN - _EDGE, top + tall * len(line.rows))
    axis = line.axis

    def across(value: float) -> float:
        share = (value - axis.low) / (axis.high - axis.low)
        return field.x0 + min(max(share, 0.0), 1.0) * (field.x1 - field.x0)

    page.draw(rect(field.x0, top, field.x1 - field.x0, field.y1 - top, fill=Ink.AIR))
    _nights(page, line, field, across)
    for number, row in enumerate(line.rows):
        middle = top + tall * (number + 0.5)
        page.text(MARGIN, middle + 0.35 * SIZE, row.label, bold=True)
        for stretch in row.stretches:
            _bar(page, stretch, field, middle, across)
    _marks(page, line, field, across)
    _foot(page, line, field, across)
    if line.told:
        page.y += 6.0
        page.paragraph(line.told, size=BIG, bold=True, ink=Ink.HEAT)
    page.finish(line.note)
    return page


def _nights(page: Page, line: Timeline, field: Rect, across: _Across) -> None:
    for night in line.nights:
        dark = Rect(across(night.low), field.y0, across(night.high), field.y1)
        wide = dark.x1 - dark.x0
        page.draw(
            rect(dark.x0, dark.y0, wide, dark.y1 - dark.y0, fill=Ink.SHADE),
            slanted(dark, Ink.SHADE_LINE),
        )
        if wide > width(night.label, SIZE) + 12.0:
            middle = (dark.x0 + dark.x1) / 2.0, (dark.y0 + dark.y1) / 2.0 + 0.35 * SIZE
            page.text(*middle, night.label, anchor="middle", halo=Ink.SHADE)


def _bar(page: Page, stretch: Stretch, field: Rect, middle: float, across: _Across) -> None:
    low, high, top = across(stretch.low), across(stretch.high), middle - _BAR / 2.0
    if stretch.kind is not StretchKind.DUE:
        fill, edge = _FILL[stretch.kind]
        wide = max(high - low, 3.0)
        page.draw(rect(low, top, wide, _BAR, rx=5.0, fill=fill, stroke=edge, stroke_width=2.6))
        return
    page.draw(
        rect(low, top, field.x1 - low, _BAR, fill=Ink.HEAT, fill_opacity=0.16),
        rect(low, top, high - low, _BAR, fill=Ink.HEAT, fill_opacity=0.28),
    )
    ends = "".join(f"M{x:.1f} {top - 6:.1f}v{_BAR + 12:.0f}" for x in sorted({low, high}))
    open_end = f"M{field.x1 - 14:.1f} {top:.1f}l14 {_BAR / 2:.0f} -14 {_BAR / 2:.0f}"
    page.draw(path(ends + open_end, stroke=Ink.HEAT, stroke_width=4.5, stroke_linejoin="round"))


def _marks(page: Page, line: Timeline, field: Rect, across: _Across) -> None:
    """Draw each mark down through the rows, its words above them."""
    sizes = [width(mark.label, SIZE, bold=True) + 12.0 for mark in line.marks]
    at = [across(mark.x) for mark in line.marks]
    places = spread(at, sizes, MARGIN, WIDE - MARGIN)
    for mark, x, place in zip(line.marks, at, places, strict=True):
        page.text(place, field.y0 - 18.0, mark.label, bold=True, anchor="middle")
        page.draw(stroke((place, field.y0 - 11.0), (x, field.y0), Ink.INK, 2.4))
        page.draw(stroke((x, field.y0), (x, field.y1), Ink.INK, 2.4, stroke_dasharray="3 7"))
        if mark.is_now:
            _now(page, mark, line, x, (field.y0 + field.y1) / 2.0)


def _now(page: Page, mark: Mark, line: Timeline, x: float, y: float) -> None:
    points = [(x, y - 15.0), (x + 15.0, y), (x, y + 15.0), (x - 15.0, y)]
    if mark.x > line.axis.high:
        points = [(x + 14.0, y), (x - 10.0, y - 15.0), (x - 10.0, y + 15.0)]
    page.draw(
        polygon(points, fill=Ink.INK, stroke=Ink.PAPER, stroke_width=2.6, stroke_linejoin="round")
    )


def _foot(page: Page, line: Timeline, field: Rect, across: _Across) -> None:
    page.draw(stroke((field.x0, field.y1), (field.x1, field.y1), Ink.WALL, 2.5))
    page.y = field.y1
    for tick in ticks_of(line.axis, line.axis.scales[0], 6):
        x = across(tick.at)
        page.draw(stroke((x, field.y1), (x, field.y1 + 8.0), Ink.WALL, 2.4))
        middle = min(x, WIDE - MARGIN - width(tick.lines[0], SIZE) / 2.0)
        page.text_where_free(middle, field.y1 + 32.0, tick.lines[0], anchor="middle", clear=1.5)
    page.y += 14.0 + leading(SIZE)
    if line.axis.title:
        page.text(field.x1, page.y + 20.0, line.axis.title, ink=Ink.SOFT, anchor="end")
        page.y += leading(SIZE) + 8.0
