"""Signs of illness are heard in the words keepers use, and not where they are denied."""

import pytest
from hypothesis import given
from hypothesis import strategies as st

from bot.language.signs import fire_in, signs_in

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
    ("my beardie is burnt", "beardie is burnt", "today"),
    ("my gecko burned itself", "gecko burned", "today"),
    ("sits with mouth open in the cold corner", "mouth open in the cold corner", "today"),
    ("lies at the cool end with his mouth open", "at the cool end with his mouth open", "today"),
    ("gaping in the coolest corner", "gaping in the coolest corner", "today"),
    ("he cant breath", "cant breath", "today"),
    ("hes breathing heavy", "breathing heavy", "today"),
    ("hes got bubles on his nose", "bubles on his nose", "today"),
    ("bubbles in nose", "bubbles in nose", "today"),
    ("hes limp", "hes limp", "today"),
    ("he wont wake up", "he wont wake up", "today"),
    ("she is not moving", "she is not moving", "today"),
    ("my gecko doesnt move", "gecko doesnt move", "today"),
    ("my gecko is dying", "gecko is dying", "today"),
    ("i think he is dead", "he is dead", "today"),
    ("he is overheated", "he is overheated", "today"),
    ("cant lay her eggs", "cant lay her eggs", "today"),
    ("she is eggbound", "eggbound", "today"),
    ("i think his leg is broken", "leg is broken", "today"),
    ("his back legs dont work", "back legs dont work", "today"),
    ("twiching toes", "twiching", "today"),
    ("he is sick", "he is sick", "this week"),
    ("is my gecko ill", "is my gecko ill", "this week"),
    ("not eatting", "not eatting", "this week"),
    ("he dosnt eat", "dosnt eat", "this week"),
    ("his eyes r shut", "eyes r shut", "this week"),
    ("blood in his poo", "blood in his poo", "this week"),
    ("runny poop", "runny poop", "this week"),
    ("throwing up", "throwing up", "this week"),
    ("mouth rot", "mouth rot", "this week"),
    ("stuck shed on his toes", "stuck shed on his toes", "this week"),
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
    "he basks with his mouth open, cool end 75F",
    "basks with mouth open at the hot end, and the cool end is 75",
    "i cant move the lamp",
    "the needle is not moving",
    "he is not sick, is he not dead set on the lamp",
    "so that he does not get ill",
    "the bulb is dead",
    "the dead bulb was his",
    "my beardie's bulb burnt out",
    "the lamp of my gecko burned out",
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


@pytest.mark.parametrize(
    ("text", "words"),
    [
        ("the mesh is smoking", "smoking"),
        ("there is smoke from the lamp", "smoke"),
        ("it smells burnt", "smells burnt"),
        ("a burning smell in the room", "burning smell"),
        ("sparks from the plug", "sparks"),
        ("heat mat melted the plastic", "melted"),
        ("the wood is scorched", "scorched"),
        ("i got a shock off the dome", "got a shock"),
    ],
)
def test_what_burns_in_the_room_is_heard(text: str, words: str) -> None:
    assert fire_in(text) == words


@pytest.mark.parametrize(
    "text",
    ["no smoke", "smoke detector above it", "the bulb burnt out", "a smoked glass lid", "98F"],
)
def test_what_does_not_burn_is_no_fire(text: str) -> None:
    assert fire_in(text) == ""
