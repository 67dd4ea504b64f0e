"""Tubes in boxes: every way that is named keeps its promises, and a low box says how low."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.uv.hanging import Mount, hangings, lowest_box
from calc.uv.lamp import Fixture, Lamp, uvi_at
from calc.uv.screen import FlatScreen, NoScreen, Screen
from calc.validity import OutsideModelError

LAMPS = tuple(Lamp(strength, fixture) for strength in (6.0, 12.0) for fixture in Fixture)
meshes = st.sampled_from([None, FlatScreen(0.55), FlatScreen(0.3), NoScreen()])
ranges = st.sampled_from([(3.0, 5.0), (1.0, 2.0), (0.5, 1.4), (4.0, 6.0)])


@given(meshes, st.floats(0.2, 2.0), st.floats(0.0, 0.15), ranges)
@settings(max_examples=80, deadline=None)
def test_a_way_to_hang_a_tube_puts_the_back_where_the_range_is(
    mesh: Screen | None, height: float, back: float, wanted: tuple[float, float]
) -> None:
    for way in hangings(LAMPS, mesh, height, back, *wanted):
        assert 0.0 <= way.platform_m <= max(height - 0.25, 0.0)
        assert way.platform_m + back + way.distance_m == pytest.approx(way.tube_m)
        uvi = uvi_at(way.lamp, way.distance_m, way.screen)
        assert wanted[0] - 1e-6 <= uvi <= wanted[1] + 1e-6
        assert (way.mount is Mount.OVER_MESH) == (way.tube_m > height)
        assert way.mount is Mount.OVER_MESH or isinstance(way.screen, NoScreen)


@given(meshes, st.floats(0.0, 0.15), ranges)
@settings(max_examples=40, deadline=None)
def test_the_lowest_box_is_just_high_enough(
    mesh: Screen | None, back: float, wanted: tuple[float, float]
) -> None:
    lowest = lowest_box(LAMPS, mesh, back, *wanted)
    assert lowest is not None
    assert hangings(LAMPS, mesh, lowest + 0.001, back, *wanted)
    assert not hangings(LAMPS, mesh, max(lowest - 0.001, 0.15), back, *wanted)


def test_a_closed_lid_takes_the_tube_inside_only() -> None:
    mounts = {way.mount for way in hangings(LAMPS, None, 0.6, 0.05, 3.0, 5.0)}
    assert mounts == {Mount.INSIDE}


def test_the_best_way_comes_first_and_keeps_the_start_distance() -> None:
    best = hangings(LAMPS, FlatScreen(0.55), 0.6, 0.05, 3.0, 5.0)[0]
    assert best.placement.start is not None
    assert best.distance_m == pytest.approx(best.placement.start.distance_m)


def test_no_tube_for_a_range_that_none_gives() -> None:
    weak = (Lamp(2.0, Fixture.PLAIN),)
    assert hangings(weak, None, 0.6, 0.05, 7.0, 9.0) == ()
    assert lowest_box(weak, None, 0.05, 7.0, 9.0) is None


@pytest.mark.parametrize(("height", "back"), [(0.1, 0.05), (3.5, 0.05), (0.6, -0.1), (0.6, 0.6)])
def test_boxes_beyond_the_model_are_refused(height: float, back: float) -> None:
    with pytest.raises(OutsideModelError):
        hangings(LAMPS, None, height, back, 3.0, 5.0)
