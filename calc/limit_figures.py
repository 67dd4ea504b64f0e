"""The figures of the limits: ``data/limits.toml``, where a vet can review them at one look.

Where an animal has none of its own they follow by one rule from its targets.
"""

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, fields, replace
from functools import cache
from typing import Any

from calc.animal import Animal, OwnLimits
from calc.sources import Kind, source
from calc.tables import read_table

__all__ = [
    "GROUPS",
    "JUDGEMENT",
    "Limit",
    "Limits",
    "by_rule",
    "filled",
    "rows",
    "rules",
    "set_by_group",
]

JUDGEMENT = "limits_judgement"
"""The source key of a figure that is our own judgement."""

GROUPS = "groups_own"
"""The source key of a figure that a group set for itself."""

_MEMORY = "limits_memory"
_CAUTION_UNDER_K = 3.0


@dataclass(frozen=True, slots=True)
class Limit:
    """One limit with the key of its source."""

    value: float
    source: str

    @property
    def kind(self) -> Kind:
        """How far the figure may be trusted."""
        return source(self.source).kind


@dataclass(frozen=True, slots=True)
class Limits:
    """The limits of an animal [degC, UV index 1]; None where none applies or is known.

    ``coolest_air_c`` is the danger and ``caution_c`` the caution of the coolest place in reach;
    ``room_c`` is where a room keeps the box too warm; ``uvi_high`` is the highest that is wanted.
    """

    surface_c: Limit | None
    caution_c: Limit | None
    coolest_air_c: Limit | None
    room_c: Limit | None
    night_c: Limit | None
    water_caution_c: Limit | None
    water_c: Limit | None
    cold_water_c: Limit | None
    contact_c: Limit
    uvi_high: Limit | None
    uvi_now: Limit


def by_rule(animal: Animal) -> Limits:
    """Return the limits that follow from an animal's targets, where it has none of its own."""
    rule = rules()
    spot, warm, cool = animal.basking_surface_c, animal.warm_air_c, animal.cool_air_c
    surface = danger = None
    if spot is not None:
        surface = spot.high + rule["over_surface"]
        danger = min(spot.low, rule["hot_anywhere"])
    elif warm is not None:
        surface = danger = min(warm.high + rule["over_warm_air"], rule["hot_anywhere"])
    caution = None if danger is None else _caution(animal, danger)
    room = None if cool is None else cool.high + rule["over_cool_end"]
    # Water that is as warm as the coolest place may not be cools nobody.
    swims = animal.water_c is not None
    return Limits(
        surface_c=_judged(surface),
        caution_c=_judged(caution),
        coolest_air_c=_judged(danger),
        room_c=_judged(room),
        night_c=None,
        water_caution_c=_judged(caution) if swims else None,
        water_c=_judged(danger) if swims else None,
        cold_water_c=None,
        contact_c=_lain_on(_judged(surface)),
        uvi_high=None,
        uvi_now=Limit(rule["uvi_most"], JUDGEMENT),
    )


def _caution(animal: Animal, danger: float) -> float:
    """Return where the coolest place [degC] is too warm: half-way from the usual cool end."""
    cool = animal.cool_air_c
    return danger - _CAUTION_UNDER_K if cool is None else (cool.high + danger) / 2.0


def set_by_group(animal: Animal, careful: Limits) -> Limits:
    """Return what a group set for an animal of its own; for the rest the most careful of ours.

    Those are ``careful``, which hold for any animal, and what follows by rule from its targets.
    """
    own, ruled = animal.own_limits or OwnLimits(), by_rule(animal)
    surface = _own(own.surface_c) or _lower(careful.surface_c, ruled.surface_c)
    danger = _own(own.coolest_air_c)
    if danger is None:
        danger = _lower(surface, careful.coolest_air_c, ruled.coolest_air_c)
    caution = None if danger is None else Limit(_caution(animal, danger.value), JUDGEMENT)
    if own.coolest_air_c is None:
        caution = _lower(caution, careful.caution_c)
    found = replace(
        ruled,
        surface_c=surface,
        caution_c=caution,
        coolest_air_c=danger,
        night_c=_own(own.night_c) or careful.night_c,
        water_caution_c=caution if animal.water_c else None,
        water_c=danger if animal.water_c else None,
        contact_c=_lain_on(surface),
    )
    return filled(found, careful)


def _own(value: float | None) -> Limit | None:
    return None if value is None else Limit(value, GROUPS)


def _lower(*limits: Limit | None) -> Limit | None:
    return min(filter(None, limits), key=lambda limit: limit.value, default=None)


def _lain_on(surface: Limit | None) -> Limit:
    """Return what a heater that is lain on may have: its own limit, and never over the ceiling."""
    own = Limit(rules()["contact"], JUDGEMENT)
    return surface if surface is not None and surface.value < own.value else own


def _judged(value: float | None) -> Limit | None:
    return None if value is None else Limit(value, JUDGEMENT)


def filled(own: Limits, ruled: Limits) -> Limits:
    """Return an animal's own limits, with those by rule where it has none."""
    given = {f.name: getattr(own, f.name) or getattr(ruled, f.name) for f in fields(Limits)}
    whole = Limits(**given)
    room, danger = whole.room_c or whole.caution_c, whole.coolest_air_c
    if room is not None and danger is not None and room.value > danger.value:
        room = danger
    # Its water follows the room by morning.
    return replace(whole, room_c=room, night_c=whole.night_c or whole.cold_water_c)


@cache
def rules() -> Mapping[str, float]:
    """Return the figures that are one rule for every animal.

    Source: limits_judgement; babrauskas2007; nearest_distance.
    """
    found: dict[str, float] = _data()["rules"]
    return found


@cache
def _data() -> dict[str, Any]:
    return read_table("calc/data/limits.toml")


@cache
def rows() -> Mapping[str, Limits]:
    """Return the limits in the file by slug; what is not in its line is the group's careful one."""
    groups = {name: lines for name, lines in _data().items() if name != "rules"}
    found: dict[str, Limits] = {}
    for lines in groups.values():
        careful = _careful(lines.values())
        for slug, row in lines.items():
            if slug in found:
                raise ValueError(f"the limits of {slug!r} are given twice")
            found[slug] = _row(row, careful)
    return found


def _careful(lines: Iterable[Mapping[str, Any]]) -> Mapping[str, Any]:
    """Return the most careful figure of a group; only the surface is borrowed from kin."""
    surfaces = [row["surface"] for row in lines if "surface" in row]
    return {"surface": min(surfaces)} if surfaces else {}


def _row(row: Mapping[str, Any], careful: Mapping[str, Any]) -> Limits:
    known = row.get("known", {})

    def limit(name: str, end: int | None = None) -> Limit | None:
        if name not in row:
            borrowed = careful.get(name)
            return None if borrowed is None else Limit(float(borrowed), JUDGEMENT)
        value = row[name] if end is None else row[name][end]
        return Limit(float(value), known.get(name, _MEMORY))

    surface = limit("surface")
    return Limits(
        surface_c=surface,
        caution_c=limit("air", 0),
        coolest_air_c=limit("air", 1),
        room_c=None,
        night_c=limit("night"),
        water_caution_c=limit("water", 0),
        water_c=limit("water", 1),
        cold_water_c=limit("cold_water"),
        contact_c=_lain_on(surface),
        uvi_high=None,
        uvi_now=Limit(rules()["uvi_most"], JUDGEMENT),
    )
