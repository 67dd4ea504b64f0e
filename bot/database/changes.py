"""The log of a group: which moderator changed what, from what to what, and when."""

from collections.abc import Sequence
from typing import NamedTuple

from sqlalchemy import func, insert, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.engine import Database
from bot.database.newest import keep_newest, newest_of
from bot.database.tables import ChangeRow
from bot.saved.group import By
from bot.saved.logged import Change

__all__ = ["MOST_CHANGES", "Changed", "Changes", "note_changes"]

MOST_CHANGES = 500


class Changed(NamedTuple):
    """What was changed, from what to what; nothing there is an empty text."""

    what: str
    name: str
    before: str
    after: str


async def note_changes(
    session: AsyncSession, server: int, by: By, changed: Sequence[Changed]
) -> None:
    """Add lines to a group's log; what changes nothing is left out, as are the oldest."""
    lines = [one for one in changed if one.before != one.after][-MOST_CHANGES:]
    if not lines:
        return
    who = {"server_id": server, "at": by.at, "who": by.who}
    await session.execute(insert(ChangeRow), [who | line._asdict() for line in lines])
    await keep_newest(session, ChangeRow, server, MOST_CHANGES)


class Changes:
    """The logs of all groups."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def newest(self, server: int, most: int) -> tuple[Change, ...]:
        """Return the newest lines of a group's log, newest first."""
        async with self._database.reading() as session:
            return tuple(map(_read, await newest_of(session, ChangeRow, server, most)))

    async def last_of(self, server: int, what: str) -> dict[str, Change]:
        """Return the newest line about each thing of a kind, by the name of the thing."""
        of_kind = (ChangeRow.server_id == server) & (ChangeRow.what == what)
        newest = select(func.max(ChangeRow.id)).where(of_kind).group_by(ChangeRow.name)
        async with self._database.reading() as session:
            rows = await session.scalars(select(ChangeRow).where(ChangeRow.id.in_(newest)))
            return {row.name: _read(row) for row in rows}


def _read(row: ChangeRow) -> Change:
    return Change(
        at=row.at,
        who=row.who,
        what=row.what,
        name=row.name,
        before=row.before,
        after=row.after,
    )
