"""A question packed into a custom id and back."""

import re

from hypothesis import given
from hypothesis import strategies as st

from bot.commands import command_named
from bot.fronts.discord.question import IN_MESSAGE, Question

NAMES = ("tube", "reflector", "screen", "animal", "uvi", "length", "age")
texts = st.text(st.characters(exclude_categories=["Cs"]), min_size=1, max_size=30)


@given(st.dictionaries(st.sampled_from(NAMES), texts))
def test_a_question_comes_back_from_its_custom_id_or_says_that_it_does_not_fit(
    options: dict[str, str],
) -> None:
    question = Question("distance", options)
    custom_id = question.custom_id("u:cm:")
    assert len(custom_id.encode("utf-16-le")) <= 200
    packed = custom_id.removeprefix("u:cm:")
    if packed != IN_MESSAGE:
        assert Question.unpacked(packed, None) == question


def test_the_usual_question_fits() -> None:
    given_ = {
        "tube": "12%",
        "reflector": "polished",
        "screen": "18x16 0.011in",
        "animal": "bearded dragon",
        "length": "33.5 in",
        "age": "11 months",
    }
    assert not Question("distance", given_).custom_id("u:cm:").endswith(IN_MESSAGE)


def test_a_line_is_read_back_and_a_cut_one_is_not() -> None:
    line = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
    question = Question.read(line)
    assert question is not None
    assert question.given["animal"] == "bearded dragon"
    assert Question.read(f"{line} …") is None
    assert Question.read("nothing of the kind") is None


def test_an_unknown_command_or_another_order_of_options_is_not_guessed() -> None:
    packed = Question("distance", {"tube": "12%"}).custom_id("")
    assert Question.unpacked(packed.replace("distance", "gone"), None) is None
    assert Question.unpacked("distance.0000|12%", None) is None
    options = command_named("distance").query.options()  # type: ignore[union-attr]
    more = packed + "|" * len(options)
    assert Question.unpacked(more, None) is None
    assert Question.unpacked(more[:-1], None) == Question("distance", {"tube": "12%"})


def test_a_value_of_several_lines_stays_a_button_that_works() -> None:
    question = Question("distance", {"tube": "12%\n~n", "animal": "a|b\r\n"})
    custom_id = question.custom_id("u:cm:")
    assert re.fullmatch(r"u:(in|cm):.+", custom_id)
    assert Question.unpacked(custom_id.removeprefix("u:cm:"), None) == question


def test_a_question_without_options_is_known_by_its_button() -> None:
    question = Question("about", {})
    assert Question.unpacked(question.custom_id(""), None) == question
    assert Question.unpacked("nothing.1234", None) is None


def test_a_button_from_before_an_option_came_behind_the_others_is_still_read() -> None:
    # From before there was a state of the animal.
    earlier = Question.unpacked("distance.c203|12%|polished|none|bearded dragon", None)
    assert earlier is not None
    assert earlier.given["animal"] == "bearded dragon"
