"""Several connections, in one process or in several: each server is heard once."""

import asyncio
import signal
from collections.abc import AsyncIterator
from contextlib import AsyncExitStack
from dataclasses import replace
from pathlib import Path
from typing import Any

import discord
import pytest
from discord.gateway import DiscordWebSocket

from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from bot.settings import Shards
from tests.discord.cast import FERN, GARDEN, direct, in_server
from tests.discord.conftest import Maker
from tests.discord.test_process import ended, started
from tests.discord.world import World

LENGTH = {"value": "14in"}
# Discord finds the shard of a server by its id.
TWO = [replace(GARDEN, id=(1000 + n << 22) + 1, channel_id=GARDEN.channel_id + n) for n in (0, 1)]


@pytest.fixture
async def wide(monkeypatch: pytest.MonkeyPatch) -> AsyncIterator[World]:
    """Return a world with a server on each of two shards."""

    async def at_once(*_: Any, **__: Any) -> None:
        """Skip the five seconds between two identifies."""

    world = World(TWO)
    await world.open()
    monkeypatch.setattr(discord.Client, "before_identify_hook", at_once)
    monkeypatch.setattr(discord.http.Route, "BASE", world.url)
    monkeypatch.setattr(DiscordWebSocket, "DEFAULT_GATEWAY", world.gateway_address)
    yield world
    await world.close()
    assert world.platform.broken == []


async def test_as_many_connections_are_made_as_discord_asks_for(wide: World, bot: Maker) -> None:
    wide.platform.shards_wanted = 2
    client = bot()
    async with wide.running(client):
        places = [*map(in_server, TWO), direct(FERN)]
        answers = [await wide.slash("convert", LENGTH, where=place) for place in places]
        assert client.connected
        assert {guild.id for guild in client.guilds} == {server.id for server in TWO}
    assert [(s.shard, s.shards) for s in wide.gateway.sessions.values()] == [(0, 2), (1, 2)]
    assert all("35.56 cm" in answer.text for answer in answers)
    assert wide.platform.syncs == [None]


async def test_processes_with_shards_of_their_own_share_the_servers(
    wide: World, tmp_path: Path
) -> None:
    clients = [
        Noonstone(Preferences(), tmp_path / str(n), shards=Shards((n,), 2)) for n in range(2)
    ]
    async with AsyncExitStack() as stack:
        for client in clients:
            await stack.enter_async_context(wide.running(client))
        answers = await asyncio.gather(
            *(wide.slash("convert", LENGTH, where=in_server(server)) for server in TWO)
        )
        assert [[guild.id for guild in client.guilds] for client in clients] == [
            [server.id] for server in TWO
        ]
    callbacks = [seen for seen in wide.platform.seen if seen.path.endswith("/callback")]
    assert len(callbacks) == len(answers) == 2
    assert wide.platform.syncs == [None]


async def test_one_lost_connection_of_two_is_known(wide: World, bot: Maker) -> None:
    wide.platform.shards_wanted = 2
    client = bot()
    async with wide.running(client):
        for server in TWO:
            await wide.slash("convert", LENGTH, where=in_server(server))
        assert client.connected
        await client.shards[1].disconnect()
        await asyncio.sleep(0)
        assert not client.connected
        await wide.slash("convert", LENGTH, where=in_server(TWO[0]))


@pytest.mark.slow
async def test_a_bot_that_outgrew_its_connection_starts_anew(world: World, tmp_path: Path) -> None:
    world.gateway.refuse_with, world.gateway.refusals = 4011, 1
    process = await started(world, tmp_path)
    await world.platform.until(lambda: world.gateway.session(), "the bot", within_s=90)
    answer = await world.slash("convert", LENGTH)
    process.send_signal(signal.SIGTERM)
    code, told = await ended(process)
    assert "35.56 cm" in answer.text
    assert world.gateway.identifies == 2
    assert code == 0
    assert "starting anew" in told


@pytest.mark.slow
async def test_a_shard_that_discord_refuses_ends_with_a_sentence(
    world: World, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("NOONSTONE_SHARDS", "0/4")
    world.gateway.refuse_with = 4011
    code, told = await ended(await started(world, tmp_path))
    assert code == 1
    assert "raise the number of shards in NOONSTONE_SHARDS" in told.splitlines()[-1]
    assert world.gateway.identifies == 1
