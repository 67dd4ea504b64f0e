"""A question that was read becomes a reply: its facts, what is told of them, and then the words."""

import logging

from bot.command import Command
from bot.language.states import states_told
from bot.layered import Layered
from bot.preferences import FIRST, Context
from bot.queries.query import Query
from bot.refusal import WithoutFiguresError
from bot.reply import Reply
from bot.saying.compile import WordsError
from bot.saying.said import said
from bot.saying.voice import voice
from bot.saying.words import words

__all__ = ["answer_of", "in_words"]

_log = logging.getLogger(__name__)


def answer_of(command: Command, query: Query, context: Context) -> Reply:
    """Return the answer to a question, or that its animal has no figures here."""
    try:
        assert command.facts is not None
        assert command.tell is not None
        layered = command.tell(command.facts(query, context))
        if context.states or states_told(getattr(query, "animal", "")):
            from bot.questions.states import with_states

            layered = with_states(layered, query, context)
        return in_words(layered, context)
    except WithoutFiguresError as error:
        from bot.questions.unfigured import unfigured

        return in_words(unfigured(command.name, error.name), context)


def in_words(layered: Layered, context: Context) -> Reply:
    """Return an answer in the asker's language; whole in English where that has no words for it."""
    language = context.language
    # A refusal has a file of its own, whichever question it refuses.
    if language != FIRST and layered.title.id in words(language):
        try:
            return said(layered, voice(language, context.units), context.guide_url)
        except WordsError:
            _log.exception("words of %s are missing in %s", layered.command, language)
    return said(layered, voice(FIRST, context.units), context.guide_url)
