"""The lines that a group keeps of what happened: the newest are read, the oldest give way."""

from collections.abc import Sequence
from typing import TypeVar

from sqlalchemy import delete, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.tables import ChangeRow, PostRow, WrongRow

__all__ = ["keep_newest", "newest_of"]

_Line = TypeVar("_Line", ChangeRow, PostRow, WrongRow)


async def newest_of(
    session: AsyncSession, table: type[_Line], server: int, most: int
) -> Sequence[_Line]:
    """Return the newest lines of a group, the newest first."""
    of_group = select(table).where(table.server_id == server)
    return (await session.scalars(of_group.order_by(table.id.desc()).limit(most))).all()


async def keep_newest(session: AsyncSession, table: type[_Line], server: int, most: int) -> None:
    """Delete all lines of a group but the newest."""
    of_group = select(table.id).where(table.server_id == server)
    oldest_kept = of_group.order_by(table.id.desc()).offset(most - 1).limit(1)
    gone = (table.server_id == server) & (table.id < oldest_kept.scalar_subquery())
    await session.execute(delete(table).where(gone))
