"""A picture as a reply holds it: its words, and what is drawn of it, once somebody looks."""

from collections.abc import Callable
from functools import partial
from typing import TYPE_CHECKING, ParamSpec

if TYPE_CHECKING:
    from bot.drawing import Drawing

__all__ = ["Picture"]

_Given = ParamSpec("_Given")


class Picture:
    """A picture that can be drawn for this reply, told in words.

    ``alt`` are the words, ``drawing`` is what a renderer draws: not part of the JSON, and None in
    a reply that was read from it.
    """

    __slots__ = ("_told", "_work")

    def __init__(self, alt: str, drawing: "Drawing | None" = None) -> None:
        self._told = alt, drawing
        self._work: Callable[[], Picture] | None = None

    @classmethod
    def later(
        cls, work: Callable[_Given, "Picture"], *given: _Given.args, **named: _Given.kwargs
    ) -> "Picture":
        """Return the picture that ``work`` makes of what is given, once somebody looks at it.

        Most answers are read without their picture, which takes longer than all the rest.
        """
        picture = cls("")
        picture._work = partial(work, *given, **named)
        return picture

    @property
    def alt(self) -> str:
        """Return the picture in words."""
        return self._looked_at()[0]

    @property
    def drawing(self) -> "Drawing | None":
        """Return what a renderer draws."""
        return self._looked_at()[1]

    def _looked_at(self) -> "tuple[str, Drawing | None]":
        work = self._work
        if work is not None:
            self._told = work()._looked_at()
            self._work = None
        return self._told

    def __eq__(self, other: object) -> bool:
        return isinstance(other, Picture) and self._looked_at() == other._looked_at()

    def __hash__(self) -> int:
        return hash(self._looked_at())

    def __repr__(self) -> str:
        return f"Picture(alt={self.alt!r})"

    def __reduce__(self) -> tuple[type["Picture"], "tuple[str, Drawing | None]"]:
        return Picture, self._looked_at()
