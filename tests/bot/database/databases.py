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

__all__ = ["KINDS", "Kind", "fresh_postgresql", "fresh_sqlite"]

Kind = str
KINDS: tuple[Kind, ...] = ("sqlite", "postgresql")
SERVER = os.environ.get(
    "NOONSTONE_TEST_POSTGRESQL", "postgresql+asyncpg://postgres@127.0.0.1:5432/test"
)
MUST = "NOONSTONE_TEST_NEVER_SKIP"


def fresh_sqlite(folder: Path) -> URL:
    """Return the address of an SQLite file that is not there yet."""
    return sqlite_address(folder / "kept" / "noonstone.sqlite3")


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
