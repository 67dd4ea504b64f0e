"""The values of an option in words: those to choose from, and those that were told."""

from collections.abc import Iterator
from dataclasses import dataclass

from pydantic import ValidationError

from bot.command import Command
from bot.completion import values_of
from bot.facts import Say
from bot.language.choices import choice_said
from bot.language.errors import NotUnderstoodError
from bot.language.screens import NoScreen
from bot.language.shown import shown
from bot.language.unsure import NOT_SURE
from bot.preferences import Preferences
from bot.queries.query import QueryOption
from bot.question_context import read_alone, reading_of
from bot.questions.setup.read import value_said
from bot.routes.examples import examples_for, typed_in
from bot.saying.voice import Voice
from bot.unread import first_error, misread

__all__ = ["Values"]

_SCREEN, _SOME_MESH = "screen", "mesh"
# So many of a long list are offered; any other value is typed.
_MOST = 7


@dataclass(frozen=True, slots=True)
class Values:
    """Who is spoken to, and how what is typed is read."""

    voice: Voice
    preferences: Preferences

    def listed(self, command: Command, option: QueryOption) -> Iterator[tuple[str, str]]:
        """Give the values to choose from with their words.

        Who has a mesh and knows no more of it chooses just that; not to know has a way of its own.
        """
        mesh = (_SOME_MESH,) if option.name == _SCREEN else ()
        values = values_of(command.name, option.name)
        first = values if option.choices else (*values[:1], *mesh, *values[1:_MOST])
        for value in first:
            if value != NOT_SURE and (told := self.worded(command, option, value)):
                yield value, told

    def worded(self, command: Command, option: QueryOption, value: str) -> str:
        """Return a value in words, or as it was typed; nothing where it can not be read."""
        read = read_alone(command.query, option.name, value, self.preferences)
        if read is None:
            return ""
        if value in (*option.choices, NOT_SURE, _SOME_MESH):
            said = choice_said(value)
            return said if isinstance(said, str) else self.voice.text(said)
        told = Say("form-nothing") if isinstance(read, NoScreen) else value_said(read)
        return shown(value) if told is None else self.voice.text(told)

    def example(self, command: Command, option: QueryOption, animal: str) -> str:
        """Return what somebody with such an animal may type for an option."""
        suiting = examples_for(command.name, animal)
        return typed_in(suiting.get(option.name) or option.example, self.voice.units)

    def unread(self, command: Command, option: QueryOption, value: str, example: str) -> str:
        """Return what was read for an option, and what would do in its place."""
        try:
            reading = reading_of(self.preferences)
            command.query.model_validate({option.name: value}, context=reading)
        except ValidationError as error:
            found = first_error(error)
            if found is not None:
                found = NotUnderstoodError(found.read, found.accepted, example)
                return self.voice.text(misread(found))
        return ""
