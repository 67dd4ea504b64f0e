"""Brightness of lamps: sums, symmetry, doubts, refusals, and what is not known."""

from itertools import pairwise

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.animals import animals
from calc.light.bands import Brightness, LightLife, bands_of, brightness_of, life_of
from calc.light.illuminance import (
    Cause,
    HungLight,
    Light,
    flux_of,
    light_doubts,
    lux_at,
    lux_field,
    total_lux,
)
from calc.light.kinds import Emits, LampUv, light_kind, light_kinds
from calc.light.outdoors import noon_outdoors, outdoors, overcast_lux, shade_lux, sun_lux
from calc.light.plants import PlantLight, day_sum, plant_class, plant_photons
from calc.light.readings import LuxMeter, lux_read
from calc.uncertainty import Estimate, combined_factor
from calc.uv.lamp import Fixture, Lamp
from calc.uv.screen import FlatScreen, NoScreen, Weave
from calc.uv.section import HungTube, uvi_field
from tests.calc.refused import Range, assert_ends_hold, assert_refused_beyond
from tests.some import some


def lamp(slug: str, lumens: float = 2000.0, beam_deg: float | None = None) -> Light:
    flux = flux_of(light_kind(slug), lumens, None)
    assert flux is not None
    kind = light_kind(slug)
    return Light(kind, flux, by_watts=False, length_m=0.55, width_m=0.3, beam_deg=beam_deg)


def below(light: Light, height: float, x: float = 0.0, y: float = 0.0) -> float:
    return float(lux_field([HungLight(light, 0.0, 0.0, height, NoScreen())], x, y, 0.0))


@pytest.mark.parametrize("slug", light_kinds())
def test_twice_the_lumens_give_twice_the_light_and_two_lamps_add(slug: str) -> None:
    one, two = below(lamp(slug, 1000.0), 0.4, 0.1, 0.05), below(lamp(slug, 2000.0), 0.4, 0.1, 0.05)
    assert two == pytest.approx(2.0 * one, rel=1e-12)
    hung = HungLight(lamp(slug, 1000.0), 0.0, 0.0, 0.4, NoScreen())
    assert float(lux_field([hung, hung], 0.1, 0.05, 0.0)) == pytest.approx(two, rel=1e-12)


@pytest.mark.parametrize("slug", light_kinds())
@given(st.floats(0.1, 1.5), st.floats(-1.0, 1.0), st.floats(-0.6, 0.6))
@settings(max_examples=some(20), deadline=None)
def test_no_place_beside_is_brighter_than_below_and_both_sides_are_alike(
    slug: str, height: float, x: float, y: float
) -> None:
    middle, beside = below(lamp(slug), height), below(lamp(slug), height, x, y)
    assert beside <= middle * (1.0 + 1e-9)
    assert below(lamp(slug), height, -x, -y) == pytest.approx(beside, rel=1e-9)


@pytest.mark.parametrize("slug", light_kinds())
def test_it_gets_darker_farther_below(slug: str) -> None:
    found = [below(lamp(slug), height / 10.0) for height in range(1, 20)]
    assert all(nearer > farther for nearer, farther in pairwise(found))


def test_above_a_lamp_there_is_none_of_its_light() -> None:
    hung = HungLight(lamp("led-bar"), 0.0, 0.0, 0.4, NoScreen())
    assert float(lux_field([hung], 0.0, 0.0, 0.5)) == 0.0


def test_a_screen_takes_its_share_and_a_weave_more_of_slanting_light() -> None:
    bar = lamp("led-bar")
    open_lx = below(bar, 0.4, 0.3)
    half = HungLight(bar, 0.0, 0.0, 0.4, FlatScreen(0.5))
    assert float(lux_field([half], 0.3, 0.0, 0.0)) == pytest.approx(0.5 * open_lx, rel=1e-9)
    weave = HungLight(bar, 0.0, 0.0, 0.4, Weave(700.0, 700.0, 0.00023))
    straight = float(lux_field([weave], 0.0, 0.0, 0.0)) / below(bar, 0.4)
    slanting = float(lux_field([weave], 0.3, 0.0, 0.0)) / open_lx
    assert 0.0 < slanting < straight < 1.0


