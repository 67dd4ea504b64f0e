"""Tubes, fixtures and screens as people name them."""

import pytest

from bot.language.errors import NotUnderstoodError
from bot.language.lamps import (
    Fixture,
    OtherLamp,
    TubeStrength,
    read_fixture,
    read_tube,
    read_tube_strength,
)
from bot.language.screens import Blocks, NoScreen, Passes, Weave, read_screen
from bot.language.uv_lamps import UvLamp, read_uv_lamp
from tests.bot.refusing import refused, sentence


@pytest.mark.parametrize(
    ("text", "percent"),
    [
        *(("12%", 12), ("6 %", 6), ("12", 12), ("6", 6), ("14 percent", 14), ("7,5%", 7.5)),
        *(("T5 HO 12%", 12), ("12% T5HO", 12), ("t5 12", 12), ("UVB 12%", 12), ("10%", 10)),
        *(("12 % tube 39W", 12), ("linear T5 HO 6%", 6), ("１２％", 12), ("1%", 1), ("20%", 20)),
    ],
)
def test_a_label_strength_is_read(text: str, percent: float) -> None:
    strength = read_tube_strength(text)
    assert (strength.percent, strength.older_scale) == (percent, False)


@pytest.mark.parametrize(
    ("text", "percent"),
    [("10", 12), ("5", 6), ("10.0", 12), ("5.0", 6), ("5,0", 6), ("T5 10.0", 12), ("UVB 5.0", 6)],
)
def test_the_older_scale_means_a_class(text: str, percent: float) -> None:
    strength = read_tube_strength(text)
    assert (strength.percent, strength.older_scale) == (percent, True)


@pytest.mark.parametrize(
    ("text", "reason"),
    [
        ("compact 10.0", "no figures for other lamps"),
        ("10.0 coil bulb", "no figures for other lamps"),
        ("mercury vapour", "no figures for other lamps"),
        ("MVB 100W", "no figures for other lamps"),
        ("3-in-1 bulb", "no figures for other lamps"),
        ("T8 10.0", "no figures for other lamps"),
        ("25%", "from 1% to 20%"),
        ("0.5%", "from 1% to 20%"),
        ("ten", "from 1% to 20%"),
        ("strong", "from 1% to 20%"),
        ("12% 6%", "from 1% to 20%"),
    ],
)
def test_what_is_no_tube_for_this_is_refused_with_its_reason(text: str, reason: str) -> None:
    with refused(reason):
        read_tube_strength(text)


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("t8", UvLamp.OTHER_TUBE),
        ("T8 5.0", UvLamp.OTHER_TUBE),
        ("T-12 10.0", UvLamp.OTHER_TUBE),
        ("normal fluorescent", UvLamp.OTHER_TUBE),
        ("T5 HE 28W", UvLamp.OTHER_TUBE),
        ("plain T5", UvLamp.OTHER_TUBE),
        ("uvb 100 compact", UvLamp.COMPACT),
        ("Spiral bulb 26W", UvLamp.COMPACT),
        ("CFL 10.0", UvLamp.COMPACT),
        ("screw-in UVB", UvLamp.COMPACT),
        ("mvb", UvLamp.MERCURY),
        ("Mercury bulb 160W", UvLamp.MERCURY),
        ("self ballasted", UvLamp.MERCURY),
        ("halide", UvLamp.METAL_HALIDE),
        ("HID 70W", UvLamp.METAL_HALIDE),
        ("led uvb bar", UvLamp.LED),
        ("UVB LED", UvLamp.LED),
        ("unknown", UvLamp.UNKNOWN),
        ("no label", UvLamp.UNKNOWN),
    ],
)
def test_another_kind_of_lamp_is_no_strength(text: str, kind: UvLamp) -> None:
    tube = read_tube(text)
    assert isinstance(tube, OtherLamp)
    assert tube.kind is kind
    assert read_uv_lamp(text) is kind


@pytest.mark.parametrize("text", ["12%", "T5 12%", "10.0", "T5 HO 12%", "12% high output tube"])
def test_a_strength_is_that_of_a_t5_ho_tube_and_says_whether_it_was_told(text: str) -> None:
    tube = read_tube(text)
    assert isinstance(tube, TubeStrength)
    assert tube.is_told is ("ho" in text.lower() or "high output" in text)


@pytest.mark.parametrize(("text", "wish"), [("compct", "compact"), ("halid", "halide")])
def test_a_misspelt_kind_is_asked_about(text: str, wish: str) -> None:
    with refused(f"did you mean {wish}"):
        read_uv_lamp(text)


