"""The ways to hang lamps: what is picked is safe, a row is apart, a turned box is the same box."""

from dataclasses import replace

import pytest

from calc.animals import animals
from calc.heat.enclosure import Enclosure, LampPlace, Lid
from calc.setup.arrangement import Arranged, Arrangement, arranged, picked, room_of
from calc.setup.plan import Plan, Request, plan_as_is
from calc.uncertainty import Estimate
from calc.uv.patches import Shade
from calc.uv.section import Box

DRAGON = animals()["bearded-dragon"]


def request(box: Enclosure, slug: str = "bearded-dragon") -> Request:
    animal = animals()[slug]
    assert animal.uvi is not None
    return Request(animal, box, animal.uvi.low, animal.uvi.high, 0.05, 0.4, 21.0)


def served(one: Arranged) -> float:
    heat = one.met.heat_in_range
    assert heat is not None
    return (heat.best + one.met.in_range.best) / 2.0


def ways(box: Enclosure, slug: str = "bearded-dragon") -> dict[Arrangement, Arranged]:
    asked = request(box, slug)
    found = plan_as_is(asked)
    assert isinstance(found, Plan)
    return {one.way: one for one in arranged(found, asked)}


WAYS = ways(Enclosure(1.2, 0.6, 0.6))


def test_every_way_is_tried_where_the_box_has_room() -> None:
    assert set(WAYS) == set(Arrangement) - {Arrangement.ABOVE_MESH}
    assert Arrangement.INSIDE not in ways(Enclosure(1.2, 0.6, 0.6, lid=Lid.SOLID))
    assert Arrangement.ACROSS not in ways(Enclosure(1.2, 0.5, 0.6, lid=Lid.SOLID))


def test_in_a_row_heat_and_uv_lie_apart() -> None:
    beside, row = WAYS[Arrangement.SIDE_BY_SIDE].met, WAYS[Arrangement.IN_A_ROW].met
    assert beside.heat_in_range is not None
    assert row.heat_in_range is not None
    assert row.heat_in_range.best < beside.heat_in_range.best


def test_a_tube_over_the_whole_box_leaves_less_shade() -> None:
    order = list(Shade)
    whole, beside = (WAYS[way].met for way in (Arrangement.WHOLE_LENGTH, Arrangement.SIDE_BY_SIDE))
    assert order.index(whole.shade) > order.index(beside.shade)
    assert whole.in_range.best >= beside.in_range.best


def test_a_tube_across_is_the_same_box_turned_by_a_quarter() -> None:
    across, along = WAYS[Arrangement.ACROSS].room, WAYS[Arrangement.SIDE_BY_SIDE].room
    assert across.box == Box(along.box.depth_m, along.box.length_m, along.box.height_m)
    assert across.platform.middle_m == along.platform.middle_m[::-1]
    tube, heat, middle = across.tubes[0], across.heat, along.platform.middle_m[0]
    assert heat is not None
    assert (tube.x_m, heat.x_m) == (0.3, 0.3)
    assert (tube.y_m, heat.y_m) == pytest.approx((middle - 0.075, middle + 0.075))


@pytest.mark.parametrize("way", [Arrangement.ACROSS, Arrangement.WHOLE_LENGTH])
def test_a_tube_that_lies_otherwise_has_its_own_strength_and_distance(way: Arrangement) -> None:
    found = WAYS[way]
    assert found.plan is not None
    light, room = found.plan.light, found.room
    assert found.plan.places.room.tubes == room.tubes
    assert light.near_m <= light.distance_m <= light.far_m
    assert room.tubes[0].z_m - room.back_z_m == pytest.approx(light.distance_m)
    assert 3.0 <= light.uvi.best <= 5.0
    assert light.lamp.lit_length_m == room.tubes[0].lamp.lit_length_m


@pytest.mark.parametrize(
    ("slug", "long_m", "way"),
    [
        ("egyptian-uromastyx", 1.2, Arrangement.ACROSS),
        ("bearded-dragon", 1.2, Arrangement.SIDE_BY_SIDE),
        ("egyptian-uromastyx", 1.8, Arrangement.SIDE_BY_SIDE),
    ],
)
def test_a_tube_is_turned_only_where_shade_gets_much_surer(
    slug: str, long_m: float, way: Arrangement
) -> None:
    found = ways(Enclosure(long_m, 0.6, 0.6, lid=Lid.SOLID), slug)
    best = picked(tuple(found.values()))
    assert best.way is way
    order, simplest = list(Shade), found[Arrangement.SIDE_BY_SIDE]
    if way is Arrangement.ACROSS:
        assert order.index(simplest.met.shade) - order.index(best.met.shade) >= 2


def test_a_row_and_two_heat_lamps_are_compared_and_never_picked() -> None:
    alone = tuple(WAYS[way] for way in (Arrangement.SIDE_BY_SIDE, Arrangement.TWO_HEAT_LAMPS))
    assert served(alone[1]) > 0.0
    assert picked(alone).way is Arrangement.SIDE_BY_SIDE


@pytest.mark.parametrize("slug", ["bearded-dragon", "leopard-gecko", "corn-snake"])
@pytest.mark.parametrize("lid", [Lid.SOLID, Lid.FULL_MESH])
@pytest.mark.parametrize("long_m", [0.9, 1.2, 1.8])
def test_nothing_likely_too_strong_is_picked_and_no_way_has_better_shade(
    slug: str, lid: Lid, long_m: float
) -> None:
    asked = request(Enclosure(long_m, 0.6, 0.6, lid=lid), slug)
    plan = plan_as_is(asked)
    if not isinstance(plan, Plan):
        pytest.skip("no plan for that box")
    found = arranged(plan, asked)
    best = picked(found)
    assert best.is_safe or not any(one.is_safe for one in found)
    turned = (Arrangement.ACROSS, Arrangement.WHOLE_LENGTH)
    if not best.has_shade:
        never = (Arrangement.IN_A_ROW, Arrangement.TWO_HEAT_LAMPS)
        shaded = [one for one in found if one.has_shade and one.is_safe and one.way not in never]
        assert all(2.0 * served(one) < served(best) or one.way in turned for one in shaded)
        assert not shaded or best.met.shade is Shade.CANNOT_TELL


def test_the_room_of_a_plan_is_the_plans_own() -> None:
    asked = request(Enclosure(1.2, 0.6, 0.6))
    found = plan_as_is(asked)
    assert isinstance(found, Plan)
    room = room_of(found)
    assert room.tubes == found.places.tubes
    assert room.met().in_range == found.places.met.in_range
    inside = plan_as_is(replace(asked, place=LampPlace.INSIDE))
    assert isinstance(inside, Plan)
    assert room_of(inside).tubes == WAYS[Arrangement.INSIDE].room.tubes


def test_a_way_that_hardly_serves_is_not_picked_for_a_shade_that_is_only_surer() -> None:
    beside, inside = WAYS[Arrangement.SIDE_BY_SIDE], WAYS[Arrangement.INSIDE]
    assert beside.has_shade
    assert inside.met.shade is Shade.CANNOT_TELL
    hardly = replace(beside, met=replace(beside.met, heat_in_range=Estimate(0.0, 0.01, 0.02)))
    hardly = replace(hardly, met=replace(hardly.met, in_range=Estimate(0.0, 0.01, 0.02)))
    assert 2.0 * served(hardly) < served(inside)
    assert picked((hardly, inside)).way is Arrangement.INSIDE
    assert picked((beside, inside)).way is Arrangement.SIDE_BY_SIDE
