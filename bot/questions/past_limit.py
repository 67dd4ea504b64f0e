"""A wish past a limit: it is not worked towards, and the animal's own range is told instead."""

from collections.abc import Iterator
from contextlib import contextmanager

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.reply import Alarm

__all__ = ["PastLimitError", "alarms_of", "told_before"]


class PastLimitError(NotUnderstoodError):
    """What was asked for lies past a limit; ``alarms`` say which hazard it would be.

    ``before`` must be known before the wish: that the readings themselves cannot be.
    """

    def __init__(
        self, read: str, accepted: Say, example: str, option: str, alarms: tuple[Alarm, ...]
    ) -> None:
        self.before: tuple[Say, ...] = ()
        super().__init__(read, accepted, example, option)
        self.alarms = alarms


@contextmanager
def told_before(*warnings: Say) -> Iterator[None]:
    """Have a wish that is refused told behind what must be known of the readings."""
    try:
        yield
    except PastLimitError as error:
        error.before = warnings
        raise


def alarms_of(error: Exception) -> tuple[Alarm, ...]:
    """Return the hazards that a refusal tells, in any of its causes."""
    found: tuple[Alarm, ...] = getattr(error, "alarms", ())
    return found
