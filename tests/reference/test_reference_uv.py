"""Tubes, weaves and spectra against quadrature, thrown rays and pvlib, asked live."""

from math import atan, cos, inf, pi, radians, sin, sqrt, tan

import numpy as np
import pytest
from numpy.typing import NDArray
from pvlib.solarposition import declination_cooper69
from pvlib.spectrum import get_reference_spectra
from scipy.integrate import dblquad, quad

from calc.shape.line import (
    axial_per_flux,
    far_field_per_flux,
    infinite_line_per_flux,
    line_shape,
    parallel_per_flux,
    tilted_per_flux,
)
from calc.uncertainty import combined_factor
from calc.uv.dose import SUN_DOUBTS, clear_sky_uvi, declination_rad
from calc.uv.erythema import Variant, erythemal_weight, uv_index_of_spectrum
from calc.uv.screen import Weave, ray_transmission, tube_transmission
from calc.uv.vitamin_d import vitamin_d_per_erythema, vitamin_d_weight

Array = NDArray[np.float64]


def by_quadrature(distance: float, length: float, offset: float, tilt: float) -> float:
    """Sum the tube's elements, dI = sin φ dx / (π² L), as seen by a tilted receiver."""

    def element(u: float) -> float:
        ray = sqrt(distance**2 + u**2)
        cosine = max(0.0, (cos(tilt) * distance + sin(tilt) * u) / ray)
        return distance / ray / (pi**2 * length) * cosine / ray**2

    edges = (-length / 2 - offset, length / 2 - offset)
    kinks = [0.0] if edges[0] < 0.0 < edges[1] else None
    return float(quad(element, *edges, points=kinks, epsabs=0.0, epsrel=1e-12, limit=200)[0])


@pytest.mark.parametrize("tilt", [0.0, pi / 4, pi / 2], ids=["parallel", "45", "axial"])
@pytest.mark.parametrize("offset", [0.0, 0.25, 0.5, -0.75, 1.0])
@pytest.mark.parametrize("distance", [0.25, 0.5, 1.0, 2.0, 10.0])
def test_closed_forms_are_the_sum_of_the_elements(
    distance: float, offset: float, tilt: float
) -> None:
    summed = pytest.approx(by_quadrature(distance, 1.0, offset, tilt), rel=1e-9, abs=1e-13)
    assert float(tilted_per_flux(distance, 1.0, offset, tilt)) == summed
    if tilt == 0.0:
        assert float(parallel_per_flux(distance, 1.0, offset)) == summed
    if tilt == pi / 2:
        assert float(axial_per_flux(distance, 1.0, offset)) == summed


@pytest.mark.parametrize(
    ("length", "distance"), [(0.549, 0.30), (0.849, 0.30), (1.149, 0.30), (1.0, 1.0)]
)
def test_under_the_middle_it_is_the_formula_of_keitz(length: float, distance: float) -> None:
    # E = P (2α + sin 2α) / (2π² D L), tan α = L/2D: Keitz 1971, as quoted in the proceedings
    # of the IOA World Congress, Los Angeles 2007, part 1.
    angle = atan(length / (2 * distance))
    keitz = (2 * angle + sin(2 * angle)) / (2 * pi**2 * distance * length)
    assert float(parallel_per_flux(distance, length)) == pytest.approx(keitz, rel=1e-13)
    assert line_shape(distance, length) == pytest.approx(
        (angle + sin(angle) * cos(angle)) / distance, rel=1e-14
    )


def test_far_away_the_error_of_the_inverse_square_is_a_sixth_of_the_ratio_squared() -> None:
    # From the series of arctan: E = P/(π² D²) (1 - (L/D)²/6 + ...).
    for ratio in (10.0, 20.0, 40.0):
        share = float(parallel_per_flux(ratio, 1.0)) / float(far_field_per_flux(ratio))
        assert (1.0 - share) * 6.0 * ratio**2 == pytest.approx(1.0, abs=1.0 / ratio**2)


def test_close_by_it_is_an_endless_line() -> None:
    for ratio in (0.01, 0.03, 0.1):
        share = float(parallel_per_flux(ratio, 1.0)) / float(infinite_line_per_flux(ratio, 1.0))
        assert 0.0 < 1.0 - share < 4.0 * ratio**3


@pytest.mark.parametrize("distance", [0.1, 0.2, 0.3])
def test_a_real_tube_16_mm_thick_differs_by_less_than_half_a_per_cent(distance: float) -> None:
    # Lambertian cylinder of radius 8 mm and length 1 m, summed over the half that is seen.
    radius, length = 0.008, 1.0

    def element(x: float, angle: float) -> float:
        height, side = distance - radius * cos(angle), radius * sin(angle)
        squared = height**2 + side**2 + x**2
        leaving = cos(angle) * height - sin(angle) * side
        return max(0.0, leaving) * height / squared**2

    seen = np.arccos(radius / distance)
    half = dblquad(element, 0.0, seen, 0.0, length / 2, epsrel=1e-8)[0]
    cylinder = 4 * half * radius / (2 * pi * radius * length) / pi
    assert 0.0 < cylinder / float(parallel_per_flux(distance, length)) - 1.0 < 0.005


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


def weave_of(gamma: float) -> Weave:
    return Weave(500.0, 500.0, gamma / 500.0)


