"""A conversation: what a line means after the answer before it."""

from bot.dialogue.asking import said_beside
from bot.dialogue.kept import START, Dialogue, Next, after, told_before
from bot.dialogue.known import known_told, wishes_known
from bot.dialogue.turns import next_line, said_in, told_as_meant, turn

__all__ = [
    "START",
    "Dialogue",
    "Next",
    "after",
    "known_told",
    "next_line",
    "said_beside",
    "said_in",
    "told_as_meant",
    "told_before",
    "turn",
    "wishes_known",
]
