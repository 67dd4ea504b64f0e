"""What was learned of lines that go on: from which lines, and what they do in a conversation."""

from importlib.resources import as_file, files

import numpy as np
import pytest

from bot import guide
from bot.ask import ask
from bot.commands import command_named
from bot.dialogue import START, turn
from bot.dialogue.doing import OPTIONS, ways
from bot.preferences import Preferences
from bot.render.text import render_brief
from tests.bot.dialogue.training import digest, lines

ANYONE = Preferences()
OF_THE_ANSWER = (
    *("why", "again", "simpler", "thanks", "yes", "no", "no idea", "first", "second", "done"),
    *("correct", "off", "unit", "cm", "in", "c", "f"),
)


def last(*said: str) -> tuple[str, str]:
    """Return the question that the last line means, and its brief."""
    dialogue, reply = START, None
    for line in said:
        reply, dialogue = turn(dialogue, line, ANYONE, ask)
    return (reply.asked, render_brief(reply)) if reply else ("", "")


def test_the_model_was_made_from_the_lines_that_are_here() -> None:
    with as_file(files("bot.dialogue") / "following.npz") as path, np.load(path) as kept:
        assert str(kept["digest"]) == digest()


@pytest.mark.parametrize("label", sorted({label for _, _, label, _ in lines()}))
def test_every_label_tells_asks_or_is_about_the_answer(label: str) -> None:
    kind, _, name = label.partition(":")
    assert name in {"f": OPTIONS, "q": ways(), "t": OF_THE_ANSWER}[kind]


@pytest.mark.parametrize("name", ways())
def test_what_is_asked_on_about_is_a_question_or_a_part_of_a_page(name: str) -> None:
    asks = ways()[name].asks
    assert command_named(asks.command) is not None
    if part := asks.values.get("part"):
        page = guide.page(str(asks.values["page"]))
        assert part in [heading for heading, _ in guide.sections(page)]


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        (("night room:80F animal:ball python", "sorry 80 is the cool side"), "temps cool:80"),
        (("temps basking:88F animal:panther chameleon", "hes 4 months old"), "state:young"),
        (
            ("power is out, my ball python is in a 4ft", "its 71 in there now"),
            "animal:royal python",
        ),
        (("temps basking:92F animal:slider turtle", "lamp is 50w"), "watts:50"),
    ],
)
def test_what_is_told_is_merged_and_answered_again(said: tuple[str, ...], meant: str) -> None:
    assert meant in last(*said)[0]


def test_so_long_a_way_is_no_danger() -> None:
    assert "vet" not in last("watts room:70F animal:slider turtle", "like a foot")[1]
