"""Which tube, how far from the back, and so how high the platform, in a box of a given height."""

from collections.abc import Sequence
from dataclasses import dataclass, field
from enum import Enum
from math import log

from calc.heat.enclosure import Enclosure, LampPlace, Lid
from calc.uncertainty import Estimate
from calc.uv.choice import STRENGTHS_PERCENT
from calc.uv.lamp import Fixture, Lamp, is_between_fitted
from calc.uv.placement import safe_for_length, spot
from calc.uv.reach import Verdict, reach
from calc.uv.screen import NoScreen, Screen
from calc.validity import OutsideModelError

__all__ = [
    "FIXTURE_DEPTH_M",
    "HEAT_FIXTURE_M",
    "LAMPS_APART_M",
    "LEAST_LAMP_M",
    "LEAST_PLATFORM_M",
    "MESH_RISE_M",
    "Hanging",
    "Held",
    "LightPlan",
    "LightWish",
    "Obstacle",
    "Refused",
    "candidates",
    "plan_light",
    "rank",
]

FIXTURE_DEPTH_M = 0.05
"""How far under a lid a tube in its fixture hangs. Source: plan_judgement."""

MESH_RISE_M = 0.02
"""How far over a mesh the tube of a fixture that lies on it is. Source: plan_judgement."""

HEAT_FIXTURE_M = 0.15
"""How far under a lid the face of a heat lamp in its holder is. Source: plan_judgement."""

LEAST_LAMP_M = 0.20
"""No heat lamp nearer than this to the platform. Source: plan_judgement."""

LAMPS_APART_M = 0.15
"""A heat lamp hangs so far beside a tube [m], never under it. Source: plan_judgement."""

LEAST_PLATFORM_M = 0.02
"""The lowest platform: a flat stone. Source: plan_judgement."""

# A beginner has no meter: 14 % is far from what the model was fitted to, and on the strong side.
_LAST_RESORT_PERCENT = 14.0
# Much nearer, an inch counts for a lot; much farther, far stronger light lies within reach.
# Source: plan_judgement.
_PREFERRED_M = 0.40
_UNFITTED_COSTS = log(1.35)


class Held(Enum):
    """What keeps the platform from where the start of the range would put it."""

    NOTHING = "the back is at the start of the range"
    BY_FLOOR = "the platform is a flat stone on the floor, nearer than the start"
    BY_REACH = "the platform is as high as it may be, farther than the start"


class Obstacle(Enum):
    """Why a tube cannot serve in a box."""

    TOO_LOW = "even on a flat stone the back is nearer than the near end of the range"
    NO_ROOM_FOR_HEAT = "a heat lamp inside would be too near to a flat stone"
    PLATFORM_TOO_HIGH = "the platform would have to be higher than the animal is given"
    TOO_CLOSE = "the tube would hang nearer than the comfortable minimum"
    TOO_WEAK = "too weak even at the safe minimum"
    TOO_STRONG = "too strong even at the farthest that is answered"
    LENGTH_UNTOLD = "no place is right for every length that the owned tube may have"
    SOLID_LID = "a tube above a solid lid gives nothing below it"
    TUBE_TOO_LONG = "the tube is longer than the box"
    NO_TUBE_SHORT_ENOUGH = "every standard tube is longer than the box"
    TOO_SHORT = "the tube covers so much that no end is left for shade and cool"
    AIR_TOO_WARM = "the basking lamp would warm the whole box beyond the cool end's range"
    ROOM_TOO_WARM = "the room is warmer than the cool end may be"


_OBSTACLES = {
    Verdict.TOO_CLOSE: Obstacle.TOO_CLOSE,
    Verdict.TOO_WEAK: Obstacle.TOO_WEAK,
    Verdict.OUT_OF_RANGE: Obstacle.TOO_STRONG,
    Verdict.BY_LENGTH: Obstacle.LENGTH_UNTOLD,
}


@dataclass(frozen=True, slots=True)
class Hanging:
    """Where a tube hangs and what is below it."""

    place: LampPlace
    screen: Screen = field(default_factory=NoScreen)

    def tube_z_m(self, box: Enclosure) -> float:
        """Height of the tube over the floor [m] where it hangs as high as it can."""
        rise = -FIXTURE_DEPTH_M if self.place is LampPlace.INSIDE else MESH_RISE_M
        return box.height_m + rise


@dataclass(frozen=True, slots=True)
class LightWish:
    """What is wanted in a box: UVI [1] on a back so high over what it lies on [m]."""

    box: Enclosure
    low_uvi: float
    high_uvi: float
    back_m: float
    highest_platform_m: float
    basks: bool = True

    def __post_init__(self) -> None:
        for name, value, most in (
            ("height of the back", self.back_m, 0.5),
            ("highest platform", self.highest_platform_m, 3.0),
        ):
            if not 0.0 <= value <= most:
                raise OutsideModelError(name, value, 0.0, most, "m")

    @property
    def heat_z_m(self) -> float:
        """Height of the heat lamp's face over the floor [m]: on a mesh, or under a solid lid."""
        return self.box.height_m - (HEAT_FIXTURE_M if self.box.lid is Lid.SOLID else 0.0)

    @property
    def most_m(self) -> float:
        """The highest platform [m] that leaves the heat lamp its distance."""
        if not self.basks:
            return self.highest_platform_m
        return min(self.highest_platform_m, self.heat_z_m - LEAST_LAMP_M)


