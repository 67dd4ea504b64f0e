"""What is told of a question that could not be read: what is wrong or missing, and what works."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from pydantic import ValidationError

from bot.command import Command
from bot.dangers.first import Quoted
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.shown import shown
from bot.language.words import join_line
from bot.outside import OutOfRange
from bot.preferences import Preferences
from bot.questions.animals import ANY_ANIMAL, AnimalNotNamedError
from bot.questions.lacking import Behind, lacked
from bot.questions.past_limit import PastLimitError
from bot.saved.group import Own

__all__ = [
    "OfQuestion",
    "first_error",
    "in_short",
    "lacks_told",
    "misread",
    "missing_example",
    "missing_told",
    "not_heard",
    "unknown_option",
    "unnamed_example",
    "unnamed_told",
]


_LONGEST_EXAMPLE = 130


@dataclass(frozen=True, slots=True)
class Misread:
    """A text that could not be read as what was wanted."""

    what: Say
    option: str | None
    accepted: Say
    example: str


@dataclass(frozen=True, slots=True)
class NotHeard:
    """Free words that no question was found in, and one that is understood."""

    example: str


@dataclass(frozen=True, slots=True)
class Lack:
    """An option that a question still needs, by its name and as what it is."""

    name: str
    what: Say


@dataclass(frozen=True, slots=True)
class Missing:
    """What a question still needs: by name, and of one alone what that is."""

    names: tuple[str, ...]
    wanted: tuple[Say, ...]
    example: str

    @property
    def several(self) -> bool:
        """Say whether more than one thing is missing."""
        return len(self.names) > 1


@dataclass(frozen=True, slots=True)
class NoOption:
    """An option that a question does not have."""

    what: Say
    name: str
    near: str | None
    known: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class OfQuestion:
    """Where to read on: a question by its name."""

    name: str


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
    """Return what was read, what was wanted, and an example, behind what must be known first."""
    facts = Misread(_read(error.read), error.option or None, error.accepted, error.example)
    refusal = Say("refused-misread", facts)
    for before in reversed(error.before if isinstance(error, PastLimitError) else ()):
        refusal = Say("refused-behind", Behind(before, refusal))
    return refusal


def in_short(sentence: Say) -> Say:
    """Return why there is no answer in the few words that a phone has room for behind a danger."""
    while isinstance(sentence.facts, Behind):
        sentence = sentence.facts.refusal
    match sentence.facts:
        case Misread() as facts:
            return Say("refused-misread-short", facts)
        case NoOption() as facts:
            return Say("refused-option-short", facts)
        case OutOfRange() as facts:
            return Say("refused-outside-short", facts)
    return Say("refused-short")


def not_heard(command: Command) -> Say:
    """Return that a question in free words was not understood, with one that is."""
    return Say("refused-not-heard", NotHeard(command.examples[0]))


def _read(read: str | Say) -> Say:
    if isinstance(read, Say):
        return read
    return Say("door-quoted", Quoted(read)) if read else Say("refused-nothing")


def unknown_option(error: ValidationError, command: Command) -> Say | None:
    """Return what is told of an option that a question does not have; None where it has all."""
    known = tuple(command.query.examples())
    names = (str(one["loc"][0]) for one in error.errors() if one["type"] == "extra_forbidden")
    name = next(names, "")
    if not name:
        return None
    what = Say("door-quoted", Quoted(shown(name)))
    return Say("refused-option", NoOption(what, command.name, closest(name, known) or None, known))


def _plain(given: Mapping[str, str]) -> dict[str, str]:
    """Return what may be shown word for word; the example is to be copied, so the rest is not."""
    return {name: text for name, text in given.items() if shown(text) == text}


def missing_example(command: Command, given: Mapping[str, str], preferences: Preferences) -> str:
    """Return the question with what it still needs, for the animal that was named."""
    from bot.routes.examples import examples_for, typed_in

    own = preferences.own
    missing = command.query.lacking(given, own)
    options = command.query.examples()
    shown_rest = command.examples[0].removeprefix(command.name)
    example = command.query.texts_in(shown_rest, command.positional)
    filled = example | {name: options[name] for name in missing}
    fitting = examples_for(command.name, given.get("animal", "") or preferences.default_animal, own)
    filled |= {name: text for name, text in fitting.items() if name in filled}
    filled = {name: typed_in(text, preferences.shown) for name, text in filled.items()}
    filled |= _plain(given)
    return join_line(command.name, {name: filled[name] for name in options if name in filled})


def missing_told(command: Command, given: Mapping[str, str], own: Own, example: str) -> Say:
    """Return what the question still needs, with an example."""
    missing = command.query.lacking(given, own)
    if len(example) > _LONGEST_EXAMPLE:
        # A phone has no room for all that was told: what is missing, or is changed, is added to it.
        told = command.query.texts_in(example.removeprefix(command.name), command.positional)
        new = {n: text for n, text in told.items() if n in missing or text != given.get(n, text)}
        example = join_line("", new).strip()
    return _still_needed(missing, command, example)


def unnamed_example(command: Command, given: Mapping[str, str]) -> str:
    """Return the question with an animal."""
    return command.asking(_plain(given) | {"animal": ANY_ANIMAL}).line()


def unnamed_told(
    error: AnimalNotNamedError, command: Command, given: Mapping[str, str], example: str
) -> Say:
    """Return that the animal is needed, with an example."""
    return _still_needed((error.option,), command, example if given else command.examples[0])


def lacks_told(command: Command, names: Sequence[str]) -> tuple[Say, ...]:
    """Return what each option is that a question lacks, where their names alone were told."""
    told = (Say("refused-lack", Lack(name, lacked(name, command.name))) for name in names)
    return tuple(told) if len(names) > 1 else ()


def _still_needed(names: Sequence[str], command: Command, example: str) -> Say:
    wanted = tuple(lacked(name, command.name) for name in names)
    return Say("refused-missing", Missing(tuple(names), wanted, example))
