"""What could be done about a basking spot: a move, other lamps, a dimmer; and what forbids it."""

from dataclasses import dataclass, replace

from bot.language.mistaken import check_unit
from bot.queries.heat import BaskingQuery
from bot.questions.heat.basking_refused import Missing, refused
from bot.questions.heat.guards import FIRST_PUT_RIGHT
from bot.questions.heat.warmth import WantedHeat
from calc.heat.basking import (
    SMALLEST_RISE_K,
    DimmerChange,
    Reading,
    WattageStep,
    dimmer_for,
    distance_for,
    wattage_steps,
    watts_for,
)
from calc.heat.guards import Guard, guards
from calc.uncertainty import Estimate
from calc.validity import OutsideModelError

__all__ = ["Change", "change_for"]

# A gun is good to about 2 K: nearer to the aim than this there is nothing to gain.
_CLOSE_ENOUGH_K = 1.0
# Where no label is told, no lamp is sent nearer than this; our own caution.
_NEAREST_UNTOLD_M = 0.15
# A span shorter than this is no room to work in: a tape measure does not tell it.
_LEAST_SPAN_M = 0.01
# Under a lamp that is on no surface stays colder: the unit was mistaken.
_COLDEST_SURFACE_C, _COLDEST_AIR_C = 13.0, 5.0


@dataclass(frozen=True, slots=True)
class Change:
    """What could be done: a move, other lamps, a dimmer setting; and what trips a guard.

    ``lamps`` are for ``lamp_distance_m``: the present distance, or the least that is safe.
    """

    reading: Reading
    wanted: WantedHeat
    move: Estimate | None
    watts: Estimate | None
    lamps: tuple[WattageStep, ...]
    lamp_distance_m: float
    holder_w: float | None
    dimmer: DimmerChange | None
    guards: tuple[Guard, ...]

    @property
    def is_right(self) -> bool:
        """Whether the surface is as wanted already, from a distance that the label allows."""
        if Guard.NEARER_THAN_SAFE_DISTANCE in self.guards:
            return False
        return abs(self.reading.surface_c - self.wanted.aim_c) <= _CLOSE_ENOUGH_K

    @property
    def is_stopped(self) -> bool:
        """Whether something has to be put right before the surface matters."""
        return not set(FIRST_PUT_RIGHT).isdisjoint(self.guards)

    @property
    def may_move(self) -> bool:
        """Whether the lamp can be moved without coming nearer than its label allows."""
        return self.move is not None and Guard.NEARER_THAN_SAFE_DISTANCE not in self.guards

    @property
    def fitting(self) -> tuple[WattageStep, ...]:
        """The lamps that help and that the holder may bear, as far as its mark is told."""
        aim_c = self.wanted.aim_c
        off_k = abs(self.reading.surface_c - aim_c)
        return tuple(
            lamp
            for lamp in self.lamps
            if abs(lamp.surface_c.best - aim_c) < off_k / 2.0
            and (self.holder_w is None or lamp.watts <= self.holder_w)
        )

    @property
    def is_cooling(self) -> bool:
        """Whether the surface has to become cooler."""
        return self.wanted.aim_c < self.reading.surface_c


