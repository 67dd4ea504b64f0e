"""What is not known of a whole field: evenly drawn cases, and the spread at one place. Exact."""

from dataclasses import replace
from math import log

import numpy as np
import pytest

from calc.sources import bibliography
from calc.uncertainty import Doubt
from calc.unknowns import Cases, combine
from calc.uv.field_unknowns import (
    DRAWS,
    cosine_power,
    field_cases,
    field_unknowns,
    place_unknowns,
    with_lengths,
)
from calc.uv.lamp import Fixture, Lamp, OwnPoint, of_length
from calc.uv.lamp_unknowns import Cause, length_weights, unknowns_of
from calc.uv.lengths import length_of_tube
from calc.uv.point import PointSource
from calc.uv.screen import NoScreen
from calc.uv.section import HungTube, uvi_field

LIT_M = 0.519
TOLD = of_length(Lamp(12.0, Fixture.POLISHED), length_of_tube(LIT_M))
UNTOLD = of_length(Lamp(12.0, Fixture.POLISHED), length_of_tube())


def hung(lamp: Lamp, y_m: float = 0.2) -> HungTube:
    return HungTube(lamp, 0.4, y_m, 0.6, NoScreen())


def test_the_cases_are_as_spread_as_the_doubts_they_stand_for() -> None:
    cases = field_cases([hung(TOLD)], 0.3)
    whole = unknowns_of(TOLD, 0.3, NoScreen())
    assert cases.lamp.shape == cases.spread.shape == cases.length.shape == (DRAWS,)
    assert float(np.mean(cases.lamp)) == pytest.approx(whole.mean, abs=0.005)
    assert float(np.std(cases.lamp)) == pytest.approx(whole.deviation, rel=0.05)
    assert float(np.mean(cases.spread)) == pytest.approx(0.0, abs=0.01)
    assert float(np.std(cases.spread)) == pytest.approx(log(1.3) / 1.645, rel=0.06)
    assert abs(float(np.corrcoef(cases.lamp, cases.spread)[0, 1])) < 0.1
    assert not cases.length.any()
    # A back that is very near or far is judged at 15 cm, and at the farthest that is answered.
    near = unknowns_of(TOLD, 0.15, NoScreen())
    assert float(np.std(field_cases([hung(TOLD)], 0.58).lamp)) == pytest.approx(
        near.deviation, rel=0.05
    )


def test_each_length_comes_as_often_as_its_weight() -> None:
    cases = field_cases([hung(UNTOLD)], 0.3)
    weights = np.array(length_weights(UNTOLD))
    counted = np.bincount(cases.length, minlength=weights.size) / DRAWS
    assert counted == pytest.approx(weights / weights.sum(), abs=2.5 / DRAWS)


def test_the_logs_of_a_case_are_those_of_its_length_lamp_and_spread() -> None:
    cases = field_cases([hung(UNTOLD)], 0.3)
    log_uvi, power = (
        np.log(np.array([[1.0, 2.0], [3.0, 4.0], [5.0, 6.0], [7.0, 8.0]])),
        np.array([0.5, 2.0]),
    )
    logs = cases.logs(log_uvi, power)
    assert logs.shape == (DRAWS, 2)
    for case in (0, 17, DRAWS - 1):
        for place in range(2):
            wanted = log_uvi[cases.length[case], place] + cases.lamp[case]
            wanted += cases.spread[case] * power[place]
            assert logs[case, place] == pytest.approx(wanted)


def test_a_longer_tube_begins_where_the_shorter_does() -> None:
    first, *others = with_lengths([hung(UNTOLD), hung(UNTOLD, 0.3)])
    assert first == (hung(UNTOLD), hung(UNTOLD, 0.3))
    assert len(others) == len(UNTOLD.may_be) == 3
    for tubes in others:
        for tube in tubes:
            begins = tube.x_m - tube.lamp.lit_length_m / 2.0
            assert begins == pytest.approx(0.4 - UNTOLD.lit_length_m / 2.0)
    assert with_lengths([hung(UNTOLD), hung(TOLD)]) == ((hung(UNTOLD), hung(TOLD)),)


