"""Databases for the tests: an SQLite file, and a PostgreSQL database of this process's own."""

import os
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

import pytest
from sqlalchemy import URL, make_url, text
from sqlalchemy.exc import SQLAlchemyError
from sqlalchemy.ext.asyncio import create_async_engine
from sqlalchemy.pool import NullPool

from bot.database.address import sqlite_address
from bot.database.store import open_store_at

__all__ = ["KINDS", "Kind", "fresh_postgresql", "fresh_sqlite", "sqlite_of_today"]

Kind = str
KINDS: tuple[Kind, ...] = ("sqlite", "postgresql")
SERVER = os.environ.get(
    "NOONSTONE_TEST_POSTGRESQL", "postgresql+asyncpg://postgres@127.0.0.1:5432/test"
)
MUST = "NOONSTONE_TEST_NEVER_SKIP"
_MADE: list[bytes] = []


def fresh_sqlite(folder: Path) -> URL:
    """Return the address of an SQLite file that is not there yet."""
    return sqlite_address(folder / "kept" / "noonstone.sqlite3")


async def sqlite_of_today(folder: Path) -> URL:
    """Return the address of an SQLite file with the tables of today and nothing in them.

    The migrations ran once in this process; what they made is copied.
    """
    address = fresh_sqlite(folder)
    file = Path(address.database or "")
    if not _MADE:
        await (await open_store_at(address)).close()
        _MADE.append(file.read_bytes())
    elif not file.exists():
        file.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        file.touch(mode=0o600)
        file.write_bytes(_MADE[0])
    return address


@asynccontextmanager
async def fresh_postgresql(name: str) -> AsyncIterator[URL]:
    """Give an empty database of the server, dropped at the end; skip where there is none."""
    server = create_async_engine(
        make_url(SERVER),
        isolation_level="AUTOCOMMIT",
        poolclass=NullPool,
        connect_args={"timeout": 30},
    )
    own = f"noonstone_{os.getpid()}_{name}"
    try:
        async with server.connect() as connection:
            await connection.execute(text(f'CREATE DATABASE "{own}"'))
            # No test cuts the server's own power.
            await connection.execute(text(f'ALTER DATABASE "{own}" SET synchronous_commit = off'))
    except (SQLAlchemyError, OSError) as error:
        reason = f"no PostgreSQL at {server.url.host}:{server.url.port} ({type(error).__name__})"
        if os.environ.get(MUST):
            pytest.fail(reason)
        pytest.skip(reason)
    try:
        yield server.url.set(database=own)
    finally:
        async with server.connect() as connection:
            await connection.execute(text(f'DROP DATABASE IF EXISTS "{own}" WITH (FORCE)'))
