"""A whole set-up: every animal in many boxes, what it is made of, and the ways out of a refusal."""

from dataclasses import replace

import numpy as np
import pytest

from calc.animal import Animal
from calc.animals import animals
from calc.heat.enclosure import Enclosure, LampPlace, Lid, Material
from calc.judgement import Verdict
from calc.setup.along import MOST_COVERED, along, tube_in
from calc.setup.bodies import body_of
from calc.setup.changes import ChangeKind, Refusal, plan_setup
from calc.setup.light import Obstacle
from calc.setup.plan import OwnedTube, Plan, Request, plan_as_is
from calc.setup.warmth import HeatKind, plan_warmth
from calc.sources import source
from calc.uv.lamp import Fixture
from calc.uv.screen import FlatScreen, NoScreen
from calc.uv.section import uvi_field
from calc.validity import OutsideModelError

WARM = (Verdict.HIGH, Verdict.DANGEROUS)
SIZES = ((1.2, 0.6, 0.6), (0.76, 0.3, 0.3), (0.6, 0.45, 0.9), (2.4, 1.2, 1.2))
LIDS = ((Lid.SOLID, Material.WOOD), (Lid.PART_MESH, Material.PVC), (Lid.FULL_MESH, Material.GLASS))
EVERY = pytest.mark.parametrize("animal", animals().values(), ids=lambda a: a.slug)


def request_for(animal: Animal, box: Enclosure, **given: object) -> Request:
    body = body_of(animal.slug)
    assert body is not None
    assert animal.uvi is not None
    made = Request(
        animal=animal,
        box=box,
        low_uvi=animal.uvi.low,
        high_uvi=animal.uvi.high,
        back_m=body.back_m.best,
        highest_platform_m=body.highest_platform_m,
        room_c=21.0,
        night_c=15.0,
    )
    return replace(made, **given)  # type: ignore[arg-type]


def dragon(box: Enclosure, **given: object) -> Request:
    return request_for(animals()["bearded-dragon"], box, **given)


BOX = Enclosure(1.2, 0.6, 0.6, Material.WOOD, Lid.SOLID)
MESHED = Enclosure(1.2, 0.6, 0.6, Material.GLASS, Lid.FULL_MESH)


@EVERY
def test_every_animal_has_a_body(animal: Animal) -> None:
    body = body_of(animal.slug)
    if animal.is_of_water_alone:
        # No lamp is measured to its back.
        assert body is None
        return
    assert body is not None, f"{animal.slug} stands not in calc/data/bodies.toml"
    assert 0.0 < body.back_m.low < body.back_m.high < 0.5
    assert 0.0 < body.highest_platform_m <= 2.0
    assert source("back_heights").kind.value == "memory"


def test_an_animal_that_is_not_of_the_list_has_no_body() -> None:
    assert body_of("unicorn") is None


@EVERY
@pytest.mark.parametrize("size", SIZES, ids=str)
def test_every_animal_gets_a_set_up_or_a_refusal_with_a_way_out(
    animal: Animal, size: tuple[float, float, float]
) -> None:
    # What lives in water alone has no lamp to plan.
    for lid, material in LIDS if animal.uvi else ():
        request = request_for(animal, Enclosure(*size, material, lid))
        found = plan_setup(request)
        if isinstance(found, Refusal):
            assert found.ways, (lid, found)
            continue
        tube, light = found.places.tube, found.light
        back_z = light.platform_top_m + request.back_m
        there = float(uvi_field([tube], tube.x_m, tube.y_m, back_z))
        assert there == pytest.approx(light.uvi.best, rel=0.02)
        assert found.fit.length_m <= size[0]
        assert found.warmth.air is None or found.warmth.air.verdict not in WARM
        shelf = found.places.platform
        assert 0.0 <= shelf.x0_m < tube.x_m < shelf.x1_m <= size[0]
        assert 0.0 <= shelf.y0_m < tube.y_m < found.places.heat.y_m < shelf.y1_m <= size[1]


def test_heat_and_uv_lie_together_on_the_platform_of_a_usual_box() -> None:
    for box in (BOX, MESHED):
        found = plan_as_is(dragon(box))
        assert isinstance(found, Plan)
        assert found.places.met.heat_in_range is not None
        assert found.places.met.heat_in_range.best > 0.5
        assert found.places.met.in_range.best > 0.5


def test_the_uvi_falls_from_the_platform_to_the_cool_end() -> None:
    found = plan_as_is(dragon(BOX))
    assert isinstance(found, Plan)
    tube = found.places.tube
    line = uvi_field([tube], np.linspace(tube.x_m, 1.2, 30), tube.y_m, 0.05)
    assert np.all(np.diff(line) < 0.0)


