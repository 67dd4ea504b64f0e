"""Forgetting: everything of a person or a group is deleted, and counted out."""

from dataclasses import dataclass

from sqlalchemy import delete, func, select, update
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.engine import Database
from bot.database.pool_table import PooledRow
from bot.database.tables import (
    AdviceRow,
    CaseRow,
    ChangeRow,
    EnclosureRow,
    KeeperRow,
    PostRow,
    ReadingRow,
    ReminderRow,
    ServerRow,
    SpareRow,
)

__all__ = ["Forgetting", "Forgotten"]


@dataclass(frozen=True, slots=True)
class Forgotten:
    """How much was deleted of a person; log lines and advice to others stay, without the person."""

    enclosures: int
    readings: int
    reminders: int
    settings: int
    log_lines: int
    cases: int = 0
    spares: int = 0
    advice: int = 0
    given: int = 0
    posts: int = 0


class Forgetting:
    """What deletes for good."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def keeper(self, keeper: int) -> Forgotten:
        """Delete everything of a person, and the person's number in the logs of groups."""
        async with self._database.writing() as session:
            mine = EnclosureRow.keeper_id == keeper
            enclosures = select(EnclosureRow.id).where(mine)
            found = Forgotten(
                enclosures=await _count(session, EnclosureRow, mine),
                readings=await _count(session, ReadingRow, ReadingRow.enclosure_id.in_(enclosures)),
                reminders=await _count(session, ReminderRow, ReminderRow.keeper_id == keeper),
                settings=await _count(session, KeeperRow, KeeperRow.id == keeper),
                log_lines=await _count(session, ChangeRow, ChangeRow.who == keeper),
                cases=await _count(session, CaseRow, CaseRow.enclosure_id.in_(enclosures)),
                spares=await _count(session, SpareRow, SpareRow.keeper_id == keeper),
                posts=await _count(session, PostRow, PostRow.who == keeper),
                advice=await _count(session, AdviceRow, AdviceRow.helper == keeper),
                given=await _count(session, PooledRow, PooledRow.keeper_id == keeper),
            )
            await session.execute(delete(KeeperRow).where(KeeperRow.id == keeper))
            await session.execute(update(ChangeRow).where(ChangeRow.who == keeper).values(who=None))
            await session.execute(update(PostRow).where(PostRow.who == keeper).values(who=None))
            mine_advised = update(AdviceRow).where(AdviceRow.helper == keeper)
            await session.execute(mine_advised.values(helper=None))
        await self._database.settle()
        return found

    async def server(self, server: int) -> bool:
        """Delete everything of a group, and say whether there was anything."""
        async with self._database.writing() as session:
            gone = await session.scalars(
                delete(ServerRow).where(ServerRow.id == server).returning(ServerRow.id)
            )
            found = bool(gone.all())
        await self._database.settle()
        return found


async def _count(session: AsyncSession, table: type, condition: object) -> int:
    counted = select(func.count()).select_from(table).where(condition)  # type: ignore[arg-type]
    return (await session.scalars(counted)).one()
