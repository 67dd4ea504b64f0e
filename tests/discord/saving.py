"""Fixtures of bots that remember: a store of their own, and what is looked for in channels."""

from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from pathlib import Path

import pytest

from bot.database.store import Store, open_store_at
from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from tests.bot.database.databases import sqlite_of_today
from tests.discord.cast import GARDEN, Person, direct
from tests.discord.platform import Post
from tests.discord.world import World

__all__ = ["Keeper", "an_empty_store", "board_posts", "keeper", "messages_to", "store"]

Keeper = Callable[[], Noonstone]


@asynccontextmanager
async def an_empty_store(folder: Path) -> AsyncIterator[Store]:
    """Give an empty store in a folder."""
    store = await open_store_at(await sqlite_of_today(folder))
    yield store
    await store.close()


@pytest.fixture
async def store(tmp_path: Path) -> AsyncIterator[Store]:
    """Return an empty store."""
    async with an_empty_store(tmp_path) as store:
        yield store


@pytest.fixture
def keeper(tmp_path: Path, store: Store) -> Keeper:
    """Return a maker of bots that remember, over one store, as over restarts."""
    return lambda: Noonstone(Preferences(), tmp_path, store=store)


def messages_to(world: World, person: Person) -> list[Post]:
    """Return the direct messages that a person got from the bot."""
    return world.posted(direct(person).channel_id)


def board_posts(world: World) -> list[Post]:
    """Return the boards that are up in the garden's channel."""
    return [p for p in world.posted(GARDEN.channel_id) if "board:" in str(p.payload["components"])]
