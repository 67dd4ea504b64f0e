"""Why a question about saved data is not answered. Words: ``words/<language>/saved.ftl``."""

from dataclasses import dataclass
from enum import Enum, auto

from bot.facts import Say
from bot.language.shown import shown
from bot.questions.saved.unable import unable
from bot.refusal import RefusedError

__all__ = ["Unkept", "Why", "refused"]

_MOST_KNOWN = 5


class Why(Enum):
    """Why there is no answer."""

    NO_ENCLOSURE = auto()
    OTHER_ENCLOSURE = auto()
    WHICH_ENCLOSURE = auto()
    NO_READING = auto()
    CANNOT_BE = auto()
    TO_COME = auto()
    FEW_DAYS = auto()
    OTHER_DAY = auto()
    OTHER_LAMP = auto()
    NO_STRENGTH = auto()
    NO_REMINDER = auto()
    OTHER_REMINDER = auto()
    NO_CHANNEL = auto()
    NO_RIGHT = auto()


@dataclass(frozen=True, slots=True)
class Unkept:
    """What was read, and what there is in its place."""

    why: Why
    read: str
    option: str
    known: tuple[str, ...]


def refused(
    command: str,
    why: Why,
    example: str,
    option: str = "",
    read: str = "",
    known: tuple[str, ...] = (),
) -> RefusedError:
    """Return the refusal of a question, with one that works."""
    facts = Unkept(why, shown(read), option, known[:_MOST_KNOWN])
    there = (Say("saved-known", facts),) if facts.known else ()
    return unable(
        command, Say.by("saved-no", facts.why, facts), *there, example=example, option=option
    )
