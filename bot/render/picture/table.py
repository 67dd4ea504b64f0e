"""A table as a card to pin: each cell in both units, how it stands told by a sign and a tint."""

from typing import TYPE_CHECKING

from bot.drawing import Card, Cell, Tone
from bot.render.picture import inks
from bot.render.picture.frame import MARGIN_IN, Frame, bare
from bot.render.picture.lettering import WIDTH_IN, line_height_in, width_in, wrapped

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.figure import Figure

__all__ = ["draw_card"]

_HEAD = 10.5
# The largest of these in which no figure of the table is broken over lines.
_CELLS = (11.5, 11.0, 10.5, 10.0, 9.5)
_ROOM_IN = WIDTH_IN - 2 * MARGIN_IN
_PAD_IN = 0.06
_LABEL_SHARE = 0.34


def draw_card(card: Card) -> "Figure":
    """Return the table as a figure."""
    label_in = min(
        max(width_in(text, _HEAD, "bold") for text in (card.corner, *(r.label for r in card.rows)))
        + 2 * _PAD_IN,
        _LABEL_SHARE * _ROOM_IN,
    )
    cell_in = (_ROOM_IN - label_in) / max(1, len(card.columns))
    size = _size(card, cell_in - 2 * _PAD_IN)
    heads = [wrapped(text, cell_in - 2 * _PAD_IN, _HEAD, "bold") for text in card.columns]
    corner = wrapped(card.corner, label_in - _PAD_IN, _HEAD, "bold")
    head_in = max(len(lines) for lines in (*heads, corner)) * line_height_in(_HEAD) + 2 * _PAD_IN
    rows = [
        (
            wrapped(row.label, label_in - _PAD_IN, _HEAD, "bold"),
            [_cell_lines(cell, cell_in - 2 * _PAD_IN, size) for cell in row.cells],
            row.cells,
        )
        for row in card.rows
    ]
    talls = [
        max(len(lines) for lines in (label, *cells)) * line_height_in(size) + 2 * _PAD_IN
        for label, cells, _ in rows
    ]
    frame = Frame(card.title, card.subtitle, "\n".join(card.notes), head_in + sum(talls))
    axes = frame.axes(MARGIN_IN, frame.body_bottom_in, _ROOM_IN, frame.body_in)
    bare(axes)
    axes.set(xlim=(0.0, _ROOM_IN), ylim=(0.0, frame.body_in))
    lefts = [label_in + number * cell_in for number in range(len(card.columns))]
    top = frame.body_in
    _lines(axes, corner, 0.0, top, head_in, _HEAD, "bold")
    for left, lines in zip(lefts, heads, strict=True):
        _lines(axes, lines, left + cell_in / 2.0, top, head_in, _HEAD, "bold", "center")
    top -= head_in
    for (label, cells, told), tall in zip(rows, talls, strict=True):
        axes.axhline(top, color=inks.INK, linewidth=1.0)
        _lines(axes, label, 0.0, top, tall, _HEAD, "bold")
        for left, lines, cell in zip(lefts, cells, told, strict=True):
            _tint(axes, left, top, cell_in, tall, cell.tone)
            _lines(axes, lines, left + cell_in / 2.0, top, tall, size, "normal", "center")
        top -= tall
    axes.axhline(top, color=inks.INK, linewidth=1.0)
    return frame.figure


def _cell_lines(cell: Cell, room_in: float, size: float) -> list[str]:
    return [line for text in _texts(cell) for line in wrapped(text, room_in, size)]


def _texts(cell: Cell) -> list[str]:
    _, _, sign = inks.TONES[cell.tone]
    # What is as wanted needs no sign: the figure itself says that it can be had.
    first = cell.first if cell.tone is Tone.GOOD else f"{sign} {cell.first}".strip()
    return [text for text in (first, cell.second) if text]


def _size(card: Card, room_in: float) -> float:
    texts = [text for row in card.rows for cell in row.cells for text in _texts(cell)]
    fitting = (s for s in _CELLS if all(width_in(text, s) <= room_in for text in texts))
    return next(fitting, _CELLS[-1])


def _tint(axes: "Axes", left: float, top: float, wide: float, tall: float, tone: Tone) -> None:
    from matplotlib.patches import Rectangle

    fill, _, _ = inks.TONES[tone]
    gap = 0.02
    axes.add_patch(
        Rectangle(
            (left + gap, top - tall + gap),
            wide - 2 * gap,
            tall - 2 * gap,
            facecolor=fill,
            edgecolor="none",
        )
    )


def _lines(
    axes: "Axes",
    lines: list[str],
    x: float,
    top: float,
    tall: float,
    size: float,
    weight: str,
    align: str = "left",
) -> None:
    """Set lines in the middle of a row."""
    step = line_height_in(size)
    start = top - tall / 2.0 + step * (len(lines) - 1) / 2.0
    for number, line in enumerate(lines):
        axes.text(
            x,
            start - number * step,
            line,
            ha=align,
            va="center_baseline",
            fontsize=size,
            weight=weight,
        )
