"""The set-up that was told and checked, as one value: its signs are the marks of the answer."""

from dataclasses import replace

from bot.language.hearing import FactName
from bot.language.hearing.facts import Lid as ToldLid
from bot.language.quantities import Measure
from bot.questions.setup.check_parts import Part, Todo
from bot.questions.setup.told import Said, SetUpTold
from calc.animal import Animal
from calc.heat.enclosure import Lid
from calc.quantities import Quantity
from calc.setup.bodies import body_for
from calc.setup.set_up import SetUp
from calc.uncertainty import Estimate
from calc.uv.section import Box
from calc.validity import OutsideModelError

__all__ = ["PLACED", "checked_set_up", "has_a_place"]

PLACED = frozenset((Quantity.UVI, Quantity.BASKING_SURFACE, Quantity.COOL_AIR, Quantity.WARM_AIR))


def checked_set_up(
    told: SetUpTold, animal: Animal, parts: tuple[Part, ...], todo: tuple[Todo, ...]
) -> SetUp:
    """Return what was told as a set-up; where things hang along the box was not told."""
    long, uvi, body = told.measure(FactName.TUBE_LENGTH), animal.uvi, body_for(animal)
    back_m = None if body is None else body.back_m
    return SetUp(
        box=_box(told),
        lid=_lid(told),
        animal=animal.slug,
        back_m=back_m,
        tube_to_back_m=_away(told, back_m),
        tube_long_m=None if long is None else long.value.middle,
        tube_is_over=told.is_over,
        lamp_to_stand_m=_estimate(told.measure(FactName.LAMP_DISTANCE)),
        uvi_wanted=None if uvi is None else (uvi.low, uvi.high),
        spots=tuple(replace(part.spot, held=part.sign) for part in parts if part.spot),
        first=todo[0].change if todo else None,
    )


def has_a_place(set_up: SetUp) -> bool:
    """Say whether something was told that has a place in a box."""
    told = set_up.box or set_up.tube_to_back_m or set_up.lamp_to_stand_m
    return told is not None or any(spot.quantity in PLACED for spot in set_up.spots)


def _away(told: SetUpTold, back_m: Estimate | None) -> Estimate | None:
    """Return how far tube and back are apart [m], also where it was told to what it lies on."""
    away = _estimate(told.measure(FactName.DISTANCE_BACK) or told.measure(FactName.DISTANCE))
    perch = _estimate(told.measure(FactName.DISTANCE_PERCH))
    if away is not None or perch is None or back_m is None or perch.low <= back_m.high:
        return away
    return Estimate(perch.low - back_m.high, perch.best - back_m.best, perch.high - back_m.low)


def _estimate(said: Said[Measure] | None) -> Estimate | None:
    if said is None:
        return None
    return Estimate(said.value.low, said.value.middle, said.value.high)


def _box(told: SetUpTold) -> Box | None:
    size = told.size
    if size is None:
        return None
    try:
        return Box(size.value.length_m, size.value.depth_m, size.value.height_m)
    except OutsideModelError:
        return None


def _lid(told: SetUpTold) -> Lid | None:
    """Return a lid without mesh; of a mesh its share was not told."""
    lids = {said.value for said in told.all(FactName.LID)}
    closed = lids & {ToldLid.SOLID, ToldLid.GLASS, ToldLid.PLASTIC}
    return Lid.SOLID if closed and ToldLid.MESH not in lids else None
