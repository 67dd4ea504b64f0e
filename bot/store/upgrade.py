"""Bringing a database to today's version, by one process at a time."""

from pathlib import Path

from alembic.migration import MigrationContext
from alembic.operations import Operations
from alembic.script import ScriptDirectory
from sqlalchemy import Connection, text

from bot.store.database import Database, telling_trouble
from bot.store.errors import StoreTooNewError

__all__ = ["NEWEST", "upgrade", "versions"]

NEWEST = "head"
_MIGRATIONS = Path(__file__).parent / "migrations"
# Any number will do, as long as every process takes the same one.
_LOCK = 0x4E_4F_4F_4E


async def upgrade(database: Database, to: str = NEWEST) -> None:
    """Run the migrations that are missing, all in one transaction that holds the lock.

    SQLite takes its write lock when the transaction begins. A database that is newer than this
    program raises StoreTooNewError and is left alone.
    """
    async with telling_trouble(), database.for_writing.begin() as connection:
        if database.is_postgresql:
            await connection.execute(text("SELECT pg_advisory_xact_lock(:key)"), {"key": _LOCK})
        await connection.run_sync(_upgrade, to)


def versions() -> tuple[str, ...]:
    """Return the versions that this program knows, oldest first."""
    script = _script()
    return tuple(reversed([r.revision for r in script.walk_revisions()]))


def _script() -> ScriptDirectory:
    return ScriptDirectory(str(_MIGRATIONS))


def _upgrade(connection: Connection, to: str) -> None:
    script = _script()
    context = MigrationContext.configure(connection)
    present = context.get_current_revision()
    known = versions()
    if present is not None and present not in known:
        raise StoreTooNewError(present, known[-1])
    missing = list(script.iterate_revisions(to, present or "base"))
    with Operations.context(context):
        for revision in reversed(missing):
            revision.module.upgrade()
            context.stamp(script, revision.revision)
