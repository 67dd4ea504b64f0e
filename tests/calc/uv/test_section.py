"""The map: quadrature at random points, symmetry, sums, and what closes to the lamp's flux."""

from math import pi, sqrt

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st
from scipy.integrate import dblquad, quad

from calc.uv.lamp import Fixture, Lamp, lamp_constant, uvi_at
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave, ray_transmission
from calc.uv.section import Box, Cut, HungTube, section_map, uvi_field
from calc.validity import OutsideModelError
from tests.some import some

LAMP = Lamp(12.0, Fixture.POLISHED)
INSECT = Weave(18 / 0.0254, 16 / 0.0254, 0.011 * 0.0254)
SCREENS: tuple[Screen, ...] = (NoScreen(), FlatScreen(0.55), INSECT)
BOX = Box(1.2, 0.6, 0.6)


def hung(screen: Screen = SCREENS[0], x: float = 0.4, y: float = 0.25, z: float = 0.55) -> HungTube:
    return HungTube(LAMP, x, y, z, screen)


def by_quadrature(tube: HungTube, x: float, y: float, z: float) -> float:
    """Sum the elements of the tube through the screen, on a level back."""
    length = tube.lamp.lit_length_m
    height, side = tube.z_m - z, y - tube.y_m
    squared = height**2 + side**2

    def element(u: float) -> float:
        # C π² L = UVI per flux; dI = sin φ du/(π² L); level back: cos = h/r.
        seen = float(ray_transmission(tube.screen, u / height, side / height))
        return sqrt(squared) * height / (squared + u * u) ** 2 * seen

    first, last = tube.x_m - length / 2 - x, tube.x_m + length / 2 - x
    kinks = [0.0]
    if isinstance(tube.screen, Weave):
        reach = height * (1.0 / tube.screen.gamma_x**2 - 1.0) ** 0.5
        kinks += [-reach, reach]
    inner = [u for u in kinks if first < u < last]
    total = quad(element, first, last, points=inner or None, epsrel=1e-10, limit=300)[0]
    return float(lamp_constant(tube.lamp) * total)


@given(
    st.sampled_from(SCREENS),
    st.floats(-0.3, 1.5),
    st.floats(-0.3, 0.9),
    st.floats(0.0, 0.45),
)
@settings(max_examples=some(80), deadline=None)
def test_the_map_is_the_sum_of_the_elements(screen: Screen, x: float, y: float, z: float) -> None:
    tube = hung(screen)
    assert float(uvi_field([tube], x, y, z)) == pytest.approx(
        by_quadrature(tube, x, y, z), rel=1e-7, abs=1e-9
    )


@pytest.mark.parametrize("screen", SCREENS)
@pytest.mark.parametrize("below", [0.1, 0.2, 0.4])
def test_straight_below_the_middle_it_is_the_lamp(screen: Screen, below: float) -> None:
    tube = hung(screen)
    assert float(uvi_field([tube], 0.4, 0.25, 0.55 - below)) == pytest.approx(
        uvi_at(LAMP, below, screen)
    )


@pytest.mark.slow
def test_a_floor_without_end_takes_half_of_the_flux() -> None:
    # UVI summed over a plane below: 40 times half the erythemal flux, C π² L / 2.
    tube = hung()

    def corner(x: float, y: float) -> float:
        return float(uvi_field([tube], 0.4 + x, 0.25 + y, 0.0))

    quarter = dblquad(corner, 0.0, 60.0, 0.0, 60.0, epsabs=1e-4, epsrel=1e-4)[0]
    whole = lamp_constant(LAMP) * pi**2 * LAMP.lit_length_m / 2.0
    assert 4.0 * quarter == pytest.approx(whole, rel=0.01)


@given(st.floats(0.0, 0.8), st.floats(0.0, 0.5), st.floats(0.0, 0.4), st.sampled_from(SCREENS))
@settings(max_examples=some(40), deadline=None)
def test_left_and_right_front_and_back_are_alike(
    x: float, y: float, z: float, screen: Screen
) -> None:
    tube = hung(screen)
    corners = [
        float(uvi_field([tube], 0.4 + a * x, 0.25 + b * y, z)) for a in (-1, 1) for b in (-1, 1)
    ]
    assert corners == pytest.approx([corners[0]] * 4, rel=1e-9)


def test_tubes_add() -> None:
    tubes = [hung(x=0.3), hung(INSECT, y=0.4), hung(FlatScreen(0.5), x=0.8), hung(z=0.5)]
    x, y, z = np.linspace(0.0, 1.2, 5), 0.3, 0.1
    parts = sum(uvi_field([tube], x, y, z) for tube in tubes)
    assert uvi_field(tubes, x, y, z) == pytest.approx(parts)


def test_beside_level_and_above_a_tube_a_level_back_gets_nothing() -> None:
    assert float(uvi_field([hung()], 0.4, 0.6, 0.55)) == 0.0
    assert float(uvi_field([hung()], 0.4, 0.6, 0.7)) == 0.0


def test_inside_a_lamp_there_is_no_answer() -> None:
    inside = uvi_field([hung()], [0.4, 0.64, 0.4, 0.72], [0.27, 0.25, 0.25, 0.25], 0.53)
    assert np.isnan(inside).tolist() == [True, True, True, False]


@pytest.mark.parametrize("screen", SCREENS)
@pytest.mark.parametrize("cut", list(Cut))
def test_a_map_is_the_field_on_its_grid(cut: Cut, screen: Screen) -> None:
    tubes = [hung(screen), hung(screen, x=0.7, y=0.4)]
    grid = section_map(tubes, BOX, cut, 0.3, across=150, up=90)
    assert grid.uvi.shape == (90, 150)
    assert grid.across_m[-1] == (BOX.length_m if cut is Cut.SIDE else BOX.depth_m)
    for i, j in ((0, 0), (40, 70), (60, 149)):
        x, y = (grid.across_m[j], 0.3) if cut is Cut.SIDE else (0.3, grid.across_m[j])
        single = float(uvi_field(tubes, x, y, grid.z_m[i]))
        assert grid.uvi[i, j] == pytest.approx(single, rel=1e-9)


def test_nothing_and_five_tubes_are_refused() -> None:
    for tubes in ([], [hung()] * 5):
        with pytest.raises(OutsideModelError):
            uvi_field(tubes, 0.0, 0.0, 0.0)


@pytest.mark.parametrize("size", [0.05, 5.0, float("nan")])
def test_a_box_outside_the_model_is_refused(size: float) -> None:
    with pytest.raises(OutsideModelError):
        Box(size, 0.6, 0.6)


def test_a_grid_without_points_is_refused() -> None:
    with pytest.raises(OutsideModelError):
        section_map([hung()], BOX, Cut.SIDE, 0.3, across=1)
