"""The lamp: what scales it, and how far it may be off."""

from dataclasses import replace

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.sources import bibliography
from calc.uncertainty import Doubt
from calc.uv.lamp import (
    AgeBand,
    Fixture,
    Lamp,
    OwnConstant,
    age_band,
    lamp_constant,
    uvi_at,
)
from calc.uv.lamp_unknowns import Cause, unknowns_of, uvi_estimate
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave
from calc.validity import OutsideModelError

LAMP = Lamp(12.0, Fixture.POLISHED)
OWN = OwnConstant(2.4, Doubt(Cause.READINGS, 1.08, "common_practice"))
INSECT = Weave(18 / 0.0254, 16 / 0.0254, 0.011 * 0.0254)
DAY_S = 86_400.0
SCREENS: tuple[Screen, ...] = (NoScreen(), FlatScreen(0.55), INSECT)


def test_half_the_strength_is_half_the_uvi() -> None:
    weak = replace(LAMP, strength_percent=6.0)
    assert uvi_at(weak, 0.3, INSECT) == pytest.approx(uvi_at(LAMP, 0.3, INSECT) / 2)


def test_a_longer_tube_of_the_class_gives_more_but_never_in_proportion() -> None:
    short, long = (uvi_at(replace(LAMP, lit_length_m=m), 0.4, NoScreen()) for m in (0.5, 1.0))
    assert short < long < 2.0 * short


@pytest.mark.parametrize("screen", SCREENS)
def test_uvi_falls_all_the_way(screen: Screen) -> None:
    uvi = uvi_at(LAMP, np.linspace(0.05, 3.0, 400), screen)
    assert np.all(np.diff(uvi) < 0.0)
    assert uvi[100] == pytest.approx(uvi_at(LAMP, float(np.linspace(0.05, 3.0, 400)[100]), screen))


@given(st.floats(0.05, 3.0), st.sampled_from(SCREENS))
def test_the_range_holds_the_best_value(distance: float, screen: Screen) -> None:
    estimate = uvi_estimate(LAMP, distance, screen)
    assert estimate.low < estimate.best < estimate.high
    assert estimate.best == pytest.approx(uvi_at(LAMP, distance, screen))


@pytest.mark.parametrize("distance", [0.04, 3.01, float("nan"), float("inf")])
def test_a_distance_outside_the_model_is_refused(distance: float) -> None:
    with pytest.raises(OutsideModelError):
        uvi_at(LAMP, distance, NoScreen())
    with pytest.raises(OutsideModelError):
        uvi_at(LAMP, np.array([0.3, distance]), NoScreen())


@pytest.mark.parametrize(
    "change",
    [{"strength_percent": 0.5}, {"strength_percent": 40.0}, {"lit_length_m": 2.0}, {"age_s": -1.0}],
)
def test_a_lamp_outside_the_class_is_refused(change: dict[str, float]) -> None:
    with pytest.raises(OutsideModelError):
        replace(LAMP, **change)  # type: ignore[arg-type]


def test_a_lamp_with_readings_answers_from_them_alone() -> None:
    own = replace(LAMP, own=OWN)
    assert lamp_constant(own) == 2.4
    assert lamp_constant(replace(own, fixture=Fixture.PLAIN, strength_percent=6.0)) == 2.4
    assert causes(own, 0.3, INSECT) == {Cause.READINGS, Cause.TAPE, Cause.SCREEN}


def causes(lamp: Lamp, distance_m: float, screen: Screen) -> set[str]:
    return {effect.unknown.name for effect in unknowns_of(lamp, distance_m, screen).effects}


def test_readings_narrow_the_range() -> None:
    own = replace(LAMP, own=OWN)
    wide, narrow = (uvi_estimate(lamp, 0.4, NoScreen()) for lamp in (LAMP, own))
    assert narrow.high / narrow.low < 0.6 * wide.high / wide.low


@pytest.mark.parametrize(
    ("age_s", "band"),
    [
        (None, AgeBand.UNKNOWN),
        (0.0, AgeBand.BURNING_IN),
        (8 * DAY_S, AgeBand.BURNING_IN),
        (9 * DAY_S, AgeBand.SETTLED),
        (180 * DAY_S, AgeBand.SETTLED),
        (200 * DAY_S, AgeBand.AGEING),
        (400 * DAY_S, AgeBand.OLD),
    ],
)
def test_ages_fall_into_bands(age_s: float | None, band: AgeBand) -> None:
    assert age_band(age_s) is band


def test_age_lowers_and_burn_in_raises_but_neither_moves_the_best_value() -> None:
    new, settled, old = (
        uvi_estimate(replace(LAMP, age_s=days * DAY_S), 0.4, NoScreen()) for days in (1, 90, 500)
    )
    assert new.best == settled.best == old.best
    assert old.low < settled.low < new.low
    assert new.high > settled.high >= old.high >= old.best


@pytest.mark.parametrize("screen", SCREENS)
@pytest.mark.parametrize("age_s", [None, 0.0, 90 * DAY_S, 300 * DAY_S, 500 * DAY_S])
@pytest.mark.parametrize("strength", [2.0, 12.0])
def test_every_doubt_has_a_source(strength: float, age_s: float | None, screen: Screen) -> None:
    lamp = Lamp(strength, Fixture.PLAIN, age_s=age_s)
    assert set(unknowns_of(lamp, 0.3, screen).sources) <= set(bibliography())


def test_a_strength_outside_the_fit_is_doubted_more() -> None:
    assert Cause.LABEL in causes(Lamp(14.0, Fixture.POLISHED), 0.4, NoScreen())
    assert Cause.LABEL not in causes(LAMP, 0.4, NoScreen())


def test_a_centimetre_matters_more_close_by() -> None:
    def tape(distance: float) -> float:
        effects = unknowns_of(LAMP, distance, NoScreen()).effects
        return next(e.ends[1] for e in effects if e.unknown.name == Cause.TAPE)

    assert tape(0.15) > tape(0.3) > tape(0.9) > 1.0
