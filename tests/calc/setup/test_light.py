"""Tube and platform in a box of a given height: exact sums, and what must grow with what."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.heat.enclosure import Enclosure, LampPlace, Lid
from calc.setup.light import (
    LEAST_LAMP_M,
    LEAST_PLATFORM_M,
    Hanging,
    Held,
    LightPlan,
    LightWish,
    Obstacle,
    Refused,
    candidates,
    plan_light,
)
from calc.uv.lamp import Fixture, Lamp, uvi_at
from calc.uv.placement import COMFORTABLE_MINIMUM_M
from calc.uv.screen import FlatScreen
from calc.validity import OutsideModelError
from tests.some import some

INSIDE = Hanging(LampPlace.INSIDE)
OVER = Hanging(LampPlace.ABOVE_MESH, FlatScreen(0.55))
LIT_M = 0.819


def wish(
    height_m: float = 0.6,
    lid: Lid = Lid.SOLID,
    uvi: tuple[float, float] = (3.0, 5.0),
    back_m: float = 0.05,
    highest_platform_m: float = 0.4,
) -> LightWish:
    box = Enclosure(1.2, 0.6, height_m, lid=lid)
    return LightWish(box, *uvi, back_m, highest_platform_m)


def planned(hanging: Hanging, asked: LightWish, lamps: tuple[Lamp, ...] = ()) -> LightPlan:
    found = plan_light(lamps or candidates(LIT_M), hanging, asked)
    assert isinstance(found, LightPlan), found
    return found


heights = st.floats(0.45, 1.5)
backs = st.floats(0.01, 0.15)
ranges = st.tuples(st.floats(0.5, 5.0), st.floats(1.2, 3.0)).map(lambda p: (p[0], p[0] * p[1]))


@settings(max_examples=some(60), deadline=None)
@given(heights, backs, ranges, st.sampled_from([INSIDE, OVER]))
def test_a_back_on_the_platform_has_the_distance_and_gets_the_uvi_that_is_told(
    height_m: float, back_m: float, uvi: tuple[float, float], hanging: Hanging
) -> None:
    asked = wish(height_m, Lid.PART_MESH, uvi=uvi, back_m=back_m)
    found = plan_light(candidates(LIT_M), hanging, asked)
    if isinstance(found, Refused):
        return
    back_z = found.platform_top_m + back_m
    assert found.tube_z_m - back_z == pytest.approx(found.distance_m, abs=1e-9)
    there = uvi_at(found.lamp, found.tube_z_m - back_z, hanging.screen)
    assert there == pytest.approx(found.uvi.best, rel=1e-9)
    assert uvi[0] * 0.999 <= there <= uvi[1] * 1.001
    if found.held is Held.NOTHING:
        middle = (uvi[0] * uvi[1]) ** 0.5
        # A narrow range starts farther away, where the chance of too much is small.
        assert there <= middle * 1.001
        if uvi[1] >= 2.5 * uvi[0]:
            assert there == pytest.approx(middle, rel=1e-3)


@settings(max_examples=some(60), deadline=None)
@given(heights, backs, st.sampled_from([INSIDE, OVER]))
def test_a_platform_stays_where_the_animal_and_the_lamp_allow_it(
    height_m: float, back_m: float, hanging: Hanging
) -> None:
    asked = wish(height_m, Lid.PART_MESH, back_m=back_m)
    found = plan_light(candidates(LIT_M), hanging, asked)
    if isinstance(found, Refused):
        return
    assert LEAST_PLATFORM_M <= found.platform_top_m <= 0.4 + 1e-9
    assert asked.heat_z_m - found.platform_top_m >= LEAST_LAMP_M - 1e-9
    assert found.low_m <= found.platform_top_m <= found.high_m
    assert COMFORTABLE_MINIMUM_M <= found.near_m <= found.distance_m <= found.far_m + 1e-9
    assert found.tube_z_m <= hanging.tube_z_m(asked.box)


def test_the_ends_of_the_platforms_range_give_the_ends_of_the_uvi_range() -> None:
    lamp = Lamp(12.0, Fixture.PLAIN, LIT_M)
    found = planned(INSIDE, wish(0.9, highest_platform_m=2.0), (lamp,))
    high, low = (
        uvi_at(lamp, found.tube_z_m - top - 0.05, INSIDE.screen)
        for top in (found.high_m, found.low_m)
    )
    assert low == pytest.approx(3.0, rel=1e-3)
    assert high == pytest.approx(5.0, rel=1e-3)


def test_a_taller_back_lowers_the_platform_by_as_much() -> None:
    lamps = candidates(LIT_M, 12.0, Fixture.PLAIN)
    low, high = (planned(INSIDE, wish(0.7, back_m=back), lamps) for back in (0.03, 0.08))
    assert low.platform_top_m - high.platform_top_m == pytest.approx(0.05)
    assert low.distance_m == high.distance_m


def test_a_taller_box_lifts_the_platform_until_it_is_high_enough_and_then_lowers_the_tube() -> None:
    lamps = candidates(LIT_M, 12.0, Fixture.PLAIN)
    found = [planned(INSIDE, wish(h), lamps) for h in (0.6, 0.7, 0.8, 1.2, 1.5)]
    tops = [plan.platform_top_m for plan in found]
    assert tops == sorted(tops)
    assert tops[-1] == pytest.approx(0.4)
    assert found[-1].tube_z_m == pytest.approx(found[-2].tube_z_m)
    assert len({round(plan.distance_m, 9) for plan in found}) == 1


def test_a_stronger_tube_hangs_farther() -> None:
    asked = wish(1.2, highest_platform_m=2.0)
    distances = [
        planned(INSIDE, asked, candidates(LIT_M, strength, Fixture.POLISHED)).distance_m
        for strength in (6.0, 12.0, 14.0)
    ]
    assert distances == sorted(distances)
    assert len(set(distances)) == 3


def test_a_denser_screen_brings_the_tube_nearer() -> None:
    lamps = candidates(LIT_M, 12.0, Fixture.POLISHED)
    asked = wish(0.6, Lid.FULL_MESH)
    distances = [
        planned(Hanging(LampPlace.ABOVE_MESH, FlatScreen(share)), asked, lamps).distance_m
        for share in (0.5, 0.6, 0.7, 0.8)
    ]
    assert distances == sorted(distances)


def test_a_box_that_is_too_low_tells_the_height_from_which_it_works() -> None:
    asked = wish(0.23, Lid.FULL_MESH)
    refused = plan_light(candidates(LIT_M), OVER, asked)
    assert isinstance(refused, Refused)
    assert refused.obstacle is Obstacle.TOO_LOW
    assert refused.height_m is not None

    def with_height(height_m: float) -> LightWish:
        return replace(asked, box=replace(asked.box, height_m=height_m))

    just = planned(OVER, with_height(refused.height_m + 1e-6))
    assert just.held is Held.NOTHING
    assert just.platform_top_m == pytest.approx(LEAST_PLATFORM_M, abs=1e-4)
    lower = plan_light(candidates(LIT_M), OVER, with_height(refused.height_m - 0.01))
    assert isinstance(lower, Refused) or lower.held is Held.BY_FLOOR


def test_a_low_box_is_held_by_the_floor_before_it_is_refused() -> None:
    lamps = candidates(LIT_M, 12.0, Fixture.POLISHED)
    found = [plan_light(lamps, OVER, wish(h, Lid.FULL_MESH)) for h in (0.30, 0.37, 0.45)]
    assert isinstance(found[0], Refused)
    assert isinstance(found[1], LightPlan)
    assert isinstance(found[2], LightPlan)
    assert (found[1].held, found[2].held) == (Held.BY_FLOOR, Held.NOTHING)
    assert found[1].uvi.best > found[2].uvi.best


@pytest.mark.parametrize(
    ("hanging", "asked", "obstacle"),
    [
        (OVER, wish(0.6, Lid.SOLID), Obstacle.SOLID_LID),
        (INSIDE, wish(0.3, Lid.SOLID), Obstacle.NO_ROOM_FOR_HEAT),
        (OVER, wish(1.2, Lid.FULL_MESH, highest_platform_m=0.1), Obstacle.PLATFORM_TOO_HIGH),
        (
            Hanging(LampPlace.ABOVE_MESH, FlatScreen(0.05)),
            wish(0.6, Lid.FULL_MESH),
            Obstacle.TOO_WEAK,
        ),
    ],
)
def test_what_is_in_the_way_is_named(
    hanging: Hanging, asked: LightWish, obstacle: Obstacle
) -> None:
    refused = plan_light(candidates(LIT_M), hanging, asked)
    assert isinstance(refused, Refused)
    assert refused.obstacle is obstacle


def test_a_lamp_that_is_owned_is_the_only_choice() -> None:
    own = candidates(LIT_M, 6.0, Fixture.POLISHED)
    assert len(own) == 1
    assert planned(INSIDE, wish(), own).lamp == own[0]
    assert own[0].age_s is None
    assert all(lamp.age_s == 0.0 for lamp in candidates(LIT_M))


def test_fourteen_per_cent_is_taken_only_where_nothing_else_fits() -> None:
    for height_m in (0.5, 0.6, 0.8, 1.2):
        for lid, hanging in ((Lid.SOLID, INSIDE), (Lid.FULL_MESH, OVER)):
            found = plan_light(candidates(LIT_M), hanging, wish(height_m, lid))
            assert isinstance(found, Refused) or found.lamp.strength_percent < 14.0


@pytest.mark.parametrize(("back_m", "highest_m"), [(0.6, 0.4), (-0.01, 0.4), (0.05, 4.0)])
def test_a_wish_outside_the_model_is_refused(back_m: float, highest_m: float) -> None:
    with pytest.raises(OutsideModelError):
        wish(back_m=back_m, highest_platform_m=highest_m)
