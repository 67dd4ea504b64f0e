"""Where the database is: the address from the settings, or a file in the data folder."""

from pathlib import Path

from sqlalchemy import URL, make_url
from sqlalchemy.exc import ArgumentError

from bot.database import FILE_NAME
from bot.database.errors import StoreAddressError

__all__ = ["address_of", "sqlite_address"]

_LAST_PORT = 65_535
_DRIVERS = {"postgres": "asyncpg", "postgresql": "asyncpg", "sqlite": "aiosqlite"}


def address_of(database_url: str, data_folder: Path) -> URL:
    """Return the address to open; an empty one is a file in the data folder.

    >>> address_of("postgres://moss@db/noon", Path("/data")).drivername
    'postgresql+asyncpg'
    >>> address_of("", Path("/data")).database
    '/data/noonstone.sqlite3'
    """
    if not database_url.strip():
        return sqlite_address(data_folder / FILE_NAME)
    try:
        url = make_url(database_url.strip())
    except (ArgumentError, ValueError) as error:
        raise StoreAddressError from error
    if url.port is not None and not 0 < url.port <= _LAST_PORT:
        raise StoreAddressError
    kind = url.get_backend_name()
    if kind not in _DRIVERS or not url.database or url.database == ":memory:":
        raise StoreAddressError
    name = "sqlite" if kind == "sqlite" else "postgresql"
    return url.set(drivername=f"{name}+{_DRIVERS[kind]}")


def sqlite_address(file: Path) -> URL:
    """Return the address of an SQLite file."""
    return URL.create("sqlite+aiosqlite", database=str(file))
