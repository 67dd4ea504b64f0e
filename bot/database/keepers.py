"""Keepers: how a person wants to be answered; the row that all of a person's data hangs on."""

from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.engine import Database
from bot.database.tables import KeeperRow
from bot.saved.keeper import KeeperSettings

__all__ = ["Keepers", "hold_keeper", "read_keeper"]


async def hold_keeper(session: AsyncSession, database: Database, keeper: int) -> KeeperRow:
    """Return the row of a keeper, made if it is missing, held until the transaction ends."""
    await session.execute(database.insert(KeeperRow).values(id=keeper).on_conflict_do_nothing())
    held = select(KeeperRow).where(KeeperRow.id == keeper).with_for_update()
    return (await session.scalars(held)).one()


async def read_keeper(session: AsyncSession, keeper: int) -> KeeperSettings:
    """Return a keeper's settings, all open where nothing is kept."""
    row = await session.get(KeeperRow, keeper)
    return KeeperSettings() if row is None else _settings(row)


class Keepers:
    """The settings of all keepers."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def settings(self, keeper: int) -> KeeperSettings:
        """Return a keeper's settings."""
        async with self._database.reading() as session:
            return await read_keeper(session, keeper)

    async def change(self, keeper: int, **changed: object) -> KeeperSettings:
        """Change some of a keeper's settings by name, and return them all."""
        async with self._database.writing() as session:
            row = await hold_keeper(session, self._database, keeper)
            wanted = KeeperSettings.model_validate(_settings(row).model_dump() | changed)
            for name, value in wanted.model_dump(mode="json").items():
                setattr(row, name, value)
            return wanted


def _settings(row: KeeperRow) -> KeeperSettings:
    return KeeperSettings.model_validate(
        {"units": row.units, "zone": row.zone, "language": row.language}
    )
