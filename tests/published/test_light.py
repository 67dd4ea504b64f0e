"""Lamps and skies against published figures of visible light (sources in light.toml)."""

from math import cos, pi, radians, sin
from typing import Any

import pytest

from calc.light.illuminance import flux_of
from calc.light.kinds import light_kind
from calc.light.outdoors import sun_lux
from calc.shape.beam import all_round_per_flux, beam_per_flux, flat_top_per_flux
from calc.shape.flat import bar_per_flux, panel_per_flux
from tests.published.printed import half_digit, printed, printed_table

TABLE = printed_table("light")


def test_a_lamp_all_round_lights_as_in_the_textbook() -> None:
    (row,) = TABLE["all_round"]
    angle = radians(row["angle_deg"])
    height, aside = row["away_m"] * cos(angle), row["away_m"] * sin(angle)
    assert row["lumens"] * float(all_round_per_flux(height, aside)) == printed(row["lux"])


@pytest.mark.parametrize("row", TABLE["small_lamp"], ids=lambda row: row["lux"])
def test_a_small_lamp_lights_a_place_aside_as_solved(row: dict[str, Any]) -> None:
    lumens = row["below_lx"] / float(all_round_per_flux(row["height_m"]))
    assert lumens / (4.0 * pi) == printed(row["candela"])
    aside = float(all_round_per_flux(row["height_m"], row["aside_m"]))
    assert lumens * aside == printed(row["lux"])


@pytest.mark.parametrize("row", TABLE["even_beam"], ids=lambda row: row["lumens"])
def test_an_even_beam_has_the_lumens_of_the_converter(row: dict[str, Any]) -> None:
    # At one metre on the axis lux are candela.
    assert row["candela"] / float(flat_top_per_flux(1.0, 0.0, row["beam_deg"])) == printed(
        row["lumens"]
    )


@pytest.mark.parametrize("name", ["tube", "bulb"])
def test_the_lumens_of_a_kind_hold_those_that_are_printed(name: str) -> None:
    (row,) = TABLE[name]
    watts = row["watts"] if isinstance(row["watts"], list) else [row["watts"]]
    lumens = row["lumens"] if isinstance(row["lumens"], list) else [row["lumens"]]
    for power, told in zip(watts, lumens, strict=True):
        flux = flux_of(light_kind(row["kind"]), None, power)
        assert flux is not None
        assert flux.low <= float(told) <= flux.high


def test_twilight_is_as_bright_as_the_glossary_says() -> None:
    (row,) = TABLE["twilight"]
    for sun, least, most in zip(row["sun_deg"], row["least"], row["most"], strict=True):
        assert float(least) <= sun_lux(sun) <= float(most)


def test_late_twilight_is_as_bright_as_the_glossary_says() -> None:
    (row,) = TABLE["night"]
    for sun, told in zip(row["sun_deg"], row["lux"], strict=True):
        assert sun_lux(sun) == pytest.approx(float(told), abs=half_digit(told))


def test_bar_and_panel_are_points_within_one_per_cent_from_five_times_on() -> None:
    (row,) = TABLE["five_times"]
    away = row["times"]
    small = float(beam_per_flux(away, 0.0, 120.0))
    for found in (bar_per_flux(away, 1.0), panel_per_flux(away, 0.7, 0.7)):
        assert 1.0 - float(row["error"]) * 1.1 <= float(found) / small < 1.0
