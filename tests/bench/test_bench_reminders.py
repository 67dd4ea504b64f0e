"""How long a thousand reminders take that are due at once, if Discord takes 100 ms an answer.

Each is for another person, so it is two requests: the direct message is opened, then written.
Run on request: python -m pytest tests/bench/test_bench_reminders.py -s
"""

import time
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

from bot.fronts.discord.client import Noonstone
from bot.kept.reminders import About, ReminderExport
from bot.preferences import Preferences
from bot.store.store import open_store
from tests.discord.cast import FERN
from tests.discord.conftest import world
from tests.discord.world import World

__all__ = ["world"]

_MANY, _ANSWER_S = 1_000, 0.1
_LONGEST_S = 600.0


async def test_a_thousand_reminders_at_once(world: World, tmp_path: Path) -> None:
    """Print how long they take, and hold that each is sent once."""
    store = await open_store("", tmp_path / "kept")
    people = [replace(FERN, id=FERN.id + number) for number in range(_MANY)]
    world.platform.people = {person.id: person for person in people}
    wanted = ReminderExport(about=About.METER, due=datetime.now(UTC), zone="UTC")
    for person in people:
        await store.reminders.add(person.id, wanted, None, None)
    world.platform.answer_delay_s = _ANSWER_S
    client = Noonstone(Preferences(), tmp_path, store=store)
    began = time.perf_counter()
    async with world.running(client):
        await world.platform.until(
            lambda: len(world.platform.posts) >= _MANY, "the reminders", within_s=_LONGEST_S
        )
        took_s = time.perf_counter() - began
    await store.close()
    print(f"\n{_MANY} reminders, {_ANSWER_S * 1000:.0f} ms an answer: {took_s:.0f} s")
    assert len(world.platform.posts) == _MANY
