"""Every way that a set-up may be as a bar: where its tube goes, or what it gives at a place."""

from dataclasses import dataclass
from itertools import chain

from bot.drawing import Axis, Ladder, Range, Rung, Tone
from bot.facts import Say, Says
from bot.layered import Teller
from bot.questions.tones import TONES
from bot.questions.uv.curve_picture import distance_axis, uvi_axis
from bot.questions.uv.curves import alt_of
from bot.questions.uv.unsure import Standing, Unsurely, UnsureWay
from bot.reply import Picture
from calc.setup.set_up import sign_of

__all__ = ["WaysShown", "unsure_picture"]

_BEYOND = 1.08


@dataclass(frozen=True, slots=True)
class WaysShown:
    """All ways in the words of the picture, one after the other."""

    each: tuple[Say, ...]


def unsure_picture(facts: Unsurely, head: Say, teller: Teller) -> Picture:
    """Return every way with its bar, and what holds for all of them."""
    say = Says("unsure", facts)
    at = facts.at
    below = say("standing") if at else say("mild") if facts.start else say("not-every-way")
    drawing = Ladder(
        over=teller.say(say("title")),
        title=teller.say(head),
        tone=_tone(facts),
        subtitle=teller.say(below),
        axis=_axis(facts, teller),
        wanted=_wanted(facts, say, teller),
        rungs=tuple(_rung(way, teller) for way in facts.ways),
        note=teller.say(say("picture-note-there" if at else "picture-note")),
    )
    each = WaysShown(tuple(Say("unsure-alt-way", way) for way in facts.ways))
    told = (say("picture-alt"), head, below, Say("unsure-alt-each", each))
    alt = alt_of(map(teller.say, told))
    return Picture(alt=alt, drawing=drawing)


def _tone(facts: Unsurely) -> Tone:
    if facts.too_near:
        return Tone.BAD
    alike = facts.standing is Standing.ALIKE and facts.verdict is not None
    return TONES[sign_of(facts.verdict)] if alike and facts.verdict else Tone.DOUBTFUL


def _axis(facts: Unsurely, teller: Teller) -> Axis:
    if facts.at is not None:
        low, high = facts.wanted.low, facts.wanted.high
        most = max(way.there.best for way in facts.ways if way.there)
        return uvi_axis(max(2.0 * high, _BEYOND * most, 2.0 * low), teller)
    spans = (way.span for way in facts.ways)
    ends = chain.from_iterable((span.low, span.high) for span in spans if span)
    start = (facts.start.best,) if facts.start else ()
    met = [*ends, *start, 0.5]
    return distance_axis(0.0, _BEYOND * max(met), teller)


def _wanted(facts: Unsurely, say: Says, teller: Teller) -> Range | None:
    if facts.at is not None:
        label = teller.say(say("picture-aim"))
        return Range(facts.wanted.low, facts.wanted.high, label)
    if facts.start is None:
        return None
    return Range(facts.start.best, facts.start.best, teller.say(say("picture-start")))


def _rung(way: UnsureWay, teller: Teller) -> Rung:
    label = teller.say(Say("unsure-way", way))
    if way.there is not None and way.judgement is not None:
        there, tone = way.there, TONES[sign_of(way.judgement)]
        return Rung(label, there.low, there.best, there.high, teller.say(way.judged), tone)
    if way.span is None:
        return Rung(label, 0.0, 0.0, 0.0, teller.say(way.judged), Tone.BAD, is_barred=False)
    span = way.span
    return Rung(
        label, span.low, span.best, span.high, teller.say(Say("unsure-away", way)), Tone.PLAIN
    )
