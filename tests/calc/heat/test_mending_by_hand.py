"""What each change makes of a cool end, worked out once more beside the engine. Exact."""

from dataclasses import replace

import pytest

from calc.animals import animals
from calc.heat.box import Spot, likely_cool_end, second_heater, watts_to_hold
from calc.heat.enclosure import Enclosure, Lid, Material
from calc.heat.mending import HeatChange, Surroundings, heat_changes
from calc.heat.readings import finding_for
from calc.heat.steps import Step
from calc.heat.wattages import steps_sold
from calc.limits import Met, limits_of, passed
from calc.quantities import Quantity

DRAGON = animals()["bearded-dragon"]
assert DRAGON.cool_air_c is not None
LOW, HIGH = DRAGON.cool_air_c.low, DRAGON.cool_air_c.high
BOX = Enclosure(0.9, 0.45, 0.45, Material.GLASS, Lid.SOLID)
COOLER = [Step.LESS_POWER, Step.MORE_AIR, Step.COOLER_ROOM]
WARMER = [
    *(Step.MOVE_LAMP_INWARD, Step.SECOND_WEAKER_LAMP, Step.LESS_AIR),
    *(Step.MORE_POWER, Step.WARMER_ROOM),
]


def changed(
    cool_c: float, *around: object, wanted: tuple[float, float] = (LOW, HIGH)
) -> dict[Step, HeatChange]:
    """What changes a cool end of the dragon, or of an animal that wants another one."""
    assert DRAGON.cool_air_c is not None
    low, high = wanted
    animal = replace(DRAGON, cool_air_c=replace(DRAGON.cool_air_c, low=low, high=high))
    given = Surroundings(*around)  # type: ignore[arg-type]
    found = heat_changes(finding_for(Quantity.COOL_AIR, cool_c, animal), animal, given)
    return {one.step: one for one in found}


def test_without_a_box_heat_goes_as_the_rise_to_one_and_a_quarter() -> None:
    found = changed(31.0, 21.0)
    assert list(found) == [Step.LESS_POWER, Step.COOLER_ROOM]
    assert found[Step.LESS_POWER].amount == pytest.approx(((HIGH - 21.0) / 10.0) ** 1.25)
    assert found[Step.LESS_POWER].cool_c.best == HIGH
    by_watts = changed(31.0, 21.0, None, 100.0)[Step.LESS_POWER]
    assert by_watts.amount == 60.0
    assert by_watts.cool_c.best == pytest.approx(21.0 + 10.0 * 0.6**0.8)
    more = changed(22.0, 20.0, None, 40.0)
    assert list(more) == [Step.MORE_POWER, Step.WARMER_ROOM]
    # 40 W times 2.5 to the power of 1.25 are 125.7 W, and so 150 W of what is sold.
    assert more[Step.MORE_POWER].amount == 150.0
    assert more[Step.MORE_POWER].cool_c.best == pytest.approx(20.0 + 2.0 * 3.75**0.8)
    assert list(changed(22.0, 20.0)) == [Step.WARMER_ROOM]


def test_the_range_of_a_change_is_that_of_the_model() -> None:
    for cool, around in ((31.0, (21.0,)), (22.0, (20.0, None, 40.0))):
        for one in changed(cool, *around).values():
            change = one.cool_c.best - cool
            ends = sorted((cool + change / 1.35, cool + change * 1.35))
            assert [one.cool_c.low, one.cool_c.high] == pytest.approx(ends)
            assert (one.judged.low, one.judged.high) == (LOW, HIGH)
            assert one.judged.value == one.cool_c
            assert one.mends is one.judged.is_fine


def test_a_room_is_changed_by_as_much_as_the_cool_end_is_off() -> None:
    cooler, warmer = changed(31.0, 21.0)[Step.COOLER_ROOM], changed(22.0, 20.0)[Step.WARMER_ROOM]
    assert (cooler.amount, cooler.cool_c.best) == pytest.approx((21.0 - (31.0 - HIGH), HIGH))
    assert (warmer.amount, warmer.cool_c.best) == pytest.approx((20.0 + LOW - 22.0, LOW))