def test_the_sideways_doubt_is_that_of_the_angle() -> None:
    # exact: ln cos a over ln cos 45°; straight below none, at 60° twice as much.
    below = np.array([0.3, 0.3, 0.3, 0.3])
    beside = np.array([0.0, 0.3, 0.3 * 3.0**0.5, 0.1])
    power = cosine_power(below, beside)
    assert power[:3] == pytest.approx([0.0, 1.0, 2.0], abs=1e-12)
    assert 0.0 < power[3] < 1.0
    # Level with a tube or above it counts as 2 cm below.
    level = cosine_power(np.array([0.0, 0.02]), np.array([0.3, 0.3]))
    assert level[0] == level[1]


def test_a_place_has_the_doubts_of_the_tube_that_gives_most_there() -> None:
    strong, old = hung(TOLD), hung(replace(TOLD, age_s=5e7), 0.5)
    for y_m, tube in ((0.2, strong), (0.5, old)):
        found = place_unknowns([strong, old], 0.4, y_m, 0.3)
        alone = unknowns_of(tube.lamp, 0.3, NoScreen())
        assert found.variance == pytest.approx(alone.variance)
        assert found.mean == pytest.approx(alone.mean)
    aslant = place_unknowns([strong], 0.4, 0.5, 0.3)
    away = unknowns_of(TOLD, 0.3 * 2.0**0.5, NoScreen())
    assert aslant.variance == pytest.approx(away.variance + (log(1.3) / 1.645) ** 2)


def test_an_untold_length_is_a_doubt_of_every_place() -> None:
    for x_m in (0.4, 1.2):
        names = [e.unknown.name for e in place_unknowns([hung(UNTOLD)], x_m, 0.2, 0.3).effects]
        assert names.count(Cause.LENGTH) == 1
    # Far past its end a longer tube gives much more, so that more is open there.
    at, past = (place_unknowns([hung(UNTOLD)], x_m, 0.2, 0.3) for x_m in (0.4, 1.2))
    assert past.variance > 2.0 * at.variance
    told = place_unknowns([hung(TOLD)], 0.4, 0.2, 0.3)
    assert Cause.LENGTH not in [e.unknown.name for e in told.effects]


def test_of_a_field_the_widest_doubt_counts() -> None:
    new, unknown = hung(replace(TOLD, age_s=1e7)), hung(TOLD, 0.4)
    both = field_unknowns([new, unknown], 0.3)
    assert both.variance == field_unknowns([unknown], 0.3).variance
    assert both.variance > field_unknowns([new], 0.3).variance
    one = unknowns_of(TOLD, 0.3, NoScreen())
    assert both.variance == pytest.approx(combine(one.effects).variance + (log(1.3) / 1.645) ** 2)


def test_a_place_without_uv_has_no_doubt_of_length() -> None:
    """Over the tube there is none, and nothing to compare the lengths by."""
    above = place_unknowns([hung(UNTOLD)], 0.4, 0.3, 0.7)
    assert Cause.LENGTH not in [e.unknown.name for e in above.effects]
    assert above.variance > 0.0


def test_the_length_of_each_of_several_tubes_moves_the_sum_of_them() -> None:
    tubes = [hung(UNTOLD, 0.1), hung(UNTOLD, 0.5)]
    effects = place_unknowns(tubes, 0.9, 0.2, 0.3).effects
    (cases,) = [e.unknown.spread for e in effects if e.unknown.name == Cause.LENGTH]
    assert isinstance(cases, Cases)
    fields = [float(uvi_field(case, 0.9, 0.2, 0.3)) for case in with_lengths(tubes)]
    wanted = zip((uvi / fields[0] for uvi in fields), length_weights(UNTOLD), strict=True)
    assert [*cases.cases] == [pytest.approx(one) for one in wanted]
    # What was worked out before is what is worked out here.
    assert place_unknowns(tubes, 0.9, 0.2, 0.3, with_lengths(tubes)).effects == effects
    told = place_unknowns(tubes, 0.9, 0.2, 0.3, (tuple(tubes),))
    assert Cause.LENGTH not in [e.unknown.name for e in told.effects]


