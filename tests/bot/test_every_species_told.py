"""Every species is heard by its names of five languages in what people ask, and not as another.

A sample of the questions runs always; ``-m full`` asks all of them, in both units.
"""

import tomllib
from collections.abc import Iterator
from importlib.resources import files

import pytest

from bot.ask import ask
from bot.language.units import Units
from bot.preferences import Language, Preferences
from calc.animals import animals

NAMES = tomllib.loads((files("calc.data") / "animal_names.toml").read_text(encoding="utf-8"))
SLUGS = tuple(animals())
ENGLISH = (
    "how warm should it be for my {}",
    "does my {} need heat at night, the room is 64F",
    "how many hours of light does my {} need",
    "does my {} need uvb",
)
GERMAN = (
    "Wie warm braucht es mein Tier, {}?",
    "Braucht {} nachts Wärme bei 18 Grad im Zimmer?",
    "Wie viele Stunden Licht braucht {}?",
    "Braucht {} UV?",
)


def named_in(slug: str) -> Iterator[tuple[str, Language, tuple[str, ...]]]:
    """Yield the first name in each language that has one, and the questions it is asked with."""
    for language in ("en", "latin", "de", "fr", "es"):
        for name in NAMES["species"][slug].get(language, ())[:1]:
            if language == "de":
                yield name, "de", GERMAN
            else:
                yield name, "en", ENGLISH


def assert_heard(slug: str, name: str, language: Language, line: str, units: Units) -> None:
    reply = ask(line.format(name), Preferences(language=language, units=units))
    assert reply.status == "ok", (line, name, reply.answer)
    assert reply.language == language
    # Questions of free words say with which animal they were understood.
    assert f"animal:{animals()[slug].name}" in reply.model_dump_json(), (line, name, reply.answer)


@pytest.mark.parametrize("slug", SLUGS)
def test_a_species_is_heard_by_each_of_its_names(slug: str) -> None:
    turn = SLUGS.index(slug)
    for name, language, questions in named_in(slug):
        line = questions[turn % len(questions)]
        assert_heard(slug, name, language, line, Units.CM)
        turn += 1


@pytest.mark.full
@pytest.mark.parametrize("units", Units)
@pytest.mark.parametrize("slug", SLUGS)
def test_a_species_is_heard_in_every_question(slug: str, units: Units) -> None:
    for name, language, questions in named_in(slug):
        for line in questions:
            assert_heard(slug, name, language, line, units)
