"""Backups: one SQLite file, whatever the database is, written while it is in use.

From SQLite the file is SQLite's own online copy; from PostgreSQL the rows of one snapshot are
copied into a new file. A backup of an earlier version is brought up to date on the way back, and
goes into either kind of database.
"""

import os
import sqlite3
from contextlib import closing
from pathlib import Path
from tempfile import TemporaryDirectory

from sqlalchemy import delete, func, insert, select, text
from sqlalchemy.ext.asyncio import AsyncConnection

from bot.database.address import sqlite_address
from bot.database.engine import Database, connect
from bot.database.errors import BackupError, BackupFault
from bot.database.tables import Table
from bot.database.trouble import telling_trouble
from bot.database.upgrade import upgrade

__all__ = ["back_up", "is_empty", "restore"]

_HEADER = b"SQLite format 3\x00"
_ROWS_AT_ONCE = 500


async def back_up(database: Database, file: Path) -> None:
    """Write everything that is kept into a new file, for its owner alone.

    The file appears whole or not at all; one that is there already is never touched.
    """
    if file.exists():
        raise BackupError(BackupFault.THERE_ALREADY, file)
    part = file.with_name(f".{file.name}.part")
    try:
        part.unlink(missing_ok=True)
        part.touch(mode=0o600)
        if database.is_postgresql:
            await _write_rows(database, part)
        else:
            _copy_online(Path(database.engine.url.database or ""), part)
        with part.open("rb") as written:
            os.fsync(written.fileno())
        part.rename(file)
    except (OSError, sqlite3.Error) as error:
        raise BackupError(BackupFault.UNWRITABLE, file) from error
    finally:
        part.unlink(missing_ok=True)


async def restore(database: Database, file: Path) -> int:
    """Replace everything that is kept by what a backup holds, in one transaction.

    Return the number of rows. A backup by a newer version raises StoreTooNewError.
    """
    with TemporaryDirectory() as folder:
        copy = Path(folder) / "backup.sqlite3"
        _check(file)
        try:
            _copy_online(file, copy)
        except (OSError, sqlite3.Error) as error:
            raise BackupError(BackupFault.UNREADABLE, file) from error
        source = connect(sqlite_address(copy))
        try:
            await upgrade(source)
            async with (
                telling_trouble(),
                source.engine.connect() as rows,
                database.for_writing.begin() as target,
            ):
                return await _replace_rows(rows, target, sequences=database.is_postgresql)
        finally:
            await source.close()


async def is_empty(database: Database) -> bool:
    """Say whether nothing at all is kept."""
    async with telling_trouble(), database.engine.connect() as connection:
        for table in Table.metadata.sorted_tables:
            if (await connection.execute(select(func.count()).select_from(table))).scalar_one():
                return False
    return True


def _check(file: Path) -> None:
    try:
        with file.open("rb") as opened:
            header = opened.read(len(_HEADER))
        if header != _HEADER:
            raise BackupError(BackupFault.NO_BACKUP, file)
        with closing(sqlite3.connect(f"{file.resolve().as_uri()}?mode=ro", uri=True)) as opened_db:
            found = opened_db.execute("PRAGMA integrity_check").fetchone()[0]
            versioned = opened_db.execute(
                "SELECT count(*) FROM sqlite_master WHERE name = 'alembic_version'"
            ).fetchone()[0]
    except (OSError, sqlite3.Error) as error:
        raise BackupError(BackupFault.UNREADABLE, file) from error
    if found != "ok" or not versioned:
        raise BackupError(BackupFault.DAMAGED, file)


def _copy_online(source: Path, target: Path) -> None:
    with closing(sqlite3.connect(source)) as opened, closing(sqlite3.connect(target)) as copy:
        opened.backup(copy)
        # A file on its own: without it, a reader would need a second file beside it.
        copy.execute("PRAGMA journal_mode = DELETE")


async def _write_rows(database: Database, file: Path) -> None:
    copy = connect(sqlite_address(file))
    snapshot = database.engine.execution_options(isolation_level="REPEATABLE READ")
    try:
        await upgrade(copy)
        async with (
            telling_trouble(),
            snapshot.begin() as rows,
            copy.for_writing.begin() as target,
        ):
            await _replace_rows(rows, target, sequences=False)
    finally:
        await copy.close()
    with closing(sqlite3.connect(file)) as written:
        written.execute("PRAGMA journal_mode = DELETE")


async def _replace_rows(
    source: AsyncConnection, target: AsyncConnection, *, sequences: bool
) -> int:
    """Empty every table of the target and fill it with the rows of the source."""
    tables = Table.metadata.sorted_tables
    for table in reversed(tables):
        await target.execute(delete(table))
    total = 0
    for table in tables:
        rows = await source.stream(select(table))
        async for part in rows.mappings().partitions(_ROWS_AT_ONCE):
            await target.execute(insert(table), [dict(row) for row in part])
            total += len(part)
        if sequences and table.autoincrement_column is not None and "id" in table.columns:
            # Rows came with their numbers, so the counter still stands at its beginning.
            await target.execute(
                text(
                    f"SELECT setval(pg_get_serial_sequence('{table.name}', 'id'), "
                    f'coalesce(max(id), 0) + 1, false) FROM "{table.name}"'
                )
            )
    return total
