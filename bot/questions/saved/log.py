"""The newest lines of a group's log. Words: ``words/<language>/log.ftl``."""

import json
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date, time
from enum import Enum

from bot.command import Command
from bot.desk import Desk
from bot.facts import Name, Say, Says
from bot.layered import Brief, Layered, Table
from bot.preferences import Context
from bot.queries.server import ShowQuery
from bot.questions.owned import animal_told, lamp_told, screen_told, target_told
from bot.questions.saved.lines import Lines, doer_said, people_in
from bot.questions.saved.unable import server_of
from bot.questions.shared import name_of
from bot.saved.boards import Topic
from bot.saved.group import OwnAnimal, OwnLamp, OwnScreen, OwnTarget, Shown
from bot.saved.logged import Change, animals_of_board
from bot.saved.public import EVERYWHERE, PublicRule, Who

__all__ = ["SERVER_CHANGES", "board_logged", "changes", "tell_changes"]

_MOST_LINES = 20
# The log keeps no such day, and none is told of it.
_ANY_DAY = date(2000, 1, 1)
_SHOWN = Say("log-shown")


class Logged(Enum):
    """What a line is about, as the log names it."""

    SETTING = "setting"
    CHANNEL = "channel"
    LAMP = "lamp"
    SCREEN = "screen"
    TARGET = "target"
    ANIMAL = "animal"
    BOARD = "board"
    PUBLIC = "public"


class Setting(Enum):
    """A setting, as the log names it."""

    UNITS = "units"
    ANIMAL = "animal"
    SITE = "guide_url"
    ZONE = "zone"
    LANGUAGE = "language"
    VETS = "vets"
    HELPERS = "helpers"
    HELPER_ROLE = "helper_role"


@dataclass(frozen=True, slots=True)
class LogNamed:
    """Something with a name that was changed."""

    kind: Logged
    name: str


@dataclass(frozen=True, slots=True)
class LogSetting:
    """A setting that was changed."""

    setting: Setting


@dataclass(frozen=True, slots=True)
class LogBoard:
    """A board that was changed, and the number of its channel."""

    topic: Topic
    channel: str


@dataclass(frozen=True, slots=True)
class LogPublic:
    """Public posts of a channel, by its number; None: of all that have no rule of their own."""

    channel: str | None


@dataclass(frozen=True, slots=True)
class LogRule:
    """Who may post publicly and how often an hour; None: not said."""

    poster: Who | None
    most: int | None


@dataclass(frozen=True, slots=True)
class LogAnimal:
    """An animal as a value, or one whose target was changed."""

    animal: Name


@dataclass(frozen=True, slots=True)
class LogAnimals:
    """The animals of a board."""

    animals: tuple[Name, ...]


@dataclass(frozen=True, slots=True)
class LogText:
    """A value as it was typed."""

    text: str


@dataclass(frozen=True, slots=True)
class LogLine:
    """Who changed what, from what to what, and when."""

    day: date
    clock: time
    what: Say
    before: Say
    after: Say
    who: Say


@dataclass(frozen=True, slots=True)
class GroupLog(Lines):
    """The newest lines."""

    lines: tuple[LogLine, ...]
    people: frozenset[int] = frozenset()
    channels: frozenset[int] = frozenset()


async def changes(query: ShowQuery, context: Context, desk: Desk) -> GroupLog:
    """Return the newest lines of the log; the query has no options."""
    lines = await desk.store.changes.newest(server_of(desk, "server changes"), _MOST_LINES)
    channels = frozenset(number for line in lines for number in _channels(line))
    return GroupLog(tuple(map(_line, lines)), people_in(line.who for line in lines), channels)


def _channels(line: Change) -> Iterator[int]:
    """Yield the channels that a line tells of."""
    kind = Logged(line.what)
    if kind is Logged.BOARD:
        yield int(line.name.rpartition(" ")[2])
    elif kind in (Logged.CHANNEL, Logged.PUBLIC) and int(line.name) != EVERYWHERE:
        yield int(line.name)
    elif kind is Logged.SETTING and Setting(line.name) is Setting.HELPERS:
        yield from (int(text) for text in (line.before, line.after) if text)


def _line(line: Change) -> LogLine:
    return LogLine(
        day=line.at.date(),
        clock=line.at.time(),
        what=_what(line),
        before=_value(line, line.before),
        after=_value(line, line.after),
        who=doer_said(line.who),
    )


def _what(line: Change) -> Say:
    kind = Logged(line.what)
    first, _, rest = line.name.partition(" ")
    if kind is Logged.SETTING:
        return Say("log-setting", LogSetting(Setting(line.name)))
    if kind is Logged.TARGET:
        return Say("log-target", LogAnimal(name_of(first)))
    if kind is Logged.BOARD:
        return Say("log-board", LogBoard(Topic(first), rest.rpartition(" ")[2]))
    if kind is Logged.PUBLIC:
        return Say("log-posts", LogPublic(None if int(first) == EVERYWHERE else first))
    return Say("log-named", LogNamed(kind, line.name))


def _value(line: Change, text: str) -> Say:
    """Return a logged value; the log holds figures as JSON."""
    if not text:
        return Say("log-nothing")
    match Logged(line.what):
        case Logged.SETTING if Setting(line.name) is Setting.ANIMAL:
            return Say("log-animal", LogAnimal(name_of(text)))
        case Logged.SETTING:
            return Say("log-text", LogText(text))
        case Logged.CHANNEL:
            return Say("log-public") if Shown(text) is Shown.PUBLIC else Say("log-private")
        case Logged.PUBLIC:
            rule = PublicRule.model_validate_json(text)
            return Say("log-rule", LogRule(rule.who, rule.most))
        case Logged.BOARD:
            return board_logged(text)
        case _:
            return _figure(line, json.loads(text) | {"set_on": _ANY_DAY})


def board_logged(text: str) -> Say:
    """Return what the log tells of a board: nothing, that it is there, or its animals."""
    if not text:
        return Say("log-nothing")
    animals = animals_of_board(text)
    return Say("log-animals", LogAnimals(tuple(map(name_of, animals)))) if animals else _SHOWN


def _figure(line: Change, kept: dict[str, object]) -> Say:
    named = {**kept, "name": line.name}
    match Logged(line.what):
        case Logged.LAMP:
            return lamp_told(OwnLamp.model_validate(named), dated=False).law
        case Logged.SCREEN:
            return Say("owned-screen", screen_told(OwnScreen.model_validate(named), dated=False))
        case Logged.ANIMAL:
            return animal_told(OwnAnimal.model_validate(named), dated=False)
        case _:
            animal, _, subject = line.name.partition(" ")
            target = OwnTarget.model_validate({**kept, "animal": animal, "subject": subject})
            return target_told(target, dated=False)


def tell_changes(facts: GroupLog) -> Layered:
    """Tell who changed what."""
    say = Says("log", facts)
    return Layered(
        command="server changes",
        title=say("title"),
        brief=Brief(head=say("head")),
        people=facts.people,
        channels=facts.channels,
        table=Table(
            columns=(
                say("column-when"),
                say("column-what"),
                say("column-before"),
                say("column-after"),
                say("column-who"),
            ),
            rows=tuple(
                (Say("log-when", line), line.what, line.before, line.after, line.who)
                for line in facts.lines
            ),
        )
        if facts.lines
        else None,
    )


SERVER_CHANGES = Command(
    name="server changes",
    query=ShowQuery,
    stored=changes,
    tell=tell_changes,
    examples=("server changes",),
    who="moderator",
)
