"""Everything that strangers can put text into, each as a function that fails on any surprise.

The functions are fed by hypothesis in the suite and, for minutes, by atheris: see ``__main__``.
"""

import asyncio
from collections.abc import Callable
from functools import cache
from typing import Any

import discord
from pydantic import ValidationError

from bot.ask import ask
from bot.commands import COMMANDS
from bot.completion import complete, complete_line
from bot.dangers import listen
from bot.dangers.table import hazards
from bot.fronts.discord.buttons import BUTTONS, SwapButton
from bot.fronts.discord.forms import EditButton, form_for
from bot.fronts.discord.question import IN_MESSAGE, Question
from bot.language.hearing import hear
from bot.preferences import Preferences
from bot.questions.setup.told import kept_names
from bot.render.escaping import units_long
from bot.saved.group_file import ServerExport
from bot.saved.keeper_file import KeeperExport
from tests.bot.refusing import said
from tests.discord.limits import autocomplete_breaches
from tests.discord.message_limits import modal_breaches
from tests.fuzz.grammar import asked_from_the_pool
from tests.fuzz.harmless import assert_harmless, assert_plain, assert_same_when_asked_again
from tests.fuzz.pages import asked_on_the_page, sent_to_the_server
from tests.fuzz.pool import given_of
from tests.fuzz.stored import asked_at_a_desk, file_of, taken_back

__all__ = ["TARGETS", "Target"]

Target = Callable[[int, str], None]
_MOST = 100


def asked_line(number: int, text: str) -> None:
    """Ask a line: as it is, or behind the name of a question."""
    names = ["", *(f"{command.name} " for command in COMMANDS)]
    assert_harmless(ask(names[number % len(names)] + text, Preferences()))


def asked_options(number: int, text: str) -> None:
    """Ask a question with the text, line by line, as its options."""
    command = COMMANDS[number % len(COMMANDS)]
    given = given_of(command, text)
    reply = ask(Question(command.name, given), Preferences())
    assert_harmless(reply)
    assert_same_when_asked_again(reply, given)


def heard(_: int, text: str) -> None:
    """Hear a message."""
    found = hear(text, kept_names())
    for fact in found.facts:
        assert fact.words == text[fact.start : fact.end]
    for question in found.questions:
        assert question.words == text[question.start : question.end]
        assert_plain(said(question.question))


def told_dangers(_: int, text: str) -> None:
    """Listen for what cannot wait: each in words that the text holds, and in the table."""
    for alarm in listen(text):
        assert alarm.key in hazards()


def completed(number: int, text: str) -> None:
    """Complete an option and a line."""
    complete_line(text)
    pairs = [(c.name, o.name) for c in COMMANDS for o in c.query.options()]
    command, option = pairs[number % len(pairs)]
    values = [value for value in complete(command, option, text) if len(value) <= _MOST]
    assert autocomplete_breaches([{"name": v, "value": v} for v in values]) == []


def pressed(number: int, text: str) -> None:
    """Press a button with any custom id."""
    prefixes = ["", "e:", "f:", "u:in:", "u:cm:", "p:see:in:", "g:open:", "r:", "share"]
    custom_id = prefixes[number % len(prefixes)] + text
    for kind in BUTTONS:
        match = kind.__discord_ui_compiled_template__.fullmatch(custom_id)
        if match is not None:
            button: discord.ui.Button[Any] = discord.ui.Button(
                label="A page", custom_id=custom_id[:_MOST]
            )
            _loop().run_until_complete(kind.from_custom_id(None, button, match))  # type: ignore[arg-type]
    packed = custom_id.split(":", 3)[-1]
    question = Question.unpacked(packed, None)
    if question is not None:
        _assert_known_again(question)


def kept_in_buttons(number: int, text: str) -> None:
    """Carry a question in a button and a form, and know it again."""
    command = COMMANDS[number % len(COMMANDS)]
    _assert_known_again(Question(command.name, given_of(command, text)))


def _assert_known_again(question: Question) -> None:
    for prefix, kind in (("u:in:", SwapButton), ("e:", EditButton)):
        custom_id = question.custom_id(prefix)
        assert units_long(custom_id) <= _MOST
        assert kind.__discord_ui_compiled_template__.fullmatch(custom_id), custom_id
        packed = custom_id.removeprefix(prefix)
        if packed != IN_MESSAGE:
            assert Question.unpacked(packed, None) == question
    if EditButton.fits(question):
        assert modal_breaches(form_for(question).to_dict()) == []


def imported(number: int, text: str) -> None:
    """Read a file of a keeper or of a server."""
    kind = (KeeperExport, ServerExport)[number % 2]
    try:
        given = kind.model_validate_json(file_of(number, text).encode("utf-8", "surrogatepass"))
    except ValidationError:
        return
    again = kind.model_validate_json(given.model_dump_json())
    assert again == given
    for name in _names(given):
        assert_plain(name)


def _names(given: KeeperExport | ServerExport) -> list[str]:
    if isinstance(given, KeeperExport):
        return [enclosure.name for enclosure in given.enclosures]
    return [lamp.name for lamp in given.lamps] + [screen.name for screen in given.screens]


@cache
def _loop() -> asyncio.AbstractEventLoop:
    return asyncio.new_event_loop()


TARGETS: dict[str, Target] = {
    "ask": asked_line,
    "options": asked_options,
    "pool": asked_from_the_pool,
    "dangers": told_dangers,
    "hearing": heard,
    "completion": completed,
    "press": pressed,
    "button": kept_in_buttons,
    "file": imported,
    "import": taken_back,
    "desk": asked_at_a_desk,
    "page": asked_on_the_page,
    "wire": sent_to_the_server,
}