@dataclass(frozen=True, slots=True)
class LightPlan:
    """A tube in its place, and the platform that puts the back at its distance [m].

    ``near_m`` and ``far_m`` are the distances, ``low_m`` and ``high_m`` the platform heights at
    which the UVI stays in the range.
    """

    lamp: Lamp
    hanging: Hanging
    near_m: float
    distance_m: float
    far_m: float
    tube_z_m: float
    platform_top_m: float
    low_m: float
    high_m: float
    held: Held

    @property
    def uvi(self) -> Estimate:
        """What the tube gives at its distance [1]."""
        return spot(self.lamp, self.distance_m, self.hanging.screen).uvi


@dataclass(frozen=True, slots=True)
class Refused:
    """Why it cannot be done, and the height [m] from which it could, where height is the cause."""

    obstacle: Obstacle
    height_m: float | None = None


def candidates(
    lit_length_m: float, strength_percent: float | None = None, fixture: Fixture | None = None
) -> tuple[Lamp, ...]:
    """Return the lamps to choose from: every strength in both fixtures, or what is owned.

    What is not owned is bought new; the age of what is owned is not known.
    """
    strengths = STRENGTHS_PERCENT if strength_percent is None else (strength_percent,)
    fixtures = tuple(Fixture) if fixture is None else (fixture,)
    age_s = 0.0 if strength_percent is None else None
    return tuple(Lamp(s, f, lit_length_m, age_s) for s in strengths for f in fixtures)


def plan_light(lamps: Sequence[Lamp], hanging: Hanging, wish: LightWish) -> LightPlan | Refused:
    """Choose the lamp and the height of the platform for a box.

    platform top = tube height - distance - back height

    Parameters
    ----------
    lamps : what to choose from, one or more
    hanging : where the tube hangs
    wish : box, UVI range and back

    Returns
    -------
    LightPlan or Refused
        The range's start before its ends, then the lamp whose start is nearest to 0.4 m, with
        a handicap for classes that the model was not fitted to; or what is in the way.

    Notes
    -----
    Inside, a tube is hung lower where the animal is not given so high a platform; on a lid it
    cannot be. Source: uv_distance_rows; plan_judgement.

    Examples
    --------
    >>> wish = LightWish(Enclosure(1.2, 0.6, 0.6, lid=Lid.SOLID), 3.0, 5.0, 0.05, 0.4)
    >>> found = plan_light(candidates(0.819), Hanging(LampPlace.INSIDE), wish)
    >>> found.lamp.strength_percent, round(found.platform_top_m, 2)
    (8.0, 0.1)
    """
    if hanging.place is LampPlace.ABOVE_MESH and wish.box.lid is Lid.SOLID:
        return Refused(Obstacle.SOLID_LID)
    fits = [_fit(lamp, hanging, wish) for lamp in lamps]
    plans = [fit for fit in fits if isinstance(fit, LightPlan)]
    if plans:
        return min(plans, key=rank)
    refused = [fit for fit in fits if isinstance(fit, Refused)]
    order = list(Obstacle)
    heights = [fit.height_m for fit in refused if fit.height_m is not None]
    first = min((fit.obstacle for fit in refused), key=order.index)
    return Refused(first, min(heights, default=None))


def rank(plan: LightPlan, handicap: float = 1.0) -> tuple[bool, bool, float]:
    """Return how far a plan is from the one to prefer; a handicap is a factor of distance."""
    strength = plan.lamp.strength_percent
    fitted = plan.lamp.own is not None or is_between_fitted(strength)
    last = plan.lamp.own is None and strength >= _LAST_RESORT_PERCENT
    off = abs(log(plan.distance_m / _PREFERRED_M)) + (0.0 if fitted else _UNFITTED_COSTS)
    return last, plan.held is not Held.NOTHING, off + log(handicap)


def _fit(lamp: Lamp, hanging: Hanging, wish: LightWish) -> LightPlan | Refused:
    found = reach(lamp, hanging.screen, wish.low_uvi, wish.high_uvi)
    if found.ends_m is None or found.verdict is not Verdict.FITS:
        return Refused(_OBSTACLES[found.verdict])
    near_m, start_m, far_m = found.ends_m
    near_m = max(near_m, safe_for_length(lamp, hanging.screen, wish.high_uvi))
    lift = wish.box.height_m - hanging.tube_z_m(wish.box)
    needed = LEAST_PLATFORM_M + wish.back_m + start_m + lift
    if wish.most_m < LEAST_PLATFORM_M:
        for_heat = wish.box.height_m + LEAST_PLATFORM_M - wish.most_m
        return Refused(Obstacle.NO_ROOM_FOR_HEAT, max(needed, for_heat))
    tube_z, distance, held = hanging.tube_z_m(wish.box), start_m, Held.NOTHING
    top = tube_z - distance - wish.back_m
    if top > wish.most_m and hanging.place is LampPlace.INSIDE:
        tube_z -= top - wish.most_m
        top = wish.most_m
    elif top > wish.most_m:
        top, held = wish.most_m, Held.BY_REACH
        distance = tube_z - top - wish.back_m
        if distance > far_m:
            return Refused(Obstacle.PLATFORM_TOO_HIGH)
    elif top < LEAST_PLATFORM_M:
        top, held = LEAST_PLATFORM_M, Held.BY_FLOOR
        distance = tube_z - top - wish.back_m
        if distance < near_m:
            return Refused(Obstacle.TOO_LOW, needed)
    return LightPlan(
        lamp=lamp,
        hanging=hanging,
        near_m=near_m,
        distance_m=distance,
        far_m=far_m,
        tube_z_m=tube_z,
        platform_top_m=top,
        low_m=min(top, max(0.0, tube_z - far_m - wish.back_m)),
        high_m=max(top, min(wish.most_m, tube_z - near_m - wish.back_m)),
        held=held,
    )
