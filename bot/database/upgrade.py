"""Bringing a database to today's version, by one process at a time."""

from sqlalchemy import Connection, inspect, text

from bot.database.engine import Database
from bot.database.errors import StoreTooNewError
from bot.database.migrations import MIGRATIONS, known_versions
from bot.database.trouble import telling_trouble

__all__ = ["present", "upgrade"]

# Any number will do, as long as every process takes the same one.
_LOCK = 0x4E_4F_4F_4E


async def upgrade(database: Database, to: str = "") -> None:
    """Run the migrations that are missing, all in one transaction that holds the lock.

    SQLite takes its write lock when the transaction begins. A database that is newer than this
    program raises StoreTooNewError and is left alone. ``to`` is the newest version if not given.
    """
    async with telling_trouble(), database.for_writing.begin() as connection:
        if database.is_postgresql:
            await connection.execute(text("SELECT pg_advisory_xact_lock(:key)"), {"key": _LOCK})
        await connection.run_sync(_upgrade, to or known_versions()[-1])


def _upgrade(connection: Connection, to: str) -> None:
    version = present(connection)
    if version is not None and version not in known_versions():
        raise StoreTooNewError(version, known_versions()[-1])
    if version == to:
        return
    # Needed only for a new version.
    from alembic.migration import MigrationContext
    from alembic.operations import Operations
    from alembic.script import ScriptDirectory

    script = ScriptDirectory(str(MIGRATIONS))
    context = MigrationContext.configure(connection)
    missing = list(script.iterate_revisions(to, version or "base"))
    with Operations.context(context):
        for revision in reversed(missing):
            revision.module.upgrade()
            context.stamp(script, revision.revision)


def present(connection: Connection) -> str | None:
    """Return the version of a database, none where nothing was made in it yet."""
    if not inspect(connection).has_table("alembic_version"):
        return None
    found = connection.execute(text("SELECT version_num FROM alembic_version")).scalar()
    return None if found is None else str(found)
