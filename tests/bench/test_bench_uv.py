"""How long the map takes, beside the sum over the tube's elements point by point."""

from math import sqrt

import numpy as np
import pytest
from pytest_benchmark.fixture import BenchmarkFixture
from scipy.integrate import quad

from bot.ask import ask
from bot.preferences import Preferences
from calc.uv.lamp import Fixture, Lamp, lamp_constant
from calc.uv.placement import place
from calc.uv.screen import NoScreen, Screen, Weave, ray_transmission
from calc.uv.section import Box, Cut, HungTube, section_map

BOX = Box(1.2, 0.6, 0.6)
INSECT = Weave(18 / 0.0254, 16 / 0.0254, 0.011 * 0.0254)
SCREENS = {"bare": NoScreen(), "insect screen": INSECT}
ACROSS, UP = 400, 250


def tubes(count: int, screen: Screen) -> list[HungTube]:
    lamp = Lamp(12.0, Fixture.POLISHED, 0.819)
    return [HungTube(lamp, 0.45 + 0.05 * i, 0.15 + 0.1 * i, 0.55, screen) for i in range(count)]


@pytest.mark.parametrize("screen", SCREENS.values(), ids=SCREENS.keys())
@pytest.mark.parametrize("count", [1, 4])
@pytest.mark.parametrize("cut", list(Cut), ids=lambda cut: cut.name)
def test_a_map_of_100_000_points(
    benchmark: BenchmarkFixture, cut: Cut, count: int, screen: Screen
) -> None:
    grid = benchmark(section_map, tubes(count, screen), BOX, cut, 0.22, ACROSS, UP)
    assert grid.uvi.size == 100_000


def point_by_quadrature(tube: HungTube, x: float, y: float, z: float) -> float:
    height, side = tube.z_m - z, y - tube.y_m
    squared, half = height**2 + side**2, tube.lamp.lit_length_m / 2.0

    def element(u: float) -> float:
        seen = float(ray_transmission(tube.screen, u / height, side / height))
        return sqrt(squared) * height / (squared + u * u) ** 2 * seen

    total = quad(element, tube.x_m - half - x, tube.x_m + half - x, epsrel=1e-9, limit=200)[0]
    return float(lamp_constant(tube.lamp) * total)


@pytest.mark.parametrize("screen", SCREENS.values(), ids=SCREENS.keys())
def test_one_hundred_points_by_quadrature_agree(
    benchmark: BenchmarkFixture, screen: Screen
) -> None:
    tube = tubes(1, screen)[0]
    grid = section_map([tube], BOX, Cut.SIDE, 0.22, ACROSS, UP)
    places = [(i, j) for i in range(0, 190, 19) for j in range(0, ACROSS, 40)]

    def each() -> list[float]:
        return [point_by_quadrature(tube, grid.across_m[j], 0.22, grid.z_m[i]) for i, j in places]

    summed = benchmark(each)
    mapped = [grid.uvi[i, j] for i, j in places]
    assert np.allclose(mapped, summed, rtol=1e-5, atol=1e-7)


@pytest.mark.parametrize("screen", SCREENS.values(), ids=SCREENS.keys())
def test_a_placement(benchmark: BenchmarkFixture, screen: Screen) -> None:
    placement = benchmark(place, Lamp(12.0, Fixture.POLISHED), screen, 3.0, 5.0)
    assert placement.start is not None


LINES = {
    "meter": "meter readings:6.9 at 30cm, 4.6 at 40cm, 2.4 at 60cm animal:bearded dragon",
    "distance by readings": "distance tube:12% reflector:polished screen:none uvi:3-5 "
    "readings:4.2 at 12 in, 2.9 at 15 in",
    "decline": "decline readings:2026-01-03 5.2, 2026-03-01 4.6, 2026-05-02 4.1 uvi:3-5",
    "section": "section tube:12% reflector:polished screen:18x16 0.011in distance:16in "
    "enclosure:48x24x24in uvi:3-5 tubes:4",
    "dose": "dose uvi:4 hours:10 distance:14in latitude:27S month:June",
}


@pytest.mark.parametrize("line", LINES.values(), ids=LINES.keys())
def test_a_warm_question(benchmark: BenchmarkFixture, line: str) -> None:
    reply = benchmark(ask, line, Preferences())
    assert reply.status == "ok"
