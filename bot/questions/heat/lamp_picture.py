"""Lamps and heaters as a card: which make a basking spot, or what one of them gives."""

from bot.drawing import Card, CardRow, Cell, Tone
from bot.facts import Say
from bot.layered import Teller
from bot.questions.uv.curves import alt_of
from bot.reply import Picture
from calc.heat.sources_of_heat import Basking

__all__ = ["lamp_picture"]

_TONES = {
    Basking.GOOD: Tone.GOOD,
    Basking.NOT_FOR_BASKING: Tone.PLAIN,
    Basking.BY_METER: Tone.DOUBTFUL,
    Basking.NOT_AT_ALL: Tone.BAD,
}


def lamp_picture(
    heading: tuple[Say, Say, Say],
    rows: tuple[tuple[Say, Say, Basking | None], ...],
    note: Say,
    stands: Basking | None,
    teller: Teller,
) -> Picture:
    """Return the rows as a card: a name, what stands in it, and how the lamp stands by it.

    ``heading`` is what it is of, the answer, and a line below it.
    """
    over, head, below = heading

    def cell(told: Say, basking: Basking | None) -> Cell:
        tone = Tone.PLAIN if basking is None else _TONES[basking]
        return Cell(teller.say(told), tone=tone)

    drawing = Card(
        over=teller.say(over),
        title=teller.say(head),
        tone=_head_tone(stands),
        subtitle=teller.say(below),
        corner="",
        columns=("",),
        rows=tuple(CardRow(teller.say(name), (cell(told, by),)) for name, told, by in rows),
        notes=(teller.say(note),),
    )
    told = [f"{teller.say(over)}.", teller.say(head), teller.say(below)]
    told += [f"{teller.say(name)}: {teller.say(words).rstrip('.')}." for name, words, _ in rows]
    alt = alt_of(told)
    return Picture(alt=alt, drawing=drawing)


def _head_tone(stands: Basking | None) -> Tone:
    """Return the sign of a yes, a no or a maybe; a list has none."""
    if stands is None:
        return Tone.PLAIN
    return Tone.BAD if stands is Basking.NOT_FOR_BASKING else _TONES[stands]
