"""The bot asked to stop: what is in flight is answered, nothing new is taken, and it goes."""

import asyncio
import signal
import time
from datetime import UTC, datetime
from pathlib import Path

import pytest

from bot.database.store import open_store
from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from bot.saved.reminders import About, ReminderExport, State
from bot.serving.studio import Studio
from tests.discord.answers import Answer
from tests.discord.artists import never, no_time
from tests.discord.cast import FERN
from tests.discord.conftest import Maker
from tests.discord.platform import Fault
from tests.discord.test_process import Process, ended, started
from tests.discord.world import World

TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}
LENGTH = {"value": "14in"}
MOST_S = 10.0


async def stopping(process: Process) -> None:
    """Ask the process to stop, and wait until it says that it heard."""
    process.send_signal(signal.SIGTERM)
    assert process.stderr is not None
    async with asyncio.timeout(60):
        while b"asked to stop" not in await process.stderr.readline():
            pass


@pytest.mark.slow
async def test_what_is_in_flight_is_answered_and_nothing_new_is_taken(
    world: World, tmp_path: Path
) -> None:
    held = Fault("/callback", "hold")
    process = await started(world, tmp_path)
    await world.platform.until(lambda: world.gateway.session(), "the bot")
    world.platform.faults.append(held)
    asked = await world.begin("distance", TUBE)
    await world.platform.until(lambda: held.times == 0, "the answer")
    await stopping(process)
    since = time.monotonic()
    late = await world.slash("convert", LENGTH)
    held.released.set()
    await world.platform.until(lambda: asked.callback, "the answer")
    code, told = await ended(process)
    assert "Hang it" in Answer(world.platform, asked).text
    assert late.text == "I am being restarted. Ask again in a minute."
    assert late.ephemeral
    assert time.monotonic() - since < MOST_S
    assert code == 0
    assert "Traceback" not in told


@pytest.mark.slow
async def test_it_stops_before_it_is_connected_too(world: World, tmp_path: Path) -> None:
    held = Fault("/users/@me", "hold", method="GET")
    world.platform.faults.append(held)
    process = await started(world, tmp_path)
    await world.platform.until(lambda: held.times == 0, "the bot")
    since = time.monotonic()
    process.send_signal(signal.SIGTERM)
    code, told = await ended(process)
    held.released.set()
    assert time.monotonic() - since < MOST_S
    assert code == 0
    assert "Traceback" not in told


async def test_an_answer_that_never_arrives_is_not_waited_for_for_ever(
    world: World, bot: Maker, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("bot.fronts.discord.client._FINISH_WITHIN_S", 0.05)
    held = Fault("/callback", "hold")
    world.platform.faults.append(held)
    client = bot()
    async with world.running(client):
        await world.begin("distance", TUBE)
        await world.platform.until(lambda: held.times == 0, "the answer")
        await client.leave()
        assert client.is_closed()
    held.released.set()


async def test_who_waits_for_a_picture_is_told_that_there_is_none(
    world: World, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("bot.fronts.discord.client._FINISH_WITHIN_S", 0.05)
    client = Noonstone(Preferences(), tmp_path, Studio(job=never, sleep=no_time))
    async with world.running(client):
        answer = await world.slash("distance", TUBE)
        pressed = asyncio.create_task(world.press(answer, "Picture"))
        await world.platform.until(lambda: len(world.platform.exchanges) == 2, "the press")
        await world.platform.until(
            lambda: list(world.platform.exchanges.values())[1].callback, "the press"
        )
        await client.leave()
        shown = await pressed
    assert shown.text.startswith("There is no picture just now")


@pytest.mark.slow
async def test_a_reminder_that_hangs_does_not_keep_it(world: World, tmp_path: Path) -> None:
    world.platform.people[FERN.id] = FERN
    store = await open_store("", tmp_path)
    wanted = ReminderExport(about=About.METER, due=datetime.now(UTC), zone="UTC")
    kept = await store.reminders.add(FERN.id, wanted, None, None)
    held = Fault(r"/users/@me/channels$", "hold")
    world.platform.faults.append(held)
    process = await started(world, tmp_path)
    await world.platform.until(lambda: held.times == 0, "the reminder")
    since = time.monotonic()
    process.send_signal(signal.SIGTERM)
    code, told = await ended(process)
    after = await store.reminders.named(FERN.id, kept.id)
    await store.close()
    held.released.set()
    assert time.monotonic() - since < MOST_S
    assert code == 0
    assert "Traceback" not in told
    # It is given back, and so comes with the next start.
    assert after is not None
    assert after.state is State.WAITING
