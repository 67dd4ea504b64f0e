"""Signs of illness are heard in the words keepers use, and not where they are denied."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.language.signs import signs_in

HEARD = [
    ("he squints a lot", "squints", "this week"),
    ("my gecko won't open her eyes", "won't open her eyes", "this week"),
    ("she keeps one eye shut", "keeps one eye shut", "this week"),
    ("has a burn on his belly from the rock", "has a burn", "today"),
    ("he got burnt by the bulb", "he got burnt", "today"),
    ("hes lying limp on the floor", "lying limp", "today"),
    ("is he limp", "is he limp", "today"),
    ("really lethargic lately", "lethargic", "this week"),
    ("his toes twitch", "twitch", "today"),
    ("she’s shaking and her legs dragging", "shaking", "today"),
    ("wheezing with bubbles from his nose", "wheezing", "today"),
    ("open mouth breathing at night", "open mouth breathing", "today"),
    ("soft jaw, is it mbd", "soft jaw", "this week"),
    ("his front legs are bowed", "legs are bowed", "this week"),
    ("isnt eating for a week", "isnt eating", "this week"),
    ("no appetite", "no appetite", "this week"),
    ("i think it is a prolapse", "prolapse", "today"),
]
NOT_HEARD = [
    "he never squints",
    "she doesn't squint, eats well",
    "no twitching, no wheezing",
    "he stopped squinting",
    "the bulb burnt out",
    "the lamp has burned out",
    "i burned my hand on the dome",
    "the hood fits the tank",
    "it shakes off the water",
    "gaping under the lamp",
    "the tank is broken",
    "basking 98 cool 75, he eats well and is bright",
    "",
]


@pytest.mark.parametrize(("text", "words", "soon"), HEARD)
def test_a_sign_is_heard_with_its_words(text: str, words: str, soon: str) -> None:
    first = signs_in(text)[0]
    assert (first.words, first.soon) == (words, soon)


@pytest.mark.parametrize("text", NOT_HEARD)
def test_what_is_denied_or_not_of_the_animal_is_no_sign(text: str) -> None:
    assert signs_in(text) == ()


def test_what_cannot_wait_comes_first() -> None:
    signs = signs_in("not eating, squints, and now it is shaking")
    assert [sign.soon for sign in signs] == ["today", "this week", "this week"]


@given(st.text(max_size=300))
def test_any_text_gives_words_that_stand_in_it(text: str) -> None:
    for sign in signs_in(text):
        assert sign.words


@pytest.mark.parametrize("piece", ["eyes ", "has a ", "his eyes are ", "won't ", "not open the "])
def test_a_long_repeated_text_is_read_to_its_end(piece: str) -> None:
    text = (piece * 2000)[:1980] + " he squints"
    assert [sign.words for sign in signs_in(text)][-1:] == ["squints"]
