"""What the readings of a group show as bars: each kind over what is expected, nine in ten."""

from dataclasses import dataclass

from bot.drawing import Axis, Ladder, Range, Rung, Tone
from bot.facts import Say, Says
from bot.layered import Teller
from bot.questions.saved.pool_facts import PoolLine, PoolShown
from bot.questions.uv.curves import alt_of
from bot.reply import Picture

__all__ = ["PoolLines", "pool_picture"]

_MOST_ROWS = 16
_AXIS_MOST = 200.0
_EXPECTED = 100.0


@dataclass(frozen=True, slots=True)
class PoolLines:
    """All kinds in the words of the picture, one after the other."""

    each: tuple[Say, ...]


def pool_picture(facts: PoolShown, teller: Teller) -> Picture:
    """Return every kind that can be shown, those that count as full bars."""
    say = Says("pool", facts)
    lines = [line for line in facts.lines if line.of_one is not None][:_MOST_ROWS]
    drawing = Ladder(
        over=teller.say(say("title")),
        title=teller.say(say("picture-title")),
        tone=Tone.PLAIN,
        subtitle=teller.say(say("picture-below")),
        axis=Axis(teller.say(say("picture-axis")), 0.0, _AXIS_MOST),
        wanted=Range(_EXPECTED, _EXPECTED, teller.say(say("picture-expected"))),
        rungs=tuple(_rung(line, teller) for line in lines),
        note=teller.say(say("picture-note")),
    )
    each = PoolLines(tuple(Say("pool-alt-line", line) for line in lines))
    told = (say("picture-alt"), Say("pool-alt-each", each))
    alt = alt_of(map(teller.say, told))
    return Picture(alt=alt, drawing=drawing)


def _rung(line: PoolLine, teller: Teller) -> Rung:
    one = line.of_one
    assert one is not None
    return Rung(
        teller.say(line.name),
        _EXPECTED * one.low,
        _EXPECTED * one.best,
        _EXPECTED * one.high,
        teller.say(Say("pool-cell-keepers-long", line)),
        Tone.PLAIN,
        picked=line.counts,
    )
