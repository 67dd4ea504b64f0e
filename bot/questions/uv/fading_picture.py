"""The picture of dated readings: every one, the line through them, and the day that counts."""

from collections.abc import Iterator
from datetime import date

from bot.drawing import (
    Axis,
    Chart,
    Due,
    Line,
    Mark,
    Point,
    PointKind,
    Stroke,
    Ticks,
    Tone,
    Zone,
    ZoneKind,
)
from bot.facts import Say, Says, uvi
from bot.layered import Teller
from bot.questions.shared import months_told
from bot.questions.tones import TONES
from bot.questions.uv.curves import shortened
from bot.questions.uv.fading import DatedRead, Fading, Leaves, Stands
from bot.reply import Picture
from calc.setup.set_up import sign_of
from calc.uv.decline import trend_at

__all__ = ["fading_picture"]

_CURVE_DAYS = 31
_BEFORE_DAYS, _AFTER_DAYS = 5.0, 10.0
_HEADROOM = 1.3
_OPEN_SHARE = 0.12
_MOST_TOLD = 20


def fading_picture(facts: Fading, teller: Teller) -> Picture:
    """Return the UV index of one place against the day, and when it is below the range."""
    say = Says("decline", facts)
    found, wanted = facts.found, facts.wanted
    first = found.first_day - _BEFORE_DAYS
    last = _last_day(facts)
    lines = _lines(facts, first, last)
    top = _HEADROOM * max(wanted.high, *(r.uvi for r in facts.seen))
    head, below = _head(facts, say), tuple(_below(facts, say))
    drawing = Chart(
        over=teller.say(say("title")),
        title=teller.say(head),
        tone=_tone(facts),
        subtitle=" ".join(map(teller.say, below)),
        x=Axis(
            teller.say(say("column-day")),
            first,
            last,
            ticks=Ticks.DATES,
            months=months_told(teller),
        ),
        y=Axis(teller.say(say("picture-axis")), 0.0, top),
        lines=lines,
        zones=tuple(_zones(facts, top, teller)),
        marks=_marks(facts, say, last, teller),
        points=tuple(
            Point(r.day, r.uvi, r.uvi, r.uvi, teller.say(told), PointKind.READING)
            for r, told in zip(
                facts.seen, (Say("decline-uvi", x) for x in _read(facts)), strict=True
            )
        ),
        due=_due(facts, say, teller),
        note=teller.say(say("picture-line" if lines else "picture-no-line")),
    )
    words = (*_alt(facts, head, say), *below, *_due_told(facts, say), *_read_told(facts))
    return Picture(alt=shortened(list(map(teller.say, words))), drawing=drawing)


def _last_day(facts: Fading) -> float:
    """Return the end of the axis: past what is due, with room where that is open, and today."""
    found = facts.found
    known = (found.falls_below_day, found.latest_day, found.read_again_day)
    ends = [found.last_day, *(day for day in known if day)]
    if found.today_day <= found.horizon_day:
        ends.append(found.today_day)
    last = max(ends)
    is_open = found.falls_below_day is not None and found.latest_day is None
    return last + max(_AFTER_DAYS, _OPEN_SHARE * (last - found.first_day) if is_open else 0.0)


def _head(facts: Fading, say: Says) -> Say:
    """Return the verdict of the last reading: the reply's own head where that is one."""
    told = facts.stands in (Stands.UNSOUND, Stands.ABOVE, Stands.BELOW)
    return say.by("head", facts.stands) if told else say("picture-read")


def _tone(facts: Fading) -> Tone:
    if facts.stands is Stands.UNSOUND:
        return Tone.DOUBTFUL
    if facts.stands in (Stands.ABOVE, Stands.BELOW):
        return Tone.BAD
    return TONES[sign_of(facts.judgement)]


def _below(facts: Fading, say: Says) -> Iterator[Say]:
    """Yield how it fades, and what the reply has done first: a day that is past is today."""
    if facts.stands is not Stands.UNSOUND:
        if facts.trend is not Stands.BELOW:
            yield say.by("head", facts.trend)
        if facts.leaves in (Leaves.STAYS, Leaves.UNKNOWN_TODAY):
            yield say.by("leaves", facts.leaves)
    match facts.stands:
        case Stands.UNSOUND:
            yield say("do-wipe")
        case Stands.ABOVE:
            yield say("do-farther")
        case Stands.BELOW:
            yield say("do-sure")
        case _:
            yield say("do-again")


def _zones(facts: Fading, top: float, teller: Teller) -> Iterator[Zone]:
    ends = (0.0, facts.wanted.low, facts.wanted.high, top)
    kinds = (ZoneKind.WEAKER, ZoneKind.RIGHT, ZoneKind.STRONGER)
    for kind, low, high in zip(kinds, ends[:-1], ends[1:], strict=True):
        yield Zone(kind, low, high, teller.say(Say.by("uvcurve-zone", kind)))


def _marks(facts: Fading, say: Says, last: float, teller: Teller) -> tuple[Mark, ...]:
    today = facts.found.today_day
    if facts.read_today or today > last:
        return ()
    return (Mark(today, teller.say(say("picture-today")), is_now=True),)


def _due(facts: Fading, say: Says, teller: Teller) -> Due | None:
    found, told = facts.found, tuple(_due_told(facts, say))
    if found.falls_below_day is None or not told:
        return None
    label = " ".join(map(teller.say, told))
    return Due(found.earliest_day, found.falls_below_day, found.latest_day, label)


def _due_told(facts: Fading, say: Says) -> Iterator[Say]:
    """Yield when it leaves the range as the reply says it, and between which days that may be."""
    if facts.leaves in (Leaves.ALREADY, Leaves.MAYBE, Leaves.ON):
        yield say.by("leaves", facts.leaves)
        if facts.window is not None and facts.leaves is Leaves.ON:
            yield say.by("window", facts.window)


def _lines(facts: Fading, first: float, last: float) -> tuple[Line, ...]:
    """Return the line through the readings, broken after the last of them."""
    read = facts.found.last_day
    spans = ((first, read, Stroke.MAIN), (read, last, Stroke.AHEAD))
    lines = (_line(facts, *span) for span in spans)
    return tuple(line for line in lines if line is not None)


def _line(facts: Fading, first: float, last: float, drawn: Stroke) -> Line | None:
    days = [first + (last - first) * i / (_CURVE_DAYS - 1) for i in range(_CURVE_DAYS)]
    trend = trend_at(facts.seen, days)
    if not trend:
        return None
    low, best, high = (tuple(getattr(e, n) for e in trend) for n in ("low", "best", "high"))
    return Line("", tuple(days), best, low, high, drawn)


def _read(facts: Fading) -> Iterator[DatedRead]:
    for reading in facts.seen:
        yield DatedRead(date.fromordinal(round(reading.day)), uvi(reading.uvi))


def _read_told(facts: Fading) -> Iterator[Say]:
    told = list(_read(facts))[:_MOST_TOLD]
    yield from (Say("decline-picture-day", one) for one in told)


def _alt(facts: Fading, head: Say, say: Says) -> Iterator[Say]:
    yield say("picture-alt")
    yield head
    yield say("aim")
