"""The picture of a lamp's age: when such lamps are replaced, and where this one stands today."""

from collections.abc import Iterator

from bot.drawing import Axis, Mark, Scale, Stretch, StretchKind, Timeline, TimeRow, Tone
from bot.facts import Say, Says
from bot.layered import Teller
from bot.questions.uv.decline_age import Aged, ByAge
from bot.reply import Picture

__all__ = ["age_picture"]

_MONTH_H = 24.0 * 30.44
# How far the axis goes, as a share of the last usual age: always, and at most.
_ALWAYS, _AT_MOST = 1.5, 4.0
_BEYOND = 1.15
_TONES = {
    Aged.UNTOLD: Tone.PLAIN,
    Aged.NEW: Tone.GOOD,
    Aged.SETTLED: Tone.GOOD,
    Aged.AGEING: Tone.DOUBTFUL,
    Aged.OLD: Tone.BAD,
}


def age_picture(facts: ByAge, head: Say, teller: Teller) -> Picture:
    """Return the usual ages of replacing as a bar with an open end; ``head`` is the verdict."""
    say = Says("decline", facts)
    due = facts.replace_after
    assert due is not None
    age = 0.0 if facts.age is None else facts.age.best
    last = min(max(_ALWAYS * due.high, _BEYOND * age), _AT_MOST * due.high)
    untold = facts.aged is Aged.UNTOLD
    today = () if facts.age is None else (Mark(age, teller.say(say("picture-today")), is_now=True),)
    drawing = Timeline(
        over=teller.say(say("age-title")),
        title=teller.say(head),
        tone=_TONES[facts.aged],
        subtitle=teller.say(say.by("aged", facts.aged)) if untold else "",
        axis=Axis(teller.say(say("picture-months")), 0.0, last, (Scale("", 1.0 / _MONTH_H),)),
        rows=(TimeRow((Stretch(StretchKind.DUE, due.low, due.high),)),),
        marks=today,
        told="" if untold else teller.say(say("usual")),
        note=teller.say(say("why-meter")),
    )
    return Picture(alt=" ".join(map(teller.say, _alt(facts, head, say))), drawing=drawing)


def _alt(facts: ByAge, head: Say, say: Says) -> Iterator[Say]:
    yield say("picture-alt-age")
    yield head
    if facts.aged is Aged.UNTOLD:
        yield say.by("aged", facts.aged)
    else:
        yield say("usual")
    if facts.aged not in (Aged.UNTOLD, Aged.NEW):
        yield say("picture-age")
    yield say("why-meter")
