"""A small UV lamp in the map of a box: as in front of it, alike all round, in doubt beside."""

from math import hypot

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from calc.uncertainty import Doubt
from calc.uv.field_unknowns import place_unknowns
from calc.uv.ground import Platform
from calc.uv.lamp import Fixture, Lamp, OwnPoint, uvi_at
from calc.uv.patches import patches
from calc.uv.point import PointSource
from calc.uv.screen import FlatScreen, NoScreen, Screen, Weave
from calc.uv.section import Box, HungTube, uvi_field

METER = Doubt("readings", 1.15, "uv_meter_judgement")


def hung(behind_m: float = 0.1, screen: Screen | None = None) -> HungTube:
    own = OwnPoint(PointSource(0.9, behind_m, 0.4), METER)
    lamp = Lamp(12.0, Fixture.POLISHED, 0.1, own=own)
    return HungTube(lamp, 0.3, 0.3, 0.8, screen or NoScreen())


@given(st.floats(0.05, 0.75), st.floats(0.0, 0.3))
def test_straight_below_it_is_what_stands_in_front_of_it(below_m: float, behind_m: float) -> None:
    lamp = hung(behind_m)
    there = float(uvi_field([lamp], 0.3, 0.3, 0.8 - below_m))
    assert there == pytest.approx(uvi_at(lamp.lamp, below_m, NoScreen()))


@given(st.floats(0.0, 6.28), st.floats(0.01, 0.5))
def test_it_is_alike_all_round_and_weaker_aside(angle: float, aside_m: float) -> None:
    x, y = 0.3 + aside_m * np.cos(angle), 0.3 + aside_m * np.sin(angle)
    around, along, below = (
        float(uvi_field([hung()], x_m, y_m, 0.3))
        for x_m, y_m in ((x, y), (0.3 + aside_m, 0.3), (0.3, 0.3))
    )
    assert around == pytest.approx(along)
    assert around < below


def test_an_even_face_far_away_falls_as_both_cosines_and_the_square_of_the_way() -> None:
    aside, below = 0.4, 0.5
    away = hypot(aside, below)
    there = float(uvi_field([hung(0.0)], 0.3 + aside, 0.3, 0.3))
    assert there == pytest.approx(0.9 / away**2 * (below / away) ** 2)


def test_a_screen_takes_its_share_and_a_weave_more_aslant() -> None:
    flat = uvi_field([hung(screen=FlatScreen(0.6))], [0.3, 0.8], 0.3, 0.3)
    bare = uvi_field([hung()], [0.3, 0.8], 0.3, 0.3)
    assert flat == pytest.approx(0.6 * bare)
    woven = uvi_field([hung(screen=Weave(18.0, 16.0, 0.00028))], [0.3, 0.8], 0.3, 0.3) / bare
    assert woven[1] < woven[0] < 1.0


def test_beside_it_nobody_knows_and_straight_below_the_readings_do() -> None:
    below, beside = (place_unknowns([hung()], x, 0.3, 0.3) for x in (0.3, 0.8))
    assert beside.deviation > 2.0 * below.deviation
    assert "uv_beam_judgement" in beside.sources


def test_shares_under_a_small_lamp_carry_the_doubt_of_its_beam() -> None:
    box, platform = Box(1.2, 0.6, 0.85), Platform(0.1, 0.5, 0.1, 0.5, 0.3)
    met = patches([hung()], box, platform, 0.05, 1.0, 4.0)
    assert met.in_range.low < met.in_range.best <= met.in_range.high
    assert not met.too_near
    assert met.shade_chance > 0.9


def test_within_five_centimetres_there_is_no_figure_and_none_above() -> None:
    near, above = uvi_field([hung()], 0.3, 0.3, [0.77, 0.9])
    assert np.isnan(near)
    assert above == 0.0
