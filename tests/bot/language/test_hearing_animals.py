"""Animals heard by their kin's name alone."""

import pytest

from bot.answers.setup_told import known_animals
from bot.language.hearing import FactName, hear

KNOWN = {
    "bearded dragon": "bearded dragon",
    "blue-tongued skink": "blue-tongued skink",
    "leopard gecko": "leopard gecko",
    "crested gecko": "crested gecko",
}


def test_one_animal_of_its_kin_is_taken_for_it() -> None:
    heard = hear("how far from my dragon should the tube be", KNOWN)
    assert [fact.value for fact in heard.facts] == ["bearded dragon"]
    assert heard.facts[0].assumed
    assert heard.questions == ()


def test_two_kins_are_asked_about_with_the_words_of_the_later() -> None:
    heard = hear("a tube for my dragon and my skink", KNOWN)
    assert {fact.value for fact in heard.all(FactName.ANIMAL)} == {
        "bearded dragon",
        "blue-tongued skink",
    }
    question = next(q for q in heard.questions if q.words == "skink")
    assert question.question == "Which animal is this for: bearded dragon or blue-tongued skink?"


def test_a_kin_of_several_animals_is_asked_about() -> None:
    heard = hear("my gecko is cold", KNOWN)
    assert heard.facts == ()
    assert heard.questions[0].question == "Which one is it: crested gecko, leopard gecko?"


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
    assert hear(text, known_animals()).all(FactName.ANIMAL) == ()


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
    (fact,) = hear(text, known_animals()).all(FactName.ANIMAL)
    assert fact.value == name
