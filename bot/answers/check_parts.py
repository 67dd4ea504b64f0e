"""One part of a set-up that was checked: its verdict, why, what to do, what is missing."""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import IntEnum, StrEnum

from bot.reply import Alarm, Value
from calc.setup.set_up import Movement, Spot

__all__ = ["Mark", "Part", "Todo", "Urgency", "first_of", "in_order"]

_FIRST_THINGS = 3


class Mark(StrEnum):
    """The verdict on a part."""

    FINE = "fine"
    CHANGE = "change"
    CANNOT_TELL = "cannot tell"


class Urgency(IntEnum):
    """What is done first: fire, danger, the vet, then what burns or blinds, warms, and the rest."""

    FIRE = 0
    DANGER = 1
    VET = 2
    WRONG_LAMP = 3
    TOO_MUCH_UV = 4
    BASKING = 5
    COOL_END = 6
    TOO_LITTLE_UV = 7
    REST = 8
    MEASURE = 9


@dataclass(frozen=True, slots=True)
class Todo:
    """One thing to do; ``change`` is the same as a movement, where it is one."""

    urgency: Urgency
    text: str
    change: Movement | None = None

    @property
    def cannot_wait(self) -> bool:
        """Say whether this comes before everything about light and warmth."""
        return self.urgency <= Urgency.VET

    @property
    def short(self) -> str:
        """Return what to do without its reason, to go on with in a sentence."""
        text = self.text.partition(": ")[0].partition(". ")[0].rstrip(".")
        return f"{text[0].lower()}{text[1:]}"


@dataclass(frozen=True, slots=True)
class Part:
    """One part of the set-up, judged; ``spot`` is what is read or worked out there."""

    name: str
    mark: Mark
    why: str
    todo: tuple[Todo, ...] = ()
    missing: tuple[str, ...] = ()
    values: tuple[Value, ...] = ()
    sources: tuple[str, ...] = ()
    alarms: tuple[Alarm, ...] = ()
    spot: Spot | None = None


def in_order(parts: Iterable[Part]) -> tuple[Todo, ...]:
    """Return what to do, the most urgent first, each once."""
    todo = sorted((item for part in parts for item in part.todo), key=lambda item: item.urgency)
    return tuple({item.text: item for item in reversed(todo)}.values())[::-1]


def first_of(todo: tuple[Todo, ...]) -> tuple[Todo, ...]:
    """Return the first three things to do, and all that cannot wait, however many."""
    return todo[: max(_FIRST_THINGS, sum(item.cannot_wait for item in todo))]
