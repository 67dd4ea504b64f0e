"""One patch of sun: no larger than any of its parts, gone where they lie apart."""

from dataclasses import replace

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from calc.light.illuminance import HungLight, Light
from calc.light.kinds import light_kind
from calc.setup.lights import light_there
from calc.setup.room import Room
from calc.setup.sun_patch import sun_patch
from calc.uncertainty import Estimate
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lamp import Fixture, Lamp
from calc.uv.screen import NoScreen
from calc.uv.section import Box, HungTube
from tests.some import some

TUBE = HungTube(Lamp(12.0, Fixture.POLISHED), 0.4, 0.3, 0.8, NoScreen())
PLACE, HEAT = Platform(0.2, 0.5, 0.15, 0.45, 0.3), HeatPatch(0.35, 0.3, 0.1)
ROOM = Room(Box(1.2, 0.6, 0.9), (TUBE,), PLACE, 0.05, 3.0, 5.0, HEAT)
MET = ROOM.met(10)


def bar(x_m: float) -> HungLight:
    led = Light(light_kind("led-bar"), Estimate.exact(3000.0), by_watts=False, length_m=0.5)
    return HungLight(led, x_m, 0.3, 0.8, NoScreen())


@given(st.floats(0.1, 1.1), st.floats(0.05, 0.4))
@settings(max_examples=some(25), deadline=None)
def test_all_three_are_no_more_than_two_and_none_is_more_than_the_warm_patch(
    x_m: float, radius_m: float
) -> None:
    room = replace(ROOM, heat=HeatPatch(x_m, 0.3, radius_m))
    found = sun_patch(room, MET)
    assert found.all_three.best <= found.uv_and_heat.best <= MET.in_range.best + 0.05
    for one in (found.all_three, found.uv_and_heat, found.shade):
        assert 0.0 <= one.low <= one.best <= one.high <= 1.0


def test_where_heat_lies_apart_there_is_no_patch_of_sun() -> None:
    apart = replace(ROOM, heat=HeatPatch(1.0, 0.3, 0.1))
    assert sun_patch(apart, MET).all_three.high == 0.0
    assert sun_patch(replace(ROOM, heat=None), MET).all_three.high == 0.0


def test_white_light_takes_nothing_from_the_patch_and_leaves_less_shade() -> None:
    alone = sun_patch(ROOM, MET)
    wide = replace(ROOM, heat=HeatPatch(0.35, 0.3, 0.3))
    for fair_lx in (None, 500.0, 50_000.0):
        here = sun_patch(ROOM, MET, light_there(ROOM, (bar(0.35),), None), fair_lx)
        assert here.all_three.best >= alone.all_three.best
        assert here.all_three.best <= here.uv_and_heat.best
        assert here.shade.best <= alone.shade.best
    lit = sun_patch(wide, MET, light_there(wide, (bar(0.35),), None), 500.0)
    assert lit.all_three.best == pytest.approx(lit.uv_and_heat.best)
    dim = sun_patch(wide, MET, light_there(wide, (bar(0.35),), None), 50_000.0)
    assert dim.all_three.best == pytest.approx(sun_patch(wide, MET).all_three.best)


def test_the_patch_reaches_no_farther_than_the_heat_and_the_platform() -> None:
    found = sun_patch(ROOM, MET)
    assert found.x_m is not None
    assert found.y_m is not None
    for (first, last), (low, high), middle in (
        (found.x_m, (PLACE.x0_m, PLACE.x1_m), HEAT.x_m),
        (found.y_m, (PLACE.y0_m, PLACE.y1_m), HEAT.y_m),
    ):
        half_cell = (high - low) / 40.0
        assert low <= first < last <= high
        assert middle - HEAT.radius_m - half_cell <= first
        assert last <= middle + HEAT.radius_m + half_cell
    nothing = sun_patch(replace(ROOM, heat=HeatPatch(1.0, 0.3, 0.1)), MET)
    assert nothing.x_m is nothing.y_m is None