def test_a_solid_lid_hangs_the_tube_inside_and_a_mesh_carries_it() -> None:
    solid, meshed = plan_as_is(dragon(BOX)), plan_as_is(dragon(MESHED))
    assert isinstance(solid, Plan)
    assert isinstance(meshed, Plan)
    assert solid.light.hanging.place is LampPlace.INSIDE
    assert meshed.light.hanging.place is LampPlace.ABOVE_MESH
    inside = plan_as_is(dragon(MESHED, place=LampPlace.INSIDE))
    open_lid = plan_as_is(dragon(MESHED, screen=NoScreen()))
    assert isinstance(inside, Plan)
    assert inside == open_lid


def test_a_high_box_on_whose_lid_no_tube_serves_is_planned_inside_and_says_so() -> None:
    tall = Enclosure(1.2, 0.6, 1.2, Material.GLASS, Lid.FULL_MESH)
    found = plan_as_is(request_for(animals()["hermanns-tortoise"], tall))
    assert isinstance(found, Plan)
    assert found.light.hanging.place is LampPlace.INSIDE
    assert found.tried is not None
    assert found.tried.obstacle is Obstacle.PLATFORM_TOO_HIGH


def test_a_tube_is_half_to_two_thirds_where_one_is_sold() -> None:
    for length_m in (0.9, 1.2, 1.5, 1.8, 2.4):
        fit = tube_in(length_m)
        assert fit is not None
        assert 0.5 / 1.15 <= fit.covers <= MOST_COVERED
    assert tube_in(0.5) is None
    owned = tube_in(0.9, 0.849)
    assert owned is not None
    assert owned.power_w is None
    assert tube_in(0.8, 0.849) is None
    with pytest.raises(OutsideModelError):
        tube_in(0.9, 0.05)


@pytest.mark.parametrize(
    ("request_given", "obstacle", "way"),
    [
        (
            dragon(replace(MESHED, height_m=0.23)),
            Obstacle.TOO_LOW,
            ChangeKind.TALLER_BOX,
        ),
        (
            dragon(MESHED, screen=FlatScreen(0.2)),
            Obstacle.TOO_CLOSE,
            ChangeKind.HANG_INSIDE,
        ),
        (
            dragon(MESHED, screen=FlatScreen(0.2)),
            Obstacle.TOO_CLOSE,
            ChangeKind.OPENER_SCREEN,
        ),
        (
            dragon(BOX, place=LampPlace.ABOVE_MESH),
            Obstacle.SOLID_LID,
            ChangeKind.HANG_INSIDE,
        ),
        (dragon(BOX, place=LampPlace.ABOVE_MESH), Obstacle.SOLID_LID, ChangeKind.MESH_LID),
        (
            dragon(replace(BOX, height_m=0.3)),
            Obstacle.NO_ROOM_FOR_HEAT,
            ChangeKind.MESH_LID,
        ),
        (
            dragon(replace(MESHED, length_m=0.6)),
            Obstacle.TOO_SHORT,
            ChangeKind.LONGER_BOX,
        ),
        (
            dragon(replace(MESHED, length_m=0.45)),
            Obstacle.NO_TUBE_SHORT_ENOUGH,
            ChangeKind.LONGER_BOX,
        ),
        (
            dragon(MESHED, owned=OwnedTube(12.0, Fixture.POLISHED, 1.449)),
            Obstacle.TUBE_TOO_LONG,
            ChangeKind.OTHER_TUBE,
        ),
        (
            dragon(BOX, owned=OwnedTube(2.0, Fixture.PLAIN)),
            Obstacle.TOO_WEAK,
            ChangeKind.OTHER_TUBE,
        ),
        (dragon(BOX, room_c=31.0), Obstacle.ROOM_TOO_WARM, ChangeKind.COOLER_ROOM),
        (
            dragon(BOX, owned_w=400.0),
            Obstacle.AIR_TOO_WARM,
            ChangeKind.SMALLER_LAMP,
        ),
    ],
)
def test_what_cannot_be_done_is_named_with_what_would_change_it(
    request_given: Request, obstacle: Obstacle, way: ChangeKind
) -> None:
    found = plan_setup(request_given)
    assert isinstance(found, Refusal)
    assert found.obstacle is obstacle
    assert way in [change.kind for w in found.ways for change in w.changes]


def test_two_changes_are_told_where_no_single_one_is_enough() -> None:
    box = Enclosure(0.45, 0.3, 0.3, Material.WOOD, Lid.SOLID)
    found = plan_setup(dragon(box))
    assert isinstance(found, Refusal)
    assert found.ways
    assert all(len(way.changes) == 2 for way in found.ways)