def test_the_doubt_is_least_for_a_bar_with_its_lumens_and_grows_with_what_is_not_told() -> None:
    told = combined_factor(light_doubts(lamp("led-bar")))
    beam = combined_factor(light_doubts(lamp("led-flood", beam_deg=60.0)))
    untold = combined_factor(light_doubts(lamp("led-flood")))
    # The combined factors of a bare bar and of a spot, as they were judged beforehand.
    assert told == pytest.approx(1.25, abs=0.02)
    assert beam == pytest.approx(1.49, abs=0.03)
    assert untold > beam
    flux = flux_of(light_kind("led-bar"), None, 20.0)
    assert flux is not None
    by_watts = Light(light_kind("led-bar"), flux, by_watts=True, length_m=0.55)
    causes = {doubt.name for doubt in light_doubts(by_watts)}
    assert Cause.WATTS in causes
    assert Cause.LABEL not in causes
    assert combined_factor(light_doubts(by_watts)) > told


def test_lux_has_its_doubt_around_it() -> None:
    hung = HungLight(lamp("led-bar"), 0.0, 0.0, 0.4, NoScreen())
    found = lux_at(hung, 0.0, 0.0, 0.0)
    factor = combined_factor(light_doubts(hung.light))
    assert found.high / found.best == pytest.approx(factor)
    assert found.best / found.low == pytest.approx(factor)


def test_lamps_add_and_their_doubts_partly_cancel() -> None:
    one = Estimate(80.0, 100.0, 130.0)
    both = total_lux([one, one])
    assert both.best == 200.0
    assert both.high - both.best == pytest.approx(30.0 * 2**0.5)
    assert both.best - both.low == pytest.approx(20.0 * 2**0.5)


def test_no_lamp_sold_for_light_is_taken_for_a_uv_lamp() -> None:
    for kind in light_kinds().values():
        if kind.slug.startswith("led"):
            assert kind.uv is LampUv.NONE
    assert light_kind("uv-tube").lm_per_w is None
    assert flux_of(light_kind("uv-tube"), None, 39.0) is None
    assert light_kind("led-bar").emits is Emits.BAR


def test_the_sky_gets_brighter_with_the_sun_and_shade_is_darker_than_sun() -> None:
    heights = [5.0, 10.0, 20.0, 30.0, 45.0, 60.0, 75.0, 90.0]
    for law in (sun_lux, shade_lux, overcast_lux):
        found = [law(height) for height in heights]
        assert all(low < high for low, high in pairwise(found))
    for height in heights[1:]:
        assert shade_lux(height) < sun_lux(height)
        assert overcast_lux(height) < sun_lux(height)
    assert sun_lux(-30.0) == 0.0
    # Neighbouring rows of the polynomial meet within a percent or two.
    for join in (20.0, 5.0, -0.8, -5.0, -12.0):
        assert sun_lux(join) == pytest.approx(sun_lux(join - 1e-9), rel=0.02)


def test_noon_follows_latitude_and_month() -> None:
    summer, winter = noon_outdoors(52.0, 6), noon_outdoors(52.0, 12)
    assert summer is not None
    assert winter is not None
    assert winter.sun_lx.best < summer.sun_lx.best < outdoors(90.0).sun_lx.best
    south = noon_outdoors(-52.0, 12)
    assert south is not None
    assert south.sun_lx.best == pytest.approx(summer.sun_lx.best, rel=0.01)
    assert noon_outdoors(80.0, 12) is None


def test_a_phone_is_worth_less_than_a_meter() -> None:
    meter, phone = lux_read(1000.0, LuxMeter.METER), lux_read(1000.0, LuxMeter.PHONE)
    assert phone.low < meter.low < 1000.0 < meter.high < phone.high


def test_a_days_sum_and_its_classes() -> None:
    # 12 hours of white LED light at 70 lx per umol: 9720 lx make 6 mol/m²/d.
    ppfd = plant_photons(Estimate.exact(9720.0), Estimate.exact(70.0)).best
    assert day_sum(ppfd, 12.0) == pytest.approx(6.0, abs=0.005)
    sums = (2.9, 3.0, 5.9, 6.0, 11.9, 12.0)
    assert [plant_class(value) for value in sums] == [
        PlantLight.HARDLY_ANY,
        PlantLight.LOW,
        PlantLight.LOW,
        PlantLight.MEDIUM,
        PlantLight.MEDIUM,
        PlantLight.HIGH,
    ]


