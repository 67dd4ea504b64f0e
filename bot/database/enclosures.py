"""Enclosures of a keeper with their dated readings; nobody reaches another's."""

from collections.abc import Mapping, Sequence
from datetime import date
from typing import Any

from sqlalchemy import ColumnElement, delete, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.engine import Database
from bot.database.errors import Full, LimitError
from bot.database.keepers import hold_keeper
from bot.database.readings import put_readings, read_readings
from bot.database.tables import EnclosureRow, ReadingRow
from bot.saved.keeper import KEPT_AS, MOST_ENCLOSURES, Enclosure, KeptQuantity, Reading, Setup
from bot.saved.values import name_key, name_of

__all__ = ["Enclosures", "enclosure_row", "enclosures_where", "put_enclosures", "read_enclosures"]


async def enclosure_row(session: AsyncSession, keeper: int, name: str) -> EnclosureRow | None:
    """Return the row of a keeper's enclosure of this name."""
    wanted = select(EnclosureRow).where(
        EnclosureRow.keeper_id == keeper, EnclosureRow.key == name_key(name)
    )
    return (await session.scalars(wanted)).one_or_none()


async def read_enclosures(session: AsyncSession, keeper: int) -> tuple[Enclosure, ...]:
    """Return all of a keeper's enclosures, in the order in which they were made."""
    return tuple((await enclosures_where(session, EnclosureRow.keeper_id == keeper)).values())


async def enclosures_where(
    session: AsyncSession, condition: ColumnElement[bool]
) -> dict[int, Enclosure]:
    """Return enclosures with their readings by the numbers of their rows."""
    wanted = select(EnclosureRow).where(condition).order_by(EnclosureRow.id)
    rows = (await session.scalars(wanted)).all()
    readings = await read_readings(session, [row.id for row in rows])
    return {row.id: _enclosure(row, readings[row.id]) for row in rows}


async def put_enclosures(
    session: AsyncSession, database: Database, keeper: int, given: Mapping[str, Setup]
) -> dict[str, int]:
    """Write enclosures of a held keeper over those of their names; return the row of each key."""
    if not given:
        return {}
    new = database.insert(EnclosureRow).values(
        [
            {
                "keeper_id": keeper,
                "key": name_key(name),
                "name": name_of(name),
                "setup": setup.model_dump(mode="json", exclude_none=True),
            }
            for name, setup in given.items()
        ]
    )
    written = {"name": new.excluded.name, "setup": new.excluded.setup}
    await session.execute(
        new.on_conflict_do_update(index_elements=["keeper_id", "key"], set_=written)
    )
    found = await session.execute(
        select(EnclosureRow.key, EnclosureRow.id).where(EnclosureRow.keeper_id == keeper)
    )
    ids = {row.key: row.id for row in found}
    if len(ids) > MOST_ENCLOSURES:
        raise LimitError(MOST_ENCLOSURES, Full.ENCLOSURES)
    return ids


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
            if row is None:
                return None
            return _enclosure(row, (await read_readings(session, [row.id]))[row.id])

    async def put(self, keeper: int, name: str, changed: dict[str, Any]) -> tuple[Setup, bool]:
        """Keep an enclosure, or change the facts named of the one that is there.

        Return its whole set-up, and whether it was there.
        """
        async with self._database.writing() as session:
            await hold_keeper(session, self._database, keeper)
            row = await enclosure_row(session, keeper, name)
            before = Setup.model_validate(row.setup) if row else Setup()
            setup = Setup.model_validate(before.model_dump() | changed)
            await put_enclosures(session, self._database, keeper, {name: setup})
            return setup, row is not None

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
            if row is None:
                return None
            before = (await read_readings(session, [row.id]))[row.id]
            await put_readings(session, self._database, {row.id: readings})
            new = {(reading.day, reading.of) for reading in readings}
            return tuple(reading for reading in before if (reading.day, reading.of) in new)

    async def unread(
        self, keeper: int, name: str, day: date, of: KeptQuantity | None = None
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
                wanted = wanted.where(ReadingRow.of == KEPT_AS[of])
            gone = await session.scalars(wanted.returning(ReadingRow.of))
            return len(gone.all())


def _enclosure(row: EnclosureRow, readings: Sequence[Reading]) -> Enclosure:
    setup = Setup.model_validate(row.setup)
    return Enclosure(name=row.name, setup=setup, readings=tuple(readings))
