"""A board as every front would show it: its content in the group's language, and its mark."""

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from datetime import date

from bot.answering import in_words
from bot.drawing import fingerprint as drawn
from bot.preferences import Context
from bot.questions.saved.board_content import board_of, each_alone, tell_board, with_news
from bot.questions.saved.targets import targets_of
from bot.reply import PartName, Picture, Reply
from bot.saved.boards import NEWS_FOR, Board, BoardNews, BoardTold, Topic
from bot.saved.group import Own
from bot.saved.targets import moved_between

__all__ = ["BoardShown", "board_shown", "with_targets"]


@dataclass(frozen=True, slots=True)
class BoardShown:
    """What a board shows: its words, and a picture for each of its animals."""

    reply: Reply
    pictures: tuple[Picture, ...]

    @property
    def fingerprint(self) -> str:
        """Return what tells two contents of a board apart, pictures included."""
        marks = [self.reply.model_dump_json()]
        marks += [drawn(one.drawing) for one in self.pictures if one.drawing is not None]
        return hashlib.sha256(" ".join(marks).encode()).hexdigest()


def board_shown(
    topic: Topic, animals: Sequence[str], context: Context, news: BoardNews | None = None
) -> BoardShown:
    """Return what a board of this topic shows, all in sight; some topics need an animal."""
    facts = board_of(topic, animals, context)
    told = in_words(with_news(tell_board(facts), news, several=len(animals) > 1), context)
    alone = [tell_board(one) for one in each_alone(facts)]
    pictures = [in_words(one, context).picture for one in alone if one.picture]
    return BoardShown(
        told.model_copy(update={"opened": tuple(PartName)}),
        tuple(picture for picture in pictures if picture is not None),
    )


def with_targets(board: Board, own: Own, today: date) -> Board:
    """Return a board with the targets that it shows today, and what changed of them lately."""
    if not board.animals:
        return board
    now = BoardTold(targets={animal: targets_of(animal, own) for animal in board.animals})
    news, told = board.news, board.told.targets if board.told else {}
    moved = {
        animal: changed
        for animal, targets in now.targets.items()
        if (changed := moved_between(told.get(animal, {}), targets))
    }
    if moved:
        news = BoardNews(day=today, moved=moved)
    elif news is not None and news.day + NEWS_FOR <= today:
        news = None
    return board.model_copy(update={"told": now, "news": news})
