"""The set-up that a plan makes, with what is to be read in it."""

from collections.abc import Iterator
from dataclasses import replace

from calc.animal import Animal, Target
from calc.quantities import Quantity
from calc.setup.arrangement import Arranged, Arrangement, room_of
from calc.setup.lit import lit_set_up
from calc.setup.plan import Plan, Request
from calc.setup.set_up import HeatLamp, SetUp, Spot, Stand, StandKind
from calc.setup.sun_patch import sun_patch
from calc.uncertainty import Estimate
from calc.uv.danger import judge_uvi
from calc.uv.section import Box

__all__ = ["arranged_set_up", "planned_set_up"]

# Where on the platform is read [1 of its length], and where in the box air is [1 of its sides].
_BY_METER, _BY_GUN = 0.85, 0.12
_COOL_ALONG, _COOL_HIGH = 0.93, 0.12


def planned_set_up(
    found: Plan,
    request: Request,
    back_m: Estimate,
    stand: StandKind,
    *,
    in_water: bool,
    unchecked: bool,
) -> SetUp:
    """Return the set-up of a plan: nothing was read yet, the UV is worked out and judged.

    ``unchecked``: the UV index wanted is from memory alone.
    """
    box, light, places = request.box, found.light, found.places
    wanted, room = (request.low_uvi, request.high_uvi), room_of(found, request)
    return SetUp(
        box=Box(box.length_m, box.depth_m, box.height_m),
        lid=box.lid,
        tubes=places.tubes,
        lamps=tuple(_lamps(found)),
        stands=(Stand(stand, places.platform),),
        in_water=in_water,
        animal=request.animal.slug,
        back_m=back_m,
        uvi_wanted=wanted,
        spots=tuple(
            _spots(found, request, light.platform_top_m + back_m.best, unchecked=unchecked)
        ),
        shade=places.met.shade,
        sun=None if room.heat is None else sun_patch(room, places.met),
    )


def arranged_set_up(best: Arranged, plan: SetUp) -> SetUp:
    """Return the set-up of a plan with its lamps hung another way."""
    if best.way is Arrangement.SIDE_BY_SIDE:
        return plan
    room = best.room
    return replace(
        lit_set_up(room, best.met, ()),
        lid=plan.lid,
        stands=(replace(plan.stands[0], place=room.platform),),
        in_water=plan.in_water,
        animal=plan.animal,
        back_m=plan.back_m,
        is_turned=best.way is Arrangement.ACROSS,
    )


def _lamps(found: Plan) -> Iterator[HeatLamp]:
    warmth, heat = found.warmth, found.places.heat
    if warmth.watts is None or warmth.lamp_distance_m is None:
        return
    sizes = (warmth.watts.best,) if warmth.first is None else tuple(sorted(warmth.first.buy_w))
    z_m = found.light.platform_top_m + warmth.lamp_distance_m
    yield HeatLamp(heat.x_m, heat.y_m, z_m, sizes, heat)


def _spots(found: Plan, request: Request, back_z_m: float, *, unchecked: bool) -> Iterator[Spot]:
    place, light, animal = found.places.platform, found.light, request.animal
    long, (_, y_m) = place.x1_m - place.x0_m, place.middle_m
    wanted = request.low_uvi, request.high_uvi
    judged = judge_uvi(light.uvi, *wanted, unchecked=unchecked)
    at = place.x0_m + _BY_METER * long, y_m, back_z_m
    yield Spot(Quantity.UVI, at, wanted, light.uvi, judged, is_read=False)
    if animal.basking_surface_c is not None:
        at = place.x0_m + _BY_GUN * long, y_m, place.top_m
        yield _to_read(Quantity.BASKING_SURFACE, at, animal.basking_surface_c)
    quantity, air = _air(animal)
    if air is not None:
        box = request.box
        at = _COOL_ALONG * box.length_m, y_m, _COOL_HIGH * box.height_m
        yield _to_read(quantity, at, air)


def _air(animal: Animal) -> tuple[Quantity, Target | None]:
    if animal.cool_air_c is not None:
        return Quantity.COOL_AIR, animal.cool_air_c
    return Quantity.WARM_AIR, animal.warm_air_c


def _to_read(quantity: Quantity, at: tuple[float, float, float], target: Target) -> Spot:
    return Spot(quantity, at, (target.low, target.high))
