"""The one next step: never past danger, the bare minimum, or a limit; light after all else."""

import re

import pytest

from bot.ask import ask
from bot.language.errors import NotUnderstoodError
from bot.language.there import There, read_there, there_in
from bot.preferences import LANGUAGES, Language, Preferences
from bot.reply import Reply
from calc.animals import animals
from calc.heat.enclosure import Enclosure
from calc.light.bands import LightLife, life_of
from calc.setup.ladder import LevelUp, bar_rise_k, next_level

ANYONE = Preferences()
FINE = (
    "next beardie, 34in 12% tube, shiny hood, no mesh, 18in to its back, meter reads uvi 4.0, "
    "basking 103F, cool {cool}, night {night}, lights 12 hours{more}"
)


def asked(cool: str = "79F", night: str = "68F", more: str = "") -> Reply:
    return ask(FINE.format(cool=cool, night=night, more=more), ANYONE)


def brief(reply: Reply) -> str:
    return " ".join(line.text for line in reply.brief)


def test_shade_comes_before_light_and_light_before_the_rest() -> None:
    assert "hide" in asked().brief[0].text
    assert "LED bar" in asked(more=" there:hides").brief[0].text
    assert "LED" not in asked(more=" there:hides, white light").brief[0].text


@pytest.mark.parametrize(
    ("cool", "night"), [("95F", "68F"), ("60F", "68F"), ("79F", "40F"), ("79F", "85F")]
)
def test_brightness_is_never_pushed_while_something_is_wrong(cool: str, night: str) -> None:
    told = brief(asked(cool=cool, night=night, more=" there:hides"))
    assert "LED" not in told
    assert "Next:" not in told


@pytest.mark.parametrize("left_out", ["basking 103F, ", "meter reads uvi 4.0, ", "lights 12 hours"])
def test_brightness_is_never_pushed_while_something_is_open(left_out: str) -> None:
    line = FINE.format(cool="79F", night="68F", more="").replace(left_out, "").replace("34in ", "")
    told = brief(ask(f"{line} there:hides", ANYONE))
    assert "Next:" not in told


def test_a_danger_stands_first_and_no_step_up_is_told() -> None:
    reply = ask("next beardie, basking 140F, cool 100F there:hides", ANYONE)
    assert reply.alarms
    assert "LED" not in brief(reply)


def test_a_bar_that_would_warm_the_cool_end_past_its_range_is_left_out() -> None:
    small = ", room 75F, 24x12x12in"
    reply = asked(cool="82F", more=f"{small} there:hides")
    assert "LED" not in reply.brief[0].text
    assert any("left out a bright bar" in why for why in reply.why)


@pytest.mark.parametrize("slug", animals())
def test_no_animal_of_the_night_gets_a_bright_light(slug: str) -> None:
    animal = animals()[slug]
    taken = set[LevelUp]()
    while (step := next_level(animal, taken)) is not LevelUp.NOTHING:
        taken.add(step)
    if life_of(animal) in (None, LightLife.NIGHT):
        assert LevelUp.WHITE_LIGHT not in taken
    assert (LevelUp.HIDES in taken) is not animal.is_of_water_alone


def test_what_would_lead_past_a_limit_is_no_step() -> None:
    dragon = animals()["bearded-dragon"]
    everything = set(LevelUp) - {LevelUp.WIDE_UV, LevelUp.WHITE_LIGHT, LevelUp.NOTHING}
    assert next_level(dragon, everything) is LevelUp.WHITE_LIGHT
    assert next_level(dragon, everything, bar_fits=False) is LevelUp.WIDE_UV
    assert next_level(dragon, everything, bar_fits=False, more_uv_fits=False) is LevelUp.NOTHING


def test_a_bar_warms_a_small_box_more_than_a_large_one() -> None:
    dragon = animals()["bearded-dragon"]
    small, large = Enclosure(0.6, 0.3, 0.3), Enclosure(1.8, 0.6, 0.6)
    in_small, in_large = (bar_rise_k(box, 21.0, 25.0, dragon).by_k for box in (small, large))
    assert in_small > in_large > 0.0


@pytest.mark.parametrize(
    ("text", "found"),
    [
        ("two hides and a uv meter", {There.HIDES, There.METER}),
        ("no plants, led bar", {There.WHITE_LIGHT}),
        ("zwei röhren", {There.WIDE_UV}),
        ("nothing of that", set()),
    ],
)
def test_what_is_there_is_heard_and_what_is_denied_is_not(text: str, found: set[There]) -> None:
    assert there_in(text) == found


def test_what_is_not_known_to_be_there_is_refused() -> None:
    assert read_there("none") == frozenset()
    for text in ("", "hides, trumpet", "x" * 3000):
        with pytest.raises(NotUnderstoodError):
            read_there(text)


def test_what_is_asked_about_a_set_up_is_no_wish_for_it() -> None:
    words = (
        "beardie 48x24x24in, 34in 12% t5, shiny hood, no mesh, 18in to back, basking 103F, cool "
        "79F, night 68F, lights 12 hours, two hides"
    )
    for opening in ("what should i upgrade next: ", "what can i improve? ", ""):
        told = ask(f"next {words}" if not opening else opening + words, ANYONE)
        assert told.command == "next"
        assert told.brief[0].text.startswith("Next: read the UV index")


PATCHED = (
    "next beardie, 48x24x24in, room 70F, 34in 12% tube, shiny hood, no mesh, 18in to its back, "
    "lamp beside the tube, meter reads uvi 4.0, basking 103F, cool 79F, night 68F, lights 12 hours "
    "there:hides, white light"
)


@pytest.mark.parametrize("language", LANGUAGES)
def test_two_heat_lamps_tell_how_much_wider_the_patch_of_sun_gets(language: Language) -> None:
    reply = ask(PATCHED, Preferences(language=language))
    then = {value.name: value.best for value in reply.values}["patch_of_sun"]
    (line,) = (line.text for line in reply.brief if line.text.count("%") == 2)
    now, after = (int(found) / 100.0 for found in re.findall(r"(\d+)", line))
    assert now < after == pytest.approx(then, abs=0.006)
    assert len(line) <= 38
    # Without the box nobody can say.
    bare = ask(PATCHED.replace("48x24x24in, ", ""), Preferences(language=language))
    assert "patch_of_sun" not in {value.name for value in bare.values}
