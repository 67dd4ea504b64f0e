"""What somebody called wrong in a group: the newest, for its moderators."""

from sqlalchemy import delete, insert, select

from bot.database.engine import Database
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
            of_group = select(WrongRow.id).where(WrongRow.server_id == server)
            oldest = of_group.order_by(WrongRow.id.desc()).offset(MOST_WRONGS - 1).limit(1)
            await session.execute(
                delete(WrongRow).where(
                    WrongRow.server_id == server, WrongRow.id < oldest.scalar_subquery()
                )
            )

    async def newest(self, server: int) -> tuple[Wrong, ...]:
        """Return all that is kept of a group, the newest first."""
        wanted = select(WrongRow).where(WrongRow.server_id == server).order_by(WrongRow.id.desc())
        async with self._database.reading() as session:
            rows = await session.scalars(wanted)
            return tuple(Wrong(day=r.day, command=r.command, given=r.given) for r in rows)

    async def clear(self, server: int) -> int:
        """Take all of a group away, and return how many."""
        async with self._database.writing() as session:
            gone = await session.scalars(
                delete(WrongRow).where(WrongRow.server_id == server).returning(WrongRow.id)
            )
            return len(gone.all())
