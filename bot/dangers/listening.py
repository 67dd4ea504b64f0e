"""Hazards that are told in words."""

from bot.reply import Alarm

__all__ = ["listen"]


def listen(text: str) -> tuple[Alarm, ...]:
    """Return the hazards that a text tells, the one that speaks first before the others."""
    del text
    return ()
