"""Free German questions find their question, and what German messages tell is heard."""

import re
import tomllib
from collections import Counter
from pathlib import Path

import pytest

from bot.ask import ask
from bot.command import Command
from bot.commands import command_named
from bot.language.glossary import glossed
from bot.language.glossary.table import table
from bot.language.quantities import Units
from bot.preferences import Context, Preferences
from bot.queries.question import Question
from tests.bot.language.hearing_score import heard_in, score, told
from tests.bot.test_routing import outcome

GERMAN = Context(Units.CM, language="de")
ASKED = tomllib.loads((Path(__file__).parent / "german_questions.toml").read_text(encoding="utf-8"))
# What is right of the 60 of each list since it was looked at; the first runs stand in its head.
_RIGHT = {"first": 52, "second": 43, "third": 27}


@pytest.mark.parametrize("name", _RIGHT)
def test_most_german_questions_find_theirs(name: str) -> None:
    found = Counter(outcome(row, GERMAN) for row in ASKED[name])
    assert found["right"] >= _RIGHT[name], found


@pytest.mark.parametrize(("name", "precise", "heard"), [("german.toml", 0.97, 0.97)])
def test_what_german_messages_tell_is_heard(name: str, precise: float, heard: float) -> None:
    found = score((name,))
    assert found.precision >= precise, found.slips
    assert found.recall >= heard, found.slips


def test_a_fact_keeps_the_words_that_were_typed() -> None:
    found = heard_in("Meine T5 12 % hängt 30,5 cm über dem Rücken, kühle Seite 24 Grad.")
    rows = {(fact.name.value, told(fact), fact.words) for fact in found.facts}
    assert ("distance_back", "30.5 cm", "30,5 cm über dem Rücken") in rows
    assert ("cool", "24 C", "kühle Seite 24 Grad.") in rows


@pytest.mark.parametrize(
    ("typed", "meant"),
    [
        ("Wie weit muss die Röhre weg sein?", "how far should the tube away be?"),
        ("die Sonnenplatztemperatur ist 40 Grad", "the basking spot temperature is 40 degrees c"),
        ("Roehre und Rohre und die Röhren", "tube and tube and the tube"),
        ("Licht von 8 bis 20 Uhr", "light from 8:00 to 20:00"),
        ("Die Korkröhre liegt da", "the log liegt da"),
        ("im 60er", "in the 60 cm tank"),
    ],
)
def test_german_words_become_those_of_hearing(typed: str, meant: str) -> None:
    assert glossed(typed).text == meant


@pytest.mark.parametrize(
    "typed",
    [
        *("basking 65", "will it die in the war", "warm side 88, cool side 75"),
        *("res water temp 78", "Hermann's tortoise", "Rankin's dragon, basking 95"),
    ],
)
def test_english_stays_as_it_is(typed: str) -> None:
    assert glossed(typed).text == typed
    assert not glossed(typed).metric


def test_a_german_number_without_a_unit_is_celsius_and_centimetres() -> None:
    found = heard_in("Kornnatter im Terrarium 90x45x45, warme Seite 38")
    rows = {(fact.name.value, told(fact), fact.assumed) for fact in found.facts}
    assert {("enclosure", "90x45x45 cm", True), ("warm", "38 C", True)} <= rows


def test_no_words_stand_for_two_things() -> None:
    text = Path("bot/language/glossary/de.toml").read_text(encoding="utf-8")
    rows = tomllib.loads(text)
    # A word may be a choice of one option and mean something else in a sentence.
    for apart in ("also_english", "choices"):
        rows.pop(apart)
    often = Counter(
        " ".join(form.split()) for kind in rows.values() for m in kind.values() for form in m
    )
    assert [form for form, many in often.items() if many > 1] == []
    assert table("de").words


def test_a_german_question_that_is_not_heard_gets_one_german_sentence() -> None:
    reply = ask("ask Der Mond ist heute so schön rund", Preferences(units=Units.CM, language="de"))
    assert reply.language == "de"
    assert reply.status == "problem"
    assert not re.search(r"\b(?:the|you|which|question)\b", reply.answer)


@pytest.mark.parametrize(
    ("name", "given"),
    [
        ("distance", {"tube": "12 Prozent", "reflector": "poliert", "screen": "kein Gitter"}),
        ("distance", {"tube": "12%", "reflector": "weiß nicht", "screen": "Gitter"}),
        ("night", {"room": "18 Grad"}),
        ("decline", {"age": "14 Monate"}),
        ("plan", {"enclosure": "120x60x60", "lid": "Gitter", "material": "Holz"}),
        ("lamp", {"kind": "Keramikstrahler"}),
        ("watts", {"room": "20 Grad", "distance": "30 Zentimeter"}),
        ("meter", {"readings": "3,2 bei 30 cm"}),
        ("convert", {"value": "12 Zoll"}),
    ],
)
def test_an_option_takes_what_is_typed_in_german(name: str, given: dict[str, str]) -> None:
    takes_one = any(option.name == "animal" for option in named(name).query.options())
    animal = {"animal": "Kornnatter"} if takes_one else {}
    reply = ask(Question(name, {**animal, **given}), Preferences(units=Units.CM, language="de"))
    assert reply.status == "ok", reply.answer


def named(name: str) -> Command:
    command = command_named(name)
    assert command is not None
    return command
