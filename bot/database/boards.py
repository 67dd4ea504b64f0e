"""Boards: what is wanted in which channel, and what was last shown there.

A board is looked at by one process at a time, under a lease as with reminders.
"""

from collections.abc import Sequence
from datetime import datetime, timedelta

from sqlalchemy import ColumnElement, case, delete, func, select, update
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.changes import Changed, note_changes
from bot.database.engine import Database
from bot.database.errors import Full, LimitError
from bot.database.servers import hold_server
from bot.database.tables import BoardRow
from bot.saved.boards import MOST_BOARDS, Board, BoardExport, BoardState, Look, Topic
from bot.saved.group import By
from bot.saved.logged import board_animals, board_name
from bot.saved.reminders import Trouble

__all__ = ["Boards", "put_boards", "read_boards"]

LEASE = timedelta(minutes=2)


class Boards:
    """The boards of all groups."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def all(self, server: int) -> tuple[Board, ...]:
        """Return a group's boards."""
        async with self._database.reading() as session:
            return await _read(session, BoardRow.server_id == server)

    async def put(
        self, server: int, channel: int, topic: Topic, animals: Sequence[str], by: By
    ) -> tuple[Board, bool]:
        """Want a board in a channel; one of the topic there is changed in place.

        Return it, and whether there was one.
        """
        async with self._database.writing() as session:
            await hold_server(session, self._database, server)
            wanted = BoardExport(channel=channel, topic=topic, animals=tuple(animals))
            row, known = await _put(session, server, wanted, by)
            return (await _read(session, BoardRow.id == row.id))[0], known

    async def leave(self, server: int, channel: int, topic: Topic, by: By) -> bool:
        """Want a board taken down, and say whether there was one."""
        async with self._database.writing() as session:
            row = await _held(session, server, channel, topic)
            if row is None:
                return False
            row.state = BoardState.LEAVING.value
            _wish(row, by.at)
            line = Changed("board", board_name(topic, channel), board_animals(row.animals), "")
            await note_changes(session, server, by, [line])
            return True

    async def look_again(self, now: datetime, server: int | None = None) -> None:
        """Have every board, or those of one group, looked at again: something changed."""
        wanted = select(BoardRow.id).order_by(BoardRow.id).with_for_update()
        if server is not None:
            wanted = wanted.where(BoardRow.server_id == server)
        # A claim runs its lease, or two processes would have the board.
        soon = case((BoardRow.claimed_by == "", now), else_=BoardRow.look_at)
        async with self._database.writing() as session:
            await session.execute(
                update(BoardRow)
                .where(BoardRow.id.in_(wanted))
                .values(wish=BoardRow.wish + 1, look_at=soon)
            )

    # --- showing -----------------------------------------------------------------------------

    async def claim(self, by: str, now: datetime, most: int) -> tuple[Look, ...]:
        """Claim boards that are to be looked at, for one lease."""
        async with self._database.writing() as session:
            rows = (
                await session.scalars(
                    select(BoardRow)
                    .where(BoardRow.look_at <= now)
                    .order_by(BoardRow.look_at)
                    .limit(most)
                    .with_for_update(skip_locked=True)
                )
            ).all()
            unsure = {row.id: row.claimed_by != "" for row in rows}
            for row in rows:
                row.claimed_by, row.look_at = by, now + LEASE
            await session.flush()
            boards = await _read(session, BoardRow.id.in_(unsure))
            return tuple(Look(board=board, unsure=unsure[board.id]) for board in boards)

    async def shown(self, board: Board, by: str, now: datetime, look_at: datetime) -> bool:
        """Keep what was shown of a board and when to look again; False if the claim was lost.

        A wish that came meanwhile has it looked at again at once.
        """
        again = case((BoardRow.wish == board.wish, look_at), else_=now)
        async with self._database.writing() as session:
            done = await session.scalars(
                update(BoardRow)
                .where(BoardRow.id == board.id, BoardRow.claimed_by == by)
                .values(
                    message_id=board.message,
                    pinned=board.pinned,
                    fingerprint=board.fingerprint,
                    trouble=board.trouble.value,
                    told=board.told and board.told.model_dump(mode="json"),
                    moved=board.news and board.news.model_dump(mode="json"),
                    claimed_by="",
                    look_at=again,
                )
                .returning(BoardRow.id)
            )
            return bool(done.all())

    async def gone(self, board: Board, by: str) -> bool:
        """Forget a board that was taken down; False if it is wanted again or the claim was lost."""
        async with self._database.writing() as session:
            done = await session.scalars(
                delete(BoardRow)
                .where(
                    BoardRow.id == board.id,
                    BoardRow.claimed_by == by,
                    BoardRow.wish == board.wish,
                )
                .returning(BoardRow.id)
            )
            return bool(done.all())

    async def lost(self, board: Board, by: str) -> None:
        """Forget a board whose channel is gone."""
        async with self._database.writing() as session:
            await session.execute(
                delete(BoardRow).where(BoardRow.id == board.id, BoardRow.claimed_by == by)
            )

    async def released(self, board: Board, by: str, now: datetime) -> None:
        """Give back a board whose look was broken off: the next one is unsure, and looks first."""
        async with self._database.writing() as session:
            await session.execute(
                update(BoardRow)
                .where(BoardRow.id == board.id, BoardRow.claimed_by == by)
                .values(look_at=now)
            )

    async def channel_gone(self, channel: int) -> None:
        """Forget the boards of a channel that was deleted."""
        async with self._database.writing() as session:
            await session.execute(delete(BoardRow).where(BoardRow.channel_id == channel))

    async def next_look(self) -> datetime | None:
        """Return when the next board is to be looked at, if there is one."""
        async with self._database.reading() as session:
            return (await session.scalars(select(func.min(BoardRow.look_at)))).one()


