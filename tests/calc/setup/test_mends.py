"""What mends the light of a box: tried, safe, better than before. Invented boxes, exact rules."""

from dataclasses import replace
from itertools import product

import pytest

from calc.setup.mends import Mend, MendKind, is_served, mends_for
from calc.setup.room import Room
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lamp import Fixture, Lamp, of_length
from calc.uv.lengths import DARK_ENDS_M, length_for_box
from calc.uv.patches import Overlap, Shade
from calc.uv.screen import NoScreen
from calc.uv.section import Box, HungTube

LIT_M = 0.819


def room(
    strength: float = 12.0,
    wanted: tuple[float, float] = (3.0, 5.0),
    top_m: float = 0.15,
    along: tuple[float, float] = (0.27, 0.57),
    tubes: int = 1,
    start_m: float = 0.0,
    heat_x_m: float = 0.42,
) -> Room:
    lamp = Lamp(strength, Fixture.POLISHED, LIT_M)
    x_m = start_m + (LIT_M + DARK_ENDS_M) / 2.0
    sides = [0.3 + 0.1 * (i - (tubes - 1) / 2.0) for i in range(tubes)]
    return Room(
        Box(1.2, 0.6, 0.6),
        tuple(HungTube(lamp, x_m, y, 0.6, NoScreen()) for y in sides),
        Platform(*along, 0.15, 0.45, top_m),
        0.05,
        *wanted,
        HeatPatch(heat_x_m, 0.3, 0.1),
    )


def mended(given: Room, highest_m: float = 1.0) -> tuple[Mend, ...]:
    return mends_for(given, given.met(), highest_m)


def test_too_strong_a_place_is_lowered_until_it_is_not() -> None:
    given = room(top_m=0.2)
    assert not is_served(given.met())
    first = mended(given)[0]
    assert first.kinds == (MendKind.PLATFORM_LOWER,)
    assert first.room.platform.top_m < 0.2
    assert is_served(first.room.met())


def test_too_weak_a_place_is_raised_but_never_past_the_reach_of_the_animal() -> None:
    given = room(strength=6.0, top_m=0.05)
    high = mended(given)[0]
    assert high.kinds == (MendKind.PLATFORM_HIGHER,)
    assert is_served(high.room.met())
    low = mended(given, 0.1)[0]
    assert low.kinds != (MendKind.PLATFORM_HIGHER,)
    assert low.room.platform.top_m <= 0.1


def test_a_platform_beside_the_light_goes_under_the_tube_with_its_heat_lamp() -> None:
    given = room(along=(0.85, 1.15), top_m=0.1, heat_x_m=1.0)
    first = mended(given)[0]
    assert MendKind.PLATFORM_SIDEWAYS in first.kinds
    x_m, _ = first.room.platform.middle_m
    assert x_m == pytest.approx(given.tubes[0].x_m)
    assert first.room.heat is not None
    assert first.room.heat.x_m == pytest.approx(x_m)


def test_where_no_move_serves_fewer_tubes_and_then_a_weaker_one_are_tried() -> None:
    many = mended(room(tubes=4, top_m=0.1))[0]
    assert MendKind.FEWER_TUBES in many.kinds
    strong = mended(room(wanted=(0.7, 1.5), top_m=0.0))[0]
    assert MendKind.OTHER_TUBE in strong.kinds
    assert strong.room.tubes[0].lamp.strength_percent == 6.0
    kept = mends_for(
        room(wanted=(0.7, 1.5), top_m=0.0),
        room(wanted=(0.7, 1.5), top_m=0.0).met(),
        nothing_owned=False,
    )
    assert all(MendKind.OTHER_TUBE not in mend.kinds for mend in kept)


def test_no_shade_asks_for_a_hide_and_a_shorter_tube_only_where_that_leaves_some() -> None:
    found = mended(room(top_m=0.1))
    hide = next(mend for mend in found if MendKind.HIDE in mend.kinds)
    assert hide.hide == hide.met.weakest
    shorter = next(mend for mend in found if MendKind.OTHER_LENGTH in mend.kinds)
    assert shorter.instead
    assert shorter.met.shade in (Shade.THERE, Shade.PROBABLY)
    assert shorter.room.tube_length_m < hide.room.tube_length_m
    unknown = room(top_m=0.1)
    lamp = of_length(unknown.tubes[0].lamp, length_for_box(LIT_M, 1.2))
    unknown = replace(unknown, tubes=(replace(unknown.tubes[0], lamp=lamp),))
    assert all(MendKind.OTHER_LENGTH not in mend.kinds for mend in mended(unknown))


def test_a_heat_lamp_elsewhere_is_brought_over_the_platform() -> None:
    found = mended(room(top_m=0.1, heat_x_m=1.1))[-1]
    assert found.kinds == (MendKind.HEAT_LAMP,)
    assert found.met.overlap is Overlap.TOGETHER


def test_what_is_right_is_left_alone() -> None:
    given = room(top_m=0.1)
    assert is_served(given.met())
    assert all({MendKind.HIDE, MendKind.OTHER_LENGTH} & {*m.kinds} for m in mended(given))


@pytest.mark.parametrize(
    ("strength", "wanted", "tubes"),
    list(product((6.0, 12.0, 14.0), ((0.5, 1.4), (1.0, 3.0), (3.0, 5.0)), (1, 3))),
)
def test_no_mend_leads_above_the_range_or_too_near_or_makes_it_worse(
    strength: float, wanted: tuple[float, float], tubes: int
) -> None:
    for top_m, along in product((0.0, 0.3), ((0.0, 0.3), (0.8, 1.1))):
        given = room(strength, wanted, top_m, along, tubes)
        before = given.met()
        for mend in mended(given):
            if MendKind.HIDE in mend.kinds:
                continue
            assert not mend.met.too_near
            assert not mend.met.judged.is_likely_above
            assert is_served(mend.met) >= is_served(before)
