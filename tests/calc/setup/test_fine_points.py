"""Fine points of a planned set-up, each worked out in another way than the plan does."""

from dataclasses import replace
from math import inf

import pytest

from calc.animals import animals
from calc.heat.enclosure import Enclosure, LampPlace, Lid, Material
from calc.heat.first_wattage import LampShape, first_wattage
from calc.setup.along import DARK_ENDS_M, TubeFit, along, tube_in
from calc.setup.changes import ChangeKind, Refusal, Way, plan_setup
from calc.setup.light import Hanging, LightPlan, LightWish, candidates, plan_light, rank
from calc.setup.plan import Plan, Request, plan_as_is
from calc.setup.warmth import plan_warmth
from calc.uv.lamp import Fixture, Lamp, is_between_fitted
from calc.uv.screen import FlatScreen
from tests.calc.refused import Range, assert_ends_hold, assert_refused_beyond

DRAGON = animals()["bearded-dragon"]
CLOSED = Enclosure(1.2, 0.6, 0.6, Material.WOOD, Lid.SOLID)
MESHED = Enclosure(1.2, 0.6, 0.6, Material.GLASS, Lid.FULL_MESH)
RANGES = [
    Range(lambda x: tube_in(0.9, x), "length of the tube", DARK_ENDS_M + 0.1, inf, "m"),
    Range(lambda x: LightWish(CLOSED, 3.0, 5.0, x, 0.4), "height of the back", 0.0, 0.5, "m"),
    Range(lambda x: LightWish(CLOSED, 3.0, 5.0, 0.05, x), "highest platform", 0.0, 3.0, "m"),
]


def asked(box: Enclosure, **given: object) -> Request:
    made = Request(DRAGON, box, 3.0, 5.0, 0.05, 0.4, 21.0)
    return replace(made, **given)  # type: ignore[arg-type]


def ways_out(request: Request) -> tuple[Way, ...]:
    found = plan_setup(request)
    assert isinstance(found, Refusal)
    return found.ways


def planned(lamps: tuple[Lamp, ...]) -> LightPlan:
    wish = LightWish(replace(MESHED, height_m=0.9), 3.0, 5.0, 0.05, 2.0)
    found = plan_light(lamps, Hanging(LampPlace.INSIDE), wish)
    assert isinstance(found, LightPlan)
    return found


@pytest.mark.parametrize("given", RANGES, ids=str)
def test_the_documented_ends_hold(given: Range) -> None:
    assert_ends_hold(given)


@pytest.mark.parametrize("given", RANGES, ids=str)
def test_beyond_the_ends_the_refusal_tells_quantity_value_range_and_unit(given: Range) -> None:
    assert_refused_beyond(given)


@pytest.mark.parametrize("owned_m", [0.2, 0.25, 0.3, 0.549, 0.849])
def test_a_platform_is_no_longer_than_its_tube_and_begins_in_the_box(owned_m: float) -> None:
    light = planned(candidates(owned_m - DARK_ENDS_M, 12.0, Fixture.POLISHED))
    fit = TubeFit(owned_m, None, owned_m / 1.2)
    found = along(replace(MESHED, height_m=0.9), fit, light, 0.05, 3.0, 5.0)
    shelf, tube = found.platform, found.tube
    assert shelf.x0_m >= -1e-12
    assert shelf.x1_m <= owned_m + 1e-12
    assert (shelf.x0_m + shelf.x1_m) / 2.0 == pytest.approx(tube.x_m) == owned_m / 2.0


def test_a_strength_within_the_fit_goes_before_one_outside_at_the_same_distance() -> None:
    plan = planned(candidates(0.819, 12.0, Fixture.POLISHED))
    fitted, other = (replace(plan, lamp=Lamp(s, Fixture.POLISHED, 0.819)) for s in (9.0, 4.0))
    assert is_between_fitted(9.0)
    assert not is_between_fitted(4.0)
    assert rank(fitted) < rank(other)


def test_a_lamp_to_buy_is_the_first_wattage_for_that_room_aim_and_distance() -> None:
    assert DRAGON.basking_surface_c is not None
    for room_c in (16.0, 21.0, 26.0):
        for shape in LampShape:
            found = plan_warmth(DRAGON, MESHED, 0.2, room_c, shape=shape)
            assert found.lamp_distance_m is not None
            bought = first_wattage(
                shape,
                room_c,
                DRAGON.basking_surface_c.aim,
                found.lamp_distance_m,
                MESHED,
                found.lamp_place,
            )
            assert found.first == bought
            assert found.watts == bought.watts


def test_two_changes_are_told_with_the_light_that_both_allow() -> None:
    low = asked(Enclosure(0.45, 0.3, 0.3, Material.WOOD, Lid.SOLID))
    ways = ways_out(low)
    assert ways
    for way in ways:
        assert len(way.changes) == 2
        assert isinstance(way.light, LightPlan)
        assert low.low_uvi * 0.999 <= way.light.uvi.best <= low.high_uvi * 1.001


def test_an_opener_screen_is_told_by_what_it_must_pass() -> None:
    dense = asked(MESHED, screen=FlatScreen(0.2), place=LampPlace.ABOVE_MESH)
    (share,) = [
        change.least
        for way in ways_out(dense)
        for change in way.changes
        if change.kind is ChangeKind.OPENER_SCREEN
    ]
    assert share is not None
    assert 0.2 < share <= 1.0
    assert isinstance(plan_as_is(replace(dense, screen=FlatScreen(share))), Plan)


def test_a_mesh_lid_is_told_by_how_much_of_it_is_mesh_and_works() -> None:
    shares = set()
    for watts in (None, *range(20, 400, 20)):
        closed = asked(CLOSED, owned_w=watts, place=LampPlace.ABOVE_MESH)
        for way in ways_out(closed):
            for change in way.changes:
                if change.kind is ChangeKind.MESH_LID and len(way.changes) == 1:
                    lid = Lid(change.least)
                    shares.add(lid)
                    assert isinstance(
                        plan_as_is(replace(closed, box=replace(CLOSED, lid=lid))), Plan
                    )
    assert shares == {Lid.PART_MESH, Lid.FULL_MESH}
