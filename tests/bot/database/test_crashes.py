"""Processes killed in the middle of a write, and many at once: nothing lost, nothing doubled."""

import asyncio
import os
import signal
import subprocess
import sys
from collections import Counter
from collections.abc import AsyncIterator
from datetime import timedelta
from pathlib import Path

import pytest
from sqlalchemy import URL, select, text

from bot.database.engine import connect
from bot.database.migrations import known_versions
from bot.database.reminders import LEASE
from bot.database.store import Store, open_store_at
from bot.database.tables import ReminderRow
from bot.database.upgrade import upgrade
from bot.saved.keeper_file import KeeperExport
from bot.saved.reminders import MOST_REMINDERS, About, ReminderExport
from tests.bot.database.databases import Kind, fresh_postgresql, fresh_sqlite
from tests.bot.database.delivering import DUE

ROOT = Path(__file__).parent.parent.parent.parent
DELIVERING = Path(__file__).parent / "delivering.py"
READINGS = 15

WRITING = """
import asyncio, sys
from datetime import UTC, date, datetime, timedelta
from sqlalchemy import make_url
from bot.saved.keeper import Enclosure, Reading
from bot.saved.keeper_file import KeeperExport
from bot.database.store import open_store_at
from calc.quantities import Quantity

def given(number):
    days = [date(2026, 1, 1) + timedelta(days=n) for n in range(15)]
    readings = tuple(Reading(day=d, of=Quantity.UVI, value=float(number)) for d in days)
    return KeeperExport(enclosures=(Enclosure(name=f"Box {number % 20}", readings=readings),))

async def main():
    store = await open_store_at(make_url(sys.argv[1]))
    for number in range(int(sys.argv[2]), 10_000):
        keeper = 1 + number // 20
        await store.exchange.take_keeper(keeper, given(number), datetime.now(UTC))
        print(number, flush=True)

asyncio.run(main())
"""


@pytest.fixture
async def empty(kind: Kind, tmp_path: Path) -> AsyncIterator[URL]:
    """Return the address of a database of the test's own."""
    if kind == "sqlite":
        yield fresh_sqlite(tmp_path)
    else:
        async with fresh_postgresql("crashes") as url:
            yield url


def told(url: URL) -> str:
    return url.render_as_string(hide_password=False)


def written_until_killed(url: URL, first: int, lines: int) -> int:
    """Start a writer, kill it after some lines, and return the last write it confirmed."""
    writer = subprocess.Popen(
        [sys.executable, "-c", WRITING, told(url), str(first)],
        cwd=ROOT,
        stdout=subprocess.PIPE,
        text=True,
    )
    assert writer.stdout is not None
    last = [int(writer.stdout.readline()) for _ in range(lines)][-1]
    writer.send_signal(signal.SIGKILL)
    rest = [int(line) for line in writer.stdout.read().split()]
    writer.wait()
    writer.stdout.close()
    return max([last, *rest])


