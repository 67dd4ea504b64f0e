"""The documented ranges of the ultraviolet engine: both ends hold, beyond them it says why not."""

from math import inf, pi

import numpy as np
import pytest

from calc.shape.line import axial_per_flux, line_shape, parallel_per_flux, tilted_per_flux
from calc.uncertainty import Doubt
from calc.uv.choice import tube_length_for
from calc.uv.decline import DatedReading, decline_of
from calc.uv.dose import clear_sky_uvi, safe_time, sun_day
from calc.uv.erythema import erythemal_weight
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lamp import Fixture, Lamp, OwnConstant, uvi_at
from calc.uv.meter import Reading, fit_readings, screen_from_readings
from calc.uv.patches import patches
from calc.uv.placement import check_range
from calc.uv.screen import FlatScreen, NoScreen, Weave, tube_transmission
from calc.uv.section import Box, Cut, HungTube, section_map
from calc.validity import OutsideModelError
from tests.calc.refused import Range, assert_ends_hold, assert_refused_beyond

YEAR_S = 365.25 * 86_400.0
LAMP = Lamp(12.0, Fixture.POLISHED)
BOX = Box(1.2, 0.6, 0.9)
TUBE = HungTube(LAMP, 0.3, 0.2, 0.85, NoScreen())
LOW = Platform(0.15, 0.45, 0.1, 0.4, 0.0)
WEAVE = Weave(700.0, 600.0, 0.0003)
READ = [DatedReading(0.0, 5.0), DatedReading(30.0, 4.0)]


def over(platform: Platform, back_m: float = 0.05) -> object:
    return patches([TUBE], BOX, platform, back_m, 3.0, 5.0)


def mapped(across: int, up: int) -> object:
    return section_map([TUBE], BOX, Cut.SIDE, 0.2, across, up)


RANGES = [
    Range(tube_length_for, "enclosure length", 0.3, 4.0, "m"),
    Range(lambda x: DatedReading(0.0, x), "UV index read", 0.05, 100.0, ""),
    Range(lambda x: decline_of(READ, x), "low end of the UV index", 0.0, 20.0, "", open_low=True),
    Range(lambda x: clear_sky_uvi(x, 300.0), "cosine of the zenith angle", -1.0, 1.0, ""),
    Range(lambda x: clear_sky_uvi(0.5, x), "ozone column", 150.0, 600.0, "DU"),
    Range(lambda x: sun_day(x, 6), "latitude", -90.0, 90.0, "degree"),
    Range(lambda x: sun_day(40.0, int(x)), "month", 1, 12, "", step=1),
    Range(safe_time, "UV index", 0.0, 100.0, "", open_low=True),
    Range(erythemal_weight, "wavelength", 250.0, inf, "nm"),
    Range(lambda x: Lamp(x, Fixture.PLAIN), "tube strength", 1.0, 20.0, "%"),
    Range(lambda x: Lamp(12.0, Fixture.PLAIN, x), "lit length", 0.1, 1.6, "m"),
    Range(lambda x: Lamp(12.0, Fixture.PLAIN, 0.5, x), "age", 0.0, 100.0 * YEAR_S, "s", step=1),
    Range(
        lambda x: OwnConstant(x, Doubt("read", 1.1, "memory")),
        "lamp constant",
        0.0,
        100.0,
        "UVI m",
        open_low=True,
        open_high=True,
    ),
    Range(lambda x: uvi_at(LAMP, x, NoScreen()), "distance", 0.05, 3.0, "m"),
    Range(lambda x: Reading(x, 4.0), "distance", 0.05, 3.0, "m"),
    Range(lambda x: Reading(0.3, x), "UV index read", 0.05, 100.0, ""),
    Range(lambda x: HeatPatch(0.3, 0.3, x), "radius of the heat patch", 0.01, 1.0, "m"),
    Range(lambda x: over(LOW, x), "height of the back", 0.0, 0.5, "m"),
    Range(FlatScreen, "screen transmission", 0.0, 1.0, "", open_low=True),
    Range(lambda x: tube_transmission(WEAVE, x, 0.5), "tube height", 0.0, inf, "m", True),
    Range(lambda x: axial_per_flux(x, 0.5), "distance", 0.0, inf, "m", open_low=True),
    Range(lambda x: axial_per_flux(0.5, x), "lit length", 0.0, inf, "m", open_low=True),
    Range(lambda x: parallel_per_flux(x, 0.5), "distance", 0.0, inf, "m", open_low=True),
    Range(lambda x: parallel_per_flux(0.5, x), "lit length", 0.0, inf, "m", open_low=True),
    Range(lambda x: line_shape(x, 0.5), "distance", 0.0, inf, "m", open_low=True),
    Range(lambda x: tilted_per_flux(0.5, 0.5, 0.0, x), "tilt", -pi / 2, pi / 2, "rad"),
    Range(lambda x: Box(x, 0.6, 0.9), "enclosure length", 0.1, 4.0, "m"),
    Range(lambda x: Box(1.2, x, 0.9), "enclosure depth", 0.1, 4.0, "m"),
    Range(lambda x: Box(1.2, 0.6, x), "enclosure height", 0.1, 4.0, "m"),
    Range(lambda x: mapped(int(x), 5), "points across", 2, 2000, "", step=1),
    Range(lambda x: mapped(5, int(x)), "points up", 2, 2000, "", step=1),
]


