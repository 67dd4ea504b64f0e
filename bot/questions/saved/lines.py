"""What the lists of a group share: their lines, how many there are, and who did it."""

from dataclasses import dataclass
from typing import Any

from bot.desk import LOCAL
from bot.facts import Say

__all__ = ["Doer", "Lines", "doer_said"]


class Lines:
    """Facts that are lines of a list."""

    lines: tuple[Any, ...]

    @property
    def count(self) -> int:
        """Return how many lines there are."""
        return len(self.lines)


@dataclass(frozen=True, slots=True)
class Doer:
    """The number of a person."""

    person: str


def doer_said(who: int | None) -> Say:
    """Return who did something; None once that person asked to be forgotten."""
    if who is None:
        return Say("log-forgotten")
    return Say("log-local") if who == LOCAL else Say("log-person", Doer(str(who)))
