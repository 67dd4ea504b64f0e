"""Which command a line asks: by its name, or the one for free words."""

import re

from bot.command import Command
from bot.commands import ALL_COMMANDS, COMMANDS, STORED_COMMANDS, command_at, command_named
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.shown import shown
from bot.language.wanted import Closest, SecondWord

__all__ = ["command_of", "no_such_command"]

# Fewer words are a mistyped name rather than a question in free words.
_FEWEST_WORDS = 3
# The question that takes any words.
_FREE = "ask"
# Two words may ask too: what next, ceramic do?
_ASKS = re.compile(
    r"\s*(?:(?:what|what'?s|was|how|wie|why|warum)\s+\w|\w+\s+[^\W\d]\w*\s*\?)", re.I
)
_OPTION = re.compile(r"(?<!\S)[A-Za-z_-]+[:=]\S")


def command_of(line: str, own: tuple[str, ...] = ()) -> tuple[Command, str]:
    """Return the command that a line begins with and the rest; free words are a question too.

    ``own`` are the names of the animals that the asker's group added.
    """
    found = command_at(line)
    if found is not None:
        takes_options = found[0].positional or found[0].stored is not None
        told_freely = not takes_options and _is_sentence(found[1], own)
        return (_known(_FREE), line.strip()) if told_freely else found
    words = line.strip().removeprefix("/").split(maxsplit=2)
    if not words:
        raise NotUnderstoodError("", Say("wanted-question"), COMMANDS[0].examples[0])
    first = words[0].lower()
    group = [name for name in STORED_COMMANDS.names if name.partition(" ")[0] == first]
    if group:
        seconds = tuple(name.partition(" ")[2] for name in group)
        wanted = Say("wanted-second-word", SecondWord(first, seconds))
        read = shown(words[1]) if len(words) > 1 else ""
        raise NotUnderstoodError(read, wanted, _known(group[0]).examples[0])
    if _is_sentence(line, own):
        return _known(_FREE), line.strip()
    raise NotUnderstoodError(shown(words[0]), _accepted_commands(words[0]), COMMANDS[0].examples[0])


def _known(name: str) -> Command:
    command = command_named(name)
    assert command is not None
    return command


def _is_sentence(line: str, own: tuple[str, ...]) -> bool:
    """Say whether a line is told in free words, and is no mistyped question with options."""
    if _OPTION.search(line):
        return False
    if len(line.split()) >= _FEWEST_WORDS or _ASKS.match(line):
        return True
    from bot.questions.setup.told import names_an_animal

    return names_an_animal(line, own)


def _accepted_commands(word: str) -> Say:
    names = list(dict.fromkeys(name.partition(" ")[0] for name in ALL_COMMANDS.names))
    return Say("wanted-command", Closest(closest(word.lower(), names)))


def no_such_command(name: str) -> NotUnderstoodError:
    """Return the refusal of a name that no command has."""
    return NotUnderstoodError(shown(name), _accepted_commands(name), COMMANDS[0].examples[0])
