"""A question as a button carries it: short enough for a custom id, or read back from a message."""

import hashlib
from dataclasses import dataclass
from functools import lru_cache
from typing import Self

import discord
from pydantic import ValidationError

from bot.ask import ask
from bot.commands import command_named, question_at
from bot.fronts.discord.seen import seen
from bot.menu import bare
from bot.preferences import Preferences
from bot.queries.question import Question as Asked
from bot.render.escaping import units_long
from bot.reply import Reply

__all__ = ["IN_MESSAGE", "Question", "command_in"]

# Stands in a custom id for a question too long for it; the message then tells the question.
IN_MESSAGE = "?"
_MOST = 100
_BETWEEN = "|"


@dataclass(frozen=True, slots=True, eq=False)
class Question(Asked):
    """A question that a custom id can carry."""

    def answered(self, preferences: Preferences) -> Reply:
        """Return the answer."""
        return ask(self, preferences)

    def custom_id(self, prefix: str) -> str:
        """Return ``prefix`` and the question, or ``prefix`` and a hint to look in the message.

        The values stand in the order of the options. The order's fingerprint goes with them, so
        that a button of an older version is never read as another question.
        """
        names = _option_names(self.command)
        given = self.given
        values = [_quoted(given.get(name, "")) for name in names]
        while values and not values[-1]:
            values.pop()
        packed = _BETWEEN.join((f"{self.command}.{_fingerprint(names)}", *values))
        whole = prefix + packed
        return whole if units_long(whole) <= _MOST else prefix + IN_MESSAGE

    @property
    def unread(self) -> frozenset[str]:
        """Return the options that hold something unreadable, else those that are missing."""
        command = command_named(self.command)
        if command is None:
            return frozenset()
        try:
            command.query.model_validate(dict(self.given))
        except ValidationError as error:
            return frozenset(str(part) for found in error.errors() for part in found["loc"])
        return frozenset(command.query.lacking(self.given))

    @classmethod
    def unpacked(cls, packed: str, message: discord.Message | None) -> Self | None:
        """Return the question of a custom id, or the one that its message tells, if any."""
        head, *values = packed.split(_BETWEEN)
        command, _, fingerprint = head.partition(".")
        names = _names_under(command, fingerprint)
        if names is None or len(values) > len(names):
            return cls._told_by(message) if message is not None else None
        given = zip(names, map(_unquoted, values), strict=False)
        return cls(command, {name: value for name, value in given if value})

    @classmethod
    def of(cls, asked: Asked | None) -> Self | None:
        """Return a question that can be asked again by a button: none about saved data."""
        command = command_named(asked.command) if asked else None
        if asked is None or command is None or command.stored is not None:
            return None
        return cls(asked.command, asked.values)

    @classmethod
    def read(cls, asked: str) -> Self | None:
        """Return the question of a line, if it is whole and still known."""
        return None if asked.endswith("…") else cls.of(question_at(asked))

    @classmethod
    def _told_by(cls, message: discord.Message) -> Self | None:
        return cls.read(seen(message).asked)


def command_in(asked: str) -> str:
    """Return the name of the question in the line of a message, empty where none is known.

    >>> command_in("mine show name:Pebble's box"), command_in("a text")
    ('mine show', '')
    """
    words = asked.split()
    names = (bare(" ".join(words[:count])) for count in (2, 1))
    return next((name for name in names if command_named(name) is not None), "")


def _option_names(command: str) -> tuple[str, ...]:
    found = command_named(command)
    return tuple(found.query.examples()) if found else ()


def _names_under(command: str, fingerprint: str) -> tuple[str, ...] | None:
    """Return the options in the order of a fingerprint; None: nobody knows it any more.

    An earlier version may have had fewer: what came since stands behind them.
    """
    if command_named(command) is None:
        return None
    names = _option_names(command)
    earlier = (names[:count] for count in range(len(names), -1, -1))
    return next((these for these in earlier if _fingerprint(these) == fingerprint), None)


@lru_cache(maxsize=256)
def _fingerprint(names: tuple[str, ...]) -> str:
    return hashlib.sha256(" ".join(names).encode()).hexdigest()[:4]


def _quoted(value: str) -> str:
    # A line break would not be matched by the patterns of the buttons.
    return value.replace("~", "~t").replace(_BETWEEN, "~p").replace("\n", "~n")


def _unquoted(value: str) -> str:
    return value.replace("~n", "\n").replace("~p", _BETWEEN).replace("~t", "~")
