"""One part of a set-up that was checked: its verdict, why, what to do, what is missing."""

from collections.abc import Iterable
from dataclasses import dataclass
from enum import Enum, IntEnum, auto

from bot.facts import Figure, Say
from bot.questions.setup.white import WhiteTold
from bot.reply import Alarm
from calc.animal import Animal
from calc.heat.readings import PLACES, target_at
from calc.judgement import Judged
from calc.quantities import Quantity
from calc.setup.set_up import Movement, Sign, Spot, sign_of

__all__ = [
    "Marked",
    "Missing",
    "Part",
    "Piece",
    "Todo",
    "Urgency",
    "find_out",
    "first_of",
    "in_order",
    "mark_of",
    "piece_of",
    "rests_on_memory",
    "sign",
]

_FIRST_THINGS = 3


class Piece(Enum):
    """What of a set-up is judged."""

    SAFETY = auto()
    UV = auto()
    LAMP_TIME = auto()
    BASKING = auto()
    COOL = auto()
    WARM = auto()
    APART = auto()
    HOURS = auto()
    NIGHT = auto()
    WATER = auto()
    LAMPS = auto()
    SUN = auto()


class Missing(Enum):
    """What nobody told, and what would tell more than anything else."""

    TUBE = auto()
    DISTANCE = auto()
    REFLECTOR = auto()
    SCREEN = auto()
    TUBE_LENGTH = auto()
    METER = auto()
    BASKING = auto()
    COOL = auto()
    HOURS = auto()
    NIGHT = auto()
    WATER = auto()
    LAMPS = auto()
    BESIDE = auto()


class Urgency(IntEnum):
    """What is done first: danger, then what burns or blinds, warms, and the rest."""

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
    """One thing to do, whole and in a few words; ``change`` is the same as a movement."""

    urgency: Urgency
    say: Say
    short: Say
    change: Movement | None = None

    @property
    def cannot_wait(self) -> bool:
        """Say whether this comes before everything about light and warmth."""
        return self.urgency is Urgency.DANGER

    @property
    def is_reading(self) -> bool:
        """Say whether this only tells more, and changes nothing."""
        return self.urgency is Urgency.MEASURE


@dataclass(frozen=True, slots=True)
class Part:
    """One part of the set-up, judged; ``spot`` is what is read or worked out there.

    ``head`` says in a few words what is wrong, with its figure; ``read`` and ``aim`` are the cells
    of the table, and ``more`` goes on after ``why``. ``depends`` says on what the verdict hangs
    that nobody told; then ``more`` has the verdict for each way it may be. ``brief`` is
    worth a line where all is fine. ``needless``: a place that this animal needs not at all.
    ``white`` is how bright white lamps make it, which has no verdict.
    """

    piece: Piece
    sign: Sign
    why: Say
    head: Say | None = None
    read: Say | None = None
    aim: Say | None = None
    more: tuple[Say, ...] = ()
    todo: tuple[Todo, ...] = ()
    missing: tuple[Missing, ...] = ()
    values: tuple[tuple[str, Figure], ...] = ()
    sources: tuple[str, ...] = ()
    alarms: tuple[Alarm, ...] = ()
    spot: Spot | None = None
    depends: Say | None = None
    brief: Say | None = None
    needless: bool = False
    white: WhiteTold | None = None


@dataclass(frozen=True, slots=True)
class Marked:
    """The verdict on a part in one word."""

    sign: Sign


def piece_of(part: Part) -> Say:
    """Return the name of a part."""
    return Say.by("check-piece", part.piece)


def mark_of(part: Part) -> Say:
    """Return the verdict on a part in one word, as table and picture say it."""
    if part.needless and part.sign is Sign.FINE:
        return Say("check-needless")
    return Say("check-depends" if part.depends else "check-sign", Marked(part.sign))


def sign(judged: Judged | None) -> Sign:
    """Return what a part is marked with: a change only where something is sure."""
    return sign_of(judged.verdict if judged else None)


def rests_on_memory(parts: Iterable[Part], animal: Animal) -> bool:
    """Say whether something is judged by a range from memory alone."""
    read = {part.spot.quantity for part in parts if part.spot is not None}
    wanted = [target_at(place, animal) for place in PLACES if place in read]
    wanted += [animal.uvi] if Quantity.UVI in read else []
    return any(target is not None and target.is_unchecked for target in wanted)


def find_out(missing: Missing) -> Todo:
    """Return that something is to be found out."""
    return Todo(Urgency.MEASURE, Say.by("check-find", missing), Say.by("check-find-short", missing))


def in_order(parts: Iterable[Part]) -> tuple[Todo, ...]:
    """Return what to do, the most urgent first, each once."""
    todo = sorted((item for part in parts for item in part.todo), key=lambda item: item.urgency)
    return tuple({item.say: item for item in reversed(todo)}.values())[::-1]


def first_of(todo: tuple[Todo, ...]) -> tuple[Todo, ...]:
    """Return the first three things to do, and all that cannot wait, however many."""
    return todo[: max(_FIRST_THINGS, sum(item.cannot_wait for item in todo))]
