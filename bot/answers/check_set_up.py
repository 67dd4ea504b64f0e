"""The set-up that was told and checked, as one value: its signs are the marks of the answer."""

from dataclasses import replace

from bot.answers.check_parts import Mark, Part, Todo
from bot.answers.heat_parts import Kept
from bot.answers.setup_told import Told
from bot.language.hearing import FactName
from bot.language.hearing.facts import Lid as ToldLid
from calc.heat.enclosure import Lid
from calc.setup.set_up import SetUp, Sign
from calc.uncertainty import Estimate
from calc.uv.section import Box
from calc.validity import OutsideModelError

__all__ = ["checked_set_up"]

_SIGNS = {Mark.FINE: Sign.FINE, Mark.CHANGE: Sign.CHANGE, Mark.CANNOT_TELL: Sign.CANNOT_TELL}


def checked_set_up(
    told: Told, kept: Kept, parts: tuple[Part, ...], todo: tuple[Todo, ...]
) -> SetUp:
    """Return what was told as a set-up; where things hang along the box was not told."""
    away = told.measure(FactName.DISTANCE_BACK) or told.measure(FactName.DISTANCE)
    ends = None if away is None else (away.value.low, away.value.high)
    uvi = kept.animal.uvi
    return SetUp(
        box=_box(told),
        lid=_lid(told),
        animal=kept.animal.slug,
        tube_to_back_m=None if ends is None else Estimate(ends[0], sum(ends) / 2.0, ends[1]),
        uvi_wanted=None if uvi is None else (uvi.low, uvi.high),
        spots=tuple(replace(part.spot, held=_SIGNS[part.mark]) for part in parts if part.spot),
        first=todo[0].change if todo else None,
    )


def _box(told: Told) -> Box | None:
    size = told.size
    if size is None:
        return None
    try:
        return Box(size.value.length_m, size.value.depth_m, size.value.height_m)
    except OutsideModelError:
        return None


def _lid(told: Told) -> Lid | None:
    """Return a lid without mesh; of a mesh its share was not told."""
    lids = {said.value for said in told.all(FactName.LID)}
    closed = lids & {ToldLid.SOLID, ToldLid.GLASS, ToldLid.PLASTIC}
    return Lid.SOLID if closed and ToldLid.MESH not in lids else None