def change_for(query: BaskingQuery, wanted: WantedHeat) -> Change:
    """Return the change from what was measured and what is wanted."""
    _check_the_lamp_warms(query, wanted)
    reading = Reading(query.surface.low, query.air.low, query.distance.low)
    reading.wanted_rise_k(wanted.aim_c)
    nearest = _NEAREST_UNTOLD_M if query.safe is None else query.safe.low
    found = _move(reading, wanted)
    setting = 1.0 if query.dimmer is None else query.dimmer
    full = None if query.watts is None else query.watts.low
    now = None if full is None else full * setting
    safe = None if query.safe is None else query.safe.low
    holder = None if query.holder is None else query.holder.low
    away = max(reading.distance_m, nearest)
    cooling = wanted.aim_c < reading.surface_c
    dims = query.dimmer is not None or (full is not None and cooling)
    lamps = () if now is None else _lamps(reading, now, wanted, away)
    return Change(
        reading,
        wanted,
        _held(_cool_enough(found, reading, wanted), nearest),
        None if now is None else watts_for(reading, now, wanted.aim_c, away),
        lamps,
        away,
        holder,
        _as_in(lamps, _dimmer(reading, wanted, setting, full), wanted) if dims else None,
        guards(
            distance_m=reading.distance_m if found is None else found.high,
            safe_distance_m=safe,
            watts=full,
            holder_mark_w=holder,
            wood_surface_c=None if query.wood is None else query.wood.low,
            within_reach=query.reach == "yes",
        ),
    )


def _check_the_lamp_warms(query: BaskingQuery, wanted: WantedHeat) -> None:
    """Refuse air that is no cooler than the surface, or than what is wanted of it."""
    check_unit(query.surface, _COLDEST_SURFACE_C, "surface")
    check_unit(query.air, _COLDEST_AIR_C, "air")
    if query.surface.low - query.air.low < SMALLEST_RISE_K:
        raise refused(Missing.LAMP_HEAT, query.air.text)
    if wanted.aim_c - query.air.low < SMALLEST_RISE_K:
        raise refused(Missing.COOLER_AIR, query.air.text)


def _move(reading: Reading, wanted: WantedHeat) -> Estimate | None:
    """Return the new distance, or None where none that the model knows would do."""
    try:
        return distance_for(reading, wanted.aim_c)
    except OutsideModelError:
        return None


def _cool_enough(found: Estimate | None, reading: Reading, wanted: WantedHeat) -> Estimate | None:
    """Return of the new distances those from which the surface surely stays under its ceiling."""
    if found is None:
        return None
    try:
        nearest = min(distance_for(reading, wanted.ceiling_c).high, found.high)
    except OutsideModelError:
        return found
    return Estimate(max(found.low, nearest), max(found.best, nearest), found.high)


def _lamps(
    reading: Reading, watts: float, wanted: WantedHeat, away_m: float
) -> tuple[WattageStep, ...]:
    """Return the lamps sold next to the wanted one; none that may pass the ceiling."""
    steps = wattage_steps(reading, watts, wanted.aim_c, away_m)
    return tuple(step for step in steps if step.surface_c.high <= wanted.ceiling_c)


def _dimmer(
    reading: Reading, wanted: WantedHeat, setting: float, watts: float | None
) -> DimmerChange:
    """Return the dimmer's change, turned up no further than the ceiling surely allows."""
    found = dimmer_for(reading, wanted.aim_c, setting, watts)
    try:
        most = dimmer_for(reading, wanted.ceiling_c, setting, watts).setting.low
    except OutsideModelError:
        return found
    kept = found.setting
    high = max(kept.best, min(kept.high, most))
    return replace(found, setting=Estimate(kept.low, kept.best, high))


def _as_in(
    lamps: tuple[WattageStep, ...], dimmer: DimmerChange, wanted: WantedHeat
) -> DimmerChange:
    """Return the dimmer's change with a smaller lamp that is among those told, or none."""
    if dimmer.smaller_w is None:
        return dimmer
    nearest = min(lamps, key=lambda lamp: abs(lamp.surface_c.best - wanted.aim_c), default=None)
    return replace(dimmer, smaller_w=None if nearest is None else nearest.watts)


def _held(found: Estimate | None, nearest_m: float) -> Estimate | None:
    """Return what of the new distances is not too near, or None where there is no room."""
    if found is None or found.low >= nearest_m:
        return found
    if found.high < nearest_m + _LEAST_SPAN_M:
        return None
    best = found.best if found.best > nearest_m else (nearest_m + found.high) / 2.0
    return Estimate(nearest_m, best, found.high)
