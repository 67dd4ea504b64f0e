"""How often questions, animals and pages are asked for in a week: no text, no person."""

from collections.abc import Mapping
from datetime import date, timedelta

from sqlalchemy import delete, select

from bot.database.engine import Database
from bot.database.servers import hold_server
from bot.database.tables import CountRow
from bot.saved.counts import WEEKS_KEPT, Asked, Count, week_of

__all__ = ["Counts"]


class Counts:
    """The counts of all groups."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def add(self, server: int, day: date, asked: Mapping[tuple[Asked, str], int]) -> None:
        """Add to a group's counts of the week of a day, and drop those of long ago."""
        if not asked:
            return
        new = self._database.insert(CountRow).values(
            [
                {
                    "server_id": server,
                    "week": week_of(day),
                    "kind": kind.value,
                    "name": name,
                    "times": times,
                }
                for (kind, name), times in sorted(asked.items())
            ]
        )
        more = CountRow.times + new.excluded.times
        async with self._database.writing() as session:
            await hold_server(session, self._database, server)
            await session.execute(
                new.on_conflict_do_update(
                    index_elements=["server_id", "week", "kind", "name"], set_={"times": more}
                )
            )
            oldest = week_of(day - timedelta(weeks=WEEKS_KEPT))
            await session.execute(
                delete(CountRow).where(CountRow.server_id == server, CountRow.week < oldest)
            )

    async def since(self, server: int, day: date) -> tuple[Count, ...]:
        """Return a group's counts from the week of a day on, by week, kind and how often."""
        wanted = (
            select(CountRow)
            .where(CountRow.server_id == server, CountRow.week >= week_of(day))
            .order_by(CountRow.week, CountRow.kind, CountRow.times.desc(), CountRow.name)
        )
        async with self._database.reading() as session:
            return tuple(
                Count(week=row.week, kind=Asked(row.kind), name=row.name, times=row.times)
                for row in await session.scalars(wanted)
            )
