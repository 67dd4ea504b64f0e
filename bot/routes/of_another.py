"""What was asked of an animal that nobody knows, or has no figures for, to be asked of another."""

from bot.command import Routed
from bot.queries.question import Question

__all__ = ["of_another"]

# What of the needs of another animal answers a question that has no figures for this one.
_OF_NEEDS = {"needs": "", "tube": "uvi", "distance": "uvi", "uvi": "uvi", "night": "night"}
# What says nothing of an animal.
_NO_NUMBERS = frozenset(("guide", "lamp", "about", "convert", "help"))


def of_another(found: Routed) -> Question | None:
    """Return a question for whichever animal is told next; None: it is of no animal."""
    values = {name: value for name, value in found.values.items() if name != "animal"}
    if not values and found.command in _OF_NEEDS:
        values = {"about": about} if (about := _OF_NEEDS[found.command]) else {}
        return Question("needs", values)
    if found.command in _NO_NUMBERS:
        return None
    return Question(found.command, values)
