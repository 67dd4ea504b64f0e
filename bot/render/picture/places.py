"""Numbered places in a box with the signs of their verdicts, and the list of them below it."""

from collections.abc import Sequence
from math import hypot

from bot.drawing import Side, Tone
from bot.render.picture.geometry import Rect, enters
from bot.render.picture.inks import TONE_SIGN, Ink
from bot.render.picture.page import MARGIN, WIDE, Page
from bot.render.picture.scaled import Scaled
from bot.render.picture.spread import spread
from bot.render.picture.svg import Point, circle, stroke

__all__ = ["called_out", "listed", "numbered"]

# From the middle of a number to that of its sign.
_BESIDE = 35.0
# The least that a line of the list takes.
_LINE = 34.0
# Where a number goes, the best first: over a place, or beside the tool at it.
_OVER_PLACE = ((0, -1), (1, -1), (-1, -1), (1, 0), (-1, 0), (0, 1))
_BESIDE_TOOL = ((1, 0), (-1, 0), (0, -1), (0, 1), (1, -1), (-1, -1), (1, 1), (-1, 1))


def numbered(
    page: Page,
    number: int,
    tone: Tone,
    place: Point,
    edge: Rect,
    arrows: Sequence[tuple[Point, Point]],
    *,
    tooled: bool = False,
) -> None:
    """Set a number at its place in a box, or as near as it is free, joined to it by a dot.

    A place that has its tool (``tooled``) needs no dot. The sign of its tone stands beside it, and
    both keep off the arrows; a bare number may stand at the end of one.
    """
    (x, y), sign = place, TONE_SIGN[tone]
    wide = 17.0 + (_BESIDE if sign else 0.0)
    kept_off = arrows if sign else ()
    steps = [(0.0, 0.0)] + [
        (away * along, away * down)
        for away in (24.0, 34.0, 46.0, 60.0, 78.0, 100.0, 124.0)
        for along, down in (_BESIDE_TOOL if tooled else _OVER_PLACE)
    ]
    for dx, dy in steps:
        at = Rect(x + dx - 17, y + dy - 17, x + dx + wide, y + dy + 17)
        clear = page.is_free(at, 2.0) and not any(enters(*ends, at) for ends in kept_off)
        if clear and at.lies_in(edge.grown(-4.0)):
            if (dx or dy) and not tooled:
                page.draw(stroke((x, y), (x + dx, y + dy), Ink.INK, 2.4))
                page.draw(circle(x, y, 5.0, fill=Ink.INK, stroke=Ink.PAPER, stroke_width=2.0))
            page.number(x + dx, y + dy, number)
            if sign:
                page.sign(x + dx + _BESIDE, y + dy, sign, 16.0)
            return
    found = _anywhere(page, place, edge, wide)
    if found is None:
        # The list below tells it all the same.
        return
    page.draw(stroke((x, y), found, Ink.INK, 2.4))
    page.number(*found, number)
    if sign:
        page.sign(found[0] + _BESIDE, found[1], sign, 16.0)


def _anywhere(page: Page, place: Point, edge: Rect, wide: float) -> Point | None:
    """Return the nearest free place for a number in the whole box, and None where there is none."""
    inner, step = edge.grown(-22.0), 12.0
    across = range(int(max(inner.x1 - wide + 17.0 - inner.x0, 0.0) / step) + 1)
    down = range(int(max(inner.y1 - inner.y0, 0.0) / step) + 1)
    spots = [(inner.x0 + step * i, inner.y0 + step * j) for i in across for j in down]
    for x, y in sorted(spots, key=lambda at: hypot(at[0] - place[0], at[1] - place[1])):
        at = Rect(x - 17.0, y - 17.0, x + wide, y + 17.0)
        if page.is_free(at, 2.0) and not page.strikes((place, (x, y))):
            return x, y
    return None


def called_out(page: Page, side: Side, box: Scaled) -> None:
    """Set the numbers of a low box in a row below it, each joined to its place by a line."""
    if not side.places:
        return
    wide = [46.0 + (_BESIDE if TONE_SIGN[place.tone] else 0.0) for place in side.places]
    order = sorted(range(len(wide)), key=lambda n: side.places[n].x)
    wished = [box.x(side.places[n].x) for n in order]
    found = spread(wished, [wide[n] for n in order], MARGIN, WIDE - MARGIN)
    y = page.y + 20.0
    for n, middle in zip(order, found, strict=True):
        place = side.places[n]
        sign = TONE_SIGN[place.tone]
        x = middle - (_BESIDE / 2.0 if sign else 0.0)
        at = box.x(place.x), box.y(place.y)
        page.draw_over(
            stroke(at, (x, y), Ink.INK, 2.4),
            circle(*at, 5.0, fill=Ink.INK, stroke=Ink.PAPER, stroke_width=2.0),
        )
        page.number(x, y, n + 1)
        if sign:
            page.sign(x + _BESIDE, y, sign, 16.0)
    page.y = y + 24.0


def listed(page: Page, side: Side, room: Rect | None = None) -> None:
    """Write the places without a plate below each other, and then what has no place.

    Of a ``room`` beside something they begin at its top; what is below it has the whole sheet.
    """
    for number, place in enumerate(side.places, 1):
        if place.gauge is not None or not place.text:
            continue
        left = _left(page, room)
        page.number(left + 17.0, page.y + 15.0, number)
        _line(page, place.text, place.tone, left)
    for line in side.placeless:
        _line(page, line.text, line.tone, _left(page, room))
    if room is not None:
        page.y = max(page.y, room.y1)


def _left(page: Page, room: Rect | None) -> float:
    """Return where a line of a list begins: past the end of its room at the left of the sheet."""
    if room is None:
        return MARGIN
    if page.y + _LINE > room.y1:
        page.y = max(page.y, room.y1)
        return MARGIN
    return room.x0


def _line(page: Page, words: str, tone: Tone, first: float) -> None:
    """Write a line of the list beside its sign, which leaves room for a number before it."""
    sign, left = TONE_SIGN[tone], first + 46.0
    foot = page.y + (32.0 if sign else 0.0)
    if sign:
        page.sign(left + 6.0, page.y + 15.0, sign, 16.0)
        left += _BESIDE
    page.paragraph(words, x=left, room=WIDE - MARGIN - left)
    page.y = max(page.y, foot) + 8.0
