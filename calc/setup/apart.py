"""What touches what: how far tube, heat lamp, back and lid are from one another, way by way."""

from dataclasses import dataclass
from enum import Enum, auto
from math import hypot

from calc.setup.arrangement import Arranged, Arrangement
from calc.setup.light import LAMPS_APART_M, LEAST_LAMP_M
from calc.setup.plan import Plan
from calc.setup.room import Room
from calc.setup.set_up import beside_tubes, ends_of
from calc.uv.ground import HeatPatch
from calc.uv.nearest import COMFORTABLE_MINIMUM_M
from calc.uv.section import Box, HungTube

__all__ = ["Apart", "AtLid", "Kept", "apart", "at_lid"]

# Distances are differences of floats: this much is no distance.
_SLIP_M = 1e-6
# What is nearer to a lid than this lies on it.
_ON_M = 0.005


class Kept(Enum):
    """Which distance is shorter than its limit, the gravest first."""

    TUBE_TO_BACK = auto()
    LAMP_TO_PLATFORM = auto()
    TUBE_TO_LAMP = auto()
    ALL = auto()


class AtLid(Enum):
    """Where a lamp is by the lid."""

    OVER = auto()
    ON = auto()
    UNDER = auto()


@dataclass(frozen=True, slots=True)
class Apart:
    """Distances of one way to hang the lamps [m]; None of a heat lamp that does not hang.

    ``tube_to_lamp_m`` is seen from above, from the lamp's middle; ``tube_to_back_m`` and
    ``lamp_to_back_m`` lead to the nearest back on the platform; ``tube_over_lid_m`` and
    ``lamp_over_lid_m`` are negative under the lid. ``warm_to_cool_m`` leads along the box from the
    middle of the warm patch to the cool end wall.
    """

    tube_to_lamp_m: float | None
    tube_to_back_m: float
    lamp_to_back_m: float | None
    tube_over_lid_m: float
    lamp_over_lid_m: float | None
    warm_to_cool_m: float | None
    kept: Kept


def apart(one: Arranged, found: Plan) -> Apart:
    """Return how far the parts of an arrangement are from one another, and whether limits are kept.

    Parameters
    ----------
    one : the arrangement
    found : the plan that it hangs otherwise, unless it has one of its own

    Returns
    -------
    Apart
        Distances [m], 0 or more but for those over the lid. Kept are 20 cm from tube to back, as
        much from heat lamp to platform, and 15 cm between tube and heat lamp.

    Notes
    -----
    The heat lamp hangs as high as its plan says, over its patch or beside a tube there.
    Source: nearest_distance; plan_judgement.
    """
    plan, room = one.plan or found, one.room
    to_back_m = min(_to_platform(room, tube) for tube in room.tubes)
    over_m = room.tubes[0].z_m - room.box.height_m
    near_back = to_back_m < COMFORTABLE_MINIMUM_M - _SLIP_M
    heat, away_m = room.heat, plan.warmth.lamp_distance_m
    if heat is None or away_m is None:
        kept = Kept.TUBE_TO_BACK if near_back else Kept.ALL
        return Apart(None, to_back_m, None, over_m, None, None, kept)
    x_m, y_m = heat.x_m, beside_tubes(room.tubes, heat.y_m, room.box.depth_m)
    beside_m = min(_beside(tube, x_m, y_m) for tube in room.tubes)
    lamp_z_m = room.platform.top_m + away_m
    aside_m = hypot(
        _outside(x_m, room.platform.x0_m, room.platform.x1_m),
        _outside(y_m, room.platform.y0_m, room.platform.y1_m),
    )
    broken = (
        (Kept.TUBE_TO_BACK, near_back),
        (Kept.LAMP_TO_PLATFORM, hypot(aside_m, away_m) < LEAST_LAMP_M - _SLIP_M),
        (Kept.TUBE_TO_LAMP, beside_m < LAMPS_APART_M - _SLIP_M),
    )
    return Apart(
        tube_to_lamp_m=beside_m,
        tube_to_back_m=to_back_m,
        lamp_to_back_m=hypot(aside_m, lamp_z_m - room.back_z_m),
        tube_over_lid_m=over_m,
        lamp_over_lid_m=lamp_z_m - room.box.height_m,
        warm_to_cool_m=_to_cool(one.way, room.box, heat),
        kept=next((kept for kept, is_broken in broken if is_broken), Kept.ALL),
    )


def at_lid(over_m: float) -> AtLid:
    """Return where something is that is so far over a lid [m], negative under it."""
    if abs(over_m) < _ON_M:
        return AtLid.ON
    return AtLid.OVER if over_m > 0.0 else AtLid.UNDER


def _to_cool(way: Arrangement, box: Box, heat: HeatPatch) -> float:
    # The room of a tube across is turned: its y leads from the warm end.
    return box.depth_m - heat.y_m if way is Arrangement.ACROSS else box.length_m - heat.x_m


def _to_platform(room: Room, tube: HungTube) -> float:
    """Return the shortest way [m] from a tube, dark ends included, to a back on the platform."""
    first, last = ends_of(tube)
    place = room.platform
    along = max(place.x0_m - last, first - place.x1_m, 0.0)
    across = _outside(tube.y_m, place.y0_m, place.y1_m)
    return hypot(along, across, tube.z_m - room.back_z_m)


def _beside(tube: HungTube, x_m: float, y_m: float) -> float:
    """Return how far a point seen from above is from a tube, dark ends included [m]."""
    first, last = ends_of(tube)
    return hypot(_outside(x_m, first, last), y_m - tube.y_m)


def _outside(at_m: float, low_m: float, high_m: float) -> float:
    return max(low_m - at_m, at_m - high_m, 0.0)
