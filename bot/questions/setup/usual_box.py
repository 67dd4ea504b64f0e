"""Where a set-up is drawn: what was told at its place, the rest in a usual one. No words."""

from collections.abc import Collection
from dataclasses import dataclass, replace
from math import ceil

from bot.drawing import Block, Figure, Strip, Tool
from bot.questions.setup.drawn_animal import drawn_animal
from calc.animal import Animal
from calc.heat.enclosure import Lid
from calc.quantities import Quantity
from calc.setup.lives import stand_for
from calc.setup.set_up import SetUp, Stand, StandKind, Thing
from calc.uv.ground import Platform
from calc.uv.section import Box

__all__ = ["TOOLS", "Laid", "laid_out"]

_ON_STAND = frozenset((Quantity.UVI, Quantity.BASKING_SURFACE))
# The usual box of what lives on the ground and of what climbs [m]; how high a back that is not
# known is drawn [m].
_USUAL, _CLIMBED = Box(1.2, 0.6, 0.6), Box(1.0, 0.6, 0.9)
_BACK_M = 0.04
# Usual places, as shares of the box: stand, lamp, tube, probes and hide.
_STAND = (0.05, 0.53)
_TOP = {StandKind.PLATFORM: 0.25, StandKind.BRANCH: 0.45, StandKind.DOCK: 0.5}
_LAMP, _LAMP_UP, _TUBE_TO, _SURFACE = 0.15, 0.76, 0.9, 0.1
_WARM, _COOL, _PROBE, _NIGHT, _CLOCK = 0.57, 0.68, 0.14, (0.9, 0.72), (0.6, 0.76)
_WARM_UP, _DRY = 0.42, 0.08
# By a dock the warm probe hangs high: there the clock is beside it.
_CLOCK_BY_DOCK = 0.74
_HIDE, _HIDE_M = (0.74, 0.95), 0.13
_SWUM, _ALONE = 0.42, 0.84
# Half of what a lamp takes, as a share of the box's length or of so much of its height.
_HALF_LAMP, _AS_HIGH = 0.055, 1.45
# A tube farther over its box than this does not hang as it was told, nor does one that is longer
# than the box: it is not drawn.
_HIGHEST = 1.4
# No lamp is drawn nearer over what is basked on [m] than this, where its height was not told.
_OVER_M = 0.25
# From this share of the height on a lamp stands on the lid.
_ON_LID = 0.88
_SHOULDER, _SHELF = 0.15, 0.04
_FIXTURE_M = 0.06
_GRID_M = 0.1

TOOLS = {
    Quantity.UVI: Tool.UV_METER,
    Quantity.BASKING_SURFACE: Tool.INFRARED_GUN,
    Quantity.COOL_AIR: Tool.PROBE,
    Quantity.WARM_AIR: Tool.PROBE,
    Quantity.WATER: Tool.PROBE,
    Quantity.NIGHT_AIR: Tool.NIGHT,
    Quantity.LIGHT_HOURS: Tool.CLOCK,
}
"""What each place is read with."""


@dataclass(frozen=True, slots=True)
class Laid:
    """Where things are drawn [m]: box, stand, the animal and its back, the faces of the lamps.

    Water goes up to ``water_m``; ``blocks`` are what the animal lies on, none on the floor.
    """

    box: Box
    stand: Stand
    back_z_m: float
    figure: Figure
    long_m: float
    tube: tuple[float, float, float] | None
    lamp: tuple[float, float] | None
    water_m: float

    @property
    def x_m(self) -> float:
        """The middle of the stand along the box [m]."""
        return self.stand.place.middle_m[0]

    @property
    def blocks(self) -> tuple[Block, ...]:
        """What the animal lies on: a stone, or a shelf where it climbs or swims."""
        place, high = self.stand.place, self.box.height_m
        if place.top_m <= 0.0:
            return ()
        pillar = place.top_m > 1.5 * (place.x1_m - place.x0_m)
        shelf = pillar or self.stand.kind is not StandKind.PLATFORM
        foot = max(place.top_m - _SHELF * high, 0.0) if shelf else 0.0
        return (Block(place.x0_m, place.x1_m, foot, place.top_m, ""),)

    @property
    def hide(self) -> Strip | None:
        """A hide at the cool end; none where there is water."""
        if self.water_m:
            return None
        first, last = (share * self.box.length_m for share in _HIDE)
        return Strip(first, last, min(_HIDE_M, 0.3 * self.box.height_m))

    def at(self, quantity: Quantity | None) -> tuple[float, float]:
        """Return where something is read along the box and over its floor [m]."""
        long_m, high_m = self.box.length_m, self.box.height_m
        place = self.stand.place
        if quantity is Quantity.UVI:
            # On its back between head and arrow; heat is read where it lies.
            return self.x_m - _SHOULDER * self.long_m, self.back_z_m
        if quantity is Quantity.BASKING_SURFACE:
            return place.x0_m + _SURFACE * (place.x1_m - place.x0_m), place.top_m
        if quantity is Quantity.NIGHT_AIR:
            return _NIGHT[0] * long_m, _NIGHT[1] * high_m
        if quantity is Quantity.LIGHT_HOURS:
            along = _CLOCK_BY_DOCK if self.stand.kind is StandKind.DOCK else _CLOCK[0]
            return along * long_m, _CLOCK[1] * high_m
        if quantity is Quantity.WATER:
            return _COOL * long_m, 0.4 * self.water_m
        dry = self.water_m + _DRY * high_m if self.water_m else 0.0
        if quantity is Quantity.COOL_AIR:
            return _COOL * long_m, max(_PROBE * high_m, dry)
        return _WARM * long_m, max(_WARM_UP * high_m, dry)


