"""The largest import that a file may hold, and what is counted while it is kept."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import date, timedelta
from typing import Any

from sqlalchemy import event

from bot.kept.keeper import MOST_ENCLOSURES, Enclosure, KeeperExport, Reading, Setup
from bot.store.store import Store
from calc.quantities import Quantity

__all__ = ["LARGE", "counted_statements"]

_FIRST = date(2025, 1, 1)


def _reading(number: int) -> Reading:
    day = _FIRST + timedelta(days=number // 2)
    if number % 2 == 0:
        return Reading(day=day, of=Quantity.COOL_AIR, value=24.0)
    return Reading(day=day, of=Quantity.UVI, value=4.2, distance_m=0.3)


LARGE = KeeperExport(
    enclosures=tuple(
        Enclosure(
            name=f"Box {number}",
            setup=Setup(distance_m=0.3),
            readings=tuple(_reading(reading) for reading in range(450)),
        )
        for number in range(MOST_ENCLOSURES)
    )
)


@contextmanager
def counted_statements(store: Store) -> Iterator[list[str]]:
    """Give the statements that a store sends from now on."""
    sent: list[str] = []

    def count(*told: Any) -> None:
        sent.append(told[2])

    engine = store.database.engine.sync_engine
    event.listen(engine, "before_cursor_execute", count)
    yield sent
    event.remove(engine, "before_cursor_execute", count)
