"""Refusals and free words in the asker's language: one language, and an example that works."""

import re

import pytest

from bot.ask import ask
from bot.fronts.console import converse
from bot.language.units import Units
from bot.preferences import Preferences

GERMAN = Preferences(language="de")
NOBODY = Preferences()
REFUSED = [
    "distance tube:banana",
    "distance tube:12% animl:x",
    "distance",
    "foo",
    "",
    "watts distance:10in lamp:halogen",
    "distance tube:12% reflector:polished screen:none animal:bearded dragon length:",
    "temps basking:100F cool:80F",
]


@pytest.mark.parametrize("line", REFUSED)
def test_a_question_that_was_not_read_is_refused_whole_in_german(line: str) -> None:
    reply = ask(line, GERMAN)
    assert (reply.status, reply.language) == ("problem", "de")
    assert reply.title == "Das hat nicht geklappt"
    told = " ".join((reply.answer, *reply.steps, *(one.text for one in reply.brief)))
    assert not re.search(r"\b(?:I|but|need|for example|did you mean|takes|the)\b", told), told
    assert ask(line, Preferences(language="en")).language == "en"


@pytest.mark.parametrize("line", REFUSED)
def test_the_example_in_german_leads_on(line: str) -> None:
    answer = ask(line, GERMAN).answer
    example = re.split(r"zum Beispiel: |Zeile wie diese: ", answer, flags=re.I)[-1]
    english = ask(line, Preferences(language="en")).answer
    assert example in english or ask(example, NOBODY).status == "ok"


def test_a_figure_that_is_too_far_is_told_with_the_range() -> None:
    line = "watts room:21C want:38C distance:50m lamp:halogen flood"
    english, german = (ask(line, Preferences(language=x)) for x in ("en", "de"))
    assert english.answer.startswith("I cannot answer that")
    assert german.answer.startswith("Das kann ich nicht beantworten")
    figures = re.compile(r"-?\d+(?:\.\d+)? (?:cm|in|°C|°F)")
    told = sorted(figures.findall(english.answer))
    assert len(told) == 6
    assert sorted(figures.findall(german.answer)) == told


def test_free_words_are_answered_in_their_language_where_nobody_chose_one() -> None:
    words = "die Lampe raucht und das Plastik schmilzt"
    assert ask(words, NOBODY).language == "de"
    assert ask(words, Preferences(language="en")).language == "en"
    assert ask("the lamp is smoking", NOBODY).language == "en"
    assert ask("the lamp is smoking", GERMAN).language == "de"
    assert ask("mein Terrarium gefällt mir sehr gut", NOBODY).language == "de"


def test_a_question_with_options_stays_as_it_was_chosen() -> None:
    assert ask("needs animal:Königspython", NOBODY).language == "en"


def test_who_is_answered_in_german_reads_centimetres_first_unless_inches_were_wished() -> None:
    assert GERMAN.shown is Units.CM
    assert NOBODY.shown is Units.IN
    assert Preferences(language="de", units=Units.IN).shown is Units.IN
    assert ask("needs animal:bearded dragon", GERMAN).units == "cm"
    assert ask("needs animal:bearded dragon", NOBODY).units == "in"


def test_what_stands_around_an_answer_is_german_and_its_words_open_parts() -> None:
    shown: list[str] = []
    converse(["needs animal:bearded dragon", "zahlen", "steps"], shown.append, GERMAN)
    assert "Mehr (tipp ein Wort, oder all): " in shown[0]
    assert shown[1].startswith("Zahlen:")
    assert shown[2].startswith("Schritte:")
