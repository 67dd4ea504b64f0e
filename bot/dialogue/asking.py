"""What a conversation asks next where a question lacks something: one thing at a time, and once."""

from collections.abc import Callable
from dataclasses import dataclass

from pydantic import ValidationError

from bot.answering import answer_of, in_words
from bot.brief import brief_of, fitted, in_order
from bot.command import Command
from bot.commands import command_named, question_at
from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.units import Units
from bot.layered import Brief, Layered
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.question_context import context_of, reading_of
from bot.questions.animals import AnimalNotNamedError, among_of, animals_meant
from bot.refusal import RefusedError
from bot.reply import Line, Reply, Role
from bot.saying.voice import voice
from calc.naming import Known, Several, named
from calc.validity import OutsideModelError

__all__ = ["Answer", "asked_for", "asked_next", "question_kept", "said_beside"]

Answer = Callable[[Question | str, Preferences], Reply]
"""What answers a question, or a line."""

_OF_ONE = {
    ("distance", "basking"): Say("talk-distance-lamp"),
    ("distance", "watts"): Say("talk-distance-lamp"),
    ("room", "night"): Say("talk-room-night"),
    ("night", "plan"): Say("talk-room-night"),
    ("night", "arrange"): Say("talk-room-night"),
    ("screen", "tube"): Say("talk-screen-tube"),
}
_ASKED = frozenset(
    (
        *("animal", "tube", "reflector", "screen", "distance", "enclosure", "material", "lid"),
        *("room", "surface", "air", "reading", "readings", "uvi", "value"),
    )
)
# What an animal needs of what a question is about, told where the question cannot be answered.
_ABOUT = {
    "uvi": ("distance", "uvi", "tube", "meter", "section", "dose"),
    "basking": ("watts", "basking", "surface"),
    "night": ("night",),
}

_FEW = 3
# What gives way in a brief to what is said beside it.
_GIVES_WAY = ((Role.STEP, 1), (Role.RANGE, 1), (Role.STEP, 0), (Role.RANGE, 0))


@dataclass(frozen=True, slots=True)
class _Wish:
    """What is asked for: the option, the sentence, and the whole questions to choose from."""

    option: str
    say: Say
    offers: tuple[Question, ...] = ()


def question_kept(asked: Question | str | None) -> Question | None:
    """Return a question that a word can change, of itself or of a line; None: none such."""
    found = question_at(asked) if isinstance(asked, str) else asked
    command = command_named(found.command) if found else None
    if command is None or command.route is not None or command.stored is not None:
        return None
    return found


def asked_next(
    reply: Reply, preferences: Preferences, wanted: tuple[str, ...], answer: Answer
) -> Reply:
    """Return the reply that asks for the first thing that a question lacks, and nothing else.

    Where something else is wrong, or a choice is offered, the reply stays as it is. What is
    ``wanted`` was asked for before: then what holds without it is told, and what is still open.
    """
    asked = question_kept(reply.meant)
    first = bool(reply.alarms or reply.dangers)
    if reply.status != "problem" or first or reply.offers or asked is None:
        return reply
    command, given = command_named(asked.command), asked.given
    assert command is not None
    if several := _several(given.get("animal", ""), preferences):
        if "animal" in wanted and len(several) == 1:
            return _if_it_is(several[0], asked, preferences, wanted, answer)
        if "animal" in wanted and (found := _for_any(asked, several, preferences, answer)):
            return found
        offers = (Question(command.name, {**given, "animal": name}) for name in several)
        meant = animals_meant(several, several, preferences.own.names)
        which = Say("talk-which" if len(several) > 1 else "talk-which-only", meant)
        return _told(reply, _Wish("animal", which, tuple(offers)), command, given, preferences)
    lacking = _lacking(command, given, preferences)
    if not _ASKED.intersection(lacking[:1]):
        return reply
    option = next((name for name in lacking if name in _ASKED and name not in wanted), "")
    if not option:
        option = lacking[0]
        if found := _without(option, asked, preferences, answer):
            return found
    say = asked_for(option, command.name)
    return _told(reply, _Wish(option, say), command, given, preferences)


def asked_for(option: str, question: str) -> Say:
    """Return how an option of a question is asked for, where it is ever asked for."""
    return _OF_ONE.get((option, question)) or Say.of("talk", option)


