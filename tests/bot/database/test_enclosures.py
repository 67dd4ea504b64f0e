"""A keeper's enclosures and readings: kept, changed, limited, private, forgotten."""

from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest
from sqlalchemy import BigInteger, String, select

from bot.database.errors import LimitError
from bot.database.forgetting import Forgotten
from bot.database.store import Store, open_store_at
from bot.database.tables import Table
from bot.language.quantities import Units
from bot.saved.group import By
from bot.saved.keeper import (
    MOST_ENCLOSURES,
    MOST_READINGS,
    KeeperSettings,
    KeptScreen,
    Reading,
    Setup,
)
from bot.saved.pool import PooledReading
from bot.saved.reminders import About, ReminderExport
from calc.quantities import Quantity
from tests.bot.database.databases import fresh_sqlite

FERN, MOSS = 4_000_000_000_000_000_001, 4_000_000_000_000_000_002
MAY = date(2026, 5, 4)
GIVEN = PooledReading(day=MAY, own_lamp="Hood A", distance_m=0.3, uvi=4.2)


def uvi(value: float, day: date = MAY) -> Reading:
    return Reading(day=day, of=Quantity.UVI, value=value, distance_m=0.35)


async def test_a_set_up_is_kept_and_changed_fact_by_fact(store: Store) -> None:
    told = {"animal": "bearded-dragon", "tube_percent": 12.0, "screen": KeptScreen(passes=0.55)}
    assert await store.enclosures.put(FERN, "Pebble's box", told) == (
        Setup.model_validate(told),
        False,
    )
    setup, known = await store.enclosures.put(FERN, "PEBBLE’S BOX", {"distance_m": 0.35})
    assert known
    assert setup == Setup.model_validate(told | {"distance_m": 0.35})
    kept = await store.enclosures.named(FERN, "pebble's box")
    assert kept is not None
    assert kept.name == "PEBBLE’S BOX"
    assert kept.setup == setup


async def test_a_set_up_that_cannot_be_is_refused_whole(store: Store) -> None:
    with pytest.raises(ValueError, match="tube_percent"):
        await store.enclosures.put(FERN, "Box", {"tube_percent": 99.0, "distance_m": 0.3})
    assert await store.enclosures.all(FERN) == ()


async def test_readings_are_one_a_day_and_kind_and_a_second_replaces(store: Store) -> None:
    await store.enclosures.put(FERN, "Box", {})
    basking = Reading(day=MAY, of=Quantity.BASKING_SURFACE, value=39.5)
    assert await store.enclosures.read(FERN, "Box", [uvi(4.4), basking]) == ()
    assert await store.enclosures.read(FERN, "Box", [uvi(4.2)]) == (uvi(4.4),)
    kept = await store.enclosures.named(FERN, "box")
    assert kept is not None
    assert set(kept.readings) == {uvi(4.2), basking}


async def test_readings_of_a_day_are_removed_all_or_of_one_kind(store: Store) -> None:
    await store.enclosures.put(FERN, "Box", {})
    basking = Reading(day=MAY, of=Quantity.BASKING_SURFACE, value=39.5)
    later = uvi(4.0, MAY + timedelta(days=30))
    await store.enclosures.read(FERN, "Box", [uvi(4.4), basking, later])
    assert await store.enclosures.unread(FERN, "box", MAY, Quantity.UVI) == 1
    assert await store.enclosures.unread(FERN, "box", MAY) == 1
    assert await store.enclosures.unread(FERN, "box", MAY) == 0
    assert await store.enclosures.unread(FERN, "no such", MAY) is None
    kept = await store.enclosures.named(FERN, "box")
    assert kept is not None
    assert kept.readings == (later,)


async def test_nobody_reaches_the_enclosures_of_another(store: Store) -> None:
    await store.enclosures.put(FERN, "Box", {"distance_m": 0.3})
    assert await store.enclosures.all(MOSS) == ()
    assert await store.enclosures.named(MOSS, "Box") is None
    assert await store.enclosures.read(MOSS, "Box", [uvi(4.0)]) is None
    assert await store.enclosures.unread(MOSS, "Box", MAY) is None
    assert not await store.enclosures.remove(MOSS, "Box")
    await store.enclosures.put(MOSS, "Box", {"distance_m": 0.9})
    kept = await store.enclosures.named(FERN, "Box")
    assert kept is not None
    assert kept.setup.distance_m == 0.3


