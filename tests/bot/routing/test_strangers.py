"""Animals that nobody here knows, pets that are none, and a temperature without its place."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.render.text import render_brief

ANYONE = Preferences()


def brief(text: str) -> str:
    return render_brief(ask(f"ask {text}", ANYONE))


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("what heat for an earless monitor", "earless monitor"),
        ("basking for a lesser speckled dune monitor please", "dune monitor"),
        ("lighting for a false gharial lol", "false gharial"),
        ("light for my zorblax", "zorblax"),
    ],
)
def test_an_animal_that_nobody_knows_is_said_to_be_unknown(text: str, name: str) -> None:
    assert brief(text).startswith("I do not know the animal")
    assert name in brief(text)


@pytest.mark.parametrize(
    "text", ["uvb for my setup", "do i need uvb for my python", "best lamp for my kitchen"]
)
def test_what_is_no_name_is_not_taken_for_one(text: str) -> None:
    assert "I do not know the animal" not in brief(text)


def test_a_pet_that_is_no_reptile_is_not_answered_with_a_reptiles_lamp() -> None:
    assert "I cannot help with that" in brief("what heat lamp does my hamster need")


def test_a_short_name_is_heard_beside_a_lamp() -> None:
    assert ask("ask 6% t5 10 in over leo ok", ANYONE).asked.endswith("distance:10 in")
    assert "animal:leopard gecko" in ask("ask 6% t5 10 in over leo ok", ANYONE).asked
    assert "animal:slider turtle" in ask("ask RES water 72f", ANYONE).asked


def test_a_temperature_without_its_place_is_judged_as_air_or_asked_about() -> None:
    assert ask("ask crestie 27c too hot?", ANYONE).asked.startswith("temps cool:27 C")
    asked = ask("ask beardie 35c too hot?", ANYONE)
    assert [offer.command for offer in asked.offers] == ["temps", "temps", "night"]


def test_two_thermometers_that_disagree_are_no_reading() -> None:
    assert "Put both on the same thing" in brief("gun says 38c probe says 33c which is it")
