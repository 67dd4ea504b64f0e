"""Readings judged: the right thing first, doubtful readings told, nothing left without a step."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.animal import Animal
from calc.animals import animals
from calc.heat.judge import Judgement, Step, judge
from calc.heat.readings import Doubtful, Finding, Instrument, Readings
from calc.judgement import Verdict
from calc.limits import Due, LimitName, Met, limits_of, passed
from calc.quantities import Quantity
from calc.validity import OutsideModelError
from tests.some import some

DRAGON = animals()["bearded-dragon"]


def dragon(
    basking_f: float | None = None,
    cool_f: float | None = None,
    warm_f: float | None = None,
    night_f: float | None = None,
    lamp_on_h: float | None = 3.0,
    *instruments: Instrument,
) -> Judgement:
    basking, cool, warm, night = (
        None if f is None else (f - 32.0) / 1.8 for f in (basking_f, cool_f, warm_f, night_f)
    )
    readings = Readings(basking, cool, warm, night, lamp_on_h, frozenset(instruments))
    return judge(readings, DRAGON)


def verdicts(judgement: Judgement) -> list[Verdict | None]:
    return [f.judged.verdict if f.judged else None for f in judgement.findings]


def test_all_in_range_is_left_alone() -> None:
    judgement = dragon(103, 80, 83, 65)
    assert verdicts(judgement) == [Verdict.FINE] * 4
    assert judgement.steps == (Step.LEAVE_AS_IT_IS,)
    assert judgement.doubts == ()
    assert judgement.missing == ()


@pytest.mark.parametrize(
    ("basking_f", "cool_f", "first"),
    [
        (98, 75, Step.MEASURE_AGAIN),
        (98, 72, Step.MOVE_LAMP_INWARD),
        (103, 88, Step.LESS_POWER),
        (90, 80, Step.LOWER_LAMP),
        (90, 72, Step.MORE_POWER),
        (90, 86, Step.LOWER_LAMP),
        (114, 80, Step.RAISE_LAMP),
        (114, 86, Step.LESS_POWER),
        (114, 74, Step.RAISE_LAMP),
        (90, None, Step.LOWER_LAMP),
        (None, 86, Step.MEASURE_SURFACE),
        (None, 80, Step.MEASURE_SURFACE),
        (103, None, Step.MEASURE_COOL_END),
        (None, None, Step.MEASURE_SURFACE),
    ],
)
def test_the_first_step_follows_the_surface_and_then_the_cool_end(
    basking_f: float | None, cool_f: float | None, first: Step
) -> None:
    assert dragon(basking_f, cool_f).first is first


def test_a_fine_spot_with_a_cold_cool_end_wants_the_lamp_moved_or_a_second_weaker_one() -> None:
    assert dragon(100, 73).steps == (Step.MOVE_LAMP_INWARD, Step.SECOND_WEAKER_LAMP)


def test_a_cool_end_too_warm_wants_less_power_more_air_or_a_longer_enclosure() -> None:
    steps = (Step.LESS_POWER, Step.MORE_AIR, Step.LONGER_ENCLOSURE)
    assert dragon(103, 88).steps == steps


@pytest.mark.parametrize("lamp_on_h", [0.0, 0.5, 1.99])
def test_a_low_reading_before_two_hours_is_not_yet_a_reading(lamp_on_h: float) -> None:
    judgement = dragon(85, 74, lamp_on_h=lamp_on_h)
    assert Doubtful.NOT_YET_A_READING in judgement.doubts
    assert judgement.steps == (Step.WAIT_AND_READ_AGAIN,)


def test_a_reading_that_is_too_high_early_stands_because_it_only_rises() -> None:
    judgement = dragon(112, 74, lamp_on_h=0.5)
    assert judgement.first is Step.RAISE_LAMP
    assert judgement.steps[-1] is Step.WAIT_AND_READ_AGAIN
    assert Step.SECOND_WEAKER_LAMP not in judgement.steps
    # Past its limit it is not left as it is, however early it was read.
    assert Step.WAIT_AND_READ_AGAIN not in dragon(115, 74, lamp_on_h=0.5).steps


def test_lamp_time_that_was_not_said_is_a_doubt_but_no_obstacle() -> None:
    judgement = dragon(90, 80, lamp_on_h=None)
    assert judgement.doubts == (Doubtful.LAMP_TIME_NOT_SAID,)
    assert judgement.first is Step.LOWER_LAMP


@pytest.mark.parametrize(
    ("instruments", "doubt", "first"),
    [
        ((Instrument.DIAL_OR_STRIP,), Doubtful.DIAL_NOT_TRUSTED, Step.USE_TRUSTED_THERMOMETER),
        ((Instrument.INFRARED_GUN,), Doubtful.GUN_FOR_AIR, Step.MEASURE_AIR_WITH_PROBE),
        ((Instrument.DIGITAL_PROBE,), Doubtful.PROBE_FOR_SURFACE, Step.MEASURE_SURFACE_WITH_GUN),
    ],
)
def test_the_wrong_instrument_comes_before_any_lamp(
    instruments: tuple[Instrument, ...], doubt: Doubtful, first: Step
) -> None:
    judgement = dragon(90, 80, None, None, 3.0, *instruments)
    assert doubt in judgement.doubts
    assert judgement.first is first
    assert Step.LOWER_LAMP in judgement.steps


def test_a_gun_for_the_surface_and_a_probe_for_the_air_are_trusted() -> None:
    both = (Instrument.INFRARED_GUN, Instrument.DIGITAL_PROBE)
    assert dragon(103, 80, 83, None, 3.0, *both).doubts == ()


def test_a_contradiction_past_a_limit_is_acted_on_before_it_is_looked_into() -> None:
    judgement = dragon(78, 103)
    assert Doubtful.COOL_END_ABOVE_SURFACE in judgement.doubts
    assert judgement.steps == (Step.COOL_DOWN_IF_TRUE, Step.CHECK_PROBE_PLACES)


def test_a_contradiction_within_the_limits_is_only_looked_into() -> None:
    judgement = dragon(78, 84)
    assert Doubtful.COOL_END_ABOVE_SURFACE in judgement.doubts
    assert judgement.steps == (Step.CHECK_PROBE_PLACES,)


def test_a_cool_end_above_the_warm_end_is_a_contradiction() -> None:
    judgement = dragon(103, 82, 79)
    assert Doubtful.COOL_END_ABOVE_WARM_END in judgement.doubts
    assert judgement.first is Step.CHECK_PROBE_PLACES


@pytest.mark.parametrize("warm_f", [103, 100])
def test_a_warm_probe_in_the_beam_is_found(warm_f: float) -> None:
    judgement = dragon(103, 78, warm_f)
    assert Doubtful.WARM_PROBE_IN_BEAM in judgement.doubts
    assert judgement.first is Step.MOVE_PROBE_OUT_OF_BEAM


def test_the_warm_end_alone_is_an_early_warning() -> None:
    assert dragon(103, 80, 90).steps == (Step.CHECK_WARM_PROBE, Step.MORE_AIR)
    assert dragon(103, 77, 76).steps == (Step.CHECK_WARM_PROBE, Step.WATCH_WARM_END)
    assert Step.CHECK_WARM_PROBE not in dragon(90, 80, 90).steps


@pytest.mark.parametrize(("basking_f", "cool_f"), [(126, 80), (140, None), (120, 97)])
def test_a_surface_that_burns_or_no_cool_place_switches_the_lamp_off_first(
    basking_f: float, cool_f: float | None
) -> None:
    assert dragon(basking_f, cool_f).first is Step.SWITCH_LAMP_OFF


@pytest.mark.parametrize(
    ("night_f", "step"),
    [
        (59.1, Step.HEAT_THE_NIGHT),
        (59.5, Step.LEAVE_AS_IT_IS),
        (55, Step.WARM_IT_TONIGHT),
        (65, Step.LEAVE_AS_IT_IS),
        (88, Step.COOLER_NIGHT),
    ],
)
def test_a_night_by_itself_is_judged_by_itself(night_f: float, step: Step) -> None:
    assert dragon(None, None, None, night_f).first is step


def test_a_night_in_dispute_is_said_to_be() -> None:
    corn = animals()["corn-snake"]
    assert corn.night_floor_c is not None
    judgement = judge(Readings(night_low_c=corn.night_floor_c.aim), corn)
    assert [finding.keepers_differ for finding in judgement.findings] == [True]
    assert judgement.first is Step.CONSIDER_NIGHT_HEAT


def test_missing_readings_are_listed_in_order_of_importance() -> None:
    assert dragon(None, 80).missing == (
        Quantity.BASKING_SURFACE,
        Quantity.WARM_AIR,
        Quantity.NIGHT_AIR,
    )


def test_the_edges_of_a_target_are_inside_it() -> None:
    assert verdicts(dragon(95, 77, 80, 60)) == [Verdict.FINE] * 4
    assert verdicts(dragon(110, 82, 85, 82)) == [Verdict.FINE] * 4


def test_an_animal_without_a_surface_target_is_judged_by_its_air() -> None:
    gecko = animals()["crested-gecko"]
    judgement = judge(Readings(basking_surface_c=29.0, cool_air_c=27.5, lamp_on_h=4.0), gecko)
    assert verdicts(judgement)[0] is None
    assert judgement.first is Step.LESS_POWER


def test_an_animal_without_a_surface_target_has_a_limit_all_the_same() -> None:
    gecko = animals()["crested-gecko"]
    for readings in (Readings(basking_surface_c=48.9), Readings(cool_air_c=28.0)):
        assert judge(readings, gecko).first is Step.SWITCH_LAMP_OFF


@pytest.mark.parametrize("slug", ["ackie-monitor", "uromastyx"])
def test_an_animal_of_hot_spots_has_a_limit_for_its_cool_end(slug: str) -> None:
    # Far under its lowest basking surface, and past all that it can live in for a day.
    assert judge(Readings(cool_air_c=38.5), animals()[slug]).first is Step.SWITCH_LAMP_OFF


@given(
    st.sampled_from(list(animals().values())),
    *(st.none() | st.floats(-5.0, 90.0) for _ in range(4)),
    st.none() | st.floats(0.0, 24.0),
)
def test_past_a_limit_of_heat_no_step_warms_the_day(
    animal: Animal,
    surface: float | None,
    cool: float | None,
    warm: float | None,
    night: float | None,
    lamp_on_h: float | None,
) -> None:
    readings = Readings(surface, cool, warm, night, lamp_on_h)
    met = Met(surface_c=surface, coolest_air_c=cool, warm_air_c=warm)
    hot = (LimitName.SURFACE, LimitName.COOLEST_AIR, LimitName.WARM_AIR)
    past = [p for p in passed(limits_of(animal), met) if p.name in hot]
    judgement = judge(readings, animal)
    warming = {Step.LOWER_LAMP, Step.MORE_POWER, Step.MOVE_LAMP_INWARD, Step.SECOND_WEAKER_LAMP}
    cooling = {Step.SWITCH_LAMP_OFF, Step.COOL_DOWN_IF_TRUE, Step.LESS_POWER, Step.RAISE_LAMP}
    if past:
        assert warming.isdisjoint(judgement.steps)
        assert cooling & set(judgement.steps)
        assert Step.LEAVE_AS_IT_IS not in judgement.steps
    if any(p.due is Due.NOW for p in past):
        assert judgement.first in (Step.SWITCH_LAMP_OFF, Step.COOL_DOWN_IF_TRUE)


def _rests(finding: Finding) -> bool:
    return finding.judged is None or finding.judged.is_fine


@pytest.mark.parametrize("reading", [-40.0, 400.0])
def test_a_reading_that_no_thermometer_shows_is_refused(reading: float) -> None:
    with pytest.raises(OutsideModelError):
        Readings(basking_surface_c=reading)


MAYBE = st.none() | st.floats(-5.0, 90.0)


@settings(max_examples=some(150), deadline=None)
@given(
    animal=st.sampled_from(list(animals().values())),
    readings=st.builds(
        Readings,
        MAYBE,
        MAYBE,
        MAYBE,
        MAYBE,
        st.none() | st.floats(0.0, 24.0),
        st.frozensets(st.sampled_from(Instrument)),
    ),
)
def test_every_set_of_readings_gets_a_first_step_and_no_step_twice(
    animal: Animal, readings: Readings
) -> None:
    judgement = judge(readings, animal)
    given_places = [p for p, reading in readings.by_place().items() if reading is not None]
    assert [finding.place for finding in judgement.findings] == given_places
    assert len(set(judgement.steps)) == len(judgement.steps) >= 1
    assert judgement.first is judgement.steps[0]
    for finding in judgement.findings:
        assert sum((finding.is_low, finding.is_high, finding.is_unsure, _rests(finding))) == 1
    raised = {Step.RAISE_LAMP, Step.LESS_POWER} & set(judgement.steps)
    lowered = {Step.LOWER_LAMP, Step.MORE_POWER} & set(judgement.steps)
    assert not (raised and lowered)


SLIDER, TORTOISE = animals()["slider"], animals()["greek-tortoise"]


@pytest.mark.parametrize(
    ("water_c", "first"),
    [(15.5, Step.WARMER_WATER), (21.1, Step.WARMER_WATER), (22.2, Step.MEASURE_AGAIN)],
)
def test_water_surely_below_a_range_from_memory_is_warmed(water_c: float, first: Step) -> None:
    judged = judge(Readings(basking_surface_c=33.0, water_c=water_c, lamp_on_h=3.0), SLIDER)
    assert judged.first is first


@pytest.mark.parametrize(
    ("surface_c", "first"), [(26.5, Step.CHECK_THE_RANGE), (33.3, Step.MEASURE_AGAIN)]
)
def test_a_spot_off_by_more_than_a_thermometer_may_be_has_its_unchecked_range_doubted(
    surface_c: float, first: Step
) -> None:
    judged = judge(Readings(surface_c, 23.0, lamp_on_h=3.0), TORTOISE)
    assert judged.findings[0].is_unsure
    assert judged.first is first
