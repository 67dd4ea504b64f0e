"""Boards as values: a pinned summary, one a topic and channel."""

from datetime import date, timedelta
from enum import StrEnum
from typing import Annotated

from pydantic import AfterValidator, Field

from bot.saved.group import AnimalSlug, OwnSubject
from bot.saved.reminders import Trouble
from bot.saved.targets import Aim, TargetMoved
from bot.saved.values import Kept

__all__ = [
    "MOST_BOARDS",
    "MOST_ON_BOARD",
    "NEWS_FOR",
    "Board",
    "BoardExport",
    "BoardNews",
    "BoardState",
    "BoardTold",
    "Look",
    "Topic",
]

MOST_BOARDS = 20
MOST_ON_BOARD = 4
"""How many animals a board is about at most: it is one message."""
NEWS_FOR = timedelta(days=30)
"""How long a board says what changed."""


class Topic(StrEnum):
    """What a board is about."""

    DISTANCES = "distances"
    TEMPERATURES = "temperatures"
    FIRST_DAY = "first-day"
    GUIDE = "guide"
    WELCOME = "welcome"


class BoardState(StrEnum):
    """What is wanted of a board: to be shown, or to be taken down."""

    SHOWN = "shown"
    LEAVING = "leaving"


def _each_once(animals: tuple[str, ...]) -> tuple[str, ...]:
    return tuple(dict.fromkeys(animals))


_Animals = Annotated[
    tuple[AnimalSlug, ...], Field(max_length=MOST_ON_BOARD), AfterValidator(_each_once)
]


class BoardTold(Kept):
    """Which targets of its animals a board showed last."""

    targets: dict[AnimalSlug, dict[OwnSubject, Aim]]


class BoardNews(Kept):
    """What changed of the targets of a board, and on which day; it stands there for a while."""

    day: date
    moved: dict[AnimalSlug, tuple[TargetMoved, ...]]


class BoardExport(Kept):
    """A board in a group's file: what is wanted where."""

    channel: int = Field(ge=0, lt=2**63)
    topic: Topic
    animals: _Animals = ()


class Board(Kept):
    """A board; ``message`` is None until it is posted.

    ``fingerprint`` is that of the content last shown; ``pinned`` what Discord last confirmed;
    ``wish`` counts what was asked of it, so that a wish during the work is not lost. ``told`` are
    the targets that it showed last, ``news`` what changed of them.
    """

    id: int
    server: int
    channel: int
    topic: Topic
    animals: _Animals
    message: int | None
    pinned: bool
    fingerprint: str
    state: BoardState
    trouble: Trouble
    wish: int
    told: BoardTold | None = None
    news: BoardNews | None = None


class Look(Kept):
    """A board claimed to be looked at.

    ``unsure`` says that another process had it and may have posted it.
    """

    board: Board
    unsure: bool
