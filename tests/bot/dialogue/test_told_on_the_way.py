"""What was told on the way stays: readings, a heat lamp, an age, a unit; what was taken is said."""

import pytest

from bot.ask import ask
from bot.dialogue import START, Dialogue, turn
from bot.preferences import Preferences
from bot.render.text import render_brief

ANYONE = Preferences()


def talk(*said: str) -> tuple[str, str, Dialogue]:
    """Return the question that the last line means, its brief, and the dialogue behind it."""
    dialogue, reply = START, None
    for line in said:
        reply, dialogue = turn(dialogue, line, ANYONE, ask)
    return (*((reply.asked, render_brief(reply)) if reply else ("", "")), dialogue)


@pytest.mark.parametrize(
    ("said", "meant"),
    [
        (("temps basking:34C animal:corn snake", "lamp 75w, 30 cm away"), "surface:34C"),
        (("temps basking:43C animal:bearded dragon", "thats the air not the rock"), "warm:43C"),
        (("temps cool:29C animal:leopard gecko", "das ist die luft"), "warm:29C"),
        (("my turtle tank water is 68 is it bad", "slider"), "temps water:68 F"),
        (("is 35 ok", "crestie"), "animal:crested gecko"),
        (("needs animal:corn snake about:night", "it is about 12 in the shed"), "night room:12 C"),
        (("meter readings:7 at 8 in animal:bearded dragon", "what if i raise it to 12"), "12 in"),
        (("meter readings:7 at 8 in animal:bearded dragon", "it says 3.1 now"), "3.1 at 8 in"),
        (
            ("what uvi does a crested gecko need", "mine gets 2"),
            "check animal:crested gecko meter:2",
        ),
        (("night room:50F animal:leopard gecko", "shes a baby"), "state:young"),
        (("night room:50F animal:leopard gecko", "how many watts", "36x18x18in"), "36x18x18"),
        (("tube distance:40cm animal:corn snake", "its a mesh"), "screen:30%"),
        (("basking surface:50C distance:20cm animal:ackie monitor", "air 33"), "air:33"),
        (("7% or 12% for a red eared slider?", "ok the first one then. how far"), "tube:7%"),
    ],
)
def test_what_was_told_is_in_the_question_after_it(said: tuple[str, ...], meant: str) -> None:
    assert meant in talk(*said)[0]


@pytest.mark.parametrize(
    ("said", "beside"),
    [
        (("temps warm:43C animal:bearded dragon", "rock says 52"), "like before"),
        (("needs ackie monitor", "surface is 60"), "Wrong?"),
        (("was braucht ein stachelschwanzwaran", "der stein hat 60"), "Falsch?"),
        (("tube distance:40cm animal:corn snake", "its a mesh"), "mesh of 30 %"),
    ],
)
def test_what_was_taken_is_said(said: tuple[str, ...], beside: str) -> None:
    assert beside in " ".join(talk(*said)[1].split())


def test_another_animal_lives_at_other_temperatures() -> None:
    _, _, behind = talk("temps basking:110F animal:bearded dragon", "needs corn snake")
    assert "basking" not in behind.known


def test_what_a_lamp_warmed_is_forgotten_once_it_was_moved() -> None:
    _, _, behind = talk("temps basking:110F animal:bearded dragon", "i raised the lamp 3 inches")
    assert "basking" not in behind.known


def test_no_animal_that_an_example_was_made_for_is_kept() -> None:
    _, _, behind = talk("my gecko is 31 under the lamp is it good")
    assert behind.known["animal"] == "gecko"
    assert "leopard" not in behind.packed().split('"offers"')[0]


def test_a_small_number_where_uv_is_spoken_of_is_no_cold_night() -> None:
    _, brief, _ = talk("meter readings:5.5 at 10 in animal:panther chameleon", "it says 3.1 there")
    assert "warmer room" not in brief


def test_the_page_before_is_kept_with_the_conversation() -> None:
    _, _, behind = talk("which thermostat for a heat mat")
    assert behind.page
    assert Dialogue.unpacked(behind.packed()).page == behind.page
