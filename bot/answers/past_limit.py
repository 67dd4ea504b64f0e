"""A wish past a limit: it is not worked towards, and the animal's own range is told instead."""

from collections.abc import Iterator
from contextlib import contextmanager

from bot.language.errors import NotUnderstoodError
from bot.reply import Alarm

__all__ = ["PastLimitError", "alarms_of", "told_before"]


class PastLimitError(NotUnderstoodError):
    """What was asked for lies past a limit; ``alarms`` say which hazard it would be.

    ``before`` must be known before the wish: that the readings themselves cannot be.
    """

    def __init__(
        self, read: str, accepted: str, example: str, option: str, alarms: tuple[Alarm, ...]
    ) -> None:
        self.before = ""
        super().__init__(read, accepted, example, option)
        self.alarms = alarms

    def sentence(self) -> str:
        """Return why the wish is refused, behind what must be known first."""
        return f"{self.before} {super().sentence()}".lstrip()


@contextmanager
def told_before(warning: str) -> Iterator[None]:
    """Have a wish that is refused told behind what must be known of the readings."""
    try:
        yield
    except PastLimitError as error:
        error.before = warning
        raise


def alarms_of(error: Exception) -> tuple[Alarm, ...]:
    """Return the hazards that a refusal tells, in any of its causes."""
    found: tuple[Alarm, ...] = getattr(error, "alarms", ())
    return found
