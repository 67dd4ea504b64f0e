"""Plates below a box: what was read at a numbered place, what is wanted there, and its sign."""

from bot.drawing import Gauge, Place, Side, Tool
from bot.render.picture.gauge_bar import gauge_bar
from bot.render.picture.geometry import Rect
from bot.render.picture.inks import TONE_SIGN, Ink, Sign
from bot.render.picture.lettering import SIZE, leading, wrapped
from bot.render.picture.page import BIG, MARGIN, WIDE, Page
from bot.render.picture.svg import Shape, rect
from bot.render.picture.tools import tool_shapes

__all__ = ["plates"]

_GAP, _PAD = 16.0, 15.0
_WIDE = (WIDE - 2 * MARGIN - _GAP) / 2.0
_NUMBER, _SIGN, _BAR, _TOOL = 42.0, 40.0, 34.0, 70.0
_Line = tuple[str, bool, Ink]
_INK = {Sign.FINE: Ink.COOL, Sign.CHANGE: Ink.HEAT, Sign.CANNOT_TELL: Ink.SOFT}


def plates(page: Page, side: Side) -> Rect | None:
    """Draw the plates of a box two beside each other, the two of a row equally high.

    Return what is left free beside the last one; the page goes on from its top.
    """
    made = [_Plate(n, p, p.gauge, side) for n, p in enumerate(side.places, 1) if p.gauge]
    for first in range(0, len(made), 2):
        row = made[first : first + 2]
        tall = max(plate.tall for plate in row)
        for column, plate in enumerate(row):
            plate.draw(page, MARGIN + column * (_WIDE + _GAP), tall)
        if len(row) == 1 and side.placeless:
            top = page.y + 6.0
            page.y, foot = top, page.y + tall + 12.0
            return Rect(MARGIN + _WIDE + _GAP - 34.0, top, WIDE - MARGIN, foot)
        page.y += tall + 12.0
    return None


class _Plate:
    """A plate with its lines set."""

    def __init__(self, number: int, place: Place, gauge: Gauge, side: Side) -> None:
        self._number, self._place, self._gauge = number, place, gauge
        self._sign = TONE_SIGN[gauge.tone]
        has_bar = bool(gauge.wanted or gauge.reading or gauge.below is not None)
        self._span = side.span if has_bar else None
        # Where there is no bar, there is room for the tool.
        self._tool = None if self._span else place.tool
        room = _WIDE - 2 * _PAD
        beside = _SIGN if self._sign else 0.0
        self._names = wrapped(gauge.label, room - _NUMBER - beside, BIG, bold=True)
        self._lines = self._set(gauge, room - (_TOOL if self._tool else 0.0))

    def _set(self, gauge: Gauge, room: float) -> list[_Line]:
        sign = self._sign
        told = (
            (gauge.reading_text, True, Ink.INK),
            (gauge.verdict, True, _INK[sign] if sign else Ink.SOFT),
            (gauge.wanted_text, False, Ink.INK),
            (gauge.where, False, Ink.SOFT),
        )
        return [
            (line, bold, ink)
            for words, bold, ink in told
            if words
            for line in wrapped(words, room, SIZE, bold=bold)
        ]

    @property
    def _head(self) -> float:
        return max(len(self._names) * leading(BIG), 34.0) + 4.0

    @property
    def tall(self) -> float:
        """Return how high it has to be [units]."""
        below = max(len(self._lines) * leading(SIZE), _TOOL if self._tool else 0.0)
        return 2 * _PAD + self._head + below + (_BAR if self._span else 0.0)

    def draw(self, page: Page, x: float, tall: float) -> None:
        """Draw it with its left edge at ``x``, so high [units]."""
        top, y = page.y, page.y + _PAD
        page.draw(
            rect(x, top, _WIDE, tall, rx=10.0, fill=Ink.CARD, stroke=Ink.LINE, stroke_width=1.5)
        )
        page.number(x + _PAD + 16.0, y + 16.0, self._number)
        if self._sign:
            page.sign(x + _WIDE - _PAD - 17.0, y + 16.0, self._sign)
        page.lines(x + _PAD + _NUMBER, y + 0.95 * BIG + 1.0, self._names, size=BIG, bold=True)
        y += self._head
        if self._tool:
            across = x + _WIDE - _PAD - 0.5 * _TOOL
            page.draw(*_shown(self._tool, across, y))
        for words, bold, ink in self._lines:
            page.text(x + _PAD, y + 0.95 * SIZE, words, bold=bold, ink=ink)
            y += leading(SIZE)
        if self._span:
            low, high = self._span
            first, last = x + _PAD + 4.0, x + _WIDE - _PAD - 4.0

            def to_x(value: float) -> float:
                share = (value - low) / (high - low)
                return first + min(max(share, 0.0), 1.0) * (last - first)

            gauge_bar(page, self._gauge, to_x, self._span, top + tall - _PAD - 12.0)


def _shown(tool: Tool, x: float, top: float) -> list[Shape]:
    """Return a tool round a middle, for a plate."""
    at = (x - 26.0, top + 14.0) if tool is Tool.UV_METER else (x, top + 0.5 * _TOOL)
    return tool_shapes(tool, at, 1.0)[0]
