"""How long a tube is, and that an unknown length never leads too near: rules and properties."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.animals import animals
from calc.shape.line import line_shape
from calc.unknowns import Known
from calc.uv.distances import uvi_by_length
from calc.uv.lamp import Fixture, Lamp, as_long_as, lamp_constant, of_length, other_lengths, uvi_at
from calc.uv.lamp_unknowns import Cause, unknowns_of, uvi_estimate
from calc.uv.lengths import LengthKnown, length_for_box, length_of_tube, tube_of_watts
from calc.uv.meter import Reading, fit_readings
from calc.uv.placement import Reason, Verdict, check_place, place
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave
from calc.uv.tube import STANDARD_T5_HO
from calc.validity import OutsideModelError
from tests.calc.uv.test_common_practice import INCH_M, ROWS, name_of, screen_of
from tests.some import some

SCREENS: tuple[Screen, ...] = (
    NoScreen(),
    FlatScreen(0.7),
    FlatScreen(0.55),
    FlatScreen(0.3),
    Weave(18 / 0.0254, 16 / 0.0254, 0.011 * 0.0254),
)
WISHES = sorted({(a.uvi.low, a.uvi.high) for a in animals().values() if a.uvi})
BOXES = (None, 0.5, 0.61, 0.914, 1.22, 1.83)
STRENGTHS = (2.0, 6.0, 12.0, 14.0)
wishes = st.one_of(
    st.sampled_from(WISHES),
    st.tuples(st.floats(0.2, 8.0), st.floats(1.0, 2.5)).map(lambda w: (w[0], w[0] * w[1])),
)


def unknown(strength: float, fixture: Fixture, box_m: float | None = None) -> Lamp:
    return of_length(Lamp(strength, fixture), length_of_tube(box_m=box_m))


# Published as common practice, no source; the figures are those of the rows themselves.
@pytest.mark.parametrize(
    ("lit_m", "constant", "scatter"), [(0.4, 2.04, 0.096), (0.52, 1.78, 0.097), (0.8, 1.53, 0.124)]
)
def test_the_twelve_ends_of_the_rows_cannot_tell_the_length(
    lit_m: float, constant: float, scatter: float
) -> None:
    found = [
        uvi
        / (row["strength"] / 12.0 * Fixture[row["fixture"]].value * row["passes"])
        / line_shape(row[end] * INCH_M, lit_m)
        for row in ROWS
        for end, uvi in (("near_in", 5.0), ("far_in", 3.0))
    ]
    logs = np.log(found)
    assert np.exp(logs.mean()) == pytest.approx(constant, abs=0.005)
    assert logs.std(ddof=1) == pytest.approx(scatter, abs=0.0006)


@pytest.mark.parametrize("row", ROWS, ids=name_of)
def test_the_range_of_an_unknown_length_is_the_rows_own(row: dict[str, float]) -> None:
    lamp = unknown(row["strength"], Fixture[str(row["fixture"])])
    ends = place(lamp, screen_of(row), 3.0, 5.0).ends
    assert ends is not None
    near, start, far = (spot.distance_m / INCH_M for spot in ends)
    assert near == pytest.approx(row["near_in"], abs=2.0)
    assert far == pytest.approx(row["far_in"], abs=2.0)
    typical = place(Lamp(row["strength"], Fixture[str(row["fixture"])]), screen_of(row), 3.0, 5.0)
    assert typical.start is not None
    assert start >= typical.start.distance_m / INCH_M - 1e-9


def test_told_comes_before_watts_before_the_box_before_nothing() -> None:
    assert length_of_tube(0.4, 39.0, 0.61).known is LengthKnown.TOLD
    assert length_of_tube(None, 39.0, 0.61).known is LengthKnown.FROM_WATTS
    assert length_of_tube(None, None, 0.61).known is LengthKnown.FROM_BOX
    assert length_of_tube(None, None, 1.22).known is LengthKnown.UNKNOWN
    assert length_of_tube().known is LengthKnown.UNKNOWN


def test_only_what_is_not_known_may_be_another() -> None:
    assert length_of_tube(0.4).others_m == length_of_tube(power_w=54.0).others_m == ()
    assert length_of_tube(box_m=0.61).others_m == length_of_tube(box_m=0.4).others_m == ()
    lit = tuple(tube.lit_length_m for tube in STANDARD_T5_HO)
    assert length_of_tube().others_m == lit[1:]
    assert length_of_tube(box_m=1.2192).others_m == lit[1:3]
    assert length_of_tube(box_m=1.149).longest_m == lit[2]
    assert length_for_box(lit[1], 1.2192).others_m == (lit[0], lit[2])


def test_watts_tell_one_standard_tube_and_others_none() -> None:
    for tube in STANDARD_T5_HO:
        assert tube_of_watts(tube.power_w) is tube
        assert length_of_tube(power_w=tube.power_w).lit_m == tube.lit_length_m
    assert tube_of_watts(28.0) is None
    with pytest.raises(OutsideModelError):
        length_of_tube(power_w=28.0)


@settings(max_examples=some(300), deadline=None)
@given(
    st.one_of(st.sampled_from(STRENGTHS), st.floats(1.0, 20.0)),
    st.sampled_from(list(Fixture)),
    st.sampled_from(SCREENS),
    wishes,
    st.sampled_from(BOXES),
)
def test_no_start_is_too_strong_for_any_tube_that_fits(
    strength: float,
    fixture: Fixture,
    screen: Screen,
    wish: tuple[float, float],
    box_m: float | None,
) -> None:
    found = place(unknown(strength, fixture, box_m), screen, *wish)
    if found.ends is None:
        return
    near, start, far = (spot.distance_m for spot in found.ends)
    # To the last digit: a wish may be one figure alone.
    assert near <= start * (1.0 + 1e-12) <= far * (1.0 + 2e-12)
    for tube in STANDARD_T5_HO:
        if box_m is None or tube.face_to_face_m <= box_m:
            there = uvi_at(Lamp(strength, fixture, tube.lit_length_m), start, screen)
            assert there <= wish[1] * (1.0 + 1e-4)


@settings(max_examples=some(60), deadline=None)
@given(
    st.lists(
        st.tuples(st.floats(0.2, 0.6), st.floats(0.9, 1.1)), min_size=1, max_size=3, unique=True
    ),
    st.floats(0.5, 2.0),
    st.sampled_from(WISHES),
)
def test_no_start_by_readings_is_too_strong_for_any_length(
    places: list[tuple[float, float]], strong: float, wish: tuple[float, float]
) -> None:
    named = unknown(12.0, Fixture.POLISHED)
    read = [
        Reading(d, slip * strong * uvi_at(named, d, NoScreen()), NoScreen()) for d, slip in places
    ]
    others = [Lamp(12.0, Fixture.POLISHED, tube.lit_length_m) for tube in STANDARD_T5_HO]
    fitted = [
        Lamp(12.0, Fixture.POLISHED, o.lit_length_m, own=fit_readings(read, o).own) for o in others
    ]
    lamp = Lamp(
        12.0,
        Fixture.POLISHED,
        length_known=LengthKnown.UNKNOWN,
        own=fitted[0].own,
        may_be=tuple(fitted[1:]),
    )
    found = place(lamp, NoScreen(), *wish)
    if found.ends is None:
        return
    start = found.ends[1].distance_m
    assert all(uvi_at(one, start, NoScreen()) <= wish[1] * (1.0 + 1e-4) for one in fitted)


def test_a_known_length_starts_in_the_middle() -> None:
    for tube in STANDARD_T5_HO:
        lamp = of_length(Lamp(12.0, Fixture.POLISHED), length_of_tube(power_w=tube.power_w))
        found = place(lamp, NoScreen(), 3.0, 5.0)
        assert Reason.START_HELD_FOR_LENGTH not in found.reasons
        assert found.start is not None
        assert found.start.uvi.best == pytest.approx(found.target_uvi, rel=1e-4)


def test_a_length_that_is_not_known_is_a_doubt_of_its_own() -> None:
    lamp = unknown(12.0, Fixture.POLISHED)
    found = uvi_estimate(lamp, 0.4, NoScreen())
    by_length = uvi_by_length(lamp, 0.4, NoScreen())
    longest = Lamp(12.0, Fixture.POLISHED, STANDARD_T5_HO[-1].lit_length_m)
    assert by_length.low == by_length.best == uvi_at(lamp, 0.4, NoScreen())
    assert by_length.high == uvi_at(longest, 0.4, NoScreen())
    told = uvi_estimate(of_length(lamp, length_of_tube(lamp.lit_length_m)), 0.4, NoScreen())
    assert told.best == found.best
    assert told.high < found.high
    whole, known = (unknowns_of(one, 0.4, NoScreen()) for one in (lamp, longest))
    (length,) = [e.unknown for e in whole.effects if e.unknown.name == Cause.LENGTH]
    assert length.known is Known.UNKNOWN
    assert length.spread.ends == pytest.approx((1.0, by_length.high / by_length.best))
    assert Cause.LENGTH not in {effect.unknown.name for effect in known.effects}


def test_a_place_that_is_right_for_a_short_tube_may_be_too_strong_for_a_long_one() -> None:
    there = check_place(unknown(12.0, Fixture.POLISHED), NoScreen(), 0.41, 3.0, 5.0)
    assert there.judged.is_fine
    assert there.may_be_above
    assert there.move_to_start_m is not None
    assert there.move_to_start_m > 0.0
    short = check_place(unknown(12.0, Fixture.POLISHED, 0.61), NoScreen(), 0.41, 3.0, 5.0)
    assert not short.may_be_above


def test_a_tube_that_may_be_too_strong_at_every_distance_is_not_placed() -> None:
    lamp = unknown(20.0, Fixture.POLISHED)
    at_limit = uvi_at(other_lengths(lamp)[-1], 1.5, NoScreen())
    assert place(lamp, NoScreen(), 0.2, 0.99 * at_limit).verdict is Verdict.OUT_OF_RANGE


def test_a_lamp_as_long_as_another_may_be_as_long_as_that_one() -> None:
    like = unknown(6.0, Fixture.PLAIN, 1.22)
    lamp = as_long_as(Lamp(12.0, Fixture.POLISHED), like)
    assert [o.lit_length_m for o in lamp.may_be] == [o.lit_length_m for o in like.may_be]
    assert lamp.length_known is LengthKnown.UNKNOWN
    assert all(lamp_constant(o) == lamp_constant(lamp) for o in lamp.may_be)
