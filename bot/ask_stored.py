"""The door with saved data: like ``bot.ask``, and questions about what is kept are answered too.

The asker's and the group's settings are consulted first. Where the store cannot be reached, every
other question is answered all the same, as it would be without one.
"""

from collections.abc import Callable, Mapping
from dataclasses import replace
from functools import cache

from bot.ask import Understood, answered, take_apart, understand_options
from bot.asker import preferred
from bot.commands import COMMANDS
from bot.dangers import listen
from bot.database.errors import StoreError
from bot.desk import Desk
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.preferences import Preferences
from bot.problems import problem, store_told
from bot.refusal import RefusedError
from bot.reply import Reply
from bot.said_first import said_first
from bot.unread import misread
from calc.validity import OutsideModelError

__all__ = ["ask_stored", "ask_stored_options"]


async def ask_stored(
    line: str,
    preferences: Preferences,
    desk: Desk,
    files: Callable[[str], str] | None = None,
) -> Reply:
    """Answer one line at a desk; ``files`` gives the text of a file that the line names."""
    known = await _known(preferences, desk)
    apart = take_apart(line, known)
    if isinstance(apart, Reply):
        return apart
    command, given = apart
    try:
        for option in command.query.options():
            if option.document and files is not None and option.name in given:
                given[option.name] = files(given[option.name])
    except NotUnderstoodError as error:
        return said_first(problem(command.name, misread(error), known), listen(line), known)
    return await _answered(understand_options(command.name, given, known), desk)


async def ask_stored_options(
    name: str, given: Mapping[str, str], preferences: Preferences, desk: Desk
) -> Reply:
    """Answer a command at a desk whose options come already apart."""
    return await _answered(understand_options(name, given, await _known(preferences, desk)), desk)


async def _known(preferences: Preferences, desk: Desk) -> Preferences:
    try:
        return await preferred(preferences, desk)
    except StoreError:
        return preferences


async def _answered(understood: Understood | Reply, desk: Desk) -> Reply:
    if isinstance(understood, Reply) or understood.command.stored is None:
        return answered(understood)
    return understood.told_first(await _stored(understood, desk))


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
        return understood.refused(misread(error))
    except StoreError as error:
        return understood.refused(store_told(error))
    except OutsideModelError as error:
        return understood.outside(error)
    return understood.finished(reply)


@cache
def _pages_of() -> dict[str, tuple[str, ...]]:
    """Return the guide pages that the answers of each question point to."""
    return {command.name: command.guide for command in COMMANDS}
