"""What the form of single steps knows so far, in the order in which it was told.

It stands in the address alone: nothing is kept, every page can be gone back to and bookmarked.
"""

from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import Self
from urllib.parse import urlencode

__all__ = [
    "ASKED",
    "FIRST_UNIT",
    "KIND",
    "NOW",
    "QUESTION",
    "STEPS",
    "TOPIC",
    "UNKNOWN",
    "Trail",
]

STEPS = "steps.html"
UNKNOWN = "?"
"""Stands for a value that the asker does not know."""

FIRST_UNIT, KIND, TOPIC, QUESTION, ASKED, NOW = "first", "group", "topic", "q", "asked", "now"
_SHOWN = (FIRST_UNIT, ASKED, NOW)
"""What says how a step is shown; all else is what was told."""

_MOST, _LONGEST = 40, 200


@dataclass(frozen=True, slots=True)
class Trail:
    """Names with their values, each name once, the latest last."""

    items: tuple[tuple[str, str], ...] = ()

    @classmethod
    def of(cls, items: Iterable[tuple[str, str]]) -> Self:
        """Return the trail of an address; what is too long for any value is cut."""
        told: dict[str, str] = {}
        for name, value in list(items)[:_MOST]:
            if text := " ".join(value.split())[:_LONGEST]:
                told.pop(name, None)
                told[name] = text
        return cls(tuple(told.items()))

    def get(self, name: str) -> str:
        """Return what was told of a name; nothing where it was not."""
        return dict(self.items).get(name, "")

    def put(self, name: str, value: str) -> Self:
        """Return the trail with one more value, in place of an earlier one."""
        return replace(self, items=(*self.without(name).items, (name, value)))

    def without(self, *names: str) -> Self:
        """Return the trail without some names."""
        return replace(self, items=tuple(one for one in self.items if one[0] not in names))

    @property
    def before(self) -> Self | None:
        """Return the trail before its last value was told; None at its beginning."""
        if self.get(ASKED):
            return self.without(ASKED)
        told = [name for name, _ in self.items if name not in _SHOWN]
        return self.without(told[-1], NOW) if told else None

    @property
    def address(self) -> str:
        """Return the address of its step."""
        return f"{STEPS}?{urlencode(self.items)}" if self.items else STEPS
