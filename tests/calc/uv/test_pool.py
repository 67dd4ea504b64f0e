"""Pooling of readings: bounds that hold whatever is read, and what a group's figure may not do."""

from dataclasses import replace
from math import exp, log
from random import Random

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.animals import animals
from calc.judgement import Verdict as Judgement
from calc.limits import limits_of
from calc.unknowns import NINE_IN_TEN
from calc.uv.choice import suits
from calc.uv.distances import distance_for
from calc.uv.group_class import GroupClass, group_class
from calc.uv.lamp import Fixture, Lamp, OwnConstant, lamp_constant, of_group, of_length, uvi_at
from calc.uv.lamp_unknowns import uvi_estimate
from calc.uv.lengths import length_of_tube
from calc.uv.placement import check_place, place
from calc.uv.pool import Lean, Prior, Value, Values, lean, partly_pooled, prior_of_class
from calc.uv.pool_read import PoolRead, by_class, faded, far_reads
from calc.uv.screen import FlatScreen, NoScreen

TUBE = Lamp(12.0, Fixture.POLISHED, 0.814)
DAY = 740_000
shifts = st.floats(-1.5, 1.5)


def group(shift: float, spread: float = 0.03) -> GroupClass:
    return group_class(shift, 0.002, spread, 9, DAY)


def read(
    keeper: int, off: float, day: float = 0.0, box: int | None = None, lamp: Lamp = TUBE
) -> PoolRead:
    """Return a reading that is so far off what is expected [ln 1]."""
    uvi = uvi_at(lamp, 0.35, NoScreen()) * exp(off)
    return PoolRead(keeper, box, day, lamp, NoScreen(), 0.35, uvi)


@given(shifts, st.floats(1.0, 4.0), st.floats(1.2, 3.0))
def test_no_tube_hangs_nearer_than_its_class_gives_the_upper_end(
    shift: float, low: float, wide: float
) -> None:
    high = low * wide
    ours = distance_for(TUBE, NoScreen(), high)
    ends = place(of_group(TUBE, group(shift)), NoScreen(), low, high).ends
    if ends is not None:
        assert min(spot.distance_m for spot in ends) >= ours - 1e-9


@given(shifts, st.floats(0.0, 0.2))
def test_the_high_end_is_never_less_than_our_own_figure(shift: float, spread: float) -> None:
    found = group(shift, spread)
    estimate = uvi_estimate(of_group(replace(TUBE, age_s=9e6), found), 0.4, NoScreen())
    assert found.factor * found.spread >= 1.0 - 1e-9
    assert estimate.low <= estimate.best <= estimate.high


def test_what_passes_a_limit_by_its_class_is_dangerous_whatever_a_group_read() -> None:
    gecko = limits_of(animals()["crested-gecko"])
    weak = of_group(TUBE, group(-1.2))
    by_class = check_place(TUBE, NoScreen(), 0.2, 0.5, 1.0, gecko)
    by_group = check_place(weak, NoScreen(), 0.2, 0.5, 1.0, gecko)
    assert by_class.judged.verdict is by_group.judged.verdict is Judgement.DANGEROUS
    assert by_group.feared == by_class.here.uvi


def test_a_tube_that_is_too_strong_by_its_class_is_not_advised_by_a_group() -> None:
    groups = {(s, f): group(-0.8) for s in (10.0, 12.0, 14.0) for f in Fixture}
    length = length_of_tube(0.814)
    alone = suits(0.3, NoScreen(), 3.0, 5.0, length)
    found = suits(0.3, NoScreen(), 3.0, 5.0, length, groups=groups)
    strong = [
        now.judged.is_likely_above
        for now, before in zip(found, alone, strict=True)
        if before.judged.is_likely_above
    ]
    assert strong
    assert all(strong)


def test_a_keepers_own_reading_outranks_the_group_at_every_length() -> None:
    from calc.uncertainty import Doubt

    own = OwnConstant(1.1, Doubt("readings", 1.2, "uv_meter_judgement"))
    unknown = of_group(of_length(TUBE, length_of_tube()), group(-0.4))
    assert all(other.group == group(-0.4) for other in unknown.may_be)
    assert lamp_constant(replace(unknown, own=own)) == 1.1
    mine = replace(TUBE, own=own)
    assert uvi_estimate(of_group(mine, group(-0.4)), 0.3, NoScreen()) == uvi_estimate(
        mine, 0.3, NoScreen()
    )


