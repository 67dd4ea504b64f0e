"""The table of distances as a picture, the same figures in its cells."""

from dataclasses import dataclass

from bot import drawing
from bot.drawing import Tone
from bot.facts import Say, Says
from bot.layered import Teller
from bot.questions.uv.card_table import Card, CardRow, Cell
from bot.questions.uv.curves import shortened
from bot.questions.uv.shared import Between
from bot.reply import Picture
from calc.uv.placement import Verdict

__all__ = ["CardAltCell", "CardAltRow", "card_picture", "cells_in_words"]

_TONES = {Verdict.FITS: Tone.GOOD, Verdict.BY_LENGTH: Tone.DOUBTFUL}


@dataclass(frozen=True, slots=True)
class CardAltCell:
    """A cell of the table in the words of its picture."""

    screen: Say
    cell: Say


@dataclass(frozen=True, slots=True)
class CardAltRow:
    """A row of the table in the words of its picture."""

    lamp: Say
    cells: tuple[Say, ...]


def card_picture(facts: Card, teller: Teller) -> Picture:
    """Return the table as a picture."""
    say = Says("card", facts)

    def cell(of: Cell) -> drawing.Cell:
        first, second = (
            Say.by("card-first", of.verdict, of),
            Say.by("card-second", of.verdict, of),
        )
        tone = _TONES.get(of.verdict, Tone.BAD)
        return drawing.Cell(teller.say(first), teller.say(second), tone)

    notes = (
        say("picture-far" if facts.any_length else "step-start"),
        say("picture-never"),
        *((say("picture-sure"),) if facts.sure else ()),
    )
    drawn = drawing.Card(
        title=teller.say(say("title")),
        subtitle=teller.say(say("picture-subtitle")),
        corner=teller.say(say("picture-corner")),
        columns=tuple(teller.say(Say("card-screen", screen)) for screen in facts.screens),
        rows=tuple(
            drawing.CardRow(teller.say(Say("card-short", row)), tuple(map(cell, row.cells)))
            for row in facts.rows
        ),
        notes=tuple(map(teller.say, notes)),
    )
    told = (say("picture-alt"), *(_row_in_words(row, facts.screens) for row in facts.rows))
    return Picture(alt=shortened(list(map(teller.say, told))), drawing=drawn)


def _row_in_words(row: CardRow, screens: tuple[Between, ...]) -> Say:
    return Say("card-alt-row", CardAltRow(Say("card-row", row), cells_in_words(row, screens)))


def cells_in_words(row: CardRow, screens: tuple[Between, ...]) -> tuple[Say, ...]:
    """Return how far a lamp of the table goes under each screen, as the parts of a sentence."""
    cells = (
        CardAltCell(Say("card-screen", screen), Say.by("card-cell", cell.verdict, cell))
        for screen, cell in zip(screens, row.cells, strict=True)
    )
    return tuple(Say("card-alt-cell", cell) for cell in cells)
