"""Reasons to stop before a lamp is changed, as messages. Words: ``guard.ftl``."""

from collections.abc import Iterable
from dataclasses import dataclass

from bot.facts import Say, Temp, degrees
from bot.layered import Care, Weight
from calc.heat.guards import WOOD_LIMIT_C, Guard

__all__ = ["FIRST_PUT_RIGHT", "Tripped", "guard_care", "tripped"]

FIRST_PUT_RIGHT = (Guard.ABOVE_HOLDER_MARK, Guard.WOOD_TOO_HOT, Guard.LAMP_WITHIN_REACH)
"""What has to be put right before a lamp is moved or changed."""


@dataclass(frozen=True, slots=True)
class Tripped:
    """A guard that a lamp trips, and the most that wood may have."""

    guard: Guard
    wood: Temp


def tripped(guard: Guard) -> Tripped:
    """Return a guard as facts."""
    return Tripped(guard, degrees(WOOD_LIMIT_C))


def guard_care(guards: Iterable[Guard]) -> tuple[Care, ...]:
    """Return the cautions of the guards that are tripped."""
    return tuple(_care(tripped(guard)) for guard in guards)


def _care(facts: Tripped) -> Care:
    return Care(
        Say.by("guard-stop", facts.guard, facts), Say.by("guard-short", facts.guard), Weight.STEP
    )
