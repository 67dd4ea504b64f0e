"""The readings of a group's keepers as the engine takes them, and what they say for its answers."""

from collections.abc import Mapping, Sequence
from datetime import date, timedelta

from bot.language.uv_lamps import UvLamp
from bot.saved.kept_screens import KeptScreen
from bot.saved.pool import GroupClass, GroupFading, PooledReading, Shared
from calc.uv.lamp import SHORTEST_LIT_M, Fixture, Lamp
from calc.uv.lengths import DARK_ENDS_M
from calc.uv.pool import ENOUGH_KEEPERS
from calc.uv.pool_read import ENOUGH_FADED, PoolRead, by_class, faded
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave

__all__ = ["COUNTS_DAYS", "class_lamp", "classes_of", "fading_of", "reads_of", "screen_of"]

COUNTS_DAYS = 730
"""A reading counts for two years: after that most tubes have been replaced."""

_DAY_S = 86_400.0


def screen_of(kept: KeptScreen | None) -> Screen:
    """Return the screen of the engine for one that was kept."""
    if kept is None or kept.is_nothing:
        return NoScreen()
    if kept.mesh_x_per_m is not None and kept.mesh_y_per_m is not None and kept.wire_m is not None:
        return Weave(kept.mesh_x_per_m, kept.mesh_y_per_m, kept.wire_m)
    return FlatScreen(kept.passes or 1.0)


def class_lamp(reading: PooledReading) -> Lamp:
    """Return the lamp of the engine for the class of a T5 HO tube that was read."""
    assert reading.percent is not None
    assert reading.reflector is not None
    assert reading.tube_length_m is not None
    return Lamp(
        reading.percent,
        Fixture[reading.reflector.upper()],
        max(reading.tube_length_m - DARK_ENDS_M, SHORTEST_LIT_M),
        age_s=None if reading.age_days is None else reading.age_days * _DAY_S,
    )


def reads_of(shared: Sequence[Shared], today: date) -> dict[int, PoolRead]:
    """Return the readings of T5 HO tubes by class that still count, by their numbers."""
    oldest = today - timedelta(days=COUNTS_DAYS)
    return {
        one.number: _read(one)
        for one in shared
        if one.reading.day >= oldest
        and one.reading.own_lamp is None
        and one.reading.lamp is UvLamp.T5_HO
    }


def _read(one: Shared) -> PoolRead:
    reading = one.reading
    return PoolRead(
        keeper=one.keeper,
        box=one.box,
        day=float(reading.day.toordinal()),
        lamp=class_lamp(reading),
        screen=screen_of(reading.screen),
        distance_m=reading.distance_m,
        uvi=reading.uvi,
    )


def classes_of(reads: Mapping[int, PoolRead]) -> tuple[GroupClass, ...]:
    """Return what the readings say of each class of which enough keepers read tubes."""
    every = list(reads.values())
    found = []
    for key, pooled in by_class(every).items():
        if pooled.values.keepers < ENOUGH_KEEPERS:
            continue
        bare = [r for r in every if r.is_bare and (r.lamp.strength_percent, r.lamp.fixture) == key]
        lamp = bare[0].lamp
        found.append(
            GroupClass(
                percent=lamp.strength_percent,
                reflector="polished" if lamp.fixture is Fixture.POLISHED else "plain",
                shift=pooled.leant.mean,
                shift_variance=pooled.leant.variance,
                lamp_variance=pooled.lamp_variance,
                keepers=pooled.values.keepers,
                readings=pooled.values.readings,
                newest=date.fromordinal(round(max(r.day for r in bare))),
            )
        )
    return tuple(sorted(found, key=lambda one: (one.percent, one.reflector)))


def fading_of(reads: Mapping[int, PoolRead]) -> GroupFading | None:
    """Return how the group's tubes fade, once enough keepers repeated their readings.

    None as well where their middle may be no change at all.
    """
    found = faded(list(reads.values()))
    if found is None or found.keepers < ENOUGH_FADED or found.middle.high >= 1.0:
        return None
    return GroupFading(
        low=found.month.low,
        month=found.month.best,
        high=found.month.high,
        lamps=found.tubes,
        keepers=found.keepers,
        newest=date.fromordinal(round(max(r.day for r in reads.values()))),
    )
