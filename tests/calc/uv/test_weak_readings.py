"""A weak reading is as coarse as the meter's last digit; a contradiction is more than that."""

import pytest

from calc.uv.lamp import Fixture, Lamp, lamp_constant, uvi_at
from calc.uv.meter import Reading, fit_readings
from calc.uv.screen import NoScreen

LAMP = Lamp(12.0, Fixture.POLISHED)
WEAK = Lamp(2.0, Fixture.PLAIN)


def shown(lamp: Lamp, distances_m: tuple[float, ...], digit: int = 0) -> list[Reading]:
    """Return what a meter of one decimal shows under a lamp, so many digits off."""
    exact = (uvi_at(lamp, d, NoScreen()) for d in distances_m)
    told = (round(uvi, 1) + 0.1 * digit for uvi in exact)
    return [Reading(d, uvi) for d, uvi in zip(distances_m, told, strict=True)]


@pytest.mark.parametrize("distance_m", [0.6, 0.8, 1.0, 1.2])
@pytest.mark.parametrize("digit", [0, 1])
def test_rounding_of_a_weak_reading_is_no_contradiction(distance_m: float, digit: int) -> None:
    weak = shown(WEAK, (distance_m,), digit)[0]
    fit = fit_readings([*shown(WEAK, (0.2, 0.25, 0.3)), weak], WEAK)
    assert not fit.contradicts
    assert fit.set_aside is None
    assert fit.estimate.best == pytest.approx(lamp_constant(WEAK), rel=0.1)


@pytest.mark.parametrize(
    "read",
    [
        [(0.3, 2.0), (0.3, 8.0)],
        [(0.25, 6.0), (0.38, 6.2), (0.51, 7.0)],
        [(0.3, 0.2), (0.3, 4.2)],
        [(0.2, 4.0), (0.3, 4.0), (0.4, 4.0), (0.5, 4.0), (0.6, 4.0)],
    ],
)
def test_readings_that_no_tube_gives_contradict(read: list[tuple[float, float]]) -> None:
    assert fit_readings([Reading(*one) for one in read], LAMP).contradicts


def test_one_weak_reading_contradicts_nothing_but_says_little() -> None:
    fit = fit_readings([Reading(0.3, 0.1)], LAMP)
    assert not fit.contradicts
    assert fit.fit.factor > 1.5


def test_a_reading_far_too_low_among_good_ones_is_still_set_aside() -> None:
    good = shown(LAMP, (0.25, 0.3, 0.4))
    assert fit_readings([*good, Reading(0.3, 0.2)], LAMP).set_aside == 3


def test_many_scattered_readings_contradict_as_few_do() -> None:
    read = [Reading(0.3, uvi) for uvi in (2.0, 8.0) * 6]
    assert fit_readings(read, Lamp(12.0, Fixture.POLISHED)).contradicts
