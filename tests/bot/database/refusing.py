"""Databases that refuse: the real server told to, and a server that says one thing to everybody."""

import asyncio
import os
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import dataclass

from sqlalchemy import URL, make_url, text
from sqlalchemy.ext.asyncio import create_async_engine
from sqlalchemy.pool import NullPool

from bot.database.errors import Cause
from tests.bot.database.databases import SERVER, fresh_postgresql

__all__ = ["RAISED", "REFUSALS", "Refusal", "Refusing", "refusing", "refusing_everybody"]

_SSL_REQUEST = 80877103


@dataclass(frozen=True)
class Refusal:
    """What tells the server to refuse; ``{db}`` and ``{role}`` stand for the names.

    ``inside``: it is said in the database itself. ``reads``: what is kept can still be read.
    """

    told: str
    cause: Cause = Cause.REFUSED
    inside: bool = False
    reads: bool = False


REFUSALS = {
    "the role has too many connections": Refusal(
        'ALTER ROLE "{role}" CONNECTION LIMIT 0', Cause.BUSY
    ),
    "the database has too many": Refusal('ALTER DATABASE "{db}" CONNECTION LIMIT 0', Cause.BUSY),
    "the database takes none": Refusal('ALTER DATABASE "{db}" ALLOW_CONNECTIONS false'),
    "the login is revoked": Refusal('ALTER ROLE "{role}" NOLOGIN'),
    "connecting is revoked": Refusal('REVOKE CONNECT ON DATABASE "{db}" FROM PUBLIC, "{role}"'),
    "the database is gone": Refusal('DROP DATABASE "{db}" WITH (FORCE)'),
    "the tables are another's": Refusal('REASSIGN OWNED BY "{role}" TO CURRENT_USER', inside=True),
    "the tables are out of sight": Refusal("ALTER SCHEMA public RENAME TO away", inside=True),
    "only reading is allowed": Refusal(
        'ALTER DATABASE "{db}" SET default_transaction_read_only = on', Cause.READ_ONLY, reads=True
    ),
}
# What cannot be had here in earnest is said by a trigger of the real server, in its own words.
RAISED = {
    "the disk is full": ("53100", Cause.FULL),
    "memory is short": ("53200", Cause.BUSY),
    "the disk fails": ("58030", Cause.AWAY),
    "a page is damaged": ("XX001", Cause.DAMAGED),
    "a lock is not given": ("55P03", Cause.BUSY),
    "two wait for each other": ("40P01", Cause.BUSY),
    "it took too long": ("57014", Cause.BUSY),
    "an administrator ends it": ("57P01", Cause.AWAY),
}
_FUNCTION = (
    "CREATE FUNCTION refuse() RETURNS trigger LANGUAGE plpgsql AS "
    "$$ BEGIN RAISE EXCEPTION 'Willow' USING ERRCODE = '{state}'; END $$"
)
_TRIGGER = "CREATE TRIGGER refuse BEFORE INSERT ON enclosure EXECUTE FUNCTION refuse()"


@dataclass(frozen=True)
class Refusing:
    """A database of the real server that belongs to a role of its own."""

    url: URL

    async def refuse(self, refusal: Refusal) -> None:
        """Have new connections refused, or what is asked in them."""
        names = {"db": self.url.database, "role": self.url.username}
        await _tell(refusal.told.format(**names), self.url.database if refusal.inside else None)

    async def refuse_new_enclosures(self, state: str) -> None:
        """Have every new enclosure refused with this SQLSTATE."""
        await _tell(_FUNCTION.format(state=state), self.url.database)
        await _tell(_TRIGGER, self.url.database)


async def _tell(statement: str, database: str | None = None) -> None:
    url = make_url(SERVER)
    engine = create_async_engine(
        url.set(database=database or url.database),
        isolation_level="AUTOCOMMIT",
        poolclass=NullPool,
        connect_args={"timeout": 30},
    )
    async with engine.connect() as connection:
        await connection.execute(text(statement))
    await engine.dispose()


@asynccontextmanager
async def refusing() -> AsyncIterator[Refusing]:
    """Give a database of a role of its own; both are gone at the end."""
    role = f"noonstone_{os.getpid()}"
    async with fresh_postgresql("refusing") as url:
        await _tell(f"CREATE ROLE \"{role}\" LOGIN PASSWORD 'moss'")
        await _tell(f'ALTER DATABASE "{url.database}" OWNER TO "{role}"')
        await _tell(f'ALTER SCHEMA public OWNER TO "{role}"', url.database)
        yield Refusing(url.set(username=role, password="moss"))
    await _tell(f'DROP ROLE "{role}"')


@asynccontextmanager
async def refusing_everybody(state: str) -> AsyncIterator[int]:
    """Give the port of a server that refuses every connection as PostgreSQL does."""

    async def met(reader: asyncio.StreamReader, writer: asyncio.StreamWriter) -> None:
        asked = await _packet(reader)
        if int.from_bytes(asked) == _SSL_REQUEST:
            writer.write(b"N")
            await _packet(reader)
        fields = {"S": "FATAL", "V": "FATAL", "C": state, "M": "Willow"}
        body = b"".join(f"{key}{value}\0".encode() for key, value in fields.items()) + b"\0"
        writer.write(b"E" + (len(body) + 4).to_bytes(4) + body)
        writer.close()

    server = await asyncio.start_server(met, "127.0.0.1", 0)
    async with server:
        yield int(server.sockets[0].getsockname()[1])


async def _packet(reader: asyncio.StreamReader) -> bytes:
    length = int.from_bytes(await reader.readexactly(4))
    return await reader.readexactly(length - 4)
