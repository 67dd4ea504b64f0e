"""How what is not known combines: what cancels, what narrows, and what a range means."""

from math import exp, inf, log, sqrt

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.uncertainty import Doubt, Estimate, combined_factor
from calc.uncertainty import spread as widened
from calc.unknowns import (
    NINE_IN_TEN,
    Between,
    Cases,
    Effect,
    Factor,
    Known,
    Spread,
    Unknown,
    combine,
)

# Deviations of the standard normal: 0.95 lies below 1.6449 (any table).
_AT_95 = 1.6449

_factors = st.floats(1.0, 3.0)
_ends = st.tuples(st.floats(0.2, 3.0), st.floats(0.2, 3.0)).map(sorted)
_spreads = st.one_of(
    _factors.map(Factor),
    _ends.map(lambda ends: Between(*ends)),
    st.lists(st.tuples(st.floats(0.3, 3.0), st.floats(0.05, 1.0)), min_size=1, max_size=5).map(
        lambda cases: Cases(tuple(cases))
    ),
)
_powers = st.sampled_from((-1.0, -0.5, 0.5, 1.0, 2.0))
_many = st.lists(st.tuples(_spreads, _powers), min_size=1, max_size=6)
_chances = st.floats(0.02, 0.98)


def effects_of(many: list[tuple[Spread, float]]) -> list[Effect]:
    return [
        Effect(Unknown(f"thing {i}", Known.UNKNOWN, spread, "memory"), power)
        for i, (spread, power) in enumerate(many)
    ]


def test_nothing_unknown_is_exact() -> None:
    whole = combine([])
    assert whole.around(4.0).low == whole.around(4.0).high == 4.0
    assert whole.chance_below(0.999) == whole.chance_below(1.0) == 0.0
    assert whole.chance_below(1.001) == 1.0
    assert whole.chance_below(0.0) == 0.0


def test_one_factor_is_its_own_range() -> None:
    found = combine(effects_of([(Factor(1.3), 1.0)])).around(2.0)
    assert found.low == pytest.approx(2.0 / 1.3)
    assert found.high == pytest.approx(2.6)


def test_factors_combine_by_their_squares() -> None:
    whole = combine(effects_of([(Factor(1.3), 1.0), (Factor(1.2), -1.0)]))
    assert log(whole.at(0.95)) == pytest.approx(sqrt(log(1.3) ** 2 + log(1.2) ** 2))


def test_between_has_the_moments_of_an_even_spread() -> None:
    mean, variance, third = Between(exp(-0.5), exp(0.1)).moments
    assert mean == pytest.approx(-0.2)
    assert variance == pytest.approx(0.6**2 / 12.0)
    assert third == 0.0


def test_cases_have_the_moments_of_their_weights() -> None:
    mean, variance, third = Cases(((1.0, 3.0), (exp(1.0), 1.0))).moments
    assert mean == pytest.approx(0.25)
    assert variance == pytest.approx(0.25 * 0.75)
    assert third == pytest.approx(0.25 * 0.75 * 0.5)
    # By hand, logarithms 0 and 2: mean 0.5, squares 1 - 0.25, cubes 2 - 3 · 0.5 + 2 · 0.125.
    assert Cases(((1.0, 3.0), (exp(2.0), 1.0))).moments == pytest.approx((0.5, 0.75, 0.75))


@given(_spreads, _powers)
def test_a_thing_with_and_against_a_figure_cancels(spread: Spread, power: float) -> None:
    thing = Unknown("screen", Known.TOLD, spread, "memory", about="the same mesh")
    whole = combine([Effect(thing, power), Effect(thing, -power)])
    assert whole.effects == ()
    assert whole.variance == whole.mean == 0.0


def test_two_things_of_one_name_do_not_cancel() -> None:
    one, other = (Unknown("screen", Known.TOLD, Factor(1.15), "memory", about=i) for i in range(2))
    assert combine([Effect(one), Effect(other, -1.0)]).at(0.95) == pytest.approx(
        exp(log(1.15) * sqrt(2.0))
    )


