"""Hazards are heard in words, their look-alikes are not, and no text makes the listening fail."""

import tomllib
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.dangers import listen
from bot.dangers.figures import LEVELS_C
from bot.dangers.pairs import pairs
from bot.dangers.table import hazards
from bot.dangers.thesaurus import listed

_SIGNS = tomllib.loads((Path(__file__).parent / "signs.toml").read_text(encoding="utf-8"))
# What figures are called besides their levels of warmth.
_FIGURES = """
degrees t_cold t_freezing distance near wood_near touch_near hours_long hours watts uvi_strong
uvi_num number maybe_cold maybe_small watts_bare percent_strong over_watts
"""
# Hazards whose first act is the same, or does the other's as well.
_EQUAL = {
    ("fire", "touching"),
    ("fire", "hot_lead"),
    ("fire", "falling_lamp"),
    ("box_too_hot", "power_cut_hot"),
    ("box_too_hot", "locked_in_heat"),
    ("uv_wrong_animal", "uv_too_strong"),
    ("uv_wrong_animal", "eyes_after_uv"),
    ("animal_burn", "trauma"),
    ("animal_burn", "no_guard"),
    ("too_hot_wish", "box_too_hot"),
    ("too_hot_wish", "uv_too_strong"),
}
# Sentences under "not" that tell another hazard.
_ANOTHER = {"my beardie burned his belly": "animal_burn"}


def _is_right(wanted: str, key: str) -> bool:
    return wanted == key or (wanted, key) in _EQUAL or (key, wanted) in _EQUAL


@pytest.mark.parametrize(
    ("key", "text"), [(key, text) for key, row in _SIGNS.items() for text in row["signs"]]
)
def test_a_hazard_is_heard_first(key: str, text: str) -> None:
    assert _is_right(key, listen(text)[0].key)


@pytest.mark.parametrize("text", [text for row in _SIGNS.values() for text in row["not_signs"]])
def test_a_look_alike_is_no_alarm(text: str) -> None:
    alarms = [alarm.key for alarm in listen(text) if not alarm.asked]
    assert alarms == ([_ANOTHER[text]] if text in _ANOTHER else [])


def test_every_list_that_a_pair_names_is_there() -> None:
    there = set(listed("groups.toml")) | set(LEVELS_C) | set(_FIGURES.split())
    for file in ("things.toml", "bodies.toml", "states.toml", "beside.toml", "moods.toml"):
        there |= set(listed(file))
    named = {
        name
        for rows in pairs().values()
        for pair in rows
        for name in (*pair.first, *(name for place in pair.others for name in place.names))
    }
    assert named <= there


def test_every_hazard_of_the_table_has_pairs_and_sentences() -> None:
    assert set(_SIGNS) == set(pairs()) == set(hazards())


@given(st.text(max_size=2500))
def test_no_text_makes_it_fail_and_what_it_quotes_stands_there(text: str) -> None:
    for alarm in listen(text):
        assert alarm.key in hazards()
        assert alarm.words in text


_PIECES = """
the lamp is not smoking 104F , . and he wont his eyes limp can i under wood 6 in t5 uvb water cool
side no thermostat what if last year healed ? fell burn hot plug % - ' 24/7 ° my hand now since new
"""
_WORDS = st.sampled_from(_PIECES.split())


@given(st.lists(_WORDS, max_size=60))
def test_case_quotes_and_blanks_change_nothing(words: list[str]) -> None:
    text = " ".join(words)
    heard = [(alarm.key, alarm.asked, alarm.urgency) for alarm in listen(text)]
    for other in (text.upper(), text.replace("'", "’"), text.replace(" ", "  "), f"  {text} "):
        assert [(alarm.key, alarm.asked, alarm.urgency) for alarm in listen(other)] == heard


def test_what_stands_behind_two_thousand_characters_is_not_read() -> None:
    assert listen("x" * 2000 + " the plug is melting") == ()
    assert listen("x" * 1970 + " the plug is melting")[0].key == "fire"


def test_what_is_told_comes_before_what_is_asked_and_each_by_its_rank() -> None:
    alarms = listen("how do i stop a plug from melting? he is limp")
    assert [(alarm.key, alarm.asked) for alarm in alarms] == [
        ("not_moving", False),
        ("fire", True),
    ]
    alarms = listen("he is limp. the plug is melting")
    assert [alarm.key for alarm in alarms] == ["fire", "not_moving"]


@pytest.mark.parametrize(
    ("text", "urgency"),
    [
        ("he is bleeding and it wont stop", "now"),
        ("a bite wound on his tail", ""),
        ("she is gasping for air", "now"),
        ("she wheezes", ""),
        ("his eye is swollen shut", "today"),
        ("one eye stays shut in the day", ""),
    ],
)
def test_what_makes_it_more_urgent_is_heard(text: str, urgency: str) -> None:
    assert listen(text)[0].urgency == urgency


@pytest.mark.parametrize(
    "text",
    [
        "my beardie is limp under the lamp",
        "my bearded dragon is limp and gaping under the lamp",
        "my gecko is limp in the cool end",
    ],
)
def test_a_limp_animal_is_heard_wherever_it_lies(text: str) -> None:
    assert "not_moving" in [alarm.key for alarm in listen(text)]
    assert listen("limp lettuce under the lamp for my beardie") == ()


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("my bearded dragon is unconscious under the lamp", "not_moving"),
        ("my snake is not moving under the lamp", "not_moving"),
        ("my snake is not moving", "not_moving"),
        ("my leopard gecko isn't moving", "not_moving"),
        ("my chameleon passed out", "not_moving"),
        ("mein gecko bewegt sich nicht unter der lampe", "not_moving"),
        ("mein skink liegt bewusstlos unter der lampe", "not_moving"),
        ("my gecko passed out in the heat", "overheated"),
        ("bearded dragon, lights on all night, uv 12 hours", "light_all_day"),
    ],
)
def test_what_cannot_wait_is_heard_whatever_was_learned(text: str, key: str) -> None:
    assert listen(text)[0].key == key


@pytest.mark.parametrize(
    "text",
    [
        "my husband is unconscious on the sofa after the match",
        "my gecko passed out after dinner lol",
        "my gecko isn't moving much in the day",
        "my snake is not moving from her hide",
        "meine schlange bewegt sich nicht, sie schläft",
    ],
)
def test_who_rests_or_jokes_is_no_hazard(text: str) -> None:
    assert listen(text) == ()
