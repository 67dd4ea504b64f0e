"""A question of one line finds the part of the guide whose first sentence answers it."""

import tomllib
from pathlib import Path

import pytest

from bot import guide
from bot.ask import ask
from bot.brief import MOST_LINES, brief_of, phone_lines
from bot.command import Routed
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import Units
from bot.preferences import LANGUAGES, Context, Language, Preferences
from bot.queries.setup import AskQuery
from bot.routes.routing import route

TOLD = tomllib.loads(Path(__file__).with_name("short_answers.toml").read_text(encoding="utf-8"))
ASKED = [
    (language, part, say)
    for language in LANGUAGES
    for part, lines in TOLD[language].items()
    for say in lines
]
ANSWERING = [
    (language, page, answers.part)
    for language in LANGUAGES
    for page in guide.pages(language)
    for answers in page.answers
]


def found(say: str, language: Language) -> str:
    try:
        meant = route(AskQuery(question=say), Context(Units.IN, language=language))
    except NotUnderstoodError:
        return ""
    if not isinstance(meant, Routed) or meant.command != "guide":
        return ""
    return f"{meant.given['page']}: {meant.given.get('part', '')}"


@pytest.mark.parametrize(("language", "part", "say"), ASKED)
def test_a_short_question_opens_the_part_that_answers_it(
    language: Language, part: str, say: str
) -> None:
    assert found(say, language) == part


@pytest.mark.parametrize("say", TOLD["no"]["lines"])
def test_a_question_that_only_sounds_alike_is_not_answered_so(say: str) -> None:
    parts = {f"{page.slug}: {part}" for _, page, part in ANSWERING}
    assert found(say, "en") not in parts


def test_every_part_that_answers_is_asked_for_in_a_test() -> None:
    asked = {(language, part) for language, part, _ in ASKED}
    named = {(language, f"{page.slug}: {part}") for language, page, part in ANSWERING}
    assert {pair for pair in named if pair[0] == "en"} <= asked
    assert asked <= named


@pytest.mark.parametrize(
    ("language", "page", "part"),
    [row for row in ANSWERING if row[1].slug.startswith("answers-about")],
    ids=lambda one: getattr(one, "slug", one),
)
def test_a_short_answer_is_seen_at_once_on_a_phone(
    language: Language, page: guide.Page, part: str
) -> None:
    preferences = Preferences(language=language)
    brief = brief_of(ask(f'guide page:{page.slug} part:"{part}"', preferences))
    assert phone_lines(brief) <= MOST_LINES


def test_a_part_that_answers_stands_in_both_languages_at_the_same_place() -> None:
    for page in guide.pages():
        twin = guide.page(page.slug, "de")
        places = [place(page, answers.part) for answers in page.answers]
        assert places == [place(twin, answers.part, "de") for answers in twin.answers]


def place(page: guide.Page, part: str, language: Language = "en") -> int:
    return [heading for heading, _ in guide.sections(page, language)].index(part)


def test_a_german_question_without_a_set_language_is_answered_in_german() -> None:
    reply = ask("Welches Thermostat brauche ich für einen Keramikstrahler?", Preferences())
    assert reply.answer.startswith("Ein Puls-Thermostat")
