"""How a question is refused: in messages, or for want of an animal or of its figures."""

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.layered import Layered
from bot.reply import Alarm

__all__ = ["ANY_ANIMAL", "AnimalNotNamedError", "RefusedError", "WithoutFiguresError"]

ANY_ANIMAL = "bearded-dragon".replace("-", " ")
"""Stands in examples for the animal that the asker keeps; never in an answer."""


class RefusedError(NotUnderstoodError):
    """A question is not worked out; ``told`` says why, in any language.

    ``facts`` have an ``example``, which the door mends until it leads to an answer, ``option`` is
    what it is for, and ``alarms`` are what cannot wait.
    """

    def __init__(
        self,
        facts: Any,
        tell: Callable[[Any], Layered],
        option: str,
        alarms: tuple[Alarm, ...] = (),
    ) -> None:
        super().__init__("", Say("wanted-question"), facts.example, option)
        self._facts, self._tell, self.alarms = facts, tell, alarms

    def told(self, example: str) -> Layered:
        """Return the answer that says no, with this example beside it."""
        return self._tell(replace(self._facts, example=example))


class AnimalNotNamedError(NotUnderstoodError):
    """No animal was named, none is usual here, and the answer depends on it.

    ``alarms`` are what must not wait until the animal is named.
    """

    def __init__(self, *alarms: Alarm) -> None:
        self.alarms = alarms
        super().__init__("", Say("wanted-animal"), f"animal:{ANY_ANIMAL}", "animal")


class WithoutFiguresError(NotUnderstoodError):
    """An animal was named that is known here by its name alone, as ``name``."""

    def __init__(self, name: str) -> None:
        self.name = name
        super().__init__(name, Say("wanted-animal-with-figures"), f"animal:{ANY_ANIMAL}", "animal")
