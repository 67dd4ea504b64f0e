"""What could be typed next: values of an option, and the rest of a console line."""

from collections.abc import Callable

from bot import guide
from bot.commands import COMMANDS, command_named
from bot.language.names import ranked
from bot.queries.options import QueryOption
from calc.animals import animals

__all__ = ["complete", "complete_line"]

_MOST = 25
_TUBES = ("12%", "6%", "14%", "10", "5")
_SCREENS = (
    "none",
    "blocks 45%",
    "blocks 30%",
    "passes 55%",
    "18x16 0.011in",
    "18 mesh 0.009in",
    "8 mesh 0.017in",
)

_LISTS: dict[str, Callable[[], tuple[str, ...]]] = {
    "animal": lambda: tuple(animal.name for animal in animals().values()),
    "tube": lambda: _TUBES,
    "screen": lambda: _SCREENS,
    "page": lambda: tuple(page.slug for page in guide.pages()),
    "command": lambda: tuple(command.name for command in COMMANDS),
}


def complete(command: str, option: str, typed: str) -> list[str]:
    """Return up to 25 values that could complete an option; an empty list when none is known."""
    found = command_named(command)
    facts = next((o for o in found.query.options() if o.name == option), None) if found else None
    if facts is None:
        return []
    return ranked(typed, _values(facts), _MOST)


def complete_line(line: str) -> tuple[int, list[str]]:
    """Return where the unfinished word of a console line starts and what could stand there."""
    head, _, _ = line.lstrip("/").partition(" ")
    if " " not in line:
        return 0, [c.name for c in COMMANDS if c.name.startswith(head)]
    command = command_named(head)
    if command is None:
        return len(line), []
    options = {option.name: option for option in command.query.options()}
    start = max((line.rfind(f" {name}:") + len(name) + 2 for name in options
                 if f" {name}:" in line), default=-1)
    word_start = line.rfind(" ") + 1
    names = [f"{name}:" for name in options
             if f" {name}:" not in line and name.startswith(line[word_start:])]
    if start < 0 or not _values(options[_option_at(line, start)]):
        return word_start, names
    values = ranked(line[start:], _values(options[_option_at(line, start)]), _MOST)
    return (start, values) if not line.endswith(" ") else (word_start, names)


def _option_at(line: str, start: int) -> str:
    return line[:start].rsplit(" ", 1)[1].rstrip(":")


def _values(facts: QueryOption) -> tuple[str, ...]:
    return facts.choices or (_LISTS[facts.completes]() if facts.completes else ())
