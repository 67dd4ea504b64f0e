"""A set-up told on: how the lamp hangs and what is there already, behind check and next."""

import pytest

from bot.ask import ask
from bot.dialogue import START, turn
from bot.preferences import Preferences

SET_UP = (
    "beardie, 48x24x24in, 34in 12% tube, shiny hood, no mesh, 18in to its back, basking 103F, "
    "cool 79F, night 68F, lights 12 hours, 75W halogen flood"
)


def told(*lines: str) -> str:
    dialogue, text = START, ""
    for line in lines:
        reply, dialogue = turn(dialogue, line, Preferences(), ask)
        assert reply is not None
        text = " ".join(each.text for each in reply.brief)
    return text


@pytest.mark.parametrize(
    ("line", "said"),
    [
        ("side by side", "Yes, all of it is right."),
        ("it hangs right beside the tube", "Yes, all of it is right."),
        ("in a row", "In a row UV and heat do not meet."),
        ("at opposite ends", "UV and heat lie apart."),
    ],
)
def test_a_check_asks_how_the_lamp_hangs_and_takes_the_answer(line: str, said: str) -> None:
    assert "side by side, or in a row?" in told(f"check {SET_UP}")
    assert told(f"check {SET_UP}", line).startswith(said)


def test_what_is_there_already_leads_on_to_the_next_step() -> None:
    first = told(f"next {SET_UP}")
    second = told(f"next {SET_UP}", "two hides, and side by side")
    third = told(f"next {SET_UP}", "two hides, and side by side", "i have a uv meter")
    assert "hide" in first
    assert "read the UV index" in second
    assert "LED bar" in third