@pytest.mark.parametrize(
    ("y_m", "z_m", "away_m", "power"),
    [
        # Nearer than is answered it is judged at 5 cm, and beyond 3 m at 3 m.
        (0.2, 0.57, 0.05, 0.0),
        (0.2, -3.0, 3.0, 0.0),
        (0.5, 0.3, 0.3 * 2.0**0.5, 1.0),
        (-0.1, 0.3, 0.3 * 2.0**0.5, 1.0),
    ],
)
def test_a_place_is_judged_from_where_its_tube_hangs(
    y_m: float, z_m: float, away_m: float, power: float
) -> None:
    found = place_unknowns([hung(TOLD)], 0.4, y_m, z_m)
    there = unknowns_of(TOLD, away_m, NoScreen())
    sideways = power * log(1.3) / 1.645
    assert found.variance == pytest.approx(there.variance + sideways**2)


def test_a_small_lamp_may_be_a_beam_or_shine_all_round() -> None:
    """Pinned to our judgement of beams: a tenth to 1.4 times at 45 degrees, any way from it."""
    source = PointSource(0.6, 0.0, 0.3)
    own = OwnPoint(source, Doubt(Cause.READINGS, 1.2, "uv_meter_judgement"))
    for x_m, y_m in ((0.7, 0.2), (0.4, 0.5), (0.1, 0.2)):
        effects = place_unknowns([hung(replace(TOLD, own=own))], x_m, y_m, 0.3).effects
        (spread,) = [e for e in effects if e.unknown.name == Cause.SPREAD]
        assert spread.ends == pytest.approx((0.1, 1.4))
        assert spread.unknown.source in bibliography()


def test_a_field_is_judged_from_the_height_of_its_backs() -> None:
    sideways = (log(1.3) / 1.645) ** 2
    for back_m, away_m in ((0.2, 0.4), (0.5, 0.15), (0.7, 0.15), (-5.0, 3.0)):
        found = field_unknowns([hung(UNTOLD)], back_m)
        there = unknowns_of(UNTOLD, away_m, NoScreen())
        assert found.variance == pytest.approx(there.variance + sideways)
        # The lamp is drawn as if its length were known: that is drawn by itself.
        told = unknowns_of(TOLD, away_m, NoScreen())
        for lamp in (TOLD, UNTOLD):
            drawn = field_cases([hung(lamp)], back_m).lamp
            assert float(np.std(drawn)) == pytest.approx(told.deviation, rel=0.03)


def test_the_cases_of_one_length_need_no_other() -> None:
    """Where the lengths were worked out before, only those are drawn."""
    one = field_cases([hung(UNTOLD)], 0.3, with_lengths([hung(TOLD)]))
    assert not one.length.any()
    two = field_cases([hung(UNTOLD)], 0.3, with_lengths([hung(UNTOLD)])[:2])
    first, second = np.bincount(two.length) / DRAWS
    weights = length_weights(UNTOLD)
    assert first / second == pytest.approx(weights[0] / weights[1], rel=0.15)


def test_lamp_spread_and_length_are_drawn_apart() -> None:
    """Each third of one holds about as many of each half of another: nothing hangs together."""
    cases = field_cases([hung(UNTOLD)], 0.3)
    by_length = [cases.lamp[cases.length == length] for length in range(3)]
    middle = float(np.median(cases.lamp))
    for lamps in by_length:
        assert float(np.mean(lamps > middle)) == pytest.approx(0.5, abs=0.1)
    spreads = [cases.spread[cases.length == length] for length in range(3)]
    for drawn in spreads:
        assert float(np.mean(drawn > 0.0)) == pytest.approx(0.5, abs=0.1)
    ranks = np.sort(cases.spread)
    assert np.unique(ranks).size == DRAWS
