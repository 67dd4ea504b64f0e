"""Every example in the guide is a question that works."""

import re

import pytest

from bot import guide
from bot.ask import ask
from bot.command import Command
from bot.commands import ALL_COMMANDS, command_at
from bot.preferences import Preferences

FIRST_WORDS = {command.name.split()[0] for command in ALL_COMMANDS}
PAGES = pytest.mark.parametrize("page", guide.pages(), ids=lambda page: page.slug)


@PAGES
def test_the_example_of_a_page_is_answered(page: guide.Page) -> None:
    reply = ask(page.example, Preferences())
    assert reply.status == "ok", reply.answer


def shown_in(page: guide.Page) -> list[tuple[Command, str]]:
    """Return the questions in the text of a page; a name alone asks nothing."""
    found = []
    for code in re.findall(r"`([^`]*)`", page.body):
        if code.split()[0] in FIRST_WORDS:
            at = command_at(code)
            assert at, f"{page.slug}: there is no question {code}"
            command, rest = at
            if command.facts and rest:
                found.append((command, code))
    return found


@PAGES
def test_a_question_shown_in_the_text_of_a_page_exists_and_is_answered(page: guide.Page) -> None:
    for command, question in shown_in(page):
        reply = ask(question, Preferences())
        assert reply.status == "ok", (question, reply.answer)
        assert reply.command == command.name


@PAGES
def test_a_figure_of_a_page_is_drawn_by_a_question_that_has_a_picture(page: guide.Page) -> None:
    for figure in page.figures:
        if figure.ask:
            reply = ask(figure.ask, Preferences())
            assert reply.status == "ok", (figure.ask, reply.answer)
            assert reply.picture, figure.ask
            assert reply.picture.drawing, figure.ask


def test_every_question_links_to_pages_that_exist() -> None:
    slugs = {page.slug for page in guide.pages()}
    assert {slug for command in ALL_COMMANDS for slug in command.guide} <= slugs
