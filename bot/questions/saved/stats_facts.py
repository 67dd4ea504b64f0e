"""What was counted in a group, as facts: weeks, names, and pages that hardly anybody opened."""

from dataclasses import dataclass
from datetime import date

from bot import guide
from bot.facts import Name, Say
from bot.questions.saved.weekly import LEAST_POINTED, OPENED_ONCE_IN, Passed, Tallied, Week
from bot.questions.shared import name_of
from bot.saved.counts import Asked

__all__ = [
    "CountNames",
    "CountTrend",
    "CountedWeek",
    "NothingCounted",
    "PagePassed",
    "Stats",
    "counted_week",
    "page_passed",
    "stats_told",
]

_MOST_NAMES = 10
_LONG, _LONGER = 8, 26


@dataclass(frozen=True, slots=True)
class NothingCounted:
    """Nothing was counted in so many weeks."""

    span: int


@dataclass(frozen=True, slots=True)
class CountedWeek:
    """What was counted from a Monday on; ``over`` once the Sunday after it has passed."""

    monday: date
    over: bool
    questions: int
    animals: int
    pages: int

    def times(self, kind: Asked) -> int:
        """Return how often a kind was counted."""
        return {
            Asked.QUESTION: self.questions,
            Asked.ANIMAL: self.animals,
            Asked.PAGE: self.pages,
        }[kind]


@dataclass(frozen=True, slots=True)
class CountText:
    """A question, or the title of a page, and how often it was counted."""

    text: str
    times: int


@dataclass(frozen=True, slots=True)
class CountAnimal:
    """An animal and how often it was named."""

    animal: Name
    times: int


@dataclass(frozen=True, slots=True)
class CountMost:
    """What was counted most often, and how much there is beside it."""

    listed: tuple[Say, ...]
    others: int
    other_times: int


@dataclass(frozen=True, slots=True)
class CountNames:
    """All that was counted of a kind, the most frequent first."""

    kind: Asked
    total: int
    names: tuple[CountText | CountAnimal, ...]

    @property
    def most(self) -> CountMost:
        """Return what was counted most often."""
        rest = self.names[_MOST_NAMES:]
        listed = tuple(self.said(one) for one in self.names[:_MOST_NAMES])
        return CountMost(listed, len(rest), sum(one.times for one in rest))

    def said(self, one: CountText | CountAnimal) -> Say:
        """Return one of them with how often."""
        if isinstance(one, CountAnimal):
            return Say("count-animal-times", one)
        return Say("count-page-times" if self.kind is Asked.PAGE else "count-text-times", one)


@dataclass(frozen=True, slots=True)
class CountTrend:
    """The last whole week and the one before."""

    last: Say
    before: Say


@dataclass(frozen=True, slots=True)
class PagePassed:
    """A page of the guide that answers pointed to and that was hardly opened."""

    title: str
    slug: str
    pointed: int
    opened: int
    by: tuple[Say, ...]


@dataclass(frozen=True, slots=True)
class Stats:
    """What was counted; ``span`` are the weeks that were asked about."""

    span: int
    weeks: tuple[CountedWeek, ...]
    names: tuple[CountNames, ...]
    passed: tuple[PagePassed, ...]
    on_site: bool
    questions: int
    animals: int
    pages: int

    @property
    def count(self) -> int:
        """Return how many weeks there are."""
        return len(self.weeks)

    @property
    def since(self) -> date:
        """Return the first Monday."""
        return self.weeks[0].monday

    @property
    def over(self) -> bool:
        """Say whether the newest week is over."""
        return self.weeks[-1].over

    @property
    def more_pages(self) -> int:
        """Return how many pages were hardly opened."""
        return len(self.passed)

    @property
    def least(self) -> int:
        """Return how many answers must point to a page before it is called overlooked."""
        return LEAST_POINTED

    @property
    def once_in(self) -> int:
        """Return for how many of them it was opened once at most."""
        return OPENED_ONCE_IN

    @property
    def other_span(self) -> int:
        """Return another number of weeks to look at."""
        return _LONG if self.span == _LONGER else _LONGER


def stats_told(
    found: Tallied, passed: tuple[PagePassed, ...], span: int, language: str, *, on_site: bool
) -> Stats:
    """Return what was counted as facts; titles of pages are those of a language."""
    return Stats(
        span=span,
        weeks=tuple(map(counted_week, found.weeks)),
        names=tuple(_names(found, kind, language) for kind in Asked if found.names[kind]),
        passed=passed,
        on_site=on_site,
        questions=found.total(Asked.QUESTION),
        animals=found.total(Asked.ANIMAL),
        pages=found.total(Asked.PAGE),
    )


def counted_week(week: Week) -> CountedWeek:
    """Return a week as facts."""
    times = week.times
    return CountedWeek(
        week.monday, week.over, times[Asked.QUESTION], times[Asked.ANIMAL], times[Asked.PAGE]
    )


def _names(found: Tallied, kind: Asked, language: str) -> CountNames:
    named = tuple(_named(kind, name, times, language) for name, times in found.names[kind])
    return CountNames(kind, found.total(kind), named)


def _named(kind: Asked, name: str, times: int, language: str) -> CountText | CountAnimal:
    if kind is Asked.ANIMAL:
        return CountAnimal(name_of(name), times)
    return CountText(_title(name, language) if kind is Asked.PAGE else name, times)


def _title(slug: str, language: str) -> str:
    """Return the title of a guide page; one that is gone keeps its short name."""
    return next((page.title for page in guide.pages(language) if page.slug == slug), slug)


def page_passed(page: Passed, language: str) -> PagePassed:
    """Return a page that was hardly opened as facts."""
    by = tuple(Say("count-text-times", CountText(name, times)) for name, times in page.by)
    return PagePassed(_title(page.page, language), page.page, page.pointed, page.opened, by)
