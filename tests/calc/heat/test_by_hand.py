"""Figures worked by hand from the formulas the engine says it uses: exact to their last digit.

They prove the arithmetic and not the model; what proves the model stands in tests/published and
tests/reference.
"""

from math import sqrt

import pytest

from calc.heat.air import dry_air
from calc.heat.basking import Reading, Scaling
from calc.heat.dimming import rerated_by_power, rerated_by_voltage
from calc.heat.enclosure import (
    Enclosure,
    Lid,
    Material,
    level_opening_flow,
    stack_flow,
    wall_transmittance,
)
from calc.heat.tables import table
from calc.heat.thermometer import surface_behind
from tests.published.printed import printed


def test_the_parabolas_meet_every_row_of_the_table_of_air() -> None:
    rows = table("air")
    for row, celsius in enumerate(rows["temperature_c"]):
        air = dry_air(float(celsius))
        for found, column, scale in (
            (air.density_kg_m3, "density_kg_m3", 1.0),
            (air.heat_capacity_j_kgk, "heat_capacity_j_kgk", 1.0),
            (air.conductivity_w_mk, "conductivity_w_mk", 1.0),
            (air.viscosity_m2_s, "viscosity_e5_m2_s", 1e-5),
            (air.prandtl, "prandtl", 1.0),
        ):
            assert found == pytest.approx(rows[column][row] * scale, rel=1e-4), column


@pytest.mark.parametrize(
    ("what", "thickness", "conductivity", "transmittance"),
    # 1/(2/8.29 + t/k), with the conductivities of EN 12524.
    [
        ("glass 4 mm", 0.004, 1.0, "4.08"),
        ("glass 6 mm", 0.006, 1.0, "4.04"),
        ("plywood 18 mm", 0.018, 0.13, "2.63"),
        ("melamine 18 mm", 0.018, 0.14, "2.70"),
        ("PVC 10 mm", 0.010, 0.17, "3.33"),
        ("acrylic 5 mm", 0.005, 0.20, "3.76"),
    ],
)
def test_a_wall_between_two_films(
    what: str, thickness: float, conductivity: float, transmittance: str
) -> None:
    assert wall_transmittance(thickness, conductivity) == printed(transmittance), what


@pytest.mark.parametrize(("material", "ua"), [(Material.WOOD, "9.7"), (Material.GLASS, "13.1")])
def test_a_closed_box_of_120_by_60_by_60_cm(material: Material, ua: str) -> None:
    assert Enclosure(1.2, 0.6, 0.6, material, Lid.SOLID).conductance_w_k() == printed(ua)


@pytest.mark.parametrize(
    ("material", "open_m2", "watts"),
    # Over a room of 22 °C by 5 and 10 K, Q = 0.055 sqrt(g dT/T) D^2.5.
    [
        (Material.WOOD, 0.09, (56, 119)),
        (Material.WOOD, 0.18, (67, 152)),
        (Material.WOOD, 0.36, (94, 229)),
        (Material.GLASS, 0.09, (73, 152)),
        (Material.GLASS, 0.18, (83, 183)),
        (Material.GLASS, 0.36, (109, 258)),
    ],
)
def test_an_open_lid_adds_heat(material: Material, open_m2: float, watts: tuple[int, int]) -> None:
    box = Enclosure(1.2, 0.6, 0.6, material, Lid.SOLID)
    walls = table("walls")[material.value]
    roof = wall_transmittance(walls["thickness_m"], walls["conductivity_w_mk"])
    air = dry_air(22.0)
    for rise, wanted in zip((5.0, 10.0), watts, strict=True):
        flow = level_opening_flow(open_m2, 22.0 + rise, 22.0)
        carried = flow * air.density_kg_m3 * air.heat_capacity_j_kgk * rise
        found = (box.conductance_w_k() - roof * open_m2) * rise + carried
        assert found == pytest.approx(wanted, rel=0.01, abs=0.5)


def test_two_vents_draw_air() -> None:
    # Two openings of 0.01 m², 0.5 m apart, 10 K, coefficient 0.65.
    assert 1000.0 * stack_flow(0.01, 0.5, 32.0, 22.0) == printed("2.61")


@pytest.mark.parametrize(
    ("shown", "emissivity", "mirrored", "true_c"),
    # ((0.95 Ti⁴ + (ε - 0.95) Tr⁴) / ε)^(1/4) in kelvin.
    [
        (40.0, 0.90, 22.0, "40.91"),
        (40.0, 0.85, 22.0, "41.92"),
        (40.0, 0.75, 22.0, "44.31"),
        (40.0, 0.67, 22.0, "46.68"),
        (40.0, 0.97, 22.0, "39.66"),
        (50.0, 0.85, 25.0, "52.59"),
        (40.0, 0.85, 35.0, "40.57"),
    ],
)
def test_an_infrared_reading_corrected(
    shown: float, emissivity: float, mirrored: float, true_c: str
) -> None:
    assert surface_behind(shown, 0.95, emissivity, mirrored) == printed(true_c)


@pytest.mark.parametrize(
    ("away_cm", "rise", "wanted", "exponent", "offset_cm", "moved_cm"),
    [
        (30, 20, 15, 1.0, 0, "34.6"),
        (30, 20, 15, 1.0, 6, "35.6"),
        (30, 20, 15, 0.85, 0, "35.5"),
        (30, 20, 15, 0.85, 6, "36.6"),
        (30, 20, 15, 0.85, 10, "37.4"),
        (25, 24, 14, 1.0, 0, "32.7"),
        (25, 24, 14, 0.85, 6, "36.6"),
    ],
)
def test_a_moved_lamp(
    away_cm: int, rise: int, wanted: int, exponent: float, offset_cm: int, moved_cm: str
) -> None:
    reading = Reading(26.0 + rise, 26.0, away_cm / 100.0)
    found = Scaling(exponent, offset_cm / 100.0).distance_m(reading, float(wanted))
    assert found * 100.0 == printed(moved_cm)


def test_the_ratio_of_thermometer_degrees_is_the_wrong_one() -> None:
    # 50 to 40 °C at 25 cm over air at 26 °C: the ratio of degrees gives 28.0 cm, the rise 32.7.
    assert 25.0 * sqrt(50.0 / 40.0) == printed("28.0")
    right = 100.0 * Scaling(1.0, 0.0).distance_m(Reading(50.0, 26.0, 0.25), 14.0)
    assert right == printed("32.7")


@pytest.mark.parametrize(("exponent", "rise"), [(1.0, "16.0"), (0.85, "16.5")])
def test_a_smaller_lamp(exponent: float, rise: str) -> None:
    # 20 K by 75 W, with 60 W: 20 (60/75)^p.
    reading = Reading(42.0, 22.0, 0.30)
    assert Scaling(exponent, 0.0).rise_k(reading, 0.30, 60.0 / 75.0) == printed(rise)


@pytest.mark.parametrize(
    ("volts", "rated", "light", "power"),
    [(110, 120, "0.744", "0.870"), (120, 130, "0.762", "0.880")],
)
def test_a_lamp_off_its_voltage(volts: int, rated: int, light: str, power: str) -> None:
    # Light V^3.4, power V^1.6: the exponents are printed (lamp_rerating), the products are not.
    lamp = rerated_by_voltage(volts / rated)
    assert lamp.light == printed(light)
    assert lamp.power == printed(power)
    assert rerated_by_power(lamp.power).light == pytest.approx(lamp.light, rel=1e-12)
    if rated == 120:
        assert lamp.life.best == printed("3.10")
        assert lamp.colour_temperature == printed("0.964")
