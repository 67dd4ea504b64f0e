"""Counts as weeks and totals, and what they say of the guide: sums of what was kept, no more."""

from collections import Counter
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from datetime import date, timedelta

from bot.saved.counts import Asked, Count, monday_of, week_of

__all__ = [
    "LEAST_POINTED",
    "OPENED_ONCE_IN",
    "Passed",
    "Tallied",
    "Week",
    "passed_by",
    "tallied",
]

_WEEK = timedelta(weeks=1)
# Both chosen by us, no source: fewer answers say nothing yet, and a page that one reader in ten
# opens is read.
LEAST_POINTED = 5
OPENED_ONCE_IN = 10


@dataclass(frozen=True, slots=True)
class Week:
    """What was counted from a Monday to the Sunday after it; ``over`` once that has passed."""

    monday: date
    over: bool
    times: Mapping[Asked, int]


@dataclass(frozen=True, slots=True)
class Tallied:
    """Counts by week, the oldest first and none left out, and by name, the most frequent first."""

    weeks: tuple[Week, ...]
    names: Mapping[Asked, tuple[tuple[str, int], ...]]

    def total(self, kind: Asked) -> int:
        """Return how often a kind was counted in all weeks."""
        return sum(times for _, times in self.names[kind])


@dataclass(frozen=True, slots=True)
class Passed:
    """A guide page that answers pointed to often and that was hardly opened.

    ``by`` are the questions whose answers pointed to it, with how often they were asked.
    """

    page: str
    pointed: int
    opened: int
    by: tuple[tuple[str, int], ...]


def tallied(counts: Iterable[Count], today: date) -> Tallied:
    """Return the weeks from the first one counted to this one, and the totals of each name."""
    by_week: dict[date, Counter[Asked]] = {}
    by_name: dict[Asked, Counter[str]] = {kind: Counter() for kind in Asked}
    for count in counts:
        by_week.setdefault(monday_of(count.week), Counter())[count.kind] += count.times
        by_name[count.kind][count.name] += count.times
    this = monday_of(week_of(today))
    first = min(by_week, default=this + _WEEK)
    last = max([this, *by_week])
    mondays = (first + n * _WEEK for n in range((last - first) // _WEEK + 1))
    return Tallied(
        weeks=tuple(
            Week(
                monday,
                over=monday + _WEEK <= today,
                times={kind: by_week.get(monday, Counter())[kind] for kind in Asked},
            )
            for monday in mondays
        ),
        names={
            kind: tuple(sorted(found.items(), key=lambda named: (-named[1], named[0])))
            for kind, found in by_name.items()
        },
    )


def passed_by(found: Tallied, pages_of: Mapping[str, tuple[str, ...]]) -> tuple[Passed, ...]:
    """Return the pages often pointed to and hardly opened, the most pointed to first.

    ``pages_of`` are the pages that the answers of each question point to.
    """
    opened = dict(found.names[Asked.PAGE])
    pointing: dict[str, list[tuple[str, int]]] = {}
    for question, times in found.names[Asked.QUESTION]:
        for page in pages_of.get(question, ()):
            pointing.setdefault(page, []).append((question, times))
    pages = (
        Passed(page, sum(times for _, times in by), opened.get(page, 0), tuple(by))
        for page, by in pointing.items()
    )
    passed = (
        p for p in pages if p.pointed >= LEAST_POINTED and p.opened * OPENED_ONCE_IN <= p.pointed
    )
    return tuple(sorted(passed, key=lambda p: (-p.pointed, p.opened, p.page)))
