"""Every example in the guide is a question that works."""

import re
from importlib.resources import files

import pytest

from bot import guide
from bot.ask import ask
from bot.commands import COMMANDS
from bot.guide.loader import read_page
from bot.preferences import Preferences

NAMES = {command.name for command in COMMANDS}
FILES = [p for p in files("bot.guide").iterdir() if p.name.endswith(".md")]
EVERY = [read_page(p.name.removesuffix(".md"), p.read_text(encoding="utf-8")) for p in FILES]
READY = pytest.mark.parametrize(
    "page", [page for page in EVERY if page.ready], ids=lambda page: page.slug
)


@READY
def test_the_example_of_a_page_is_answered(page: guide.Page) -> None:
    reply = ask(page.example, Preferences())
    assert reply.status == "ok", reply.answer


@READY
def test_a_question_shown_in_the_text_of_a_page_is_answered(page: guide.Page) -> None:
    shown = [code for code in re.findall(r"`([^`]*)`", page.body) if code.split()[0] in NAMES]
    for question in shown:
        reply = ask(question, Preferences())
        assert reply.status == "ok", (question, reply.answer)


def test_a_page_waits_only_for_a_question_that_does_not_exist_yet() -> None:
    waiting = {page.slug for page in EVERY if not page.ready and page.example.split()[0] in NAMES}
    assert not waiting, "their question exists now: set ready to true"


def test_every_question_links_to_pages_that_exist() -> None:
    slugs = {page.slug for page in guide.pages()}
    assert {slug for command in COMMANDS for slug in command.guide} <= slugs
