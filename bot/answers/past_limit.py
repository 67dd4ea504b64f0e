"""A wish past a limit: it is not worked towards, and the animal's own range is told instead."""

from bot.language.errors import NotUnderstoodError
from bot.reply import Alarm

__all__ = ["PastLimitError", "alarms_of"]


class PastLimitError(NotUnderstoodError):
    """What was asked for lies past a limit; ``alarms`` say which hazard it would be."""

    def __init__(
        self, read: str, accepted: str, example: str, option: str, alarms: tuple[Alarm, ...]
    ) -> None:
        super().__init__(read, accepted, example, option)
        self.alarms = alarms


def alarms_of(error: Exception) -> tuple[Alarm, ...]:
    """Return the hazards that a refusal tells, in any of its causes."""
    found: tuple[Alarm, ...] = getattr(error, "alarms", ())
    return found
