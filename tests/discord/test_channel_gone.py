"""A channel or a thread that is deleted: its boards and reminders know of it at once."""

import asyncio
from datetime import UTC, datetime, timedelta

import pytest

from bot.database.store import Store
from bot.saved.reminders import State
from tests.discord.cast import FERN, GARDEN, PEBBLE
from tests.discord.saving import Keeper, keeper, messages_to, store
from tests.discord.test_boards import posted, standing
from tests.discord.test_reminders import HOUR, remind, settled
from tests.discord.world import World

__all__ = ["keeper", "store"]

GONE = {"id": str(GARDEN.channel_id), "guild_id": str(GARDEN.id), "type": 0}
EVENTS = ["CHANNEL_DELETE", "THREAD_DELETE"]


@pytest.mark.parametrize("event", EVENTS)
async def test_the_list_of_boards_is_right_at_once(
    world: World, keeper: Keeper, store: Store, event: str
) -> None:
    async with world.running(keeper()):
        await posted(world, store)
        before = await world.slash("board list", {}, user=PEBBLE)
        await world.gateway.dispatch(event, {**GONE, "id": "999"}, GARDEN.id)
        await world.gateway.dispatch(event, GONE, GARDEN.id)
        await standing(store, lambda boards: not boards)
        after = await world.slash("board list", {}, user=PEBBLE)
    assert "1 board." in before.text
    assert "Your group has no boards yet." in after.text


@pytest.mark.parametrize("event", EVENTS)
async def test_a_reminder_for_it_is_listed_and_comes_as_a_direct_message(
    world: World, keeper: Keeper, store: Store, event: str
) -> None:
    world.platform.people[FERN.id] = FERN
    kept = await remind(store, datetime.now(UTC) + HOUR, channel=GARDEN.channel_id)
    client = keeper()
    assert client.memory is not None
    ahead = timedelta(0)
    client.memory.clock = lambda: datetime.now(UTC) + ahead
    async with world.running(client):
        await world.gateway.dispatch(event, GONE, GARDEN.id)
        async with asyncio.timeout(60):
            while (await settled(store, kept, *State)).channel is not None:
                pass
        listed = await world.slash("remind list", {})
        assert messages_to(world, FERN) == []
        ahead = 2 * HOUR
        client.wake()
        await settled(store, kept, State.DONE)
    assert "the channel is gone, so it comes by direct message" in listed.text
    (post,) = messages_to(world, FERN)
    assert "may no longer write in the channel" in post.payload["content"]
    assert world.posted(GARDEN.channel_id) == []


async def test_a_bot_that_remembers_nothing_is_not_troubled_by_it(
    world: World, bot: Keeper
) -> None:
    async with world.running(bot()):
        for event in EVENTS:
            await world.gateway.dispatch(event, GONE, GARDEN.id)
        answer = await world.slash("convert", {"value": "14in"})
    assert "35.56 cm" in answer.text
