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
from bot.language.errors import NotUnderstoodError
from bot.menu import MODULES, STORED_GROUPS, WORDS, bare
from bot.queries.question import Question

__all__ = [
    "ALL_COMMANDS",
    "COMMANDS",
    "STORED_COMMANDS",
    "Listed",
    "command_at",
    "command_named",
    "question_at",
]

# How an option begins.
_OPTION = re.compile(r"[A-Za-z_-]+[:=]\S")


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
    command = getattr(import_module(MODULES[name]), name.upper().replace(" ", "_"))
    assert isinstance(command, Command)
    return command


STORED_COMMANDS: Final = Listed(
    tuple(name for name in MODULES if name.partition(" ")[0] in STORED_GROUPS)
)
"""The questions about saved data."""

COMMANDS: Final = Listed(tuple(name for name in MODULES if name not in STORED_COMMANDS.names))
"""The questions that the pure door answers."""

ALL_COMMANDS: Final = Listed(tuple(MODULES))
"""Every question: those that the pure door answers, then those about saved data."""


def command_named(name: str) -> Command | None:
    """Return the question with this name, if there is one."""
    return _imported(name) if name in MODULES else None


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


def question_at(line: str) -> Question | None:
    """Return the question that a line asks by its name, its options as typed; None: none."""
    found = command_at(line)
    if found is None:
        return None
    command, rest = found
    try:
        return Question(command.name, command.query.texts_in(rest, command.positional))
    except NotUnderstoodError:
        return None
