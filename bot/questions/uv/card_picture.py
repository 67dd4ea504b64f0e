"""The table of distances as a picture, the same figures in its cells."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot import drawing
from bot.drawing import Tone
from bot.facts import Say, Says
from bot.layered import Teller
from bot.questions.uv.card_table import Card, Cell
from bot.questions.uv.curves import shortened
from bot.reply import Picture
from calc.uv.placement import Verdict

__all__ = ["CardAltCell", "CardAltRow", "card_picture"]

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
    told = (say("picture-alt"), *_alt(facts))
    return Picture(alt=shortened(list(map(teller.say, told))), drawing=drawn)


def _alt(facts: Card) -> Iterator[Say]:
    """Yield a sentence for every row of the table."""
    for row in facts.rows:
        cells = (
            CardAltCell(Say("card-screen", screen), Say.by("card-cell", cell.verdict, cell))
            for screen, cell in zip(facts.screens, row.cells, strict=True)
        )
        told = tuple(Say("card-alt-cell", cell) for cell in cells)
        yield Say("card-alt-row", CardAltRow(Say("card-row", row), told))
