"""Help: everyday questions first, the rest by topic and group, each with its options."""

import pytest

from bot.ask import ask
from bot.command import Command
from bot.commands import ALL_COMMANDS, COMMANDS, STORED_COMMANDS
from bot.language.units import Units
from bot.menu import GROUPS, STORED_GROUPS, about_group, about_option, about_question
from bot.preferences import LANGUAGES, Language, Preferences
from bot.questions.general.help import EVERYDAY, TOPICS
from bot.render.text import render_text
from bot.saying.voice import voice

MOST_ROWS = 14


def said(key: str, language: Language = "en") -> str:
    speaker = voice(language, Units.IN)
    return speaker.words.spoken(key)(None, speaker)


def test_every_question_stands_in_one_topic_or_one_group() -> None:
    named = [name for names in TOPICS.values() for name in names]
    assert sorted(named) == sorted(command.name for command in COMMANDS)
    assert {command.name.partition(" ")[0] for command in STORED_COMMANDS} == set(STORED_GROUPS)


@pytest.mark.parametrize("language", LANGUAGES)
def test_help_is_short_and_names_every_question_or_its_group(language: Language) -> None:
    reply = ask("help", Preferences(language=language))
    assert reply.status == "ok"
    assert reply.language == language
    assert len(reply.rows) <= MOST_ROWS
    assert [row.label for row in reply.rows[: len(EVERYDAY)]] == list(EVERYDAY)
    told = " ".join(f"{row.label} {row.text}" for row in reply.rows)
    names = told.replace(",", " ").replace("(", " ").split()
    for command in ALL_COMMANDS:
        assert command.name.partition(" ")[0] in names, command.name


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("command", ALL_COMMANDS, ids=lambda command: str(command.name))
def test_help_on_a_question_shows_each_option_as_it_is_typed(
    command: Command, language: Language
) -> None:
    reply = ask(f"help {command.name}", Preferences(language=language))
    assert reply.status == "ok"
    assert [row.label.partition(":")[0] for row in reply.rows] == [
        option.name for option in command.query.options()
    ]
    assert len(reply.steps) == len(command.examples)


@pytest.mark.parametrize("wish", ["uv", "warmth", "heat", "all", *STORED_GROUPS])
def test_help_on_a_topic_or_group_lists_its_questions(wish: str) -> None:
    reply = ask(f"help {wish}", Preferences())
    assert reply.status == "ok"
    assert reply.table is not None
    known = {command.name for command in ALL_COMMANDS}
    assert {row[0] for row in reply.table.rows} <= known


@pytest.mark.parametrize("language", LANGUAGES)
def test_what_a_question_answers_and_its_options_are_for_fits_into_a_menu(
    language: Language,
) -> None:
    said = voice(language, Units.IN).text
    menu = [about_group(group) for group in (*GROUPS, *STORED_GROUPS, "for")]
    for command in ALL_COMMANDS:
        menu.append(about_question(command.name))
        menu += [about_option(command.name, one.name) for one in command.query.options()]
    assert [told for told in map(said, menu) if not 1 <= len(told) <= 100] == []


def test_no_word_is_kept_of_a_question_that_is_gone() -> None:
    words = voice("en", Units.IN).words
    kept = {key for stem in ("summary", "option") for key in words.entries(stem)}
    slugs = {command.name.replace(" ", "-"): command for command in ALL_COMMANDS}
    asked = {f"summary-{slug}" for slug in slugs}
    for slug, command in slugs.items():
        asked |= {f"option-{slug}-{option.name}" for option in command.query.options()}
    assert kept == asked


def test_a_long_example_leaves_its_words_a_whole_line() -> None:
    told = render_text(ask("help next", Preferences())).splitlines()
    first = next(i for i, line in enumerate(told) if line.startswith("setup:"))
    assert told[first + 1].strip().startswith("set-up in your own words, as you would")
