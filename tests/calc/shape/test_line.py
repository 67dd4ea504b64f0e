"""The line source: symmetry, limits, scaling, and quadrature at random places."""

from math import cos, pi, sin

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import quad

from calc.shape.line import (
    axial_per_flux,
    far_field_per_flux,
    infinite_line_per_flux,
    line_shape,
    parallel_per_flux,
    tilted_per_flux,
)
from calc.uv.tube import STANDARD_T5_HO
from calc.validity import OutsideModelError
from tests.some import some

distances = st.floats(0.05, 3.0)
lengths = st.floats(0.1, 1.6)
offsets = st.floats(-2.0, 2.0)
tilts = st.floats(-pi / 2, pi / 2)


@given(distances, lengths, offsets, tilts)
@settings(max_examples=some(60), deadline=None)
def test_closed_form_is_the_sum_of_the_elements_in_front(
    distance: float, length: float, offset: float, tilt: float
) -> None:
    def element(u: float) -> float:
        cosine = cos(tilt) * distance + sin(tilt) * u
        return max(0.0, cosine) * distance / (distance**2 + u**2) ** 2

    edges = (-length / 2 - offset, length / 2 - offset)
    horizon = -cos(tilt) * distance / sin(tilt) if abs(sin(tilt)) > 1e-9 else 0.0
    kinks = [u for u in (0.0, horizon) if edges[0] < u < edges[1]]
    total = quad(element, *edges, points=kinks or None, epsabs=0.0, epsrel=1e-11, limit=400)[0]
    got = float(tilted_per_flux(distance, length, offset, tilt))
    scale = float(parallel_per_flux(distance, length))
    assert got == pytest.approx(total / (pi**2 * length), rel=1e-8, abs=1e-12 * scale)


@given(distances, lengths, offsets)
@settings(max_examples=some(60), deadline=None)
def test_both_halves_of_the_tube_look_alike(distance: float, length: float, offset: float) -> None:
    left, right = (float(parallel_per_flux(distance, length, z)) for z in (-offset, offset))
    assert left == pytest.approx(right, rel=1e-9)
    towards, away = (
        float(axial_per_flux(distance, length, offset)),
        float(tilted_per_flux(distance, length, -offset, -pi / 2)),
    )
    assert towards == pytest.approx(away, rel=1e-9, abs=1e-15)


@given(distances, lengths, offsets, st.floats(0.2, 5.0))
@settings(max_examples=some(60), deadline=None)
def test_a_scaled_room_scales_by_the_square(
    distance: float, length: float, offset: float, scale: float
) -> None:
    small = float(parallel_per_flux(distance, length, offset))
    large = float(parallel_per_flux(scale * distance, scale * length, scale * offset))
    assert large * scale**2 == pytest.approx(small, rel=1e-9)


def test_two_halves_joined_are_one_tube() -> None:
    whole = float(parallel_per_flux(0.3, 1.0, 0.1))
    left = float(parallel_per_flux(0.3, 0.5, 0.35))
    right = float(parallel_per_flux(0.3, 0.5, -0.15))
    assert (left + right) / 2 == pytest.approx(whole, rel=1e-13)


def test_far_away_the_tube_is_a_point_and_close_by_an_endless_line() -> None:
    assert float(parallel_per_flux(500.0, 1.0)) == pytest.approx(
        float(far_field_per_flux(500.0)), rel=1e-6
    )
    assert float(parallel_per_flux(1e-3, 1.0)) == pytest.approx(
        float(infinite_line_per_flux(1e-3, 1.0)), rel=1e-6
    )


def test_a_tilted_receiver_that_sees_the_whole_tube_adds_its_two_parts() -> None:
    distance, length, offset, tilt = 0.4, 0.5, -0.6, 0.5
    parts = cos(tilt) * float(parallel_per_flux(distance, length, offset))
    parts += sin(tilt) * float(axial_per_flux(distance, length, offset))
    assert float(tilted_per_flux(distance, length, offset, tilt)) == pytest.approx(parts)


def test_a_receiver_facing_away_from_the_whole_tube_gets_nothing() -> None:
    assert float(axial_per_flux(0.3, 0.5, 0.4)) == 0.0


@given(distances, lengths, offsets)
@settings(max_examples=some(40), deadline=None)
def test_the_shape_is_alike_for_floats_and_arrays(
    distance: float, length: float, offset: float
) -> None:
    one = line_shape(distance, length, offset)
    many = line_shape(np.array([distance, 2 * distance]), length, offset)
    assert isinstance(one, float)
    assert many[0] == pytest.approx(one, rel=1e-9)
    assert many[1] == pytest.approx(line_shape(2 * distance, length, offset), rel=1e-9)


@pytest.mark.parametrize("distance", [0.0, -1.0, float("nan"), float("inf")])
def test_an_impossible_distance_is_refused(distance: float) -> None:
    with pytest.raises(OutsideModelError):
        parallel_per_flux(distance, 1.0)


@pytest.mark.parametrize("distance", [0.0, -1.0, float("nan")])
def test_the_lean_shape_refuses_an_impossible_distance_too(distance: float) -> None:
    with pytest.raises(OutsideModelError):
        line_shape(distance, 1.0)


def test_a_tilt_beyond_a_right_angle_is_refused() -> None:
    with pytest.raises(OutsideModelError):
        tilted_per_flux(0.3, 1.0, 0.0, 2.0)


def test_standard_tubes_step_by_300_mm() -> None:
    # "A multiple of 300 mm less a constant" (as quoted of IEC 60081).
    lengths_m = [tube.face_to_face_m for tube in STANDARD_T5_HO]
    assert np.diff(lengths_m) == pytest.approx([0.3] * 3)
    assert all(tube.lit_length_m < tube.face_to_face_m for tube in STANDARD_T5_HO)


def test_the_distance_law_runs_from_one_over_d_to_one_over_d_squared() -> None:
    def power(distance: float) -> float:
        near, far = line_shape(distance, 1.0), line_shape(1.001 * distance, 1.0)
        return float(np.log(near / far) / np.log(1.001))

    assert power(0.01) == pytest.approx(1.0, abs=0.01)
    assert power(30.0) == pytest.approx(2.0, abs=0.01)
    assert 1.0 < power(0.3) < power(0.6) < 2.0
