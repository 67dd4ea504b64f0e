"""A question that is refused in messages, with an example that leads on."""

from collections.abc import Callable
from dataclasses import replace
from typing import Any

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.layered import Layered
from bot.reply import Alarm

__all__ = ["RefusedError"]


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
