"""What every usual tube gives at a place, as bars with their doubt; the one to take is full."""

from dataclasses import dataclass

from bot.drawing import Ladder, Range, Rung, Tone
from bot.facts import Say, Says
from bot.layered import Teller
from bot.questions.tones import TONES
from bot.questions.uv.curve_picture import uvi_axis
from bot.questions.uv.curves import alt_of
from bot.questions.uv.tube_facts import OwnThere, Pick, Suit, TubeChosen
from bot.reply import Picture
from calc.setup.set_up import sign_of

__all__ = ["SuitShown", "tube_picture"]

_GOOD = (Pick.TAKE, Pick.KEEP_OWN)


@dataclass(frozen=True, slots=True)
class SuitShown:
    """All tubes in the words of the picture, one after the other."""

    each: tuple[Say, ...]


def tube_picture(facts: TubeChosen, head: Say, teller: Teller) -> Picture:
    """Return what every class gives there, the asker's own lamp first, and which is picked."""
    say = Says("tube", facts)
    low, high = facts.wanted.low, facts.wanted.high
    drawing = Ladder(
        over=teller.say(say("title")),
        title=teller.say(head),
        tone=_tone(facts),
        subtitle=teller.say(say("place")),
        axis=uvi_axis(2.0 * high, teller),
        wanted=Range(low, high, teller.say(say("picture-aim"))),
        rungs=(
            *(() if facts.own is None else (_own(facts, facts.own, teller),)),
            *(
                _rung(facts, suit, teller)
                for suit in facts.suits
                if suit.is_drawn or _is_taken(facts, suit)
            ),
        ),
        note=teller.say(say("picture-note" if facts.best else "picture-note-none")),
    )
    each = SuitShown(tuple(Say("tube-alt-suit", suit) for suit in facts.suits))
    told = (say("picture-alt"), head, say("picture-alt-aim"), Say("tube-alt-each", each))
    alt = alt_of(map(teller.say, told))
    return Picture(alt=alt, drawing=drawing)


def _tone(facts: TubeChosen) -> Tone:
    if facts.read.cannot_be or facts.pick is Pick.NONE:
        return Tone.DOUBTFUL
    return Tone.GOOD if facts.pick in _GOOD else Tone.BAD


def _is_taken(facts: TubeChosen, suit: Suit) -> bool:
    return facts.pick is Pick.TAKE and facts.best is not None and suit.key == facts.best.key


def _rung(facts: TubeChosen, suit: Suit, teller: Teller) -> Rung:
    there, tone = suit.there, TONES[sign_of(suit.judgement)]
    return Rung(
        teller.say(Say("tube-picture-line", suit)),
        there.low,
        there.best,
        there.high,
        teller.say(suit.judged),
        Tone.BAD if suit.near else tone,
        picked=_is_taken(facts, suit),
    )


def _own(facts: TubeChosen, own: OwnThere, teller: Teller) -> Rung:
    there, tone = own.there, TONES[sign_of(own.judgement)]
    if own.near or not own.believed:
        tone = Tone.BAD if own.near else Tone.DOUBTFUL
    words = teller.say(Say("tube-own", facts)), teller.say(own.judged)
    picked = facts.pick is Pick.KEEP_OWN
    return Rung(words[0], there.low, there.best, there.high, words[1], tone, picked=picked)
