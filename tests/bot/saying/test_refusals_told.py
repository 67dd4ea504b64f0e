"""What is said where there is no answer: short, in the asker's language, with nothing missing."""

import ast
from collections.abc import Iterator
from pathlib import Path

import pytest

from bot.ask import ask
from bot.brief import phone_lines
from bot.commands import ALL_COMMANDS
from bot.outside import NAMED
from bot.preferences import FIRST, LANGUAGES, Language, Preferences
from bot.questions.lacking import lacked
from bot.saying.words import words

ROOT = Path(__file__).parent.parent.parent.parent
WITHOUT_FIGURES = ["mountain horned dragon", "sandfish", "emerald tree boa", "Komodo dragon"]
NOT_ANSWERED = [
    "distance",
    "uvi tube:12%",
    "distance tube:banana",
    "temps basking:100F cool:30F animal:bearded dragon",
    "needs animal:moor lizard",
    "night room:60F animal:snork lizard",
    "needs animal:gecko",
    "server show",
    "my dragon is new help",
    "is uvb ok for my snork lizard",
    "what should i feed my dragon",
    "which substrate is best for my dragon",
    "how far should the tube be for my bearded dragon",
]


def lacking() -> Iterator[tuple[str, str]]:
    """Yield every option that a question may lack, with the question."""
    for command in ALL_COMMANDS:
        options = command.query.options()
        for given in ({}, *({o.name: o.example} for o in options)):
            for name in command.query.lacking(given):
                yield name, command.name


@pytest.mark.parametrize("language", LANGUAGES)
def test_whatever_a_question_may_lack_can_be_asked_for(language: str) -> None:
    told = words(language)
    unsaid = {lacked(*each).id for each in lacking()} - set(told.keys())
    assert unsaid == set(), f"say it in bot/words/{language}/lack.ftl"


@pytest.mark.parametrize("language", LANGUAGES)
def test_whatever_the_engine_names_to_an_asker_has_words(language: str) -> None:
    told = words(language)
    assert {f"beyond-{key}" for key in NAMED} - set(told.keys()) == set()


def test_most_of_what_the_engine_refuses_has_a_name() -> None:
    found = {
        str(node.args[0].value)
        for path in (ROOT / "calc").rglob("*.py")
        for node in ast.walk(ast.parse(path.read_text(encoding="utf-8")))
        if isinstance(node, ast.Call)
        and isinstance(node.func, ast.Name)
        and node.func.id in ("check", "OutsideModelError")
        and node.args
        and isinstance(node.args[0], ast.Constant)
    }
    unnamed = {name for name in found if name.lower().replace(" ", "-") not in NAMED}
    # What no asker tells: it stands in formulas alone.
    assert unnamed <= {
        *("Rayleigh number", "apparent depth", "cosine of the zenith angle", "factor"),
        *("height", "height of the sun", "lux for plants"),
        *("depth of the floor", "length of the floor", "ozone column", "places read at"),
        *("share of rated power", "share of rated voltage", "slab side", "tilt", "wavelength"),
    }, "what an asker can tell belongs into NAMED of bot/outside.py and into beyond.ftl"


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("name", WITHOUT_FIGURES)
def test_that_there_are_no_figures_is_said_in_five_lines(name: str, language: Language) -> None:
    reply = ask(f"needs animal:{name}", Preferences(language=language))
    assert reply.language == language
    assert phone_lines(reply.brief) <= 5, [line.text for line in reply.brief]


@pytest.mark.parametrize("line", NOT_ANSWERED)
def test_what_is_not_answered_is_told_in_the_askers_language(line: str) -> None:
    for language in LANGUAGES:
        reply = ask(line, Preferences(language=language))
        assert (reply.status, reply.language) == ("problem", language)
        assert phone_lines(reply.brief) <= 10, [each.text for each in reply.brief]
    english = ask(line, Preferences(language=FIRST))
    german = ask(line, Preferences(language="de"))
    assert english.title != german.title
    assert english.answer != german.answer
