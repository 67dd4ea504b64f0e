"""A UV far above the range is switched off first, through whichever question it is told."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences

OFF = "Switch the UV tube off now, until it hangs right."
SAME = (
    "uvi tube:12% reflector:polished screen:none distance:6in animal:beardie",
    "uvi tube:14% reflector:not sure screen:none distance:6in animal:beardie",
    "check beardie, 12% tube, polished, no mesh, 6in to his back",
    "meter readings:14 at 6in animal:beardie",
    "meter readings:7.5 at 12in animal:leopard gecko",
    "uvi readings:7.5 at 12in distance:12in animal:leopard gecko",
)


@pytest.mark.parametrize("line", SAME)
def test_every_question_switches_it_off_first(line: str, anyone: Preferences) -> None:
    reply = ask(line, anyone)
    assert reply.answer.startswith(OFF)
    assert reply.steps[:2] == (OFF, "Leave the warmth on.")
    assert [danger.key for danger in reply.dangers] == ["uv_too_strong"]


@pytest.mark.parametrize(
    "line",
    [
        "uvi tube:12% reflector:polished screen:none distance:14in animal:beardie",
        "meter readings:3 at 12in animal:leopard gecko",
        "meter readings:9 at 12in animal:beardie",
    ],
)
def test_what_is_only_too_strong_is_moved(line: str, anyone: Preferences) -> None:
    assert OFF not in ask(line, anyone).answer


@pytest.mark.parametrize(
    "line", ["meter readings:16 at 8in", "uvi tube:12% reflector:polished screen:none distance:6in"]
)
def test_it_does_not_wait_for_the_animals_name(line: str, anyone: Preferences) -> None:
    reply = ask(line, anyone)
    assert reply.status == "ok"
    assert reply.answer.startswith(OFF)
    assert "I still need animal" in reply.answer


def test_a_mild_place_only_asks_for_the_animal(anyone: Preferences) -> None:
    assert ask("meter readings:4 at 12in", anyone).status == "problem"


@pytest.mark.parametrize(
    "line",
    [
        "uvi distance:3in lamp:mercury vapour lamp animal:bearded dragon",
        "check my bearded dragon is 3 inches under a mercury vapor bulb, distance 3in",
        "check animal:bearded dragon lamp:metal halide lamp distance:3in",
        "meter readings:14 at 12in, 9 at 15in, 6 at 18in lamp:mercury vapour lamp animal:beardie",
        "check his eyes are swollen shut since the new mercury vapour bulb, 3in above him",
    ],
)
def test_the_warmth_of_a_lamp_that_is_both_is_not_left_on(line: str, anyone: Preferences) -> None:
    reply = ask(line, anyone)
    told = " ".join((reply.title, reply.answer, *reply.steps))
    assert reply.dangers
    assert "warmth on" not in told
    assert "that lamp" in told


def test_a_tube_goes_off_and_the_warmth_stays(anyone: Preferences) -> None:
    reply = ask("check animal:bearded dragon tube:12% distance:3in", anyone)
    assert reply.title == "Switch the UV tube off now"
    assert "Leave the warmth on." in reply.steps
