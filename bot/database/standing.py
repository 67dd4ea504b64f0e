"""How a database stands, without changing it: there or not, and of which version."""

import asyncio
from dataclasses import dataclass
from pathlib import Path

from sqlalchemy import URL, Connection, text

from bot.database.engine import Database, connect
from bot.database.errors import Cause, StoreError, StoreTooNewError, StoreUnavailableError
from bot.database.migrations import known_versions
from bot.database.trouble import telling_trouble
from bot.database.upgrade import present

__all__ = ["Standing", "standing_of", "trouble_of"]

_PATIENCE_S = 2.0


@dataclass(frozen=True, slots=True)
class Standing:
    """The version that was found, none in a new database, and the one this program uses."""

    version: str | None
    newest: str


async def standing_of(url: URL) -> Standing:
    """Return how the database at an address stands; it must be there to be written, but is not.

    Raises StoreUnavailableError, also for a damaged SQLite file, or StoreTooNewError. A missing
    SQLite file is no trouble.
    """
    known = known_versions()
    if url.get_backend_name() == "sqlite" and not Path(url.database or "").exists():
        return Standing(None, known[-1])
    database = connect(url)
    try:
        async with telling_trouble(), database.for_writing.begin() as connection:
            version = await connection.run_sync(present)
            await connection.run_sync(_check)
            await connection.rollback()
    finally:
        await database.close()
    if version is not None and version not in known:
        raise StoreTooNewError(version, known[-1])
    return Standing(version, known[-1])


async def trouble_of(database: Database) -> Cause | None:
    """Return why an open database cannot be used just now, if it cannot."""
    try:
        async with asyncio.timeout(_PATIENCE_S), database.reading() as session:
            await session.execute(text("SELECT 1"))
    except StoreUnavailableError as error:
        return error.cause
    except (StoreError, TimeoutError):
        return Cause.AWAY
    # What is full or may only be read still answers.
    return database.trouble


def _check(connection: Connection) -> None:
    """Raise where SQLite finds its file damaged; PostgreSQL looks after itself."""
    if connection.dialect.name == "sqlite":
        found = connection.execute(text("PRAGMA quick_check(1)")).scalar()
        if found != "ok":
            raise StoreUnavailableError(Cause.DAMAGED)
