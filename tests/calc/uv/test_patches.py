"""What an animal can reach: limits where the answer is known beforehand."""

from dataclasses import replace
from math import log, sqrt

import numpy as np
import pytest

from calc.sources import bibliography
from calc.uv.field_unknowns import field_unknowns, place_unknowns
from calc.uv.ground import HeatPatch, Platform
from calc.uv.lamp import Fixture, Lamp, uvi_at
from calc.uv.lamp_unknowns import unknowns_of
from calc.uv.patches import Overlap, Patches, Shade, _estimate, patches
from calc.uv.screen import FlatScreen, NoScreen
from calc.uv.section import Box, HungTube, uvi_field
from calc.validity import OutsideModelError

LAMP = Lamp(12.0, Fixture.POLISHED)
TUBE = HungTube(LAMP, 0.3, 0.25, 0.6, NoScreen())
BOX = Box(1.2, 0.6, 0.6)
PERCH = Platform(0.2, 0.4, 0.15, 0.35, 0.1)


def judged(
    tube: HungTube = TUBE,
    platform: Platform = PERCH,
    low: float = 3.0,
    high: float = 5.0,
    heat: HeatPatch | None = None,
) -> Patches:
    return patches([tube], BOX, platform, 0.05, low, high, heat)


def test_a_wide_range_takes_the_whole_platform_and_an_absurd_one_nothing() -> None:
    assert judged(low=0.0, high=20.0).in_range.best == 1.0
    assert judged(low=15.0, high=20.0).in_range.best == 0.0


def test_the_share_grows_with_the_range() -> None:
    shares = [judged(low=4.0 - k, high=4.0 + k).in_range.best for k in (0.2, 0.5, 1.0, 2.0)]
    assert shares == sorted(shares)


def test_the_strongest_place_is_under_the_middle_and_the_weakest_in_the_far_corner() -> None:
    found = judged()
    assert found.strongest.x_m == pytest.approx(0.3, abs=0.01)
    assert found.strongest.y_m == pytest.approx(0.25, abs=0.01)
    assert found.strongest.z_m == pytest.approx(0.15)
    assert found.strongest.uvi.best == pytest.approx(uvi_at(LAMP, 0.45, NoScreen()), rel=0.01)
    assert found.weakest.x_m == pytest.approx(1.2, abs=0.02)
    assert found.weakest.y_m > 0.5
    corner = float(uvi_field([TUBE], 1.2, 0.6, 0.05))
    assert found.weakest.uvi.best == pytest.approx(corner)


def test_a_long_box_has_shade_and_a_box_full_of_tubes_has_none() -> None:
    long = patches([TUBE], replace(BOX, length_m=2.4), PERCH, 0.05, 3.0, 5.0)
    assert long.shade is Shade.THERE
    assert 0.1 < long.shade_share.best < 0.9
    many = [replace(TUBE, x_m=x) for x in (0.2, 0.5, 0.8, 1.1)]
    full = patches(many, BOX, PERCH, 0.05, 3.0, 5.0)
    assert full.shade is Shade.NONE
    assert full.shade_share.best == 0.0


def test_a_screen_between_lowers_everything() -> None:
    bare, screened = judged(), judged(replace(TUBE, screen=FlatScreen(0.55)))
    assert screened.strongest.uvi.best == pytest.approx(0.55 * bare.strongest.uvi.best)
    assert screened.shade_share.best >= bare.shade_share.best


@pytest.mark.parametrize(
    ("x", "overlap"), [(0.3, Overlap.TOGETHER), (0.55, Overlap.PARTLY), (1.0, Overlap.APART)]
)
def test_heat_lies_with_the_ultraviolet_or_apart(x: float, overlap: Overlap) -> None:
    perch = Platform(0.1, 0.75, 0.1, 0.4, 0.1)
    found = judged(platform=perch, low=3.0, high=5.0, heat=HeatPatch(x, 0.25, 0.08))
    assert found.overlap is overlap
    assert found.heat_in_range is not None
    assert 0.0 <= found.heat_in_range.low <= found.heat_in_range.high <= 1.0


def test_without_a_heat_lamp_nothing_is_said_of_heat() -> None:
    found = judged()
    assert found.overlap is None
    assert found.heat_in_range is None


def test_a_back_nearer_than_safe_is_told() -> None:
    assert not judged().too_near
    assert judged(platform=replace(PERCH, top_m=0.42), high=20.0).too_near


def test_a_back_inside_the_lamp_is_refused() -> None:
    with pytest.raises(OutsideModelError):
        judged(platform=replace(PERCH, top_m=0.53))


def test_the_doubts_are_those_of_the_lamp_and_of_its_spread() -> None:
    whole = field_unknowns([TUBE], 0.15)
    assert set(whole.sources) <= set(bibliography())
    assert "uv_sideways_judgement" in whole.sources
    lamp = unknowns_of(TUBE.lamp, TUBE.z_m - 0.15, TUBE.screen)
    assert whole.variance == pytest.approx(lamp.variance + (log(1.3) / 1.645) ** 2)


def test_the_spread_sideways_counts_beside_a_tube_and_not_below_it() -> None:
    def beside(across_m: float) -> float:
        return place_unknowns([TUBE], TUBE.x_m, TUBE.y_m + across_m, 0.2).variance

    away = TUBE.z_m - 0.2
    below = unknowns_of(TUBE.lamp, away, TUBE.screen)
    assert beside(0.0) == pytest.approx(below.variance)
    aslant = unknowns_of(TUBE.lamp, away * sqrt(2.0), TUBE.screen)
    assert beside(away) == pytest.approx(aslant.variance + (log(1.3) / 1.645) ** 2)
    assert beside(2.0 * away) > beside(away)


@pytest.mark.parametrize(
    "platform",
    [replace(PERCH, x1_m=1.3), replace(PERCH, y1_m=0.7), replace(PERCH, top_m=0.7)],
)
def test_a_platform_outside_the_box_is_refused(platform: Platform) -> None:
    with pytest.raises(OutsideModelError):
        judged(platform=platform)


def test_a_platform_without_extent_is_refused() -> None:
    with pytest.raises(OutsideModelError):
        Platform(0.4, 0.4, 0.1, 0.2, 0.1)


def test_of_two_narrowest_ranges_one_is_told_and_not_a_wider_one_between_them() -> None:
    cases = [0.0] * 6 + [0.5] * 52 + [1.0] * 6
    found = _estimate(np.array([0.5, *cases]))
    assert (found.low, found.high) == (0.5, 1.0)
