"""Animals heard by their kin's name alone."""

import pytest

from bot.language.hearing import FactName, hear
from bot.questions.setup.told import kept_names
from tests.bot.refusing import said


def test_a_word_of_kin_is_asked_about_and_none_of_it_taken() -> None:
    heard = hear("how far from my dragon should the tube be", kept_names())
    assert heard.facts == ()
    assert "bearded dragon" in heard.questions[0].among
    told = said(heard.questions[0].question)
    assert told.startswith("Which one is it: bearded dragon, Rankin's dragon")


def test_two_animals_are_asked_about_with_the_words_of_the_later() -> None:
    heard = hear("a tube for my beardie and my corn snake", kept_names())
    assert {fact.value for fact in heard.all(FactName.ANIMAL)} == {"bearded dragon", "corn snake"}
    (question,) = heard.questions
    assert question.words == "corn snake"
    assert said(question.question) == "Which one is it: bearded dragon or corn snake?"


def test_an_animal_is_not_asked_about_again_by_the_word_for_its_kind() -> None:
    heard = hear("my corn snake hides, is the snake too hot", kept_names())
    assert [fact.value for fact in heard.facts] == ["corn snake"]
    assert heard.questions == ()


def test_a_name_that_is_none_of_the_list_is_asked_about_in_its_own_words() -> None:
    heard = hear("how hot for a sunset dragon", kept_names())
    assert heard.facts == ()
    assert heard.questions[0].words == "sunset dragon"


@pytest.mark.parametrize(
    "text",
    [
        "his abdomen is swollen",
        "bdrm is cold",
        "we live in a 2 bd apartment",
        "a high res photo",
        "the slider door of the viv",
        "a russian tortilla",
        "he eats sweet corn",
    ],
)
def test_a_short_name_in_other_words_is_no_animal(text: str) -> None:
    assert hear(text, kept_names()).all(FactName.ANIMAL) == ()


@pytest.mark.parametrize(
    ("text", "name"),
    [
        ("my bd", "bearded dragon"),
        ("BD, 12% tube", "bearded dragon"),
        ("russian tort", "Horsfield's tortoise"),
        ("my russian torts", "Horsfield's tortoise"),
    ],
)
def test_a_name_cut_short_is_the_animal(text: str, name: str) -> None:
    (fact,) = hear(text, kept_names()).all(FactName.ANIMAL)
    assert fact.value == name