@pytest.mark.parametrize(
    ("wanted", "cool_c", "room_c", "step", "amount"),
    [
        # 16 °C and 30 °C are rooms to ask for; half a degree beyond is none.
        ((24.0, 28.0), 32.0, 20.0, Step.COOLER_ROOM, 16.0),
        ((24.0, 28.0), 32.0, 19.5, Step.COOLER_ROOM, None),
        ((30.0, 34.0), 26.0, 26.0, Step.WARMER_ROOM, 30.0),
        ((30.0, 34.0), 26.0, 25.5, Step.WARMER_ROOM, 29.5),
        ((30.5, 34.0), 28.5, 28.5, Step.WARMER_ROOM, None),
        ((30.5, 34.0), 28.5, 27.5, Step.WARMER_ROOM, 29.5),
        # Where the cool end is below its room, the room is made what is wanted.
        ((24.0, 28.0), 20.0, 21.0, Step.WARMER_ROOM, 24.0),
    ],
)
def test_no_room_is_sent_below_16_degrees_or_above_30(
    wanted: tuple[float, float], cool_c: float, room_c: float, step: Step, amount: float | None
) -> None:
    found = changed(cool_c, room_c, wanted=wanted)
    assert (found[step].amount if step in found else None) == amount


def test_a_cool_end_no_warmer_than_its_room_tells_nothing_of_the_lamp() -> None:
    for room, told in ((21.51, False), (21.5, True), (25.0, False)):
        assert (Step.MORE_POWER in changed(22.0, room, None, 20.0)) is told, room
    for room, told in ((HIGH, False), (HIGH - 0.1, True)):
        assert (Step.LESS_POWER in changed(31.0, room)) is told, room
    # More than 40 K over its room is beyond the model.
    assert Step.LESS_POWER in changed(45.0, 5.0)
    assert Step.LESS_POWER not in changed(45.1, 5.0)


def test_what_is_right_needs_no_change_and_neither_does_what_is_beyond_the_model() -> None:
    assert changed(26.0, 21.0, BOX, 75.0) == {}
    assert changed(31.0, -5.0, BOX, 75.0) == {}
    assert list(changed(31.0, 21.0, BOX, 75.0)) == COOLER


def test_each_way_to_warm_is_tried_in_its_box() -> None:
    meshed = replace(BOX, lid=Lid.FULL_MESH)
    found = changed(22.0, 20.0, meshed, 75.0)
    assert list(found) == WARMER
    heat = watts_to_hold(meshed, 22.0, 20.0, Spot.WARM_END).total_w.best
    inward = likely_cool_end(meshed, heat, 20.0, Spot.INWARD)
    assert found[Step.MOVE_LAMP_INWARD].cool_c.best == pytest.approx(inward)
    assert found[Step.MOVE_LAMP_INWARD].amount is None
    more = second_heater(meshed, LOW, 20.0, heat, Spot.WARM_END)
    enough = min(step for step in steps_sold() if step >= more)
    assert found[Step.SECOND_WEAKER_LAMP].amount == enough
    held = likely_cool_end(meshed, heat, 20.0, Spot.WARM_END, enough)
    assert found[Step.SECOND_WEAKER_LAMP].cool_c.best == pytest.approx(held)
    solid = likely_cool_end(BOX, heat, 20.0, Spot.WARM_END)
    assert found[Step.LESS_AIR].cool_c.best == pytest.approx(solid)
    assert found[Step.LESS_AIR].amount == 0.0
    times = watts_to_hold(meshed, LOW, 20.0, Spot.WARM_END).total_w.best / heat
    lamp = min(step for step in steps_sold() if step >= 75.0 * times)
    assert found[Step.MORE_POWER].amount == lamp
    by_lamp = likely_cool_end(meshed, heat * lamp / 75.0, 20.0, Spot.WARM_END)
    assert found[Step.MORE_POWER].cool_c.best == pytest.approx(by_lamp)


def test_a_second_lamp_is_weaker_than_the_first() -> None:
    # 35 W would do it, so under a lamp of 35 W the next weaker one is tried.
    assert changed(22.0, 20.0, BOX, 40.0)[Step.SECOND_WEAKER_LAMP].amount == 35.0
    assert changed(22.0, 20.0, BOX, 35.0)[Step.SECOND_WEAKER_LAMP].amount == 25.0
    assert Step.SECOND_WEAKER_LAMP not in changed(22.0, 20.0, BOX, 25.0)
    # What was not told is as strong as the heat it makes: 20 W here, and nothing weaker is sold.
    assert Step.SECOND_WEAKER_LAMP not in changed(22.0, 20.0, BOX)
    assert changed(23.0, 17.0, BOX)[Step.SECOND_WEAKER_LAMP].amount == 25.0


