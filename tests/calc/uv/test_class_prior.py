"""A lamp's class beside its readings: it counts where they are weak, and leaves good ones alone."""

from dataclasses import replace
from math import exp, log, sqrt

import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.uncertainty import Doubt
from calc.uv.class_prior import lamp_with_class, with_class
from calc.uv.lamp import Fixture, Lamp, OwnConstant, lamp_constant, of_length
from calc.uv.lamp_unknowns import class_spread
from calc.uv.lengths import length_of_tube
from calc.uv.meter import Reading, fit_readings
from calc.uv.screen import FlatScreen
from calc.uv.shapes import lamp_by_readings

NAMED = Lamp(12.0, Fixture.POLISHED)


def read(constant: float, factor: float) -> OwnConstant:
    return OwnConstant(constant, Doubt("readings", factor, "uv_meter_judgement"))


@given(st.floats(0.3, 6.0), st.floats(1.05, 2.0), st.sampled_from(Fixture))
def test_it_lies_between_class_and_readings_and_is_never_less_sure(
    constant: float, factor: float, fixture: Fixture
) -> None:
    named = replace(NAMED, fixture=fixture)
    found = with_class(read(constant, factor), named)
    of_class = lamp_constant(named) * exp(class_spread(named).mean)
    low, high = sorted((constant, of_class))
    assert low * (1.0 - 1e-9) <= found.constant_uvi_m <= high * (1.0 + 1e-9)
    assert found.doubt.factor <= factor * (1.0 + 1e-9)


def test_what_a_careful_reading_leaves_open_is_not_weighed_again() -> None:
    """Exact: beyond that, within one deviation, it is the product of two normals."""
    spread = class_spread(NAMED)
    before = log(lamp_constant(NAMED)) + spread.mean
    found = with_class(read(exp(before + 0.05), 1.4), NAMED)
    careful = (log(1.10) ** 2 + log(1.15) ** 2) / 1.645**2
    beyond = (log(1.4) / 1.645) ** 2 - careful
    both = 1.0 / (1.0 / beyond + 1.0 / spread.variance)
    assert log(found.doubt.factor) == pytest.approx(1.645 * sqrt(careful + both))
    assert log(found.constant_uvi_m) == pytest.approx(before + 0.05 * both / beyond)


def test_a_class_weighs_the_less_the_more_deviations_it_lies_away() -> None:
    """By hand: at three deviations its variance counts nine times."""
    spread = class_spread(NAMED)
    before = log(lamp_constant(NAMED)) + spread.mean
    variance = (log(1.4) / 1.645) ** 2
    off = 3.0 * sqrt(variance + spread.variance)
    beyond = variance - (log(1.10) ** 2 + log(1.15) ** 2) / 1.645**2
    share = beyond / (beyond + 9.0 * spread.variance)
    found = with_class(read(exp(before - off), 1.4), NAMED)
    assert log(found.constant_uvi_m) == pytest.approx(before - off + share * off)


def test_a_careful_reading_outdoes_its_class() -> None:
    fit = fit_readings([Reading(0.3048, 4.2)], NAMED)
    assert isinstance(fit.own, OwnConstant)
    assert with_class(fit.own, NAMED) == fit.own


def test_weak_readings_lean_on_the_class_the_more_the_weaker_they_are() -> None:
    shifts = [with_class(read(1.2, f), NAMED).constant_uvi_m for f in (1.1, 1.25, 1.4, 1.8)]
    assert shifts == sorted(shifts)
    assert shifts[0] == 1.2 < shifts[1]


def test_a_lamp_unlike_its_class_is_believed_by_its_readings() -> None:
    strong = with_class(read(6.0, 1.3), NAMED)
    assert strong.constant_uvi_m > 6.0 * 0.97
    assert strong.doubt.factor == pytest.approx(1.3, rel=0.02)


def test_every_length_has_its_own_class_and_a_screen_stays_in_the_readings() -> None:
    lamp = of_length(NAMED, length_of_tube())
    readings = [Reading(0.9, 0.3, FlatScreen(0.55))]
    by_readings = lamp_by_readings(readings, lamp, fit_readings(readings, lamp))
    found = lamp_with_class(by_readings, lamp)
    assert len(found.may_be) == len(lamp.may_be)
    for one, alone in zip((found, *found.may_be), (by_readings, *by_readings.may_be), strict=True):
        assert isinstance(one.own, OwnConstant)
        assert isinstance(alone.own, OwnConstant)
        assert one.own.through == alone.own.through
        assert one.own == with_class(alone.own, replace(NAMED, lit_length_m=one.lit_length_m))
        assert one.own != alone.own
