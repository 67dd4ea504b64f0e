"""A board as every front would show it: its content in the group's language, and its mark."""

import hashlib

from bot.answering import in_words
from bot.preferences import Context
from bot.questions.saved.board_content import board_of, tell_board
from bot.reply import PartName, Reply
from bot.saved.boards import Topic

__all__ = ["board_reply", "fingerprint"]


def board_reply(topic: Topic, animal: str | None, context: Context) -> Reply:
    """Return what a board of this topic says, all of it in sight; some topics need an animal."""
    told = in_words(tell_board(board_of(topic, animal, context)), context)
    return told.model_copy(update={"opened": tuple(PartName)})


def fingerprint(reply: Reply) -> str:
    """Return what tells two contents of a board apart."""
    return hashlib.sha256(reply.model_dump_json().encode()).hexdigest()
