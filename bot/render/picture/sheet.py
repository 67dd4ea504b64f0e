"""Thermometers one below the other: where each goes, what it reads, what is wanted."""

from bot.drawing import Axis, Gauge, Sheet
from bot.render.picture.axes import ticks_of
from bot.render.picture.gauge_bar import gauge_bar
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import TONE_SIGN, Ink, Sign
from bot.render.picture.lettering import SIZE, leading, width, wrapped
from bot.render.picture.page import BIG, MARGIN, WIDE, Page
from bot.render.picture.svg import stroke

__all__ = ["draw_sheet"]

_ROOM = WIDE - 2 * MARGIN
_BAR = 30.0


def draw_sheet(sheet: Sheet) -> Page:
    """Return the gauges on their sheet, all on one axis."""
    page = Page(sheet.title, sheet.subtitle)
    for number, gauge in enumerate(sheet.gauges, 1):
        _gauge(page, sheet.axis, gauge, number)
        page.y += 14.0
    _axis(page, sheet.axis)
    page.finish(sheet.note)
    return page


def _x(axis: Axis, value: float) -> float:
    share = (value - axis.low) / (axis.high - axis.low)
    return MARGIN + 14.0 + min(max(share, 0.0), 1.0) * (_ROOM - 28.0)


def _gauge(page: Page, axis: Axis, gauge: Gauge, number: int) -> None:
    sign = TONE_SIGN[gauge.tone]
    top = page.y
    page.number(MARGIN + 17.0, top + 16.0, number)
    verdict = gauge.verdict
    wide = width(verdict, BIG, bold=True) + (46.0 if sign else 0.0) if verdict else 0.0
    lines = wrapped(gauge.label, max(_ROOM - 46.0 - wide - 14.0, 200.0), BIG, bold=True)
    beside = _ROOM - 46.0 - wide - 14.0 >= 200.0
    for line in lines:
        page.text(MARGIN + 46.0, page.y + BIG * 0.95, line, size=BIG, bold=True)
        page.y += leading(BIG)
    if verdict:
        at = top if beside else page.y
        _verdict(page, verdict, sign, at, from_right=beside)
        page.y = max(page.y, at + 38.0)
    page.y += 6.0
    _bar(page, axis, gauge, page.y + _BAR / 2.0)
    page.y += _BAR + 6.0
    for words in (gauge.reading_text, gauge.wanted_text, gauge.where):
        if words:
            page.paragraph(words, room=_ROOM)


def _verdict(page: Page, verdict: str, sign: Sign | None, top: float, *, from_right: bool) -> None:
    wide = width(verdict, BIG, bold=True)
    left = WIDE - MARGIN - wide if from_right else MARGIN + 46.0
    ink = {Sign.FINE: Ink.COOL, Sign.CHANGE: Ink.HEAT}.get(sign, Ink.INK) if sign else Ink.INK
    if sign:
        page.sign(left - 24.0, top + 15.0, sign)
    page.text(left, top + BIG * 0.95, verdict, size=BIG, bold=True, ink=ink)


def _bar(page: Page, axis: Axis, gauge: Gauge, y: float) -> None:
    page.draw(stroke((MARGIN, y), (WIDE - MARGIN, y), Ink.LINE, 3.0))
    for tick in ticks_of(axis, axis.scales[0]):
        x = _x(axis, tick.at)
        page.draw(stroke((x, y - 7.0), (x, y + 7.0), Ink.LINE, 2.4))
    gauge_bar(page, gauge, lambda value: _x(axis, value), (axis.low, axis.high), y)


def _axis(page: Page, axis: Axis) -> None:
    """Write the figures of the bars once, below them, in both units."""
    for scale in axis.scales[:2]:
        page.text(MARGIN, page.y + 22.0, scale.unit, ink=Ink.SOFT)
        left = MARGIN + width(scale.unit, SIZE) + 8.0
        for tick in ticks_of(axis, scale):
            x = _x(axis, tick.at)
            page.draw(stroke((x, page.y - 8.0), (x, page.y), Ink.WALL, 2.0))
            half = width(tick.lines[0], SIZE) / 2.0
            box = Rect(x - half, page.y, x + half, page.y + 26.0)
            if box.x0 > left and box.x1 < WIDE - MARGIN:
                page.text_where_free(x, page.y + 22.0, tick.lines[0], anchor="middle")
        page.y += leading(SIZE) + 8.0
