"""Fine points of the heat engine, each worked out in another way than the engine does."""

from dataclasses import replace
from itertools import pairwise
from math import sqrt

import pytest

from calc.animals import animals
from calc.heat.basking import Reading, watts_for
from calc.heat.dimming import rerated_by_power, rerated_by_voltage
from calc.heat.enclosure import Enclosure, Lid
from calc.heat.first_wattage import LampShape, first_wattage
from calc.heat.judge import Step, judge
from calc.heat.night import emitter_for, night_plan
from calc.heat.readings import Doubtful, Readings, doubts_about, finding_for
from calc.heat.sources_of_heat import find_heat_source, heat_source_names, heat_sources
from calc.heat.thermometer import Surface, emissivity_of
from calc.heat.wattages import Family, steps_between, steps_sold
from calc.judgement import Verdict, judge_value, with_doubt
from calc.quantities import Quantity

DRAGON = animals()["bearded-dragon"]
CHAMELEON = animals()["veiled-chameleon"]


@pytest.mark.parametrize("family", Family)
def test_a_range_of_watts_holds_its_own_ends(family: Family) -> None:
    sold = steps_sold(family)
    for low, high in pairwise(sold):
        assert steps_between(low, high, family) == (low, high)
        assert steps_between(low, low, family) == (low,)
        between = low + 0.4 * (high - low)
        assert steps_between(between, between, family) == (low,)


def test_the_smallest_lamp_that_is_enough_has_no_smaller_one_beside_it() -> None:
    smallest = steps_sold()[0]
    offers = [
        first_wattage(LampShape.FLOOD, room / 2.0, 36.0, distance / 100.0).buy_w
        for room in range(40, 56)
        for distance in range(10, 40, 3)
    ]
    assert any(offer == (smallest,) for offer in offers)
    for offer in offers:
        assert all(watts in steps_sold() for watts in offer)
        assert list(offer) == sorted(offer, reverse=True)


def test_every_name_of_a_kind_of_heater_finds_it_also_in_the_plural() -> None:
    for kind in heat_sources().values():
        for name in (kind.slug, kind.name, *kind.aliases):
            assert find_heat_source(name) is kind
            assert find_heat_source(f"{name}s") is kind
    assert set(heat_source_names()) == {kind.name for kind in heat_sources().values()}
    assert find_heat_source("") is None


@pytest.mark.parametrize("voltage", [0.31, 0.75, 1.0, 1.09])
def test_a_lamp_dimmed_by_voltage_or_by_its_power_is_the_same_lamp(voltage: float) -> None:
    dimmed = rerated_by_voltage(voltage)
    assert dimmed.voltage == voltage
    again = rerated_by_power(dimmed.power)
    assert again.voltage == pytest.approx(voltage)
    assert again.light == pytest.approx(dimmed.light)


@pytest.mark.parametrize("surface", Surface)
def test_a_material_is_told_by_its_name(surface: Surface) -> None:
    told = emissivity_of(surface)
    assert told.name.strip()
    assert told.share.low <= told.share.best <= told.share.high <= 1.0


def test_the_thermostat_point_has_a_source_where_it_is_known() -> None:
    for animal in animals().values():
        plan = night_plan(animal, 20.0)
        assert (plan.heat_off_c is None) == (plan.heat_off_source is None)
        if animal.night_heat_off_c is not None:
            assert plan.heat_off_source == animal.night_heat_off_c.source
        elif plan.heat_off_c is not None:
            assert plan.heat_off_source == "enclosure_model"
            assert animal.night_floor_c is not None
            assert plan.heat_off_c <= animal.night_floor_c.high + 3.0


def test_a_finding_keeps_the_reading_and_its_target() -> None:
    targets = {
        Quantity.BASKING_SURFACE: CHAMELEON.basking_surface_c,
        Quantity.COOL_AIR: CHAMELEON.cool_air_c,
        Quantity.NIGHT_AIR: CHAMELEON.night_floor_c,
    }
    seen = set()
    for place, target in targets.items():
        assert target is not None
        for tenths in range(600):
            found = finding_for(place, tenths / 10.0, CHAMELEON)
            assert (found.place, found.reading_c, found.target) == (place, tenths / 10.0, target)
            assert found.judged is not None
            assert not (found.keepers_differ and place is not Quantity.NIGHT_AIR)
            seen.add(found.judged.verdict)
    assert seen == set(Verdict)


def test_a_reading_is_judged_with_the_doubt_of_its_thermometer() -> None:
    target = DRAGON.cool_air_c
    assert target is not None
    for off in (-9.0, -3.0, -1.0, -0.2, 0.2, 1.0, 3.0):
        reading = target.low + off if off < 0.0 else target.high + off
        found = finding_for(Quantity.COOL_AIR, reading, DRAGON)
        estimate = with_doubt(Quantity.COOL_AIR, reading)
        assert found.judged is not None
        if found.judged.verdict is not Verdict.DANGEROUS:
            assert found.judged == judge_value(Quantity.COOL_AIR, estimate, target.low, target.high)


