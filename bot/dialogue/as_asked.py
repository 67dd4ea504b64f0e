"""Whether a line is a question by its name, and how it is asked where it is none."""

import re

from bot.commands import command_at
from bot.preferences import Preferences
from bot.question_context import read_alone

__all__ = ["as_asked", "is_typed", "tells_by_name"]

_MOST_OF_A_LAMP = 3
_MOST_OF_A_FIGURE = 4
# A name that nobody begins a sentence with.
_NO_WORD = "convert"
_TELLS = ("tube", "distance", "night", "basking", "hours", "surface", "air", "watts")
_OPTION = re.compile(r"(?<!\S)[a-z_]+[:=]\S")


def as_asked(line: str, preferences: Preferences) -> str:
    """Return a line as it is asked: words that only begin with a question's name are free words."""
    is_a_name = command_at(line) is not None and not is_typed(line, preferences)
    return f"ask {line}" if is_a_name else line


def is_typed(line: str, preferences: Preferences, *, goes_on: bool = False) -> bool:
    """Whether a line is a question by its name, not one in free words that begins with a name.

    ``goes_on``: something was asked before, and a name with a figure tells a part of that.
    """
    found = command_at(line)
    if found is None:
        return False
    command, rest = found
    if not rest or _OPTION.search(rest) or command.name == _NO_WORD:
        return True
    if goes_on and tells_by_name(line):
        return False
    many = len(rest.split()) > _MOST_OF_A_LAMP or any(map(str.isdigit, rest))
    if command.name == "lamp" and many:
        # "Lamp burns since 14 months" and "lamp 12 inches away" name no kind.
        return False
    # "lamp is 11 inches up" begins with a name and is no question.
    named_by = command.positional
    return bool(named_by) and read_alone(command.query, named_by, rest, preferences) is not None


def tells_by_name(line: str) -> bool:
    """Whether a line is a name and a figure that tell a part of a set-up: tube 12%.

    >>> tells_by_name("tube 12%"), tells_by_name("tube distance:12in")
    (True, False)
    """
    found = command_at(line)
    if found is None:
        return False
    command, rest = found
    a_figure = any(map(str.isdigit, rest)) and len(rest.split()) <= _MOST_OF_A_FIGURE
    return command.name in _TELLS and a_figure and not _OPTION.search(rest)
