"""Boards: previewed, wanted in a channel, looked at again, taken down. Words: ``board.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import Enum, auto

from bot.command import Command
from bot.desk import PINNING, Desk
from bot.facts import Name, Say, Says
from bot.language.words import join_line
from bot.layered import Brief, Care, Layered, Table, Weight
from bot.preferences import Context
from bot.queries.server import BoardQuery, ShowQuery, TopicQuery
from bot.questions.animals import animal_asked
from bot.questions.saved.board_content import Board, board_of, tell_board
from bot.questions.saved.unable import server_of, unable
from bot.questions.shared import name_of
from bot.saved import boards as kept
from bot.saved.boards import BoardState, Topic
from bot.saved.reminders import Trouble

__all__ = [
    "BOARD_LIST",
    "BOARD_POST",
    "BOARD_PREVIEW",
    "BOARD_REFRESH",
    "BOARD_REMOVE",
    "list_",
    "post",
    "preview",
    "refresh",
    "remove",
    "tell_list",
    "tell_post",
    "tell_preview",
    "tell_refresh",
    "tell_removed",
]

_PREVIEW, _POST, _LIST = "board preview", "board post", "board list"
_REFRESH, _REMOVE = "board refresh", "board remove"


class Promise(Enum):
    """What becomes of a wish: no more is promised than the bot's rights allow."""

    CHANGED = auto()
    UNPINNED = auto()
    NOTED = auto()
    POSTED = auto()


class Standing(Enum):
    """How a board stands."""

    LEAVING = auto()
    TROUBLED = auto()
    PINNED = auto()
    WAITING = auto()


@dataclass(frozen=True, slots=True)
class BoardSeen:
    """What a board would say, and the question that pins it."""

    board: Board
    line: str


@dataclass(frozen=True, slots=True)
class BoardWanted:
    """A board that is wanted in this channel; ``lacking`` are rights by Discord's names."""

    topic: Topic
    promise: Promise
    lacking: tuple[str, ...]

    @property
    def typed(self) -> str:
        """Return the topic as it is typed."""
        return self.topic.value


@dataclass(frozen=True, slots=True)
class BoardLine:
    """One of the group's boards, and how it stands."""

    topic: Topic
    animal: Name | None
    channel: str
    standing: Standing
    trouble: Trouble


@dataclass(frozen=True, slots=True)
class BoardList:
    """The group's boards."""

    boards: tuple[BoardLine, ...]

    @property
    def count(self) -> int:
        """Return how many there are."""
        return len(self.boards)


@dataclass(frozen=True, slots=True)
class BoardGone:
    """A board of this channel that is taken down."""

    topic: Topic


async def preview(query: BoardQuery, context: Context, desk: Desk) -> BoardSeen:
    """Find what a board would say, for the asker alone."""
    server_of(desk, _PREVIEW)
    board = board_of(query.topic, _slug(query, context), context)
    asked = {"topic": query.topic.value} | ({"animal": query.animal} if query.animal else {})
    return BoardSeen(board, join_line(_POST, asked))


def _slug(query: BoardQuery, context: Context) -> str | None:
    wish = query.animal.strip() or context.default_animal
    return animal_asked(wish, context).slug if wish else None


def tell_preview(facts: BoardSeen) -> Layered:
    """Tell what a board would say, and how to pin it."""
    told = tell_board(facts.board)
    return replace(told, command=_PREVIEW, steps=(*told.steps, Say("board-step-pin", facts)))


async def post(query: BoardQuery, context: Context, desk: Desk) -> BoardWanted:
    """Want a board in the channel in which this is asked."""
    server = server_of(desk, _POST)
    if desk.channel is None:
        example = f"board preview topic:{query.topic.value}"
        raise unable(_POST, Say("group-no-channel"), example=example)
    slug = _slug(query, context)
    # What cannot be shown is refused now, and not later where nobody would see it.
    board_of(query.topic, slug, context, _POST)
    _, known = await desk.store.boards.put(server, desk.channel, query.topic, slug, desk.by)
    return BoardWanted(query.topic, _promise(desk.lacking, known=known), desk.lacking)


def _promise(lacking: tuple[str, ...], *, known: bool) -> Promise:
    if known:
        return Promise.CHANGED
    if lacking == (PINNING,):
        return Promise.UNPINNED
    return Promise.NOTED if lacking else Promise.POSTED


