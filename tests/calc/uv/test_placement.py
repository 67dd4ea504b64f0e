"""Placement: round trips, limits, and the reasons given."""

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from calc.judgement import Move
from calc.uv.lamp import Fixture, Lamp, uvi_at
from calc.uv.placement import (
    COMFORTABLE_MINIMUM_M,
    FARTHEST_PLACE_M,
    SAFE_MINIMUM_M,
    Placement,
    Reason,
    Spot,
    Verdict,
    check_place,
    distance_for,
    place,
)
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave
from calc.validity import OutsideModelError
from tests.some import some

LAMP = Lamp(12.0, Fixture.POLISHED)
SCREENS: tuple[Screen, ...] = (
    NoScreen(),
    FlatScreen(0.55),
    Weave(18 / 0.0254, 16 / 0.0254, 0.011 * 0.0254),
)
lamps = st.builds(Lamp, st.floats(1.0, 20.0), st.sampled_from(list(Fixture)), st.floats(0.2, 1.5))


def spots(placement: Placement) -> tuple[Spot, Spot, Spot]:
    assert placement.near is not None
    assert placement.start is not None
    assert placement.far is not None
    return placement.near, placement.start, placement.far


@given(lamps, st.sampled_from(SCREENS), st.floats(0.06, 1.49))
@settings(max_examples=some(60), deadline=None)
def test_a_distance_comes_back_from_its_uvi(lamp: Lamp, screen: Screen, distance: float) -> None:
    assert distance_for(lamp, screen, uvi_at(lamp, distance, screen)) == pytest.approx(
        distance, abs=5e-6
    )


@given(lamps, st.sampled_from(SCREENS), st.floats(0.1, 5.0), st.floats(1.0, 4.0))
@settings(max_examples=some(80), deadline=None)
def test_a_fitting_placement_keeps_its_promises(
    lamp: Lamp, screen: Screen, low: float, ratio: float
) -> None:
    placement = place(lamp, screen, low, low * ratio)
    assume(placement.verdict is Verdict.FITS)
    near, start, far = spots(placement)
    assert COMFORTABLE_MINIMUM_M <= near.distance_m <= start.distance_m + 1e-5
    assert start.distance_m <= far.distance_m + 1e-5 <= FARTHEST_PLACE_M + 1e-4
    assert near.uvi.best <= low * ratio * (1 + 1e-4)
    assert far.uvi.best >= low * (1 - 1e-4)
    if Reason.START_MOVED_BY_CHANCE in placement.reasons:
        assert start.uvi.best < placement.target_uvi
    else:
        assert start.uvi.best == pytest.approx(placement.target_uvi, rel=1e-4)


def test_a_weak_lamp_is_too_weak_even_close_by() -> None:
    placement = place(Lamp(2.0, Fixture.PLAIN), FlatScreen(0.3), 3.0, 5.0)
    assert placement.verdict is Verdict.TOO_WEAK
    assert placement.reasons == (Reason.TOO_WEAK_AT_SAFE_MINIMUM,)
    assert placement.start is None
    assert placement.at_safe_minimum.distance_m == SAFE_MINIMUM_M
    assert placement.at_safe_minimum.uvi.best < 3.0


def test_a_strong_lamp_for_a_shade_animal_is_out_of_range() -> None:
    placement = place(Lamp(14.0, Fixture.POLISHED, 1.4), NoScreen(), 0.05, 0.2)
    assert placement.verdict is Verdict.OUT_OF_RANGE
    assert placement.reasons == (Reason.TOO_STRONG_AT_LIMIT,)
    assert placement.far is None


def test_a_range_from_zero_ends_where_answers_end() -> None:
    placement = place(Lamp(6.0, Fixture.PLAIN), NoScreen(), 0.0, 1.0)
    _, start, far = spots(placement)
    assert placement.target_uvi == 0.5
    assert far.distance_m == FARTHEST_PLACE_M
    assert Reason.FAR_END_HELD_AT_LIMIT in placement.reasons
    assert start.uvi.best == pytest.approx(0.5, rel=1e-4)


def test_a_single_wanted_uvi_is_one_distance() -> None:
    near, start, far = spots(place(LAMP, NoScreen(), 4.0, 4.0))
    assert near.distance_m == start.distance_m == far.distance_m


def test_the_near_end_is_held_where_a_tube_would_hang_too_near_for_comfort() -> None:
    placement = place(Lamp(6.0, Fixture.PLAIN), NoScreen(), 3.0, 5.0)
    assert placement.verdict is Verdict.FITS
    assert placement.reasons == (Reason.NEAR_END_HELD_FOR_COMFORT,)
    assert spots(placement)[0].distance_m == COMFORTABLE_MINIMUM_M


def test_nothing_is_placed_nearer_than_the_safe_minimum() -> None:
    placement = place(Lamp(6.0, Fixture.PLAIN), FlatScreen(0.55), 3.0, 5.0)
    assert placement.verdict is Verdict.TOO_CLOSE
    assert {Reason.START_HELD_FOR_SAFETY, Reason.START_NEARER_THAN_COMFORT} <= set(
        placement.reasons
    )
    assert min(spot.distance_m for spot in spots(placement)) == SAFE_MINIMUM_M


@pytest.mark.parametrize(
    ("distance", "move", "sign"),
    [(0.2, Move.DOWN, 1.0), (0.45, Move.STAY, 0.0), (0.9, Move.UP, -1.0)],
)
def test_a_given_place_is_judged_and_moved_into_the_range(
    distance: float, move: Move, sign: float
) -> None:
    check = check_place(LAMP, NoScreen(), distance, 3.0, 5.0)
    assert check.judged.move is move
    assert check.move_into_range_m is not None
    assert check.move_to_start_m is not None
    assert check.move_into_range_m * sign >= 0.0
    assert (check.move_into_range_m == 0.0) is (move is Move.STAY)
    moved = uvi_at(LAMP, distance + check.move_into_range_m, NoScreen())
    assert 3.0 * (1 - 1e-4) <= moved <= 5.0 * (1 + 1e-4)
    start = uvi_at(LAMP, distance + check.move_to_start_m, NoScreen())
    assert start == pytest.approx(check.placement.target_uvi, rel=1e-4)


def test_a_check_is_sure_only_where_its_whole_range_agrees() -> None:
    assert check_place(LAMP, NoScreen(), 1.4, 3.0, 5.0).judged.is_sure
    assert not check_place(LAMP, NoScreen(), 0.5, 3.0, 5.0).judged.is_sure


def test_a_lamp_that_cannot_reach_the_range_offers_no_move() -> None:
    check = check_place(Lamp(2.0, Fixture.PLAIN), FlatScreen(0.3), 0.3, 3.0, 5.0)
    assert check.move_into_range_m is None
    assert check.move_to_start_m is None


@pytest.mark.parametrize(
    ("low", "high"), [(5.0, 3.0), (-1.0, 3.0), (0.0, 0.0), (3.0, 50.0), (float("nan"), 3.0)]
)
def test_a_range_that_is_none_is_refused(low: float, high: float) -> None:
    with pytest.raises(OutsideModelError):
        place(LAMP, NoScreen(), low, high)


def test_a_uvi_out_of_reach_is_refused() -> None:
    with pytest.raises(OutsideModelError):
        distance_for(LAMP, NoScreen(), 500.0)
    with pytest.raises(OutsideModelError):
        distance_for(LAMP, NoScreen(), 1e-3)
