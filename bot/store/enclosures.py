"""Enclosures of a keeper with their dated readings; nobody reaches another's."""

from collections.abc import Iterable, Sequence
from datetime import date
from typing import Any

from sqlalchemy import delete, func, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.kept.keeper import MOST_ENCLOSURES, MOST_READINGS, Enclosure, Measured, Reading, Setup
from bot.kept.values import name_key, name_of
from bot.store.database import Database
from bot.store.errors import LimitError
from bot.store.keepers import hold_keeper
from bot.store.tables import EnclosureRow, ReadingRow

__all__ = ["Enclosures", "enclosure_row", "put_enclosure", "put_readings", "read_enclosures"]


async def enclosure_row(session: AsyncSession, keeper: int, name: str) -> EnclosureRow | None:
    """Return the row of a keeper's enclosure of this name."""
    wanted = select(EnclosureRow).where(
        EnclosureRow.keeper_id == keeper, EnclosureRow.key == name_key(name)
    )
    return (await session.scalars(wanted)).one_or_none()


async def read_enclosures(session: AsyncSession, keeper: int) -> tuple[Enclosure, ...]:
    """Return all of a keeper's enclosures, in the order in which they were made."""
    rows = await session.scalars(
        select(EnclosureRow).where(EnclosureRow.keeper_id == keeper).order_by(EnclosureRow.id)
    )
    return tuple([await _enclosure(session, row) for row in rows.all()])


async def put_enclosure(
    session: AsyncSession, keeper: int, name: str, setup: Setup
) -> tuple[EnclosureRow, bool]:
    """Write an enclosure of a held keeper; say whether it replaced one of its name."""
    row = await enclosure_row(session, keeper, name)
    known = row is not None
    if row is None:
        counted = select(func.count()).where(EnclosureRow.keeper_id == keeper)
        if (await session.scalars(counted)).one() >= MOST_ENCLOSURES:
            raise LimitError(MOST_ENCLOSURES, "enclosures of yours")
        row = EnclosureRow(keeper_id=keeper, key=name_key(name))
        session.add(row)
    row.name = name_of(name)
    row.setup = setup.model_dump(mode="json", exclude_none=True)
    await session.flush()
    return row, known


async def put_readings(
    session: AsyncSession, enclosure: int, readings: Iterable[Reading]
) -> tuple[Reading, ...]:
    """Write readings, one a day and kind; return those that were replaced."""
    replaced = []
    for reading in readings:
        row = await session.get(ReadingRow, (enclosure, reading.day, reading.of.value))
        if row is None:
            row = ReadingRow(enclosure_id=enclosure, day=reading.day, of=reading.of.value)
            session.add(row)
        else:
            replaced.append(_reading(row))
        row.value, row.distance_m = reading.value, reading.distance_m
    await session.flush()
    counted = select(func.count()).where(ReadingRow.enclosure_id == enclosure)
    if (await session.scalars(counted)).one() > MOST_READINGS:
        raise LimitError(MOST_READINGS, "readings of this enclosure")
    return tuple(replaced)


class Enclosures:
    """The enclosures of all keepers."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def all(self, keeper: int) -> tuple[Enclosure, ...]:
        """Return a keeper's enclosures with their readings."""
        async with self._database.reading() as session:
            return await read_enclosures(session, keeper)

    async def names(self, keeper: int) -> tuple[str, ...]:
        """Return the names of a keeper's enclosures."""
        async with self._database.reading() as session:
            wanted = select(EnclosureRow.name).where(EnclosureRow.keeper_id == keeper)
            return tuple(await session.scalars(wanted.order_by(EnclosureRow.id)))

    async def named(self, keeper: int, name: str) -> Enclosure | None:
        """Return a keeper's enclosure of this name, with its readings."""
        async with self._database.reading() as session:
            row = await enclosure_row(session, keeper, name)
            return None if row is None else await _enclosure(session, row)

    async def put(self, keeper: int, name: str, changed: dict[str, Any]) -> tuple[Setup, bool]:
        """Keep an enclosure, or change the facts named of the one that is there.

        Return its whole set-up, and whether it was there.
        """
        async with self._database.writing() as session:
            await hold_keeper(session, self._database, keeper)
            row = await enclosure_row(session, keeper, name)
            before = Setup.model_validate(row.setup) if row else Setup()
            setup = Setup.model_validate(before.model_dump() | changed)
            _, known = await put_enclosure(session, keeper, name, setup)
            return setup, known

    async def remove(self, keeper: int, name: str) -> bool:
        """Remove an enclosure with all that hangs on it, and say whether it was there."""
        async with self._database.writing() as session:
            row = await enclosure_row(session, keeper, name)
            if row is None:
                return False
            await session.execute(delete(EnclosureRow).where(EnclosureRow.id == row.id))
            return True

    async def read(
        self, keeper: int, name: str, readings: Sequence[Reading]
    ) -> tuple[Reading, ...] | None:
        """Keep readings of an enclosure; return the replaced ones, None without an enclosure."""
        async with self._database.writing() as session:
            await hold_keeper(session, self._database, keeper)
            row = await enclosure_row(session, keeper, name)
            return None if row is None else await put_readings(session, row.id, readings)

    async def unread(
        self, keeper: int, name: str, day: date, of: Measured | None = None
    ) -> int | None:
        """Remove the readings of a day; return how many, None without such an enclosure."""
        async with self._database.writing() as session:
            row = await enclosure_row(session, keeper, name)
            if row is None:
                return None
            wanted = delete(ReadingRow).where(
                ReadingRow.enclosure_id == row.id, ReadingRow.day == day
            )
            if of is not None:
                wanted = wanted.where(ReadingRow.of == of.value)
            gone = await session.scalars(wanted.returning(ReadingRow.of))
            return len(gone.all())


async def _enclosure(session: AsyncSession, row: EnclosureRow) -> Enclosure:
    readings = await session.scalars(
        select(ReadingRow)
        .where(ReadingRow.enclosure_id == row.id)
        .order_by(ReadingRow.day, ReadingRow.of)
    )
    return Enclosure(
        name=row.name,
        setup=Setup.model_validate(row.setup),
        readings=tuple(_reading(r) for r in readings),
    )


def _reading(row: ReadingRow) -> Reading:
    return Reading(day=row.day, of=Measured(row.of), value=row.value, distance_m=row.distance_m)