def tell_post(facts: BoardWanted) -> Layered:
    """Tell what becomes of the wish, and which rights are missing."""
    say = Says("board", facts)
    more = () if facts.promise is Promise.NOTED else (say("kept-up"),)
    lacking = Care(say("lacking"), say("lacking"), Weight.ALWAYS)
    return Layered(
        command=_POST,
        title=say("title"),
        brief=Brief(head=say.by("will", facts.promise), range=more),
        steps=(
            *((say("step-rights"),) if facts.lacking else ()),
            say("step-list"),
            say("step-remove"),
        ),
        care=(lacking,) if facts.lacking else (),
    )


async def list_(query: ShowQuery, context: Context, desk: Desk) -> BoardList:
    """Find a group's boards and how they stand; the query has no options."""
    found = await desk.store.boards.all(server_of(desk, _LIST))
    return BoardList(tuple(map(_line, found)))


def _line(board: kept.Board) -> BoardLine:
    animal = name_of(board.animal) if board.animal else None
    return BoardLine(board.topic, animal, str(board.channel), _standing(board), board.trouble)


def _standing(board: kept.Board) -> Standing:
    if board.state is BoardState.LEAVING:
        return Standing.LEAVING
    if board.trouble is not Trouble.NONE:
        return Standing.TROUBLED
    return Standing.PINNED if board.pinned else Standing.WAITING


def tell_list(facts: BoardList) -> Layered:
    """Tell which boards there are, and how they stand."""
    say = Says("board", facts)
    columns = (
        say("column-topic"),
        say("column-animal"),
        say("column-channel"),
        say("column-standing"),
    )
    return Layered(
        command=_LIST,
        title=say("list-title"),
        brief=Brief(head=say("list")),
        steps=(say("step-preview"),),
        table=Table(columns, tuple(tuple(_cells(line)) for line in facts.boards))
        if facts.boards
        else None,
    )


def _cells(line: BoardLine) -> Iterator[Say]:
    say = Says("board", line)
    yield say("topic")
    yield say("animal")
    yield say("channel")
    yield say.by("stands", line.standing)


async def refresh(query: ShowQuery, context: Context, desk: Desk) -> BoardList:
    """Have all boards of a group looked at again; the query has no options."""
    server = server_of(desk, _REFRESH)
    await desk.store.boards.look_again(desk.now, server)
    return BoardList(tuple(map(_line, await desk.store.boards.all(server))))


def tell_refresh(facts: BoardList) -> Layered:
    """Tell that the boards are looked at again."""
    say = Says("board", facts)
    return Layered(
        command=_REFRESH,
        title=say("refresh-title"),
        brief=Brief(head=say("refresh"), range=(say("refresh-how"),) if facts.count else ()),
        steps=(say("step-stand"),),
    )


async def remove(query: TopicQuery, context: Context, desk: Desk) -> BoardGone:
    """Want a board of this channel taken down."""
    server = server_of(desk, _REMOVE)
    gone = desk.channel is not None and await desk.store.boards.leave(
        server, desk.channel, query.topic, desk.by
    )
    if not gone:
        raise unable(_REMOVE, Say("board-no-such"), example=_LIST)
    return BoardGone(query.topic)


def tell_removed(facts: BoardGone) -> Layered:
    """Tell that a board is taken down."""
    say = Says("board", facts)
    return Layered(
        command=_REMOVE,
        title=say("title"),
        brief=Brief(head=say("removed")),
        steps=(say("step-left"),),
    )


BOARD_PREVIEW = Command(
    name="board preview",
    query=BoardQuery,
    stored=preview,
    tell=tell_preview,
    examples=(
        "board preview topic:distances animal:bearded dragon",
        "board preview topic:first day",
    ),
    who="moderator",
    guide=("for-moderators",),
)

BOARD_POST = Command(
    name="board post",
    query=BoardQuery,
    stored=post,
    tell=tell_post,
    examples=("board post topic:temperatures animal:bearded dragon",),
    who="moderator",
    guide=("for-moderators",),
)

BOARD_LIST = Command(
    name="board list",
    query=ShowQuery,
    stored=list_,
    tell=tell_list,
    examples=("board list",),
    who="moderator",
)

BOARD_REFRESH = Command(
    name="board refresh",
    query=ShowQuery,
    stored=refresh,
    tell=tell_refresh,
    examples=("board refresh",),
    who="moderator",
)

BOARD_REMOVE = Command(
    name="board remove",
    deletes=True,
    query=TopicQuery,
    stored=remove,
    tell=tell_removed,
    examples=("board remove topic:temperatures",),
    who="moderator",
)
