"""The door: what an asker may get wrong, and what comes back."""

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from bot.ask import ask
from bot.commands import COMMANDS
from bot.language.quantities import Units
from bot.preferences import Preferences
from bot.queries.question import Question
from tests.some import some

DISTANCE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"


def test_a_leading_slash_and_equal_signs_are_as_good(anyone: Preferences) -> None:
    plain = ask(DISTANCE, anyone)
    assert ask("/" + DISTANCE.replace(":", "="), anyone) == plain


def test_typed_options_skip_only_the_tokenising(anyone: Preferences) -> None:
    given = {
        "tube": "12%",
        "reflector": "polished",
        "screen": "none",
        "animal": "bearded dragon",
    }
    assert ask(Question("distance", given), anyone) == ask(DISTANCE, anyone)


def test_a_missing_option_is_asked_for_with_an_example_that_works(anyone: Preferences) -> None:
    reply = ask("distance tube:6%", anyone)
    assert reply.status == "problem"
    assert "reflector" in reply.answer
    assert "screen" in reply.answer
    example = reply.answer.split("For example: ")[1]
    assert "tube:6%" in example
    assert ask(example, anyone).status == "ok"


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("", "a question"),
        ("   ", "a question"),
        ("distence tube:12%", "distance"),
        ("distance tube:banana reflector:plain screen:none", "12%"),
        ("distance tube:12% reflectr:plain screen:none", "reflector"),
        ("distance tube:12% reflector:plain screen:none animal:beerded dargon", "bearded dragon"),
        ("uvi distance:14 tube:12% reflector:plain screen:none animal:beardie", "14in"),
        ("uvi distance:1,200 mm tube:12% reflector:plain screen:none animal:beardie", "1,200"),
        ("guide scren", "screens"),
        ("help distanse", "distance"),
        ("convert 9**9**9 in", "14in"),
        ("convert nan in", "14in"),
        ("distance tube:mercury reflector:plain screen:none", "mercury"),
    ],
)
def test_bad_input_gets_one_plain_sentence(line: str, told: str, anyone: Preferences) -> None:
    reply = ask(line, anyone)
    assert reply.status == "problem"
    assert told in reply.answer
    assert "\n" not in reply.answer
    assert len(reply.answer) < 600


def test_a_bare_number_takes_the_unit_of_the_setting_and_says_so(in_inches: Preferences) -> None:
    line = "uvi distance:14 tube:12% reflector:plain screen:none animal:bearded dragon"
    reply = ask(line, in_inches)
    assert reply.status == "ok"
    assert any(row.label == "Assumed" and "in" in row.text for row in reply.rows)
    assert "distance:14 in" in reply.asked


def test_a_question_asked_again_from_its_canonical_line_means_the_same(
    in_inches: Preferences,
) -> None:
    line = "uvi distance:14 tube:12% reflector:plain screen:none animal:bearded dragon"
    first = ask(line, in_inches)
    again = ask(first.asked, Preferences(units=Units.CM, forced_units=Units.CM))
    assert again.values == first.values
    assert "36 cm (14 in)" in again.title


def test_the_askers_unit_comes_first_and_an_option_overrides_it(anyone: Preferences) -> None:
    line = "uvi distance:35cm tube:12% reflector:plain screen:none animal:bearded dragon"
    assert "35 cm (14 in)" in ask(line, anyone).answer
    forced = Preferences(forced_units=Units.IN)
    assert "14 in (35 cm)" in ask(line, forced).answer


def test_too_long_a_line_is_refused_in_one_sentence(anyone: Preferences) -> None:
    reply = ask("distance tube:" + "9" * 10_000, anyone)
    assert reply.status == "problem"
    assert len(reply.answer) < 300


@given(st.text(max_size=300))
@settings(max_examples=some(150), deadline=None)
def test_any_text_at_all_gets_a_reply(text: str) -> None:
    assert ask(text, Preferences()).answer


@given(
    st.sampled_from([command.name for command in COMMANDS]),
    st.text(max_size=120),
)
@settings(max_examples=some(200), deadline=None)
def test_any_text_behind_a_command_gets_a_reply(name: str, text: str) -> None:
    assert ask(f"{name} {text}", Preferences(units=Units.CM)).answer


@pytest.mark.parametrize("blank", ["", " ", "\n", "\x0b", "\u00a0"])
def test_an_option_left_blank_is_one_that_was_not_filled_in(blank: str) -> None:
    told = {"tube": "12%", "reflector": "polished", "screen": "none"}
    bare = ask(Question("distance", told), Preferences())
    assert ask(Question("distance", {**told, "animal": blank}), Preferences()) == bare
    missing = ask(Question("distance", {**told, "tube": blank}), Preferences())
    assert "I still need tube" in missing.answer
