"""What a question still needs, each thing as a message: ``words/<language>/lack.ftl``."""

from dataclasses import dataclass

from bot.facts import Say

__all__ = ["Behind", "lacked"]

# The questions in which an option of this name is something else.
_OF_ONE = {
    ("distance", "basking"): Say("lack-distance-lamp"),
    ("distance", "watts"): Say("lack-distance-lamp"),
    ("room", "night"): Say("lack-room-night"),
    ("material", "surface"): Say("lack-material-surface"),
}


@dataclass(frozen=True, slots=True)
class Behind:
    """A refusal behind what must be known before it."""

    before: Say
    refusal: Say


def lacked(option: str, command: str) -> Say:
    """Return what an option of a question is, to be asked for."""
    return _OF_ONE.get((option, command)) or Say.of("lack", option)
