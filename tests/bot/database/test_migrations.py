"""Every earlier version of the database leads to today's, with everything in it."""

import asyncio
import subprocess
import sys
from collections.abc import AsyncIterator
from datetime import UTC, datetime
from pathlib import Path

import pytest
from alembic.autogenerate import compare_metadata
from alembic.migration import MigrationContext
from hypothesis import HealthCheck, given, settings
from sqlalchemy import URL, Connection, MetaData, insert, text

from bot.database.engine import Database, connect
from bot.database.errors import StoreTooNewError, StoreUnavailableError
from bot.database.migrations import known_versions
from bot.database.store import Store, open_store_at
from bot.database.tables import Table
from bot.database.upgrade import upgrade
from bot.language.uv_lamps import UvLamp
from bot.saved.group import OwnLamp
from bot.saved.group_file import ServerExport
from bot.saved.keeper_file import KeeperExport
from bot.saved.values import name_key
from tests.bot.database.databases import Kind, fresh_postgresql, fresh_sqlite
from tests.bot.database.kept_values import keeper_exports, server_exports
from tests.some import FULL

ROOT = Path(__file__).parent.parent.parent.parent
SERVER, KEEPER = 51, 41
OLD_LIT_LENGTH_M = 0.519
LOOKED_AT = datetime(2026, 5, 4, 12, 0, tzinfo=UTC)
LATER = {"zone", "language", "vets", "helpers", "helper_role"}
NEWER = {"lit_length_m", "kind", "point"}


@pytest.fixture
async def empty(kind: Kind, tmp_path: Path) -> AsyncIterator[URL]:
    """Return the address of a database without any tables."""
    if kind == "sqlite":
        yield fresh_sqlite(tmp_path)
    else:
        async with fresh_postgresql("migrations") as url:
            yield url


async def emptied(url: URL) -> Database:
    """Open a database and take every table out of it."""
    if url.get_backend_name() == "sqlite":
        Path(url.database or "").unlink(missing_ok=True)
    database = connect(url)
    if database.is_postgresql:
        async with database.for_writing.begin() as connection:
            await connection.execute(text("DROP SCHEMA public CASCADE"))
            await connection.execute(text("CREATE SCHEMA public"))
    return database


def tubes_of(group: ServerExport) -> tuple[OwnLamp, ...]:
    """Return the lamps that the first version could keep: those with a constant."""
    return tuple(lamp for lamp in group.lamps if lamp.point is None)


def fill(connection: Connection, group: ServerExport, keeper: KeeperExport) -> None:
    """Write rows as the first version had them, whatever the tables are today."""
    old = MetaData()
    old.reflect(connection)
    kept = group.settings.model_dump(mode="json", exclude=LATER)
    connection.execute(insert(old.tables["server"]).values(id=SERVER, **kept))
    for name, figures in (("lamp", tubes_of(group)), ("screen", group.screens)):
        for figure in figures:
            row = figure.model_dump(exclude=NEWER) | {"key": name_key(figure.name)}
            connection.execute(insert(old.tables[name]).values(server_id=SERVER, **row))
    for target in group.targets:
        row = target.model_dump() | {"subject": target.subject.value}
        connection.execute(insert(old.tables["target"]).values(server_id=SERVER, **row))
    for channel, shown in group.channels.items():
        connection.execute(
            insert(old.tables["channel"]).values(server_id=SERVER, id=channel, shown=shown.value)
        )
    own = keeper.settings.model_dump(mode="json", exclude={"language"})
    connection.execute(insert(old.tables["keeper"]).values(id=KEEPER, **own))
    for enclosure in keeper.enclosures:
        row = {"keeper_id": KEEPER, "name": enclosure.name, "key": name_key(enclosure.name)}
        setup = enclosure.setup.model_dump(mode="json", exclude_none=True)
        made = insert(old.tables["enclosure"]).values(setup=setup, **row)
        number = connection.execute(made).inserted_primary_key[0]  # type: ignore[index]
        for reading in enclosure.readings:
            values = reading.model_dump()
            connection.execute(insert(old.tables["reading"]).values(enclosure_id=number, **values))


def as_of_today(group: ServerExport) -> ServerExport:
    """Return what the rows of the first version mean today."""
    return ServerExport(
        settings=group.settings.model_copy(update=dict.fromkeys(LATER)),
        channels=group.channels,
        lamps=tuple(
            x.model_copy(update={"lit_length_m": OLD_LIT_LENGTH_M, "kind": UvLamp.T5_HO})
            for x in tubes_of(group)
        ),
        screens=group.screens,
        targets=group.targets,
    )


def unordered(group: ServerExport) -> object:
    figures = (*group.lamps, *group.screens, *group.targets, *group.animals)
    return group.settings, group.channels, {x.model_dump_json() for x in figures}


