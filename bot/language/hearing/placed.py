"""Parts of a text in order of their places, found again without walking the whole text."""

import re
from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Iterator, Sequence
from operator import attrgetter
from typing import Generic, Protocol, TypeVar

__all__ = ["Placed", "Spanned", "Words"]


class Spanned(Protocol):
    """Anything that stands from a start to an end."""

    @property
    def start(self) -> int:
        """The place of the first character."""

    @property
    def end(self) -> int:
        """The place after the last character."""


_START = attrgetter("start")
Kind = TypeVar("Kind", bound=Spanned)


class Placed(Generic[Kind]):
    """Parts that do not overlap, in order."""

    def __init__(self, parts: Sequence[Kind]) -> None:
        self._parts = sorted(parts, key=_START)
        self._starts = [part.start for part in self._parts]
        self._ends = [part.end for part in self._parts]

    def __iter__(self) -> Iterator[Kind]:
        return iter(self._parts)

    def __len__(self) -> int:
        return len(self._parts)

    def within(self, start: int, end: int) -> Sequence[Kind]:
        """Return the parts that start at ``start`` or later and end at ``end`` or before."""
        return self._parts[bisect_left(self._starts, start) : bisect_right(self._ends, end)]

    def first(self, at: int, until: int) -> Kind | None:
        """Return the first part that starts at ``at`` or later, if it ends by ``until``."""
        place = bisect_left(self._starts, at)
        found = self._parts[place] if place < len(self._parts) else None
        return found if found and found.end <= until else None

    def last(self, at: int, from_: int) -> Kind | None:
        """Return the last part that ends at ``at`` or before, if it starts from ``from_`` on."""
        place = bisect_right(self._ends, at) - 1
        found = self._parts[place] if place >= 0 else None
        return found if found and found.start >= from_ else None

    def touching(self, start: int, end: int) -> Sequence[Kind]:
        """Return the parts that share a character with this span."""
        return self._parts[bisect_right(self._ends, start) : bisect_left(self._starts, end)]

    def before(self, at: int, from_: int = 0) -> Iterator[Kind]:
        """Return the parts between ``from_`` and ``at``, the nearest first."""
        first, last = bisect_left(self._starts, from_), bisect_right(self._ends, at)
        return (self._parts[i] for i in range(last - 1, first - 1, -1))


class Words:
    """The words of a text in order, found again by their places."""

    def __init__(self, matches: Iterable[re.Match[str]]) -> None:
        spans = [(match[0], *match.span()) for match in matches]
        self._texts = [text for text, _, _ in spans]
        self._starts = [start for _, start, _ in spans]
        self._ends = [end for _, _, end in spans]

    def __iter__(self) -> Iterator[str]:
        return iter(self._texts)

    def around(self, at: int) -> tuple[int, int]:
        """Return how many words begin before a place, and how many end there or before."""
        return bisect_left(self._starts, at), bisect_right(self._ends, at)

    def within(self, start: int, end: int) -> list[str]:
        """Return the words from ``start`` to ``end``."""
        return self._texts[bisect_left(self._starts, start) : bisect_right(self._ends, end)]
