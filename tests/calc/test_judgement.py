"""The one judgement: exact where the normal is known, and what must hold for any figures."""

from math import exp, inf, log
from statistics import NormalDist

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc import judgement
from calc.judgement import (
    LIKELY,
    SURE,
    Judged,
    Move,
    Verdict,
    as_read,
    judge_reading,
    judge_value,
    with_doubt,
)
from calc.quantities import Quantity, row_of
from calc.sources import bibliography
from calc.uncertainty import Estimate
from calc.validity import OutsideModelError

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


def test_verdicts_are_in_order_and_none_is_another() -> None:
    assert [verdict.value for verdict in Verdict] == list(range(-3, 5))
    wanting = {Verdict.FAR_TOO_LOW, Verdict.LOW, Verdict.HIGH, Verdict.DANGEROUS}
    assert {verdict for verdict in Verdict if verdict.wants_change} == wanting


def _chances(below: float, inside: float, above: float) -> Judged:
    whole = Estimate(4.0, 5.0, 6.0)
    return Judged(_AIR, whole, 3.0, 4.0, Verdict.CANNOT_TELL, below, inside, above, 1.0)


@pytest.mark.parametrize("order", [(0, 1, 2), (1, 2, 0), (2, 0, 1)])
def test_it_is_sure_from_nineteen_in_twenty_on_wherever_it_lies(order: tuple[int, ...]) -> None:
    at, just_not = (SURE, 1.0 - SURE, 0.0), (0.949, 0.051, 0.0)
    assert _chances(*(at[i] for i in order)).is_sure
    assert not _chances(*(just_not[i] for i in order)).is_sure


def test_a_uv_index_under_one_is_judged_like_every_other() -> None:
    """By hand: 0.5, nine in ten within a factor 2; what display and rounding cannot tell is in."""
    value, row = Estimate(0.25, 0.5, 1.0), row_of(Quantity.UVI)
    normal = NormalDist(log(0.5), log(2.0) / 1.645)
    over = judge_value(Quantity.UVI, value, 0.1, 0.4)
    highest = max(0.4 + row.step / 2.0, 0.4 * exp(row.slack))
    assert over.above == pytest.approx(1.0 - normal.cdf(log(highest)))
    assert over.off_by == pytest.approx(1.25)
    under = judge_value(Quantity.UVI, value, 0.8, 0.9)
    lowest = min(0.8 - row.step / 2.0, 0.8 / exp(row.slack))
    assert under.below == pytest.approx(normal.cdf(log(lowest)))
    assert under.off_by == pytest.approx(1.6)
    # A low end that rounding takes to nothing has nothing below it.
    assert judge_value(Quantity.UVI, value, row.step / 2.0, 0.9).below == 0.0


def test_it_is_surely_below_from_nineteen_in_twenty_on() -> None:
    assert _chances(0.95, 0.05, 0.0).is_surely_below
    assert not _chances(0.94, 0.06, 0.0).is_surely_below


def test_it_is_likely_above_where_that_is_likelier_than_not_or_a_danger() -> None:
    assert _chances(0.0, 0.49, 0.51).is_likely_above
    assert not _chances(0.0, 0.5, 0.5).is_likely_above
    cold = judge_value(_AIR, as_read(_AIR, 10.0), 25.0, 28.0, past_limit=True)
    assert cold.move is Move.UP
    assert not cold.is_likely_above
    # Past a limit inside of what is wanted: too much, for no wish is a reason to burn.
    for best in (25.0, 26.0, 40.0):
        hot = judge_value(_AIR, as_read(_AIR, best), 25.0, 28.0, past_limit=True)
        assert hot.move is Move.DOWN
        assert hot.is_likely_above


@pytest.mark.parametrize(
    ("best", "verdict", "move"),
    [
        (10.0, Verdict.FAR_TOO_LOW, Move.UP),
        (22.0, Verdict.LOW, Move.UP),
        (23.9, Verdict.PROBABLY_LOW, Move.UP),
        (24.5, Verdict.CANNOT_TELL, Move.STAY),
        (26.0, Verdict.FINE, Move.STAY),
        (28.5, Verdict.CANNOT_TELL, Move.STAY),
        (29.1, Verdict.PROBABLY_HIGH, Move.DOWN),
        (31.0, Verdict.HIGH, Move.DOWN),
        (60.0, Verdict.HIGH, Move.DOWN),
    ],
)
def test_a_probe_is_judged_by_hand(best: float, verdict: Verdict, move: Move) -> None:
    """By hand: 1.5 K are 1.645 deviations, and 0.28 K beside the range are inside it."""
    judged = judge_reading(_AIR, best, 25.0, 28.0)
    assert (judged.verdict, judged.move) == (verdict, move)
    assert judged.is_fine is (verdict is Verdict.FINE)


@pytest.mark.parametrize(
    ("best", "off_by"), [(20.0, 5.0), (25.0, 0.0), (26.0, 0.0), (28.0, 0.0), (31.5, 3.5)]
)
def test_how_far_off_a_temperature_is_is_a_difference(best: float, off_by: float) -> None:
    assert _air(best, 1.0).off_by == off_by


