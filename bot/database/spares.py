"""Spare lamps: what a keeper has in stock."""

from collections.abc import Sequence

from sqlalchemy import delete, func, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.engine import Database
from bot.database.errors import Full, LimitError
from bot.database.keepers import hold_keeper
from bot.database.tables import SpareRow
from bot.saved.keeper import MOST_SPARES, Spare
from bot.saved.values import name_key

__all__ = ["Spares", "put_spares", "read_spares"]


async def read_spares(session: AsyncSession, keeper: int) -> tuple[Spare, ...]:
    """Return a keeper's spare lamps, in the order of their names."""
    wanted = select(SpareRow).where(SpareRow.keeper_id == keeper).order_by(SpareRow.key)
    return tuple(
        Spare.model_validate({name: getattr(row, name) for name in Spare.model_fields})
        for row in await session.scalars(wanted)
    )


async def put_spares(
    session: AsyncSession, database: Database, keeper: int, given: Sequence[Spare]
) -> None:
    """Write spare lamps of a held keeper over those of their names."""
    of = {"keeper_id": keeper}
    rows = [of | {"key": name_key(one.name)} | one.model_dump() for one in given]
    await database.put(session, SpareRow, rows)
    counted = select(func.count()).where(SpareRow.keeper_id == keeper)
    if (await session.scalars(counted)).one() > MOST_SPARES:
        raise LimitError(MOST_SPARES, Full.SPARES)


class Spares:
    """The spare lamps of all keepers."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def all(self, keeper: int) -> tuple[Spare, ...]:
        """Return a keeper's spare lamps."""
        async with self._database.reading() as session:
            return await read_spares(session, keeper)

    async def put(self, keeper: int, spare: Spare) -> None:
        """Keep a spare lamp, over one of its name."""
        async with self._database.writing() as session:
            await hold_keeper(session, self._database, keeper)
            await put_spares(session, self._database, keeper, (spare,))

    async def remove(self, keeper: int, name: str) -> bool:
        """Take a spare lamp away, and say whether it was there."""
        async with self._database.writing() as session:
            gone = await session.scalars(
                delete(SpareRow)
                .where(SpareRow.keeper_id == keeper, SpareRow.key == name_key(name))
                .returning(SpareRow.key)
            )
            return bool(gone.all())
