"""Boards as values: a pinned summary, one a topic and channel."""

from enum import StrEnum

from bot.saved.group import AnimalSlug
from bot.saved.reminders import Trouble
from bot.saved.values import Kept

__all__ = ["MOST_BOARDS", "Board", "BoardState", "Look", "Topic"]

MOST_BOARDS = 20


class Topic(StrEnum):
    """What a board is about."""

    DISTANCES = "distances"
    TEMPERATURES = "temperatures"
    FIRST_DAY = "first-day"
    GUIDE = "guide"


class BoardState(StrEnum):
    """What is wanted of a board: to be shown, or to be taken down."""

    SHOWN = "shown"
    LEAVING = "leaving"


class Board(Kept):
    """A board; ``message`` is None until it is posted.

    ``fingerprint`` is that of the content last shown; ``pinned`` what Discord last confirmed;
    ``wish`` counts what was asked of it, so that a wish during the work is not lost.
    """

    id: int
    server: int
    channel: int
    topic: Topic
    animal: AnimalSlug | None
    message: int | None
    pinned: bool
    fingerprint: str
    state: BoardState
    trouble: Trouble
    wish: int


class Look(Kept):
    """A board claimed to be looked at.

    ``unsure`` says that another process had it and may have posted it.
    """

    board: Board
    unsure: bool
