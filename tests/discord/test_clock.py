"""A clock that jumps, as when a machine wakes or is set right: nothing is lost or done twice."""

import time
from datetime import UTC, datetime, timedelta
from inspect import signature

from bot.database.store import Store
from bot.serving.allowance import Limits
from tests.discord.cast import FERN
from tests.discord.saving import Keeper, keeper, messages_to, store
from tests.discord.world import World

__all__ = ["keeper", "store"]


async def test_a_reminder_comes_once_whatever_the_clock_does(
    world: World, keeper: Keeper, store: Store
) -> None:
    client = keeper()
    assert client.memory is not None
    ahead = timedelta(0)
    client.memory.clock = lambda: datetime.now(UTC) + ahead
    async with world.running(client):
        await world.slash("remind me", {"about": "tube", "when": "in 2 days"})
        for days in (3, -30, 3, 400):
            ahead = timedelta(days=days)
            client.wake()
            # Asked at the desk, so that the rounds before it are over.
            await world.slash("remind list", {})
        await world.platform.until(lambda: messages_to(world, FERN), "the reminder")
    assert len(messages_to(world, FERN)) == 1


def test_the_shares_of_askers_do_not_depend_on_the_clock_of_the_wall() -> None:
    assert signature(Limits).parameters["clock"].default is time.monotonic
