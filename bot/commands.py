"""Every question Noonstone answers: the one list that the fronts, the help and the tests read."""

import re

from bot.command import Command
from bot.heat_commands import HEAT_COMMANDS
from bot.menu import WORDS, bare
from bot.questions.general.about import ABOUT
from bot.questions.general.convert import CONVERT
from bot.questions.general.guide import GUIDE
from bot.questions.general.help import help_of
from bot.questions.general.needs import NEEDS
from bot.questions.setup.plan import PLAN
from bot.questions.setup.section import SECTION
from bot.questions.uv.card import CARD
from bot.questions.uv.decline import DECLINE
from bot.questions.uv.distance import DISTANCE
from bot.questions.uv.dose import DOSE
from bot.questions.uv.meter import METER
from bot.questions.uv.tube import TUBE
from bot.questions.uv.uvi import UVI
from bot.setup_commands import SETUP_COMMANDS
from bot.stored_commands import GROUPS, STORED_COMMANDS

__all__ = ["ALL_COMMANDS", "COMMANDS", "command_at", "command_named", "described"]


# How an option begins.
_OPTION = re.compile(r"[A-Za-z_-]+[:=]\S")


def _all_commands() -> tuple[Command, ...]:
    return ALL_COMMANDS


COMMANDS: tuple[Command, ...] = (
    DISTANCE,
    UVI,
    TUBE,
    METER,
    DECLINE,
    SECTION,
    DOSE,
    PLAN,
    CARD,
    NEEDS,
    *HEAT_COMMANDS,
    *SETUP_COMMANDS,
    CONVERT,
    GUIDE,
    help_of(_all_commands, GROUPS),
    ABOUT,
)


ALL_COMMANDS: tuple[Command, ...] = (*COMMANDS, *STORED_COMMANDS)
"""Every question: those that the pure door answers, then those about saved data."""


def command_named(name: str) -> Command | None:
    """Return the question with this name, if there is one."""
    return next((command for command in ALL_COMMANDS if command.name == name), None)


def command_at(line: str) -> tuple[Command, str] | None:
    """Return the question that a line begins with, by either name, and the rest of the line."""
    typed = line.strip().removeprefix("/").lstrip()
    first = typed.split(maxsplit=2)
    for count in (2, 1):
        if len(first) < count:
            continue
        rest = typed
        for word in first[:count]:
            rest = rest.removeprefix(word).lstrip()
        name = " ".join(first[:count]).lower()
        # Somebody's heat lamp may smoke: without a slash, words after a group's are no question.
        options = not rest or _OPTION.match(rest) or line.lstrip().startswith("/")
        command = command_named(bare(name) if options or name not in WORDS else name)
        if command is not None:
            return command, rest
    return None


def described(command: Command) -> dict[str, object]:
    """Return a question as plain data for the outside."""
    options: list[dict[str, object]] = []
    for option in command.query.options():
        entry: dict[str, object] = {
            "name": option.name,
            "description": option.description,
            "required": option.required,
            "example": option.example,
        }
        if option.choices:
            entry["choices"] = list(option.choices)
        options.append(entry)
    return {
        "name": command.name,
        "summary": command.summary,
        "who": command.who,
        "options": options,
        "examples": list(command.examples),
    }
