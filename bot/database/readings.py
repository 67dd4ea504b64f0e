"""Dated readings of enclosures, written many at once: one statement a table, in pieces."""

from collections.abc import Mapping, Sequence

from sqlalchemy import func, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.engine import AT_ONCE, Database
from bot.database.errors import Full, LimitError
from bot.database.tables import ReadingRow
from bot.saved.keeper import KEPT_AS, MOST_READINGS, Reading, kept_quantity

__all__ = ["put_readings", "read_readings"]


async def read_readings(
    session: AsyncSession, enclosures: Sequence[int]
) -> dict[int, list[Reading]]:
    """Return the readings of enclosures by the enclosure, each in the order of their days."""
    found: dict[int, list[Reading]] = {enclosure: [] for enclosure in enclosures}
    wanted = (
        select(
            ReadingRow.enclosure_id,
            ReadingRow.day,
            ReadingRow.of,
            ReadingRow.value,
            ReadingRow.distance_m,
        )
        .where(ReadingRow.enclosure_id.in_(enclosures))
        .order_by(ReadingRow.enclosure_id, ReadingRow.day, ReadingRow.of)
    )
    rows = await session.stream(wanted)
    async for part in rows.partitions(AT_ONCE):
        for enclosure, day, of, value, distance_m in part:
            reading = Reading(day=day, of=kept_quantity(of), value=value, distance_m=distance_m)
            found[enclosure].append(reading)
    return found


async def put_readings(
    session: AsyncSession, database: Database, given: Mapping[int, Sequence[Reading]]
) -> None:
    """Write readings of enclosures of a held keeper, one a day and kind: the last one counts."""
    every = [(enclosure, reading) for enclosure, some in given.items() for reading in some]
    for start in range(0, len(every), AT_ONCE):
        part = every[start : start + AT_ONCE]
        rows = [_row(enclosure, reading) for enclosure, reading in part]
        await database.put(session, ReadingRow, rows)
    counted = (
        select(ReadingRow.enclosure_id)
        .where(ReadingRow.enclosure_id.in_(given))
        .group_by(ReadingRow.enclosure_id)
        .having(func.count() > MOST_READINGS)
    )
    if (await session.scalars(counted)).first() is not None:
        raise LimitError(MOST_READINGS, Full.READINGS)


def _row(enclosure: int, reading: Reading) -> dict[str, object]:
    return {
        "enclosure_id": enclosure,
        "day": reading.day,
        "of": KEPT_AS[reading.of],
        "value": reading.value,
        "distance_m": reading.distance_m,
    }
