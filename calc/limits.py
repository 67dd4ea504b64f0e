"""What no animal may be given: limits apart from targets, and whether a figure passes one.

A target is what to aim for, a limit is where harm begins; a group's own target never moves one.
"""

from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from enum import Enum, auto

from calc.animal import Animal
from calc.animals import ANY, animals
from calc.limit_figures import (
    GROUPS,
    JUDGEMENT,
    Limit,
    Limits,
    by_rule,
    filled,
    rows,
    rules,
    set_by_group,
)
from calc.states import in_states
from calc.uncertainty import Estimate

__all__ = [
    "Due",
    "Limit",
    "LimitName",
    "Limits",
    "Met",
    "Passed",
    "any_limits",
    "limits_of",
    "passed",
    "soonest",
    "under_uvi",
]

_HOUR_S = 3600.0


class LimitName(Enum):
    """What a limit is about."""

    SURFACE = auto()
    WARM_AIR = auto()
    COOLEST_AIR = auto()
    ROOM = auto()
    WATER = auto()
    NIGHT = auto()
    COLD_DAY = auto()
    COLD_WATER = auto()
    CONTACT = auto()
    WOOD = auto()
    UVI = auto()
    TUBE = auto()
    LIGHT = auto()


class Due(Enum):
    """When something has to be done about a passed limit, the soonest first."""

    NOW = 0
    TODAY = 1


@dataclass(frozen=True, slots=True)
class Met:
    """What was read, worked out or wished for; None is not judged.

    Temperatures [degC] of the hottest surface, the warm end, the coolest place, the room by day,
    the coldest of the night, the water, a heater that is lain on, the hottest wood; the UV index
    [1] with its doubt; the distance from tube to back [m]; how long it is light each day [s].
    """

    surface_c: float | None = None
    warm_air_c: float | None = None
    coolest_air_c: float | None = None
    room_c: float | None = None
    night_c: float | None = None
    water_c: float | None = None
    contact_c: float | None = None
    wood_c: float | None = None
    uvi: Estimate | None = None
    tube_m: float | None = None
    light_s: float | None = None


@dataclass(frozen=True, slots=True)
class Passed:
    """A limit that was passed: what was met, by how much (0 or more), and how soon it is due."""

    name: LimitName
    met: float
    limit: Limit
    by: float
    due: Due


def limits_of(animal: Animal) -> Limits:
    """Return the limits of an animal.

    its own; else by rule from its targets, no milder than the most careful of its group
    UV index now = min(max(2 highest, 4), 11), of what its states leave it
    an animal that a group added: what the group set; else no milder than for any animal

    Parameters
    ----------
    animal : whose; a group's own targets of an animal of the list are not looked at

    Returns
    -------
    Limits

    Notes
    -----
    Nearly all figures are from memory. Source: limits_memory; limits_judgement.

    Examples
    --------
    >>> from calc.animals import animals
    >>> limits_of(animals()["crested-gecko"]).surface_c.value
    30.0
    """
    if animal.slug == ANY:
        return any_limits()
    if animal.own_limits is not None:
        return _of_group(animal, animal.own_limits.uvi_now)
    usual = animals().get(animal.slug, animal)
    own = rows().get(animal.slug)
    limits = by_rule(usual) if own is None else filled(own, by_rule(usual))
    return _with_uvi(limits, _highest_uvi(in_states(usual, animal.states)))


def under_uvi(limits: Limits, high: float, key: str = JUDGEMENT) -> Limits:
    """Return the limits with another highest UV index [1], where that is the more careful one.

    Source: limits_judgement.
    """
    known = limits.uvi_high
    if known is not None and known.value <= high:
        return limits
    return _with_uvi(limits, Limit(high, key))


def any_limits() -> Limits:
    """Return what holds for an animal that was not named: where nearly every animal is harmed.

    Source: limits_judgement.
    """
    high = Limit(rules()["uvi_anyone"], JUDGEMENT)
    return _with_uvi(filled(rows()["any"], rows()["any"]), high)


def passed(limits: Limits, met: Met) -> tuple[Passed, ...]:
    """Return every limit that is passed, the soonest due first.

    surface: over its ceiling today, 5 K over it now; coolest place: at caution today, at danger
    now; UV index: over the highest by more than its doubt today, at ``uvi_now`` now; light: 18 h,
    today

    Parameters
    ----------
    limits : whose
    met : temperatures [degC], UV index [1], distance [m], time [s]

    Returns
    -------
    tuple of Passed

    Notes
    -----
    An empty answer is no promise of safety. Source: limits_judgement; babrauskas2007;
    nearest_distance.

    Examples
    --------
    >>> from calc.animals import animals
    >>> crested = limits_of(animals()["crested-gecko"])
    >>> [(p.name.name, p.due.name) for p in passed(crested, Met(surface_c=48.9))]
    [('SURFACE', 'NOW')]
    """
    found = (*_heat(limits, met), *_cold(limits, met), *_things(limits, met), *_light(limits, met))
    return tuple(sorted(found, key=lambda p: p.due.value))


