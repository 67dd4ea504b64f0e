"""Where a tube starts: by its chances, never nearer than before; when a weaker one is better."""

from dataclasses import replace
from math import log

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.uncertainty import Doubt
from calc.unknowns import Between, Cases, Effect, Factor, Known, Spread, Unknown, combine
from calc.uv.choice import weaker_tubes
from calc.uv.distances import safe_for_length
from calc.uv.lamp import Fixture, Lamp, OwnConstant, of_length, uvi_at
from calc.uv.lengths import length_of_tube
from calc.uv.placement import Reason, Verdict, place
from calc.uv.screen import FlatScreen, NoScreen, Screen
from calc.uv.start import (
    FAR_START_M,
    MOST_ABOVE,
    SURE_ENOUGH,
    Advice,
    best_start_uvi,
    chances_of,
)
from calc.uv.tube import STANDARD_T5_HO
from tests.some import some

CLASS = Lamp(12.0, Fixture.POLISHED)
TWO_CASES = Cases(((1.0, 2.0), (1.3, 1.0)))
_strengths = st.sampled_from((2.0, 6.0, 12.0, 14.0))
_ages = st.one_of(st.none(), st.floats(0.0, 6e7))
_lengths = st.one_of(
    st.just(length_of_tube()),
    st.sampled_from([tube.lit_length_m for tube in STANDARD_T5_HO]).map(length_of_tube),
)
_owns = st.one_of(
    st.none(),
    st.builds(
        lambda c, f: OwnConstant(c, Doubt("readings", f, "uv_meter_judgement")),
        st.floats(0.5, 3.0),
        st.floats(1.0, 2.0),
    ),
)
_lamps = st.builds(
    lambda strength, fixture, age, length, own: (
        Lamp(strength, fixture, length.lit_m, own=own)
        if own
        else of_length(Lamp(strength, fixture, age_s=age), length)
    ),
    _strengths,
    st.sampled_from(Fixture),
    _ages,
    _lengths,
    _owns,
)
_screens: st.SearchStrategy[Screen] = st.sampled_from((NoScreen(), FlatScreen(0.55)))
_ranges = st.sampled_from(((3.0, 5.0), (1.0, 1.5), (2.0, 4.0), (0.5, 1.0), (0.0, 1.0), (4.0, 6.0)))


@settings(max_examples=some(300))
@given(_lamps, _screens, _ranges)
def test_no_start_lies_nearer_than_the_middle_or_than_is_safe_for_the_longest_tube(
    lamp: Lamp, screen: Screen, wanted: tuple[float, float]
) -> None:
    found = place(lamp, screen, *wanted)
    if found.ends is None:
        assert found.advice is None
        assert found.chances is None
        return
    near, start, far = found.ends
    assert near.distance_m <= start.distance_m <= far.distance_m
    assert start.uvi.best <= found.target_uvi * (1.0 + 1e-4)
    assert start.distance_m >= safe_for_length(lamp, screen, wanted[1]) - 1e-6


@settings(max_examples=some(300))
@given(_lamps, _screens, _ranges)
def test_a_start_is_hardly_ever_above_unless_it_is_the_far_end(
    lamp: Lamp, screen: Screen, wanted: tuple[float, float]
) -> None:
    found = place(lamp, screen, *wanted)
    if found.ends is None or found.chances is None:
        return
    _, start, far = found.ends
    chances = found.chances
    assert chances.below + chances.inside + chances.above == pytest.approx(1.0)
    # The spread grows a little with the distance, so the end of the search is not to the digit.
    assert chances.above <= MOST_ABOVE * 1.15 or start.distance_m == far.distance_m
    if found.advice is Advice.HANG_HERE:
        assert chances.inside >= SURE_ENOUGH
        assert start.distance_m <= FAR_START_M
    elif found.advice is Advice.MEASURE:
        assert chances.inside < SURE_ENOUGH
    else:
        assert start.distance_m > FAR_START_M