def thrown(gamma: float, slopes: tuple[float, float], rays: int, seed: int) -> float:
    """Return the share of rays that miss the round wires of both layers, in three dimensions.

    A ray goes straight through a layer of wires of one pitch apart; it is stopped where it comes
    nearer to the axis of a wire than the wire's radius, by the vector product.
    """
    random = np.random.default_rng(seed)
    ray = np.array([slopes[0], slopes[1], 1.0])
    stopped = np.zeros(rays, dtype=bool)
    for axis, across in ((np.array([0.0, 1.0, 0.0]), 0), (np.array([1.0, 0.0, 0.0]), 1)):
        square = np.cross(ray, axis)
        start = np.zeros((rays, 3))
        start[:, across] = random.uniform(-0.5, 0.5, rays)
        for wire in (-2.0, -1.0, 0.0, 1.0, 2.0):
            centre = np.zeros(3)
            centre[across] = wire
            nearest = np.abs((start - centre) @ square) / np.linalg.norm(square)
            stopped |= nearest < gamma / 2.0
    return 1.0 - float(stopped.mean())


@pytest.mark.parametrize("gamma", [0.100, 0.162, 0.200, 0.300])
@pytest.mark.parametrize("angle", [0.0, 30.0, 45.0, 60.0])
@pytest.mark.parametrize("plane", ["plane", "diagonal"])
def test_oblique_rays_pass_as_often_as_they_are_thrown(
    gamma: float, angle: float, plane: str
) -> None:
    slope = tan(radians(angle))
    slopes = (slope, 0.0) if plane == "plane" else (slope / sqrt(2), slope / sqrt(2))
    passed = thrown(gamma, slopes, 100_000, seed=20)
    assert float(ray_transmission(weave_of(gamma), *slopes)) == pytest.approx(passed, abs=0.006)


def test_rays_from_a_whole_tube_pass_as_often_as_they_are_thrown() -> None:
    # Tube elements drawn by their share of the irradiance, wires at random phase.
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


@pytest.mark.parametrize("day", [1, 80, 172, 265, 355])
def test_the_declination_is_that_of_pvlib(day: int) -> None:
    assert declination_rad(day) == pytest.approx(float(declination_cooper69(day)), abs=1e-11)


def by_temis(zenith_deg: float, ozone_du: float = 300.0) -> float:
    """Return the clear-sky UV index of Allaart et al. 2004 with the parameters of temis.nl."""
    cosine = cos(radians(zenith_deg))
    path = cosine * (1.0 - 0.2755) + 0.2755
    ratio = 1000.0 * cosine / ozone_du
    above = 2.0877 * path * np.exp(-1.0597 / path)
    return float(40.0 * above * (0.0477 * ratio**1.6325 + 5.6499 / ozone_du + 0.0485))


@pytest.mark.parametrize("zenith", [0.0, 30.0, 50.0, 70.0, 80.0])
def test_another_formula_of_the_clear_sky_lies_within_the_doubt(zenith: float) -> None:
    got, factor = float(clear_sky_uvi(cos(radians(zenith)))), combined_factor(SUN_DOUBTS)
    assert got / factor <= by_temis(zenith) <= got * factor


def reference_sun(column: str) -> tuple[Array, Array]:
    spectrum = get_reference_spectra(standard="ASTM G173-03").loc[280.0:400.0]
    return spectrum.index.to_numpy(dtype=float), spectrum[column].to_numpy(dtype=float)


def by_the_printed_formula(wave: Array, constant: float) -> Array:
    """Return the weights as the definitions page of the IES quotes CIE 106/4:1993."""
    steep, shallow = 10.0 ** (0.094 * (298.0 - wave)), 10.0 ** (0.015 * (constant - wave))
    return np.where(wave <= 298.0, 1.0, np.where(wave <= 328.0, steep, shallow))


@pytest.mark.parametrize(
    ("variant", "constant"), [(Variant.STANDARD, 140.0), (Variant.OF_1987, 139.0)]
)
def test_weights_are_those_of_the_printed_formula(variant: Variant, constant: float) -> None:
    wave = np.concatenate([np.linspace(250.0, 400.0, 301), [298.0, 328.0]])
    expected = by_the_printed_formula(wave, constant)
    assert erythemal_weight(wave, variant) == pytest.approx(expected, rel=1e-12)


@pytest.mark.parametrize("column", ["global", "direct"])
@pytest.mark.parametrize(
    ("variant", "constant"), [(Variant.STANDARD, 140.0), (Variant.OF_1987, 139.0)]
)
def test_the_reference_sun_has_the_uv_index_of_its_table(
    column: str, variant: Variant, constant: float
) -> None:
    wave, light = reference_sun(column)
    index = 40.0 * np.trapezoid(light * by_the_printed_formula(wave, constant), wave)
    assert uv_index_of_spectrum(wave, light, variant) == pytest.approx(float(index), rel=1e-3)


@pytest.mark.parametrize("column", ["global", "direct"])
def test_the_reference_sun_makes_the_vitamin_d_of_its_table(column: str) -> None:
    wave, light = reference_sun(column)
    reddens = np.trapezoid(light * by_the_printed_formula(wave, 140.0), wave)
    makes = np.trapezoid(light * vitamin_d_weight(wave), wave)
    found = vitamin_d_per_erythema(wave, light)
    assert found == pytest.approx(float(makes / reddens), rel=1e-3)
