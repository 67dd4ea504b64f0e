"""The set-up that a plan makes, with what is to be read in it."""

from collections.abc import Iterator
from dataclasses import replace

from calc.animal import Animal, Target
from calc.quantities import Quantity
from calc.setup.along import Lies
from calc.setup.arrangement import Arranged, Arrangement, room_of
from calc.setup.lit import lit_set_up
from calc.setup.plan import Plan, Request
from calc.setup.set_up import HeatLamp, SetUp, Spot, Stand, StandKind
from calc.setup.sun_patch import met_by_light
from calc.uncertainty import Estimate
from calc.uv.danger import judge_uvi

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
    places, top_m = found.places, found.light.platform_top_m
    wanted, room = (request.low_uvi, request.high_uvi), room_of(found)
    sun, light = met_by_light(room, places.met, request.lights, request.bands)
    return SetUp(
        box=room.box,
        lid=request.box.lid,
        tubes=places.tubes,
        lamps=tuple(_lamps(found)),
        stands=(Stand(stand, places.platform),),
        in_water=in_water,
        is_turned=found.lies is Lies.ACROSS,
        animal=request.animal.slug,
        back_m=back_m,
        uvi_wanted=wanted,
        spots=tuple(_spots(found, request, top_m + back_m.best, unchecked=unchecked)),
        shade=places.met.shade,
        sun=sun,
        light=light,
    )


def arranged_set_up(best: Arranged, plan: SetUp) -> SetUp:
    """Return the set-up of a plan with its lamps hung as they are picked."""
    if best.plan is not None or best.way is Arrangement.SIDE_BY_SIDE:
        return plan
    lit = lit_set_up(best.room, best.met, (), lights=best.lights, bands=best.bands)
    return replace(
        plan, tubes=lit.tubes, lamps=lit.lamps, shade=lit.shade, sun=lit.sun, light=lit.light
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
    across = found.lies is Lies.ACROSS
    ends = (place.y0_m, place.y1_m) if across else (place.x0_m, place.x1_m)
    first_m, long_m, side_m = ends[0], ends[1] - ends[0], place.middle_m[0 if across else 1]

    def at(along_m: float, z_m: float) -> tuple[float, float, float]:
        """Return a place so far from the warm end."""
        return (side_m, along_m, z_m) if across else (along_m, side_m, z_m)

    wanted = request.low_uvi, request.high_uvi
    judged = judge_uvi(light.uvi, *wanted, unchecked=unchecked)
    back = at(first_m + _BY_METER * long_m, back_z_m)
    yield Spot(Quantity.UVI, back, wanted, light.uvi, judged, is_read=False)
    if animal.basking_surface_c is not None:
        surface = at(first_m + _BY_GUN * long_m, place.top_m)
        yield _to_read(Quantity.BASKING_SURFACE, surface, animal.basking_surface_c)
    quantity, air = _air(animal)
    if air is not None:
        box = request.box
        cool = at(_COOL_ALONG * box.length_m, _COOL_HIGH * box.height_m)
        yield _to_read(quantity, cool, air)


def _air(animal: Animal) -> tuple[Quantity, Target | None]:
    if animal.cool_air_c is not None:
        return Quantity.COOL_AIR, animal.cool_air_c
    return Quantity.WARM_AIR, animal.warm_air_c


def _to_read(quantity: Quantity, at: tuple[float, float, float], target: Target) -> Spot:
    return Spot(quantity, at, (target.low, target.high))
