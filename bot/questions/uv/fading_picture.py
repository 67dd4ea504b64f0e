"""The picture of dated readings: every one, the line through them, and the day that counts."""

from collections.abc import Iterator
from datetime import date

from bot.drawing import Axis, Chart, Line, Mark, Point, PointKind, Range, Ticks
from bot.facts import Say, Says, uvi
from bot.layered import Teller
from bot.questions.shared import months_told
from bot.questions.uv.curves import shortened
from bot.questions.uv.fading import DatedRead, Fading
from bot.reply import Picture
from calc.uv.decline import trend_at

__all__ = ["fading_picture"]

_CURVE_DAYS = 41
_BEFORE_DAYS, _AFTER_DAYS = 5.0, 10.0
_HEADROOM = 1.3
_MOST_TOLD = 20


def fading_picture(facts: Fading, teller: Teller) -> Picture:
    """Return the UV index of one place against the day."""
    say = Says("decline", facts)
    found = facts.found
    ends = [d for d in (found.falls_below_day, found.latest_day, found.read_again_day) if d]
    first = found.first_day - _BEFORE_DAYS
    last = max(found.last_day, *ends) + _AFTER_DAYS
    lines = _lines(facts, first, last)
    wanted = facts.wanted
    drawing = Chart(
        title=teller.say(say("title")),
        subtitle=teller.say(say("picture-below")),
        x=Axis(
            teller.say(say("column-day")),
            first,
            last,
            ticks=Ticks.DATES,
            months=months_told(teller),
        ),
        y=Axis(
            teller.say(say("picture-axis")),
            0.0,
            _HEADROOM * max(wanted.high, *(r.uvi for r in facts.seen)),
        ),
        lines=lines,
        bands=(Range(wanted.low, wanted.high, teller.say(say("picture-aim"))),),
        marks=(_mark(facts, say, teller),),
        points=tuple(
            Point(r.day, r.uvi, r.uvi, r.uvi, teller.say(told), PointKind.READING)
            for r, told in zip(
                facts.seen, (Say("decline-uvi", x) for x in _read(facts)), strict=True
            )
        ),
        note=teller.say(say("picture-line" if lines else "picture-no-line")),
    )
    return Picture(alt=shortened(list(map(teller.say, _alt(facts, say)))), drawing=drawing)


def _lines(facts: Fading, first: float, last: float) -> tuple[Line, ...]:
    days = [first + (last - first) * i / (_CURVE_DAYS - 1) for i in range(_CURVE_DAYS)]
    trend = trend_at(facts.seen, days)
    if not trend:
        return ()
    low, best, high = (tuple(getattr(e, n) for e in trend) for n in ("low", "best", "high"))
    return (Line("", tuple(days), best, low, high),)


def _mark(facts: Fading, say: Says, teller: Teller) -> Mark:
    found = facts.found
    if found.falls_below_day and found.falls_below_day > found.last_day:
        return Mark(found.falls_below_day, teller.say(say("picture-falls")))
    return Mark(found.read_again_day, teller.say(say("picture-again")))


def _read(facts: Fading) -> Iterator[DatedRead]:
    for reading in facts.seen:
        yield DatedRead(date.fromordinal(round(reading.day)), uvi(reading.uvi))


def _alt(facts: Fading, say: Says) -> Iterator[Say]:
    yield say("picture-alt")
    told = list(_read(facts))[:_MOST_TOLD]
    yield from (Say("decline-picture-read", one) for one in told)
    yield say("picture-now")
    yield say.by("head", facts.stands)
    if facts.leaves is not None:
        yield say.by("leaves", facts.leaves)
