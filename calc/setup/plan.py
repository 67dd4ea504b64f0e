"""The whole set-up in one box, or what is in the way; what would change that is in ``changes``."""

from dataclasses import dataclass, field

from calc.animal import Animal
from calc.heat.enclosure import Enclosure, LampPlace, Lid
from calc.heat.first_wattage import LampShape
from calc.judgement import Verdict
from calc.light.bands import Bands, bands_of, life_of
from calc.light.illuminance import Light
from calc.setup.along import MOST_COVERED, Along, Lies, TubeFit, along, fit_lying
from calc.setup.light import (
    Hanging,
    LightPlan,
    LightWish,
    Obstacle,
    Refused,
    candidates,
    plan_light,
    rank,
)
from calc.setup.warmth import WarmthPlan, plan_warmth
from calc.uv.as_read import Groups, as_read
from calc.uv.lamp import Fixture, Lamp, of_length, side_by_side
from calc.uv.lengths import length_for_box
from calc.uv.screen import FlatScreen, NoScreen, Screen

__all__ = ["USUAL_SCREEN", "OwnedTube", "Plan", "Request", "plan_as_is"]

USUAL_SCREEN = FlatScreen(0.55)
"""A mesh lid that nothing is known of. Source: uv_distance_rows."""

_UPRIGHT_CLIMBER_M = 1.0
_SECOND_CHOICE = 1.3


@dataclass(frozen=True, slots=True)
class OwnedTube:
    """What is owned of the light: class [%], fixture, length [m], or a lamp with its readings.

    Of ``count`` equal tubes side by side, ``gap_m`` [m] from middle to middle.
    """

    strength_percent: float | None = None
    fixture: Fixture | None = None
    length_m: float | None = None
    lamp: Lamp | None = None
    count: int = 1
    gap_m: float = 0.0

    def lamps(self, lit_m: float, box_m: float) -> tuple[Lamp, ...]:
        """Return what there is to choose from; an owned tube may have any length that fits."""
        found = (self.lamp,) if self.lamp else self._of_class(lit_m, box_m)
        return tuple(side_by_side(lamp, self.count, self.gap_m) for lamp in found)

    def _of_class(self, lit_m: float, box_m: float) -> tuple[Lamp, ...]:
        found = candidates(lit_m, self.strength_percent, self.fixture)
        if self.strength_percent is None or self.length_m is not None:
            return found
        return tuple(of_length(lamp, length_for_box(lit_m, box_m)) for lamp in found)


@dataclass(frozen=True, slots=True)
class Request:
    """What a set-up is planned from, in SI units.

    ``place`` None: a mesh lid carries the tube unless inside is better, a solid one cannot.
    ``screen`` None: the mesh is taken as ``USUAL_SCREEN``. ``lights`` are white lamps beside,
    ``groups`` what a group's readings say of classes of tube.
    """

    animal: Animal
    box: Enclosure
    low_uvi: float
    high_uvi: float
    back_m: float
    highest_platform_m: float
    room_c: float
    night_c: float | None = None
    place: LampPlace | None = None
    screen: Screen | None = None
    owned: OwnedTube = OwnedTube()
    shape: LampShape = LampShape.FLOOD
    owned_w: float | None = None
    lies: Lies = Lies.FROM_WARM_END
    lights: tuple[Light, ...] = ()
    groups: Groups = field(default_factory=dict, hash=False)

    @property
    def bands(self) -> Bands | None:
        """The levels of light of the animal's way of life, where there are any."""
        life = life_of(self.animal)
        return None if life is None else bands_of(life)

    @property
    def hangings(self) -> tuple[Hanging, ...]:
        """Where the tube may hang, the simplest first."""
        over = Hanging(LampPlace.ABOVE_MESH, USUAL_SCREEN if self.screen is None else self.screen)
        inside = Hanging(LampPlace.INSIDE)
        if self.place is not None:
            return (inside,) if self.place is LampPlace.INSIDE else (over,)
        if self.box.lid is Lid.SOLID or isinstance(self.screen, NoScreen):
            return (inside,)
        return (over,) if self.screen is not None else (over, inside)

    @property
    def wish(self) -> LightWish:
        """What the light must do."""
        basks = self.animal.basking_surface_c is not None
        return LightWish(
            self.box, self.low_uvi, self.high_uvi, self.back_m, self.highest_platform_m, basks
        )

    @property
    def upright(self) -> bool:
        """Whether the gradient can run up instead of along."""
        climbs = self.highest_platform_m >= _UPRIGHT_CLIMBER_M
        return climbs and self.box.height_m >= self.box.length_m