def soonest(found: Iterable[Passed]) -> Due | None:
    """Return when the first of these is due, or None where nothing was passed."""
    return min((p.due for p in found), key=lambda due: due.value, default=None)


def _heat(limits: Limits, met: Met) -> Iterator[Passed]:
    rule = rules()
    yield from _over(LimitName.SURFACE, met.surface_c, limits.surface_c, rule["well_over"])
    # Air that is hotter than any surface may be is no better for being air.
    yield from _over(LimitName.WARM_AIR, met.warm_air_c, limits.surface_c, rule["well_over"])
    ladders = (
        (LimitName.COOLEST_AIR, met.coolest_air_c, limits.caution_c, limits.coolest_air_c),
        (LimitName.ROOM, met.room_c, limits.room_c, limits.coolest_air_c),
        (LimitName.WATER, met.water_c, limits.water_caution_c, limits.water_c),
    )
    for name, read, caution, danger in ladders:
        if read is None:
            continue
        if danger is not None and read >= danger.value:
            yield Passed(name, read, danger, read - danger.value, Due.NOW)
        elif caution is not None and read >= caution.value:
            yield Passed(name, read, caution, read - caution.value, Due.TODAY)


def _over(
    name: LimitName, read: float | None, limit: Limit | None, well_over: float
) -> Iterator[Passed]:
    if read is None or limit is None or read <= limit.value:
        return
    by = read - limit.value
    yield Passed(name, read, limit, by, Due.NOW if by >= well_over else Due.TODAY)


def _cold(limits: Limits, met: Met) -> Iterator[Passed]:
    pairs = (
        (LimitName.NIGHT, met.night_c, limits.night_c),
        # What no night may have, no day may either.
        (LimitName.COLD_DAY, met.coolest_air_c, limits.night_c),
        (LimitName.COLD_WATER, met.water_c, limits.cold_water_c),
    )
    for name, read, limit in pairs:
        if read is not None and limit is not None and read < limit.value:
            yield Passed(name, read, limit, limit.value - read, Due.TODAY)


def _things(limits: Limits, met: Met) -> Iterator[Passed]:
    rule = rules()
    yield from _over(LimitName.CONTACT, met.contact_c, limits.contact_c, 0.0)
    if met.wood_c is not None and met.wood_c >= rule["wood_margin"]:
        is_over = met.wood_c >= rule["wood"]
        limit = Limit(rule["wood" if is_over else "wood_margin"], "babrauskas2007")
        due = Due.NOW if is_over else Due.TODAY
        yield Passed(LimitName.WOOD, met.wood_c, limit, met.wood_c - limit.value, due)
    if met.tube_m is not None and met.tube_m < rule["tube_today"]:
        is_near = met.tube_m < rule["tube_now"]
        limit = Limit(rule["tube_now" if is_near else "tube_today"], "nearest_distance")
        due = Due.NOW if is_near else Due.TODAY
        yield Passed(LimitName.TUBE, met.tube_m, limit, limit.value - met.tube_m, due)
    longest = Limit(rule["light_hours"] * _HOUR_S, JUDGEMENT)
    if met.light_s is not None and met.light_s >= longest.value:
        by = met.light_s - longest.value
        yield Passed(LimitName.LIGHT, met.light_s, longest, by, Due.TODAY)


def _light(limits: Limits, met: Met) -> Iterator[Passed]:
    uvi, high = met.uvi, limits.uvi_high
    if uvi is None:
        return
    if uvi.best >= limits.uvi_now.value:
        by = uvi.best - limits.uvi_now.value
        yield Passed(LimitName.UVI, uvi.best, limits.uvi_now, by, Due.NOW)
    elif high is not None and uvi.low > high.value:
        yield Passed(LimitName.UVI, uvi.best, high, uvi.best - high.value, Due.TODAY)


def _highest_uvi(animal: Animal) -> Limit | None:
    return None if animal.uvi is None else Limit(animal.uvi.high, animal.uvi.source)


def _of_group(animal: Animal, uvi_now: float | None) -> Limits:
    careful = any_limits()
    most = rules()["uvi_anyone"] if uvi_now is None else uvi_now
    high = _highest_uvi(animal) or Limit(most, JUDGEMENT)
    limits = _with_uvi(set_by_group(animal, careful), min(high, Limit(most, JUDGEMENT), key=_value))
    if uvi_now is None:
        return limits
    return replace(limits, uvi_now=Limit(uvi_now, GROUPS))


def _value(limit: Limit) -> float:
    return limit.value


def _with_uvi(limits: Limits, high: Limit | None) -> Limits:
    rule = rules()
    highest = rule["uvi_most"] if high is None else rule["uvi_times"] * high.value
    now = min(max(highest, rule["uvi_least"]), rule["uvi_most"])
    return replace(limits, uvi_high=high, uvi_now=Limit(now, JUDGEMENT))
