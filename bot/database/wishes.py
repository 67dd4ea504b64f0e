"""Who has set anything: everybody else is answered without a look into the database."""

from sqlalchemy import or_, select, union

from bot.database.engine import Database
from bot.database.pool_table import PooledRow
from bot.database.tables import (
    AnimalRow,
    ChannelRow,
    KeeperRow,
    LampRow,
    PublicRow,
    ScreenRow,
    ServerRow,
    TargetRow,
)

__all__ = ["Wishes"]

_TABLES = (ChannelRow, PublicRow, LampRow, ScreenRow, TargetRow, AnimalRow, PooledRow)
_OF_GROUPS = union(
    select(ServerRow.id).where(
        or_(
            ServerRow.units.is_not(None),
            ServerRow.animal.is_not(None),
            ServerRow.guide_url.is_not(None),
            ServerRow.zone.is_not(None),
            ServerRow.language.is_not(None),
            ServerRow.vets.is_not(None),
            ServerRow.helpers.is_not(None),
            ServerRow.helper_role.is_not(None),
        )
    ),
    *(select(table.server_id) for table in _TABLES),
)


class Wishes:
    """The numbers of those who have settings or figures of their own, or readings."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def keepers(self) -> frozenset[int]:
        """Return the keepers with any setting."""
        wanted = select(KeeperRow.id).where(
            or_(
                KeeperRow.units.is_not(None),
                KeeperRow.zone.is_not(None),
                KeeperRow.language.is_not(None),
            )
        )
        async with self._database.reading() as session:
            return frozenset(await session.scalars(wanted))

    async def groups(self) -> frozenset[int]:
        """Return the servers with any setting or figure."""
        async with self._database.reading() as session:
            return frozenset(await session.scalars(_OF_GROUPS))