@pytest.mark.parametrize(
    ("best", "off_by"), [(0.0, inf), (1.5, 2.0), (3.0, 1.0), (4.0, 1.0), (5.0, 1.0), (20.0, 4.0)]
)
def test_how_far_off_a_uv_index_is_is_a_factor(best: float, off_by: float) -> None:
    uvi = Estimate(best / 1.15, best, best * 1.15)
    assert judge_value(Quantity.UVI, uvi, 3.0, 5.0).off_by == off_by


def test_no_uv_at_all_is_far_too_little_and_any_is_too_much_where_none_is_wanted() -> None:
    none = judge_value(Quantity.UVI, Estimate(0.0, 0.0, 0.0), 3.0, 5.0)
    assert none.verdict is Verdict.FAR_TOO_LOW
    assert (none.below, none.inside, none.above) == (1.0, 0.0, 0.0)
    some = judge_value(Quantity.UVI, Estimate(0.9, 1.0, 1.1), 0.0, 0.0)
    assert some.verdict is Verdict.HIGH
    assert some.off_by == inf
    dark = judge_value(Quantity.UVI, Estimate(0.0, 0.0, 0.0), 0.0, 0.0)
    assert dark.verdict is Verdict.FINE
    assert dark.off_by == 1.0


def test_a_small_range_of_uv_is_as_wide_as_a_display_shows() -> None:
    for best, fine in ((0.46, True), (0.43, False), (1.04, True), (1.06, False)):
        uvi = Estimate(best / 1.001, best, best * 1.001)
        assert judge_value(Quantity.UVI, uvi, 0.5, 1.0).is_fine is fine, best


def test_a_large_range_of_uv_is_as_wide_as_a_reading_repeats() -> None:
    for best, fine in ((5.72, True), (5.7, False), (8.39, True), (8.42, False)):
        uvi = Estimate(best / 1.001, best, best * 1.001)
        assert judge_value(Quantity.UVI, uvi, 6.0, 8.0).is_fine is fine, best


def test_the_doubt_of_each_side_is_its_own() -> None:
    lopsided = judge_value(_AIR, Estimate(22.0, 26.0, 26.5), 25.0, 28.0)
    # 1.28 K below the best value at 1.645 deviations in 4 K: 0.526 deviations (any table).
    assert lopsided.below == pytest.approx(0.299, abs=1e-3)
    assert lopsided.above < 1e-6


def test_a_figure_that_may_be_no_uv_at_all_is_judged_by_its_best_value_below() -> None:
    judged = judge_value(Quantity.UVI, Estimate(0.0, 4.0, 6.0), 3.0, 5.0)
    assert judged.below == 0.0
    assert judged.verdict is Verdict.FINE


def test_what_no_instrument_shows_is_refused_and_ends_in_disorder_too() -> None:
    with pytest.raises(OutsideModelError):
        as_read(_AIR, 81.0)
    with pytest.raises(OutsideModelError):
        as_read(_AIR, -20.5)
    assert with_doubt(_AIR, 90.0) == Estimate(88.5, 90.0, 91.5)
    uvi = with_doubt(Quantity.UVI, 4.6)
    assert (uvi.low, uvi.high) == pytest.approx((4.0, 5.29))
    with pytest.raises(ValueError, match="28"):
        _air(26.0, 1.0, 28.0, 25.0)


@pytest.mark.parametrize("quantity", [Quantity.UVI, Quantity.COOL_AIR, Quantity.BASKING_SURFACE])
def test_by_a_range_from_memory_nothing_is_surely_low_or_high(quantity: Quantity) -> None:
    low, high = (2.0, 3.0) if quantity is Quantity.UVI else (25.0, 28.0)
    for best in (0.1, 1.0, 2.5, 6.0, 20.0, 24.0, 26.0, 31.0, 60.0):
        value = Estimate(best * 0.9, best, best * 1.1)
        sure = judge_value(quantity, value, low, high)
        unchecked = judge_value(quantity, value, low, high, unchecked=True)
        assert unchecked.move is sure.move
        assert not unchecked.verdict.wants_change
        dangerous = judge_value(quantity, value, low, high, unchecked=True, past_limit=True)
        assert dangerous.verdict is Verdict.DANGEROUS


@pytest.mark.parametrize(
    ("above", "verdict"),
    [
        (0.95, Verdict.HIGH),
        (0.9499, Verdict.PROBABLY_HIGH),
        (0.7, Verdict.PROBABLY_HIGH),
        (0.6999, Verdict.CANNOT_TELL),
    ],
)
def test_a_chance_that_is_just_enough_is_enough(above: float, verdict: Verdict) -> None:
    low = {Verdict.HIGH: Verdict.LOW, Verdict.PROBABLY_HIGH: Verdict.PROBABLY_LOW}
    chances = (above, 1.0 - above, 0.0)
    assert judgement._verdict(5.0, (3.0, 4.0), chances[::-1], far=False) is verdict
    assert judgement._verdict(2.0, (3.0, 4.0), chances, far=False) is low.get(verdict, verdict)


@pytest.mark.parametrize(
    ("inside", "verdict"), [(0.25, Verdict.FINE), (0.2499, Verdict.CANNOT_TELL)]
)
def test_an_end_of_the_range_is_inside(inside: float, verdict: Verdict) -> None:
    for best in (3.0, 4.0):
        assert judgement._verdict(best, (3.0, 4.0), (0.0, inside, 0.4), far=False) is verdict
