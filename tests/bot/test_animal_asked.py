"""No animal is guessed: where what is right depends on it, it is asked for, and else it is not."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.understood import take_apart

BOX = "enclosure:48x24x24in material:wood lid:solid"
NEEDS_AN_ANIMAL = [
    "temps",
    "temps basking:98F cool:75F",
    "temps basking:39C night:18C lamp_on:3 hours",
    "basking surface:92F air:80F distance:10in",
    "watts room:70F distance:10in lamp:flood",
    f"air {BOX} room:68F",
    "night room:64F",
    f"night room:13C {BOX}",
    "hours",
    "hours on:7:30",
    "hours latitude:home zone:chicago",
]
NEEDS_NONE = [
    "basking surface:92F air:80F distance:10in want:103F",
    "watts room:70F want:103F distance:10in lamp:flood",
    f"air {BOX} room:68F want:80F",
    "hours latitude:30S zone:Europe/London",
    "surface reading:98F material:slate",
    "lamp",
    "lamp kind:radiant panel",
    "convert 98F",
]


@pytest.mark.parametrize("line", NEEDS_AN_ANIMAL)
def test_an_animal_that_matters_is_asked_for_with_the_whole_question(
    line: str, anyone: Preferences
) -> None:
    reply = ask(line, anyone)
    assert reply.status == "problem"
    assert reply.values == ()
    assert "I still need animal" in reply.answer
    assert "which animal it is" in reply.answer
    example = reply.answer.partition("For example: ")[2]
    assert "animal:bearded dragon" in example
    if ":" in line:
        assert take_apart(example, anyone) == take_apart(f"{line} animal:bearded dragon", anyone)
    assert ask(example, anyone).status == "ok"


@pytest.mark.parametrize("line", NEEDS_AN_ANIMAL)
def test_the_usual_animal_of_the_group_is_taken_and_said(line: str) -> None:
    reply = ask(line, Preferences(default_animal="corn snake"))
    assert reply.status == "ok"
    assert any("no animal was named" in row.text and "corn snake" in row.text for row in reply.rows)


@pytest.mark.parametrize(
    "line", [line for line in NEEDS_NONE if line.startswith(("air", "hours", "surface", "convert"))]
)
def test_the_usual_animal_is_not_said_to_be_taken_where_it_does_not_matter(line: str) -> None:
    reply = ask(line, Preferences(default_animal="corn snake"))
    assert "corn snake" not in reply.model_dump_json()


@pytest.mark.parametrize("line", NEEDS_NONE)
def test_nothing_is_asked_where_the_animal_does_not_matter(line: str, anyone: Preferences) -> None:
    reply = ask(line, anyone)
    assert reply.status == "ok"
    assert "bearded dragon" not in reply.model_dump_json()


@pytest.mark.parametrize(
    "line",
    ["basking surface:92F air:80F distance:10in", "watts room:70F distance:10in lamp:flood"],
)
def test_a_wish_that_no_animal_was_named_for_is_said_to_be_unchecked(
    line: str, anyone: Preferences
) -> None:
    told = [row.text for row in ask(f"{line} want:103F", anyone).rows]
    assert any("not checked" in text and "animal:" in text for text in told)
    checked = ask(f"{line} want:103F animal:bearded dragon", anyone).rows
    assert not any("not checked" in row.text for row in checked)


def test_a_wish_that_would_burn_most_animals_needs_the_animal_that_wants_it(
    anyone: Preferences,
) -> None:
    line = "watts room:70F want:125F distance:10in lamp:flood"
    reply = ask(line, anyone)
    assert reply.status == "problem"
    assert [alarm.key for alarm in reply.alarms] == ["too_hot_wish"]
    assert ask(f"{line} animal:Saharan uromastyx", anyone).status == "ok"
    assert ask(f"{line} animal:bearded dragon", anyone).status == "problem"


def test_a_surface_that_burns_nearly_all_is_not_left_on_while_the_animal_is_asked_for(
    anyone: Preferences,
) -> None:
    for line in ("temps basking:140F", "basking surface:140F air:80F distance:10in"):
        assert ask(line, anyone).answer.startswith("Switch all heat off now")
    assert ask("temps basking:100F", anyone).dangers == ()


@pytest.mark.parametrize("line", ["night room:40F", "temps night:40F", "temps night:40F cool:75F"])
def test_a_deadly_cold_night_does_not_wait_for_the_name(line: str, anyone: Preferences) -> None:
    reply = ask(line, anyone)
    assert reply.status == "ok"
    assert reply.answer.startswith("Move the animal to a warmer room")
    assert "still need animal" in reply.answer


@pytest.mark.parametrize("line", ["night room:50F", "temps night:50F"])
def test_a_cool_night_only_asks_for_the_name(line: str, anyone: Preferences) -> None:
    assert ask(line, anyone).status == "problem"


@pytest.mark.parametrize(
    ("line", "off"),
    [
        ("basking surface:130F air:80F animal:bearded dragon", True),
        ("basking surface:130F", True),
        ("basking surface:98F", False),
        ("basking air:80F", False),
    ],
)
def test_a_burning_surface_does_not_wait_for_what_else_is_missing(
    line: str, off: bool, anyone: Preferences
) -> None:
    assert ask(line, anyone).answer.startswith("Switch all heat off now") is off


@pytest.mark.parametrize("word", ["reptile", "lizard", "snake", "gecko", "frog"])
@pytest.mark.parametrize("line", ["needs animal:{}", "night room:64F animal:{}"])
def test_of_a_word_for_many_some_are_named_and_that_there_are_more(word: str, line: str) -> None:
    told = ask(line.format(word), Preferences())
    assert told.status == "problem"
    assert "or another by its own name" in told.answer
    german = ask(line.format(word), Preferences(language="de"))
    assert "oder ein anderes mit eigenem Namen" in german.answer


def test_of_a_word_for_a_few_all_are_named() -> None:
    told = ask("needs animal:uromastyx", Preferences())
    assert "Saharan uromastyx or Egyptian uromastyx" in told.answer
    assert "another" not in told.answer


@pytest.mark.parametrize("name", ["zorblax", "glorpian skink", "zorblaxian lizard"])
def test_an_animal_that_nobody_knows_gets_no_other_ones_figures(name: str) -> None:
    told = ask(f"needs animal:{name}", Preferences())
    assert told.answer.startswith(f"I have no figures for “{name}”")
    assert told.values == ()
    (steps,) = [part for part in told.parts if part.name == "steps"]
    assert any("8 in (20 cm)" in step for step in steps.items)


def test_the_name_of_another_animal_is_no_slip() -> None:
    told = ask("needs animal:spider", Preferences())
    assert "slider" not in told.answer
    assert told.answer.startswith("I have no figures for “spider”")


def test_its_dangers_are_told_all_the_same() -> None:
    told = ask("temps basking:150F cool:110F animal:zorblax", Preferences())
    assert told.dangers
    assert "no figures for “zorblax”" in told.model_dump_json()


@pytest.mark.parametrize("name", ["\ud800", "\x00", "\u200b"])
@pytest.mark.parametrize("line", ["check setup:12% tube at 14in", "next setup:12% tube at 14in"])
def test_a_name_that_cannot_be_shown_is_told_as_read(name: str, line: str) -> None:
    command, _, setup = line.partition(" setup:")
    for language in ("en", "de"):
        question = Question(command, {"setup": setup, "animal": name})
        told = ask(question, Preferences(language=language))
        assert told.language == language
        # Half of a pair is no character, and is told as what stands for one.
        shown = " \ufffd (" if name == "\ud800" else " ? ("
        assert any(shown in row.text for row in told.rows)