@pytest.mark.parametrize(
    ("text", "fixture"),
    [
        *(
            ("polished", Fixture.POLISHED),
            ("Shiny", Fixture.POLISHED),
            ("mirror", Fixture.POLISHED),
        ),
        *(("reflector", Fixture.POLISHED), ("plain", Fixture.PLAIN), ("white", Fixture.PLAIN)),
        *(("no reflector", Fixture.PLAIN), ("None", Fixture.PLAIN), ("un-polished", None)),
    ],
)
def test_a_fixture_is_read(text: str, fixture: Fixture | None) -> None:
    if fixture is None:
        with refused("did you mean unpolished"):
            read_fixture(text)
    else:
        assert read_fixture(text) is fixture


def test_no_screen_has_many_names() -> None:
    for text in ("none", "No Screen", "nothing", "inside", "open", "no mesh."):
        assert isinstance(read_screen(text), NoScreen)


@pytest.mark.parametrize(
    ("text", "taken"),
    [
        *(("45%", 0.45), ("blocks 45%", 0.45), ("45 % blocked", 0.45), ("0%", 0.0)),
        *(("mesh that blocks 30%", 0.3), ("screen blocking 45%", 0.45), ("45% screen", 0.45)),
    ],
)
def test_a_percentage_is_what_the_screen_takes(text: str, taken: float) -> None:
    screen = read_screen(text)
    assert isinstance(screen, Blocks)
    assert (screen.fraction, screen.text) == (taken, text)


@pytest.mark.parametrize("text", ["passes 55%", "lets through 55 %", "55% through", "55% open"])
def test_a_percentage_let_through_is_said_so(text: str) -> None:
    screen = read_screen(text)
    assert isinstance(screen, Passes)
    assert screen.fraction == 0.55


@pytest.mark.parametrize(
    ("text", "x", "y", "wire_mm"),
    [
        ("18 mesh 0.009 in", 18, 18, 0.2286),
        ("18x16 0.011in", 18, 16, 0.2794),
        ("18×16 mesh 0.28mm", 18, 16, 0.28),
        ("18 by 16 mesh, wire 0.011 in", 18, 16, 0.2794),
        ('18 per inch 0.009"', 18, 18, 0.2286),
        ("8/in 0.028in", 8, 8, 0.7112),
        ("7 per cm 0.28 mm", 17.78, 17.78, 0.28),
        ("7x6/cm with 0,28 mm wire", 17.78, 15.24, 0.28),
    ],
)
def test_a_weave_is_counted_per_inch_unless_it_says_otherwise(
    text: str, x: float, y: float, wire_mm: float
) -> None:
    screen = read_screen(text)
    assert isinstance(screen, Weave)
    assert screen.mesh_x_per_m * 0.0254 == pytest.approx(x, rel=1e-12)
    assert screen.mesh_y_per_m * 0.0254 == pytest.approx(y, rel=1e-12)
    assert screen.wire_m * 1000 == pytest.approx(wire_mm, rel=1e-12)


@pytest.mark.parametrize("text", ["mesh", "screen", "yes", "on top of the mesh", "fine mesh"])
def test_a_screen_without_a_figure_is_asked_about_with_a_way_to_go_on(text: str) -> None:
    with pytest.raises(NotUnderstoodError) as caught:
        read_screen(text)
    assert "Cannot tell?" in sentence(caught.value)
    assert isinstance(read_screen(caught.value.example), Blocks)


@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("18x16", "thickness of its wire"),
        ("18 mesh", "thickness of its wire"),
        ("18 mesh 0.009", "with a unit"),
        ("18 mesh 0.1 in", "thinner than the step"),
        ("0 mesh 0.009 in", "thinner than the step"),
        ("100%", "lets something through"),
        ("passes 0%", "lets something through"),
        ("150%", "from 0% to 100%"),
        ("45", "how much it blocks"),
        ("glass", "nearly all of the UV"),
    ],
)
def test_what_is_no_screen_is_refused(text: str, wanted: str) -> None:
    with refused(wanted):
        read_screen(text)


@pytest.mark.parametrize("text", ["not sure", "idk", "a black one"])
def test_who_does_not_know_the_screen_is_told_how_to_go_on(text: str) -> None:
    with refused(r"Cannot tell\? Insect screen"):
        read_screen(text)
