"""A free question that lacks something is told what, with the own sentence made whole."""

from bot.ask import ask
from bot.language.quantities import Units
from bot.preferences import Preferences
from tests.bot.refusing import copied


def test_what_is_missing_is_told_in_plain_words_with_the_own_sentence_made_whole() -> None:
    reply = ask("how far do i hang the tube for my ball python?", Preferences())
    assert reply.answer.startswith("I need one more thing. Tell me")
    assert copied(reply)[0].startswith("ask how far do i hang the tube for my ball python, ")
    assert [link.slug for link in reply.guide] == ["which-uv-lamp"]


def test_the_example_is_in_the_units_of_the_asker() -> None:
    reply = ask("how many watts for a ball python", Preferences(units=Units.CM))
    assert " cm " in copied(reply)[0]


def test_an_example_is_for_the_usual_animal_of_the_group() -> None:
    preferences = Preferences(default_animal="corn snake")
    reply = ask("what should i do about my heat lamp", preferences)
    assert reply.title.startswith(("Which one", "Do you mean"))
    assert any("animal:corn snake" in line for line in copied(reply))


def test_an_example_is_for_one_of_the_kind_that_was_named() -> None:
    reply = ask("how many hours of light do chameleons get", Preferences())
    assert (
        "which one it is: veiled chameleon, panther chameleon or Jackson's chameleon (I have no"
        in reply.answer
    )
    assert copied(reply) == ["ask how many hours of light do chameleons get, veiled chameleon"]
