"""The set-up that was told and checked, as one value: its signs are the marks of the answer."""

from dataclasses import replace

from bot.language.hearing import FactName
from bot.language.hearing.facts import Lid as ToldLid
from bot.questions.setup.check_parts import Part, Todo
from bot.questions.setup.told import SetUpTold
from calc.animal import Animal
from calc.heat.enclosure import Lid
from calc.setup.set_up import SetUp
from calc.uncertainty import Estimate
from calc.uv.section import Box
from calc.validity import OutsideModelError

__all__ = ["checked_set_up"]


def checked_set_up(
    told: SetUpTold, animal: Animal, parts: tuple[Part, ...], todo: tuple[Todo, ...]
) -> SetUp:
    """Return what was told as a set-up; where things hang along the box was not told."""
    away = told.measure(FactName.DISTANCE_BACK) or told.measure(FactName.DISTANCE)
    ends = None if away is None else (away.value.low, away.value.high)
    uvi = animal.uvi
    return SetUp(
        box=_box(told),
        lid=_lid(told),
        animal=animal.slug,
        tube_to_back_m=None if ends is None else Estimate(ends[0], sum(ends) / 2.0, ends[1]),
        uvi_wanted=None if uvi is None else (uvi.low, uvi.high),
        spots=tuple(replace(part.spot, held=part.sign) for part in parts if part.spot),
        first=todo[0].change if todo else None,
    )


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