def _through(box: Enclosure, lid: Lid, cool_c: float, room_c: float = 21.0) -> float:
    """The same heat in the same room under another lid."""
    heat = watts_to_hold(box, cool_c, room_c, Spot.WARM_END).total_w.best
    return likely_cool_end(replace(box, lid=lid), heat, room_c, Spot.WARM_END)


def test_of_the_lids_the_first_that_is_enough_is_told_else_the_last() -> None:
    wood = Enclosure(0.9, 0.6, 0.45, Material.WOOD, Lid.SOLID)
    for box, cool, lid in (
        (wood, 29.6, Lid.PART_MESH),
        (wood, 30.5, Lid.FULL_MESH),
        (BOX, 34.0, Lid.FULL_MESH),
    ):
        assert (LOW <= _through(box, Lid.PART_MESH, cool) <= HIGH) is (lid is Lid.PART_MESH)
        more = changed(cool, 21.0, box, 100.0)[Step.MORE_AIR]
        assert more.amount == lid.value
        assert more.cool_c.best == pytest.approx(_through(box, lid, cool))
    meshed, partly = (replace(BOX, lid=lid) for lid in (Lid.FULL_MESH, Lid.PART_MESH))
    assert Step.MORE_AIR not in changed(32.0, 21.0, meshed, 100.0)
    assert Step.MORE_AIR in changed(32.0, 21.0, partly, 100.0)
    assert Step.LESS_AIR not in changed(22.0, 20.0, BOX, 75.0)
    # From full mesh half of it closed is enough for a box that lacks a little.
    assert changed(23.0, 15.0, meshed, 75.0)[Step.LESS_AIR].amount == Lid.PART_MESH.value
    assert changed(22.0, 20.0, partly, 75.0)[Step.LESS_AIR].amount == Lid.SOLID.value


def test_what_just_reaches_the_range_is_enough() -> None:
    """A sixteenth of the rise takes 1/16 to the power of 1.25 of the heat: 25 W of 800."""
    lamp = changed(32.0, 28.0, None, 800.0, wanted=(28.0, 28.25))[Step.LESS_POWER]
    assert (lamp.amount, lamp.cool_c.best) == pytest.approx((25.0, 28.25))
    by_part = _through(BOX, Lid.PART_MESH, 34.0)
    more = changed(34.0, 21.0, BOX, 100.0, wanted=(by_part - 3.0, by_part))
    assert more[Step.MORE_AIR].amount == Lid.PART_MESH.value
    meshed = replace(BOX, lid=Lid.FULL_MESH)
    closed = _through(meshed, Lid.PART_MESH, 23.0, 15.0)
    less = changed(23.0, 15.0, meshed, 100.0, wanted=(closed, closed + 3.0))
    assert less[Step.LESS_AIR].amount == Lid.PART_MESH.value


def test_a_change_that_may_pass_a_limit_is_left_out_and_no_other() -> None:
    """150 W in place of 40 would be right, but past a limit if it does a third more than that."""
    found = changed(15.0, 10.0, BOX, 40.0)
    assert list(found) == [Step.MOVE_LAMP_INWARD, Step.SECOND_WEAKER_LAMP, Step.WARMER_ROOM]
    heat = watts_to_hold(BOX, 15.0, 10.0, Spot.WARM_END).total_w.best
    right = likely_cool_end(BOX, heat * 150.0 / 40.0, 10.0, Spot.WARM_END)
    assert LOW < right < HIGH
    limits = limits_of(DRAGON)
    assert not passed(limits, Met(coolest_air_c=right))
    assert passed(limits, Met(coolest_air_c=15.0 + (right - 15.0) * 1.35))


def test_the_weakest_lamp_there_is_has_no_weaker_one() -> None:
    assert Step.LESS_POWER not in changed(31.0, 21.0, BOX, 25.0)
    assert changed(35.0, 21.0, BOX, 35.0)[Step.LESS_POWER].amount == 25.0
