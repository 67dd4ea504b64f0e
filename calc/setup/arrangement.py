"""How the lamps of a set-up may be arranged: each way is worked out, and one is picked.

Beside each other, in a row, over the whole box, across it, on the other side of the mesh, with
two heat lamps: what of the warm patch and of the basking place is in the UV range, and shade.
"""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from enum import Enum, auto

from calc.heat.enclosure import LampPlace, Lid
from calc.setup.along import DARK_ENDS_M, laid_out
from calc.setup.light import FIXTURE_DEPTH_M, MESH_RISE_M
from calc.setup.plan import Plan, Request, plan_as_is
from calc.setup.room import Room
from calc.setup.sun_patch import SunPatch, sun_patch
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lamp import Lamp
from calc.uv.lengths import LengthKnown
from calc.uv.patches import Patches, Shade
from calc.uv.screen import Screen
from calc.uv.section import Box, HungTube
from calc.uv.tube import STANDARD_T5_HO, StandardTube

__all__ = ["Arranged", "Arrangement", "arranged", "in_a_row", "picked", "room_of", "told_room"]

_CELLS = 14
_BETWEEN_M = 0.05
_WIDE = 1.5
_SHADED = (Shade.THERE, Shade.PROBABLY)
# Finer differences of shares are within their doubt.
_ALIKE = 0.1
_FAR_BETTER = 2.0


class Arrangement(Enum):
    """How the lamps hang, the simplest first."""

    SIDE_BY_SIDE = auto()
    IN_A_ROW = auto()
    WHOLE_LENGTH = auto()
    ACROSS = auto()
    INSIDE = auto()
    ABOVE_MESH = auto()
    TWO_HEAT_LAMPS = auto()


@dataclass(frozen=True, slots=True)
class Arranged:
    """One arrangement: the room that it makes, and what the animal meets in it.

    ``plan`` is a plan of its own, where it takes more than hanging the lamps otherwise.
    """

    way: Arrangement
    room: Room
    met: Patches
    plan: Plan | None = None

    @property
    def sun(self) -> SunPatch:
        """What of the platform is one patch of sun."""
        return sun_patch(self.room, self.met)

    @property
    def is_safe(self) -> bool:
        """Whether no place on the platform is likely above the range or too near to a tube."""
        return not (self.met.too_near or self.met.judged.is_likely_above)

    @property
    def has_shade(self) -> bool:
        """Whether there is likely shade to go to."""
        return self.met.shade in _SHADED


def room_of(found: Plan, request: Request) -> Room:
    """Return the room that a plan makes, with its heat patch where a heat lamp hangs."""
    box, places = request.box, found.places
    heat = places.heat if found.warmth.watts is not None else None
    return Room(
        Box(box.length_m, box.depth_m, box.height_m),
        places.tubes,
        places.platform,
        request.back_m,
        request.low_uvi,
        request.high_uvi,
        heat,
    )


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


def arranged(found: Plan, request: Request) -> tuple[Arranged, ...]:
    """Work out every way to hang the lamps of a plan that its box has room for.

    Parameters
    ----------
    found : the plan, tube over the warm end and heat lamp beside it
    request : what it was planned from

    Returns
    -------
    tuple of Arranged
        The plan's own first; each with what the animal meets.

    Notes
    -----
    A tube across is the same box turned by a quarter. On the other side of the mesh the platform
    is set anew. Two heat lamps warm a patch half as wide again.
    Source: line_source; plan_judgement; arrangement_judgement.
    """
    room = room_of(found, request)
    rooms = {
        Arrangement.SIDE_BY_SIDE: room,
        Arrangement.IN_A_ROW: in_a_row(room),
        Arrangement.WHOLE_LENGTH: _whole_length(room),
        Arrangement.ACROSS: _across(room),
        Arrangement.TWO_HEAT_LAMPS: _two_heat_lamps(room),
    }
    other = dict(_other_side(found, request))
    rooms |= {way: room_of(plan, request) for way, plan in other.items()}
    return tuple(
        Arranged(way, one, one.met(_CELLS), other.get(way))
        for way in Arrangement
        if (one := rooms.get(way)) is not None
    )


def picked(ways: tuple[Arranged, ...]) -> Arranged:
    """Return the way to pick: nothing likely too strong, then shade, then heat and UV together.

    Of ways that are alike by a tenth the simplest is picked. One whose shade is only not sure
    goes before one that serves less than half as much.

    Source: arrangement_judgement.
    """
    first = min(map(_rank, ways))
    alike = [one for one in ways if _rank(one) == first]
    most = max(map(_together, alike))
    unsure = [one for one in ways if one.is_safe and one.met.shade is Shade.CANNOT_TELL]
    far_better = [one for one in unsure if _together(one) > _FAR_BETTER * most]
    if far_better:
        alike, most = far_better, max(map(_together, far_better))
    return next(one for one in alike if _together(one) >= most - _ALIKE)


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


def _whole_length(room: Room) -> Room | None:
    long = _longest(room.box.length_m)
    if long is None or long.lit_length_m <= room.tubes[0].lamp.lit_length_m:
        return None
    return _with_tube(room, long, room.box.length_m / 2.0)


def _longest(most_m: float) -> StandardTube | None:
    fitting = [tube for tube in STANDARD_T5_HO if tube.face_to_face_m <= most_m]
    return max(fitting, key=lambda tube: tube.face_to_face_m, default=None)


def _with_tube(room: Room, long: StandardTube, x_m: float) -> Room:
    lamp = _as_long(room.tubes[0].lamp, long)
    return replace(room, tubes=tuple(replace(tube, lamp=lamp, x_m=x_m) for tube in room.tubes))


def _as_long(lamp: Lamp, long: StandardTube) -> Lamp:
    known = LengthKnown.TOLD
    return replace(lamp, lit_length_m=long.lit_length_m, may_be=(), length_known=known)


def _across(room: Room) -> Room | None:
    """Return the tube from front to back over the platform, as the same box turned."""
    long = _longest(room.box.depth_m)
    if long is None or len(room.tubes) > 1:
        return None
    box, old, heat, tube = room.box, room.platform, room.heat, room.tubes[0]
    lamp = _as_long(tube.lamp, long)
    turned = HungTube(lamp, box.depth_m / 2.0, old.middle_m[0], tube.z_m, tube.screen)
    return replace(
        room,
        box=Box(box.depth_m, box.length_m, box.height_m),
        tubes=(turned,),
        platform=Platform(old.y0_m, old.y1_m, old.x0_m, old.x1_m, old.top_m),
        heat=None if heat is None else HeatPatch(heat.y_m, heat.x_m, heat.radius_m),
    )


def _two_heat_lamps(room: Room) -> Room | None:
    if room.heat is None:
        return None
    wide = min(_WIDE * room.heat.radius_m, 1.0)
    return replace(room, heat=replace(room.heat, radius_m=wide))


def _other_side(found: Plan, request: Request) -> Iterator[tuple[Arrangement, Plan]]:
    """Yield the same set-up with its tube on the other side of a mesh lid, where that can be."""
    if request.box.lid is Lid.SOLID:
        return
    inside = found.light.hanging.place is LampPlace.INSIDE
    way = Arrangement.ABOVE_MESH if inside else Arrangement.INSIDE
    place = LampPlace.ABOVE_MESH if inside else LampPlace.INSIDE
    other = plan_as_is(replace(request, place=place))
    if isinstance(other, Plan):
        yield way, other