@pytest.mark.slow
async def test_a_writer_killed_at_any_moment_loses_and_doubles_nothing(empty: URL) -> None:
    confirmed = -1
    for lines in (1, 7, 30):
        # The write after the last confirmed one may have been kept: it is simply written again.
        first = confirmed + 1
        confirmed = await asyncio.to_thread(written_until_killed, empty, first, lines)
        store = await open_store_at(empty)
        kept = {}
        for keeper in range(1, 2 + (confirmed + 1) // 20):
            for enclosure in await store.enclosures.all(keeper):
                number = (keeper - 1) * 20 + int(enclosure.name.split()[1])
                kept[number] = [r.value for r in enclosure.readings]
        await store.close()
        assert set(range(confirmed + 1)) <= set(kept) <= set(range(confirmed + 2))
        assert all(values == [float(n)] * READINGS for n, values in kept.items())


async def test_an_upgrade_that_fails_half_way_leaves_the_earlier_version(empty: URL) -> None:
    database = connect(empty)
    await upgrade(database, known_versions()[0])
    async with database.for_writing.begin() as connection:
        await connection.execute(text("CREATE TABLE board (in_the_way INTEGER)"))
    with pytest.raises(Exception, match=r"board|cannot be used"):
        await upgrade(database)
    async with database.for_writing.begin() as connection:
        found = await connection.execute(text("SELECT version_num FROM alembic_version"))
        assert found.scalar_one() == known_versions()[0]
        await connection.execute(text("DROP TABLE board"))
    await upgrade(database)
    store = Store.over(database)
    assert await store.boards.all(51) == ()
    await store.close()


async def filled_with_reminders(url: URL, keepers: int) -> None:
    store = await open_store_at(url)
    for keeper in range(1, keepers + 1):
        reminders = tuple(
            ReminderExport(about=About.METER, due=DUE + timedelta(seconds=n), zone="UTC")
            for n in range(MOST_REMINDERS)
        )
        given = KeeperExport(reminders=reminders)
        await store.exchange.take_keeper(keeper, given, DUE - timedelta(days=1))
    await store.close()


def delivering(url: URL, file: Path, minutes: int, dies_after: int = 0) -> subprocess.Popen[str]:
    return subprocess.Popen(
        [sys.executable, DELIVERING, told(url), file, str(minutes), str(dies_after)],
        cwd=ROOT,
        stderr=subprocess.PIPE,
        text=True,
        env={**os.environ, "PYTHONPATH": str(ROOT)},
    )


def ended(processes: list[subprocess.Popen[str]]) -> list[tuple[int, str]]:
    errors = [process.communicate()[1] for process in processes]
    return [(process.returncode, error) for process, error in zip(processes, errors, strict=True)]


async def states(url: URL) -> Counter[str]:
    store = await open_store_at(url)
    async with store.database.reading() as session:
        found = Counter(await session.scalars(select(ReminderRow.state)))
    await store.close()
    return found


@pytest.mark.slow
@pytest.mark.parametrize(
    ("many", "keepers"), [(4, 12), pytest.param(10, 40, marks=pytest.mark.full)]
)
async def test_many_processes_deliver_many_reminders_once_each(
    tmp_path: Path, many: int, keepers: int
) -> None:
    async with fresh_postgresql("many") as url:
        await filled_with_reminders(url, keepers)
        files = [tmp_path / f"{n}" for n in range(many)]
        processes = [delivering(url, file, minutes=5) for file in files]
        assert await asyncio.to_thread(ended, processes) == [(0, "")] * many
        delivered = Counter(
            number for file in files if file.exists() for number in file.read_text().split()
        )
        assert len(delivered) == keepers * MOST_REMINDERS
        assert set(delivered.values()) == {1}
        assert await states(url) == {"done": keepers * MOST_REMINDERS}


@pytest.mark.slow
async def test_processes_on_one_sqlite_file_deliver_once_each(tmp_path: Path) -> None:
    url = fresh_sqlite(tmp_path)
    await filled_with_reminders(url, 4)
    files = [tmp_path / f"{n}" for n in range(3)]
    processes = [delivering(url, file, minutes=5) for file in files]
    assert await asyncio.to_thread(ended, processes) == [(0, "")] * 3
    delivered = Counter(
        number for file in files if file.exists() for number in file.read_text().split()
    )
    assert sorted(delivered.values()) == [1] * 100


@pytest.mark.slow
async def test_a_process_killed_between_a_delivery_and_its_note_doubles_nothing(
    empty: URL, tmp_path: Path
) -> None:
    await filled_with_reminders(empty, 2)
    file = tmp_path / "delivered"
    ((code, _),) = await asyncio.to_thread(ended, [delivering(empty, file, 5, dies_after=7)])
    assert code == -signal.SIGKILL
    assert len(file.read_text().split()) == 7
    at_once = delivering(empty, file, minutes=5)
    assert await asyncio.to_thread(ended, [at_once]) == [(0, "")]
    later = delivering(empty, file, minutes=5 + round(LEASE.total_seconds() / 60))
    assert await asyncio.to_thread(ended, [later]) == [(0, "")]
    delivered = Counter(file.read_text().split())
    assert sorted(delivered.values()) == [1] * 50
    assert await states(empty) == {"done": 50}
