"""Questions put together out of the pool, asked where everything is to be had."""

import io
from collections.abc import Mapping

from rich.console import Console

from bot.command import Command
from bot.commands import ALL_COMMANDS
from bot.render.terminal import render_terminal
from bot.reply import Reply
from tests.fuzz.advice import assert_advice_leads_to_an_answer
from tests.fuzz.harmless import assert_harmless
from tests.fuzz.pool import examples_of, pool
from tests.fuzz.stored import asked_of_the_office, office_cleared

__all__ = ["asked_from_the_pool", "asked_in_full"]


def asked_from_the_pool(number: int, text: str) -> None:
    """Let each character of the text choose what is put into an option, or that nothing is."""
    command = ALL_COMMANDS[number % len(ALL_COMMANDS)]
    starts = [*examples_of(command), {}]
    chosen = dict(starts[number // len(ALL_COMMANDS) % len(starts)])
    for option, character in zip(command.query.options(), text, strict=False):
        values, choice = pool(command, option.name), ord(character)
        if choice == ord(" "):
            chosen.pop(option.name, None)
        elif choice != ord("-"):
            chosen[option.name] = values[choice % len(values)]
    asked_in_full(command, chosen)


def asked_in_full(command: Command, given: Mapping[str, str]) -> None:
    """Ask, look at the reply in every form, and do what a refusal says."""
    if command.stored is not None:
        office_cleared()
    reply = asked_of_the_office(command.name, given)
    assert_harmless(reply)
    _assert_printable(reply)
    if not any(option.document for option in command.query.options()):
        assert_advice_leads_to_an_answer(command, given, asked_of_the_office)


def _assert_printable(reply: Reply) -> None:
    console = Console(file=io.StringIO(), width=80)
    console.print(render_terminal(reply))
