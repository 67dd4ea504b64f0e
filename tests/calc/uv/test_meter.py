"""Readings become a lamp: round trips, wild readings, patterns."""

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.shape.line import parallel_per_flux
from calc.sources import bibliography
from calc.uncertainty import Doubt
from calc.uv.lamp import Fixture, Lamp, OwnConstant, lamp_constant, uvi_at
from calc.uv.meter import METER_DOUBT, Reading, fit_readings, screen_from_readings
from calc.uv.residuals import Pattern, Suspect
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave, tube_transmission
from calc.validity import OutsideModelError
from tests.some import some

LAMP = Lamp(12.0, Fixture.POLISHED)
INSECT = Weave(18 / 0.0254, 16 / 0.0254, 0.011 * 0.0254)
SCREENS: tuple[Screen, ...] = (NoScreen(), FlatScreen(0.55), INSECT)
FIVE = np.array([0.25, 0.3, 0.4, 0.5, 0.6])


def own_lamp(constant: float, length: float = 0.519) -> Lamp:
    return Lamp(
        12.0, Fixture.POLISHED, length, own=OwnConstant(constant, Doubt("own", 1.0, "memory"))
    )


def read(lamp: Lamp, distances: np.ndarray, screen: Screen = SCREENS[0]) -> list[Reading]:
    return [Reading(float(d), float(uvi_at(lamp, float(d), screen)), screen) for d in distances]


@given(
    st.floats(0.8, 4.0),
    st.floats(0.3, 1.4),
    st.lists(st.floats(0.15, 0.8), min_size=1, max_size=6),
    st.sampled_from(SCREENS),
)
@settings(max_examples=some(60), deadline=None)
def test_perfect_readings_give_their_lamp_back(
    constant: float, length: float, distances: list[float], screen: Screen
) -> None:
    lamp = own_lamp(constant, length)
    fit = fit_readings(read(lamp, np.array(distances), screen), lamp)
    assert fit.estimate.best == pytest.approx(constant, rel=1e-9)
    assert fit.set_aside is None
    assert fit.pattern in (Pattern.CONSISTENT, Pattern.TOO_FEW)
    assert fit.ratios == pytest.approx([1.0] * len(distances))


def test_more_readings_narrow_the_fit_but_never_below_the_meter() -> None:
    one = fit_readings(read(LAMP, FIVE[:1]), LAMP)
    five = fit_readings(read(LAMP, FIVE), LAMP)
    assert 1.0 < five.fit.factor < one.fit.factor
    assert five.own.doubt.factor > METER_DOUBT.factor


def test_readings_that_disagree_widen_the_doubt() -> None:
    agree = fit_readings([Reading(0.3, 5.0), Reading(0.3, 5.1)], LAMP)
    disagree = fit_readings([Reading(0.3, 3.0), Reading(0.3, 6.0)], LAMP)
    assert disagree.fit.factor > 1.5 > 1.1 > agree.fit.factor
    assert disagree.set_aside is None


@pytest.mark.parametrize("wild", range(5))
@pytest.mark.parametrize(
    ("factor", "suspect"), [(0.5, Suspect.NOT_FACING), (2.0, Suspect.OTHER_LAMP)]
)
def test_one_wild_reading_is_set_aside_and_named(
    wild: int, factor: float, suspect: Suspect
) -> None:
    readings = read(LAMP, FIVE)
    readings[wild] = Reading(readings[wild].distance_m, readings[wild].uvi * factor)
    fit = fit_readings(readings, LAMP)
    assert fit.set_aside == wild
    assert fit.estimate.best == pytest.approx(lamp_constant(LAMP), rel=1e-9)
    assert fit.ratios[wild] == pytest.approx(factor)
    assert suspect in fit.suspects


def test_small_noise_sets_nothing_aside() -> None:
    random = np.random.default_rng(7)
    for _ in range(20):
        readings = [
            Reading(r.distance_m, r.uvi * float(np.exp(random.normal(0.0, 0.04))))
            for r in read(LAMP, FIVE)
        ]
        assert fit_readings(readings, LAMP).set_aside is None


def test_the_fit_holds_the_truth_about_nine_times_in_ten() -> None:
    random = np.random.default_rng(11)
    held = 0
    for _ in range(300):
        readings = [
            Reading(r.distance_m, r.uvi * float(np.exp(random.normal(0.0, 0.05))))
            for r in read(LAMP, FIVE)
        ]
        fit = fit_readings(readings, LAMP)
        off = fit.estimate.best / lamp_constant(LAMP)
        held += 1.0 / fit.fit.factor <= off <= fit.fit.factor
    assert 0.85 <= held / 300 <= 0.99


