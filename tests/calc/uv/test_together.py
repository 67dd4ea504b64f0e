"""Tubes side by side: their UV adds, and a gap only takes from it."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.shape.line import line_shape
from calc.uv.lamp import Fixture, Lamp, OwnConstant, uvi_at
from calc.uv.meter import METER_DOUBT
from calc.uv.placement import place
from calc.uv.screen import FlatScreen, NoScreen
from calc.uv.together import shape_together
from calc.validity import OutsideModelError

_heights = st.floats(0.1, 1.5)
_lengths = st.floats(0.2, 1.5)
_counts = st.integers(1, 4)
_gaps = st.floats(0.0, 1.0)


@given(height=_heights, length=_lengths, count=_counts)
def test_in_one_place_tubes_add_exactly(height: float, length: float, count: int) -> None:
    alone = line_shape(height, length)
    assert shape_together(height, length, count, 0.0) == pytest.approx(count * alone, rel=1e-12)


@given(height=_heights, length=_lengths, count=_counts, gap=_gaps)
def test_a_gap_takes_from_the_sum_and_never_below_one_tube(
    height: float, length: float, count: int, gap: float
) -> None:
    alone, together = line_shape(height, length), shape_together(height, length, count, gap)
    assert alone * (1.0 - 1e-9) <= together <= count * alone * (1.0 + 1e-9)


@given(height=_heights, count=st.integers(2, 4), gap=_gaps, more=st.floats(0.001, 0.5))
def test_more_room_between_them_gives_no_more(
    height: float, count: int, gap: float, more: float
) -> None:
    near, far = (shape_together(height, 0.849, count, g) for g in (gap, gap + more))
    # The best place is looked for on a grid, a thousandth fine.
    assert far <= near * (1.0 + 2e-3)


@given(height=_heights, count=st.integers(2, 4))
def test_tubes_far_apart_are_each_alone(height: float, count: int) -> None:
    alone = line_shape(height, 0.519)
    apart = shape_together(height, 0.519, count, 2.0)
    assert apart < alone * (1.0 + (count - 1) * 0.5)


@given(distance=st.floats(0.15, 1.0), count=_counts, gap=_gaps)
def test_arrays_and_single_distances_agree(distance: float, count: int, gap: float) -> None:
    import numpy as np

    lamp = Lamp(12.0, Fixture.POLISHED, count=count, gap_m=gap)
    many = uvi_at(lamp, np.array([distance, 0.5]), FlatScreen(0.6))
    assert many[0] == pytest.approx(uvi_at(lamp, distance, FlatScreen(0.6)), rel=1e-9)


def test_two_tubes_hang_farther_away_than_one() -> None:
    one = place(Lamp(12.0, Fixture.POLISHED), NoScreen(), 3.0, 5.0)
    two = place(Lamp(12.0, Fixture.POLISHED, count=2), NoScreen(), 3.0, 5.0)
    apart = place(Lamp(12.0, Fixture.POLISHED, count=2, gap_m=0.2), NoScreen(), 3.0, 5.0)
    assert one.near
    assert two.near
    assert apart.near
    assert one.near.distance_m < apart.near.distance_m < two.near.distance_m


def test_a_constant_of_one_s_own_is_that_of_one_tube() -> None:
    own = OwnConstant(1.5, METER_DOUBT)
    one, two = (Lamp(12.0, Fixture.POLISHED, own=own, count=n) for n in (1, 2))
    assert uvi_at(two, 0.4, NoScreen()) == pytest.approx(2.0 * uvi_at(one, 0.4, NoScreen()))


@pytest.mark.parametrize(("count", "gap"), [(0, 0.0), (5, 0.0), (2, -0.1), (2, 3.0)])
def test_what_is_no_pair_of_tubes_is_refused(count: int, gap: float) -> None:
    with pytest.raises(OutsideModelError):
        Lamp(12.0, Fixture.POLISHED, count=count, gap_m=gap)
    with pytest.raises(OutsideModelError):
        shape_together(0.4, 0.519, count, gap)