@pytest.mark.parametrize("given", RANGES, ids=str)
def test_the_documented_ends_hold(given: Range) -> None:
    assert_ends_hold(given)


@pytest.mark.parametrize("given", RANGES, ids=str)
def test_beyond_the_ends_the_refusal_tells_quantity_value_range_and_unit(given: Range) -> None:
    assert_refused_beyond(given)


def test_a_weave_may_not_close_in_either_direction() -> None:
    for along, across, name in (
        (1000.0, 500.0, "wire over pitch along the tube"),
        (500.0, 1000.0, "wire over pitch across the tube"),
    ):
        with pytest.raises(OutsideModelError) as caught:
            Weave(along, across, 0.001)
        assert (caught.value.name, caught.value.value) == (name, 1.0)
        assert (caught.value.low, caught.value.high, caught.value.unit) == (0.0, 1.0, "")


@pytest.mark.parametrize(
    ("platform", "name", "value", "high"),
    [
        (Platform(0.15, 1.3, 0.1, 0.4, 0.3), "end of the platform", 1.3, 1.2),
        (Platform(0.15, 0.45, 0.1, 0.7, 0.3), "front of the platform", 0.7, 0.6),
        (Platform(0.15, 0.45, 0.1, 0.4, 1.0), "top of the platform", 1.0, 0.9),
        (Platform(0.15, 0.45, 0.1, 0.4, -0.1), "top of the platform", -0.1, 0.9),
    ],
)
def test_a_platform_must_lie_in_the_box(
    platform: Platform, name: str, value: float, high: float
) -> None:
    with pytest.raises(OutsideModelError) as caught:
        over(platform)
    assert (caught.value.name, caught.value.value) == (name, value)
    assert (caught.value.low, caught.value.high, caught.value.unit) == (0.0, high, "m")


@pytest.mark.parametrize(
    ("ends", "name"),
    [((0.4, 0.3, 0.1, 0.2), "platform length"), ((0.1, 0.2, 0.5, 0.4), "platform depth")],
)
def test_a_platform_must_have_an_extent(ends: tuple[float, float, float, float], name: str) -> None:
    with pytest.raises(OutsideModelError) as caught:
        Platform(*ends, 0.3)
    assert (caught.value.name, caught.value.unit) == (name, "m")
    assert caught.value.value == pytest.approx(-0.1)
    assert (caught.value.low, caught.value.high) == (0.0, inf)


def test_a_back_in_the_tube_is_refused() -> None:
    with pytest.raises(OutsideModelError) as caught:
        over(Platform(0.15, 0.45, 0.1, 0.4, 0.8))
    assert caught.value.name == "distance from a tube to the back"
    assert (caught.value.low, caught.value.high, caught.value.unit) == (0.05, 3.0, "m")


def test_the_range_wanted_must_be_in_order_and_below_twenty() -> None:
    check_range(3.0, 3.0)
    check_range(0.0, 20.0)
    for low, high, name, ends in (
        (5.0, 3.0, "low end of the UV index", (0.0, 3.0)),
        (-0.1, 3.0, "low end of the UV index", (0.0, 3.0)),
        (3.0, 20.1, "high end of the UV index", (0.0, 20.0)),
    ):
        with pytest.raises(OutsideModelError) as caught:
            check_range(low, high)
        assert (caught.value.name, caught.value.low, caught.value.high) == (name, *ends)
        assert caught.value.unit == ""


def test_there_are_limits_to_how_many() -> None:
    for call, name, most in (
        (lambda n: fit_readings([Reading(0.3, 4.0)] * n, LAMP), "number of readings", 50),
        (
            lambda n: decline_of([DatedReading(i, 4.0) for i in range(n)], 3.0),
            "number of readings",
            200,
        ),
        (lambda n: section_map([TUBE] * n, BOX, Cut.SIDE, 0.2, 3, 3), "number of tubes", 4),
    ):
        assert call(1)
        assert call(most)
        for wrong in (0, most + 1):
            with pytest.raises(OutsideModelError) as caught:
                call(wrong)
            assert (caught.value.name, caught.value.value) == (name, wrong)
            assert (caught.value.low, caught.value.high, caught.value.unit) == (1, most, "")


def test_a_screen_cannot_add() -> None:
    bare, more = [Reading(0.3, 4.0)], [Reading(0.3, 8.0)]
    with pytest.raises(OutsideModelError) as caught:
        screen_from_readings(bare, more, LAMP)
    assert (caught.value.name, caught.value.unit) == ("screen transmission", "")
    assert caught.value.value == pytest.approx(2.0, rel=0.02)
    assert (caught.value.low, caught.value.high) == (0.0, 1.0)


def test_one_wrong_value_among_many_is_the_one_told() -> None:
    with pytest.raises(OutsideModelError) as caught:
        erythemal_weight(np.array([300.0, 240.0, 400.0]))
    assert caught.value.value == 240.0
    with pytest.raises(OutsideModelError) as caught:
        uvi_at(LAMP, np.array([0.3, 3.5]), NoScreen())
    assert caught.value.value == 3.5
