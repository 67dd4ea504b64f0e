"""Animals heard by their kin's name alone."""

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
