"""What is told of a question that could not be read: what is wrong or missing, and what works."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from pydantic import ValidationError

from bot.answers.animals import ANY_ANIMAL, AnimalNotNamedError
from bot.answers.examples import examples_for
from bot.command import Command
from bot.dangers.first import Quoted
from bot.facts import Say
from bot.kept.group import Own
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.shown import shown
from bot.language.words import join_line, split_line

__all__ = [
    "Way",
    "asked_line",
    "first_error",
    "misread",
    "missing_example",
    "missing_told",
    "not_heard",
    "unknown_option",
    "unnamed_example",
    "unnamed_told",
]


@dataclass(frozen=True, slots=True)
class Misread:
    """A text that could not be read as what was wanted; ``accepted`` is told in English alone."""

    what: Say
    option: str | None
    accepted: str
    example: str
    # A question as a line, where one in free words was not understood.
    line: str


@dataclass(frozen=True, slots=True)
class Missing:
    """What a question still needs: by name, and with what it is, which is told in English alone."""

    told: Say
    names: tuple[str, ...]
    wanted: str
    example: str


@dataclass(frozen=True, slots=True)
class NoOption:
    """An option that a question does not have."""

    what: Say
    name: str
    near: str | None
    known: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Way:
    """Where to read on: a question by its name."""

    name: str


def asked_line(command: Command, given: Mapping[str, str]) -> str:
    """Return the question as a line that can be asked again."""
    options = command.query.options()
    names = [o.name for o in options if o.name in given and not o.document]
    return join_line(command.name, {name: given[name] for name in names})


def first_error(error: ValidationError) -> NotUnderstoodError | None:
    """Return the first thing that is wrong with what was typed; None where something is missing."""
    problems = sorted(error.errors(), key=lambda e: e["type"] == "missing")
    first = problems[0]
    cause = first.get("ctx", {}).get("error")
    if not isinstance(cause, NotUnderstoodError):
        return None
    name = str(first["loc"][0]) if first["loc"] else cause.option
    return NotUnderstoodError(cause.read, cause.accepted, cause.example, name)


def misread(error: NotUnderstoodError) -> Say:
    """Return what was read, what was wanted, and an example."""
    return Say("refused-misread", _misread(error))


def not_heard(error: NotUnderstoodError, command: Command) -> Say:
    """Return that a question in free words was not understood, with one that is."""
    return Say("refused-not-heard", _misread(error, command.examples[0]))


def _misread(error: NotUnderstoodError, line: str = "") -> Misread:
    nothing = error.read == "nothing"
    what = Say("refused-nothing") if nothing else Say("door-quoted", Quoted(error.read))
    return Misread(what, error.option or None, error.accepted, error.example, line)


def unknown_option(error: ValidationError, command: Command) -> Say | None:
    """Return what is told of an option that a question does not have; None where it has all."""
    known = tuple(option.name for option in command.query.options())
    names = (str(one["loc"][0]) for one in error.errors() if one["type"] == "extra_forbidden")
    name = next(names, "")
    if not name:
        return None
    what = Say("door-quoted", Quoted(shown(name)))
    return Say("refused-option", NoOption(what, command.name, closest(name, known) or None, known))


def _plain(given: Mapping[str, str]) -> dict[str, str]:
    """Return what may be shown word for word; the example is to be copied, so the rest is not."""
    return {name: text for name, text in given.items() if shown(text) == text}


def missing_example(
    command: Command, given: Mapping[str, str], own: Own, usual_animal: str = ""
) -> str:
    """Return the question with what it still needs, for the animal that was named."""
    missing = command.query.lacking(given, own)
    options = {option.name: option for option in command.query.options()}
    shown_rest = command.examples[0].removeprefix(command.name)
    _, example = split_line(f"question{shown_rest}", options, command.positional)
    filled = example | {name: options[name].example for name in missing}
    fitting = examples_for(command.name, given.get("animal", "") or usual_animal, own)
    filled |= {name: text for name, text in fitting.items() if name in filled}
    filled |= _plain(given)
    return join_line(command.name, {name: filled[name] for name in options if name in filled})


def missing_told(command: Command, given: Mapping[str, str], own: Own, example: str) -> Say:
    """Return what the question still needs, with an example."""
    options = {option.name: option for option in command.query.options()}
    lacking = command.query.lacking(given, own)
    wanted = "; ".join(f"{name} ({options[name].description})" for name in lacking)
    return _still_needed(lacking, wanted, command, given, example)


def unnamed_example(command: Command, given: Mapping[str, str]) -> str:
    """Return the question with an animal."""
    return asked_line(command, _plain(given) | {"animal": ANY_ANIMAL})


def unnamed_told(
    error: AnimalNotNamedError, command: Command, given: Mapping[str, str], example: str
) -> Say:
    """Return that the animal is needed, with an example."""
    wanted = error.accepted.replace("the animal", "animal", 1)
    shown_one = example if given else command.examples[0]
    return _still_needed((error.option,), wanted, command, given, shown_one)


def _still_needed(
    names: Sequence[str], wanted: str, command: Command, given: Mapping[str, str], example: str
) -> Say:
    read = ", ".join(f"{name}:{shown(text)}" for name, text in given.items())
    told = (
        Say("refused-told", Quoted(read))
        if read
        else Say("refused-nothing-after", Way(command.name))
    )
    return Say("refused-missing", Missing(told, tuple(names), wanted, example))
