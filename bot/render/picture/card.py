"""A table as a card to pin: each cell in both units, how it stands told by a sign and a tint."""

from bot.drawing import Card, CardRow, Cell
from bot.render.picture.inks import TONE_GROUND, TONE_SIGN, Ink, Sign
from bot.render.picture.lettering import SIZE, leading, width, wrapped
from bot.render.picture.page import MARGIN, WIDE, Page
from bot.render.picture.svg import rect

__all__ = ["draw_card"]

_ROOM = WIDE - 2 * MARGIN
_PAD = 7.0
# Of the room, beside several columns and beside one.
_LABEL_SHARE, _LABEL_OF_ONE = 0.34, 0.42
_SIGN = 12.0
# In a cell as wide as this the sign stands beside the words.
_WIDE_CELL = 300.0


def draw_card(card: Card) -> Page:
    """Return the table on its sheet."""
    page = Page(card.title, card.subtitle, over=card.over, sign=TONE_SIGN[card.tone])
    named = (card.corner, *(row.label for row in card.rows))
    most = (_LABEL_SHARE if len(card.columns) > 1 else _LABEL_OF_ONE) * _ROOM
    label = min(max(width_of(words) for words in named) + 2 * _PAD, most)
    cell = (_ROOM - label) / max(1, len(card.columns))
    heads = [wrapped(words, cell - 2 * _PAD, SIZE, bold=True) for words in card.columns]
    corner = wrapped(card.corner, label - _PAD, SIZE, bold=True)
    tall = max(len(lines) for lines in (*heads, corner)) * leading(SIZE) + 2 * _PAD
    if not any((card.corner, *card.columns)):
        tall = 0.0
    _lines(page, corner, MARGIN, tall, bold=True)
    for number, lines in enumerate(heads):
        middle = MARGIN + label + (number + 0.5) * cell
        _lines(page, lines, middle, tall, bold=True, anchor="middle")
    page.y += tall
    for row in card.rows:
        page.rule(Ink.SOFT)
        _row(page, card, row, label, cell)
    page.rule(Ink.SOFT)
    page.y += 10.0
    page.finish("\n".join(card.notes))
    return page


def _row(page: Page, card: Card, row: CardRow, label: float, cell: float) -> None:
    """Draw a row: in a wide cell the sign stands beside the words, else above them."""
    beside = cell >= _WIDE_CELL
    words = wrapped(row.label, label - _PAD, SIZE, bold=True)
    signed = any(_sign(one) for one in row.cells) or (beside and _is_judged(card))
    aside = 2 * _SIGN + 18.0 if beside and signed else 0.0
    below = 2 * _SIGN + 6.0 if signed and not beside else 0.0
    room = cell - 2 * _PAD - aside
    told = [_told(one, room) for one, _ in zip(row.cells, card.columns, strict=True)]
    tall = max([len(words), *(len(lines) for lines in told)]) * leading(SIZE) + 2 * _PAD + below
    for number, (one, lines) in enumerate(zip(row.cells, told, strict=True)):
        left = MARGIN + label + number * cell
        ground = TONE_GROUND[one.tone]
        page.draw(rect(left + 2.0, page.y + 2.0, cell - 4.0, tall - 4.0, rx=6.0, fill=ground))
        sign = TONE_SIGN[one.tone] if beside else _sign(one)
        if sign:
            x = left + aside / 2.0 + 2.0 if beside else left + cell / 2.0
            y = page.y + (tall / 2.0 if beside else _PAD + _SIGN + 2.0)
            page.sign(x, y, sign, _SIGN)
        if beside:
            _lines(page, lines, left + aside + _PAD, tall)
            continue
        down = below if sign else 0.0
        top, page.y = page.y, page.y + down
        _lines(page, lines, left + cell / 2.0, tall - down, anchor="middle")
        page.y = top
    _lines(page, words, MARGIN, tall, bold=True)
    page.y += tall


def _is_judged(card: Card) -> bool:
    """Say whether any cell has a sign, so that all words stand in one line beside them."""
    return any(TONE_SIGN[one.tone] for row in card.rows for one in row.cells)


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
