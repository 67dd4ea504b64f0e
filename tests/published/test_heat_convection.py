"""Convection and radiation against ht, textbooks and CoolProp (sources in heat_convection.toml)."""

from typing import Any

import ht
import numpy as np
import pytest

from calc.heat.air import dry_air
from calc.heat.convection import (
    Correlation,
    film_coefficient,
    level_plate_length,
    nusselt,
    nusselt_mcadams_cold,
    nusselt_mcadams_hot,
    nusselt_vertical_churchill,
    rayleigh,
)
from calc.heat.radiation import net_exchange, radiation_coefficient
from tests.published.printed import half_digit, printed_table

TABLE = printed_table("heat_convection")
# The engine's air is a parabola through the table, good to 0.01 %; Ra carries it threefold.
AIR = 2e-4


def printed(text: str) -> Any:
    return pytest.approx(float(text), abs=half_digit(text), rel=AIR)


@pytest.mark.parametrize("grashof", np.geomspace(1e5, 1e10, 11).tolist())
@pytest.mark.parametrize("prandtl", [0.69, 0.7073])
def test_correlations_are_those_of_ht(prandtl: float, grashof: float) -> None:
    ra = prandtl * grashof
    up = ht.conv_free_immersed.Nu_horizontal_plate_McAdams(prandtl, grashof, buoyancy=True)
    down = ht.conv_free_immersed.Nu_horizontal_plate_McAdams(prandtl, grashof, buoyancy=False)
    wall = ht.conv_free_immersed.Nu_vertical_plate_Churchill(prandtl, grashof)
    assert nusselt(ra, prandtl, Correlation.HOT_SIDE_UP) == pytest.approx(up, rel=1e-12)
    assert nusselt(ra, prandtl, Correlation.HOT_SIDE_DOWN) == pytest.approx(down, rel=1e-12)
    assert nusselt(ra, prandtl, Correlation.VERTICAL) == pytest.approx(wall, rel=1e-12)


def test_correlations_give_the_values_in_the_documentation_of_ht() -> None:
    # ht 1.2.0, docstrings of Nu_horizontal_plate_McAdams (Pr 5.54, Gr 3.21e8).
    assert nusselt_mcadams_hot(5.54 * 3.21e8) == pytest.approx(181.73121274384457, rel=1e-12)
    assert nusselt_mcadams_cold(5.54 * 3.21e8) == pytest.approx(55.44564799362829, rel=1e-12)


def test_a_vertical_plate_is_the_textbook_example() -> None:
    (row,) = TABLE["bergman_9_2"]
    found = nusselt_vertical_churchill(row["prandtl"] * row["grashof"], row["prandtl"])
    assert found == pytest.approx(float(row["nu"]), abs=half_digit(row["nu"]))


def test_a_level_plate_is_the_textbook_example_on_both_sides() -> None:
    (row,) = TABLE["cengel_9_41"]
    per_nu = row["conductivity"] / row["length"]
    up, down = nusselt_mcadams_hot(row["rayleigh"]), nusselt_mcadams_cold(row["rayleigh"])
    for found, text in (
        (up, row["up_nu"]),
        (up * per_nu, row["up_h"]),
        (down, row["down_nu"]),
        (down * per_nu, row["down_h"]),
    ):
        assert found == pytest.approx(float(text), abs=2 * half_digit(text))
    assert level_plate_length(0.24, 0.20) == pytest.approx(row["length"], abs=5e-6)


@pytest.mark.parametrize("row", TABLE["air"], ids=lambda row: f"{row['c']} C")
def test_air_is_the_printed_air(row: dict[str, Any]) -> None:
    air = dry_air(float(row["c"]))
    assert air.conductivity_w_mk == printed(row["k"])
    if "nu_e5" in row:
        assert air.density_kg_m3 == printed(row["rho"])
        assert air.viscosity_m2_s * 1e5 == printed(row["nu_e5"])
        assert air.prandtl == printed(row["pr"])


@pytest.mark.parametrize(
    "row", TABLE["plates_up"], ids=lambda r: f"{r['ts']}/{r['ta']} {r['side']}"
)
def test_a_warm_stone_gives_the_printed_coefficients(row: dict[str, Any]) -> None:
    ts, ta = float(row["ts"]), float(row["ta"])
    length = level_plate_length(row["side"], row["side"])
    assert rayleigh(ts, ta, length) == printed(row["ra"])
    assert film_coefficient(ts, ta, length, Correlation.HOT_SIDE_UP) == printed(row["h"])
    assert radiation_coefficient(0.95, ts, ta) == printed(row["hr"])


@pytest.mark.parametrize("row", TABLE["walls"], ids=lambda r: f"{r['ts']}/{r['ta']} {r['height']}")
def test_a_warm_wall_gives_the_printed_coefficients(row: dict[str, Any]) -> None:
    ts, ta, height = float(row["ts"]), float(row["ta"]), row["height"]
    ra = rayleigh(ts, ta, height)
    prandtl = dry_air((ts + ta) / 2.0).prandtl
    assert ra == printed(row["ra"])
    assert nusselt_vertical_churchill(ra, prandtl) == printed(row["nu"])
    assert film_coefficient(ts, ta, height, Correlation.VERTICAL) == printed(row["h"])


@pytest.mark.parametrize(
    ("emissivity", "hot_k", "cold_k", "expected"),
    # ht 1.2.0, documentation of ht.radiation.q_rad.
    [(1.0, 400, 0, 1451.613952), (0.85, 400, 305, 816.7821722650002)],
)
def test_radiation_is_that_of_ht(
    emissivity: float, hot_k: int, cold_k: int, expected: float
) -> None:
    # ht carries the Stefan-Boltzmann constant of CODATA 2014, 1.3e-6 lower than the exact one.
    found = net_exchange(emissivity, hot_k - 273.15, cold_k - 273.15)
    assert found == pytest.approx(expected, rel=2e-6)
    assert found == pytest.approx(ht.radiation.q_rad(emissivity, hot_k, cold_k), rel=2e-6)