@dataclass(frozen=True, slots=True)
class Plan:
    """A set-up that can be done; ``tried`` is what was in the way of the simpler hanging."""

    fit: TubeFit
    light: LightPlan
    places: Along
    warmth: WarmthPlan
    tried: Refused | None
    covers_most: bool
    lies: Lies = Lies.FROM_WARM_END


def plan_as_is(request: Request) -> Plan | Refused:
    """Plan a set-up in the box as it is.

    Parameters
    ----------
    request : animal, box, room and what is owned

    Returns
    -------
    Plan or Refused

    Notes
    -----
    The cool end cannot be cooler than the room, a box must be longer than its tube, a back must
    have its distance, and the air must not get too warm by the lamp: each alone refuses.
    Source: uv_distance_rows; half_to_two_thirds; plan_judgement.
    """
    cool = request.animal.cool_air_c
    if cool is not None and request.room_c > cool.high:
        return Refused(Obstacle.ROOM_TOO_WARM)
    owned_m, lies = request.owned.length_m, request.lies
    fit = fit_lying(lies, request.box, owned_m)
    if fit is None:
        long = Obstacle.NO_TUBE_SHORT_ENOUGH if owned_m is None else Obstacle.TUBE_TOO_LONG
        return Refused(long)
    covers_most = fit.covers > MOST_COVERED
    usual = lies is Lies.FROM_WARM_END
    if usual and covers_most and request.animal.basking and not request.upright:
        return Refused(Obstacle.TOO_SHORT)
    light, tried = _light(request, fit)
    if isinstance(light, Refused):
        return light
    warmth = plan_warmth(
        request.animal,
        request.box,
        light.platform_top_m,
        request.room_c,
        request.night_c,
        request.shape,
        request.owned_w,
    )
    if warmth.air is not None and warmth.air.verdict in (Verdict.HIGH, Verdict.DANGEROUS):
        return Refused(Obstacle.AIR_TOO_WARM)
    wanted = request.low_uvi, request.high_uvi
    places = along(request.box, fit, light, request.back_m, *wanted, lies)
    return Plan(fit, light, places, warmth, tried, covers_most, lies)


def _light(request: Request, fit: TubeFit) -> tuple[LightPlan | Refused, Refused | None]:
    """Return the best plan of all hangings, and what was in the way of a simpler one."""
    across = request.lies is Lies.ACROSS
    space_m = request.box.depth_m if across else request.box.length_m
    to_have = request.owned.lamps(fit.lit_m, space_m)
    lamps = tuple(as_read(lamp, request.groups) for lamp in to_have)
    found = [plan_light(lamps, hanging, request.wish) for hanging in request.hangings]
    plans = [(i, plan) for i, plan in enumerate(found) if isinstance(plan, LightPlan)]
    refused = [r for r in found if isinstance(r, Refused)]
    if not plans:
        heights = [r.height_m for r in refused if r.height_m is not None]
        return Refused(refused[0].obstacle, min(heights, default=None)), None
    # A tube on the lid is out of the animal's reach, so inside has to be much better.
    _, best = min(plans, key=lambda pair: rank(pair[1], _SECOND_CHOICE ** pair[0]))
    return best, refused[0] if refused and best.hanging != request.hangings[0] else None
