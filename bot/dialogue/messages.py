"""What somebody's message asks or tells, and what a further message of the same writer adds."""

from bot.command import Command
from bot.dangers import listen
from bot.dialogue.asking import Answer
from bot.dialogue.in_options import joined, set_up_in_options
from bot.dialogue.kept import START, Dialogue, told_before
from bot.dialogue.turns import next_line
from bot.layered import Layered
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.question_context import context_of

__all__ = ["message_added", "message_heard"]

_ASK = "ask"
_SET_UPS = ("check", "next")


def message_heard(
    command: Command, words: str, preferences: Preferences, answer: Answer
) -> tuple[Question, Dialogue | None]:
    """Return the question that a message asks, and what is kept of it for the next one.

    A set-up is told by its options, unless a danger stands in the words alone.
    """
    whole = Question(command.name, {command.positional: words})
    if command.name not in (_ASK, *_SET_UPS):
        return whole, None
    reply = answer(whole, preferences)
    meant = reply.meant
    if meant is None:
        return whole, None
    options = _in_options(words, preferences)
    if meant.command not in _SET_UPS:
        if meant.command != _ASK:
            return whole, told_before(meant, START)
        return whole, told_before(options, START) if options else None
    if options is None:
        return whole, None
    kept = told_before(options, START)
    same = set(reply.dangers) <= set(answer(options, preferences).dangers)
    if listen(words) or not same or meant.command != options.command:
        return whole, kept
    return Question(options.command, options.values), kept


def message_added(
    before: Dialogue, words: str, preferences: Preferences
) -> tuple[Question, Dialogue] | None:
    """Return the question before with what a further message tells; None: it tells nothing."""
    options = _in_options(words, preferences)
    set_up = _set_up_of(before)
    both = joined(set_up, options) if options and set_up else None
    if listen(words):
        # What cannot wait is heard in the words, and told first.
        return Question(_ASK, {"question": words}), told_before(both, before)
    if set_up:
        return (Question(both.command, both.values), told_before(both, before)) if both else None
    _, meant, dialogue = next_line(before, words, preferences)
    if isinstance(meant, Layered):
        return None
    if isinstance(meant, str):
        return Question(_ASK, {"question": words}), dialogue
    return Question(meant.command, meant.values), told_before(meant, dialogue)


def _set_up_of(before: Dialogue) -> Question | None:
    asked = before.asked
    return asked if asked is not None and asked.command in _SET_UPS else None


def _in_options(words: str, preferences: Preferences) -> Question | None:
    context = context_of(AskQuery(question=words), {"question": words}, preferences)
    return set_up_in_options(words, context)