async def read_boards(session: AsyncSession, server: int) -> tuple[BoardExport, ...]:
    """Return the boards that a group wants, as its file tells them."""
    shown = BoardRow.state == BoardState.SHOWN.value
    boards = await _read(session, (BoardRow.server_id == server) & shown)
    return tuple(BoardExport(channel=b.channel, topic=b.topic, animals=b.animals) for b in boards)


async def put_boards(
    session: AsyncSession, server: int, given: Sequence[BoardExport], by: By
) -> None:
    """Want the boards of a file in a held server, each logged."""
    for wanted in given:
        await _put(session, server, wanted, by)


async def _put(
    session: AsyncSession, server: int, wanted: BoardExport, by: By
) -> tuple[BoardRow, bool]:
    """Want a board in a held server; return its row, and whether there was one."""
    row = await _held(session, server, wanted.channel, wanted.topic)
    known = row is not None
    if row is None:
        counted = select(func.count()).where(BoardRow.server_id == server)
        if (await session.scalars(counted)).one() >= MOST_BOARDS:
            raise LimitError(MOST_BOARDS, Full.BOARDS)
        row = _new(server, wanted.channel, wanted.topic)
        session.add(row)
    before = board_animals(row.animals) if known else ""
    row.animals, row.state = list(wanted.animals), BoardState.SHOWN.value
    _wish(row, by.at)
    await session.flush()
    name, after = board_name(wanted.topic, wanted.channel), board_animals(row.animals)
    await note_changes(session, server, by, [Changed("board", name, before, after)])
    return row, known


def _wish(row: BoardRow, now: datetime) -> None:
    row.wish += 1
    # A claim runs its lease, or two processes would have the board.
    if not row.claimed_by:
        row.look_at = now


def _new(server: int, channel: int, topic: Topic) -> BoardRow:
    return BoardRow(
        server_id=server,
        channel_id=channel,
        topic=topic.value,
        message_id=None,
        pinned=False,
        fingerprint="",
        trouble=Trouble.NONE.value,
        wish=0,
        claimed_by="",
    )


async def _held(session: AsyncSession, server: int, channel: int, topic: Topic) -> BoardRow | None:
    wanted = select(BoardRow).where(
        BoardRow.server_id == server,
        BoardRow.channel_id == channel,
        BoardRow.topic == topic.value,
    )
    return (await session.scalars(wanted.with_for_update())).one_or_none()


async def _read(session: AsyncSession, condition: ColumnElement[bool]) -> tuple[Board, ...]:
    rows = await session.scalars(
        select(BoardRow).where(condition).order_by(BoardRow.channel_id, BoardRow.topic)
    )
    return tuple(
        Board.model_validate(
            {
                "id": row.id,
                "server": row.server_id,
                "channel": row.channel_id,
                "topic": row.topic,
                "animals": row.animals,
                "message": row.message_id,
                "pinned": row.pinned,
                "fingerprint": row.fingerprint,
                "state": row.state,
                "trouble": row.trouble,
                "wish": row.wish,
                "told": row.told,
                "news": row.moved,
            }
        )
        for row in rows
    )
