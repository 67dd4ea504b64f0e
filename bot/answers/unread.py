"""The sentences for a question that could not be read: what is wrong or missing, and what works."""

from collections.abc import Mapping

from pydantic import ValidationError

from bot.answers.animals import ANY_ANIMAL, AnimalNotNamedError
from bot.answers.examples import examples_for
from bot.command import Command
from bot.kept.group import Own
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.shown import shown
from bot.language.words import join_line, split_line

__all__ = [
    "asked_line",
    "first_error",
    "missing_example",
    "missing_sentence",
    "unknown_option",
    "unnamed_example",
    "unnamed_sentence",
]


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


def unknown_option(error: ValidationError, command: Command) -> str:
    """Return the sentence for an option that a question does not have; nothing where it has all."""
    known = [option.name for option in command.query.options()]
    names = (str(one["loc"][0]) for one in error.errors() if one["type"] == "extra_forbidden")
    name = next(names, "")
    if not name:
        return ""
    near = closest(name, known)
    wish = f"did you mean {near}? " if near else ""
    return f"“{shown(name)}” is not an option of {command.name}: {wish}It takes {', '.join(known)}."


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


def missing_sentence(command: Command, given: Mapping[str, str], own: Own, example: str) -> str:
    """Return what the question still needs, with an example."""
    options = {option.name: option for option in command.query.options()}
    lacking = command.query.lacking(given, own)
    wanted = "; ".join(f"{name} ({options[name].description})" for name in lacking)
    return _still_needed(wanted, command, given, example)


def unnamed_example(command: Command, given: Mapping[str, str]) -> str:
    """Return the question with an animal."""
    return asked_line(command, _plain(given) | {"animal": ANY_ANIMAL})


def unnamed_sentence(
    error: AnimalNotNamedError, command: Command, given: Mapping[str, str], example: str
) -> str:
    """Return that the animal is needed, with an example."""
    wanted = error.accepted.replace("the animal", "animal", 1)
    return _still_needed(wanted, command, given, example if given else command.examples[0])


def _still_needed(wanted: str, command: Command, given: Mapping[str, str], example: str) -> str:
    read = (
        ", ".join(f"{name}:{shown(text)}" for name, text in given.items())
        or f"nothing after {command.name}"
    )
    return f"I read {read}, but I still need {wanted}. For example: {example}"
