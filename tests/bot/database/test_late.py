"""A database that is not there yet: nothing waits for it, and it is used once it is there."""

import sqlite3
from collections.abc import Iterator
from contextlib import closing
from pathlib import Path

import pytest
from sqlalchemy import text

from bot.database import FILE_NAME, engine
from bot.database.errors import StoreAddressError, StoreTooNewError, StoreUnavailableError
from bot.database.pragmas import PRAGMAS
from bot.database.store import open_store, open_store_soon
from bot.language.quantities import Units

KEEPER = 4_000_000_000_000_001


@pytest.fixture(autouse=True)
def _no_pause(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(engine, "_AGAIN_S", 0.0)
    monkeypatch.setattr(engine, "PRAGMAS", ("PRAGMA busy_timeout = 50", *PRAGMAS[1:]))


@pytest.fixture
def blocked(tmp_path: Path) -> Path:
    """Return a folder in whose place a file lies."""
    folder = tmp_path / "kept"
    folder.write_text("in the way", encoding="ascii")
    return folder


@pytest.fixture
def locked(tmp_path: Path) -> Iterator[tuple[Path, sqlite3.Connection]]:
    """Return a folder whose database somebody else holds, and by what."""
    with closing(sqlite3.connect(tmp_path / FILE_NAME)) as holder:
        holder.execute("BEGIN EXCLUSIVE")
        yield tmp_path, holder


async def test_a_folder_that_cannot_be_used_yet_is_used_later(blocked: Path) -> None:
    store = await open_store_soon("", blocked)
    for _ in range(2):
        with pytest.raises(StoreUnavailableError):
            await store.keepers.change(KEEPER, units=Units.CM)
    blocked.unlink()
    await store.keepers.change(KEEPER, units=Units.CM)
    assert (await store.keepers.settings(KEEPER)).units is Units.CM
    await store.close()


async def test_a_locked_database_is_used_once_it_is_let_go(
    locked: tuple[Path, sqlite3.Connection],
) -> None:
    folder, holder = locked
    store = await open_store_soon("", folder)
    with pytest.raises(StoreUnavailableError):
        await store.keepers.settings(KEEPER)
    holder.rollback()
    assert (await store.keepers.settings(KEEPER)).units is None
    await store.close()


async def test_it_is_not_tried_with_every_question(
    blocked: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    store = await open_store_soon("", blocked)
    monkeypatch.setattr(engine, "_AGAIN_S", 3600.0)
    with pytest.raises(StoreUnavailableError):
        await store.keepers.settings(KEEPER)
    blocked.unlink()
    with pytest.raises(StoreUnavailableError):
        await store.keepers.settings(KEEPER)
    await store.close()


async def test_a_server_that_is_away_is_waited_for_too(tmp_path: Path) -> None:
    store = await open_store_soon("postgresql://moss@127.0.0.1:9/noon", tmp_path)
    with pytest.raises(StoreUnavailableError):
        await store.wishes.groups()
    await store.close()


async def test_what_waiting_does_not_mend_is_told_at_once(tmp_path: Path) -> None:
    for address in ("mysql://nothing/here", "postgresql://moss@db:70000/x", "postgresql://db:y/x"):
        with pytest.raises(StoreAddressError):
            await open_store_soon(address, tmp_path)
    store = await open_store("", tmp_path)
    async with store.database.writing() as session:
        await session.execute(text("UPDATE alembic_version SET version_num = '9999'"))
    await store.close()
    with pytest.raises(StoreTooNewError):
        await open_store_soon("", tmp_path)
