"""The line source against its table, quadrature and limits (sources in uv_tube.toml)."""

from math import atan, cos, inf, pi, sin, sqrt
from typing import Any

import numpy as np
import pytest
from scipy.integrate import dblquad, quad
from scipy.optimize import brentq

from calc.uv.tube import (
    axial_per_flux,
    far_field_per_flux,
    infinite_line_per_flux,
    line_shape,
    parallel_per_flux,
    tilted_per_flux,
)
from tests.published.printed import half_digit, printed_table

TABLE = printed_table("uv_tube")
TILTS = {"parallel": 0.0, "tilt 45": pi / 4, "axial": pi / 2}


def by_quadrature(distance: float, length: float, offset: float, tilt: float) -> float:
    """Sum the tube's elements, dI = sin φ dx / (π² L), as seen by a tilted receiver."""

    def element(u: float) -> float:
        ray = sqrt(distance**2 + u**2)
        cosine = max(0.0, (cos(tilt) * distance + sin(tilt) * u) / ray)
        return distance / ray / (pi**2 * length) * cosine / ray**2

    edges = (-length / 2 - offset, length / 2 - offset)
    kinks = [0.0] if edges[0] < 0.0 < edges[1] else None
    return float(quad(element, *edges, points=kinks, epsabs=0.0, epsrel=1e-12, limit=200)[0])


@pytest.mark.parametrize("row", TABLE["rows"], ids=lambda row: f"{row['expected']}")
def test_closed_forms_are_the_table(row: dict[str, Any]) -> None:
    where = (row["distance"], 1.0, row["offset"])
    tilt = TILTS[row["receiver"]]
    expected = pytest.approx(float(row["expected"]), abs=half_digit(row["expected"]))
    assert float(tilted_per_flux(*where, tilt)) == expected
    assert by_quadrature(*where, tilt) == expected
    if row["receiver"] == "parallel":
        assert float(parallel_per_flux(*where)) == expected
    if row["receiver"] == "axial":
        assert float(axial_per_flux(*where)) == expected


@pytest.mark.parametrize("row", TABLE["keitz"], ids=lambda row: row["expected"])
def test_the_keitz_formula_in_si_units(row: dict[str, Any]) -> None:
    # E = P (2α + sin 2α) / (2π² D L), tan α = L/2D: Keitz 1971.
    angle = atan(row["length"] / (2 * row["distance"]))
    printed_form = (
        row["flux"] * (2 * angle + sin(2 * angle)) / (2 * pi**2 * row["distance"] * row["length"])
    )
    got = row["flux"] * float(parallel_per_flux(row["distance"], row["length"]))
    assert got == pytest.approx(float(row["expected"]), abs=half_digit(row["expected"]))
    assert got == pytest.approx(printed_form, rel=1e-13)


@pytest.mark.parametrize("row", TABLE["inverse_square"], ids=lambda row: str(row["error"]))
def test_the_inverse_square_law_errs_where_the_table_says(row: dict[str, Any]) -> None:
    def excess(ratio: float) -> float:
        true = float(parallel_per_flux(ratio, 1.0))
        return 1.0 - true / float(far_field_per_flux(ratio)) - float(row["error"])

    assert brentq(excess, 0.5, 10.0, xtol=1e-9) == pytest.approx(
        float(row["ratio"]), abs=half_digit(row["ratio"])
    )


@pytest.mark.parametrize(
    ("ratio", "expected"),
    [(1.0, 0.86364761), (2.0, 0.96054556), (4.0, 0.98972767), (10.0, 0.99833707)],
)
def test_the_far_field_is_approached_as_tabled(ratio: float, expected: float) -> None:
    got = float(parallel_per_flux(ratio, 1.0)) / float(far_field_per_flux(ratio))
    assert got == pytest.approx(expected, abs=5e-9)


@pytest.mark.parametrize(
    ("ratio", "expected"),
    [(0.05, 0.99958063), (0.1, 0.99676096), (0.2, 0.97728618), (0.3, 0.93681993)],
)
def test_the_infinite_line_is_approached_as_tabled(ratio: float, expected: float) -> None:
    got = float(parallel_per_flux(ratio, 1.0)) / float(infinite_line_per_flux(ratio, 1.0))
    assert got == pytest.approx(expected, abs=5e-9)


@pytest.mark.parametrize(("distance", "percent"), [(0.1, 0.057), (0.2, 0.19), (0.3, 0.33)])
def test_a_real_tube_16_mm_thick_differs_by_a_fraction_of_a_per_cent(
    distance: float, percent: float
) -> None:
    # Lambertian cylinder of radius 8 mm and length 1 m, summed over the half that is seen.
    radius, length = 0.008, 1.0

    def element(x: float, angle: float) -> float:
        height, side = distance - radius * cos(angle), radius * sin(angle)
        squared = height**2 + side**2 + x**2
        leaving = cos(angle) * height - sin(angle) * side
        return max(0.0, leaving) * height / squared**2

    seen = np.arccos(radius / distance)
    half = dblquad(element, 0.0, seen, 0.0, length / 2, epsrel=1e-8)[0]
    flux_density = 1.0 / (2 * pi * radius * length)
    cylinder = 4 * half * radius * flux_density / pi
    line = float(parallel_per_flux(distance, length))
    assert 100 * (cylinder / line - 1) == pytest.approx(percent, abs=0.006)


def test_the_flux_through_a_surrounding_cylinder_is_the_flux_of_the_tube() -> None:
    # Wall of an endless cylinder: everything that leaves the tube passes it.
    radius, length = 0.3, 0.519

    def ring(z: float) -> float:
        return float(parallel_per_flux(radius, length, z)) * 2 * pi * radius

    assert quad(ring, -inf, inf, epsrel=1e-10)[0] == pytest.approx(1.0, rel=1e-8)


def test_the_flux_through_a_surrounding_sphere_is_the_flux_of_the_tube() -> None:
    radius, length = 0.7, 0.519

    def belt(polar: float) -> float:
        distance, along = radius * sin(polar), radius * cos(polar)
        # A receiver on the sphere, facing its middle.
        facing = float(tilted_per_flux(distance, length, along, polar - pi / 2))
        return facing * 2 * pi * radius**2 * sin(polar)

    assert quad(belt, 0.0, pi, epsrel=1e-10)[0] == pytest.approx(1.0, rel=1e-8)


def test_the_shape_under_the_middle_is_the_keitz_form() -> None:
    angle = atan(0.519 / 0.8)
    assert line_shape(0.4, 0.519) == pytest.approx(
        (angle + sin(angle) * cos(angle)) / 0.4, rel=1e-14
    )
