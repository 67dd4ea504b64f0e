"""A desk in a server's channel, over an empty store, and what it takes to ask there."""

from collections.abc import AsyncIterator, Awaitable, Callable
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot.ask import ask as at_the_door
from bot.database.store import Store, open_store_at
from bot.desk import Desk
from bot.preferences import Preferences
from bot.reply import Reply
from tests.bot.database.databases import sqlite_of_today
from tests.bot.keeping.people import CHANNEL, FERN, GARDEN

NOW = datetime(2026, 5, 4, 12, 0, tzinfo=UTC)
Ask = Callable[..., Awaitable[Reply]]


@pytest.fixture
async def store(tmp_path: Path) -> AsyncIterator[Store]:
    """Return an empty store."""
    store = await open_store_at(await sqlite_of_today(tmp_path))
    yield store
    await store.close()


@pytest.fixture
def desk(store: Store) -> Desk:
    """Return the desk of a moderator in a channel."""
    return Desk(store, FERN, GARDEN, CHANNEL, moderator=True, now=NOW)


@pytest.fixture
def ask(desk: Desk) -> Ask:
    """Return what asks one line at the desk, some of which may be changed for it."""

    async def asked(line: str, **changed: object) -> Reply:
        at = replace(desk, **changed)  # type: ignore[arg-type]
        return await at_the_door(line, Preferences(), at)

    return asked


@pytest.fixture
def ok(ask: Ask) -> Ask:
    """Return what asks one line that must be answered."""

    async def asked(line: str, **changed: object) -> Reply:
        reply = await ask(line, **changed)
        assert reply.status == "ok", reply.answer
        return reply

    return asked