def test_a_box_of_the_size_that_a_refusal_names_can_be_done() -> None:
    low = dragon(replace(MESHED, height_m=0.23))
    found = plan_setup(low)
    assert isinstance(found, Refusal)
    taller = next(w for w in found.ways if w.changes[0].kind is ChangeKind.TALLER_BOX)
    least = taller.changes[0].least
    assert least is not None
    done = plan_as_is(replace(low, box=replace(low.box, height_m=least)))
    assert isinstance(done, Plan)
    assert done.light == taller.light


def test_a_box_far_outside_is_refused_by_the_model() -> None:
    with pytest.raises(OutsideModelError):
        plan_setup(dragon(Enclosure(0.2, 0.2, 0.2)))
    with pytest.raises(OutsideModelError):
        plan_setup(dragon(BOX, room_c=5.0))


# --- warmth --------------------------------------------------------------------------------


def test_an_owned_lamp_is_reckoned_with_and_nothing_is_bought() -> None:
    found = plan_warmth(animals()["bearded-dragon"], BOX, 0.1, 21.0, owned_w=75.0)
    assert found.first is None
    assert found.watts is not None
    assert found.watts.low == found.watts.high == 75.0


def test_a_colder_room_holds_colder_air_and_asks_for_more_watts() -> None:
    dragon_ = animals()["bearded-dragon"]
    found = [plan_warmth(dragon_, BOX, 0.1, room, owned_w=60.0) for room in (14.0, 18.0, 22.0)]
    held = [w.held_c.best for w in found if w.held_c]
    assert held == sorted(held)
    needed = [w.need.total_w.best for w in found if w.need]
    assert needed == sorted(needed, reverse=True)


def test_a_cold_box_gets_a_second_heater_and_a_fitting_one_none() -> None:
    dragon_ = animals()["bearded-dragon"]
    cold = plan_warmth(dragon_, BOX, 0.1, 16.0, owned_w=40.0)
    assert cold.air is not None
    assert cold.air.verdict is Verdict.LOW
    assert cold.short_w is not None
    assert cold.need is not None
    assert cold.short_w.best == pytest.approx(cold.need.total_w.best - 40.0)
    assert cold.extra_w is not None
    assert cold.extra_w >= cold.short_w.high
    colder = plan_warmth(dragon_, MESHED, 0.1, 12.0, owned_w=40.0)
    assert colder.short_w is not None
    assert colder.extra_w is None, "no single heater covers this"
    fine = plan_warmth(dragon_, BOX, 0.1, 21.0, owned_w=60.0)
    assert fine.air is not None
    assert fine.air.is_fine
    assert fine.short_w is None
    assert fine.extra_w is None


def test_the_lamp_stands_on_a_mesh_unless_that_is_too_far() -> None:
    dragon_ = animals()["bearded-dragon"]
    near = plan_warmth(dragon_, MESHED, 0.1, 21.0)
    assert near.lamp_place is LampPlace.ABOVE_MESH
    assert near.lamp_distance_m == pytest.approx(0.5)
    far = plan_warmth(dragon_, replace(MESHED, height_m=1.5), 0.1, 21.0)
    assert far.lamp_place is LampPlace.INSIDE
    assert far.lamp_distance_m == pytest.approx(0.4)
    under = plan_warmth(dragon_, BOX, 0.1, 21.0)
    assert under.lamp_place is LampPlace.INSIDE
    assert under.lamp_distance_m == pytest.approx(0.35)


@pytest.mark.parametrize(
    ("slug", "room_c", "kind"),
    [
        ("bearded-dragon", 21.0, HeatKind.BASKING_LAMP),
        ("crested-gecko", 21.0, HeatKind.GENTLE),
        ("panther-chameleon", 25.0, HeatKind.ROOM_IS_NEARLY_ENOUGH),
    ],
)
def test_the_kind_of_heat_goes_by_the_animal_and_the_room(
    slug: str, room_c: float, kind: HeatKind
) -> None:
    assert plan_warmth(animals()[slug], BOX, 0.1, room_c).kind is kind


def test_a_cold_night_is_given_an_emitter_and_an_unknown_one_no_decision() -> None:
    cold = plan_warmth(animals()["royal-python"], BOX, 0.1, 21.0, 15.0)
    assert None not in (cold.night, cold.emitter)
    unknown = plan_warmth(animals()["royal-python"], BOX, 0.1, 21.0)
    assert (unknown.night, unknown.emitter) == (None, None)


def test_along_keeps_its_places_inside_a_narrow_box() -> None:
    narrow = Enclosure(1.2, 0.2, 0.6, Material.GLASS, Lid.FULL_MESH)
    found = plan_as_is(dragon(narrow))
    assert isinstance(found, Plan)
    heat = found.places.heat
    assert heat.radius_m <= heat.y_m <= 0.2 - heat.radius_m + 0.05
    again = along(narrow, found.fit, found.light, 0.05, 3.0, 5.0)
    assert again.platform.y0_m >= 0.0
