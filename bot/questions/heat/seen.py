"""What the picture of an answer about warmth shows."""

from dataclasses import dataclass

from bot.facts import Length, Name, Say
from calc.judgement import Verdict
from calc.quantities import Quantity

__all__ = ["Leaves", "Pictured", "Seen"]


@dataclass(frozen=True, slots=True)
class Seen:
    """What is wanted at a place and was read there; its bar has the ranges [degC] that are known.

    ``ends`` are right, ``met`` were read, ``below`` is where heat begins.
    """

    quantity: Quantity
    label: Say
    wanted: Say
    read: Say | None = None
    verdict: Verdict | None = None
    ends: tuple[float, float] | None = None
    met: tuple[float, float] | None = None
    below: float | None = None


@dataclass(frozen=True, slots=True)
class Leaves:
    """How much warmth leaves through the walls, and with the air."""

    walls: Say
    air: Say


@dataclass(frozen=True, slots=True)
class Pictured:
    """A box of an animal; a lamp over its basking place is moved up by ``moved_m`` [m]."""

    over: Say
    head: Say
    seen: tuple[Seen, ...]
    animal: Name | None = None
    lamp: Length | None = None
    moved_m: float = 0.0
    leaves: Leaves | None = None
