"""How long a thousand reminders take that are due at once, if Discord takes 100 ms an answer.

Each is for another person, so it is two requests: the direct message is opened, then written.
Run on request: python -m pytest tests/bench/test_bench_reminders.py -s
"""

import asyncio
import time
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import discord
import pytest
from discord.gateway import DiscordWebSocket
from pytest_benchmark.fixture import BenchmarkFixture

from bot.database.store import open_store
from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from bot.saved.reminders import About, ReminderExport
from tests.discord.cast import FERN
from tests.discord.world import World

_MANY, _ANSWER_S = 1_000, 0.1
_LONGEST_S = 600.0


async def _delivered(folder: Path, monkeypatch: pytest.MonkeyPatch) -> tuple[float, int]:
    """Return how long they take, and how many messages were sent."""
    world = World()
    await world.open()
    monkeypatch.setattr(discord.http.Route, "BASE", world.url)
    monkeypatch.setattr(DiscordWebSocket, "DEFAULT_GATEWAY", world.gateway_address)
    store = await open_store("", folder)
    people = [replace(FERN, id=FERN.id + number) for number in range(_MANY)]
    world.platform.people = {person.id: person for person in people}
    wanted = ReminderExport(about=About.METER, due=datetime.now(UTC), zone="UTC")
    for person in people:
        await store.reminders.add(person.id, wanted, None, None)
    world.platform.answer_delay_s = _ANSWER_S
    sent = world.platform.posts
    began = time.perf_counter()
    async with world.running(Noonstone(Preferences(), folder, store=store)):
        await world.platform.until(lambda: len(sent) >= _MANY, "the reminders", _LONGEST_S)
        took_s = time.perf_counter() - began
    await store.close()
    await world.close()
    return took_s, len(sent)


def test_a_thousand_reminders_at_once(
    benchmark: BenchmarkFixture, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    took_s, sent = benchmark.pedantic(  # type: ignore[no-untyped-call]
        lambda: asyncio.run(_delivered(tmp_path, monkeypatch)), rounds=1
    )
    benchmark.extra_info |= {"took_s": took_s}
    print(f"\n{_MANY} reminders, {_ANSWER_S * 1000:.0f} ms an answer: {took_s:.0f} s")
    assert sent == _MANY
