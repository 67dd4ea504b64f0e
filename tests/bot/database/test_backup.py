"""Backups: whole, private, from one moment, and good for either kind of database."""

import asyncio
import sqlite3
import stat
from collections.abc import AsyncIterator
from contextlib import AsyncExitStack, closing
from datetime import date
from itertools import product
from pathlib import Path

import pytest
from sqlalchemy import select

from bot.database import FILE_NAME
from bot.database.address import address_of
from bot.database.backup import back_up, is_empty, restore
from bot.database.errors import BackupError, StoreTooNewError
from bot.database.store import Store, open_store_at
from bot.database.tables import Table
from bot.fronts.doctor import examined_database
from bot.operating.checkup import State
from bot.saved.boards import Topic
from bot.saved.counts import Asked
from bot.saved.group import By, OwnLamp
from bot.saved.keeper import Reading
from bot.saved.reminders import About, ReminderExport
from bot.settings import settings_of
from calc.quantities import Quantity
from tests.bot.database.databases import KINDS, Kind, fresh_postgresql, fresh_sqlite
from tests.bot.refusing import said

SERVER, KEEPER = 51, 41
MAY = date(2026, 5, 4)


@pytest.fixture(params=product(KINDS, KINDS), ids="-to-".join)
async def pair(
    request: pytest.FixtureRequest, tmp_path: Path
) -> AsyncIterator[tuple[Store, Store]]:
    """Return two empty stores, of each kind and each other kind."""
    async with AsyncExitStack() as stack:
        stores = []
        for name, kind in zip(("from", "to"), request.param, strict=True):
            stores.append(await opened(name, kind, tmp_path, stack))
        yield stores[0], stores[1]


async def opened(name: str, kind: Kind, folder: Path, stack: AsyncExitStack) -> Store:
    if kind == "sqlite":
        url = fresh_sqlite(folder / name)
    else:
        url = await stack.enter_async_context(fresh_postgresql(f"backup_{name}"))
    store = await open_store_at(url)
    stack.push_async_callback(store.close)
    return store


async def fill(store: Store, by: By) -> None:
    lamp = OwnLamp(
        name="Hood",
        constant_uvi_m=1.9,
        doubt_factor=1.1,
        readings=3,
        lit_length_m=0.52,
        set_on=MAY,
    )
    await store.figures.put(SERVER, lamp, by)
    await store.boards.put(SERVER, 61, Topic.GUIDE, ["leopard-gecko"], by)
    await store.counts.add(SERVER, MAY, {(Asked.PAGE, "screens"): 4})
    await store.enclosures.put(KEEPER, "Pebble’s box", {"distance_m": 0.35})
    reading = Reading(day=MAY, of=Quantity.UVI, value=4.2, distance_m=0.35)
    await store.enclosures.read(KEEPER, "Pebble’s box", [reading])
    wish = ReminderExport(about=About.METER, enclosure="pebble’s box", due=by.at, zone="UTC")
    await store.reminders.add(KEEPER, wish, SERVER, 61)


async def everything(store: Store) -> dict[str, list[tuple[object, ...]]]:
    async with store.database.reading() as session:
        return {
            table.name: [tuple(row) for row in await session.execute(select(table))]
            for table in Table.metadata.sorted_tables
        }


async def test_a_backup_comes_back_the_same_in_either_kind(
    pair: tuple[Store, Store], tmp_path: Path, by: By
) -> None:
    source, target = pair
    await fill(source, by)
    await target.enclosures.put(KEEPER + 1, "Was here before", {})
    await back_up(source.database, tmp_path / "kept.backup")
    rows = await restore(target.database, tmp_path / "kept.backup")
    kept = await everything(source)
    assert rows == sum(len(table) for table in kept.values()) > 8
    assert await everything(target) == kept
    # The counters go on where the rows end.
    await target.enclosures.put(KEEPER, "New", {})
    await target.servers.change(SERVER, by, zone="UTC")


async def test_a_backup_is_for_its_owner_and_is_one_file(
    store: Store, tmp_path: Path, by: By
) -> None:
    await fill(store, by)
    file = tmp_path / "out" / "kept.backup"
    file.parent.mkdir()
    await back_up(store.database, file)
    assert list(file.parent.iterdir()) == [file]
    assert stat.S_IMODE(file.stat().st_mode) == 0o600