@pytest.mark.slow
@pytest.mark.parametrize("version", known_versions())
@settings(
    max_examples=6 if FULL else 3,
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture],
)
@given(group=server_exports, keeper=keeper_exports())
async def test_what_an_earlier_version_kept_is_there_today(
    empty: URL, version: str, group: ServerExport, keeper: KeeperExport
) -> None:
    database = await emptied(empty)
    try:
        await upgrade(database, known_versions()[0])
        async with database.for_writing.begin() as connection:
            await connection.run_sync(fill, group, keeper)
        await upgrade(database, version)
        await upgrade(database)
        store = Store.over(database)
        assert unordered(await store.exchange.server(SERVER)) == unordered(as_of_today(group))
        kept = await store.exchange.keeper(KEEPER)
        assert {e.name: e.setup for e in kept.enclosures} == {
            e.name: e.setup for e in keeper.enclosures
        }
        assert sum(len(e.readings) for e in kept.enclosures) == sum(
            len(e.readings) for e in keeper.enclosures
        )
        await store.enclosures.put(KEEPER, "New after the upgrade", {})
    finally:
        await database.close()


async def test_a_board_about_one_animal_keeps_it_and_what_was_told_of_it(empty: URL) -> None:
    database = await emptied(empty)
    aim = {"low": 3.0, "high": 5.0}
    moved = {"subject": "uvi", "before": aim, "now": None}
    told = {"targets": {"uvi": aim}}
    news = {"day": "2026-05-04", "moved": [moved]}

    def rows(connection: Connection) -> None:
        old = MetaData()
        old.reflect(connection)
        connection.execute(insert(old.tables["server"]).values(id=SERVER))
        shared = {"server_id": SERVER, "pinned": True, "fingerprint": "f", "state": "shown"}
        shared |= {"trouble": "", "look_at": LOOKED_AT, "wish": 1, "claimed_by": ""}
        for channel, animal in ((61, "boa"), (62, None)):
            row = shared | {"channel_id": channel, "topic": "temperatures", "animal": animal}
            kept = {"told": told, "moved": news} if animal else {}
            connection.execute(insert(old.tables["board"]).values(**row, **kept))

    try:
        await upgrade(database, "0011")
        async with database.for_writing.begin() as connection:
            await connection.run_sync(rows)
        await upgrade(database)
        first, second = await Store.over(database).boards.all(SERVER)
    finally:
        await database.close()
    assert (first.animals, second.animals) == (("boa",), ())
    assert first.told is not None
    assert first.news is not None
    assert first.told.model_dump(mode="json", exclude_none=True) == {
        "targets": {"boa": {"uvi": aim}}
    }
    assert first.news.moved["boa"][0].now is None
    assert (second.told, second.news) == (None, None)


async def test_the_migrations_lead_to_the_tables_as_they_are_declared(empty: URL) -> None:
    store = await open_store_at(empty)

    def differences(connection: Connection) -> list[object]:
        context = MigrationContext.configure(connection, opts={"compare_type": True})
        return list(compare_metadata(context, Table.metadata))

    async with store.database.engine.connect() as connection:
        assert await connection.run_sync(differences) == []
    await store.close()


async def test_a_database_of_a_newer_program_is_refused_and_left_alone(empty: URL) -> None:
    store = await open_store_at(empty)
    async with store.database.for_writing.begin() as connection:
        await connection.execute(text("UPDATE alembic_version SET version_num = '9000'"))
    await store.close()
    with pytest.raises(StoreTooNewError, match="version 9000 and this program knows"):
        await open_store_at(empty)
    database = connect(empty)
    async with database.engine.connect() as connection:
        found = await connection.execute(text("SELECT version_num FROM alembic_version"))
        assert found.scalar_one() == "9000"
    await database.close()


async def test_a_database_that_cannot_be_reached_is_one_sentence(tmp_path: Path) -> None:
    for url in (
        URL.create("postgresql+asyncpg", "moss", host="127.0.0.1", port=9, database="none"),
        URL.create("sqlite+aiosqlite", database=str(tmp_path)),
    ):
        with pytest.raises(StoreUnavailableError, match="cannot be used"):
            await open_store_at(url)


OPENING = """
import asyncio, sys
from sqlalchemy import make_url
from bot.database.store import open_store_at

async def main():
    store = await open_store_at(make_url(sys.argv[1]))
    await store.enclosures.put(int(sys.argv[2]), "Box", {})
    await store.close()

asyncio.run(main())
"""


@pytest.mark.slow
async def test_processes_that_start_together_upgrade_one_after_the_other(empty: URL) -> None:
    address = empty.render_as_string(hide_password=False)
    started = [
        subprocess.Popen(
            [sys.executable, "-c", OPENING, address, str(n)], cwd=ROOT, stderr=subprocess.PIPE
        )
        for n in range(4)
    ]
    ended = [await asyncio.to_thread(process.communicate) for process in started]
    assert [e.decode() for _, e in ended] == [""] * 4
    store = await open_store_at(empty)
    assert [await store.enclosures.names(n) for n in range(4)] == [("Box",)] * 4
    await store.close()