async def test_limits_hold_per_person(store: Store) -> None:
    for number in range(MOST_ENCLOSURES):
        await store.enclosures.put(FERN, f"Box {number}", {})
    with pytest.raises(LimitError, match=str(MOST_ENCLOSURES)):
        await store.enclosures.put(FERN, "One more", {})
    await store.enclosures.put(MOSS, "One more", {})
    many = [uvi(4.0, MAY + timedelta(days=n)) for n in range(MOST_READINGS)]
    await store.enclosures.read(FERN, "Box 0", many)
    with pytest.raises(LimitError, match=str(MOST_READINGS)):
        await store.enclosures.read(FERN, "Box 0", [uvi(4.0, MAY - timedelta(days=1))])
    kept = await store.enclosures.named(FERN, "Box 0")
    assert kept is not None
    assert len(kept.readings) == MOST_READINGS


async def test_removing_an_enclosure_takes_its_readings_and_reminders_along(
    store: Store,
) -> None:
    await store.enclosures.put(FERN, "Box", {})
    await store.enclosures.read(FERN, "Box", [uvi(4.0)])
    due = datetime(2026, 6, 1, tzinfo=UTC)
    wish = ReminderExport(about=About.METER, enclosure="box", due=due, zone="UTC")
    await store.reminders.add(FERN, wish, None, None)
    assert await store.enclosures.remove(FERN, "BOX")
    assert await store.reminders.all(FERN) == ()
    assert not await store.enclosures.remove(FERN, "BOX")


async def test_forgetting_deletes_every_trace_of_a_person_and_says_what(
    store: Store, by: By
) -> None:
    await _keep_something_of(FERN, store)
    await _keep_something_of(MOSS, store)
    await store.servers.change(61, By(FERN, by.at), units=Units.CM)
    assert await store.forgetting.keeper(FERN) == Forgotten(1, 2, 1, 1, 1, given=1)
    assert await _rows_with(store, FERN) == []
    assert await _rows_with(store, MOSS) != []
    line = (await store.changes.newest(61, 1))[0]
    assert (line.who, line.after) == (None, "cm")
    assert await store.forgetting.keeper(FERN) == Forgotten(0, 0, 0, 0, 0)


async def test_what_was_forgotten_is_not_left_in_the_files_of_sqlite(tmp_path: Path) -> None:
    store = await open_store_at(fresh_sqlite(tmp_path))
    await store.enclosures.put(FERN, "Xylophonic Quagmire", {})
    files = list((tmp_path / "kept").iterdir())
    assert any(b"Quagmire" in file.read_bytes() for file in files)
    await store.forgetting.keeper(FERN)
    assert not any(b"Quagmire" in file.read_bytes() for file in files)
    await store.close()


async def _keep_something_of(keeper: int, store: Store) -> None:
    await store.keepers.change(keeper, zone="Europe/Berlin", units=Units.CM)
    settings = await store.keepers.settings(keeper)
    assert settings == KeeperSettings(zone="Europe/Berlin", units=Units.CM)
    await store.enclosures.put(keeper, "Box", {})
    readings = [uvi(4.0), Reading(day=MAY, of=Quantity.COOL_AIR, value=25.0)]
    await store.enclosures.read(keeper, "Box", readings)
    due = datetime(2026, 6, 1, tzinfo=UTC)
    wish = ReminderExport(about=About.TUBE, enclosure="Box", due=due, zone="Europe/Berlin")
    await store.reminders.add(keeper, wish, None, None)
    await store.pool.give(61, keeper, [GIVEN], "Box")


async def _rows_with(store: Store, number: int) -> list[tuple[str, str]]:
    """Return where a number stands, in any column that could hold it."""
    found = []
    async with store.database.reading() as session:
        for table in Table.metadata.sorted_tables:
            for column in table.columns:
                if isinstance(column.type, BigInteger):
                    condition = column == number
                elif isinstance(column.type, String):
                    condition = column.contains(str(number))
                else:
                    continue
                if (await session.execute(select(column).where(condition))).first():
                    found.append((table.name, column.name))
    return found
