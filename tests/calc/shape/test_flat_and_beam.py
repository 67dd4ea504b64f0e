"""Bars, panels and beams: quadrature at random places, all their light, and their limits."""

from collections.abc import Callable
from math import cos, pi, radians, tan
from typing import Any

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import dblquad, quad

from calc.shape.beam import all_round_per_flux, beam_per_flux, beam_power, flat_top_per_flux
from calc.shape.flat import bar_per_flux, panel_per_flux
from calc.shape.line import line_shape, parallel_per_flux
from tests.calc.refused import Range, assert_ends_hold, assert_refused_beyond
from tests.some import some

heights, sides = st.floats(0.08, 2.0), st.floats(-1.0, 1.0)
sizes, beams = st.floats(0.1, 1.5), st.floats(20.0, 140.0)


@given(heights, sides, sides, sizes, beams)
@settings(max_examples=some(60), deadline=None)
def test_a_bar_is_the_sum_of_small_beams(
    height: float, along: float, aside: float, length: float, beam: float
) -> None:
    def part(x: float) -> float:
        level = ((x - along) ** 2 + aside**2) ** 0.5
        return float(beam_per_flux(height, level, beam)) / length

    kinks = [along] if abs(along) < length / 2 else None
    total = quad(part, -length / 2, length / 2, points=kinks, epsrel=1e-10, epsabs=0, limit=200)[0]
    found = float(bar_per_flux(height, length, along, aside, beam))
    assert found == pytest.approx(total, rel=2e-5)


@pytest.mark.parametrize("place", [(0.0, 0.0), (0.3, 0.1), (-0.7, 0.5)])
def test_a_panel_is_the_sum_of_its_parts(place: tuple[float, float]) -> None:
    along, aside = place

    def part(y: float, x: float) -> float:
        away = ((x - along) ** 2 + (y - aside) ** 2) ** 0.5
        return float(beam_per_flux(0.4, away, 120.0)) / (0.6 * 0.3)

    total = dblquad(part, -0.3, 0.3, -0.15, 0.15, epsabs=1e-10)[0]
    assert float(panel_per_flux(0.4, 0.6, 0.3, along, aside)) == pytest.approx(total, rel=1e-6)


@pytest.mark.parametrize("beam", [20.0, 36.0, 60.0, 90.0, 120.0])
@pytest.mark.parametrize("law", [beam_per_flux, flat_top_per_flux])
def test_all_that_leaves_a_lamp_arrives_on_the_floor(law: Callable[..., Any], beam: float) -> None:
    edge = radians(beam) / 2.0

    def ring(angle: float) -> float:
        """Return the light on a ring of the floor, by the angle at which the lamp sees it."""
        away = tan(angle)
        return float(law(1.0, away, beam)) * 2.0 * pi * away / cos(angle) ** 2

    ends = ((0.0, edge - 1e-9), (edge + 1e-9, pi / 2 - 1e-6))
    assert sum(quad(ring, *end)[0] for end in ends) == pytest.approx(1.0, rel=1e-5)


def test_half_of_a_bare_bulbs_light_goes_down() -> None:
    whole = quad(lambda r: float(all_round_per_flux(1.0, r)) * 2 * pi * r, 0.0, 1e4, limit=400)[0]
    assert whole == pytest.approx(0.5, rel=1e-3)


@given(beams, heights)
@settings(max_examples=some(40), deadline=None)
def test_at_the_edge_of_its_beam_a_lamp_has_half_its_intensity(beam: float, height: float) -> None:
    facing = cos(radians(beam) / 2.0)
    aside = height * np.tan(radians(beam) / 2.0)
    middle = float(beam_per_flux(height, 0.0, beam))
    at_edge = float(beam_per_flux(height, aside, beam))
    assert at_edge == pytest.approx(middle * 0.5 * facing**3, rel=1e-9)
    assert beam_power(beam) == pytest.approx(np.log(0.5) / np.log(facing))


@given(st.floats(0.05, 3.0), st.floats(0.1, 1.6), st.floats(-2.0, 2.0), st.floats(1.0, 1e5))
@settings(max_examples=some(80), deadline=None)
def test_one_law_serves_lumens_and_the_uv_index(
    height: float, length: float, along: float, lumens: float
) -> None:
    # The lux of a tube fall with distance as its UVI does: their ratio is one number a tube.
    lux = lumens * float(parallel_per_flux(height, length, along))
    shape = line_shape(height, length, along)
    assert lux / shape == pytest.approx(lumens / (pi**2 * length), rel=1e-9)


@given(st.floats(0.1, 2.0), st.floats(0.1, 1.5))
@settings(max_examples=some(40), deadline=None)
def test_a_bar_gives_pi_times_a_bare_tube_below_its_middle(height: float, length: float) -> None:
    bare = float(parallel_per_flux(height, length))
    assert float(bar_per_flux(height, length)) == pytest.approx(pi * bare, rel=1e-6)


def test_far_away_bar_and_panel_are_small_lamps() -> None:
    small = float(beam_per_flux(20.0, 0.0, 120.0))
    assert float(bar_per_flux(20.0, 0.5)) == pytest.approx(small, rel=1e-3)
    assert float(panel_per_flux(20.0, 0.5, 0.5)) == pytest.approx(small, rel=1e-3)


RANGES = [
    Range(beam_power, "beam angle", 5.0, 160.0, "degrees"),
    Range(lambda x: flat_top_per_flux(1.0, 0.0, x), "beam angle", 5.0, 160.0, "degrees"),
    Range(lambda x: beam_per_flux(x, 0.0, 60.0), "height", 0.02, float("inf"), "m"),
    Range(lambda x: bar_per_flux(x, 1.0), "height", 0.02, float("inf"), "m"),
    Range(lambda x: bar_per_flux(1.0, x), "lit length", 0.02, 2.5, "m"),
    Range(lambda x: panel_per_flux(x, 1.0, 1.0), "height", 0.02, float("inf"), "m"),
    Range(lambda x: panel_per_flux(1.0, x, 1.0), "panel length", 0.02, 2.5, "m"),
    Range(lambda x: panel_per_flux(1.0, 1.0, x), "panel width", 0.02, 2.5, "m"),
]


@pytest.mark.parametrize("given", RANGES, ids=str)
def test_documented_ends_hold_and_beyond_them_it_is_refused(given: Range) -> None:
    assert_ends_hold(given)
    assert_refused_beyond(given)
