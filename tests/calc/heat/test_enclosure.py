"""The air of an enclosure: what goes in comes out, and more wall or more mesh costs more."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.animal import Animal
from calc.animals import animals
from calc.heat.box import air_held, watts_to_hold
from calc.heat.enclosure import Enclosure, Lid, Material, level_opening_flow, stack_flow
from calc.heat.night import NightDecision, emitter_for, night_plan
from calc.heat.wattages import Family, steps_sold
from calc.validity import OutsideModelError
from tests.some import some

FEW = settings(max_examples=some(60), deadline=None)
BOXES = st.builds(
    Enclosure,
    st.floats(0.4, 2.0),
    st.floats(0.3, 0.9),
    st.floats(0.3, 1.2),
    st.sampled_from(Material),
    st.sampled_from(Lid),
)
FOUR_BY_TWO = Enclosure(1.2, 0.6, 0.6)


@FEW
@given(box=BOXES, room=st.floats(10.0, 25.0), rise=st.floats(0.5, 12.0))
def test_the_air_that_the_watts_hold_is_the_air_they_were_for(
    box: Enclosure, room: float, rise: float
) -> None:
    need = watts_to_hold(box, room + rise, room)
    assert need.walls_w + need.air_w == pytest.approx(need.total_w.best)
    held = air_held(box, need.total_w.best, room)
    assert held.best == pytest.approx(room + rise, abs=1e-6)
    assert held.low < held.best < held.high


@FEW
@given(box=BOXES, room=st.floats(10.0, 25.0), rise=st.floats(1.0, 10.0))
def test_warmer_air_takes_more_watts_and_air_exchange_grows_faster(
    box: Enclosure, room: float, rise: float
) -> None:
    one, two = (watts_to_hold(box, room + k * rise, room) for k in (1.0, 2.0))
    assert two.walls_w == pytest.approx(2.0 * one.walls_w)
    assert two.air_w == pytest.approx(2.0**1.5 * one.air_w, rel=0.05)


@pytest.mark.parametrize("material", Material)
def test_more_mesh_costs_more(material: Material) -> None:
    totals = [
        watts_to_hold(Enclosure(1.2, 0.6, 0.6, material, lid), 27.0, 21.0).total_w.best
        for lid in (Lid.SOLID, Lid.PART_MESH, Lid.FULL_MESH)
    ]
    assert totals == sorted(totals)


def test_a_wooden_box_loses_about_a_third_less_than_glass_and_not_far_less() -> None:
    glass, wood = (
        Enclosure(1.2, 0.6, 0.6, material, Lid.SOLID).conductance_w_k()
        for material in (Material.GLASS, Material.WOOD)
    )
    assert 0.65 < wood / glass < 0.80


def test_a_room_that_is_warm_enough_needs_no_watts() -> None:
    need = watts_to_hold(FOUR_BY_TWO, 24.0, 26.0)
    assert (need.total_w.high, need.walls_w, need.air_w) == (0.0, 0.0, 0.0)


def test_no_draught_without_warmth_or_without_an_opening() -> None:
    assert level_opening_flow(0.1, 22.0, 22.0) == 0.0
    assert level_opening_flow(0.0, 30.0, 22.0) == 0.0
    assert stack_flow(0.01, 0.5, 20.0, 22.0) == 0.0


@pytest.mark.parametrize("size", [0.01, 9.0])
def test_a_size_that_is_no_enclosure_is_refused(size: float) -> None:
    with pytest.raises(OutsideModelError):
        Enclosure(size, 0.6, 0.6)


def test_air_beyond_the_model_is_refused() -> None:
    with pytest.raises(OutsideModelError):
        watts_to_hold(FOUR_BY_TWO, 55.0, 22.0)
    with pytest.raises(OutsideModelError):
        air_held(FOUR_BY_TWO, 5000.0, 22.0)
    with pytest.raises(OutsideModelError):
        air_held(FOUR_BY_TWO, 50.0, -20.0)


@pytest.mark.parametrize(
    ("room_f", "decision"),
    [
        (50.0, NightDecision.HEAT),
        (59.0, NightDecision.HEAT),
        (60.0, NightDecision.NOTHING),
        (68.0, NightDecision.NOTHING),
        (82.0, NightDecision.NOTHING),
        (84.0, NightDecision.TOO_WARM),
    ],
)
def test_a_bearded_dragon_needs_heat_only_below_sixty_fahrenheit(
    room_f: float, decision: NightDecision
) -> None:
    plan = night_plan(animals()["bearded-dragon"], (room_f - 32.0) / 1.8)
    assert plan.decision is decision
    assert plan.heat_off_c is not None
    assert plan.heat_off_c * 1.8 + 32.0 == pytest.approx(72.0)


def test_between_the_ends_of_a_floor_keepers_differ() -> None:
    corn = animals()["corn-snake"]
    assert corn.night_floor_c is not None
    assert night_plan(corn, corn.night_floor_c.aim).decision is NightDecision.KEEPERS_DIFFER


def test_the_night_of_what_swims_is_that_of_its_water() -> None:
    plan = night_plan(animals()["slider"], 12.0)
    assert plan.decision is NightDecision.WATER_TOO_COLD
    assert night_plan(animals()["slider"], 20.0).decision is NightDecision.WATER
    assert night_plan(animals()["axolotl"], 21.0).decision is NightDecision.TOO_WARM
    assert plan.heat_off_c is None
    assert emitter_for(FOUR_BY_TWO, plan, 12.0) is None


@pytest.mark.parametrize("animal", animals().values(), ids=lambda a: a.slug)
def test_a_thermostat_point_lies_above_the_floor_and_in_the_night(animal: Animal) -> None:
    plan = night_plan(animal, 5.0)
    if plan.heat_off_c is not None and animal.cool_air_c is not None:
        assert plan.floor_c is not None
        assert plan.floor_c.high < plan.heat_off_c <= animal.cool_air_c.high


def test_an_emitter_covers_the_coldest_hour_with_a_step_that_is_sold() -> None:
    dragon = animals()["bearded-dragon"]
    emitter = emitter_for(FOUR_BY_TWO, night_plan(dragon, 12.0), 12.0)
    assert emitter is not None
    assert emitter.step_w in steps_sold(Family.DARK_EMITTER)
    assert emitter.step_w is not None
    assert emitter.step_w >= emitter.power_w.high >= emitter.need.total_w.high
