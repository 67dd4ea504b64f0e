"""The two halves by themselves: exact relations that every room, box and spot must keep."""

import pytest

from calc.heat.box import MODEL_DOUBT, air_held, ends_held, second_heater, watts_to_hold
from calc.heat.enclosure import Enclosure, Lid, Material
from calc.heat.halves import HOTTEST_AIR_C, MOST_RISE_K, Halves, Spot
from calc.sources import bibliography
from calc.validity import OutsideModelError

ROOM = 20.0
BOX = Enclosure(0.9, 0.45, 0.45, Material.WOOD, Lid.PART_MESH)
HALVES = Halves.of(BOX, ROOM)


def test_the_ends_of_the_model_are_named_and_held() -> None:
    assert (MOST_RISE_K, HOTTEST_AIR_C) == (40.0, 50.0)
    assert {spot.value for spot in Spot} == {0.1, 0.3, 0.5}
    assert MODEL_DOUBT.factor == 1.35
    assert MODEL_DOUBT.source in bibliography()
    for room in (-0.01, 50.01):
        with pytest.raises(OutsideModelError, match="room air") as refused:
            Halves.of(BOX, room)
        assert refused.value.unit == "degC"
    for cool in (50.01, 60.0):
        with pytest.raises(OutsideModelError, match="air inside"):
            watts_to_hold(BOX, cool, 15.0)
    with pytest.raises(OutsideModelError, match="air inside"):
        watts_to_hold(BOX, 45.01, 5.0)
    assert watts_to_hold(BOX, 45.0, 5.0).total_w.best > 0.0
    for cool in (ROOM - 0.01, 50.01):
        with pytest.raises(OutsideModelError, match=r"^air inside") as refused:
            second_heater(BOX, cool, ROOM, 50.0, Spot.WARM_END)
        assert (refused.value.low, refused.value.high, refused.value.unit) == (ROOM, 50.0, "degC")


@pytest.mark.parametrize("rise", [0.5, 4.0, 12.0])
def test_a_half_loses_half_of_what_the_box_loses(rise: float) -> None:
    assert HALVES.walls_w(rise) == pytest.approx(BOX.conductance_w_k() * rise / 2.0)
    assert HALVES.air_w(rise) == pytest.approx(BOX.air_loss_w(rise, ROOM) / 2.0, rel=1e-6)
    assert HALVES.loss_w(rise) == pytest.approx(HALVES.walls_w(rise) + HALVES.air_w(rise))
    assert HALVES.air_w(rise) > 0.0


def test_without_a_rise_no_air_leaves_and_nothing_flows_over() -> None:
    assert HALVES.air_w(0.0) == HALVES.air_w(-3.0) == 0.0
    assert HALVES.apart_k(0.0) == HALVES.apart_k(-5.0) == 0.0
    assert HALVES.warm_rise_k(3.0, HALVES.loss_w(3.0)) == 3.0


def test_what_flows_over_goes_as_the_rise_to_one_and_a_half() -> None:
    # exact: the flow goes as the root of the difference, the heat as the flow times it.
    one, eight = HALVES.apart_k(1.0), HALVES.apart_k(8.0)
    assert eight / one == pytest.approx(4.0)
    assert HALVES.apart_k(HALVES.over_w_k) == pytest.approx(1.0)


def test_heat_in_the_middle_is_lost_by_both_halves_alike() -> None:
    for rise in (0.0, 1.0, 9.0):
        assert HALVES.watts(rise, Spot.MIDDLE) == pytest.approx(2.0 * HALVES.loss_w(rise))


@pytest.mark.parametrize("spot", list(Spot))
@pytest.mark.parametrize("rise", [0.3, 5.0, 20.0, MOST_RISE_K])
def test_the_watts_of_a_rise_make_that_rise(spot: Spot, rise: float) -> None:
    watts = HALVES.watts(rise, spot)
    cool, warm = HALVES.rises_k(watts, spot)
    assert cool == pytest.approx(rise, abs=1e-6)
    assert HALVES.loss_w(cool) + HALVES.loss_w(warm) == pytest.approx(watts)


@pytest.mark.parametrize("spot", list(Spot))
def test_no_heat_makes_no_rise_and_too_much_is_refused(spot: Spot) -> None:
    assert HALVES.watts(0.0, spot) == 0.0
    assert HALVES.rises_k(0.0, spot) == (0.0, 0.0)
    most = HALVES.watts(MOST_RISE_K, spot)
    assert HALVES.rises_k(most - 0.3, spot)[0] < MOST_RISE_K - 1e-3
    with pytest.raises(OutsideModelError, match="heat inside") as refused:
        HALVES.rises_k(most * 1.001, spot)
    assert refused.value.high == pytest.approx(most)
    for wrong in (-1.0, float("nan")):
        with pytest.raises(OutsideModelError, match="heat inside"):
            HALVES.rises_k(wrong, spot)


@pytest.mark.parametrize("spot", list(Spot))
def test_a_second_heater_in_the_middle_shares_its_heat(spot: Spot) -> None:
    first = HALVES.watts(4.0, spot)
    assert HALVES.more_w(4.0, first, spot) == pytest.approx(0.0, abs=1e-6)
    assert HALVES.more_w(3.0, first, spot) == 0.0
    more = HALVES.more_w(7.0, first, spot)
    cool, warm = HALVES.rises_k(first, spot, more)
    assert cool == pytest.approx(7.0, abs=1e-6)
    assert HALVES.loss_w(cool) + HALVES.loss_w(warm) == pytest.approx(first + more)
    # Nothing there yet: all of it comes from the middle.
    assert HALVES.more_w(7.0, 0.0, spot) == pytest.approx(HALVES.watts(7.0, Spot.MIDDLE))


@pytest.mark.parametrize("watts", [1e-3, 0.3, 0.9])
def test_the_least_heat_makes_the_least_rise(watts: float) -> None:
    cool, warm = HALVES.rises_k(watts, Spot.WARM_END)
    assert 0.0 < cool < warm
    assert HALVES.loss_w(cool) + HALVES.loss_w(warm) == pytest.approx(watts)
    assert HALVES.watts(cool, Spot.WARM_END) == pytest.approx(watts)
    more = HALVES.rises_k(20.0, Spot.WARM_END, watts)[0]
    assert HALVES.more_w(more, 20.0, Spot.WARM_END) == pytest.approx(watts, rel=1e-6)


def test_the_range_is_that_of_the_heat_and_a_room_as_warm_needs_none() -> None:
    held = ends_held(BOX, 40.0, ROOM, Spot.WARM_END, 10.0)
    for factor, cool, warm in (
        (1.0 / 1.35, held.cool_c.low, held.warm_c.low),
        (1.0, held.cool_c.best, held.warm_c.best),
        (1.35, held.cool_c.high, held.warm_c.high),
    ):
        rises = HALVES.rises_k(40.0 * factor, Spot.WARM_END, 10.0 * factor)
        assert (cool - ROOM, warm - ROOM) == pytest.approx(rises)
    assert air_held(BOX, 40.0, ROOM) == ends_held(BOX, 40.0, ROOM, Spot.MIDDLE).cool_c
    for cool in (ROOM, 5.0):
        need = watts_to_hold(BOX, cool, ROOM, Spot.WARM_END)
        assert (need.total_w.high, need.walls_w, need.air_w, need.warm_c) == (0.0, 0.0, 0.0, ROOM)
