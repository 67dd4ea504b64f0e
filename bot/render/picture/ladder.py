"""Bars with their doubt below each other, what is wanted as a band through all of them."""

from bot.drawing import Axis, Ladder, Rung
from bot.render.picture.axes import ticks_of
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import TONE_SIGN, Ink, Sign
from bot.render.picture.lettering import SIZE, leading, width, wrapped
from bot.render.picture.page import MARGIN, WIDE, Page
from bot.render.picture.svg import circle, path, polygon, rect, stroke

__all__ = ["draw_ladder"]

_MOST_NAME, _MOST_WORD = 200.0, 176.0
_SIGN, _BAR, _GAP = 44.0, 18.0, 12.0
_INK = {Sign.FINE: Ink.COOL, Sign.CHANGE: Ink.HEAT, Sign.CANNOT_TELL: Ink.SOFT}


def draw_ladder(ladder: Ladder) -> Page:
    """Return the bars on their sheet."""
    page = Page(ladder.title, ladder.subtitle, over=ladder.over, sign=TONE_SIGN[ladder.tone])
    names = [wrapped(rung.label, _MOST_NAME, SIZE, bold=True) for rung in ladder.rungs]
    words = [wrapped(rung.verdict, _MOST_WORD, SIZE) for rung in ladder.rungs]
    wide = max((width(line, SIZE, bold=True) for lines in names for line in lines), default=0.0)
    last = max((width(line, SIZE) for lines in words for line in lines), default=0.0)
    signed = _SIGN if any(TONE_SIGN[rung.tone] for rung in ladder.rungs) else 0.0
    field = Rect(MARGIN + wide + 14.0, page.y, WIDE - MARGIN - last - signed - 26.0, page.y)
    _wanted_name(page, ladder, field)
    top = page.y
    tall = [max(len(n), len(w)) * leading(SIZE) + _GAP for n, w in zip(names, words, strict=True)]
    field = Rect(field.x0, top, field.x1, top + sum(tall))
    _ground(page, ladder, field)
    for rung, name, word, high in zip(ladder.rungs, names, words, tall, strict=True):
        _rung(page, ladder, rung, field, (name, word), high, WIDE - MARGIN - signed)
    _axis(page, ladder.axis, field)
    page.finish(ladder.note)
    return page


def _x(axis: Axis, field: Rect, value: float) -> float:
    share = (value - axis.low) / (axis.high - axis.low)
    return field.x0 + min(max(share, 0.0), 1.0) * (field.x1 - field.x0)


def _wanted_name(page: Page, ladder: Ladder, field: Rect) -> None:
    """Write what is wanted over its band."""
    wanted = ladder.wanted
    if wanted is None:
        return
    words = wanted.label
    ends = (_x(ladder.axis, field, end) for end in (wanted.low, wanted.high))
    half = width(words, SIZE, bold=True) / 2.0
    middle = min(max(sum(ends) / 2.0, MARGIN + half), WIDE - MARGIN - half)
    page.text(middle, page.y + 22.0, words, bold=True, ink=Ink.COOL, anchor="middle")
    page.y += leading(SIZE) + 6.0


def _ground(page: Page, ladder: Ladder, field: Rect) -> None:
    tall = field.y1 - field.y0
    wanted = ladder.wanted
    ends = () if wanted is None else (wanted.low, wanted.high)
    edges = [_x(ladder.axis, field, end) for end in ends]
    page.draw(rect(field.x0, field.y0, field.x1 - field.x0, tall, fill=Ink.AIR))
    if edges:
        wide = max(edges[1] - edges[0], 3.0)
        page.draw(rect(edges[0], field.y0, wide, tall, fill=Ink.COOL_PALE))
    for tick in ticks_of(ladder.axis, ladder.axis.scales[0], 6):
        x = _x(ladder.axis, field, tick.at)
        page.draw(stroke((x, field.y0), (x, field.y1), Ink.LINE, 1.4))
    for end in edges:
        page.draw(stroke((end, field.y0), (end, field.y1), Ink.COOL, 3.0))


def _rung(
    page: Page,
    ladder: Ladder,
    rung: Rung,
    field: Rect,
    words: tuple[list[str], list[str]],
    tall: float,
    right: float,
) -> None:
    """Draw a bar from its low to its high end, its best as a dot; the picked one is full."""
    middle, sign = page.y + tall / 2.0, TONE_SIGN[rung.tone]
    name, verdict = words
    first = middle - len(name) * leading(SIZE) / 2.0 + 0.95 * SIZE
    page.lines(MARGIN, first, name, bold=rung.picked)
    if rung.is_barred:
        _bar(page, ladder, rung, field, middle)
    if sign:
        page.sign(WIDE - MARGIN - 17.0, middle, sign, 16.0)
    first = middle - len(verdict) * leading(SIZE) / 2.0 + 0.95 * SIZE
    ink = _INK[sign] if sign else Ink.INK
    page.lines(right, first, verdict, ink=ink, anchor="end", bold=rung.picked)
    page.y += tall


def _bar(page: Page, ladder: Ladder, rung: Rung, field: Rect, middle: float) -> None:
    low, best, high = (_x(ladder.axis, field, v) for v in (rung.low, rung.best, rung.high))
    fill, wide = Ink.UV if rung.picked else Ink.UV_RIGHT, max(high - low, 3.0)
    bar = rect(
        low, middle - _BAR / 2.0, wide, _BAR, rx=5.0, fill=fill, stroke=Ink.UV, stroke_width=2.6
    )
    page.draw(bar)
    if rung.has_best and rung.best <= ladder.axis.high:
        dot = Ink.PAPER if rung.picked else Ink.UV
        page.draw(circle(best, middle, 6.5, fill=dot, stroke=Ink.UV, stroke_width=2.0))
    if rung.high > ladder.axis.high:
        x = field.x1
        tip = [(x + 12.0, middle), (x - 3.0, middle - 12.0), (x - 3.0, middle + 12.0)]
        page.draw(polygon(tip, fill=Ink.UV))


def _axis(page: Page, axis: Axis, field: Rect) -> None:
    page.draw(
        path(f"M{field.x0:.1f} {field.y1:.1f}H{field.x1:.1f}", stroke=Ink.WALL, stroke_width=2.5)
    )
    page.y = field.y1
    for scale in axis.scales[:2]:
        for tick in ticks_of(axis, scale, 5):
            x = _x(axis, field, tick.at)
            page.text_where_free(x, page.y + 26.0, tick.lines[0], anchor="middle")
        page.text(field.x1 + 22.0, page.y + 26.0, scale.unit, ink=Ink.SOFT)
        page.y += leading(SIZE)
    title = wrapped(axis.title, WIDE - 2 * MARGIN, SIZE)[0]
    middle = (field.x0 + field.x1) / 2.0
    half = width(title, SIZE) / 2.0
    middle = min(max(middle, MARGIN + half), WIDE - MARGIN - half)
    page.text(middle, page.y + 26.0, title, ink=Ink.SOFT, anchor="middle")
    page.y += leading(SIZE) + 18.0
