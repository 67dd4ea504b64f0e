"""What is seen at a glance is what the store says, and what is counted so is what it counts."""

import asyncio
from datetime import UTC, date, datetime
from pathlib import Path

import pytest

from bot.database.glance import Glance, _connected, count, glance
from bot.database.store import Store, open_store_at
from bot.language.quantities import Units
from bot.language.tongue import Tongue
from bot.saved.counts import Asked
from bot.saved.group import By, OwnScreen
from bot.saved.pool import PooledReading
from tests.bot.database.databases import fresh_sqlite, sqlite_of_today

ME, HERE, DAY = 0, 0, date(2026, 5, 4)
BY = By(who=ME, at=datetime(2026, 5, 4, tzinfo=UTC))
ASKED = {(Asked.QUESTION, "convert"): 2, (Asked.ANIMAL, "bearded-dragon"): 1}


@pytest.fixture
async def file(tmp_path: Path) -> Path:
    return Path((await sqlite_of_today(tmp_path)).database or "")


async def opened(file: Path) -> Store:
    return await open_store_at(fresh_sqlite(file.parent.parent))


async def test_settings_are_those_of_the_store(file: Path) -> None:
    store = await opened(file)
    assert glance(file, ME, HERE) == Glance(
        await store.keepers.settings(ME), await store.servers.settings(HERE)
    )
    keeper = await store.keepers.change(ME, zone="Europe/Berlin", language=Tongue.GERMAN)
    given = {"units": Units.CM, "animal": "bearded-dragon", "vets": "A vet", "helpers": 7}
    await store.servers.change(HERE, BY, **given)
    group = await store.servers.settings(HERE)
    await store.keepers.change(ME + 1, units=Units.IN)
    assert glance(file, ME, HERE) == Glance(keeper, group)
    await store.close()


async def test_a_figure_or_a_reading_of_the_groups_own_is_the_stores_to_tell(file: Path) -> None:
    store = await opened(file)
    screen = OwnScreen(name="Lid", passes=0.6, set_on=DAY)
    await store.figures.put(HERE, screen, BY)
    assert glance(file, ME, HERE) is None
    assert glance(file, ME, HERE + 1) is not None
    await store.figures.remove(HERE, screen, BY)
    assert glance(file, ME, HERE) is not None
    reading = PooledReading(day=DAY, own_lamp="Hood A", distance_m=0.4, uvi=3.0)
    await store.pool.give(HERE, ME + 1, [reading])
    assert glance(file, ME, HERE) is None
    await store.close()


async def test_counts_are_added_as_by_the_store(file: Path) -> None:
    store = await opened(file)
    assert count(file, HERE, DAY, ASKED)
    assert count(file, HERE, DAY, ASKED)
    await store.counts.add(HERE + 1, DAY, ASKED)
    await store.counts.add(HERE + 1, DAY, ASKED)
    by_both = [await store.counts.since(server, DAY) for server in (HERE, HERE + 1)]
    assert by_both[0] == by_both[1]
    assert {(one.kind, one.name): one.times for one in by_both[0]} == {
        key: 2 * times for key, times in ASKED.items()
    }
    assert count(file, HERE, DAY, {})
    assert count(file, HERE, date(2029, 5, 4), ASKED)
    assert {one.week for one in await store.counts.since(HERE, DAY)} == {"2029-W18"}
    await store.close()


async def test_nothing_is_made_of_a_file_that_is_missing_damaged_or_of_another_version(
    file: Path, tmp_path: Path
) -> None:
    missing, damaged = tmp_path / "missing", tmp_path / "damaged"
    damaged.write_bytes(b"no database" * 1000)
    for other in (missing, damaged):
        assert glance(other, ME, HERE) is None
        assert not count(other, HERE, DAY, ASKED)
    assert not missing.exists()
    store = await opened(file)
    async with store.database.for_writing.begin() as connection:
        await connection.exec_driver_sql("UPDATE alembic_version SET version_num = '0001'")
    await store.close()
    assert await asyncio.to_thread(glance, file, ME, HERE) is None


async def test_a_connection_begins_as_those_of_the_store(file: Path) -> None:
    with _connected(file) as connection:
        told = {
            name: connection.execute(f"PRAGMA {name}").fetchone()[0]
            for name in ("foreign_keys", "journal_mode", "synchronous", "secure_delete")
        }
    assert told == {"foreign_keys": 1, "journal_mode": "wal", "synchronous": 2, "secure_delete": 1}