def test_the_same_thing_twice_is_no_two_things() -> None:
    thing = Unknown("lamp", Known.UNKNOWN, Factor(1.3), "memory")
    assert combine([Effect(thing), Effect(thing)]).at(0.95) == pytest.approx(1.3**2)


@given(_many)
def test_doubt_taken_from_one_thing_never_widens_a_range(
    many: list[tuple[Spread, float]],
) -> None:
    """Each thing becomes known at its own middle: its doubt goes, its value does not move."""
    whole = combine(effects_of(many))
    for i, (spread, power) in enumerate(many):
        known = Cases(((exp(spread.moments[0]), 1.0),))
        less = combine(effects_of([*many[:i], (known, power), *many[i + 1 :]]))
        assert less.mean == pytest.approx(whole.mean, abs=1e-9)
        assert less.deviation <= whole.deviation + 1e-12
        assert log(less.at(0.95) / less.at(0.05)) <= log(whole.at(0.95) / whole.at(0.05)) + 1e-9


@given(_many, _chances)
def test_a_chance_and_its_factor_belong_together(
    many: list[tuple[Spread, float]], chance: float
) -> None:
    whole = combine(effects_of(many))
    if whole.deviation < 1e-6:
        return
    # 1.645 for one in twenty is a rounded figure.
    assert whole.chance_below(whole.at(chance)) == pytest.approx(chance, abs=5e-5)


@given(_many)
def test_a_range_leaves_one_in_twenty_to_each_side(many: list[tuple[Spread, float]]) -> None:
    whole = combine(effects_of(many))
    if whole.deviation < 1e-6:
        return
    assert whole.chance_below(whole.at(0.05)) == pytest.approx(0.05, abs=5e-5)
    assert whole.chance_below(whole.at(0.95)) == pytest.approx(0.95, abs=5e-5)
    assert log(whole.at(0.95) / whole.at(0.05)) == pytest.approx(
        2.0 * NINE_IN_TEN * whole.deviation
    )


def test_a_best_value_outside_its_range_ends_it() -> None:
    found = combine(effects_of([(Between(0.4, 0.6), 1.0)])).around(3.0)
    assert found.high == found.best == 3.0
    assert found.low < 1.8


def test_the_ends_of_an_effect_turn_with_its_power() -> None:
    old = Unknown("age", Known.TOLD, Between(0.5, 0.8), "memory")
    assert Effect(old).ends == (0.5, 0.8)
    assert Effect(old, -1.0).ends == pytest.approx((1.25, 2.0))


@pytest.mark.parametrize(
    "made",
    [
        lambda: Factor(0.9),
        lambda: Factor(float("nan")),
        lambda: Between(0.8, 0.5),
        lambda: Between(0.0, 0.5),
        lambda: Cases(()),
        lambda: Cases(((1.0, 0.0),)),
        lambda: Cases(((1.0, 1.0), (0.5, 0.0))),
        lambda: Cases(((0.0, 1.0),)),
        lambda: Cases(((-inf, 1.0),)),
    ],
)
def test_what_is_no_spread_is_refused(made: object) -> None:
    with pytest.raises(ValueError, match=r"doubt is a factor|factors"):
        made()  # type: ignore[operator]


def test_a_whole_names_its_sources_once_and_a_wide_skew_is_held() -> None:
    of = [Unknown(f"thing {i}", Known.TOLD, Factor(1.2), key) for i, key in enumerate("aba")]
    assert combine([Effect(one) for one in of]).sources == ("a", "b")
    # Two far cases, one of them rare: the skew is far over 1 and counts as 1, either way.
    for power, bend in ((1.0, 1.0), (-1.0, -1.0)):
        rare = combine(effects_of([(Cases(((1.0, 50.0), (9.0, 1.0))), power)]))
        assert abs(rare.third) / rare.deviation**3 > 1.0
        shift = rare.deviation * (NINE_IN_TEN + (NINE_IN_TEN**2 - 1.0) * bend / 6.0)
        assert log(rare.at(0.95)) == pytest.approx(rare.mean + shift)


