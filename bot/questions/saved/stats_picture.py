"""Counts as a picture: their course over the weeks, and what was asked for most."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from bot.drawing import Course, Tally, TallyGroup, TallyRow
from bot.facts import Say, Says
from bot.layered import Teller
from bot.questions.saved.stats_facts import CountAnimal, CountNames, CountText, PagePassed, Stats
from bot.questions.uv.curves import shortened
from bot.reply import Picture
from bot.saved.counts import Asked

__all__ = ["stats_picture"]

_MOST_ROWS = {Asked.QUESTION: 6, Asked.ANIMAL: 6, Asked.PAGE: 4}
_MOST_PASSED = 3
_MOST_WEEKS_TOLD = 12
_MOST_IN_WORDS = 3
_FILLS = {kind: number for number, kind in enumerate(Asked)}


@dataclass(frozen=True, slots=True)
class CountHeading:
    """What a group of bars is of, and how often it was counted."""

    kind: Asked
    total: int


@dataclass(frozen=True, slots=True)
class CountShown:
    """How many of all have a bar."""

    most: int
    there: int


@dataclass(frozen=True, slots=True)
class CountDay:
    """A day below a column: as short as can be."""

    day: int
    month: Say


@dataclass(frozen=True, slots=True)
class CountCourse:
    """The counts of a kind week by week, or of a long time where it began, was highest and ends."""

    kind: Asked
    every: str
    first: int
    top: int
    top_from: date
    last: int
    count: int
    over: bool


@dataclass(frozen=True, slots=True)
class CountMostOften:
    """What was counted most often of a kind."""

    kind: Asked
    listed: tuple[Say, ...]


def stats_picture(facts: Stats, teller: Teller) -> Picture:
    """Return the counts as a picture, with the pages that hardly anybody opened."""
    say = Says("count", facts)
    groups = [_group(names, teller) for names in facts.names]
    if facts.passed:
        groups.append(_overlooked(facts, teller))
    goes_on = not facts.over and facts.count > 1
    drawing = Tally(
        title=teller.say(say("picture-title")),
        subtitle=teller.say(say("picture-since" if facts.count > 1 else "picture-week")),
        weeks=tuple(_short(week.monday, teller) for week in facts.weeks),
        unfinished=not facts.over,
        courses=tuple(
            Course(
                teller.say(Say.by("count-course", names.kind)),
                tuple(week.times(names.kind) for week in facts.weeks),
                _FILLS[names.kind],
            )
            for names in facts.names
        ),
        groups=tuple(groups),
        note=teller.say(say("note-on" if goes_on else "note")),
    )
    return Picture(alt=shortened([*_alt(drawing, facts, teller)]), drawing=drawing)


def _short(day: date, teller: Teller) -> str:
    return teller.say(Say("count-day", CountDay(day.day, Say.of("count-month", str(day.month)))))


def _group(names: CountNames, teller: Teller) -> TallyGroup:
    most = _MOST_ROWS[names.kind]
    return TallyGroup(
        heading=teller.say(Say("count-heading", CountHeading(names.kind, names.total))),
        rows=tuple(
            TallyRow(teller.say(_label(one)), one.times, str(one.times))
            for one in names.names[:most]
        ),
        shown=_shown(most, len(names.names), teller),
        fill=_FILLS[names.kind],
    )


def _label(one: CountText | CountAnimal) -> Say:
    return Say("count-animal" if isinstance(one, CountAnimal) else "count-text", one)


def _overlooked(facts: Stats, teller: Teller) -> TallyGroup:
    """Return the pages that answers pointed to and that hardly anybody opened."""
    return TallyGroup(
        heading=teller.say(Say("count-overlooked")),
        rows=tuple(
            TallyRow(page.title, page.opened, f"{page.opened} / {page.pointed}", page.pointed)
            for page in facts.passed[:_MOST_PASSED]
        ),
        explained=teller.say(Say("count-explained")),
        shown=_shown(_MOST_PASSED, len(facts.passed), teller),
        fill=len(_FILLS),
    )


def _shown(most: int, there: int, teller: Teller) -> str:
    return teller.say(Say("count-shown", CountShown(most, there))) if there > most else ""


def _alt(drawing: Tally, facts: Stats, teller: Teller) -> Iterator[str]:
    yield teller.say(Say("count-alt"))
    yield f"{drawing.title}. {drawing.subtitle}."
    for names in facts.names:
        yield teller.say(_course(facts, names.kind))
    for names in facts.names:
        listed = tuple(names.said(one) for one in names.names[:_MOST_IN_WORDS])
        yield teller.say(Say("count-alt-most", CountMostOften(names.kind, listed)))
    for page in facts.passed[:_MOST_PASSED]:
        yield teller.say(_passed(page))


def _passed(page: PagePassed) -> Say:
    return Say("count-alt-passed", page)


def _course(facts: Stats, kind: Asked) -> Say:
    times = [week.times(kind) for week in facts.weeks]
    top = max(facts.weeks, key=lambda week: week.times(kind))
    told = CountCourse(
        kind=kind,
        every=", ".join(map(str, times)),
        first=times[0],
        top=top.times(kind),
        top_from=top.monday,
        last=times[-1],
        count=len(times),
        over=facts.over,
    )
    if len(times) == 1:
        return Say("count-alt-one", told)
    return Say("count-alt-every" if len(times) <= _MOST_WEEKS_TOLD else "count-alt-long", told)