@given(
    st.floats(1.05, 2.0),
    st.floats(0.5, 1.0),
    st.floats(1.0, 1.5),
    st.sampled_from(((3.0, 5.0), (1.0, 1.5), (0.5, 2.0))),
)
def test_no_other_start_that_is_allowed_is_likelier(
    factor: float, least: float, most: float, wanted: tuple[float, float]
) -> None:
    spreads: tuple[Spread, ...] = (Factor(factor), Between(least, most), TWO_CASES)
    whole = combine(
        Effect(Unknown(str(i), Known.UNKNOWN, spread, "memory")) for i, spread in enumerate(spreads)
    )
    allowed = (wanted[0] * wanted[1]) ** 0.5
    found = best_start_uvi(whole, allowed, *wanted)
    assert found <= allowed * (1.0 + 1e-9)
    most_inside = chances_of(whole, found, *wanted).inside
    for tried in np.geomspace(allowed / 4.0, allowed, 60):
        chances = chances_of(whole, float(tried), *wanted)
        if chances.above <= MOST_ABOVE - 1e-4:
            # A start is not moved for one in a hundred.
            assert chances.inside <= most_inside + 0.012


def test_chances_are_those_of_many_draws() -> None:
    whole = combine(
        [
            Effect(Unknown("lamp", Known.UNKNOWN, Factor(1.3), "memory")),
            Effect(Unknown("age", Known.UNKNOWN, Between(0.6, 1.1), "memory")),
        ]
    )
    rng = np.random.default_rng(11)
    drawn = rng.normal(0.0, log(1.3) / 1.6448536, 400_000)
    uvi = 4.0 * np.exp(drawn + rng.uniform(log(0.6), log(1.1), 400_000))
    found = chances_of(whole, 4.0, 3.0, 5.0)
    assert found.below == pytest.approx(float(np.mean(uvi < 3.0)), abs=0.01)
    assert found.above == pytest.approx(float(np.mean(uvi > 5.0)), abs=0.01)


def test_careful_readings_let_a_tube_hang() -> None:
    own = OwnConstant(1.8, Doubt("readings", 1.16, "uv_meter_judgement"))
    found = place(replace(CLASS, own=own), NoScreen(), 3.0, 5.0)
    assert found.advice is Advice.HANG_HERE
    assert found.chances is not None
    assert found.chances.inside > 0.95
    assert Reason.START_MOVED_BY_CHANCE not in found.reasons


def test_what_is_known_of_a_class_alone_wants_a_meter() -> None:
    found = place(of_length(CLASS, length_of_tube()), NoScreen(), 3.0, 5.0)
    assert found.verdict is Verdict.FITS
    assert found.advice is Advice.MEASURE


def test_wide_readings_move_the_start_away() -> None:
    own = OwnConstant(1.8, Doubt("readings", 1.6, "uv_meter_judgement"))
    found = place(replace(CLASS, own=own), NoScreen(), 3.0, 5.0)
    assert found.ends is not None
    assert Reason.START_MOVED_BY_CHANCE in found.reasons
    # One in ten lies above exp(1.2816 ln 1.6/1.645) times the best value, apart from the tape.
    expected = 5.0 / 1.6 ** (1.2816 / 1.645)
    assert found.ends[1].uvi.best == pytest.approx(expected, rel=0.02)


def test_a_tube_that_starts_far_away_has_weaker_ones_beside_it() -> None:
    strong = Lamp(14.0, Fixture.POLISHED)
    found = place(strong, NoScreen(), 0.8, 1.3)
    assert found.advice is Advice.WEAKER_TUBE
    others = weaker_tubes(strong, NoScreen(), 0.8, 1.3)
    assert others
    for one in others:
        placement = place(one, NoScreen(), 0.8, 1.3)
        assert placement.ends is not None
        start_m = placement.ends[1].distance_m
        assert start_m <= FAR_START_M
        assert uvi_at(one, start_m, NoScreen()) < uvi_at(strong, start_m, NoScreen())


def test_the_weakest_tube_has_no_weaker_one() -> None:
    assert weaker_tubes(Lamp(6.0, Fixture.PLAIN), NoScreen(), 0.1, 0.3) == ()
    assert weaker_tubes(Lamp(2.0, Fixture.PLAIN), NoScreen(), 3.0, 5.0) == ()


def test_weaker_tubes_are_as_long_as_the_one_they_replace() -> None:
    untold = of_length(Lamp(14.0, Fixture.POLISHED), length_of_tube())
    for one in weaker_tubes(untold, NoScreen(), 1.0, 1.6):
        assert len(one.may_be) == len(untold.may_be)


def test_a_tube_known_exactly_starts_where_it_may() -> None:
    assert best_start_uvi(combine([]), 4.0, 3.0, 5.0) == pytest.approx(4.0)
