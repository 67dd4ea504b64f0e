"""A store of each kind, empty at the beginning of every test."""

import asyncio
from collections.abc import AsyncIterator, Iterator
from contextlib import AsyncExitStack
from datetime import UTC, datetime
from pathlib import Path

import pytest
from sqlalchemy import URL, text

from bot.database.store import Store, open_store_at
from bot.database.tables import Table
from bot.saved.group import By
from tests.bot.database.databases import (
    KINDS,
    Kind,
    fresh_postgresql,
    fresh_sqlite,
    sqlite_of_today,
)

NOW = datetime(2026, 5, 4, 12, 0, tzinfo=UTC)


@pytest.fixture(scope="session")
def postgresql() -> Iterator[URL]:
    """Return a PostgreSQL database of this process, with the tables of today."""
    stack = AsyncExitStack()

    async def make() -> URL:
        url = await stack.enter_async_context(fresh_postgresql("store"))
        store = await open_store_at(url)
        await store.close()
        return url

    with asyncio.Runner(loop_factory=asyncio.new_event_loop) as runner:
        yield runner.run(make())
        runner.run(stack.aclose())


@pytest.fixture(params=KINDS)
def kind(request: pytest.FixtureRequest) -> Kind:
    """Return each kind of database in turn."""
    return str(request.param)


@pytest.fixture
def address(kind: Kind, tmp_path: Path, request: pytest.FixtureRequest) -> URL:
    """Return the address of a database with nothing in it."""
    if kind == "sqlite":
        return fresh_sqlite(tmp_path)
    url: URL = request.getfixturevalue("postgresql")
    return url


@pytest.fixture
async def store(address: URL, tmp_path: Path) -> AsyncIterator[Store]:
    """Return an open store with nothing in it."""
    if address.get_backend_name() == "sqlite":
        await sqlite_of_today(tmp_path)
    store = await open_store_at(address)
    if store.database.is_postgresql:
        names = ", ".join(f'"{table.name}"' for table in Table.metadata.sorted_tables)
        async with store.database.for_writing.begin() as connection:
            await connection.execute(text(f"TRUNCATE {names} RESTART IDENTITY CASCADE"))
    yield store
    await store.close()


@pytest.fixture
def by() -> By:
    """Return a moderator who changes something now."""
    return By(who=31, at=NOW)
