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
    memory = Memory(store, lambda: NOW)
    for number in range(many):
        memory.count(Asker(1, 1 + number), "guide", {"page": "screens"})
    for what, work, each in (*_adding(store, memory, many), *_using(store, memory)):
        started = time.process_time()
        await work()
        took[what] = (time.process_time() - started) * 1000 / each
    return took


def _adding(store: Store, memory: Memory, many: int) -> tuple[tuple[str, _Work, int], ...]:
    in_one, readings_of_one = min(many, _IN_ONE), min(many, MOST_READINGS)

    async def enclosures() -> None:
        for number in range(many):
            await store.enclosures.put(1 + number // _OF_ONE, f"Box {number % _OF_ONE}", {})

    async def reminders() -> None:
        for number in range(many):
            await store.reminders.add(1 + number // _OF_ONE, DUE, None, None)

    async def boards() -> None:
        for number in range(many):
            await store.boards.put(1 + number // _OF_ONE, number, Topic.GUIDE, (), BY)

    async def channels() -> None:
        for number in range(in_one):
            await store.servers.show(1, number, Shown.PUBLIC, BY)

    async def readings() -> None:
        days = [NOW.date() - timedelta(days=n) for n in range(readings_of_one)]
        every = [Reading(day=day, of=Quantity.COOL_AIR, value=24.0) for day in days]
        await store.enclosures.read(1, "Box 0", every)

    return (
        ("add: an enclosure", enclosures, many),
        ("add: a reminder", reminders, many),
        ("add: a board", boards, many),
        ("add: a channel's setting", channels, in_one),
        ("add: the counts of a server", memory.keep_counts, many),
        ("add: a reading of one enclosure", readings, readings_of_one),
    )


def _using(store: Store, memory: Memory) -> tuple[tuple[str, _Work, int], ...]:
    return (
        ("read: a keeper's enclosures", lambda: store.enclosures.all(1), 1),
        ("read: a keeper's export", lambda: store.exchange.keeper(1), 1),
        ("read: a group's export", lambda: store.exchange.server(1), 1),
        ("read: who has set anything", memory.look_around, 1),
        ("read: the log of a group", lambda: store.changes.newest(1, 10), 1),
        ("claim: six reminders", lambda: store.reminders.claim("a", NOW, 6), 1),
        ("claim: two boards", lambda: store.boards.claim("a", NOW, 2), 1),
        ("look: when the next is due", store.reminders.next_try, 1),
        ("look: every board again", lambda: store.boards.look_again(NOW), 1),
        ("look: which servers there are", store.servers.known, 1),
        ("sweep", lambda: store.reminders.sweep(NOW), 1),
        ("forget: a keeper", lambda: store.forgetting.keeper(1), 1),
        ("forget: a group", lambda: store.forgetting.server(1), 1),
    )


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
