"""The questions as the outside sees them: as plain data, and as the README's table."""

from collections.abc import Iterator

from bot.command import Command
from bot.commands import STORED_COMMANDS
from bot.facts import Say
from bot.language.units import Units
from bot.menu import GROUPS, MODULES, STORED_GROUPS, about_group, about_option, about_question
from bot.preferences import FIRST
from bot.saying.voice import voice

__all__ = ["described", "said", "table"]


def said(say: Say) -> str:
    """Return a message in the first language."""
    return voice(FIRST, Units.IN).text(say)


def described(command: Command) -> dict[str, object]:
    """Return a question as plain data for the outside."""
    options: list[dict[str, object]] = []
    for option in command.query.options():
        entry: dict[str, object] = {
            "name": option.name,
            "description": said(about_option(command.name, option.name)),
            "required": option.required,
            "example": option.example,
        }
        if option.choices:
            entry["choices"] = list(option.choices)
        options.append(entry)
    return {
        "name": command.name,
        "summary": said(about_question(command.name)),
        "who": command.who,
        "options": options,
        "examples": list(command.examples),
    }


def table() -> str:
    """Return the questions as a table in Markdown: those asked alone, then the groups."""
    return "\n".join(("| you want to know | ask |", "| --- | --- |", *_rows())) + "\n"


def _rows() -> Iterator[str]:
    within = {name for names in GROUPS.values() for name in names}
    for name in MODULES:
        if name not in within and name not in STORED_COMMANDS.names:
            yield _row(about_question(name), name)
    for group, names in GROUPS.items():
        yield _row(about_group(group), *names)
    for group in STORED_GROUPS:
        yield _row(about_group(group), *(n for n in MODULES if n.startswith(f"{group} ")))


def _row(about: Say, *names: str) -> str:
    return f"| {said(about)} | {', '.join(f'`{name}`' for name in names)} |"
