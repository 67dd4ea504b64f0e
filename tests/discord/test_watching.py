"""The bot watched by machines on this host, and the limits of the bot as it is really started."""

import asyncio
import json
import signal
import socket
from pathlib import Path

import aiohttp
import pytest

from tests.discord.conftest import Maker
from tests.discord.test_process import ended, started
from tests.discord.world import World


def free_port() -> int:
    with socket.socket() as probe:
        probe.bind(("127.0.0.1", 0))
        port: int = probe.getsockname()[1]
        return port


async def fetched(port: int, path: str) -> tuple[int, str]:
    async with (
        aiohttp.ClientSession() as session,
        session.get(f"http://127.0.0.1:{port}{path}") as response,
    ):
        return response.status, await response.text()


@pytest.mark.slow
async def test_health_and_counts_are_told_on_localhost_when_a_port_is_set(
    world: World, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    port = free_port()
    monkeypatch.setenv("NOONSTONE_HEALTH_PORT", str(port))
    process = await started(world, tmp_path)
    await world.platform.until(lambda: world.gateway.session(), "the bot", within_s=90)
    await world.slash("convert", {"value": "14in"})
    await world.slash("convert", {"value": "banana"})
    health = await fetched(port, "/healthz")
    status, counts = await fetched(port, "/metrics")
    process.send_signal(signal.SIGTERM)
    code, told = await ended(process)
    assert health[0] == 200
    assert json.loads(health[1])["parts"] == {"gateway": True, "database": True}
    assert status == 200
    assert 'noonstone_questions_total{outcome="ok",question="convert"} 1.0' in counts
    assert 'noonstone_questions_total{outcome="problem",question="convert"} 1.0' in counts
    assert "noonstone_acknowledge_seconds_count 2.0" in counts
    assert "noonstone_servers 1.0" in counts
    assert "noonstone_loop_stall_seconds" in counts
    assert "banana" not in counts
    assert code == 0
    assert "Traceback" not in told


async def test_a_lost_connection_is_known_until_it_stands_again(world: World, bot: Maker) -> None:
    client = bot()
    states: list[bool] = []
    async with world.running(client):
        await world.slash("help")
        states.append(client.connected)
        world.gateway.cut()
        await world.platform.until(lambda: world.gateway.resumes, "the connection")
        await world.slash("help")
        states.append(client.connected)
    assert states == [True, True]
    assert not client.connected


@pytest.mark.slow
async def test_a_port_that_is_taken_is_told_before_discord_is_asked(
    world: World, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    taken = await asyncio.start_server(lambda *_: None, "127.0.0.1", 0)
    port = taken.sockets[0].getsockname()[1]
    monkeypatch.setenv("NOONSTONE_HEALTH_PORT", str(port))
    code, told = await ended(await started(world, tmp_path))
    taken.close()
    assert code == 2
    assert told.splitlines()[-1].startswith(f"NOONSTONE_HEALTH_PORT: port {port} cannot be")
    assert "Traceback" not in told


@pytest.mark.slow
async def test_the_bot_as_it_is_started_has_limits(world: World, tmp_path: Path) -> None:
    process = await started(world, tmp_path)
    await world.platform.until(lambda: world.gateway.session(), "the bot", within_s=90)
    answers = [await world.slash("convert", {"value": "14in"}) for _ in range(40)]
    process.send_signal(signal.SIGTERM)
    await ended(process)
    waiting = [answer.text.startswith("Many questions came at once.") for answer in answers]
    assert not any(waiting[:20])
    assert waiting[-1]
