"""Counts in words and as a picture: the course over the weeks, and what was asked for most."""

from collections.abc import Sequence
from datetime import date

from bot import guide
from bot.answers.figures import calendar_day, month_name
from bot.drawing import Course, Tally, TallyGroup, TallyRow
from bot.keeping.weekly import Passed, Tallied, Week
from bot.kept.counts import Asked
from bot.questions.uv.curves import shortened
from bot.reply import Picture
from calc.animals import animals

__all__ = ["counted", "listed", "page_title", "picture_of"]

_MOST_ROWS = {Asked.QUESTION: 6, Asked.ANIMAL: 6, Asked.PAGE: 4}
_MOST_PASSED = 3
_MOST_WEEKS_TOLD = 12
_HEADINGS = {
    Asked.QUESTION: "Questions asked",
    Asked.ANIMAL: "Animals named",
    Asked.PAGE: "Guide pages opened",
}
_FILLS = {kind: number for number, kind in enumerate(Asked)}
_COURSES = {Asked.QUESTION: "Questions", Asked.ANIMAL: "Animals", Asked.PAGE: "Pages"}


def counted(times: int, noun: str) -> str:
    """Return how many there are.

    >>> counted(1, "question"), counted(0, "page")
    ('1 question', '0 pages')
    """
    return f"{times} {noun}{'' if times == 1 else 's'}"


def _name_of(kind: Asked, name: str) -> str:
    """Return what was counted by its name; one that is no longer known keeps its short name."""
    if kind is Asked.ANIMAL:
        known = animals().get(name)
        return known.name if known else name
    return page_title(name) if kind is Asked.PAGE else name


def listed(kind: Asked, names: Sequence[tuple[str, int]]) -> str:
    """Return names with how often each; titles of pages, which hold commas, stand in quotes."""
    quote = "“{}”" if kind is Asked.PAGE else "{}"
    return ", ".join(f"{quote.format(_name_of(kind, name))} {times}" for name, times in names)


def page_title(slug: str) -> str:
    """Return the title of a guide page; one that is gone keeps its short name."""
    return next((page.title for page in guide.pages() if page.slug == slug), slug)


def picture_of(found: Tallied, passed: Sequence[Passed]) -> Picture:
    """Return the counts as a picture, with the pages that hardly anybody opened."""
    shown = [kind for kind in Asked if found.names[kind]]
    groups = [_group(found, kind) for kind in shown]
    if passed:
        groups.append(_overlooked(passed))
    first, last = found.weeks[0], found.weeks[-1]
    drawing = Tally(
        title="What was asked here",
        subtitle=_since(first.monday) if len(found.weeks) > 1 else _one_week(first),
        weeks=tuple(_short(week.monday) for week in found.weeks),
        unfinished=not last.over,
        courses=tuple(
            Course(_COURSES[kind], tuple(week.times[kind] for week in found.weeks), _FILLS[kind])
            for kind in shown
        ),
        groups=tuple(groups),
        note="A week: Monday to Sunday, UTC."
        + ("" if last.over or len(found.weeks) == 1 else " Hatched: not over yet."),
    )
    return Picture(alt=_alt(drawing, found, passed[:_MOST_PASSED]), drawing=drawing)


def _since(first: date) -> str:
    return f"Week by week since Monday {calendar_day(first)}"


def _one_week(week: Week) -> str:
    so_far = "" if week.over else ", so far"
    return f"In the week from Monday {calendar_day(week.monday)}{so_far}"


def _short(day: date) -> str:
    return f"{day.day} {month_name(day.month)[:3]}"


def _group(found: Tallied, kind: Asked) -> TallyGroup:
    names, most = found.names[kind], _MOST_ROWS[kind]
    return TallyGroup(
        heading=f"{_HEADINGS[kind]}: {found.total(kind)}",
        rows=tuple(
            TallyRow(_name_of(kind, name), times, str(times)) for name, times in names[:most]
        ),
        shown=_shown(most, len(names)),
        fill=_FILLS[kind],
    )


def _overlooked(passed: Sequence[Passed]) -> TallyGroup:
    """Return the pages that answers pointed to and that hardly anybody opened."""
    return TallyGroup(
        heading="Often pointed to, hardly opened",
        rows=tuple(
            TallyRow(page_title(p.page), p.opened, f"{p.opened} / {p.pointed}", p.pointed)
            for p in passed[:_MOST_PASSED]
        ),
        explained="Filled: opened / outline: answers pointing to it",
        shown=_shown(_MOST_PASSED, len(passed)),
        fill=len(_FILLS),
    )


def _shown(most: int, there: int) -> str:
    return f"{most} of {there} shown" if there > most else ""


def _alt(drawing: Tally, found: Tallied, passed: Sequence[Passed]) -> str:
    told = [f"Columns and bars. {drawing.title}. {drawing.subtitle}."]
    told += [_course(found, kind) for kind in Asked if found.names[kind]]
    for kind in Asked:
        if found.names[kind]:
            told.append(f"{_HEADINGS[kind]} most often: {listed(kind, found.names[kind][:3])}.")
    told += [
        f"Hardly opened: “{page_title(p.page)}”, {counted(p.opened, 'time')}, while "
        f"{counted(p.pointed, 'answer')} pointed to it."
        for p in passed
    ]
    return shortened(told)


def _course(found: Tallied, kind: Asked) -> str:
    """Return the counts of every week, or of a long time where it began, was highest, and ends."""
    times = [week.times[kind] for week in found.weeks]
    so_far = "" if found.weeks[-1].over else " so far"
    if len(times) == 1:
        return f"{_HEADINGS[kind]} in this week: {times[0]}{so_far}."
    if len(times) <= _MOST_WEEKS_TOLD:
        every = ", ".join(map(str, times))
        return f"{_HEADINGS[kind]} by week, the oldest first: {every}{so_far}."
    top = max(found.weeks, key=lambda week: week.times[kind])
    return (
        f"{_HEADINGS[kind]} in {len(times)} weeks: {times[0]} in the first, at most "
        f"{top.times[kind]}, in the week from {calendar_day(top.monday)}, and "
        f"{times[-1]}{so_far} in the last."
    )
