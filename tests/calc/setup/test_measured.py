"""The set-up that readings tell: each step is a change or none, each place keeps its verdict."""

from dataclasses import replace

import pytest

from calc.animals import animals
from calc.heat.judge import judge
from calc.heat.readings import PLACES, Readings, finding_for, target_at
from calc.heat.steps import Step
from calc.judgement import with_doubt
from calc.quantities import Quantity
from calc.setup.measured import change_of, measured_set_up, wanted_at
from calc.setup.set_up import Act, Sign, Thing

DRAGON = animals()["bearded-dragon"]


@pytest.mark.parametrize("step", list(Step))
def test_every_step_is_a_change_or_none(step: Step) -> None:
    found = change_of(step)
    assert (found is None) == (step is Step.LEAVE_AS_IT_IS)
    if found is not None:
        assert found.things
        assert (found.act is Act.MEASURE) <= (found.things == (Thing.THERMOMETER,))


def test_a_lamp_moves_the_way_that_the_step_says_and_nothing_else_has_a_way() -> None:
    changes = {step: change_of(step) for step in Step}
    ways = {step: change.toward for step, change in changes.items() if change and change.toward}
    assert ways == {
        Step.LOWER_LAMP: (0, 0, -1),
        Step.RAISE_LAMP: (0, 0, 1),
        Step.MOVE_LAMP_INWARD: (1, 0, 0),
    }


def test_every_finding_keeps_its_verdict_and_its_doubt() -> None:
    readings = Readings(30.0, 33.0, 31.0, 12.0, 3.0)
    judgement = judge(readings, DRAGON)
    value = measured_set_up(judgement.findings, DRAGON, judgement.first)
    assert value.animal == "bearded-dragon"
    assert [spot.quantity for spot in value.spots] == [x for x in PLACES if x is not Quantity.WATER]
    for finding in judgement.findings:
        spot = value.spot_of(finding.place)
        assert spot is not None
        assert spot.value is not None
        assert spot.judged is finding.judged
        assert spot.value.low < finding.reading_c < spot.value.high
        assert (spot.sign is Sign.FINE) == finding.is_fine
        assert (spot.sign is Sign.CANNOT_TELL) == (finding.is_unsure or finding.keepers_differ)
    assert value.first == change_of(judgement.first)


def test_what_was_not_read_is_there_with_what_is_wanted() -> None:
    value = measured_set_up((), DRAGON)
    assert value.first is None
    assert all(spot.value is None and spot.wanted is not None for spot in value.spots)
    night = wanted_at(Quantity.NIGHT_AIR, DRAGON)
    assert DRAGON.night_floor_c is not None
    assert DRAGON.cool_air_c is not None
    assert night == (DRAGON.night_floor_c.high, DRAGON.cool_air_c.high)


def test_a_place_is_kept_where_it_was_read_though_nobody_knows_what_is_wanted() -> None:
    finding = finding_for(Quantity.WATER, 24.0, DRAGON)
    (water,) = [
        spot for spot in measured_set_up([finding], DRAGON).spots if spot.quantity is Quantity.WATER
    ]
    assert water.value == with_doubt(Quantity.WATER, 24.0)
    assert (water.wanted, water.judged, water.sign) == (None, None, Sign.CANNOT_TELL)


def test_how_warm_a_night_may_be_is_told_by_the_day_at_the_cool_end() -> None:
    assert wanted_at(Quantity.NIGHT_AIR, replace(DRAGON, cool_air_c=None)) is None
    for place in PLACES:
        target = target_at(place, DRAGON)
        if target is None or place is Quantity.NIGHT_AIR:
            continue
        assert wanted_at(place, DRAGON) == (target.low, target.high)
    assert wanted_at(Quantity.WATER, DRAGON) is None
