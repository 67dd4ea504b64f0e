"""Whether a line is a question by its name, and how it is asked where it is none."""

import re

from bot.commands import command_at
from bot.preferences import Preferences
from bot.question_context import read_alone

__all__ = ["as_asked", "is_typed"]

_MOST_OF_A_LAMP = 3
# A name that nobody begins a sentence with.
_NO_WORD = "convert"
_OPTION = re.compile(r"(?<!\S)[a-z_]+[:=]\S")


def as_asked(line: str, preferences: Preferences) -> str:
    """Return a line as it is asked: words that only begin with a question's name are free words."""
    is_a_name = command_at(line) is not None and not is_typed(line, preferences)
    return f"ask {line}" if is_a_name else line


def is_typed(line: str, preferences: Preferences) -> bool:
    """Whether a line is a question by its name, not one in free words that begins with a name."""
    found = command_at(line)
    if found is None:
        return False
    command, rest = found
    if not rest or _OPTION.search(rest) or command.name == _NO_WORD:
        return True
    many = len(rest.split()) > _MOST_OF_A_LAMP or any(map(str.isdigit, rest))
    if command.name == "lamp" and many:
        # "Lamp burns since 14 months" and "lamp 12 inches away" name no kind.
        return False
    # "lamp is 11 inches up" begins with a name and is no question.
    named_by = command.positional
    return bool(named_by) and read_alone(command.query, named_by, rest, preferences) is not None