async def test_a_file_that_is_there_is_never_overwritten(store: Store, tmp_path: Path) -> None:
    file = tmp_path / "precious"
    file.write_text("mine")
    with pytest.raises(BackupError, match="there already"):
        await back_up(store.database, file)
    assert file.read_text() == "mine"


async def test_a_backup_taken_while_others_write_holds_only_whole_writes(
    store: Store, tmp_path: Path
) -> None:
    async def write(keeper: int) -> None:
        for number in range(12):
            await store.enclosures.put(keeper, f"Box {number}", {})
            pair = [
                Reading(day=MAY, of=of, value=20.0) for of in (Quantity.WARM_AIR, Quantity.COOL_AIR)
            ]
            await store.enclosures.read(keeper, f"Box {number}", pair)

    writers = [asyncio.create_task(write(keeper)) for keeper in (1, 2)]
    files = [tmp_path / f"{number}.backup" for number in range(3)]
    for file in files:
        await back_up(store.database, file)
        await asyncio.sleep(0)
    await asyncio.gather(*writers)
    for file in files:
        with closing(sqlite3.connect(file)) as copy:
            halves = "SELECT count(*) FROM reading GROUP BY enclosure_id HAVING count(*) <> 2"
            assert copy.execute(halves).fetchall() == []


@pytest.mark.parametrize("content", [b"", b"hello", b"SQLite format 3\x00" + b"\x07" * 4096])
async def test_what_is_no_backup_is_refused_and_nothing_is_lost(
    store: Store, tmp_path: Path, content: bytes
) -> None:
    await store.enclosures.put(KEEPER, "Box", {})
    (tmp_path / "no.backup").write_bytes(content)
    with pytest.raises(BackupError):
        await restore(store.database, tmp_path / "no.backup")
    with pytest.raises(BackupError):
        await restore(store.database, tmp_path / "missing.backup")
    assert await store.enclosures.names(KEEPER) == ("Box",)


async def test_another_programs_database_and_a_newer_one_are_refused(
    store: Store, tmp_path: Path, by: By
) -> None:
    await fill(store, by)
    other = tmp_path / "other.sqlite3"
    with closing(sqlite3.connect(other)) as made:
        made.execute("CREATE TABLE recipes (name TEXT)")
    with pytest.raises(BackupError, match="not a backup"):
        await restore(store.database, other)
    newer = tmp_path / "newer.backup"
    await back_up(store.database, newer)
    with closing(sqlite3.connect(newer)) as made:
        made.execute("UPDATE alembic_version SET version_num = '9000'")
        made.commit()
    before = await everything(store)
    with pytest.raises(StoreTooNewError):
        await restore(store.database, newer)
    assert await everything(store) == before


async def test_a_store_with_anything_in_it_is_not_empty(store: Store, by: By) -> None:
    assert await is_empty(store.database)
    await store.servers.change(SERVER, by, zone="UTC")
    assert not await is_empty(store.database)


async def test_the_doctor_finds_a_damaged_file_and_its_way_brings_everything_back(
    tmp_path: Path, by: By
) -> None:
    address = address_of("", tmp_path)
    store = await open_store_at(address)
    await fill(store, by)
    await store.database.settle()
    backup = tmp_path / "before.backup"
    await back_up(store.database, backup)
    wanted = await everything(store)
    await store.close()
    file = tmp_path / FILE_NAME
    whole = file.read_bytes()
    half = len(whole) // 2
    file.write_bytes(whole[:half] + b"\xa5" * (len(whole) - half))

    finding = await examined_database(settings_of({"NOONSTONE_DATA_DIR": str(tmp_path)}))
    told = said(finding.told)
    assert finding.state is State.TO_DO
    assert f"{file} is damaged" in told
    assert told.endswith(
        "move that file away but keep it, then put the newest backup back: "
        "noonstone restore BACKUP."
    )

    file.rename(tmp_path / "damaged")
    again = await open_store_at(address)
    assert await restore(again.database, backup) > 0
    assert await everything(again) == wanted
    await again.close()
