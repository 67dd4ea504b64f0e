"""Which tube suits: rows in order, and lengths for enclosures."""

from itertools import pairwise

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.judgement import judge_value
from calc.quantities import Quantity
from calc.uv.choice import (
    STRENGTHS_PERCENT,
    LengthFit,
    strengths_and_fixtures,
    suits,
    tube_length_for,
)
from calc.uv.distances import uvi_by_length
from calc.uv.lamp import Fixture, Lamp, of_length
from calc.uv.lengths import length_of_tube
from calc.uv.screen import FlatScreen, NoScreen
from calc.uv.tube import STANDARD_T5_HO
from calc.validity import OutsideModelError


def test_every_class_stands_in_the_list_in_both_fixtures() -> None:
    rows = suits(0.4, NoScreen(), 3.0, 5.0)
    assert {(r.strength_percent, r.fixture) for r in rows} == {
        (strength, fixture) for strength in STRENGTHS_PERCENT for fixture in Fixture
    }


def test_a_row_is_judged_as_anything_else() -> None:
    for row in suits(0.3, FlatScreen(0.55), 1.0, 2.6):
        assert row.judged == judge_value(Quantity.UVI, row.uvi, 1.0, 2.6)


def test_the_trade_puts_the_strong_polished_tube_at_18_inches() -> None:
    # Common practice, no source: 12 % polished at 16-20 in, the 6 % tubes at half of that.
    within = {
        (r.strength_percent, r.fixture)
        for r in suits(18 * 0.0254, NoScreen(), 3.0, 5.0)
        if r.judged.is_fine
    }
    assert (12.0, Fixture.POLISHED) in within
    assert not any(strength <= 6.0 for strength, _ in within)


@given(st.floats(0.2, 1.5), st.sampled_from([(0.5, 1.4), (1.0, 2.0), (3.0, 5.0)]))
def test_a_tube_that_is_too_strong_if_it_is_long_is_told_how_long_it_may_be(
    distance_m: float, wanted: tuple[float, float]
) -> None:
    any_length = length_of_tube()
    for row in suits(distance_m, NoScreen(), *wanted, any_length):
        lamp = of_length(Lamp(row.strength_percent, row.fixture), any_length)
        longest = uvi_by_length(lamp, distance_m, NoScreen()).high
        if row.judged.is_fine and row.longest is None:
            assert longest <= wanted[1]


@given(st.floats(0.3, 4.0))
def test_a_chosen_tube_is_about_half_to_two_thirds(length: float) -> None:
    choice = tube_length_for(length)
    if choice.fit is LengthFit.NONE:
        assert choice.tube is None
        assert choice.share is None
        return
    assert choice.tube in STANDARD_T5_HO
    assert choice.share is not None
    assert choice.middle_from_warm_end_m is not None
    slack = 1e-12 if choice.fit is LengthFit.WITHIN else 0.15
    assert 0.5 / (1 + slack) - 1e-12 <= choice.share <= 2 / 3 * (1 + slack) + 1e-12
    assert choice.middle_from_warm_end_m < length / 2


@pytest.mark.parametrize(
    ("length", "fit", "tube"),
    [
        (0.914, LengthFit.WITHIN, 0.549),
        (1.0, LengthFit.WITHIN, 0.549),
        (1.219, LengthFit.NEAR, 0.849),
        (1.829, LengthFit.WITHIN, 1.149),
        (2.438, LengthFit.WITHIN, 1.449),
    ],
)
def test_usual_enclosures_get_a_usual_tube(length: float, fit: LengthFit, tube: float) -> None:
    choice = tube_length_for(length)
    assert choice.fit is fit
    assert choice.tube is not None
    assert choice.tube.face_to_face_m == tube


def test_a_small_box_gets_no_tube_but_hears_of_the_next_longer_one() -> None:
    choice = tube_length_for(0.6)
    assert choice.fit is LengthFit.NONE
    assert choice.shorter is None
    assert choice.longer is not None
    assert choice.longer.face_to_face_m == 0.549


def test_an_enclosure_beyond_the_longest_tube_hears_of_the_longest() -> None:
    choice = tube_length_for(3.9)
    assert choice.fit is LengthFit.NONE
    assert choice.shorter is not None
    assert choice.shorter.face_to_face_m == 1.449


@pytest.mark.parametrize("length", [0.2, 5.0, float("nan")])
def test_an_enclosure_outside_the_model_is_refused(length: float) -> None:
    with pytest.raises(OutsideModelError):
        tube_length_for(length)


def test_strengths_step_evenly_so_that_a_label_always_has_one_near_by() -> None:
    steps = {b - a for a, b in pairwise(STRENGTHS_PERCENT)}
    assert steps == {2.0}
    assert {s for s, _ in strengths_and_fixtures()} == {6.0, 8.0, 10.0, 12.0}