def laid_out(set_up: SetUp, animal: Animal | None = None, hung: Collection[Thing] = ()) -> Laid:
    """Return the box with what was told in it; of ``hung`` what was not told in a usual place.

    ``animal`` says how it lives where no distance was told: on a stone, a shelf or in water.
    """
    back_m = _BACK_M if set_up.back_m is None else set_up.back_m.best
    away = set_up.tube_to_back_m
    kind = StandKind.PLATFORM if animal is None else stand_for(animal)
    wet = animal is not None and animal.is_of_water_alone
    usual = _CLIMBED if kind is StandKind.BRANCH else _USUAL
    box = set_up.box or _high_enough(usual, back_m, None if away is None else away.best)
    over = set_up.tube_is_over and set_up.lid is not Lid.SOLID
    hangs_m = box.height_m - (0.0 if over else min(_FIXTURE_M, 0.15 * box.height_m))
    on_stand = any(spot.quantity in _ON_STAND for spot in set_up.spots) or bool(hung)
    top_m = 0.0
    if away is not None:
        top_m = max(hangs_m - away.best - back_m, 0.0)
    elif not wet and (on_stand or kind is not StandKind.PLATFORM):
        top_m = _TOP[kind] * box.height_m
    first, last = (share * box.length_m for share in _STAND)
    place = Platform(first, last, 0.25 * box.depth_m, 0.75 * box.depth_m, top_m)
    water_m = (_ALONE if wet else _SWUM) * box.height_m if kind is StandKind.DOCK or wet else 0.0
    lamp = _lamp(set_up, box, place, usual=Thing.HEAT_LAMP in hung)
    tube_z_m = top_m + back_m + away.best if away is not None else hangs_m
    tube = None
    if away is not None or Thing.TUBE in hung:
        tube = _tube(set_up, box, tube_z_m, None if lamp is None else lamp[0])
    if lamp and tube and tube[0] < lamp[0] + _half_lamp(box):
        # Seen from the front a lamp would hang before the tube or under it.
        lamp = None
    figure, long_m = drawn_animal(set_up.animal)
    return Laid(
        box=box,
        stand=Stand(kind, place),
        back_z_m=top_m + back_m,
        figure=figure,
        long_m=long_m,
        tube=tube,
        lamp=lamp,
        water_m=water_m if set_up.tube_to_back_m is None else 0.0,
    )


def _high_enough(usual: Box, back_m: float, away_m: float | None) -> Box:
    """Return the usual box, higher where a tube hangs higher in it."""
    wanted_m = 0.0 if away_m is None else back_m + away_m + _FIXTURE_M
    return replace(usual, height_m=max(usual.height_m, ceil(wanted_m / _GRID_M) * _GRID_M))


def _half_lamp(box: Box) -> float:
    return _HALF_LAMP * max(box.length_m, _AS_HIGH * box.height_m)


def _tube(
    set_up: SetUp, box: Box, z_m: float, lamp_m: float | None
) -> tuple[float, float, float] | None:
    """Return where a tube hangs, beside the lamp as far as the box is long enough."""
    if z_m > _HIGHEST * box.height_m or (set_up.tube_long_m or 0.0) > box.length_m:
        return None
    first = 0.05 * box.length_m if lamp_m is None else lamp_m + 1.1 * _half_lamp(box)
    long_m = set_up.tube_long_m or max(_TUBE_TO * box.length_m - first, 0.3 * box.length_m)
    first = max(min(first, box.length_m - long_m), 0.02 * box.length_m)
    return first, min(first + long_m, 0.98 * box.length_m), z_m


def _lamp(set_up: SetUp, box: Box, place: Platform, *, usual: bool) -> tuple[float, float] | None:
    away = set_up.lamp_to_stand_m
    if away is None and not usual:
        return None
    usual_m = max(_LAMP_UP * box.height_m, min(place.top_m + _OVER_M, box.height_m))
    if usual_m > _ON_LID * box.height_m:
        usual_m = box.height_m
    z_m = usual_m if away is None else place.top_m + away.best
    if z_m > _HIGHEST * box.height_m:
        return None
    return max(_LAMP * box.length_m, 1.1 * _half_lamp(box)), max(z_m, place.top_m)
