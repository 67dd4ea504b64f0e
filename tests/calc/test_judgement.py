"""The one judgement: exact where the normal is known, and what must hold for any figures."""

from math import exp, inf, log

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.judgement import LIKELY, SURE, Judged, Move, Verdict, as_read, judge_value
from calc.quantities import Quantity, row_of
from calc.sources import bibliography
from calc.uncertainty import Estimate

# Deviations of the standard normal: 0.95 lies below 1.6449, 0.70 below 0.5244 (any table).
_AT_95, _AT_70 = 1.6449, 0.5244
_AIR = Quantity.COOL_AIR


def _air(best: float, half: float, low: float = 25.0, high: float = 28.0) -> Judged:
    return judge_value(_AIR, Estimate(best - half, best, best + half), low, high)


@pytest.mark.parametrize(("deviations", "chance"), [(_AT_95, 0.95), (_AT_70, 0.70), (0.0, 0.5)])
def test_a_chance_is_that_of_the_normal_table(deviations: float, chance: float) -> None:
    end = 25.0 - row_of(_AIR).step / 2.0
    judged = _air(end - deviations, 1.645)
    assert judged.below == pytest.approx(chance, abs=5e-5)


def test_a_surface_is_low_only_where_that_is_nearly_sure() -> None:
    end = 25.0 - row_of(_AIR).step / 2.0
    assert _air(end - _AT_95 - 0.01, 1.645).verdict is Verdict.LOW
    assert _air(end - _AT_95 + 0.01, 1.645).verdict is Verdict.PROBABLY_LOW
    assert _air(end - _AT_70 + 0.01, 1.645).verdict is Verdict.CANNOT_TELL
    assert _air(end, 1.645).verdict is Verdict.FINE
    assert _air(10.0, 1.645).verdict is Verdict.FAR_TOO_LOW


def test_two_degrees_fahrenheit_below_the_cool_end_are_no_fault_by_themselves() -> None:
    judged = judge_value(_AIR, as_read(_AIR, 25.0 - 2 * 5 / 9), 25.0, 27.8)
    assert judged.verdict is Verdict.PROBABLY_LOW
    assert not judged.verdict.wants_change


@pytest.mark.parametrize("end", [3.0, 5.0])
@pytest.mark.parametrize("off", [-0.045, 0.0, 0.045])
def test_an_end_of_an_advised_range_is_fine_though_it_was_rounded(end: float, off: float) -> None:
    best = end * exp(off)
    judged = judge_value(Quantity.UVI, Estimate(best / 1.6, best, best * 1.5), 3.0, 5.0)
    assert judged.verdict is Verdict.FINE


def test_a_doubt_wider_than_the_range_says_nothing() -> None:
    judged = judge_value(Quantity.UVI, Estimate(0.4, 4.0, 40.0), 3.8, 4.2)
    assert judged.verdict is Verdict.CANNOT_TELL
    assert judged.move is Move.STAY


def test_what_is_past_a_limit_is_dangerous_whatever_the_range() -> None:
    judged = judge_value(_AIR, as_read(_AIR, 26.0), 25.0, 28.0, past_limit=True)
    assert judged.verdict is Verdict.DANGEROUS
    assert judged.move is Move.DOWN


def test_a_range_may_be_open() -> None:
    night = judge_value(Quantity.NIGHT_AIR, as_read(Quantity.NIGHT_AIR, 20.0), 15.6, inf)
    assert night.verdict is Verdict.FINE
    assert night.above == 0.0


_TEMPS = st.floats(-5.0, 60.0)
_HALF = st.floats(0.1, 6.0)


@given(best=_TEMPS, half=_HALF, low=_TEMPS, width=st.floats(0.0, 15.0))
def test_the_three_chances_are_one(best: float, half: float, low: float, width: float) -> None:
    judged = _air(best, half, low, low + width)
    assert judged.below + judged.inside + judged.above == pytest.approx(1.0, abs=1e-9)
    assert min(judged.below, judged.inside, judged.above) >= 0.0


@given(best=_TEMPS, half=_HALF, more=st.floats(0.0, 20.0), low=_TEMPS, width=st.floats(0.0, 15.0))
def test_a_warmer_figure_is_never_judged_lower(
    best: float, half: float, more: float, low: float, width: float
) -> None:
    cooler, warmer = _air(best, half, low, low + width), _air(best + more, half, low, low + width)
    assert warmer.below <= cooler.below + 1e-12
    assert warmer.above >= cooler.above - 1e-12


@given(best=_TEMPS, half=_HALF, less=st.floats(0.05, 1.0), low=_TEMPS, width=st.floats(0.6, 15.0))
def test_less_doubt_never_turns_a_verdict_round(
    best: float, half: float, less: float, low: float, width: float
) -> None:
    wide, narrow = _air(best, half, low, low + width), _air(best, half * less, low, low + width)
    assert wide.move is Move.STAY or wide.move is narrow.move


@given(uvi=st.floats(0.1, 20.0), factor=st.floats(1.05, 3.0), low=st.floats(0.5, 8.0))
def test_the_uv_index_is_judged_by_factors(uvi: float, factor: float, low: float) -> None:
    judged = judge_value(Quantity.UVI, Estimate(uvi / factor, uvi, uvi * factor), low, 2.0 * low)
    below = log(uvi / low) <= 1e-9 - row_of(Quantity.UVI).far
    if judged.verdict is Verdict.FAR_TOO_LOW:
        assert below
    assert (judged.below >= SURE) == (judged.verdict in (Verdict.LOW, Verdict.FAR_TOO_LOW))
    if judged.verdict is Verdict.PROBABLY_LOW:
        assert LIKELY <= judged.below < SURE


@given(reading=st.floats(0.1, 50.0))
def test_a_reading_lies_within_its_own_doubt(reading: float) -> None:
    for quantity in Quantity:
        row = row_of(quantity)
        if row.lowest <= reading <= row.highest:
            read = as_read(quantity, reading)
            assert read.low < reading < read.high


def test_every_quantity_has_a_row_with_a_known_source() -> None:
    for quantity in Quantity:
        row = row_of(quantity)
        assert row.source in bibliography()
        assert row.lowest < row.highest
        assert row.step > 0.0
        assert row.doubt > 0.0
    assert not row_of(Quantity.HUMIDITY).is_judged