def _for_any(
    asked: Question, several: tuple[str, ...], preferences: Preferences, answer: Answer
) -> Reply | None:
    """Return the answer that holds for any animal, where a question has one; None: it has none."""
    rest = {name: value for name, value in asked.values.items() if name != "animal"}
    each = [
        answer(Question(asked.command, {**rest, "animal": name}), preferences)
        for name in (several if len(several) <= _FEW else ())
    ]
    if each and all(one.status != "problem" for one in each):
        # The one that is worst off speaks for all.
        found = max(each, key=lambda one: bool(one.dangers or one.alarms))
    else:
        found = answer(Question(asked.command, rest), preferences)
    if found.status == "problem":
        return None
    which = Say("talk-which", animals_meant(several, several, preferences.own.names))
    return said_beside(found, (which,), preferences).model_copy(update={"meant": asked})


def _if_it_is(
    name: str, asked: Question, preferences: Preferences, wanted: tuple[str, ...], answer: Answer
) -> Reply:
    """Return the answer for the only animal of a name that has figures, and that it is for it."""
    found = answer(Question(asked.command, {**asked.values, "animal": name}), preferences)
    if found.status == "problem":
        found = asked_next(found, preferences, wanted, answer)
    only = animals_meant((name,), (name,), preferences.own.names)
    told = said_beside(found, (Say("talk-if-it-is", only),), preferences)
    return told.model_copy(update={"meant": asked})


def _without(
    option: str, asked: Question, preferences: Preferences, answer: Answer
) -> Reply | None:
    """Return what its animal needs, where a question stays open for want of an option."""
    if option == "animal" or not asked.given.get("animal"):
        return None
    about = next((of for of, names in _ABOUT.items() if asked.command in names), "")
    needs = {"animal": asked.values["animal"], **({"about": about} if about else {})}
    found = answer(Question("needs", needs), preferences)
    if found.status == "problem":
        return None
    told = said_beside(found, (Say.of("talk-open", option),), preferences)
    return told.model_copy(update={"meant": asked, "lacking": (option,)})


def said_beside(reply: Reply, told: tuple[Say, ...], preferences: Preferences) -> Reply:
    """Return an answer that says something of the line, or of itself, beside what it says."""
    if not told:
        return reply
    units = _units_of(reply, preferences)
    speak = voice(reply.language, units).text
    lines = (Line(role=Role.ASSUMED, text=speak(say)) for say in told)
    whole = in_order((*lines, *brief_of(reply)))
    return reply.model_copy(update={"brief": fitted(whole, _GIVES_WAY)})


def _units_of(reply: Reply, preferences: Preferences) -> Units:
    """Return the system whose unit stands first."""
    return Units(reply.units) if reply.units else preferences.shown


def _told(
    reply: Reply,
    wish: _Wish,
    command: Command,
    given: dict[str, str],
    preferences: Preferences,
) -> Reply:
    layered = Layered(
        command=reply.command,
        status="problem",
        title=Say("talk-title"),
        brief=Brief(wish.say),
        offers=wish.offers,
        lacking=(wish.option,),
    )
    speaking = context_of(command.query.model_construct(), given, preferences)
    return in_words(layered, speaking).model_copy(update={"meant": reply.meant, "units": ""})


def _several(animal: str, preferences: Preferences) -> tuple[str, ...]:
    """Return the animals with figures that a name may mean; none where it names one."""
    what = named(animal, preferences.own.names).what if animal else None
    if not isinstance(what, Several):
        return ()
    among = among_of(what)
    return tuple(name for name in among if isinstance(named(name).what, Known))


def _lacking(command: Command, given: dict[str, str], preferences: Preferences) -> tuple[str, ...]:
    """Return the options that a question lacks where nothing is wrong; else nothing."""
    query = command.query
    missing = query.lacking(given, preferences.own)
    whole = given | {name: query.examples()[name] for name in missing}
    try:
        read = query.model_validate(whole, context=reading_of(preferences))
        if missing:
            return tuple(missing)
        answer_of(command, read, context_of(read, given, preferences))
    except AnimalNotNamedError:
        return ("animal",)
    except (ValidationError, NotUnderstoodError, RefusedError, OutsideModelError):
        return ()
    return ()
