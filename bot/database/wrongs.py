"""What somebody called wrong in a group: the newest, for its moderators."""

from sqlalchemy import delete, insert

from bot.database.engine import Database
from bot.database.newest import keep_newest, newest_of
from bot.database.servers import hold_server
from bot.database.tables import WrongRow
from bot.saved.wrongs import MOST_WRONGS, Wrong

__all__ = ["Wrongs"]


class Wrongs:
    """What was called wrong in all groups."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def add(self, server: int, wrong: Wrong) -> None:
        """Keep one of a group; the oldest give way."""
        async with self._database.writing() as session:
            await hold_server(session, self._database, server)
            await session.execute(insert(WrongRow).values(server_id=server, **wrong.model_dump()))
            await keep_newest(session, WrongRow, server, MOST_WRONGS)

    async def newest(self, server: int) -> tuple[Wrong, ...]:
        """Return all that is kept of a group, the newest first."""
        async with self._database.reading() as session:
            rows = await newest_of(session, WrongRow, server, MOST_WRONGS)
            return tuple(Wrong(day=r.day, command=r.command, given=r.given) for r in rows)

    async def clear(self, server: int) -> int:
        """Take all of a group away, and return how many."""
        async with self._database.writing() as session:
            gone = await session.scalars(
                delete(WrongRow).where(WrongRow.server_id == server).returning(WrongRow.id)
            )
            return len(gone.all())