def test_readings_under_the_end_of_the_tube_look_low_close_by() -> None:
    # Read 0.35 m beside the middle of the tube, facing up.
    shape = np.pi**2 * 0.519 * parallel_per_flux(FIVE, 0.519, 0.35)
    fit = fit_readings(
        [Reading(float(d), float(1.78 * g)) for d, g in zip(FIVE, shape, strict=True)], LAMP
    )
    assert fit.pattern is Pattern.NEAR_LOW
    assert Suspect.OFF_AXIS in fit.suspects
    assert fit.set_aside is None


def test_another_lamp_in_the_reading_looks_high_far_away() -> None:
    readings = [Reading(r.distance_m, r.uvi + 1.5) for r in read(LAMP, FIVE)]
    fit = fit_readings(readings, LAMP)
    assert fit.pattern is Pattern.NEAR_LOW
    assert Suspect.OTHER_LAMP in fit.suspects


def test_a_shorter_tube_than_given_looks_high_close_by() -> None:
    fit = fit_readings(read(own_lamp(4.0, 0.15), FIVE), Lamp(12.0, Fixture.POLISHED, 1.4))
    assert fit.pattern is Pattern.NEAR_HIGH
    assert Suspect.TUBE_LENGTH in fit.suspects


def test_a_tube_that_warms_up_rises_in_the_order_read() -> None:
    warming = [0.75, 0.82, 0.9, 0.97, 1.02]
    readings = [Reading(0.4, 4.5 * w) for w in warming]
    assert fit_readings(readings, LAMP).pattern is Pattern.RISING
    assert fit_readings(readings, LAMP).suspects[0] is Suspect.WARM_UP


def test_two_readings_show_no_pattern() -> None:
    assert fit_readings(read(LAMP, FIVE[:2]), LAMP).pattern is Pattern.TOO_FEW


def test_the_constant_is_set_against_the_class_named() -> None:
    weak = fit_readings(read(own_lamp(0.89), FIVE), LAMP)
    assert weak.against_class == pytest.approx(0.5)
    plain = fit_readings(read(own_lamp(0.89), FIVE), Lamp(12.0, Fixture.PLAIN))
    assert plain.against_class == pytest.approx(0.5 / 0.7)


def test_readings_through_a_screen_keep_the_doubt_of_the_screen() -> None:
    bare, screened = (fit_readings(read(LAMP, FIVE, s), LAMP) for s in (NoScreen(), INSECT))
    assert screened.own.doubt.factor > bare.own.doubt.factor
    assert screened.own.doubt.source in bibliography()


@pytest.mark.parametrize("distance", [0.2, 0.3, 0.5])
def test_a_pair_at_one_distance_gives_the_screen(distance: float) -> None:
    bare, screened = (read(LAMP, np.array([distance]), s)[0] for s in (NoScreen(), INSECT))
    passed = screen_from_readings([bare], [screened], LAMP)
    assert passed.best == pytest.approx(float(tube_transmission(INSECT, distance, 0.519)))
    assert passed.low < passed.best < passed.high <= 1.0


def test_several_readings_each_way_narrow_the_screen() -> None:
    few, many = (
        screen_from_readings(read(LAMP, d), read(LAMP, d, FlatScreen(0.55)), LAMP)
        for d in (FIVE[:1], FIVE)
    )
    assert many.best == pytest.approx(few.best) == pytest.approx(0.55)
    assert many.high / many.low < few.high / few.low


def test_a_pair_at_two_distances_gives_the_screen_too() -> None:
    passed = screen_from_readings(
        read(LAMP, np.array([0.3])), read(LAMP, np.array([0.4]), FlatScreen(0.55)), LAMP
    )
    assert passed.best == pytest.approx(0.55)


def test_a_screen_that_adds_light_is_refused_but_noise_is_not() -> None:
    with pytest.raises(OutsideModelError):
        screen_from_readings([Reading(0.3, 3.0)], [Reading(0.3, 6.0)], LAMP)
    assert screen_from_readings([Reading(0.3, 5.0)], [Reading(0.3, 5.1)], LAMP).best == 1.0


@pytest.mark.parametrize(("distance", "uvi"), [(0.01, 3.0), (4.0, 3.0), (0.3, 0.0), (0.3, -1.0)])
def test_a_reading_outside_the_model_is_refused(distance: float, uvi: float) -> None:
    with pytest.raises(OutsideModelError):
        Reading(distance, uvi)


def test_no_readings_are_refused() -> None:
    with pytest.raises(OutsideModelError):
        fit_readings([], LAMP)
