"""A case on Discord: agreed to by a press, told to helpers without a name, answered."""

import asyncio
from collections.abc import AsyncIterator
from contextlib import AsyncExitStack, asynccontextmanager
from datetime import UTC, datetime, timedelta
from pathlib import Path

import pytest

from bot.database.store import Store, open_store_at
from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from bot.saved.cases import Advice, Advised
from calc.quantities import Quantity
from tests.bot.database.databases import KINDS, Kind, fresh_postgresql, sqlite_of_today
from tests.discord.cast import FERN, GARDEN, MOSS, PEBBLE, Person
from tests.discord.platform import Post
from tests.discord.saving import Keeper, keeper, messages_to, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

BOX = {"name": "Pebble's box", "animal": "bearded dragon"}


async def test_a_case_is_shared_by_a_press_and_opened_by_helpers(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await world.slash("server helpers", {"ask": "here"}, user=PEBBLE)
        await world.slash("mine save", BOX)
        asked = await world.slash("mine share", {"name": BOX["name"]})
        assert await store.cases.of_keeper(FERN.id) == ()
        agreed = await world.press(asked, "I agree")
        await world.platform.until(
            lambda: any("case 1" in p.payload["content"] for p in world.posted(GARDEN.channel_id)),
            "the case in the channel of the helpers",
        )
        told = next(p for p in world.posted(GARDEN.channel_id) if "case 1" in p.payload["content"])
        seen = await world.slash("cases show", {"number": "1"}, user=MOSS)
        await world.slash("cases advise", {"number": "1", "measure": "cool"}, user=MOSS)
        mine = await world.slash("mine case", {})
    assert asked.ephemeral, asked.text
    assert agreed.ephemeral
    assert "case 1" in agreed.text
    assert str(FERN.id) not in told.payload["content"]
    assert seen.ephemeral
    assert "Pebble's box" in seen.text
    assert "measure it again" in mine.text


class Turned:
    """A clock that can be turned ahead."""

    ahead = timedelta(0)

    def now(self) -> datetime:
        return datetime.now(UTC) + self.ahead


@asynccontextmanager
async def two_processes(
    world: World, folder: Path, kind: Kind, clock: Turned
) -> AsyncIterator[tuple[Store, list[Noonstone]]]:
    """Run two bots over one database, each with connections of its own."""
    async with AsyncExitStack() as stack:
        if kind == "sqlite":
            url = await sqlite_of_today(folder)
        else:
            url = await stack.enter_async_context(fresh_postgresql("two_cases"))
        stores = [await open_store_at(url) for _ in range(2)]
        clients = [Noonstone(Preferences(), folder, store=kept) for kept in stores]
        for kept, client in zip(stores, clients, strict=True):
            stack.push_async_callback(kept.close)
            assert client.memory is not None
            client.memory.clock = clock.now
            await stack.enter_async_context(world.running(client))
        yield stores[0], clients


async def told(world: World, person: Person, most: int, clients: list[Noonstone]) -> list[Post]:
    """Have both look as often as they may, and return what a person was told."""
    for _ in range(10):
        for client in clients:
            client.wake()
        await asyncio.sleep(0.1)
    await world.platform.until(lambda: len(messages_to(world, person)) >= most, "a reminder")
    await asyncio.sleep(1.0)
    return messages_to(world, person)


@pytest.mark.parametrize("kind", KINDS)
async def test_both_sides_are_reminded_once_of_a_wished_reading_by_two_processes(
    world: World, tmp_path: Path, kind: Kind
) -> None:
    """The keeper hears at once, and both again in a week."""
    world.platform.people |= {person.id: person for person in (FERN, MOSS)}
    clock = Turned()
    async with two_processes(world, tmp_path, kind, clock) as (kept, clients):
        await kept.enclosures.put(FERN.id, BOX["name"], {})
        there = GARDEN.id, GARDEN.channel_id
        case = await kept.cases.share(FERN.id, BOX["name"], *there, clock.now())
        assert case is not None
        wish = Advice(day=clock.now().date(), what=Advised.READ, of=Quantity.COOL_AIR)
        await kept.cases.advise(*there, case.number, MOSS.id, (wish,), clock.now())
        assert len(await told(world, FERN, 1, clients)) == 1
        assert messages_to(world, MOSS) == []
        clock.ahead = timedelta(days=7, hours=1)
        assert len(await told(world, MOSS, 1, clients)) == 1
        assert len(await told(world, FERN, 2, clients)) == 2
    posted = [p for p in world.posted(GARDEN.channel_id) if "case 1" in p.payload["content"]]
    assert len(posted) == 1
