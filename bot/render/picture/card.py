"""A table as a card to pin: each cell in both units, how it stands told by a sign and a tint."""

from bot.drawing import Card, Cell
from bot.render.picture.inks import TONE_GROUND, TONE_SIGN, Ink, Sign
from bot.render.picture.lettering import SIZE, leading, width, wrapped
from bot.render.picture.page import MARGIN, WIDE, Page
from bot.render.picture.svg import rect

__all__ = ["draw_card"]

_ROOM = WIDE - 2 * MARGIN
_PAD = 7.0
_LABEL_SHARE = 0.34
_SIGN = 12.0


def draw_card(card: Card) -> Page:
    """Return the table on its sheet."""
    page = Page(card.title, card.subtitle)
    named = (card.corner, *(row.label for row in card.rows))
    label = min(max(width_of(words) for words in named) + 2 * _PAD, _LABEL_SHARE * _ROOM)
    cell = (_ROOM - label) / max(1, len(card.columns))
    heads = [wrapped(words, cell - 2 * _PAD, SIZE, bold=True) for words in card.columns]
    corner = wrapped(card.corner, label - _PAD, SIZE, bold=True)
    tall = max(len(lines) for lines in (*heads, corner)) * leading(SIZE) + 2 * _PAD
    _lines(page, corner, MARGIN, tall, bold=True)
    for number, lines in enumerate(heads):
        middle = MARGIN + label + (number + 0.5) * cell
        _lines(page, lines, middle, tall, bold=True, anchor="middle")
    page.y += tall
    for row in card.rows:
        page.rule(Ink.SOFT)
        words = wrapped(row.label, label - _PAD, SIZE, bold=True)
        told = [_told(one, cell - 2 * _PAD) for one, _ in zip(row.cells, card.columns, strict=True)]
        tall = max([len(words), *(len(lines) for lines in told)]) * leading(SIZE) + 2 * _PAD
        signed = any(_sign(one) for one in row.cells)
        tall += 2 * _SIGN + 6.0 if signed else 0.0
        for number, (one, lines) in enumerate(zip(row.cells, told, strict=True)):
            left = MARGIN + label + number * cell
            page.draw(
                rect(
                    left + 2.0,
                    page.y + 2.0,
                    cell - 4.0,
                    tall - 4.0,
                    rx=6.0,
                    fill=TONE_GROUND[one.tone],
                )
            )
            sign = _sign(one)
            if sign:
                page.sign(left + cell / 2.0, page.y + _PAD + _SIGN + 2.0, sign, _SIGN)
            below = 2 * _SIGN + 6.0 if signed else 0.0
            top, page.y = page.y, page.y + below
            _lines(page, lines, left + cell / 2.0, tall - below, anchor="middle")
            page.y = top
        _lines(page, words, MARGIN, tall, bold=True)
        page.y += tall
    page.rule(Ink.SOFT)
    page.y += 10.0
    page.finish("\n".join(card.notes))
    return page


def width_of(words: str) -> float:
    """Return the width of a label's longest word group as it would stand in one line [units]."""
    return max(
        (width(line, SIZE, bold=True) for line in wrapped(words, _ROOM, SIZE, bold=True)),
        default=0.0,
    )


def _sign(cell: Cell) -> Sign | None:
    """What is as wanted needs no sign: the figure itself says that it can be had."""
    sign = TONE_SIGN[cell.tone]
    return None if sign is Sign.FINE else sign


def _told(cell: Cell, room: float) -> list[str]:
    return [
        line for words in (cell.first, cell.second) if words for line in wrapped(words, room, SIZE)
    ]


def _lines(
    page: Page,
    lines: list[str],
    x: float,
    tall: float,
    *,
    bold: bool = False,
    anchor: str = "start",
) -> None:
    """Set lines in the middle of a row that begins at the page's ``y``."""
    top = page.y + (tall - len(lines) * leading(SIZE)) / 2.0
    page.lines(x, top + SIZE * 0.98, lines, bold=bold, anchor=anchor)
