"""The boards of a group: how they stand, who changed them last; looked at again. ``board.ftl``."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from datetime import date, time
from enum import Enum, auto

from bot.command import Command
from bot.desk import Desk
from bot.facts import Name, Say, Says
from bot.layered import Brief, Layered, Table
from bot.preferences import Context
from bot.queries.server import ShowQuery
from bot.questions.saved.lines import Lines, doer_said, people_in
from bot.questions.saved.log import Logged, board_logged
from bot.questions.saved.unable import server_of
from bot.questions.shared import name_of
from bot.saved.boards import Board, BoardState, Topic
from bot.saved.logged import Change, board_name
from bot.saved.reminders import Trouble

__all__ = ["BOARD_LIST", "BOARD_REFRESH", "list_", "refresh", "tell_list", "tell_refresh"]

_LIST, _REFRESH = "board list", "board refresh"


class Standing(Enum):
    """How a board stands."""

    LEAVING = auto()
    TROUBLED = auto()
    PINNED = auto()
    WAITING = auto()


@dataclass(frozen=True, slots=True)
class BoardChange:
    """Who changed a board last, when, and its animals before and after."""

    day: date
    clock: time
    who: Say
    before: Say
    after: Say


@dataclass(frozen=True, slots=True)
class BoardLine:
    """One of the group's boards, and how it stands; the change is None past the log's end."""

    topic: Topic
    animals: tuple[Name, ...]
    channel: str
    standing: Standing
    trouble: Trouble
    change: BoardChange | None

    @property
    def any_animal(self) -> bool:
        """Say whether it is about animals."""
        return bool(self.animals)


@dataclass(frozen=True, slots=True)
class BoardList(Lines):
    """The group's boards."""

    lines: tuple[BoardLine, ...]
    people: frozenset[int] = frozenset()
    channels: frozenset[int] = frozenset()


@dataclass(frozen=True, slots=True)
class BoardsAgain:
    """How many boards are looked at again."""

    count: int


async def list_(query: ShowQuery, context: Context, desk: Desk) -> BoardList:
    """Find a group's boards and how they stand; the query has no options."""
    server = server_of(desk, _LIST)
    changes = await desk.store.changes.last_of(server, Logged.BOARD.value)
    found = await desk.store.boards.all(server)
    return BoardList(
        lines=tuple(_line(board, changes) for board in found),
        people=people_in(change.who for change in changes.values()),
        channels=frozenset(board.channel for board in found),
    )


def _line(board: Board, changes: Mapping[str, Change]) -> BoardLine:
    change = changes.get(board_name(board.topic, board.channel))
    return BoardLine(
        topic=board.topic,
        animals=tuple(map(name_of, board.animals)),
        channel=str(board.channel),
        standing=_standing(board),
        trouble=board.trouble,
        change=None if change is None else _change(change),
    )


def _change(change: Change) -> BoardChange:
    return BoardChange(
        day=change.at.date(),
        clock=change.at.time(),
        who=doer_said(change.who),
        before=board_logged(change.before),
        after=board_logged(change.after),
    )


def _standing(board: Board) -> Standing:
    if board.state is BoardState.LEAVING:
        return Standing.LEAVING
    if board.trouble is not Trouble.NONE:
        return Standing.TROUBLED
    return Standing.PINNED if board.pinned else Standing.WAITING


def tell_list(facts: BoardList) -> Layered:
    """Tell which boards there are, how they stand, and who changed them last."""
    say = Says("board", facts)
    columns = (
        say("column-topic"),
        say("column-animal"),
        say("column-channel"),
        say("column-standing"),
        say("column-change"),
    )
    return Layered(
        command=_LIST,
        title=say("list-title"),
        brief=Brief(head=say("list")),
        steps=(say("step-preview"), *((say("step-log"),) if facts.lines else ())),
        people=facts.people,
        channels=facts.channels,
        table=Table(columns, tuple(tuple(_cells(line)) for line in facts.lines))
        if facts.lines
        else None,
    )


def _cells(line: BoardLine) -> Iterator[Say]:
    say = Says("board", line)
    yield say("topic")
    yield say("animals")
    yield say("channel")
    yield say.by("stands", line.standing)
    change = line.change
    yield Say("board-unlogged") if change is None else Say("board-change", change)


async def refresh(query: ShowQuery, context: Context, desk: Desk) -> BoardsAgain:
    """Have all boards of a group looked at again; the query has no options."""
    server = server_of(desk, _REFRESH)
    await desk.store.boards.look_again(desk.now, server)
    return BoardsAgain(len(await desk.store.boards.all(server)))


def tell_refresh(facts: BoardsAgain) -> Layered:
    """Tell that the boards are looked at again."""
    say = Says("board", facts)
    return Layered(
        command=_REFRESH,
        title=say("refresh-title"),
        brief=Brief(head=say("refresh"), range=(say("refresh-how"),) if facts.count else ()),
        steps=(say("step-stand"),),
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
