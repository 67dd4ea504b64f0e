"""How the cost of what is saved grows: each repository with 10, 100 and 1,000 rows of its kind.

Adding is told for each row, everything else for the whole. Run on request:
python -m pytest tests/bench -s
"""

import asyncio
import time
from collections.abc import Awaitable, Callable
from datetime import UTC, datetime, timedelta
from pathlib import Path

from pytest_benchmark.fixture import BenchmarkFixture

from bot.database.store import Store, open_store
from bot.saved.boards import Topic
from bot.saved.group import By, Shown
from bot.saved.keeper import MOST_READINGS, Reading
from bot.saved.reminders import About, ReminderExport
from bot.serving.memory import Asker, Memory
from calc.quantities import Quantity

NOW = datetime(2026, 5, 4, 12, 0, tzinfo=UTC)
BY = By(31, NOW)
SIZES = (10, 100, 1000)
DUE = ReminderExport(about=About.METER, due=NOW, zone="UTC")
_IN_ONE, _OF_ONE = 500, 20
_Work = Callable[[], Awaitable[object]]


async def _figures(store: Store, many: int) -> dict[str, float]:
    """Return milliseconds of processor time of each kind of work over so many rows."""
    took: dict[str, float] = {}

    async def timed(what: str, work: _Work, each: int = 1) -> None:
        started = time.process_time()
        await work()
        took[what] = (time.process_time() - started) * 1000 / each

    async def add_enclosures() -> None:
        for number in range(many):
            await store.enclosures.put(1 + number // _OF_ONE, f"Box {number % _OF_ONE}", {})

    async def add_reminders() -> None:
        for number in range(many):
            await store.reminders.add(1 + number // _OF_ONE, DUE, None, None)

    async def add_boards() -> None:
        for number in range(many):
            await store.boards.put(1 + number // _OF_ONE, number, Topic.GUIDE, None, BY)

    async def add_channels() -> None:
        for number in range(min(many, _IN_ONE)):
            await store.servers.show(1, number, Shown.PUBLIC, BY)

    async def add_readings() -> None:
        days = [NOW.date() - timedelta(days=n) for n in range(min(many, MOST_READINGS))]
        readings = [Reading(day=day, of=Quantity.COOL_AIR, value=24.0) for day in days]
        await store.enclosures.read(1, "Box 0", readings)

    memory = Memory(store, lambda: NOW)
    for number in range(many):
        memory.count(Asker(1, 1 + number), "guide", {"page": "screens"})
    await timed("add: an enclosure", add_enclosures, many)
    await timed("add: a reminder", add_reminders, many)
    await timed("add: a board", add_boards, many)
    await timed("add: a channel's setting", add_channels, min(many, _IN_ONE))
    await timed("add: the counts of a server", memory.keep_counts, many)
    await timed("add: readings of one enclosure", add_readings, min(many, MOST_READINGS))
    await timed("read: a keeper's enclosures", lambda: store.enclosures.all(1))
    await timed("read: a keeper's export", lambda: store.exchange.keeper(1))
    await timed("read: a group's export", lambda: store.exchange.server(1))
    await timed("read: who has set anything", memory.look_around)
    await timed("read: the log of a group", lambda: store.changes.newest(1, 10))
    await timed("claim: six reminders", lambda: store.reminders.claim("a", NOW, 6))
    await timed("claim: two boards", lambda: store.boards.claim("a", NOW, 2))
    await timed("look: when the next is due", store.reminders.next_try)
    await timed("look: every board again", lambda: store.boards.look_again(NOW))
    await timed("look: which servers there are", store.servers.known)
    await timed("sweep", lambda: store.reminders.sweep(NOW))
    await timed("forget: a keeper", lambda: store.forgetting.keeper(1))
    await timed("forget: a group", lambda: store.forgetting.server(1))
    return took


def test_nothing_saved_grows_faster_than_itself(
    benchmark: BenchmarkFixture, tmp_path: Path
) -> None:
    async def measured(many: int) -> dict[str, float]:
        store = await open_store("", tmp_path / str(many))
        try:
            return await _figures(store, many)
        finally:
            await store.close()

    def all_of_them() -> dict[int, dict[str, float]]:
        return {many: asyncio.run(measured(many)) for many in SIZES}

    found: dict[int, dict[str, float]] = benchmark.pedantic(all_of_them, rounds=1)  # type: ignore[no-untyped-call]
    few, _, most = SIZES
    print("\n| milliseconds with so many rows |", " | ".join(f"{many:,}" for many in SIZES), "|")
    print("| --- |", " | ".join("---" for _ in SIZES), "|")
    for what in found[few]:
        print(f"| {what} |", " | ".join(f"{found[many][what]:.2f}" for many in SIZES), "|")
    for what, took in found[most].items():
        # What is told for each row must not grow at all, the rest no faster than the rows.
        allowed = 2.0 if what.startswith("add") else 1.5 * most / few
        assert took <= allowed * found[few][what] + 5.0, what
