"""A table to pin."""

from dataclasses import dataclass

from bot.drawing.tone import Tone

__all__ = [
    "Card",
    "CardRow",
    "Cell",
]


@dataclass(frozen=True, slots=True)
class Cell:
    """A cell of a card: a figure, the same in the other unit, and how it stands."""

    first: str
    second: str = ""
    tone: Tone = Tone.PLAIN


@dataclass(frozen=True, slots=True)
class CardRow:
    """A row of a card."""

    label: str
    cells: tuple[Cell, ...]


@dataclass(frozen=True, slots=True)
class Card:
    """A table to pin; every row has a cell for each column.

    ``over`` stands above the title, which has the sign of ``tone``.
    """

    title: str
    subtitle: str
    corner: str
    columns: tuple[str, ...]
    rows: tuple[CardRow, ...]
    notes: tuple[str, ...] = ()
    over: str = ""
    tone: Tone = Tone.PLAIN
