"""The curves of every usual tube at a place, the one to take with its doubt."""

from dataclasses import dataclass

import numpy as np

from bot.drawing import Chart, Line, Mark, Range, Stroke
from bot.facts import Say, Says
from bot.layered import Teller
from bot.questions.uv.curve_picture import distance_axis, too_near_span, uvi_axis
from bot.questions.uv.curves import curve_of, shortened, shown_distances
from bot.questions.uv.tube_facts import Suit, TubeChosen
from bot.reply import Picture
from calc.uv.lamp import Fixture, Lamp, as_long_as

__all__ = ["SuitShown", "tube_picture"]

_STROKES = {Fixture.POLISHED: Stroke.SOLID, Fixture.PLAIN: Stroke.DASHED}
_CURVE_POINTS = 41
_NO_BREAK = "\u00a0"


@dataclass(frozen=True, slots=True)
class SuitShown:
    """All tubes in the words of the picture, one after the other."""

    each: tuple[Say, ...]


def tube_picture(facts: TubeChosen, teller: Teller) -> Picture:
    """Return every class's curve, and the doubt of the one that is picked."""
    say = Says("tube", facts)
    near, far = shown_distances((facts.at.best,))
    low, high = facts.wanted.low, facts.wanted.high
    drawing = Chart(
        title=teller.say(say("title")),
        subtitle=teller.say(say("place")),
        x=distance_axis(near, far, teller),
        y=uvi_axis(2.0 * high, teller),
        lines=tuple(
            _line(facts, suit, (near, far), teller)
            for suit in facts.suits
            if suit.is_drawn or _is_taken(facts, suit)
        ),
        bands=(Range(low, high, teller.say(say("picture-aim"))),),
        spans=(too_near_span(near, teller),),
        marks=(Mark(facts.at.best, teller.say(say("picture-here"))),),
        note=teller.say(say("picture-note" if facts.best else "picture-note-none")),
    )
    each = SuitShown(tuple(Say("tube-alt-suit", suit) for suit in facts.suits))
    told = (say("picture-alt"), say("picture-alt-falls"), Say("tube-alt-each", each))
    alt = shortened([teller.say(one).replace(_NO_BREAK, " ") for one in told])
    return Picture(alt=alt, drawing=drawing)


def _is_taken(facts: TubeChosen, suit: Suit) -> bool:
    return facts.best is not None and suit.key == facts.best.key


def _line(facts: TubeChosen, suit: Suit, ends: tuple[float, float], teller: Teller) -> Line:
    one = Lamp(
        round(suit.strength.best * 100.0, 3),
        suit.fixture,
        count=facts.lamp.count,
        gap_m=facts.lamp.gap_m,
    )
    taken = _is_taken(facts, suit)
    return curve_of(
        as_long_as(one, facts.lamp),
        facts.screen,
        np.linspace(*ends, _CURVE_POINTS),
        teller.say(Say("tube-picture-line", suit)),
        Stroke.MAIN if taken else _STROKES[suit.fixture],
        doubt=taken,
    )
