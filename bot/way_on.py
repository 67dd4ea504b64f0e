"""The example beside a refusal: asked here before it is offered, so that one step leads on."""

from collections.abc import Mapping
from dataclasses import dataclass, replace
from typing import Self

from pydantic import ValidationError

from bot.answering import answer_of
from bot.command import Command
from bot.commands import command_at
from bot.language.errors import NotUnderstoodError
from bot.language.words import join_line
from bot.layered import Layered
from bot.preferences import Preferences
from bot.question_context import context_of, reading_of
from bot.questions.animals import AnimalNotNamedError
from bot.refusal import RefusedError
from bot.unread import first_error, missing_example, unnamed_example
from calc.validity import OutsideModelError

__all__ = ["leading_on", "told_no", "with_way_on"]

_MOST_STEPS = 8


def with_way_on(
    error: NotUnderstoodError, command: Command, given: Mapping[str, str], preferences: Preferences
) -> NotUnderstoodError:
    """Return a refusal of a question with an example that leads to an answer in one step."""
    example = leading_on(error.example, command, given, preferences, error.option)
    error.example = example
    return error


def told_no(
    error: RefusedError, command: Command, given: Mapping[str, str], preferences: Preferences
) -> Layered:
    """Return the answer that says no, with an example that leads to an answer in one step."""
    example = leading_on(error.example, command, given, preferences, error.option)
    # The question's own example is for no animal, and may be past a limit of the one meant here.
    safe = error.example if example == command.examples[0] else example
    return replace(error.told(safe), alarms=error.alarms)


def leading_on(
    example: str,
    command: Command,
    given: Mapping[str, str],
    preferences: Preferences,
    option: str = "",
) -> str:
    """Return an example for a question that was refused, mended until it leads to an answer.

    ``option`` is whose text it is for; else it is a whole question, or options in its place.
    """
    asked = _Asked(command, dict(given))
    for text in dict.fromkeys((example, command.query.examples().get(option) or example)):
        at = asked.changed(text, option)
        if at is not None and at.stop(preferences) is None:
            return text
    at = asked.changed(example, option)
    for _ in range(_MOST_STEPS):
        stop = at.stop(preferences) if at else None
        if at is None:
            break
        if stop is None:
            return asked.told(at, option)
        at = at.changed(stop.example, stop.option)
    return command.examples[0]


@dataclass(frozen=True, slots=True)
class _Stop:
    """What a question is refused with: an example, and the option it is for."""

    example: str
    option: str = ""


@dataclass(frozen=True, slots=True)
class _Asked:
    """A question and the texts of its options."""

    command: Command
    given: dict[str, str]

    def changed(self, example: str, option: str) -> Self | None:
        """Return the question that an example makes of this one."""
        options = {o.name: o for o in self.command.query.options()}
        own = option in options and example in (options[option].example, *options[option].choices)
        whole = None if own else command_at(example)
        command, rest = whole or (self.command, example)
        try:
            named = command.query.texts_in(rest, command.positional if whole else "")
        except NotUnderstoodError:
            named = {}
        if whole:
            return type(self)(command, named) if named else None
        if own or not named:
            named = {option: example} if option in options else {}
        return type(self)(self.command, self.given | named) if named else None

    def told(self, at: Self, option: str) -> str:
        """Return the question that this one became, as an example beside the refusal of this."""
        is_another = at.command is not self.command or not set(self.given) <= set(at.given)
        if not option or is_another:
            return join_line(at.command.name, at.given)
        new = {name: text for name, text in at.given.items() if self.given.get(name) != text}
        return new[option] if set(new) == {option} else join_line("", new).strip()

    def stop(self, preferences: Preferences) -> _Stop | None:
        """Return what this question is refused with, or None where it is answered."""
        command, given, own = self.command, self.given, preferences.own
        lacking = _Stop(missing_example(command, given, preferences))
        try:
            query = command.query.model_validate(given, context=reading_of(preferences))
        except ValidationError as error:
            found = first_error(error)
            return _Stop(found.example, found.option) if found else lacking
        if command.query.lacking(given, own):
            return lacking
        if command.stored is not None or command.route is not None:
            return None
        try:
            answer_of(command, query, context_of(query, given, preferences))
        except AnimalNotNamedError:
            return _Stop(unnamed_example(command, given))
        except NotUnderstoodError as error:
            return _Stop(error.example, error.option)
        except OutsideModelError:
            return _Stop(command.examples[0])
        return None
