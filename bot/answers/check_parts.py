"""One part of a set-up that was checked: its verdict, why, what to do, what is missing."""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import IntEnum, StrEnum

from bot.reply import Value

__all__ = ["Mark", "Part", "Todo", "Urgency", "in_order"]


class Mark(StrEnum):
    """The verdict on a part."""

    FINE = "fine"
    CHANGE = "change"
    CANNOT_TELL = "cannot tell"


class Urgency(IntEnum):
    """What is done first: danger, then what burns or blinds, then what warms, then the rest."""

    DANGER = 0
    WRONG_LAMP = 1
    TOO_MUCH_UV = 2
    BASKING = 3
    COOL_END = 4
    TOO_LITTLE_UV = 5
    REST = 6
    MEASURE = 7


@dataclass(frozen=True, slots=True)
class Todo:
    """One thing to do."""

    urgency: Urgency
    text: str


@dataclass(frozen=True, slots=True)
class Part:
    """One part of the set-up, judged."""

    name: str
    mark: Mark
    why: str
    todo: tuple[Todo, ...] = ()
    missing: tuple[str, ...] = ()
    values: tuple[Value, ...] = ()
    sources: tuple[str, ...] = ()


def in_order(parts: Iterable[Part]) -> tuple[str, ...]:
    """Return what to do, the most urgent first, each once."""
    todo = [item for part in parts for item in part.todo]
    return tuple(dict.fromkeys(item.text for item in sorted(todo, key=lambda item: item.urgency)))
