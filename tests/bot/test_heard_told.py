"""What the JSON of a reply lists as heard: values in SI, how they stand, of which animal."""

import json

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import Heard


def heard(line: str) -> dict[str, Heard]:
    return {each.name: each for each in ask(line, Preferences()).heard}


def test_what_was_heard_is_listed_in_si_with_its_words() -> None:
    told = heard("check beardie, 12% tube 12 inches away, basking 40C, lights 12 hours a day")
    assert (told["animal"].value, told["animal"].sort) == ("bearded dragon", "is")
    assert (told["tube"].value, told["tube"].unit) == (12.0, "%")
    assert told["distance"].value == pytest.approx(0.3048)
    assert (told["basking"].value, told["basking"].unit) == (40.0, "degC")
    assert (told["hours"].value, told["hours"].unit) == (12.0, "h")
    assert told["basking"].text == "basking 40C"


def test_a_range_keeps_both_ends_and_a_guessed_unit_is_marked() -> None:
    cool = heard("check beardie, cool side 75 to 80")["cool"]
    assert cool.value == pytest.approx((23.888889, 26.666667))
    assert cool.guessed
    assert not heard("check beardie, cool side 75F to 80F")["cool"].guessed


def test_how_it_stands_and_what_it_corrects_is_listed() -> None:
    told = ask("check beardie, basking used to be 120. cool 90, oops, 80", Preferences()).heard
    assert {(each.name, each.sort, each.corrects) for each in told} >= {
        ("basking", "was", False),
        ("cool", "is", True),
    }


def test_what_is_unclear_is_listed_as_such() -> None:
    told = ask("check beardie, cool side 45", Preferences()).heard
    assert [each.text for each in told if each.sort == "unclear"] == ["cool side 45"]


def test_of_two_animals_each_fact_names_its_own() -> None:
    told = ask("check corn snake: warm side 88. beardie: cool side 80", Preferences()).heard
    assert {
        each.name: each.animal for each in told if each.sort == "is" and each.name != "animal"
    } == {
        "warm": 0,
        "cool": 1,
    }


def test_a_question_in_free_words_lists_it_too_even_where_something_is_missing() -> None:
    reply = ask("how far from my beardie with a 12% tube", Preferences())
    assert {each.name for each in reply.heard} >= {"animal", "tube"}
    assert json.loads(reply.model_dump_json())["heard"][0]["sort"] == "is"


def test_a_question_by_its_options_heard_nothing() -> None:
    line = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
    assert ask(line, Preferences()).heard == ()
