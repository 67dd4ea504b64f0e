"""The store: one database, one repository a topic, opened at start and closed at the end."""

import logging
from dataclasses import dataclass
from pathlib import Path
from typing import Self

from sqlalchemy import URL

from bot.database.address import address_of
from bot.database.boards import Boards
from bot.database.cases import Cases
from bot.database.changes import Changes
from bot.database.counts import Counts
from bot.database.enclosures import Enclosures
from bot.database.engine import Database, connect
from bot.database.errors import StoreUnavailableError
from bot.database.exchange import Exchange
from bot.database.figures import Figures
from bot.database.forgetting import Forgetting
from bot.database.keepers import Keepers
from bot.database.pool import Pool
from bot.database.public import PublicPosts
from bot.database.reminders import Reminders
from bot.database.servers import Servers
from bot.database.spares import Spares
from bot.database.targets_told import TargetsTold
from bot.database.upgrade import upgrade
from bot.database.wishes import Wishes
from bot.database.wrongs import Wrongs

__all__ = ["Store", "open_store", "open_store_at", "open_store_soon"]

_log = logging.getLogger(__name__)


# A process that starts waits for another that is upgrading a large database.
_UPGRADE_S = 600.0


@dataclass(frozen=True, slots=True)
class Store:
    """An open store."""

    database: Database
    servers: Servers
    figures: Figures
    changes: Changes
    keepers: Keepers
    enclosures: Enclosures
    reminders: Reminders
    boards: Boards
    counts: Counts
    exchange: Exchange
    forgetting: Forgetting
    wishes: Wishes
    wrongs: Wrongs
    cases: Cases
    spares: Spares
    told: TargetsTold
    pool: Pool
    public: PublicPosts

    @classmethod
    def over(cls, database: Database) -> Self:
        """Return the repositories over a database that is up to date."""
        return cls(
            database,
            Servers(database),
            Figures(database),
            Changes(database),
            Keepers(database),
            Enclosures(database),
            Reminders(database),
            Boards(database),
            Counts(database),
            Exchange(database),
            Forgetting(database),
            Wishes(database),
            Wrongs(database),
            Cases(database),
            Spares(database),
            TargetsTold(database),
            Pool(database),
            PublicPosts(database),
        )

    async def close(self) -> None:
        """Close every connection."""
        await self.database.close()


async def open_store(database_url: str, data_folder: Path) -> Store:
    """Open the database that the settings name, made or brought up to date first.

    Raises a StoreError with one sentence where that cannot be.
    """
    return await open_store_at(address_of(database_url, data_folder))


async def open_store_soon(database_url: str, data_folder: Path) -> Store:
    """Open the database that the settings name; one that is away is opened once it is there.

    Until then whatever needs it fails with StoreUnavailableError, as it does whenever the database
    goes away. What waiting does not mend is raised as by ``open_store``.
    """
    url = address_of(database_url, data_folder)
    try:
        return await open_store_at(url)
    except StoreUnavailableError:
        _log.warning("the database cannot be reached; saved data are there once it can")
        return Store.over(connect(url, first=lambda: _bring_up_to_date(url)))


async def open_store_at(url: URL) -> Store:
    """Open the database at an address, made or brought up to date first."""
    await _bring_up_to_date(url)
    return Store.over(connect(url))


async def _bring_up_to_date(url: URL) -> None:
    upgrading = connect(url, _UPGRADE_S)
    try:
        await upgrade(upgrading)
    finally:
        await upgrading.close()
