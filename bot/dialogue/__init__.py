"""A conversation: what a line means after the answer before it."""

from bot.dialogue.known import known_told, wishes_known
from bot.dialogue.turns import (
    START,
    Dialogue,
    Next,
    after,
    next_line,
    told_as_meant,
    told_before,
    turn,
)

__all__ = [
    "START",
    "Dialogue",
    "Next",
    "after",
    "known_told",
    "next_line",
    "told_as_meant",
    "told_before",
    "turn",
    "wishes_known",
]
