"""Walls, lids and infrared readings against worked values (sources in heat_air.toml)."""

from typing import Any

import ht
import numpy as np
import pytest
from scipy.optimize import brentq

from calc.heat.air import dry_air
from calc.heat.convection import Correlation, film_coefficient
from calc.heat.enclosure import (
    INDOOR_FILM_W_M2K,
    Enclosure,
    Lid,
    Material,
    level_opening_flow,
    stack_flow,
    wall_transmittance,
)
from calc.heat.radiation import radiation_coefficient
from calc.heat.tables import table
from calc.heat.thermometer import reading_shown, surface_behind
from tests.published.printed import half_digit, printed_table

TABLE = printed_table("heat_air")


def printed(text: str) -> Any:
    return pytest.approx(float(text), abs=half_digit(text))


@pytest.mark.parametrize("row", TABLE["walls"], ids=lambda row: row["what"])
def test_a_wall_between_two_rooms_loses_the_printed_heat(row: dict[str, Any]) -> None:
    assert wall_transmittance(row["thickness"], row["k"]) == printed(row["u"])


@pytest.mark.parametrize(
    ("material", "row_of_ht"),
    # EN 12524:2000 as carried by ht 1.2.0.
    [
        ("glass", "Glass, soda lime"),
        ("pvc", "Plastics, Polyvinylchloride (PVC)"),
        ("wood", "Wood, plywood 500 kg/m^3"),
    ],
)
def test_conductivities_are_those_of_the_standard(material: str, row_of_ht: str) -> None:
    _, conductivity, _ = ht.insulation.building_materials[row_of_ht]
    assert table("walls")[material]["conductivity_w_mk"] == conductivity


@pytest.mark.parametrize("row", TABLE["boxes"], ids=lambda row: row["material"])
def test_a_closed_box_loses_the_printed_heat(row: dict[str, Any]) -> None:
    size = row["length"], row["depth"], row["height"]
    box = Enclosure(*size, Material[row["material"]], Lid.SOLID)
    assert box.conductance_w_k() == printed(row["ua"])


@pytest.mark.parametrize("row", TABLE["open_lids"], ids=lambda r: f"{r['material']} {r['open']}")
def test_an_open_lid_adds_the_printed_heat(row: dict[str, Any]) -> None:
    box = Enclosure(1.2, 0.6, 0.6, Material[row["material"]], Lid.SOLID)
    walls = table("walls")[row["material"].lower()]
    roof = wall_transmittance(walls["thickness_m"], walls["conductivity_w_mk"])
    air = dry_air(22.0)
    for rise, text in ((5.0, row["five"]), (10.0, row["ten"])):
        flow = level_opening_flow(row["open"], 22.0 + rise, 22.0)
        carried = flow * air.density_kg_m3 * air.heat_capacity_j_kgk * rise
        found = (box.conductance_w_k() - roof * row["open"]) * rise + carried
        assert found == pytest.approx(float(text), rel=0.01, abs=0.5)


def test_a_smaller_glass_box_with_a_mesh_lid_needs_the_printed_heat() -> None:
    # 90 x 45 x 45 cm, 0.10 m² of free mesh, 10 K over 22 °C: 70 W and 29 W, by hand.
    box = Enclosure(0.9, 0.45, 0.45, Material.GLASS, Lid.SOLID)
    roof = wall_transmittance(0.006, 1.0)
    air = dry_air(22.0)
    flow = level_opening_flow(0.10, 32.0, 22.0)
    assert (box.conductance_w_k() - 0.10 * roof) * 10.0 == pytest.approx(70.0, abs=0.6)
    assert flow * air.density_kg_m3 * air.heat_capacity_j_kgk * 10.0 == printed("29")


def test_two_vents_draw_the_printed_air() -> None:
    # ASHRAE Fundamentals 1997, p. 25.13, eq. 37, with a coefficient of 0.65, by hand:
    # two openings of 0.01 m², 0.5 m apart, 10 K: 2.61 L/s.
    assert 1000.0 * stack_flow(0.01, 0.5, 32.0, 22.0) == printed("2.61")


def test_the_indoor_film_is_that_of_standards_and_correlations() -> None:
    # ISO 6946: Rsi 0.13; a state energy code: 0.68 h ft² °F/Btu; Churchill and Chu with
    # radiation, wall 0.45 m high at 30 °C in a room of 22 °C: 3.195 + 0.9 * 6.07.
    assert pytest.approx(1.0 / 0.13, rel=0.08) == INDOOR_FILM_W_M2K
    assert pytest.approx(5.678263 / 0.68, rel=0.01) == INDOOR_FILM_W_M2K
    warm_wall = film_coefficient(30.0, 22.0, 0.45, Correlation.VERTICAL)
    warm_wall += radiation_coefficient(0.90, 30.0, 22.0)
    assert warm_wall == pytest.approx(INDOOR_FILM_W_M2K, rel=0.05)


@pytest.mark.parametrize("row", TABLE["infrared"], ids=lambda r: f"{r['shown']} {r['emissivity']}")
def test_a_reading_is_corrected_as_printed(row: dict[str, Any]) -> None:
    found = surface_behind(float(row["shown"]), 0.95, row["emissivity"], float(row["mirrored"]))
    assert found == printed(row["fourth"])
    if "planck" in row:
        assert found == pytest.approx(float(row["planck"]), abs=0.1 + half_digit(row["planck"]))


def test_what_a_thermometer_shows_is_the_printed_reading() -> None:
    # True 45.0 °C, emissivity 0.85, mirrored 25 °C, set to 0.95: shows 43.05 over 8 to 14 µm.
    assert reading_shown(45.0, 0.95, 0.85, 25.0) == pytest.approx(43.05, abs=0.1)


def in_band(temperature_c: float) -> float:
    """Return black-body radiance from 8 to 14 µm by ht's Planck function."""
    waves = np.linspace(8e-6, 14e-6, 601)
    kelvin = temperature_c + 273.15
    radiance = [ht.radiation.blackbody_spectral_radiance(kelvin, wave) for wave in waves]
    return float(np.trapezoid(radiance, waves))


@pytest.mark.parametrize("emissivity", [0.97, 0.90, 0.85, 0.75, 0.67])
def test_the_fourth_power_stands_for_the_band(emissivity: float) -> None:
    seen = 0.95 * in_band(40.0) + (emissivity - 0.95) * in_band(22.0)
    true_c = brentq(lambda c: emissivity * in_band(c) - seen, 20.0, 60.0, xtol=1e-6)
    assert surface_behind(40.0, 0.95, emissivity, 22.0) == pytest.approx(true_c, abs=0.12)
