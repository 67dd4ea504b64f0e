"""Free sentences through the door: understood, answered, and asked again the same."""

import pytest

from bot.ask import ask
from bot.language.quantities import Units
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.questions.setup.told import heard_in
from bot.reply import Reply

TOLD = "my beardie has a 12% in a shiny hood, no mesh, 16in to his back, basking 98, cool side 75"


def labelled(reply: Reply, label: str) -> str:
    return "; ".join(row.text for row in reply.rows if row.label == label)


def test_a_sentence_without_a_command_is_understood_and_says_how() -> None:
    reply = ask("how far should a 12% tube be with a plain hood and no screen, beardie?", anyone())
    assert (reply.command, reply.status) == ("distance", "ok")
    assert labelled(reply, "Understood as").startswith("distance animal:bearded dragon tube:12%")
    assert ask(f"ask {TOLD}", anyone()).command == ask(TOLD, anyone()).command == "check"


@pytest.mark.parametrize("line", ["beardie", "leopard gecko?", "corn snake temps"])
def test_the_name_of_an_animal_is_asked_what_it_needs(line: str) -> None:
    assert (ask(line, anyone()).command, ask(line, anyone()).status) == ("needs", "ok")


def anyone() -> Preferences:
    return Preferences()


def test_the_name_of_a_question_may_begin_a_free_sentence() -> None:
    reply = ask("night for my corn snake if the room falls to 58F", anyone())
    assert (reply.command, reply.status) == ("night", "ok")
    assert "room:58 F" in labelled(reply, "Understood as")


def test_what_is_missing_is_asked_for_by_the_question_that_was_meant() -> None:
    reply = ask("which tube for a bearded dragon at 12 inches please", anyone())
    assert (reply.command, reply.status) == ("tube", "problem")
    assert "what is between" in reply.answer
    assert reply.asked == "tube distance:12 in animal:bearded dragon"


def test_a_tube_without_a_distance_is_told_where_it_hangs() -> None:
    reply = ask("which tube for a bearded dragon please", anyone())
    assert (reply.command, reply.status, reply.lacking) == ("tube", "ok", ("distance",))
    assert "12 % or weaker" in reply.answer


@pytest.mark.parametrize("line", ["distnace tube:12%", "hello", "distnace 12%", "polished hood"])
def test_a_mistyped_question_is_not_taken_for_a_sentence(line: str) -> None:
    reply = ask(line, anyone())
    assert reply.status == "problem"
    assert "the name of a question" in reply.answer


def test_a_sentence_that_asks_nothing_gets_one_plain_sentence() -> None:
    reply = ask("what a lovely day it is", anyone())
    assert reply.status == "problem"
    assert "for example" in reply.answer
    assert not set("<>*@") & set(reply.answer)


@pytest.mark.parametrize(
    "words",
    [
        TOLD,
        "Tube: 12%\nReflector: polished\nScreen: none\nDistance to back: 16 in\nBeardie",
        "beardie said “no”, 12% tube 14” from his back; see https://example.org/a?b=c basking 98F",
    ],
)
def test_a_check_asked_again_by_its_own_line_is_the_same(words: str) -> None:
    first = ask(Question("check", {"setup": words, "distance": "16in"}), anyone())
    again = ask(first.asked, anyone())
    assert again.model_dump() == first.model_dump()
    assert again.asked == first.asked


def test_label_lines_are_free_words_and_close_colons_are_corrections() -> None:
    reply = ask("check Tube: 12%\nDistance: 14 in to his back, beardie distance:16in", anyone())
    assert "as you corrected it" in labelled(reply, "Read of the UV")
    assert "16 in" in labelled(reply, "Read of the UV")


def test_a_bad_correction_names_its_field() -> None:
    reply = ask(f"check {TOLD} distance:far", anyone())
    assert reply.status == "problem"
    assert "for distance" in reply.answer


def test_the_first_unit_follows_the_asker() -> None:
    reply = ask(f"check {TOLD}", Preferences(units=Units.CM))
    assert "41 cm (16 in)" in labelled(reply, "Read of the UV")


def test_every_option_that_a_question_lacks_is_asked_for_in_plain_words() -> None:
    reply = ask("ask convert 39,5 C75", Preferences())
    assert "which length or temperature" in reply.answer


def test_words_that_are_found_to_be_a_set_up_are_heard_once() -> None:
    heard_in.cache_clear()
    reply = ask("rate my setup: beardie 4x2x2, 12% t5, no mesh, basking 105f", Preferences())
    assert reply.command == "check"
    assert heard_in.cache_info().misses == 1
