"""The door: what is asked becomes a Reply, with or without saved data.

What is our own fault (a bug) is raised: the front logs it with an id and says so. What was heard
that cannot wait is said first, whatever the question, and where nothing else was understood it is
the answer.
"""

from collections.abc import Callable, Coroutine
from dataclasses import replace
from functools import cache
from typing import Any, overload

from bot.answering import answer_of, in_words
from bot.commands import COMMANDS
from bot.database.errors import StoreError
from bot.desk import Desk
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.refusal import AnimalNotNamedError, RefusedError
from bot.reply import Reply
from bot.understood import Understood, understand
from calc.validity import OutsideModelError

__all__ = ["answered", "ask"]


@overload
def ask(asked: str | Question, preferences: Preferences) -> Reply: ...
@overload
def ask(
    asked: str | Question,
    preferences: Preferences,
    desk: Desk,
    files: Callable[[str], str] | None = None,
) -> Coroutine[Any, Any, Reply]: ...
def ask(
    asked: str | Question,
    preferences: Preferences,
    desk: Desk | None = None,
    files: Callable[[str], str] | None = None,
) -> Reply | Coroutine[Any, Any, Reply]:
    """Answer one line such as ``convert 14in``, or a question whose options come apart.

    At a ``desk`` questions about saved data are answered too, and the asker's and the group's
    settings are consulted first: that reply is awaited. ``files`` gives the text of a file that
    the line names.
    """
    if desk is None:
        return answered(understand(asked, preferences))
    return _asked_at(desk, asked, preferences, files)


async def _asked_at(
    desk: Desk,
    asked: str | Question,
    preferences: Preferences,
    files: Callable[[str], str] | None,
) -> Reply:
    """Answer at a desk; where its store cannot be reached, as it would be without one."""
    from bot.asker import preferred

    try:
        known = await preferred(preferences, desk)
    except StoreError:
        known = preferences
    understood = understand(asked, known, files)
    if isinstance(understood, Reply) or understood.command.stored is None:
        return answered(understood)
    return understood.told_first(await _stored(understood, desk))


def answered(understood: Understood | Reply) -> Reply:
    """Return the answer to a question that needs no saved data."""
    if isinstance(understood, Reply):
        return understood
    reply = understood.told_first(_answered(understood))
    if understood.free is None:
        return reply
    from bot.each_animal import for_each_animal

    return for_each_animal(understood, reply, _alone(understood.preferences))


def _alone(preferences: Preferences) -> Callable[[Question], Reply]:
    return lambda question: answered(understand(question, preferences))


def _answered(understood: Understood) -> Reply:
    if understood.command.stored is not None:
        return understood.refused(Say("refused-store-none"))
    asking = (understood.command, understood.given, understood.preferences)
    try:
        return understood.finished(answer_of(asking[0], understood.query, understood.context))
    except AnimalNotNamedError as error:
        return understood.without_animal(error).model_copy(update={"alarms": error.alarms})
    except RefusedError as error:
        from bot.way_on import told_no

        return understood.finished(in_words(told_no(error, *asking), understood.context))
    except NotUnderstoodError as error:
        from bot.questions.past_limit import alarms_of
        from bot.unread import misread
        from bot.way_on import with_way_on

        reply = understood.refused(misread(with_way_on(error, *asking)))
        # An animal that is not known is picked from the list, as one that was not told.
        lacking = (error.option,) if error.option == "animal" else ()
        return reply.model_copy(update={"alarms": alarms_of(error), "lacking": lacking})
    except OutsideModelError as error:
        return understood.outside(error)


async def _stored(understood: Understood, desk: Desk) -> Reply:
    command = understood.command
    assert command.stored is not None
    assert command.tell is not None
    if command.who == "moderator" and not desk.moderator:
        return understood.refused(Say("refused-moderator"))
    at = replace(desk, pages_of=_pages_of())
    try:
        facts = await command.stored(understood.query, understood.context, at)
        reply = understood.in_words(command.tell(facts))
    except RefusedError as error:
        return understood.told_no(error)
    except NotUnderstoodError as error:
        from bot.unread import misread

        return understood.refused(misread(error))
    except StoreError as error:
        from bot.problems import store_told

        return understood.refused(store_told(error))
    except OutsideModelError as error:
        return understood.outside(error)
    return understood.finished(reply)


@cache
def _pages_of() -> dict[str, tuple[str, ...]]:
    """Return the guide pages that the answers of each question point to."""
    return {command.name: command.guide for command in COMMANDS}