def test_a_chance_between_the_ends_is_that_of_the_normal_table() -> None:
    whole = combine(effects_of([(Factor(1.3), 1.0)]))
    for chance, deviate in ((0.5, 0.0), (0.8413447, 1.0), (0.1586553, -1.0), (0.9772499, 2.0)):
        assert log(whole.at(chance)) == pytest.approx(whole.deviation * deviate, abs=1e-6)
        assert whole.chance_below(exp(whole.deviation * deviate)) == pytest.approx(chance)
    assert whole.chance_below(-1.0) == 0.0


def test_powers_of_one_thing_add_up_and_others_stay() -> None:
    thing = Unknown("tape", Known.TOLD, Between(0.9, 1.3), "memory")
    other = Unknown("lamp", Known.TOLD, Factor(1.2), "memory")
    whole = combine([Effect(thing, 2.0), Effect(other), Effect(thing, -0.5)])
    assert [(e.unknown, e.power) for e in whole.effects] == [(thing, 1.5), (other, 1.0)]
    mean, variance, _ = thing.spread.moments
    assert whole.mean == pytest.approx(1.5 * mean)
    assert whole.variance == pytest.approx(2.25 * variance + other.spread.moments[1])
    skewed = Cases(((1.0, 3.0), (exp(1.0), 1.0)))
    twice = combine(effects_of([(skewed, 2.0)]))
    assert twice.third == pytest.approx(8.0 * skewed.moments[2])


def test_the_ends_of_every_spread() -> None:
    assert Factor(1.25).ends == (0.8, 1.25)
    assert Factor(1.0).moments == (0.0, 0.0, 0.0)
    assert Factor(1.25).moments[1] == pytest.approx((log(1.25) / 1.645) ** 2)
    assert Between(0.7, 0.7).moments[1] == 0.0
    assert Between(0.5, 0.8).ends == (0.5, 0.8)
    assert Cases(((2.0, 1.0), (0.5, 3.0), (1.0, 1.0))).ends == (0.5, 2.0)


def test_an_estimate_is_in_order_and_a_doubt_is_a_factor() -> None:
    assert Estimate.exact(3.0) == Estimate(3.0, 3.0, 3.0)
    for low, best, high in ((2.0, 1.0, 3.0), (1.0, 4.0, 3.0), (float("nan"), 1.0, 2.0)):
        with pytest.raises(ValueError, match="not in order"):
            Estimate(low, best, high)
    with pytest.raises(ValueError, match="a factor of 1 or more"):
        Doubt("lamp", 0.99, "memory")
    assert Doubt("lamp", 1.0, "memory").factor == 1.0
    doubts = [Doubt("lamp", 1.3, "memory"), Doubt("tape", 1.1, "memory")]
    factor = exp(sqrt(log(1.3) ** 2 + log(1.1) ** 2))
    assert combined_factor(doubts) == pytest.approx(factor)
    assert widened(2.0, doubts) == Estimate(2.0 / factor, 2.0, 2.0 * factor)


def test_a_slight_skew_bends_a_quantile_as_cornish_and_fisher_did() -> None:
    # Cornish and Fisher 1938, first term: z + (z² - 1) g/6, with g the skewness of the cases,
    # here by numpy's own mean, not by our moments.
    factors, weights = np.log([1.0, 1.2, 1.5]), np.array([0.5, 0.3, 0.2])
    mean = np.average(factors, weights=weights)
    off = factors - mean
    sigma = np.sqrt(np.average(off**2, weights=weights))
    skew = np.average((off / sigma) ** 3, weights=weights)
    assert 0.1 < skew < 0.8
    whole = combine(effects_of([(Cases(((1.0, 0.5), (1.2, 0.3), (1.5, 0.2))), 1.0)]))
    for z, chance in ((-_AT_95, 0.05), (0.0, 0.5), (_AT_95, 0.95)):
        expected = mean + sigma * (z + (z * z - 1.0) * skew / 6.0)
        assert log(whole.at(chance)) == pytest.approx(float(expected), abs=1e-4)
