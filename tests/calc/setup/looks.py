"""Rooms whose looks stand in: what is tried to mend them is seen, and each may be what serves."""

from collections.abc import Callable, Iterable
from dataclasses import replace

import pytest

from calc.judgement import judge_value
from calc.quantities import Quantity
from calc.setup.mends import Mend, MendKind, mends_for
from calc.setup.room import Room
from calc.uncertainty import Estimate
from calc.uv.ground import Platform
from calc.uv.lamp import Fixture, Lamp
from calc.uv.lengths import DARK_ENDS_M
from calc.uv.patches import Glance, Patches
from calc.uv.screen import NoScreen
from calc.uv.section import Box, HungTube

LIT_M = 0.819
HALF_M = (LIT_M + DARK_ENDS_M) / 2.0
TUBE = Lamp(12.0, Fixture.POLISHED, LIT_M)
BOX = Box(1.2, 0.6, 1.2)
HIDE, LOWER, HIGHER = MendKind.HIDE, MendKind.PLATFORM_LOWER, MendKind.PLATFORM_HIGHER
SIDEWAYS, FEWER, MORE = MendKind.PLATFORM_SIDEWAYS, MendKind.FEWER_TUBES, MendKind.MORE_TUBES
CLASS, LENGTH, HEAT = MendKind.OTHER_TUBE, MendKind.OTHER_LENGTH, MendKind.HEAT_LAMP
WARM_END = MendKind.TUBE_TO_WARM_END
NO_USE, SERVES = Glance(0.0, 0.0, 1.0, 0.0), Glance(1.0, 1.0, 0.0, 1.0)

Tried = list[tuple[tuple[MendKind, ...], Room]]


def room(
    lamp: Lamp = TUBE,
    wanted: tuple[float, float] = (3.0, 5.0),
    top_m: float = 0.5,
    sides_m: tuple[float, ...] = (0.3,),
    along: tuple[float, float] = (HALF_M - 0.15, HALF_M + 0.15),
    across: tuple[float, float] = (0.15, 0.45),
    x_m: float = HALF_M,
    box: Box = BOX,
) -> Room:
    """One tube begins at the warm end wall and hangs over the middle of the platform."""
    tubes = tuple(HungTube(lamp, x_m, y_m, box.height_m, NoScreen()) for y_m in sides_m)
    return Room(box, tubes, Platform(*along, *across, top_m), 0.05, *wanted)


def meeting(
    given: Room,
    uvi: float | None = None,
    in_range: float = 1.0,
    chance: float = 0.0,
    shade: float = 1.0,
    heat: float | None = None,
) -> Patches:
    """What is met in a room, if its strongest place had so much [1] without any doubt."""
    low, high = given.low_uvi, given.high_uvi
    value = Estimate.exact((low + high) / 2.0 if uvi is None else uvi)
    found = given.met(4)
    return replace(
        found,
        in_range=Estimate.exact(in_range),
        chance_in_range=chance,
        strongest=replace(found.strongest, uvi=value),
        judged=judge_value(Quantity.UVI, value, low, high),
        shade_chance=shade,
        too_near=False,
        heat_in_range=None if heat is None else Estimate.exact(heat),
    )


def mended(
    given: Room,
    before: Patches,
    glance: Callable[[Room], Glance],
    after: Callable[[Room], Patches],
    highest_m: float = 1.2,
    *,
    nothing_owned: bool = True,
) -> tuple[Mend, ...]:
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(Room, "glance", glance)
        patch.setattr(Room, "met", lambda one, _cells: after(one))
        return mends_for(given, before, highest_m, nothing_owned=nothing_owned)


def in_turn(glances: Iterable[Glance]) -> Callable[[Room], Glance]:
    told = iter(glances)
    return lambda _: next(told)


def kinds_of(given: Room, one: Room) -> tuple[MendKind, ...]:
    """What was done to a room, as it is seen in it."""
    (before, after), (old, new) = (
        (r.platform for r in (given, one)),
        (r.tubes for r in (given, one)),
    )
    classes, lengths = (
        [(lamp.strength_percent, lamp.fixture) for lamp in (old[0].lamp, new[0].lamp)],
        [lamp.lit_length_m for lamp in (old[0].lamp, new[0].lamp)],
    )
    done = (
        (SIDEWAYS, before.middle_m != after.middle_m),
        (FEWER, len(new) < len(old)),
        (MORE, len(new) > len(old)),
        (CLASS, classes[0] != classes[1]),
        (LENGTH, lengths[0] != lengths[1]),
        (LOWER, after.top_m < before.top_m),
        (HIGHER, after.top_m > before.top_m),
    )
    return tuple(kind for kind, is_done in done if is_done)


def tried(
    given: Room,
    uvi: float,
    highest_m: float = 1.2,
    *,
    nothing_owned: bool = True,
) -> Tried:
    """Everything that is looked at where nothing serves, each with what was done."""
    looked: list[Room] = []

    def glance(one: Room) -> Glance:
        looked.append(one)
        return NO_USE

    before = meeting(given, uvi, 0.0)
    found = mended(given, before, glance, lambda _: before, highest_m, nothing_owned=nothing_owned)
    assert found == ()
    return [(kinds_of(given, one), one) for one in looked]


def away_m(one: Room) -> float:
    return one.tubes[0].z_m - one.back_z_m
