"""Weaves against worked examples, EnergyPlus and rays (sources in uv_screen.toml)."""

from math import radians, sqrt, tan
from typing import Any

import numpy as np
import pytest
from scipy.integrate import dblquad

from calc.uv.screen import Weave, open_area, ray_transmission, tube_transmission
from tests.published.printed import half_digit, printed_table

TABLE = printed_table("uv_screen")
INCH_M = 0.0254


def weave_of(gamma: float) -> Weave:
    return Weave(500.0, 500.0, gamma / 500.0)


@pytest.mark.parametrize("row", TABLE["open_area"], ids=lambda row: row["percent"])
def test_open_area_is_the_worked_example(row: dict[str, Any]) -> None:
    mesh = row["mesh_per_in"] / INCH_M
    percent = 100 * open_area(Weave(mesh, mesh, row["wire_in"] * INCH_M))
    assert percent == pytest.approx(float(row["percent"]), abs=half_digit("0.001"))


@pytest.mark.parametrize(
    "row", TABLE["angles"], ids=lambda row: f"{row['gamma']} {row['angle']} {row['plane']}"
)
def test_oblique_beams_are_the_ones_of_energyplus(row: dict[str, Any]) -> None:
    slope = tan(radians(row["angle"]))
    tans = (slope, 0.0) if row["plane"] == "plane" else (slope / sqrt(2), slope / sqrt(2))
    got = float(ray_transmission(weave_of(row["gamma"]), *tans))
    assert got == pytest.approx(float(row["expected"]), abs=half_digit(row["expected"]))


@pytest.mark.parametrize("row", TABLE["diffuse"], ids=lambda row: str(row["gamma"]))
def test_lambertian_light_passes_as_tabled(row: dict[str, Any]) -> None:
    # A quarter of the sky; with tangents p, q: cos²θ weighs dp dq/(1 + p² + q²)², total π/4.
    weave = weave_of(row["gamma"])
    limit = sqrt(1.0 / row["gamma"] ** 2 - 1.0)

    def part(p: float, q: float) -> float:
        return float(ray_transmission(weave, p, q)) / (1.0 + p * p + q * q) ** 2

    quarter = dblquad(part, 0.0, limit, 0.0, limit, epsabs=1e-8, epsrel=1e-7)[0]
    assert 4 * quarter / np.pi == pytest.approx(
        float(row["expected"]), abs=half_digit(row["expected"])
    )


def test_rays_thrown_at_a_weave_pass_as_often_as_computed() -> None:
    # Monte-Carlo: a ray passes when it misses the round wires of both layers.
    weave, rays = weave_of(0.2), 400_000
    along, across = 0.7, -0.4
    random = np.random.default_rng(20)
    hits = np.zeros(rays, dtype=bool)
    for slope in (along, across):
        place = random.uniform(-0.5, 0.5, rays)
        # Distance of the ray from the wire's axis in the plane square to the wire.
        hits |= np.abs(place) / np.sqrt(1.0 + slope**2) < 0.2 / 2.0
    passed = 1.0 - hits.mean()
    assert float(ray_transmission(weave, along, across)) == pytest.approx(passed, abs=0.004)


def test_rays_from_a_whole_tube_pass_as_often_as_computed() -> None:
    # Monte-Carlo: tube elements drawn by their share of the irradiance, wires at random phase.
    weave, height, lateral, length, offset = weave_of(0.162), 0.3, 0.12, 0.519, 0.2
    random = np.random.default_rng(5)
    u = random.uniform(-length / 2 - offset, length / 2 - offset, 400_000)
    weight = (height**2 + lateral**2 + u**2) ** -2.0
    passes = np.ones_like(u, dtype=bool)
    for slope in (u / height, np.full_like(u, lateral / height)):
        passes &= np.abs(random.uniform(-0.5, 0.5, u.size)) / np.sqrt(1 + slope**2) > 0.081
    passed = float(np.sum(weight * passes) / np.sum(weight))
    got = float(tube_transmission(weave, height, length, offset, lateral))
    assert got == pytest.approx(passed, abs=0.004)
