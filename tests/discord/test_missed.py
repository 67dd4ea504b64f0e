"""What Discord tells once while the store is away is made up for when it is back."""

import asyncio
from collections.abc import AsyncIterator, Awaitable, Callable, Iterator
from contextlib import asynccontextmanager, contextmanager

import pytest
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.engine import Database
from bot.database.errors import StoreUnavailableError
from bot.database.store import Store
from tests.discord.cast import GARDEN
from tests.discord.saving import Keeper, keeper, store
from tests.discord.test_boards import posted, standing
from tests.discord.test_channel_gone import GONE
from tests.discord.test_trouble import log_line
from tests.discord.world import World

__all__ = ["keeper", "store"]


@contextmanager
def unwritable(monkeypatch: pytest.MonkeyPatch) -> Iterator[None]:
    @asynccontextmanager
    async def refused(_: Database) -> AsyncIterator[AsyncSession]:
        raise StoreUnavailableError
        yield AsyncSession()

    with monkeypatch.context() as away:
        away.setattr(Database, "writing", refused)
        yield


async def until(seen: Callable[[], Awaitable[bool]]) -> None:
    async with asyncio.timeout(60):
        while not await seen():
            await asyncio.sleep(0.005)


async def test_a_channel_that_was_deleted_meanwhile_loses_its_boards(
    world: World,
    keeper: Keeper,
    store: Store,
    monkeypatch: pytest.MonkeyPatch,
    caplog: pytest.LogCaptureFixture,
) -> None:
    client = keeper()
    async with world.running(client):
        await posted(world, store)
        with unwritable(monkeypatch):
            await world.gateway.dispatch("CHANNEL_DELETE", GONE, GARDEN.id)
            await log_line(world, caplog, "a deleted channel is noted later: ")
        assert await store.boards.all(GARDEN.id)
        client.wake()
        await standing(store, lambda boards: not boards)


async def test_a_server_that_left_and_came_back_meanwhile_is_there(
    world: World,
    keeper: Keeper,
    store: Store,
    monkeypatch: pytest.MonkeyPatch,
    caplog: pytest.LogCaptureFixture,
) -> None:
    client = keeper()
    async with world.running(client):
        await world.slash("mine save", {"name": "Willow", "distance": "40cm"})
        await posted(world, store)
        assert client._upkeep is not None
        with unwritable(monkeypatch):
            await client._upkeep.left(GARDEN.id)
            await client._upkeep.came(GARDEN.id)
            await client._upkeep.left(GARDEN.id)
        assert "a server that left is noted later: " in caplog.text
        assert await store.servers.away() == set()
        client.wake()
        # In the order in which it happened: it left in the end.
        await until(lambda: gone(store))


async def gone(store: Store) -> bool:
    return await store.servers.away() == {GARDEN.id}
