"""What mends a cool end: tried in the box, within every limit, and none where the room is it."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.animal import Animal
from calc.animals import animals
from calc.heat.box import Spot, likely_cool_end, watts_to_hold
from calc.heat.enclosure import Enclosure, Lid, Material
from calc.heat.judge import judge
from calc.heat.mending import HeatChange, Surroundings, heat_changes
from calc.heat.readings import Readings, finding_for
from calc.heat.steps import Step
from calc.heat.wattages import steps_sold
from calc.limits import LimitName, Met, limits_of, passed
from calc.quantities import Quantity
from tests.some import some

MANY = settings(max_examples=some(80), deadline=None)
DRAGON = animals()["bearded-dragon"]
BOX = Enclosure(0.9, 0.45, 0.45, Material.GLASS, Lid.SOLID)
ANIMALS = st.sampled_from(list(animals().values()))
BOXES = st.builds(
    Enclosure,
    st.floats(0.3, 2.4),
    st.floats(0.3, 0.9),
    st.floats(0.3, 1.2),
    st.sampled_from(Material),
    st.sampled_from(Lid),
)
AROUND = st.builds(
    Surroundings, st.floats(5.0, 40.0), st.none() | BOXES, st.none() | st.floats(25.0, 250.0)
)
WARMING = {
    Step.WARMER_ROOM,
    Step.LESS_AIR,
    Step.MORE_POWER,
    Step.LOWER_LAMP,
    Step.MOVE_LAMP_INWARD,
    Step.SECOND_WEAKER_LAMP,
}
COOLING = {Step.COOLER_ROOM, Step.MORE_AIR, Step.LESS_POWER, Step.LONGER_ENCLOSURE}


def changed(cool_c: float, around: Surroundings, animal: Animal = DRAGON) -> dict[Step, HeatChange]:
    found = heat_changes(finding_for(Quantity.COOL_AIR, cool_c, animal), animal, around)
    assert len({change.step for change in found}) == len(found)
    return {change.step: change for change in found}


@pytest.mark.parametrize("box", [None, BOX])
@pytest.mark.parametrize("room", [28.0, 30.0])
def test_a_room_too_hot_is_cooled_and_nothing_else_mends(
    box: Enclosure | None, room: float
) -> None:
    found = changed(31.0, Surroundings(room, box, 75.0))
    assert set(found) == {Step.COOLER_ROOM}
    steps = judge(Readings(39.5, 31.0, lamp_on_h=3.0), DRAGON, Surroundings(room, box)).steps
    assert steps[0] is Step.COOLER_ROOM
    # With a spot that is too hot as well the lamp goes up before the room is cooled.
    both = judge(Readings(44.8, 31.0, lamp_on_h=3.0), DRAGON, Surroundings(room, box)).steps
    assert Step.COOLER_ROOM in both


def test_each_change_is_what_the_box_makes_of_it() -> None:
    # exact: the same heat, put into the changed box.
    warm, cold = Surroundings(21.0, BOX, 100.0), Surroundings(20.0, BOX, 100.0)
    heat = watts_to_hold(BOX, 30.0, 21.0, Spot.WARM_END).total_w.best
    found = changed(30.0, warm)
    lamp = found[Step.LESS_POWER].amount
    assert lamp in steps_sold()
    assert lamp is not None
    by_lamp = likely_cool_end(BOX, heat * lamp / 100.0, 21.0, Spot.WARM_END)
    assert found[Step.LESS_POWER].cool_c.best == pytest.approx(by_lamp)
    room = found[Step.COOLER_ROOM].amount
    assert room is not None
    by_room = likely_cool_end(BOX, heat, room, Spot.WARM_END)
    assert found[Step.COOLER_ROOM].cool_c.best == pytest.approx(by_room, abs=0.2)
    held = watts_to_hold(BOX, 22.5, 20.0, Spot.WARM_END).total_w.best
    second = changed(22.5, cold)[Step.SECOND_WEAKER_LAMP]
    assert second.amount is not None
    by_second = likely_cool_end(BOX, held, 20.0, Spot.WARM_END, second.amount)
    assert second.cool_c.best == pytest.approx(by_second)
    inward = changed(22.5, cold)[Step.MOVE_LAMP_INWARD].cool_c.best
    assert inward == pytest.approx(likely_cool_end(BOX, held, 20.0, Spot.INWARD))


def test_a_lamp_told_by_its_watts_and_a_share_where_none_were_told_agree() -> None:
    share = changed(30.0, Surroundings(21.0, BOX))[Step.LESS_POWER]
    lamp = changed(30.0, Surroundings(21.0, BOX, 100.0))[Step.LESS_POWER]
    assert share.amount is not None
    assert lamp.amount is not None
    assert DRAGON.cool_air_c is not None
    high = DRAGON.cool_air_c.high
    by_box = [watts_to_hold(BOX, cool, 21.0, Spot.WARM_END).total_w.best for cool in (high, 30.0)]
    assert share.amount == pytest.approx(by_box[0] / by_box[1])
    # The lamp is the largest sold that is no more than the share.
    assert lamp.amount == max(step for step in steps_sold() if step <= 100.0 * share.amount)


@MANY
@given(ANIMALS, st.floats(5.0, 45.0), AROUND)
def test_no_change_leads_past_a_limit_and_what_mends_is_in_range(
    animal: Animal, cool_c: float, around: Surroundings
) -> None:
    limits = limits_of(animal)
    for step, change in changed(cool_c, around, animal).items():
        ends = change.cool_c
        assert (step in WARMING) == (ends.best >= cool_c)
        beyond = ends.high if step in WARMING else ends.low
        assert not passed(limits, Met(coolest_air_c=beyond))
        if change.mends:
            assert animal.cool_air_c is not None
            low, high = animal.cool_air_c.low, animal.cool_air_c.high
            assert low - 0.5 <= ends.best <= high + 0.5


@MANY
@given(ANIMALS, st.none() | st.floats(10.0, 70.0), st.floats(2.0, 45.0), AROUND)
def test_past_a_limit_of_heat_nothing_warms_and_past_one_of_cold_nothing_cools(
    animal: Animal, surface: float | None, cool_c: float, around: Surroundings
) -> None:
    found = judge(Readings(surface, cool_c, lamp_on_h=3.0), animal, around)
    past = {p.name for p in passed(limits_of(animal), Met(surface, None, cool_c))}
    hot = past & {LimitName.SURFACE, LimitName.COOLEST_AIR}
    if hot:
        assert WARMING.isdisjoint(found.steps)
    elif LimitName.COLD_DAY in past:
        assert COOLING.isdisjoint(found.steps)
    assert found.steps


@MANY
@given(st.floats(26.0, 40.0), st.floats(10.0, 24.0), st.floats(30.0, 200.0))
def test_what_does_not_mend_the_cool_end_is_no_step_where_something_does(
    cool_c: float, room: float, watts: float
) -> None:
    found = judge(Readings(39.5, cool_c, lamp_on_h=3.0), DRAGON, Surroundings(room, BOX, watts))
    fails = {change.step for change in found.changes if not change.mends}
    mended = [change.step for change in found.changes if change.mends]
    if mended and Step.SWITCH_LAMP_OFF not in found.steps:
        assert fails.isdisjoint(found.steps)
        assert found.steps[0] is mended[0]
