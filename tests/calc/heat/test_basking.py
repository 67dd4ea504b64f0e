"""The lamp and its surface: balances that close, moves that come back, figures that only rise."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.heat.basking import (
    SCALINGS,
    DimmerVerdict,
    Reading,
    Scaling,
    dimmer_for,
    distance_for,
    surface_at,
    wattage_steps,
    watts_for,
)
from calc.heat.dimming import rerated_by_power, rerated_by_voltage
from calc.heat.guards import Guard, guards
from calc.heat.surface import Slab, heat_lost, steady_surface
from calc.heat.wattages import Family, next_smaller, next_step_up, steps_between, steps_sold
from calc.validity import OutsideModelError
from tests.some import some

AIRS = st.floats(15.0, 32.0)
RISES = st.floats(4.0, 40.0)
DISTANCES = st.floats(0.15, 0.8)
FEW = settings(max_examples=some(60), deadline=None)


@FEW
@given(
    flux=st.floats(0.0, 900.0),
    air=AIRS,
    side=st.floats(0.05, 0.40),
    emissivity=st.floats(0.6, 1.0),
    below=st.floats(0.0, 6.0),
)
def test_the_balance_closes(
    flux: float, air: float, side: float, emissivity: float, below: float
) -> None:
    slab = Slab(side, emissivity, below)
    surface = steady_surface(slab, flux, air)
    assert float(heat_lost(slab, surface, air, air)) == pytest.approx(flux, rel=1e-9, abs=1e-7)


@FEW
@given(flux=st.floats(10.0, 800.0), more=st.floats(1.01, 1.5), air=AIRS)
def test_more_heat_makes_a_hotter_surface_by_less_than_its_share(
    flux: float, more: float, air: float
) -> None:
    first, second = (steady_surface(Slab(), q, air) - air for q in (flux, more * flux))
    assert first < second < more * first


def test_a_slab_without_heat_is_as_warm_as_the_air() -> None:
    assert steady_surface(Slab(), 0.0, 22.0) == pytest.approx(22.0, abs=1e-9)


@FEW
@given(air=AIRS, rise=RISES, wanted=RISES, distance=DISTANCES)
def test_moving_the_lamp_and_measuring_again_finds_the_wanted_surface(
    air: float, rise: float, wanted: float, distance: float
) -> None:
    reading = Reading(air + rise, air, distance)
    for scaling in SCALINGS:
        moved = scaling.distance_m(reading, wanted)
        assert scaling.rise_k(reading, moved) == pytest.approx(wanted, rel=1e-9)
        assert scaling.rise_k(reading, distance, scaling.power(reading, wanted)) == pytest.approx(
            wanted, rel=1e-9
        )


@FEW
@given(air=AIRS, rise=RISES, distance=DISTANCES, step=st.floats(0.01, 0.2))
def test_farther_is_cooler_and_stronger_is_hotter(
    air: float, rise: float, distance: float, step: float
) -> None:
    reading = Reading(air + rise, air, distance)
    assert surface_at(reading, distance + step).high < reading.surface_c
    assert surface_at(reading, distance, 1.0 + step).low > reading.surface_c
    assert surface_at(reading, distance).best == pytest.approx(reading.surface_c)


@FEW
@given(air=AIRS, rise=st.floats(10.0, 30.0), less=st.floats(0.5, 0.95))
def test_the_far_end_is_the_careful_one_when_cooling_and_when_warming(
    air: float, rise: float, less: float
) -> None:
    hot, mild = Reading(air + rise, air, 0.30), Reading(air + less * rise, air, 0.30)
    for reading, wanted in ((hot, mild.surface_c), (mild, hot.surface_c)):
        found = distance_for(reading, wanted)
        for scaling in SCALINGS:
            assert scaling.rise_k(reading, found.high) <= wanted - air + 1e-9


def test_the_rise_counts_and_not_the_number_on_the_thermometer() -> None:
    # The same rise over other air needs the same move.
    cold, warm = Reading(40.0, 20.0, 0.3), Reading(50.0, 30.0, 0.3)
    assert distance_for(cold, 35.0) == distance_for(warm, 45.0)


def test_the_plain_inverse_square_is_one_end_of_the_range() -> None:
    found = distance_for(Reading(42.0, 22.0, 0.30), 27.0)
    assert found.low == pytest.approx(0.60)
    assert found.high > found.best > found.low


def test_a_surface_that_no_distance_gives_is_refused() -> None:
    with pytest.raises(OutsideModelError):
        distance_for(Reading(26.0, 22.0, 0.10), 60.0)


@pytest.mark.parametrize(
    ("surface", "air", "distance"), [(23.0, 22.0, 0.3), (20.0, 22.0, 0.3), (40.0, 22.0, 0.01)]
)
def test_a_reading_that_cannot_be_scaled_is_refused(
    surface: float, air: float, distance: float
) -> None:
    with pytest.raises(OutsideModelError):
        Reading(surface, air, distance)


def test_the_steps_sold_lie_on_both_sides_of_the_wanted_wattage() -> None:
    reading = Reading(42.0, 22.0, 0.30)
    wanted = watts_for(reading, 75.0, 39.0)
    low, high = wattage_steps(reading, 75.0, 39.0)
    assert low.watts <= wanted.best < high.watts
    assert low.surface_c.best <= 39.0 < high.surface_c.best


def test_a_dimmer_takes_off_a_fifth_at_most() -> None:
    reading = Reading(42.0, 22.0, 0.30)
    assert dimmer_for(reading, 40.0, watts=75.0).verdict is DimmerVerdict.WITHIN
    too_much = dimmer_for(reading, 34.0, watts=75.0)
    assert too_much.verdict is DimmerVerdict.TOO_MUCH
    assert too_much.smaller_w == 50.0
    assert dimmer_for(reading, 46.0).verdict is DimmerVerdict.BEYOND_FULL


def test_a_dimmer_that_is_turned_down_already_starts_from_there() -> None:
    reading = Reading(42.0, 22.0, 0.30)
    full, turned = dimmer_for(reading, 41.0), dimmer_for(reading, 41.0, setting=0.9)
    assert turned.setting.best == pytest.approx(0.9 * full.setting.best)


@FEW
@given(power=st.floats(0.2, 1.1))
def test_dimming_takes_more_light_than_heat_and_lengthens_life(power: float) -> None:
    lamp = rerated_by_power(power)
    assert lamp.power == pytest.approx(power)
    if power < 1.0:
        assert lamp.light < lamp.power < lamp.colour_temperature < 1.0 < lamp.life.low


@pytest.mark.parametrize("voltage", [0.0, 0.1, 1.5])
def test_a_voltage_beyond_the_exponents_is_refused(voltage: float) -> None:
    with pytest.raises(OutsideModelError):
        rerated_by_voltage(voltage)


def test_guards_trip_at_their_limits_and_not_before() -> None:
    assert guards() == ()
    assert guards(distance_m=0.3, safe_distance_m=0.3, watts=60.0, holder_mark_w=60.0) == ()
    assert guards(
        distance_m=0.29,
        safe_distance_m=0.3,
        watts=61.0,
        holder_mark_w=60.0,
        wood_surface_c=77.0,
        within_reach=True,
    ) == tuple(Guard)


def test_steps_sold_rise_and_are_found() -> None:
    for family in Family:
        assert list(steps_sold(family)) == sorted(set(steps_sold(family)))
    assert next_smaller(75.0) == 60.0
    assert next_smaller(25.0) is None
    assert next_step_up(61.0) == 75.0
    assert next_step_up(1000.0) is None
    assert steps_between(52.0, 58.0) == (50.0,)


def test_scalings_run_from_the_plain_law_to_the_softest() -> None:
    assert SCALINGS[0] == Scaling(1.0, 0.0)
    assert [s.exponent for s in SCALINGS] == sorted((s.exponent for s in SCALINGS), reverse=True)
