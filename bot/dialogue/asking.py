"""What a conversation asks next where a question lacks something: one thing at a time."""

from pydantic import ValidationError

from bot.answering import answer_of, in_words
from bot.command import Command
from bot.commands import command_named, question_at
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.words import join_line
from bot.layered import Brief, Layered
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.question_context import context_of, reading_of
from bot.questions.animals import AnimalNotNamedError, animals_meant
from bot.refusal import RefusedError
from bot.reply import Reply
from calc.naming import Several, named
from calc.validity import OutsideModelError

__all__ = ["asked_next", "question_kept"]

_OF_ONE = {
    ("distance", "basking"): Say("talk-distance-lamp"),
    ("distance", "watts"): Say("talk-distance-lamp"),
    ("room", "night"): Say("talk-room-night"),
    ("screen", "tube"): Say("talk-screen-tube"),
}
_ASKED = frozenset(
    (
        *("animal", "tube", "reflector", "screen", "distance", "enclosure", "material", "lid"),
        *("room", "surface", "air", "reading", "readings", "uvi", "value"),
    )
)


def question_kept(asked: Question | str | None) -> Question | None:
    """Return a question that a word can change, of itself or of a line; None: none such."""
    found = question_at(asked) if isinstance(asked, str) else asked
    command = command_named(found.command) if found else None
    if command is None or command.route is not None or command.stored is not None:
        return None
    return found


def asked_next(reply: Reply, preferences: Preferences) -> Reply:
    """Return the reply that asks for the first thing that a question lacks, and nothing else.

    Where something else is wrong, or a choice is offered, the reply stays as it is.
    """
    asked = question_kept(reply.meant)
    first = bool(reply.alarms or reply.dangers)
    if reply.status != "problem" or first or reply.offers or asked is None:
        return reply
    command, given = command_named(asked.command), asked.given
    assert command is not None
    if len(several := _several(given.get("animal", ""), preferences)) > 1:
        lines = (join_line(command.name, {**given, "animal": name}) for name in several)
        meant = animals_meant(several, several, preferences.own.names)
        return _told(reply, Say("talk-which", meant), tuple(lines), command, given, preferences)
    option = _lacking(command, given, preferences)
    if option not in _ASKED:
        return reply
    told = _OF_ONE.get((option, command.name)) or Say.of("talk", option)
    return _told(reply, told, (), command, given, preferences)


def _told(
    reply: Reply,
    told: Say,
    offers: tuple[str, ...],
    command: Command,
    given: dict[str, str],
    preferences: Preferences,
) -> Reply:
    layered = Layered(
        command=reply.command,
        status="problem",
        title=Say("talk-title"),
        brief=Brief(told),
        offers=offers,
    )
    speaking = context_of(command.query.model_construct(), given, preferences)
    return in_words(layered, speaking).model_copy(update={"meant": reply.meant, "units": ""})


def _several(animal: str, preferences: Preferences) -> tuple[str, ...]:
    """Return the animals with figures that a name may mean; none where it names one."""
    what = named(animal, preferences.own.names).what if animal else None
    if not isinstance(what, Several):
        return ()
    return tuple(one.name for one in what.candidates if one.slug)


def _lacking(command: Command, given: dict[str, str], preferences: Preferences) -> str:
    """Return the first option that a question lacks where nothing is wrong; else nothing."""
    query = command.query
    missing = query.lacking(given, preferences.own)
    whole = given | {name: query.examples()[name] for name in missing}
    try:
        read = query.model_validate(whole, context=reading_of(preferences))
        if missing:
            return missing[0]
        answer_of(command, read, context_of(read, given, preferences))
    except AnimalNotNamedError:
        return "animal"
    except (ValidationError, NotUnderstoodError, RefusedError, OutsideModelError):
        return ""
    return ""
