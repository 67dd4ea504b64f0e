"""What the lists of a group share: their lines, how many there are, and who did it."""

from collections.abc import Iterable
from dataclasses import dataclass
from typing import Any

from bot.desk import LOCAL
from bot.facts import Say

__all__ = ["Doer", "Lines", "doer_said", "people_in"]


class Lines:
    """Facts that are lines of a list; ``people`` and ``channels`` are told in them by number."""

    lines: tuple[Any, ...]
    people: frozenset[int]
    channels: frozenset[int]

    @property
    def count(self) -> int:
        """Return how many lines there are."""
        return len(self.lines)


@dataclass(frozen=True, slots=True)
class Doer:
    """The number of a person."""

    person: str


def people_in(whos: Iterable[int | None]) -> frozenset[int]:
    """Return the people that lines tell of."""
    return frozenset(who for who in whos if who not in (None, LOCAL))


def doer_said(who: int | None) -> Say:
    """Return who did something; None once that person asked to be forgotten."""
    if who is None:
        return Say("log-forgotten")
    return Say("log-local") if who == LOCAL else Say("log-person", Doer(str(who)))
