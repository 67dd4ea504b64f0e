"""Every question Noonstone answers: the one list that the fronts, the help and the tests read.

It names the module in which each question stands, and imports that one when the question is looked
at: who asks for one does not wait for all. A module holds a question as a ``Command`` under its
name in capitals, such as ``MINE_SAVE``.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from functools import cache
from importlib import import_module
from typing import Final, overload

from bot.command import Command
from bot.menu import WORDS, bare

__all__ = [
    "ALL_COMMANDS",
    "COMMANDS",
    "STORED_COMMANDS",
    "Listed",
    "command_at",
    "command_named",
    "described",
]

# How an option begins.
_OPTION = re.compile(r"[A-Za-z_-]+[:=]\S")

# In the order of the list.
_PURE: Final = {
    "distance": "questions.uv.distance",
    "uvi": "questions.uv.uvi",
    "tube": "questions.uv.tube",
    "meter": "questions.uv.meter",
    "decline": "questions.uv.decline",
    "section": "questions.setup.section",
    "dose": "questions.uv.dose",
    "plan": "questions.setup.plan",
    "card": "questions.uv.card",
    "needs": "questions.general.needs",
    "temps": "questions.heat.temps",
    "basking": "questions.heat.basking",
    "watts": "questions.heat.watts",
    "air": "questions.heat.air",
    "night": "questions.heat.night",
    "hours": "questions.heat.hours",
    "surface": "questions.heat.surface",
    "lamp": "questions.heat.lamp",
    "ask": "routes.ask",
    "check": "questions.setup.check",
    "convert": "questions.general.convert",
    "guide": "questions.general.guide",
    "help": "questions.general.help",
    "about": "questions.general.about",
}
# Their examples work one after the other, beginning with a store in which there is nothing.
_STORED: Final = {
    "mine save": "questions.saved.saving",
    "mine reading": "questions.saved.reading",
    "mine show": "questions.saved.showing",
    "mine compare": "questions.saved.comparing",
    "mine unread": "questions.saved.reading",
    "mine list": "questions.saved.listing",
    "mine remove": "questions.saved.enclosures",
    "mine prefer": "questions.saved.person",
    "mine export": "questions.saved.person",
    "mine import": "questions.saved.person",
    "mine forget": "questions.saved.person",
    "remind me": "questions.saved.reminding",
    "remind list": "questions.saved.reminding",
    "remind snooze": "questions.saved.reminding",
    "remind off": "questions.saved.reminding",
    "server show": "questions.saved.group",
    "server set": "questions.saved.group",
    "server answers": "questions.saved.group",
    "server lamp": "questions.saved.own_uv",
    "server screen": "questions.saved.own_uv",
    "server target": "questions.saved.own_targets",
    "server animal": "questions.saved.own_animals",
    "server remove": "questions.saved.own_removed",
    "server changes": "questions.saved.log",
    "server stats": "questions.saved.stats",
    "server export": "questions.saved.group_files",
    "server import": "questions.saved.group_files",
    "server forget": "questions.saved.group_files",
    "board preview": "questions.saved.boards",
    "board post": "questions.saved.boards",
    "board list": "questions.saved.boards",
    "board refresh": "questions.saved.boards",
    "board remove": "questions.saved.boards",
}
_ALL: Final = {**_PURE, **_STORED}


@dataclass(frozen=True, slots=True)
class Listed(Sequence[Command]):
    """Questions by their names; one is imported when it is looked at."""

    names: tuple[str, ...]

    def __len__(self) -> int:
        return len(self.names)

    @overload
    def __getitem__(self, index: int) -> Command: ...
    @overload
    def __getitem__(self, index: slice) -> "Listed": ...
    def __getitem__(self, index: int | slice) -> "Command | Listed":
        if isinstance(index, slice):
            return Listed(self.names[index])
        return _imported(self.names[index])

    def __iter__(self) -> Iterator[Command]:
        return map(_imported, self.names)


@cache
def _imported(name: str) -> Command:
    command = getattr(import_module(f"bot.{_ALL[name]}"), name.upper().replace(" ", "_"))
    assert isinstance(command, Command)
    return command


COMMANDS: Final = Listed(tuple(_PURE))
"""The questions that the pure door answers."""

STORED_COMMANDS: Final = Listed(tuple(_STORED))
"""The questions about saved data."""

ALL_COMMANDS: Final = Listed(tuple(_ALL))
"""Every question: those that the pure door answers, then those about saved data."""


def command_named(name: str) -> Command | None:
    """Return the question with this name, if there is one."""
    return _imported(name) if name in _ALL else None


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
