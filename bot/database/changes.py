"""The log of a group: which moderator changed what, from what to what, and when."""

from collections.abc import Sequence
from typing import NamedTuple

from sqlalchemy import delete, insert, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.engine import Database
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
    newest = select(ChangeRow.id).where(ChangeRow.server_id == server)
    oldest_kept = newest.order_by(ChangeRow.id.desc()).offset(MOST_CHANGES - 1).limit(1)
    await session.execute(
        delete(ChangeRow).where(
            ChangeRow.server_id == server, ChangeRow.id < oldest_kept.scalar_subquery()
        )
    )


class Changes:
    """The logs of all groups."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def newest(self, server: int, most: int) -> tuple[Change, ...]:
        """Return the newest lines of a group's log, newest first."""
        wanted = select(ChangeRow).where(ChangeRow.server_id == server)
        async with self._database.reading() as session:
            rows = await session.scalars(wanted.order_by(ChangeRow.id.desc()).limit(most))
            return tuple(
                Change(
                    at=row.at,
                    who=row.who,
                    what=row.what,
                    name=row.name,
                    before=row.before,
                    after=row.after,
                )
                for row in rows
            )
