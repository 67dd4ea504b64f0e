"""Kinds of UV lamps without figures answer from their keeper's readings in every question."""

import pytest

from bot.ask import ask
from bot.language.uv_lamps import TUBES, UvLamp
from bot.preferences import Preferences
from bot.reply import Reply
from tests.bot.saying.pinning import everything

READ = "readings:6 at 12in, 3.2 at 18in, 2 at 24in"
BOX = "distance:18in enclosure:48x24x24in animal:bearded dragon"
OTHERS = [kind for kind in UvLamp if kind not in (UvLamp.T5_HO, UvLamp.UNKNOWN)]


@pytest.mark.parametrize("kind", OTHERS, ids=str)
@pytest.mark.parametrize(
    "line",
    [
        f"distance screen:none {READ} animal:bearded dragon",
        f"uvi distance:20in {READ} animal:bearded dragon",
        f"meter {READ} animal:bearded dragon",
        f"section {READ} {BOX}",
        f"dose hours:10h {READ} distance:15in",
    ],
    ids=lambda line: line.partition(" ")[0],
)
def test_readings_take_the_place_of_figures(kind: UvLamp, line: str, anyone: Preferences) -> None:
    reply = ask(f"{line} lamp:{kind.value}", anyone)
    assert reply.status == "ok"
    assert reply.values


@pytest.mark.parametrize("kind", OTHERS, ids=str)
def test_without_readings_no_map_is_drawn(kind: UvLamp, anyone: Preferences) -> None:
    reply = ask(f"section {BOX} lamp:{kind.value}", anyone)
    assert reply.status == "problem"
    assert "Only a UV meter" in reply.answer


def test_a_map_by_readings_at_one_place_needs_a_tube(anyone: Preferences) -> None:
    small, tube = (
        ask(f"section readings:4 at 12in {BOX} lamp:{kind}", anyone) for kind in ("compact", "T8")
    )
    assert small.status == "problem"
    assert tube.status == "ok"


def strongest(reply: Reply) -> float:
    return next(value.best for value in reply.values if value.name == "uvi_strongest")


def test_the_strongest_place_of_a_map_is_what_uvi_says_at_its_distance(anyone: Preferences) -> None:
    room = ask(f"section {READ} {BOX} lamp:metal halide lamp", anyone)
    below = ask(f"uvi {READ} distance:18in animal:bearded dragon lamp:metal halide lamp", anyone)
    expected = next(value.best for value in below.values if value.name == "uvi")
    assert strongest(room) == pytest.approx(expected, rel=0.03)


@pytest.mark.parametrize("line", [f"section {BOX}", "dose hours:10h distance:15in"])
def test_readings_that_cannot_be_are_refused(line: str, anyone: Preferences) -> None:
    reply = ask(f"{line} readings:60 at 12in, 4 at 18in", anyone)
    assert reply.status == "problem"
    assert "readings do not agree" in reply.answer


@pytest.mark.parametrize("kind", [kind for kind in OTHERS if kind not in TUBES], ids=str)
def test_nobody_is_told_a_time_in_the_light_of_a_lamp_whose_shortest_waves_are_unknown(
    kind: UvLamp, anyone: Preferences
) -> None:
    reply = ask(f"dose uvi:4 hours:10h lamp:{kind.value}", anyone)
    assert not any("Healthy adults" in line.text for line in reply.brief)
    assert "nobody can promise" in everything(reply).lower()


def test_at_arms_length_a_small_lamp_counts_with_light_from_far_behind(
    anyone: Preferences,
) -> None:
    small, tube = (
        ask(f"dose uvi:4 hours:4h distance:14in lamp:{kind}", anyone)
        for kind in ("compact lamp", "T5 HO tube")
    )
    at_arm = [
        next(v.best for v in reply.values if v.name == "uvi_at_arm") for reply in (small, tube)
    ]
    near, arm, behind = 14 * 0.0254, 0.6, 0.3
    assert at_arm[0] == pytest.approx(4 * ((near + behind) / (arm + behind)) ** 2)


def test_it_is_told_in_german_too() -> None:
    reply = ask(f"section {READ} {BOX} lamp:compact lamp", Preferences(language="de"))
    assert "UV-Lampe" in everything(reply)


@pytest.mark.parametrize(
    ("line", "readings"),
    [
        ("metal halide, 8 at 12 inch, bearded dragon, how far", "8 at 12 in"),
        ("8 at 12 inch with a metal halide, bearded dragon, how far", "8 at 12 in"),
        ("metal halide reads 3 at 20 inch, bearded dragon, how far", "3 at 20 in"),
        ("Metalldampflampe, 8 bei 30 cm, Bartagame, wie weit weg", "8 at 30 cm"),
    ],
)
def test_a_bare_reading_beside_a_lamp_without_a_strength_is_heard(line: str, readings: str) -> None:
    reply = ask(line, Preferences())
    assert reply.meant is not None
    assert reply.meant.command == "meter"
    assert reply.meant.given["readings"] == readings


@pytest.mark.parametrize(
    "line",
    [
        "2 at 12 inch metal halide lamps, bearded dragon",
        "compact uvb 5.0 at 12 inches, bearded dragon",
        "tube 12 at 12 inches, bearded dragon",
    ],
)
def test_a_number_of_lamps_or_a_strength_is_no_reading(line: str) -> None:
    reply = ask(line, Preferences())
    assert not [one for one in reply.heard if one.name.startswith("uvi")]
