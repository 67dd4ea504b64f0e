"""The ways to hang lamps: what is picked is safe, a row is apart, a turned box is the same box."""

from dataclasses import replace

import pytest

from calc.animals import animals
from calc.heat.enclosure import Enclosure, LampPlace, Lid
from calc.setup.arrangement import Arranged, Arrangement, arranged, picked, room_of
from calc.setup.plan import Plan, Request, plan_as_is
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


def test_a_tube_across_a_square_box_meets_what_one_along_it_does() -> None:
    # The box turned by a quarter is the same box, so only its sides change places.
    across, along = WAYS[Arrangement.ACROSS].room, WAYS[Arrangement.SIDE_BY_SIDE].room
    assert across.box == Box(along.box.depth_m, along.box.length_m, along.box.height_m)
    assert across.platform.middle_m == along.platform.middle_m[::-1]
    assert across.tubes[0].y_m == pytest.approx(along.platform.middle_m[0])
    back = replace(across, tubes=along.tubes, box=along.box, platform=along.platform, heat=None)
    assert back.met(8).in_range == replace(along, heat=None).met(8).in_range


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
    if not best.has_shade:
        shaded = [one for one in found if one.has_shade and one.is_safe]
        assert all(2.0 * served(one) < served(best) for one in shaded)
        assert not shaded or best.met.shade is Shade.CANNOT_TELL


def test_the_room_of_a_plan_is_the_plans_own() -> None:
    asked = request(Enclosure(1.2, 0.6, 0.6))
    found = plan_as_is(asked)
    assert isinstance(found, Plan)
    room = room_of(found, asked)
    assert room.tubes == found.places.tubes
    assert room.met().in_range == found.places.met.in_range
    inside = plan_as_is(replace(asked, place=LampPlace.INSIDE))
    assert isinstance(inside, Plan)
    assert room_of(inside, asked).tubes == WAYS[Arrangement.INSIDE].room.tubes


def test_a_way_that_hardly_serves_is_not_picked_for_a_shade_that_is_only_surer() -> None:
    box = Enclosure(1.2, 0.6, 0.6, lid=Lid.SOLID)
    found = ways(box)
    across, beside = found[Arrangement.ACROSS], found[Arrangement.SIDE_BY_SIDE]
    assert across.has_shade
    assert beside.met.shade is Shade.CANNOT_TELL
    assert 2.0 * served(across) < served(beside)
    assert picked(tuple(found.values())).way is Arrangement.SIDE_BY_SIDE
