"""The door: a line of text, or a command with typed options, becomes a Reply.

Everything an asker can get wrong becomes a Reply of status ``problem`` here and nowhere else.
What is our own fault (a bug) is raised: the front logs it with an id and says so.
"""

from collections.abc import Mapping

from pydantic import ValidationError

from bot.answers.linking import page_links
from bot.answers.outside import outside_sentence
from bot.answers.own import own_rows
from bot.command import Command
from bot.commands import COMMANDS, command_named
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.quantities import Units
from bot.language.shown import shown
from bot.language.words import split_line
from bot.preferences import Context, Preferences
from bot.queries.options import Query
from bot.queries.units import system_of, taken_units
from bot.reply import Reply, Row
from calc.validity import OutsideModelError

__all__ = ["ask", "ask_options", "problem"]

_MOST_CHARACTERS = 2000


def ask(line: str, preferences: Preferences) -> Reply:
    """Answer one line such as ``distance tube:12% reflector:polished screen:none``."""
    command: Command | None = None
    try:
        if len(line) > _MOST_CHARACTERS:
            raise NotUnderstoodError(
                shown(line), f"at most {_MOST_CHARACTERS} characters", COMMANDS[0].examples[0]
            )
        command, rest = _command_of(line)
        examples = {option.name: option.example for option in command.query.options()}
        _, given = split_line(f"{command.name} {rest}", examples, command.positional)
    except NotUnderstoodError as error:
        return problem(command.name if command else "help", str(error), preferences)
    return ask_options(command.name, given, preferences)


def ask_options(name: str, given: Mapping[str, str], preferences: Preferences) -> Reply:
    """Answer a command whose options come already apart, as Discord sends them."""
    command = command_named(name)
    if command is None:
        return problem("help", _no_such_command(name), preferences)
    asked = _asked(command, given)
    try:
        query = command.query.model_validate(dict(given), context=_reading(preferences))
        context = _context(query, given, preferences)
        reply = command.answer(query, context)
    except ValidationError as error:
        return problem(name, _sentence(error, command, given), preferences, asked)
    except NotUnderstoodError as error:
        return problem(name, str(error), preferences, asked)
    except OutsideModelError as error:
        first = preferences.forced_units or preferences.bare or Units.IN
        sentence = outside_sentence(error, first)
        return problem(name, sentence, preferences, asked)
    taken, named = taken_units(query)
    rows = reply.rows + own_rows(command, given, context)
    rows += tuple(
        Row(label="Taken as", text=f"{name} {text} has no unit, so I took it as {unit}")
        for name, text, unit in taken
    )
    return reply.model_copy(
        update={
            "asked": _asked(command, dict(given) | named),
            "units": context.units.value,
            "rows": rows,
        }
    )


def problem(name: str, sentence: str, preferences: Preferences, asked: str = "") -> Reply:
    """Return the Reply that tells one plain sentence of what went wrong."""
    command = command_named(name)
    return Reply(
        command=name,
        status="problem",
        title="That did not work",
        answer=sentence,
        steps=("All questions: help",)
        if name == "help" or command is None
        else (f"More about this question: help {name}",),
        guide=page_links(command.guide[:1] if command else (), preferences.guide_url),
        asked=asked,
    )


def _command_of(line: str) -> tuple[Command, str]:
    words = line.strip().removeprefix("/").split(maxsplit=1)
    if not words:
        raise NotUnderstoodError("nothing", "a question", COMMANDS[0].examples[0])
    command = command_named(words[0].lower())
    if command is None:
        raise NotUnderstoodError(
            shown(words[0]), _accepted_commands(words[0]), COMMANDS[0].examples[0]
        )
    return command, words[1] if len(words) > 1 else ""


def _accepted_commands(word: str) -> str:
    names = [command.name for command in COMMANDS]
    near = closest(word.lower(), names)
    wish = f"perhaps {near}; " if near else ""
    return f"one of the questions I know ({wish}all are {', '.join(names)})"


def _no_such_command(name: str) -> str:
    return str(NotUnderstoodError(shown(name), _accepted_commands(name), COMMANDS[0].examples[0]))


def _asked(command: Command, given: Mapping[str, str]) -> str:
    names = [option.name for option in command.query.options() if option.name in given]
    return " ".join([command.name, *(f"{name}:{given[name]}" for name in names)])


def _reading(preferences: Preferences) -> dict[str, object]:
    """Return what the options may consult while they are read."""
    return {"units": preferences.bare, "own": preferences.own}


def _context(query: Query, given: Mapping[str, str], preferences: Preferences) -> Context:
    typed = (getattr(query, name, None) for name in given)
    first = next((system for value in typed if (system := system_of(value))), None)
    units = preferences.forced_units or first or preferences.units or Units.IN
    return Context(units, preferences.guide_url, preferences.default_animal, preferences.own)


def _sentence(error: ValidationError, command: Command, given: Mapping[str, str]) -> str:
    """Return one sentence for the first thing that is wrong; what is missing comes last."""
    problems = sorted(error.errors(), key=lambda e: e["type"] == "missing")
    first = problems[0]
    name = str(first["loc"][0]) if first["loc"] else ""
    if first["type"] == "missing":
        return _missing(error, command, given)
    cause = first.get("ctx", {}).get("error")
    if isinstance(cause, NotUnderstoodError):
        return NotUnderstoodError(cause.read, cause.accepted, cause.example, name).sentence()
    known = [option.name for option in command.query.options()]
    near = closest(name, known)
    wish = f"did you mean {near}? " if near else ""
    return f"“{shown(name)}” is not an option of {command.name}: {wish}It takes {', '.join(known)}."


def _missing(error: ValidationError, command: Command, given: Mapping[str, str]) -> str:
    missing = [str(e["loc"][0]) for e in error.errors() if e["type"] == "missing"]
    options = {option.name: option for option in command.query.options()}
    wanted = "; ".join(f"{name} ({options[name].description})" for name in missing)
    _, example = split_line(command.examples[0], options, command.positional)
    filled = example | {name: options[name].example for name in missing} | dict(given)
    read = ", ".join(f"{name}:{shown(text)}" for name, text in given.items()) or "no option"
    return f"I read {read}, but I still need {wanted}. For example: {_asked(command, filled)}"
