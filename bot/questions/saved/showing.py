"""An enclosure shown: its set-up, its history, the trend of its UV, the next measuring day.

Words: ``words/<language>/mine-show.ftl``, ``home.ftl``.
"""

from collections import defaultdict
from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from bot.command import Command
from bot.desk import Desk
from bot.facts import Length, Say, Says
from bot.layered import Brief, Layered, Row, Table, Teller
from bot.preferences import Context
from bot.queries.mine import NamedQuery
from bot.questions.heat.gauges import BoxHead, box_picture
from bot.questions.owned import target_told
from bot.questions.saved.enclosures import enclosure_asked
from bot.questions.saved.reading import ReadOnce, read_once, read_said, what_said
from bot.questions.saved.setup import SetupTold, question_of, setup_rows, setup_told
from bot.questions.saved.sheet import CareSheet, sheet_of
from bot.questions.saved.standing import standing_rows
from bot.questions.saved.targets import note_told
from bot.questions.saved.trend import Reckoned, trend_of
from bot.questions.uv.decline import tell_fading
from bot.reply import Picture
from bot.saved.keeper import KEPT_AS, Enclosure, Reading
from calc.quantities import Quantity

__all__ = ["MINE_SHOW", "BoxShown", "OnDay", "day_said", "show", "tell_show"]

_MOST_ROWS = 20


@dataclass(frozen=True, slots=True)
class OnDay:
    """What was read on a day."""

    day: date
    readings: tuple[ReadOnce, ...]


@dataclass(frozen=True, slots=True)
class BoxShown:
    """An enclosure with its readings, the newest days first; ``standing`` are rows of the last.

    ``sheet`` is its box with those, where no trend is drawn.
    """

    name: str
    setup: SetupTold
    question: str | None
    readings: int
    days: tuple[OnDay, ...]
    standing: tuple[Row, ...]
    trend: Reckoned | None
    read_again: str | None
    retargeted: tuple[Say, ...]
    sheet: CareSheet | None

    @property
    def changed(self) -> int:
        """Return how many targets the group changed since the last reading."""
        return len(self.retargeted)

    @property
    def on_days(self) -> int:
        """Return on how many days something was read."""
        return len(self.days)

    @property
    def elsewhere(self) -> int:
        """Return how many UV readings were taken at another distance than the last."""
        return self.trend.elsewhere if self.trend else 0

    @property
    def at(self) -> Length | None:
        """Return where the UV was read last."""
        return self.trend.at if self.trend else None


async def show(query: NamedQuery, context: Context, desk: Desk) -> BoxShown:
    """Find an enclosure, and what its readings show."""
    kept = await enclosure_asked(desk, query.name, "mine show")
    trend = trend_of(kept, context)
    await note_told(desk, context, kept)
    return BoxShown(
        name=kept.name,
        setup=setup_told(kept.setup),
        question=question_of(kept.setup) or None,
        readings=len(kept.readings),
        days=_days(kept.readings),
        standing=tuple(standing_rows(kept, context)),
        trend=trend,
        read_again=_read_again(kept, trend, context.day),
        retargeted=tuple(_retargeted(kept, context)),
        sheet=None if trend else sheet_of(kept, context),
    )


def _retargeted(kept: Enclosure, context: Context) -> Iterator[Say]:
    """Yield what the group aims for that it set after the keeper read last."""
    if not kept.readings or not kept.setup.animal:
        return
    last = max(reading.day for reading in kept.readings)
    for target in context.own.targets_of(kept.setup.animal):
        if target.set_on > last:
            yield target_told(target)


def _days(readings: Sequence[Reading]) -> tuple[OnDay, ...]:
    by_day: dict[date, dict[Quantity, Reading]] = defaultdict(dict)
    for reading in readings:
        by_day[reading.day][reading.of] = reading
    return tuple(
        OnDay(day, tuple(read_once(by_day[day][of]) for of in KEPT_AS if of in by_day[day]))
        for day in sorted(by_day, reverse=True)
    )


def _read_again(kept: Enclosure, trend: Reckoned | None, now: date) -> str | None:
    """Return the question that reminds of the next reading."""
    if trend is None:
        return None
    due = now + timedelta(hours=trend.fading.again_in.best)
    when = max(due, now + timedelta(days=1))
    return f"remind me about:meter name:{kept.name} when:{when}"


def tell_show(facts: BoxShown) -> Layered:
    """Tell how many readings there are and what they show."""
    say = Says("mine-show", facts)
    fading = tell_fading(facts.trend.fading) if facts.trend else None
    shown = (fading.brief.head, *fading.brief.range) if fading else (say("no-trend"),)
    return Layered(
        command="mine show",
        title=say("title"),
        brief=Brief(
            head=say("head"),
            range=(*_news(facts, say), *shown),
            assumed=fading.brief.assumed if fading else (),
        ),
        values=fading.values if fading else (),
        numbers=tuple(_numbers(facts, say, fading)),
        table=_history(facts.days) if facts.days else None,
        steps=tuple(_steps(facts, say, fading)),
        why=fading.why if fading else (),
        guide=fading.guide if fading else (),
        sources=fading.sources if fading else (),
        picture=fading.picture if fading else _picture(facts, say),
        alarms=fading.alarms if fading else (),
    )


def _picture(facts: BoxShown, say: Says) -> Callable[[Teller], Picture] | None:
    """Return the box with what was read in it last; nothing of an animal that is not known."""
    sheet = facts.sheet
    if sheet is None or sheet.gauges is None:
        return None
    told = sheet.gauges, sheet.set_up, BoxHead(say("title"), say("head")), sheet.also
    return lambda teller: Picture.later(box_picture, *told, teller)


def _news(facts: BoxShown, say: Says) -> tuple[Say, ...]:
    return (say("retargeted"),) if facts.changed else ()


def _numbers(facts: BoxShown, say: Says, fading: Layered | None) -> Iterator[Row]:
    for target in facts.retargeted:
        yield Row(say("label-retargeted"), target)
    yield from setup_rows(facts.setup)
    yield from facts.standing
    if fading is not None:
        yield from fading.numbers
    if facts.elsewhere:
        yield Row(say("label-reckoned"), say("reckoned"))


def _steps(facts: BoxShown, say: Says, fading: Layered | None) -> Iterator[Say]:
    if facts.question is not None:
        yield say("step-ask")
    if fading is not None:
        yield from fading.steps
    if facts.read_again is not None:
        yield say("step-remind")
    if not facts.readings or (facts.question is None and fading is None):
        yield say("step-read")


def _history(days: tuple[OnDay, ...]) -> Table:
    found = {one.what: what_said(one) for day in days for one in day.readings}
    kinds = {what: found[what] for what in type(next(iter(found))) if what in found}
    newest = days[:_MOST_ROWS]
    return Table(
        columns=(Say("mine-show-day"), *kinds.values()),
        rows=tuple(
            (
                day_said(day.day),
                *(
                    read_said(read) if read else Say("mine-show-none")
                    for what in kinds
                    for read in [next((r for r in day.readings if r.what is what), None)]
                ),
            )
            for day in newest
        ),
    )


@dataclass(frozen=True, slots=True)
class _Day:
    day: date


def day_said(day: date) -> Say:
    """Return a day of the calendar."""
    return Say("mine-show-on", _Day(day))


MINE_SHOW = Command(
    name="mine show",
    query=NamedQuery,
    stored=show,
    tell=tell_show,
    examples=("mine show name:Pebble's box",),
    guide=("keeping-notes", "when-a-lamp-is-worn-out"),
)
