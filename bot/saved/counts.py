"""Counts as values: how often something was asked for in a week."""

from datetime import date
from enum import StrEnum

from bot.saved.values import Kept

__all__ = ["WEEKS_KEPT", "Asked", "Count", "monday_of", "week_of"]

WEEKS_KEPT = 104


class Asked(StrEnum):
    """What is counted."""

    QUESTION = "question"
    ANIMAL = "animal"
    PAGE = "page"


class Count(Kept):
    """How often something was asked for in one week."""

    week: str
    kind: Asked
    name: str
    times: int


def week_of(day: date) -> str:
    """Return a week as ISO 8601 names it.

    >>> week_of(date(2027, 1, 1))
    '2026-W53'
    """
    year, week, _ = day.isocalendar()
    return f"{year}-W{week:02d}"


def monday_of(week: str) -> date:
    """Return the first day of a week that ``week_of`` named.

    >>> monday_of("2026-W53")
    datetime.date(2026, 12, 28)
    """
    year, _, number = week.partition("-W")
    return date.fromisocalendar(int(year), int(number), 1)
