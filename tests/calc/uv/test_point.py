"""A small lamp falls as a point does, and readings tell it from a tube."""

from math import log

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.uv.lamp import Fixture, Lamp, OwnPoint, uvi_at
from calc.uv.meter import Reading
from calc.uv.placement import place
from calc.uv.point import FARTHEST_BEHIND_M, PointSource, Shape, fit_point, point_uvi
from calc.uv.screen import FlatScreen, NoScreen
from calc.uv.shapes import fit_lamp
from calc.validity import OutsideModelError

_LAMP = Lamp(12.0, Fixture.POLISHED)
_AWAY = (0.2, 0.3, 0.4, 0.5)
_strengths = st.floats(0.05, 5.0)
_depths = st.floats(0.0, FARTHEST_BEHIND_M)
_places = st.lists(st.floats(0.1, 1.5), min_size=2, max_size=6, unique=True).filter(
    lambda found: max(found) / min(found) > 1.3
)


def _read(source: PointSource, away: tuple[float, ...] = _AWAY) -> list[Reading]:
    return [Reading(d, point_uvi(source, d)) for d in away]


@given(strength=_strengths, depth=_depths, away=_places)
def test_exact_readings_give_the_lamp_back(
    strength: float, depth: float, away: list[float]
) -> None:
    source = PointSource(strength, depth, 0.3)
    found = fit_point(away, [point_uvi(source, d) for d in away], [400.0] * len(away))
    assert found.behind_m == pytest.approx(depth, abs=2e-4)
    for distance_m in (min(away), max(away)):
        assert point_uvi(found, distance_m) == pytest.approx(
            point_uvi(source, distance_m), rel=2e-3
        )


@given(strength=_strengths, depth=_depths, near=st.floats(0.1, 1.0), more=st.floats(0.01, 1.0))
def test_it_falls_with_distance_and_no_faster_than_the_square(
    strength: float, depth: float, near: float, more: float
) -> None:
    source = PointSource(strength, depth, 0.3)
    ratio = point_uvi(source, near) / point_uvi(source, near + more)
    assert 1.0 < ratio <= ((near + more) / near) ** 2 * (1.0 + 1e-12)


@given(depth=_depths, away=_places, times=st.floats(0.2, 5.0))
def test_a_meter_that_shows_a_multiple_changes_the_strength_alone(
    depth: float, away: list[float], times: float
) -> None:
    source = PointSource(0.5, depth, 0.3)
    uvis = [point_uvi(source, d) for d in away]
    one = fit_point(away, uvis, [400.0] * len(away))
    other = fit_point(away, [times * u for u in uvis], [400.0] * len(away))
    assert other.behind_m == pytest.approx(one.behind_m, abs=1e-4)
    assert other.strength_uvi_m2 == pytest.approx(times * one.strength_uvi_m2, rel=1e-3)


def test_the_doubt_is_least_where_it_was_read_and_grows_beyond() -> None:
    found = fit_point(_AWAY, [13.5, 6.0, 3.38, 2.16], [400.0] * 4)
    middle = found.deviation(found.around_m)
    assert middle < found.deviation(0.15)
    assert found.deviation(0.15) < found.deviation(0.08)
    assert middle < found.deviation(1.0) < found.deviation(2.0)


def test_four_readings_of_the_square_law_are_a_small_lamp_and_no_mistake() -> None:
    read = [Reading(0.0254 * d, u) for d, u in ((8, 13.5), (12, 6.0), (16, 3.38), (20, 2.16))]
    found = fit_lamp(read, _LAMP, Shape.LINE)
    assert found.shape is Shape.POINT
    assert found.told_by_readings
    assert not found.contradicts
    assert found.suspects == ()
    assert isinstance(found.own, OwnPoint)
    # 13.5 at 8 in and a quarter of 6.0 x 4 at 12 in: K = 6.0 (12 in)².
    assert found.own.source.strength_uvi_m2 == pytest.approx(6.0 * 0.3048**2, rel=2e-3)
    assert found.own.source.behind_m < 0.002


@pytest.mark.parametrize("lit_m", [0.25, 0.519, 0.819, 1.119, 1.419])
@pytest.mark.parametrize("expected", list(Shape))
def test_a_tube_is_never_taken_for_a_point_by_exact_readings(lit_m: float, expected: Shape) -> None:
    lamp = Lamp(12.0, Fixture.POLISHED, lit_m)
    read = [Reading(d, uvi_at(lamp, d, NoScreen())) for d in (0.15, 0.25, 0.4, 0.6)]
    found = fit_lamp(read, lamp, Shape.LINE)
    assert found.shape is Shape.LINE
    told = fit_lamp(read, lamp, expected)
    # Whatever is chosen gives what was read.
    for reading in read:
        own = told.lamp(lamp)
        assert abs(log(uvi_at(own, reading.distance_m, NoScreen()) / reading.uvi)) < 0.1


def test_scattered_readings_of_a_tube_stay_those_of_a_tube() -> None:
    random = np.random.default_rng(7)
    lamp = Lamp(12.0, Fixture.POLISHED, 0.849)
    for _ in range(60):
        read = [
            Reading(d, uvi_at(lamp, d, NoScreen()) * float(np.exp(random.normal(0.0, 0.05))))
            for d in _AWAY
        ]
        assert fit_lamp(read, lamp, Shape.LINE).shape is Shape.LINE


def test_two_places_follow_the_kind_and_one_place_tells_no_point() -> None:
    read = _read(PointSource(0.5, 0.05, 0.3))[:2]
    assert fit_lamp(read, _LAMP, Shape.POINT).shape is Shape.POINT
    assert fit_lamp(read, _LAMP, Shape.LINE).shape is Shape.LINE
    with pytest.raises(OutsideModelError):
        fit_point([0.3, 0.3], [4.0, 4.1], [1.0, 1.0])


def test_a_small_lamp_is_placed_where_its_own_law_says() -> None:
    found = fit_lamp(_read(PointSource(0.6, 0.0, 0.3)), _LAMP, Shape.POINT)
    placement = place(found.lamp(_LAMP), NoScreen(), 3.0, 5.0)
    assert placement.ends is not None
    near, _, far = placement.ends
    assert near.distance_m == pytest.approx((0.6 / 5.0) ** 0.5, abs=1e-3)
    assert far.distance_m == pytest.approx((0.6 / 3.0) ** 0.5, abs=1e-3)
    assert near.uvi.low < 5.0 < near.uvi.high


def test_what_was_read_through_a_screen_is_the_lamp_without_it() -> None:
    source, screen = PointSource(0.8, 0.03, 0.3), FlatScreen(0.55)
    read = [Reading(d, 0.55 * point_uvi(source, d), screen) for d in _AWAY]
    lamp = fit_lamp(read, _LAMP, Shape.POINT).lamp(_LAMP)
    assert uvi_at(lamp, 0.35, NoScreen()) == pytest.approx(point_uvi(source, 0.35), rel=1e-3)
    assert uvi_at(lamp, 0.35, screen) == pytest.approx(0.55 * point_uvi(source, 0.35), rel=1e-3)


@pytest.mark.parametrize(("strength", "depth"), [(0.0, 0.0), (200.0, 0.0), (1.0, -0.1), (1.0, 0.4)])
def test_what_no_small_lamp_is_is_refused(strength: float, depth: float) -> None:
    with pytest.raises(OutsideModelError):
        PointSource(strength, depth, 0.3)