def test_every_known_way_of_life_has_its_light_and_the_night_asks_no_bright_spot() -> None:
    lives = {slug: life_of(animal) for slug, animal in animals().items()}
    assert lives["bearded-dragon"] is LightLife.SUN
    assert lives["leopard-gecko"] is LightLife.NIGHT
    assert bands_of(LightLife.NIGHT) is None
    for life in (LightLife.SUN, LightLife.PART_SUN, LightLife.FOREST):
        bands = bands_of(life)
        assert bands is not None
        assert bands.dim.spot_lx < bands.fair.spot_lx < bands.bright.spot_lx
        for band in (bands.dim, bands.fair, bands.bright):
            assert band.retreat_lx < band.half_lx <= band.spot_lx / 2


def test_a_word_for_brightness_is_as_wide_as_its_doubt() -> None:
    bands = bands_of(LightLife.SUN)
    assert bands is not None
    told = brightness_of(Estimate(1000.0, 4000.0, 30_000.0), bands)
    assert told == (Brightness.DIM, Brightness.BRIGHT)


BAR, SPOT = light_kind("led-bar"), light_kind("led-flood")
RANGES = [
    Range(lambda x: flux_of(BAR, x, None), "lumens", 20.0, 60_000.0, "lm"),
    Range(lambda x: flux_of(BAR, None, x), "lamp watts", 1.0, 1000.0, "W"),
    Range(
        lambda x: lux_at(HungLight(lamp("led-bar"), 0.0, 0.0, x, NoScreen()), 0.0, 0.0, 0.0),
        "distance",
        0.05,
        3.0,
        "m",
    ),
    Range(sun_lux, "height of the sun", -90.0, 90.0, "degrees"),
    Range(shade_lux, "height of the sun", 0.0, 90.0, "degrees"),
    Range(overcast_lux, "height of the sun", 0.0, 90.0, "degrees"),
    Range(lambda x: noon_outdoors(x, 6), "latitude", -90.0, 90.0, "degrees"),
    Range(lambda x: lux_read(x, LuxMeter.METER), "illuminance", 0.0, 200_000.0, "lx"),
    Range(lambda x: day_sum(x, 12.0), "plant photons", 0.0, 3000.0, "umol/m²/s"),
    Range(lambda x: day_sum(100.0, x), "hours of light", 0.0, 24.0, "h"),
]


@pytest.mark.parametrize("given", RANGES, ids=str)
def test_documented_ends_hold_and_beyond_them_it_is_refused(given: Range) -> None:
    assert_ends_hold(given)
    assert_refused_beyond(given)


def test_nothing_brighter_than_the_sun_is_worked_out() -> None:
    spot = HungLight(lamp("led-flood", 50_000.0), 0.0, 0.0, 0.2, NoScreen())
    with pytest.raises(ValueError, match="illuminance"):
        lux_at(spot, 0.0, 0.0, 0.0)
    assert SPOT.beam_deg == 60.0


@given(
    st.floats(0.1, 1.5),
    st.floats(0.08, 1.5),
    st.lists(st.tuples(st.floats(-1.0, 1.0), st.floats(-0.6, 0.6)), min_size=2, max_size=6),
    st.floats(0.1, 1.0),
)
def test_light_and_ultraviolet_of_a_bare_tube_fall_off_by_one_law(
    length: float, height: float, places: list[tuple[float, float]], passes: float
) -> None:
    screen = FlatScreen(passes)
    tube = HungTube(Lamp(12.0, Fixture.PLAIN, lit_length_m=length), 0.0, 0.0, height, screen)
    white = Light(light_kind("white-tube"), Estimate.exact(2000.0), by_watts=False, length_m=length)
    hung = HungLight(white, 0.0, 0.0, height, screen)
    x, y = np.array(places).T
    ratio = uvi_field([tube], x, y, 0.0) / lux_field([hung], x, y, 0.0)
    assert ratio == pytest.approx(np.full(len(places), ratio[0]), rel=1e-9)
