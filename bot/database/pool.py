"""Readings that keepers gave to a group: given, taken back, cleared; whose they are stays here."""

from collections.abc import Mapping, Sequence
from datetime import date

from sqlalchemy import ColumnElement, delete, func, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.engine import Database
from bot.database.errors import Full, LimitError
from bot.database.keepers import hold_keeper
from bot.database.pool_table import PooledRow
from bot.database.servers import hold_server
from bot.database.tables import EnclosureRow
from bot.saved.pool import (
    MOST_GIVEN,
    MOST_GIVEN_EVERYWHERE,
    MOST_POOLED,
    GivenReading,
    PooledReading,
    Shared,
)
from bot.saved.values import name_key

__all__ = ["Pool", "put_pooled", "read_given"]


async def read_given(session: AsyncSession, keeper: int) -> tuple[GivenReading, ...]:
    """Return what a keeper gave to any group, for the keeper's own file."""
    wanted = (
        select(PooledRow, EnclosureRow.name)
        .outerjoin(EnclosureRow, EnclosureRow.id == PooledRow.enclosure_id)
        .where(PooledRow.keeper_id == keeper)
        .order_by(PooledRow.id)
    )
    return tuple(
        GivenReading(group=row.server_id, enclosure=name, reading=_reading(row))
        for row, name in await session.execute(wanted)
    )


async def put_pooled(
    session: AsyncSession,
    database: Database,
    server: int,
    keeper: int,
    readings: Sequence[tuple[PooledReading, int | None]],
) -> int:
    """Write readings of a held keeper, each with the row of its enclosure; return how many are new.

    What the keeper gave to the group before is not doubled.
    """
    await hold_server(session, database, server)
    mine = PooledRow.server_id == server, PooledRow.keeper_id == keeper
    before = [_reading(row) for row in await session.scalars(select(PooledRow).where(*mine))]
    new = [(one, box) for one, box in dict(readings).items() if one not in before]
    if len(before) + len(new) > max(MOST_GIVEN, len(before)):
        raise LimitError(MOST_GIVEN, Full.GIVEN)
    if (
        new
        and await _count(session, PooledRow.keeper_id == keeper) + len(new) > MOST_GIVEN_EVERYWHERE
    ):
        raise LimitError(MOST_GIVEN_EVERYWHERE, Full.GIVEN_EVERYWHERE)
    if new and await _count(session, PooledRow.server_id == server) + len(new) > MOST_POOLED:
        raise LimitError(MOST_POOLED, Full.POOLED)
    of_keeper = {"server_id": server, "keeper_id": keeper}
    for one, box in new:
        told = one.model_dump() | {"screen": one.screen and one.screen.model_dump(mode="json")}
        session.add(PooledRow(**of_keeper, enclosure_id=box, **told))
    return len(new)


async def _count(session: AsyncSession, where: ColumnElement[bool]) -> int:
    counted = select(func.count()).select_from(PooledRow).where(where)
    return (await session.scalars(counted)).one()


class Pool:
    """The readings of all groups."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def give(
        self, server: int, keeper: int, readings: Sequence[PooledReading], enclosure: str = ""
    ) -> int:
        """Keep a keeper's readings for a group, and return how many are new there."""
        async with self._database.writing() as session:
            await hold_keeper(session, self._database, keeper)
            boxes = select(EnclosureRow.id).where(
                EnclosureRow.keeper_id == keeper, EnclosureRow.key == name_key(enclosure)
            )
            box = (await session.scalars(boxes)).one_or_none()
            with_box = [(one, box) for one in readings]
            return await put_pooled(session, self._database, server, keeper, with_box)

    async def of_group(self, server: int) -> tuple[Shared, ...]:
        """Return all readings of a group, the oldest first."""
        wanted = select(PooledRow).where(PooledRow.server_id == server)
        async with self._database.reading() as session:
            rows = (await session.scalars(wanted.order_by(PooledRow.id))).all()
        keepers = _counted([row.keeper_id for row in rows])
        boxes = _counted([row.enclosure_id for row in rows if row.enclosure_id is not None])
        return tuple(
            Shared(
                number=row.id,
                keeper=keepers[row.keeper_id],
                box=None if row.enclosure_id is None else boxes[row.enclosure_id],
                reading=_reading(row),
            )
            for row in rows
        )

    async def of_keeper(self, server: int, keeper: int) -> dict[int, PooledReading]:
        """Return what a keeper gave to a group by its numbers, the oldest first."""
        wanted = select(PooledRow).where(
            PooledRow.server_id == server, PooledRow.keeper_id == keeper
        )
        async with self._database.reading() as session:
            rows = await session.scalars(wanted.order_by(PooledRow.id))
            return {row.id: _reading(row) for row in rows}

    async def given(self, keeper: int) -> int:
        """Return how many readings a keeper gave to all groups."""
        async with self._database.reading() as session:
            return await _count(session, PooledRow.keeper_id == keeper)

    async def take_back(self, server: int, keeper: int, number: int | None = None) -> int:
        """Delete a keeper's reading of a number, or all that the keeper gave; return how many."""
        of_keeper = PooledRow.server_id == server, PooledRow.keeper_id == keeper
        one = () if number is None else (PooledRow.id == number,)
        return await self._delete(*of_keeper, *one)

    async def clear(self, server: int, number: int) -> int:
        """Delete the reading of a number from a group; return how many."""
        return await self._delete(PooledRow.server_id == server, PooledRow.id == number)

    async def _delete(self, *where: object) -> int:
        async with self._database.writing() as session:
            gone = await session.scalars(
                delete(PooledRow).where(*where).returning(PooledRow.id)  # type: ignore[arg-type]
            )
            found = len(gone.all())
        await self._database.settle()
        return found

    async def ask_once(self, keeper: int, day: date) -> bool:
        """Note that a keeper is asked on a day; say whether that is the first time."""
        async with self._database.writing() as session:
            row = await hold_keeper(session, self._database, keeper)
            if row.asked_on is not None:
                return False
            row.asked_on = day
            return True


def _counted(keys: Sequence[int]) -> Mapping[int, int]:
    """Return a number for each key, in the order in which they come."""
    return {key: number for number, key in enumerate(dict.fromkeys(keys))}


def _reading(row: PooledRow) -> PooledReading:
    return PooledReading.model_validate(
        {name: getattr(row, name) for name in PooledReading.model_fields}
    )
