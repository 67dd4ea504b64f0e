"""A board as every front would show it: its content in the group's language, and its mark."""

import hashlib
from datetime import date

from bot.answering import in_words
from bot.preferences import Context
from bot.questions.saved.board_content import board_of, tell_board, with_news
from bot.questions.saved.targets import targets_of
from bot.reply import PartName, Reply
from bot.saved.boards import NEWS_FOR, Board, BoardNews, BoardTold, Topic
from bot.saved.group import Own
from bot.saved.targets import moved_between

__all__ = ["board_reply", "fingerprint", "with_targets"]


def board_reply(
    topic: Topic, animal: str | None, context: Context, news: BoardNews | None = None
) -> Reply:
    """Return what a board of this topic says, all of it in sight; some topics need an animal."""
    layered = with_news(tell_board(board_of(topic, animal, context)), news)
    told = in_words(layered, context)
    return told.model_copy(update={"opened": tuple(PartName)})


def with_targets(board: Board, own: Own, today: date) -> Board:
    """Return a board with the targets that it shows today, and what changed of them lately."""
    if board.animal is None:
        return board
    now = BoardTold(targets=targets_of(board.animal, own))
    news = board.news
    moved = moved_between(board.told.targets, now.targets) if board.told else ()
    if moved:
        news = BoardNews(day=today, moved=moved)
    elif news is not None and news.day + NEWS_FOR <= today:
        news = None
    return board.model_copy(update={"told": now, "news": news})


def fingerprint(reply: Reply) -> str:
    """Return what tells two contents of a board apart."""
    return hashlib.sha256(reply.model_dump_json().encode()).hexdigest()
