"""White lamps in a set-up: where they hang, what they give, and that our words make no verdict."""

from dataclasses import replace

import pytest

from calc.animals import animals
from calc.heat.enclosure import Enclosure
from calc.light.bands import LightLife, bands_of, brightness_of
from calc.light.illuminance import Light, lux_at
from calc.light.kinds import light_kind
from calc.setup.ladder import bar_most_w, bar_rise_k
from calc.setup.lights import fair_from_lx, hung_beside, light_there
from calc.setup.room import Room
from calc.uncertainty import Estimate
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lamp import Fixture, Lamp
from calc.uv.screen import FlatScreen, NoScreen
from calc.uv.section import Box, HungTube

TUBE = HungTube(Lamp(12.0, Fixture.POLISHED), 0.4, 0.3, 0.8, NoScreen())
ROOM = Room(Box(1.2, 0.6, 0.9), (TUBE,), Platform(0.2, 0.5, 0.15, 0.45, 0.3), 0.05, 3.0, 5.0)
BANDS = bands_of(LightLife.SUN)


def led(kind: str = "led-bar", long_m: float = 0.9, lm: float = 4000.0) -> Light:
    return Light(light_kind(kind), Estimate.exact(lm), by_watts=False, length_m=long_m)


def test_white_lamps_hang_level_with_the_tube_away_from_the_heat_lamp() -> None:
    for heat_y, way in ((0.45, -1.0), (0.1, 1.0)):
        room = replace(ROOM, heat=HeatPatch(0.35, heat_y, 0.1))
        first, second = hung_beside(room, [led(), led("led-flood")])
        assert (first.y_m, second.y_m) == pytest.approx((0.3 + way * 0.1, 0.3 + way * 0.2))
        assert (first.z_m, first.screen) == (TUBE.z_m, TUBE.screen)
        # A bar begins at the warm end, a beam goes to the middle of the basking place.
        assert (first.x_m, second.x_m) == pytest.approx((0.45, 0.35))
    (long,) = hung_beside(ROOM, [led(long_m=2.0)])
    assert (long.light.length_m, long.x_m) == (1.2, 0.6)


def test_light_adds_up_and_a_mesh_takes_its_share() -> None:
    one, two = (light_there(ROOM, hung_beside(ROOM, [led()] * n), BANDS) for n in (1, 2))
    (x_m, y_m), z_m = ROOM.platform.middle_m, ROOM.back_z_m
    each = [lux_at(hung, x_m, y_m, z_m).best for hung in two.lights]
    assert two.spot_lx.best == pytest.approx(sum(each))
    assert one.spot_lx.best == pytest.approx(each[0])
    meshed = replace(ROOM, tubes=(replace(TUBE, screen=FlatScreen(0.5)),))
    half = light_there(meshed, hung_beside(meshed, [led()]), BANDS)
    assert half.spot_lx.best == pytest.approx(0.5 * one.spot_lx.best)


def test_fair_begins_where_the_words_say_so() -> None:
    assert BANDS is not None
    edge = fair_from_lx(BANDS)
    assert edge is not None
    for lux, word in ((0.999 * edge, "DIM"), (1.001 * edge, "FAIR")):
        assert [one.name for one in brightness_of(Estimate.exact(lux), BANDS)] == [word, word]
    assert fair_from_lx(None) is None
    weak, strong = (
        light_there(ROOM, hung_beside(ROOM, [led(lm=lm)]), BANDS).fair for lm in (500.0, 50_000.0)
    )
    assert weak is not None
    assert strong is not None
    assert (weak.high, strong.low) == (0.0, 1.0)
    assert light_there(ROOM, hung_beside(ROOM, [led()]), None).fair is None


@pytest.mark.parametrize("slug", ["bearded-dragon", "crested-gecko", "royal-python"])
@pytest.mark.parametrize("cool_c", [22.0, 24.0, 26.0])
def test_no_more_watts_are_borne_than_leave_the_cool_end_in_its_range(
    slug: str, cool_c: float
) -> None:
    box, animal = Enclosure(1.2, 0.6, 0.6), animals()[slug]
    most_w = bar_most_w(box, 20.0, cool_c, animal)
    if most_w == 0.0:
        assert animal.cool_air_c is not None
        assert cool_c >= animal.cool_air_c.high
        return
    assert bar_rise_k(box, 20.0, cool_c, animal, 0.99 * most_w).leaves_in_range
    assert not bar_rise_k(box, 20.0, cool_c, animal, 1.01 * most_w).leaves_in_range
