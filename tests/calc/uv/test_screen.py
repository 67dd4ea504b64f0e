"""Screens: limits, order, and quadrature along the tube at random places."""

from itertools import pairwise
from math import sqrt

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from numpy.polynomial.legendre import leggauss

from calc.uv.screen import (
    FlatScreen,
    NoScreen,
    Screen,
    Weave,
    middle_transmission,
    open_area,
    ray_transmission,
    tube_transmission,
)
from calc.validity import OutsideModelError
from tests.some import some

INSECT = Weave(18 / 0.0254, 16 / 0.0254, 0.011 * 0.0254)

weaves = st.builds(
    lambda x, y, wire: Weave(x, y, wire),
    st.floats(100.0, 1000.0),
    st.floats(100.0, 1000.0),
    st.floats(1e-5, 5e-4),
)


def summed(weave: Weave, height: float, length: float, offset: float, lateral: float) -> float:
    """Sum the rays from 64 Gauss points on each smooth piece of the tube."""
    first, last = -length / 2 - offset, length / 2 - offset
    reach = height * sqrt(1.0 / weave.gamma_x**2 - 1.0)
    edges = sorted({first, last, *(u for u in (-reach, 0.0, reach) if first < u < last)})
    nodes, weights = leggauss(64)
    passed = whole = 0.0
    for start, stop in pairwise(edges):
        u = (start + stop) / 2 + (stop - start) / 2 * nodes
        share = (stop - start) * weights / (height**2 + lateral**2 + u**2) ** 2
        passed += float(np.sum(share * ray_transmission(weave, u / height, lateral / height)))
        whole += float(np.sum(share))
    return passed / whole


@given(
    weaves,
    st.floats(0.1, 1.5),
    st.floats(0.1, 1.5),
    st.floats(-1.0, 1.0),
    st.floats(-0.8, 0.8),
)
@settings(max_examples=some(80), deadline=None)
def test_the_closed_form_is_the_sum_of_the_rays(
    weave: Weave, height: float, length: float, offset: float, lateral: float
) -> None:
    got = float(tube_transmission(weave, height, length, offset, lateral))
    assert got == pytest.approx(summed(weave, height, length, offset, lateral), abs=2e-6)


@given(
    weaves | st.just(NoScreen()) | st.builds(FlatScreen, st.floats(0.05, 0.99)),
    st.floats(0.02, 1.5),
    st.floats(0.1, 1.5),
)
@settings(max_examples=some(60), deadline=None)
def test_under_the_middle_the_short_form_is_the_long_one(
    screen: Screen, height: float, length: float
) -> None:
    long = float(tube_transmission(screen, height, length))
    assert middle_transmission(screen, height, length) == pytest.approx(long, rel=1e-9)


@given(weaves, st.floats(0.05, 1.5), st.floats(0.1, 1.5))
@settings(max_examples=some(60), deadline=None)
def test_a_tube_loses_more_than_the_open_area_says(
    weave: Weave, height: float, length: float
) -> None:
    assert float(tube_transmission(weave, height, length)) <= open_area(weave) + 1e-12


def test_far_below_a_short_tube_the_open_area_is_reached() -> None:
    assert float(tube_transmission(INSECT, 50.0, 0.5)) == pytest.approx(open_area(INSECT), rel=1e-4)


def test_thin_wire_takes_nothing_and_an_array_answers_like_its_parts() -> None:
    assert float(tube_transmission(Weave(100.0, 100.0, 1e-9), 0.3, 0.5)) == pytest.approx(1.0)
    heights = np.array([0.1, 0.3, 0.9])
    many = tube_transmission(INSECT, heights, 0.519)
    assert many == pytest.approx([float(tube_transmission(INSECT, h, 0.519)) for h in heights])
    assert np.all(np.diff(many) > 0.0)


def test_the_closed_form_is_smooth_straight_under_the_tube() -> None:
    beside = tube_transmission(INSECT, 0.3, 0.519, 0.1, np.array([0.0, 1e-9, 1e-5, 1e-4]))
    assert beside == pytest.approx(np.full(4, beside[0]), rel=1e-6)


def test_a_ray_along_the_wires_is_stopped() -> None:
    assert float(ray_transmission(INSECT, 50.0, 0.0)) == 0.0
    assert float(tube_transmission(INSECT, 0.01, 0.5, 0.0, 1.0)) == 0.0


def test_no_screen_and_flat_screens_do_not_mind_the_angle() -> None:
    tans = np.linspace(0.0, 5.0, 7)
    assert np.all(ray_transmission(NoScreen(), tans, 0.0) == 1.0)
    assert np.all(ray_transmission(FlatScreen(0.55), tans, tans) == 0.55)
    assert tube_transmission(FlatScreen(0.55), np.array([0.2, 0.4]), 0.5).tolist() == [0.55] * 2


@pytest.mark.parametrize("share", [0.0, -0.1, 1.01, float("nan")])
def test_a_share_that_is_none_is_refused(share: float) -> None:
    with pytest.raises(OutsideModelError):
        FlatScreen(share)


@pytest.mark.parametrize("wire", [0.0, 0.002, float("nan")])
def test_wire_as_thick_as_its_pitch_is_refused(wire: float) -> None:
    with pytest.raises(OutsideModelError):
        Weave(600.0, 600.0, wire)


def test_a_receiver_level_with_the_tube_is_refused() -> None:
    with pytest.raises(OutsideModelError):
        tube_transmission(INSECT, 0.0, 0.5)
    with pytest.raises(OutsideModelError):
        middle_transmission(INSECT, 0.0, 0.5)
