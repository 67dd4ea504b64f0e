"""The largest files that may be taken back, and what is counted while they are kept."""

from collections.abc import Iterator
from contextlib import contextmanager
from datetime import UTC, date, datetime, timedelta
from typing import Any

from sqlalchemy import event

from bot.database.store import Store
from bot.language.quantities import Units
from bot.saved.cases import MOST_ADVICE, Advice, Advised, CaseExport
from bot.saved.group import (
    MOST_ANIMALS,
    MOST_CHANNELS,
    MOST_LAMPS,
    MOST_SCREENS,
    MOST_TARGETS,
    OwnAnimal,
    OwnLamp,
    OwnRange,
    OwnScreen,
    OwnTarget,
    ServerSettings,
    Shown,
)
from bot.saved.group_file import ServerExport
from bot.saved.keeper import (
    MOST_ENCLOSURES,
    MOST_READINGS,
    MOST_SPARES,
    Enclosure,
    KeeperSettings,
    KeptScreen,
    Reading,
    Setup,
    Spare,
)
from bot.saved.keeper_file import KeeperExport
from bot.saved.reminders import MOST_DAYS, MOST_REMINDERS, About, ReminderExport
from bot.saved.values import LONGEST_NAME
from calc.animal import Subject
from calc.animals import animals
from calc.quantities import Quantity

__all__ = ["FULL_KEEPER", "FULL_SERVER", "LARGE", "counted_statements"]

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


# Numbers with as many digits as a number has, names of letters that take three bytes.
_LONG = 1.2345678901234567
_ZONE = "America/Argentina/ComodRivadavia"
_SLUG = max(animals(), key=len)
_SPANS = {
    Subject.UVI: OwnRange(low=_LONG, high=3 * _LONG),
    Subject.BASKING_SURFACE: OwnRange(low=20 * _LONG, high=30 * _LONG),
    Subject.WARM_AIR: OwnRange(low=15 * _LONG, high=20 * _LONG),
    Subject.COOL_AIR: OwnRange(low=15 * _LONG, high=20 * _LONG),
    Subject.NIGHT_FLOOR: OwnRange(low=9 * _LONG, high=11 * _LONG),
    Subject.NIGHT_HEAT_OFF: OwnRange(low=9 * _LONG, high=11 * _LONG),
    Subject.LIGHT_HOURS: OwnRange(low=9 * _LONG, high=11 * _LONG),
}


def _name(number: int) -> str:
    return f"盒{number}".ljust(LONGEST_NAME, "盒")


_SETUP = Setup(
    animal=_SLUG,
    tube_percent=10 * _LONG,
    reflector="polished",
    screen=KeptScreen(mesh_x_per_m=500 * _LONG, mesh_y_per_m=500 * _LONG, wire_m=_LONG / 4000),
    distance_m=_LONG / 3,
    tube_length_m=_LONG,
    tube_since=_FIRST,
    length_m=_LONG,
    depth_m=_LONG / 3,
    height_m=_LONG / 3,
)
FULL_KEEPER = KeeperExport(
    settings=KeeperSettings(units=Units.CM, zone=_ZONE),
    enclosures=tuple(
        Enclosure(
            name=_name(number),
            setup=_SETUP,
            readings=tuple(
                Reading(
                    day=_FIRST + timedelta(days=day),
                    of=Quantity.UVI,
                    value=4 * _LONG,
                    distance_m=_LONG / 3,
                )
                for day in range(MOST_READINGS)
            ),
        )
        for number in range(MOST_ENCLOSURES)
    ),
    reminders=tuple(
        ReminderExport(
            about=About.SEASON,
            enclosure=_name(number % MOST_ENCLOSURES),
            due=datetime(2030, 1, 1, number % 24, number % 60, 59, 123457, tzinfo=UTC),
            zone=_ZONE,
            every_days=MOST_DAYS,
        )
        for number in range(MOST_REMINDERS)
    ),
    spares=tuple(
        Spare(name=_name(number), tube_percent=4 * _LONG, tube_length_m=_LONG / 3, bought_on=_FIRST)
        for number in range(MOST_SPARES)
    ),
    cases=tuple(
        CaseExport(
            enclosure=_name(number),
            opened=datetime(2030, 1, 1, 23, 59, 59, 123457, tzinfo=UTC),
            advice=MOST_ADVICE * (Advice(day=_FIRST, what=Advised.HANG, value=_LONG / 3),),
        )
        for number in range(MOST_ENCLOSURES)
    ),
)
"""Everything that one person may keep, each of it as long as it may be."""

FULL_SERVER = ServerExport(
    settings=ServerSettings(
        units=Units.CM, animal=_SLUG, guide_url=f"https://{'g' * 180}.invalid", zone=_ZONE
    ),
    channels={2**62 + number: Shown.PRIVATE for number in range(MOST_CHANNELS)},
    lamps=tuple(
        OwnLamp(
            name=_name(number),
            constant_uvi_m=_LONG,
            doubt_factor=_LONG,
            readings=50,
            lit_length_m=_LONG,
            set_on=_FIRST,
        )
        for number in range(MOST_LAMPS)
    ),
    screens=tuple(
        OwnScreen(name=_name(number), passes=_LONG / 3, set_on=_FIRST)
        for number in range(MOST_SCREENS)
    ),
    targets=tuple(
        OwnTarget(
            animal=slug, subject=subject, low=span.low, best=span.low, high=span.high, set_on=_FIRST
        )
        for slug in sorted(animals())
        for subject, span in _SPANS.items()
    )[:MOST_TARGETS],
    animals=tuple(
        OwnAnimal(
            name=_name(number),
            scientific="Lacerta muscosa longissimaque vulgaris",
            wants=_SPANS,
            surface_limit_c=50.123456789012345,
            coolest_limit_c=32.123456789012345,
            night_limit_c=15.123456789012345,
            uvi_limit=_LONG,
            set_on=_FIRST,
        )
        for number in range(MOST_ANIMALS)
    ),
)
"""Everything that one group may set, each of it as long as it may be."""


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
