"""What counts for every question at a console, read from an SQLite file without the store.

To load SQLAlchemy takes longer than to answer. Two rows say how a keeper and a group want to be
answered; where the group keeps figures or readings too, or the file is not of today's version, all
else is the store's.
"""

import sqlite3
from collections.abc import Iterator, Mapping
from contextlib import closing, contextmanager
from datetime import date, timedelta
from pathlib import Path
from typing import NamedTuple, TypeVar

from bot.database.migrations import known_versions
from bot.database.pragmas import BUSY_S, PRAGMAS
from bot.saved.counts import WEEKS_KEPT, Asked, week_of
from bot.saved.group import ServerSettings
from bot.saved.keeper import KeeperSettings
from bot.saved.values import Kept

__all__ = ["Glance", "count", "glance"]

_T = TypeVar("_T", bound=Kept)
_FIGURES = ("lamp", "screen", "target", "animal", "pooled")


class Glance(NamedTuple):
    """How a keeper and a group want to be answered."""

    keeper: KeeperSettings
    group: ServerSettings


def glance(file: Path, keeper: int, server: int) -> Glance | None:
    """Return what a file says of a keeper and a group; None where the store has to be opened."""
    try:
        with _connected(file) as connection:
            found = connection.execute("SELECT version_num FROM alembic_version").fetchall()
            if [version for (version,) in found] != [known_versions()[-1]]:
                return None
            for table in _FIGURES:
                own = f"SELECT 1 FROM {table} WHERE server_id = ? LIMIT 1"
                if connection.execute(own, (server,)).fetchone():
                    return None
            return Glance(
                _settings(connection, KeeperSettings, "keeper", keeper),
                _settings(connection, ServerSettings, "server", server),
            )
    except (sqlite3.Error, OSError):
        # Why it cannot be read, the store tells.
        return None


def count(file: Path, server: int, day: date, asked: Mapping[tuple[Asked, str], int]) -> bool:
    """Add to a group's counts of the week of a day as the store does; say whether that was done."""
    if not asked:
        return True
    rows = [(server, week_of(day), kind, name, times) for (kind, name), times in asked.items()]
    oldest = week_of(day - timedelta(weeks=WEEKS_KEPT))
    try:
        with _connected(file) as connection:
            connection.execute("BEGIN IMMEDIATE")
            connection.execute(
                "INSERT INTO server (id) VALUES (?) ON CONFLICT DO NOTHING", (server,)
            )
            connection.executemany(
                "INSERT INTO count (server_id, week, kind, name, times) VALUES (?, ?, ?, ?, ?)"
                " ON CONFLICT DO UPDATE SET times = times + excluded.times",
                rows,
            )
            connection.execute(
                "DELETE FROM count WHERE server_id = ? AND week < ?", (server, oldest)
            )
            connection.execute("COMMIT")
    except (sqlite3.Error, OSError):
        return False
    return True


@contextmanager
def _connected(file: Path) -> Iterator[sqlite3.Connection]:
    # Where there is no file, none is made.
    address = f"{file.absolute().as_uri()}?mode=rw"
    with closing(
        sqlite3.connect(address, timeout=BUSY_S, isolation_level=None, uri=True)
    ) as connection:
        for pragma in PRAGMAS:
            connection.execute(pragma)
        yield connection


def _settings(connection: sqlite3.Connection, kind: type[_T], table: str, number: int) -> _T:
    names = tuple(kind.model_fields)
    wanted = f"SELECT {', '.join(names)} FROM {table} WHERE id = ?"
    row = connection.execute(wanted, (number,)).fetchone()
    return kind() if row is None else kind.model_validate(dict(zip(names, row, strict=True)))
