"""One database behind both drivers: transactions, pragmas, and trouble as one plain error."""

import asyncio
import time
from collections.abc import AsyncIterator, Awaitable, Callable, Mapping, Sequence
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any

from sqlalchemy import URL, Connection, Engine, event, inspect
from sqlalchemy.dialects import postgresql, sqlite
from sqlalchemy.exc import DisconnectionError
from sqlalchemy.ext.asyncio import AsyncEngine, AsyncSession, create_async_engine
from sqlalchemy.pool import ConnectionPoolEntry

from bot.database.errors import Cause, StoreUnavailableError
from bot.database.pragmas import BUSY_S, PRAGMAS
from bot.database.tables import Table
from bot.database.trouble import cause_of, telling_trouble

__all__ = ["AT_ONCE", "Database", "connect"]

AT_ONCE = 500
"""So many rows take a few milliseconds to prepare; in between, others are answered."""

_AGAIN_S = 10.0
_HOW, _FILE = "noonstone_begin", "noonstone_file"


class Database:
    """A database that is open; a transaction is taken for reading or for writing.

    ``trouble`` is why the latest transaction failed, as long as none shows that it is over.
    ``first`` is what must be done before the first transaction; as long as that fails with
    StoreUnavailableError, so does every transaction, and it is tried again now and then.
    """

    def __init__(
        self, engine: AsyncEngine, first: Callable[[], Awaitable[None]] | None = None
    ) -> None:
        self.engine = engine
        self.for_writing = engine.execution_options(**{_HOW: "BEGIN IMMEDIATE"})
        self.trouble: Cause | None = None
        self._first = first
        self._again_at = 0.0
        self._trying = asyncio.Lock()

    @property
    def is_postgresql(self) -> bool:
        """Say which of the two kinds it is."""
        return self.engine.dialect.name == "postgresql"

    async def _begun(self) -> None:
        if self._first is None:
            return
        async with self._trying:
            if self._first is None:
                return
            if time.monotonic() < self._again_at:
                raise StoreUnavailableError(self.trouble or Cause.AWAY)
            try:
                await self._first()
            except StoreUnavailableError as error:
                self.trouble = error.cause
                self._again_at = time.monotonic() + _AGAIN_S
                raise
            self._first = None

    @asynccontextmanager
    async def reading(self) -> AsyncIterator[AsyncSession]:
        """Give a transaction that only reads, and sees one state."""
        await self._begun()
        async with (
            self._watched(over=(Cause.AWAY, Cause.STARTING, Cause.BUSY, Cause.REFUSED)),
            AsyncSession(self.engine, expire_on_commit=False, autoflush=False) as session,
            session.begin(),
        ):
            yield session

    @asynccontextmanager
    async def writing(self) -> AsyncIterator[AsyncSession]:
        """Give a transaction that writes: all of it is kept, or nothing."""
        await self._begun()
        async with (
            self._watched(over=tuple(Cause)),
            AsyncSession(self.for_writing, expire_on_commit=False) as session,
            session.begin(),
        ):
            yield session

    @asynccontextmanager
    async def _watched(self, over: Sequence[Cause]) -> AsyncIterator[None]:
        """Keep why a transaction fails; one that is done shows that these causes are over."""
        try:
            async with telling_trouble():
                yield
        except StoreUnavailableError as error:
            self.trouble = error.cause
            raise
        if self.trouble in over:
            self.trouble = None

    def insert(self, table: type[Table]) -> "sqlite.Insert | postgresql.Insert":
        """Return an insert that can say what happens where the row is there already."""
        return postgresql.insert(table) if self.is_postgresql else sqlite.insert(table)

    async def put(
        self, session: AsyncSession, table: type[Table], rows: Sequence[Mapping[str, object]]
    ) -> None:
        """Write rows over those of their keys, some hundred with one statement."""
        if not rows:
            return
        new = self.insert(table)
        keys = [column.name for column in inspect(table).primary_key]
        written = {name: new.excluded[name] for name in rows[0] if name not in keys}
        put = new.on_conflict_do_update(index_elements=keys, set_=written)
        connection = await session.connection()
        for start in range(0, len(rows), AT_ONCE):
            await connection.execute(put, rows[start : start + AT_ONCE])

    async def settle(self) -> None:
        """Have SQLite carry its log over into its file now, and empty the log."""
        if self.is_postgresql:
            return
        # Inside a transaction it could not be done.
        bare = self.engine.execution_options(**{_HOW: ""})
        async with telling_trouble(), bare.connect() as connection:
            await connection.exec_driver_sql("PRAGMA wal_checkpoint(TRUNCATE)")

    async def close(self) -> None:
        """Close every connection."""
        await self.engine.dispose()


def connect(
    url: URL,
    statement_s: float = 2 * BUSY_S,
    first: Callable[[], Awaitable[None]] | None = None,
) -> Database:
    """Return a database at an address; a missing SQLite file is created, for its owner alone.

    ``statement_s`` is how long PostgreSQL may take over one statement. With a ``first`` step, which
    then makes the file too, nothing is done yet.
    """
    if url.get_backend_name() == "postgresql":
        engine = create_async_engine(
            url,
            pool_pre_ping=True,
            pool_timeout=BUSY_S,
            connect_args={"timeout": BUSY_S, "command_timeout": statement_s},
        )
        return Database(engine, first)
    if first is None:
        _make(Path(url.database or ""))
    engine = create_async_engine(url, pool_timeout=BUSY_S)
    _hold_to(engine.sync_engine, Path(url.database or ""))
    event.listen(engine.sync_engine, "connect", _set_pragmas)
    event.listen(engine.sync_engine, "begin", _begin)
    return Database(engine, first)


def _make(file: Path) -> None:
    try:
        file.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
        file.touch(mode=0o600, exist_ok=True)
    except OSError as error:
        raise StoreUnavailableError(cause_of(error)) from error


def _hold_to(engine: Engine, file: Path) -> None:
    """Have every connection be one to the file that lies there now.

    One that was opened earlier would go on writing into a file that was deleted since, and what
    it confirms would be lost; a new one would make an empty file in its place.
    """

    def is_there(*_: object) -> None:
        file.stat()

    def opened(_: object, record: ConnectionPoolEntry) -> None:
        record.info[_FILE] = _identity(file)

    def taken(_: object, record: ConnectionPoolEntry, __: object) -> None:
        if record.info.get(_FILE) != _identity(file):
            raise DisconnectionError

    event.listen(engine, "do_connect", is_there)
    event.listen(engine, "connect", opened)
    event.listen(engine, "checkout", taken)


def _identity(file: Path) -> tuple[int, int]:
    found = file.stat()
    return found.st_dev, found.st_ino


def _set_pragmas(connection: Any, _: object) -> None:
    # The driver's own way of beginning transactions would begin them too late: see _begin.
    connection.isolation_level = None
    cursor = connection.cursor()
    try:
        for pragma in PRAGMAS:
            cursor.execute(pragma)
    except BaseException:
        # Nobody else knows of the connection yet.
        connection.close()
        raise
    cursor.close()


def _begin(connection: Connection) -> None:
    # A transaction that reads first and writes later could not wait for its turn, so one that
    # writes says so at its beginning.
    how = connection.get_execution_options().get(_HOW, "BEGIN")
    if how:
        connection.exec_driver_sql(how)
