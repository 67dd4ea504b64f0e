"""How the lamps of a set-up may be arranged: each way is worked out, and one is picked.

Beside each other, in a row, over the whole box, across it, on the other side of the mesh, with
two heat lamps: what of the warm patch and of the basking place is in the UV range, and shade.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import Enum, auto

from calc.heat.enclosure import LampPlace, Lid
from calc.light.bands import Bands
from calc.light.illuminance import Light
from calc.setup.along import DARK_ENDS_M, Lies, fit_lying, laid_out
from calc.setup.light import FIXTURE_DEPTH_M, MESH_RISE_M
from calc.setup.plan import Plan, Request, plan_as_is
from calc.setup.room import Room
from calc.setup.sun_patch import SunPatch, met_by_light
from calc.uv.lamp import Lamp
from calc.uv.patches import Patches, Shade
from calc.uv.screen import Screen
from calc.uv.section import Box

__all__ = [
    "Arranged",
    "Arrangement",
    "arranged",
    "in_a_row",
    "picked",
    "room_of",
    "told_room",
    "two_heat_lamps",
]

_CELLS = 14
_BETWEEN_M = 0.05
_WIDE = 1.5
_SHADED = (Shade.THERE, Shade.PROBABLY)
# Finer differences of shares are within their doubt.
_ALIKE = 0.1
_FAR_BETTER = 2.0
_MUCH_SURER = 2


class Arrangement(Enum):
    """How the lamps hang, the simplest first."""

    SIDE_BY_SIDE = auto()
    IN_A_ROW = auto()
    WHOLE_LENGTH = auto()
    ACROSS = auto()
    INSIDE = auto()
    ABOVE_MESH = auto()
    TWO_HEAT_LAMPS = auto()


_COMPARED_ONLY = (Arrangement.IN_A_ROW, Arrangement.TWO_HEAT_LAMPS)
_LYING = {Arrangement.WHOLE_LENGTH: Lies.WHOLE_LENGTH, Arrangement.ACROSS: Lies.ACROSS}


@dataclass(frozen=True, slots=True)
class Arranged:
    """One arrangement: the room that it makes, and what the animal meets in it.

    ``plan`` is a plan of its own, where it takes more than hanging the lamps otherwise; ``lights``
    are white lamps beside, held against the levels of ``bands``.
    """

    way: Arrangement
    room: Room
    met: Patches
    plan: Plan | None = None
    lights: tuple[Light, ...] = ()
    bands: Bands | None = None

    @property
    def sun(self) -> SunPatch | None:
        """What of the platform is one patch of sun; None without a heat lamp."""
        return met_by_light(self.room, self.met, self.lights, self.bands)[0]

    @property
    def is_safe(self) -> bool:
        """Whether no place on the platform is likely above the range or too near to a tube."""
        return not (self.met.too_near or self.met.judged.is_likely_above)

    @property
    def has_shade(self) -> bool:
        """Whether there is likely shade to go to."""
        return self.met.shade in _SHADED


def room_of(found: Plan) -> Room:
    """Return the room that a plan makes, with its heat patch where a heat lamp hangs."""
    room = found.places.room
    return room if found.warmth.watts is not None else replace(room, heat=None)


def told_room(
    box: Box,
    lamp: Lamp,
    screen: Screen,
    distance_m: float,
    back_m: float,
    wanted: tuple[float, float],
    *,
    over: bool,
) -> Room | None:
    """Return a set-up that was told, in the usual places of its box, lamp and tube side by side.

    Parameters
    ----------
    box : the enclosure
    lamp : the tube, its length known, or several side by side
    screen : what is below it
    distance_m : from the tube to the back [m]
    back_m : height of the back over what it lies on [m]
    wanted : UV index wanted there [1]
    over : whether the tube lies over a mesh

    Returns
    -------
    Room or None
        None where the tube is longer than the box, or farther from the back than the box is high.

    Notes
    -----
    Where a platform stands was not told: it is where a plan would put it.
    Source: plan_judgement; arrangement_judgement.
    """
    long_m = lamp.lit_length_m + DARK_ENDS_M
    z_m = box.height_m + (MESH_RISE_M if over else -FIXTURE_DEPTH_M)
    top_m = z_m - distance_m - back_m
    if long_m > box.length_m or top_m < 0.0:
        return None
    tubes, platform, heat = laid_out(box, long_m, lamp, screen, z_m, top_m)
    return Room(box, tubes, platform, back_m, *wanted, heat)


def arranged(found: Plan, request: Request, other_side: Plan | None = None) -> tuple[Arranged, ...]:
    """Work out every way to hang the lamps of a plan that its box has room for.

    Parameters
    ----------
    found : the plan, tube over the warm end and heat lamp beside it
    request : what it was planned from
    other_side : the plan on the other side of the mesh, where it was made before

    Returns
    -------
    tuple of Arranged
        The plan's own first; each with what the animal meets.

    Notes
    -----
    On the other side of the mesh, over the whole box and across, strength and platform are set
    anew; a tube across is the same box turned by a quarter. Two heat lamps warm a patch half as
    wide again.
    Source: line_source; plan_judgement; arrangement_judgement.
    """
    room = room_of(found)
    plans = dict(_planned_anew(found, request, other_side))
    rooms = {
        Arrangement.SIDE_BY_SIDE: room,
        Arrangement.IN_A_ROW: in_a_row(room),
        Arrangement.TWO_HEAT_LAMPS: two_heat_lamps(room),
        **{way: room_of(plan) for way, plan in plans.items()},
    }
    return tuple(
        Arranged(way, one, one.met(_CELLS), plans.get(way), request.lights, request.bands)
        for way in Arrangement
        if (one := rooms.get(way)) is not None
    )


def picked(ways: tuple[Arranged, ...]) -> Arranged:
    """Return the way to pick: nothing likely too strong, then shade, then heat and UV together.

    A row and two heat lamps are compared only: the one parts heat and UV, the other is a step up
    from one lamp. Of ways that are alike by a tenth the simplest is picked. One whose shade is
    only not sure goes before one that serves less than half as much: a hide makes it sure. A tube
    is laid otherwise only where that serves better, or the simplest way likely has no shade and
    this one is two steps surer of it.

    Source: arrangement_judgement.
    """
    simplest, ways = ways[0], tuple(one for one in ways if one.way not in _COMPARED_ONLY)
    first = min(map(_rank, ways))
    alike = [one for one in ways if _rank(one) == first]
    most = max(map(_together, alike))
    unsure = [one for one in ways if one.is_safe and one.met.shade is Shade.CANNOT_TELL]
    far_better = [one for one in unsure if _together(one) > _FAR_BETTER * most]
    if far_better:
        alike, most = far_better, max(map(_together, far_better))
    best = next(one for one in alike if _together(one) >= most - _ALIKE)
    gained = list(Shade).index(simplest.met.shade) - list(Shade).index(best.met.shade)
    stays = simplest in unsure or (simplest.is_safe and gained < _MUCH_SURER)
    stays = stays and _together(simplest) >= _together(best) - _ALIKE
    return simplest if stays and best.way in _LYING else best


def _rank(one: Arranged) -> tuple[bool, int]:
    return not one.is_safe, 0 if one.has_shade else list(Shade).index(one.met.shade)


def _together(one: Arranged) -> float:
    heat, place = one.met.heat_in_range, one.met.in_range
    return place.best if heat is None else (heat.best + place.best) / 2.0


def in_a_row(room: Room) -> Room | None:
    """Return the heat lamp at the warm end and the tube behind it; None where that is no row.

    Source: arrangement_judgement.
    """
    heat, tube = room.heat, room.tubes[0]
    if heat is None:
        return None
    first_m = 2.0 * heat.radius_m + _BETWEEN_M
    half_m = room.tube_length_m / 2.0
    x_m = min(first_m + half_m, room.box.length_m - half_m)
    if x_m - tube.x_m < _BETWEEN_M:
        return None
    tubes = tuple(replace(one, x_m=x_m) for one in room.tubes)
    return replace(room, tubes=tubes, heat=replace(heat, x_m=heat.radius_m))


def two_heat_lamps(room: Room) -> Room | None:
    """Return two weaker heat lamps in place of one: a patch half as wide again; None without one.

    Source: arrangement_judgement.
    """
    if room.heat is None:
        return None
    wide = min(_WIDE * room.heat.radius_m, 1.0)
    return replace(room, heat=replace(room.heat, radius_m=wide))


def _planned_anew(
    found: Plan, request: Request, other_side: Plan | None
) -> Iterator[tuple[Arrangement, Plan]]:
    """Yield what takes a plan of its own: a tube that lies otherwise, the other side."""
    place = found.light.hanging.place
    here = replace(request, place=place)
    for way, lies in _LYING.items():
        longer = fit_lying(lies, request.box, request.owned.length_m)
        if longer is None or (way is Arrangement.ACROSS and len(found.places.tubes) > 1):
            continue
        if way is Arrangement.WHOLE_LENGTH and longer.length_m <= found.fit.length_m:
            continue
        lying = plan_as_is(replace(here, lies=lies))
        if isinstance(lying, Plan):
            yield way, lying
    if request.box.lid is Lid.SOLID:
        return
    inside = place is LampPlace.INSIDE
    opposite = LampPlace.ABOVE_MESH if inside else LampPlace.INSIDE
    other = other_side or plan_as_is(replace(request, place=opposite))
    if isinstance(other, Plan):
        yield (Arrangement.ABOVE_MESH if inside else Arrangement.INSIDE), other
