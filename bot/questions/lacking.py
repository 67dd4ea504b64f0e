"""What a question still needs, each thing as a message: ``words/<language>/lack.ftl``."""

from dataclasses import dataclass

from bot.facts import Say
from bot.questions.record import record_of

__all__ = ["Behind", "lacked"]


@dataclass(frozen=True, slots=True)
class Behind:
    """A refusal behind what must be known before it."""

    before: Say
    refusal: Say


def lacked(option: str, command: str) -> Say:
    """Return what an option of a question is, to be asked for."""
    return record_of(command).lack(option).say
