"""What is still missing of a question that was found in free words."""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass

from pydantic import ValidationError

from bot.answering import in_words
from bot.command import Command, Routed
from bot.commands import command_named
from bot.preferences import Context, Preferences
from bot.queries.query import Query
from bot.question_context import reading_of
from bot.reply import Reply

__all__ = ["FreeWords"]


@dataclass(frozen=True, slots=True)
class FreeWords:
    """The question in free words that another one was found in."""

    command: Command
    query: Query
    routed: Routed
    given: Mapping[str, str]

    def lacking(self, missing: Sequence[str], context: Context) -> Reply:
        """Return the reply that asks for what is missing in plain words."""
        assert self.command.lacks is not None
        return in_words(self.command.lacks(self.query, self.routed, missing, context), context)

    def missing(self, preferences: Preferences) -> tuple[str, ...]:
        """Return the options that the question found lacks, if nothing else is wrong with it."""
        command = command_named(self.routed.command)
        assert command is not None
        query = command.query
        missing = query.lacking(self.routed.given, preferences.own)
        whole = dict(self.routed.values) | {name: query.examples()[name] for name in missing}
        try:
            query.model_validate(whole, context=reading_of(preferences))
        except ValidationError:
            return ()
        return missing