@given(st.lists(st.floats(-0.5, 0.5), min_size=1, max_size=9), st.floats(0.005, 0.2))
def test_a_group_lies_between_its_own_values_and_the_whole(
    logs: list[float], spread: float
) -> None:
    groups = {
        "few": Lean(Values(tuple(logs), 1, len(logs)), Prior(0.0, 0.01)),
        "many": Lean(Values((-0.1,) * 12, 12, 12), Prior(0.0, 0.01)),
    }
    whole, each = partly_pooled(groups, Prior(0.0, 0.02), spread)
    ends = (whole.mean, *logs)
    assert min(ends) - 1e-9 <= each["few"].mean <= max(ends) + 1e-9
    assert each["few"].variance <= 0.01 + whole.variance + 1e-12


def test_exact_without_room_beside_the_whole_a_group_is_the_whole() -> None:
    assert lean(0.4, 0.1, Prior(-0.2, 0.0)).mean == -0.2


def test_a_keeper_counts_once_however_many_tubes_and_readings() -> None:
    one = [Value("a", box, -0.4) for box in range(20)] * 3
    values = Values.by_keeper([*one, Value("b", 0, 0.1), Value("c", 0, 0.2)])
    assert sorted(values.of) == [-0.4, 0.1, 0.2]
    assert (values.keepers, values.lamps, values.readings) == (3, 22, 62)


def test_three_wrong_keepers_of_nine_move_a_class_by_less_than_a_meters_doubt() -> None:
    right = [read(keeper, -0.2 + 0.02 * (keeper % 3)) for keeper in range(9)]
    wrong = [replace(r, uvi=r.uvi * 10.0) if r.keeper in (1, 4, 7) else r for r in right]
    (before,), (after,) = (by_class(reads).values() for reads in (right, wrong))
    assert abs(after.leant.mean - before.leant.mean) < log(1.15)


def test_no_keeper_at_all_and_one_alone_lean_on_the_engine() -> None:
    assert by_class([]) == {}
    prior, of_lamp = prior_of_class(TUBE)
    (alone,) = by_class([read(1, 0.9)]).values()
    assert prior.mean < alone.leant.mean < 0.5
    assert alone.lamp_variance == pytest.approx(of_lamp)


def test_what_is_far_off_is_marked_and_nothing_else() -> None:
    reads = {n: read(n, -0.2 + 0.05 * (n % 4)) for n in range(12)}
    reads[5] = replace(reads[5], uvi=reads[5].uvi * 10.0)
    assert far_reads(reads) == {5}


def aged(days: float) -> Lamp:
    return replace(TUBE, age_s=days * 86_400.0)


def test_fading_is_found_in_repeated_readings_of_one_tube_at_one_place() -> None:
    rng = Random(20261129)
    reads = []
    for keeper in range(9):
        for day in (0.0, 60.0, 120.0):
            off = -0.03 * day / 30.0 + rng.gauss(0.0, 0.004)
            reads.append(read(keeper, off + 0.1 * keeper, day, lamp=aged(100.0 + day)))
    reads.append(replace(reads[1], uvi=40.0))
    found = faded(reads)
    assert found is not None
    assert log(found.month.best) == pytest.approx(-0.03, abs=0.004)
    assert (found.tubes, found.keepers) == (9, 9)
    assert found.month.low < found.middle.low < found.middle.high < 1.0


@pytest.mark.parametrize(
    "second",
    [
        read(1, -0.1, 10.0, lamp=aged(110.0)),
        replace(read(1, -0.1, 60.0, lamp=aged(160.0)), distance_m=0.45),
        replace(read(1, -0.1, 60.0, lamp=aged(160.0)), screen=FlatScreen(0.55)),
        read(2, -0.1, 60.0, lamp=aged(160.0)),
        read(1, -0.1, 60.0, box=2, lamp=aged(160.0)),
        read(1, -0.1, 60.0, lamp=aged(5.0)),
        read(1, -0.1, 160.0, lamp=aged(30.0)),
    ],
    ids=["too soon", "elsewhere", "screened", "another keeper", "another box", "burning in", "new"],
)
def test_what_is_no_repeated_reading_tells_no_fading(second: PoolRead) -> None:
    assert faded([read(1, 0.0, 0.0, lamp=aged(100.0)), second]) is None


def test_a_class_of_a_group_has_a_spread_that_holds_it() -> None:
    assert group(-0.1).spread == pytest.approx(exp(NINE_IN_TEN * 0.032**0.5))
    assert group(-0.8).spread == pytest.approx(exp(0.8))
    with pytest.raises(ValueError, match="no class"):
        GroupClass(0.5, 1.5, 9, DAY)