def test_a_cool_end_a_little_above_the_warm_end_is_no_contradiction_yet() -> None:
    def told(cool: float) -> bool:
        readings = Readings(cool_air_c=cool, warm_air_c=28.0)
        return Doubtful.COOL_END_ABOVE_WARM_END in doubts_about(readings)

    first = next(tenths for tenths in range(200, 500) if told(tenths / 10.0)) / 10.0
    assert 28.0 < first <= 30.0
    assert all(told(tenths / 10.0) for tenths in range(round(first * 10), 500))


@pytest.mark.parametrize("distance", [0.1, 0.3, 0.45, 1.2])
def test_another_distance_takes_the_power_of_its_square(distance: float) -> None:
    before = Reading(42.0, 22.0, 0.30)
    # The three views of the softening: how far behind the lamp's face the beam begins.
    factors = [((distance + behind) / (0.30 + behind)) ** 2 for behind in (0.0, 0.05, 0.10)]
    found = watts_for(before, 60.0, 42.0, distance)
    assert found.best == pytest.approx(60.0 * sorted(factors)[1])
    assert (found.low, found.high) == pytest.approx((60.0 * min(factors), 60.0 * max(factors)))
    assert watts_for(before, 60.0, 42.0, 0.30).best == pytest.approx(60.0)


def test_how_far_a_reading_is_off_is_the_way_to_the_nearest_end() -> None:
    target = DRAGON.cool_air_c
    assert target is not None
    for off in (0.5, 1.0, 7.0):
        low = finding_for(Quantity.COOL_AIR, target.low - off, DRAGON)
        high = finding_for(Quantity.COOL_AIR, target.high + off, DRAGON)
        assert low.judged is not None
        assert high.judged is not None
        assert (low.judged.off_by, high.judged.off_by) == pytest.approx((off, off))


def test_a_closed_box_loses_air_by_its_vents_as_its_height_and_its_warmth_tell() -> None:
    low, high = (Enclosure(1.2, 0.6, height, lid=Lid.SOLID) for height in (0.5, 1.0))
    assert low.air_loss_w(10.0, 20.0) > 0.0
    assert high.air_loss_w(10.0, 20.0) == pytest.approx(sqrt(2.0) * low.air_loss_w(10.0, 20.0))
    # Four times the rise is eight times the loss, but for the thinner air inside.
    warmer = low.air_loss_w(20.0, 20.0) / low.air_loss_w(5.0, 20.0)
    assert warmer == pytest.approx(8.0 * sqrt((25.0 + 273.15) / (40.0 + 273.15)))


@pytest.mark.parametrize("room", [0.0, 6.0, 12.0, 15.0])
def test_an_emitter_is_one_that_emitters_are_sold_as(room: float) -> None:
    plan = night_plan(DRAGON, room)
    for size in (0.4, 0.6, 0.9, 1.2, 1.8):
        found = emitter_for(Enclosure(size, size / 2.0, size / 2.0), plan, room)
        assert found is not None
        assert found.step_w is None or found.step_w in steps_sold(Family.DARK_EMITTER)
        enough = [w for w in steps_sold(Family.DARK_EMITTER) if w >= found.power_w.high]
        assert found.step_w == min(enough, default=None)


def test_the_lamp_time_counts_for_what_is_read_by_day_and_not_at_night() -> None:
    day = Readings(basking_surface_c=40.0, cool_air_c=25.0, warm_air_c=30.0)
    for reading in (
        day,
        replace(day, warm_air_c=None),
        replace(day, cool_air_c=None),
        replace(day, basking_surface_c=None),
    ):
        assert doubts_about(replace(reading, lamp_on_h=1.0)) == (Doubtful.NOT_YET_A_READING,)
        assert doubts_about(reading) == (Doubtful.LAMP_TIME_NOT_SAID,)
        assert doubts_about(replace(reading, lamp_on_h=3.0)) == ()
    assert doubts_about(Readings(night_low_c=18.0)) == ()


@pytest.mark.parametrize(
    ("readings", "is_in_beam"),
    [
        (Readings(basking_surface_c=40.0, warm_air_c=39.5, lamp_on_h=3.0), True),
        (Readings(basking_surface_c=40.0, warm_air_c=39.0, lamp_on_h=3.0), False),
        (Readings(cool_air_c=22.0, warm_air_c=32.5, lamp_on_h=3.0), True),
        (Readings(cool_air_c=22.0, warm_air_c=32.0, lamp_on_h=3.0), False),
    ],
)
def test_a_warm_probe_is_in_the_beam_within_a_degree_of_the_surface_or_ten_over_the_cool_end(
    readings: Readings, is_in_beam: bool
) -> None:
    assert (Doubtful.WARM_PROBE_IN_BEAM in doubts_about(readings)) is is_in_beam


def test_a_cool_end_as_hot_as_the_basking_spot_should_be_switches_the_lamp_off() -> None:
    target = DRAGON.basking_surface_c
    assert target is not None
    for cool, is_off in ((target.low - 0.1, False), (target.low, True), (target.low + 1.0, True)):
        steps = judge(Readings(cool_air_c=cool, lamp_on_h=3.0), DRAGON).steps
        assert (Step.SWITCH_LAMP_OFF in steps) is is_off
