"""What a question still needs, as lists to pick from under the answer that says so.

A pick asks the question again with what was picked. Where the words may mean several questions,
these are the list. What takes a figure is filled in in the form.
"""

import re
from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from math import ceil
from typing import TYPE_CHECKING, Any, Final, Self

import discord

from bot import guide
from bot.commands import command_named
from bot.completion import values_of
from bot.facts import Say
from bot.fronts.discord.carried import carried
from bot.fronts.discord.labels import cut, label
from bot.fronts.discord.limits import CarriesNothing, Limited
from bot.fronts.discord.localised import chosen_label, described
from bot.fronts.discord.question import IN_MESSAGE, Question
from bot.fronts.discord.seen import Row
from bot.fronts.discord.sending import guarded, tell
from bot.language.units import Units
from bot.language.unsure import NOT_SURE
from bot.menu import about_option
from bot.offering import names_offered
from bot.preferences import FIRST, Preferences
from bot.question_context import read_alone
from bot.questions.animals import name_said
from bot.reply import Reply
from bot.saying.voice import voice

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = [
    "FactSelect",
    "OfferSelect",
    "has_lists",
    "rows_asking",
    "rows_missing",
    "rows_of_plain",
]

_ANIMAL: Final = "animal"
_MOST_CHOICES: Final = 25
_LONGEST: Final = 100
# More rows no plain message has; a card has room for them.
_MOST_ROWS: Final = 5
_LIST: Final = discord.ComponentType.string_select.value
# What of a whole set-up is picked, where it was not told.
_SET_UPS: Final = ("check", "next")
_PICKED: Final = ("tube", "reflector", "screen")
# Who does not know what is between picks one of these, where the question takes them.
_NOT_KNOWN: Final = {"screen": ("mesh", NOT_SURE)}


@dataclass(frozen=True, slots=True)
class AnimalsFromTo:
    """The animals of one list, by the first and the last."""

    first: str
    last: str


@dataclass(frozen=True, slots=True)
class _Choices:
    """A list to pick from: what stands on it, and each value with its name."""

    placeholder: str
    values: Sequence[tuple[str, str]]


class FactSelect(
    Limited,
    discord.ui.DynamicItem[discord.ui.Select[Any]],
    template=r"n:(?P<option>[a-z_]+)\.(?P<page>[0-9]):(?P<asked>.+)",
):
    """Asks its question again with what was picked for an option."""

    def __init__(self, option: str, custom_id: str, choices: _Choices | None = None) -> None:
        super().__init__(_select(custom_id, choices))
        self.option = option

    @classmethod
    def of(cls, option: str, page: int, question: Question, choices: _Choices) -> Self:
        """Return the list for an option of a question; ``page`` parts several lists of it."""
        return cls(option, question.custom_id(f"n:{option}.{page}:"), choices)

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the list that was used."""
        return cls(match["option"], match[0])

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Ask again, in place where the presser may change the message."""
        async with guarded(interaction, "picking what was missing"):
            question = await carried(interaction, self)
            if question is None:
                return
            told = {**question.values, self.option: self.item.values[0]}
            client: Noonstone = interaction.client
            await client.answer(interaction, Question(question.command, told), in_place=True)


class OfferSelect(
    CarriesNothing, discord.ui.DynamicItem[discord.ui.Select[Any]], template="o:pick"
):
    """Asks the whole question that was picked."""

    def __init__(self, choices: _Choices | None = None) -> None:
        super().__init__(_select("o:pick", choices))

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Ask it, in place where the presser may change the message."""
        async with guarded(interaction, "picking a question"):
            picked = self.item.values[0]
            # Lists of earlier messages told the question as a line.
            question = Question.unpacked(picked, None) or Question.read(picked)
            if question is None:
                await tell(interaction, Say("front-ask-again"))
                return
            client: Noonstone = interaction.client
            await client.answer(interaction, question, in_place=True)


def _select(custom_id: str, choices: _Choices | None) -> discord.ui.Select[Any]:
    if choices is None:
        return discord.ui.Select(custom_id=custom_id)
    options = [
        discord.SelectOption(label=cut(name, _LONGEST), value=value)
        for value, name in choices.values
    ]
    told = cut(choices.placeholder, _LONGEST)
    return discord.ui.Select(custom_id=custom_id, placeholder=told, options=options)


def rows_missing(
    reply: Reply, question: Question, rows: tuple[Row, ...], language: str
) -> tuple[Row, ...]:
    """Return the rows of an answer with the lists of what it still needs.

    What cannot wait stands alone: nothing is asked beside it.
    """
    if reply.status != "problem" or reply.dangers or reply.command == "guide":
        return rows
    lists = (*_offered(reply, language), *_facts(reply, question, language))
    return (*rows, *map(_row, lists))


def rows_asking(question: Question, language: str) -> tuple[Row, ...]:
    """Return the lists of what a whole set-up was not told with and can be picked.

    The animal comes first, and then nothing else.
    """
    if question.command not in _SET_UPS:
        return ()
    if not question.given.get(_ANIMAL):
        return tuple(_row(each) for each in _animals(question, language))
    untold = (option for option in _PICKED if option not in question.given)
    return tuple(_row(each) for option in untold for each in _list(option, question, language))


def has_lists(rows: Sequence[Row]) -> bool:
    """Say whether there are lists of what is missing among the rows of a message."""
    parts = (part for row in rows for part in row["components"])
    pattern = FactSelect.__discord_ui_compiled_template__
    return any(pattern.fullmatch(part.get("custom_id") or "") for part in parts)


def rows_of_plain(rows: Sequence[Row]) -> Sequence[Row]:
    """Return as many rows as a plain message has: the first buttons, then the lists."""
    if len(rows) <= _MOST_ROWS:
        return rows
    lists = [row for row in rows[1:] if row["components"][0]["type"] == _LIST]
    return (rows[0], *lists)[:_MOST_ROWS]


def _row(item: discord.ui.Item[Any]) -> Row:
    view = discord.ui.View(timeout=None)
    view.add_item(item)
    view.stop()
    (row,) = view.to_components()
    return row


def _offered(reply: Reply, language: str) -> Iterator[OfferSelect]:
    """Yield the list of the questions that may be meant, by what they are for or their animals."""
    offered = [question for asked in reply.offers if (question := Question.of(asked))]
    packed = [(question.custom_id(""), question) for question in offered]
    known = [(value, question) for value, question in packed if value != IN_MESSAGE]
    if len(known) < 2:
        return
    names = names_offered([question for _, question in known], language)
    told = label(Say("button-which"), language)
    values = [value for value, _ in known]
    yield OfferSelect(_Choices(told, list(zip(values, names, strict=True))[:_MOST_CHOICES]))


def _facts(reply: Reply, question: Question, language: str) -> Iterator[FactSelect]:
    """Yield the lists of the options that are picked; animals first, and then nothing else."""
    if question.command != reply.command:
        return
    # What is missing, or could not be read.
    wanted = reply.lacking or tuple(sorted(question.unread))
    if _ANIMAL in wanted:
        if not reply.offers:
            yield from _animals(question, language)
        return
    for option in wanted:
        yield from _list(option, question, language)


def _list(option: str, question: Question, language: str) -> Iterator[FactSelect]:
    """Yield the list of an option, where its values can be counted."""
    if values := _values(question.command, option):
        told = described(about_option(question.command, option), language)
        listed = _choices(question.command, option)
        named = (chosen_label(v, language) if v in listed else v for v in values)
        choices = _Choices(told, list(zip(values, named, strict=True)))
        yield FactSelect.of(option, 0, question, choices)


def _choices(command: str, option: str) -> tuple[str, ...]:
    found = command_named(command)
    options = found.query.options() if found else ()
    return next((one.choices for one in options if one.name == option), ())


def _values(command: str, option: str) -> tuple[str, ...]:
    found = command_named(command)
    values = (*values_of(command, option), *_NOT_KNOWN.get(option, ()))
    if found is None or not 0 < len(values) <= _MOST_CHOICES:
        return ()
    anyone = Preferences()
    return tuple(v for v in values if read_alone(found.query, option, v, anyone) is not None)


def _animals(question: Question, language: str) -> Iterator[FactSelect]:
    """Yield all animals in lists of like length, by the alphabet of the reader's language."""
    named = ((value, _name(value, language)) for value in values_of(question.command, _ANIMAL))
    animals = sorted(named, key=lambda each: guide.alphabetical(each[1]))
    length = ceil(len(animals) / ceil(len(animals) / _MOST_CHOICES))
    for page, start in enumerate(range(0, len(animals), length)):
        part = animals[start : start + length]
        told = label(Say("button-animals", AnimalsFromTo(part[0][1], part[-1][1])), language)
        yield FactSelect.of(_ANIMAL, page, question, _Choices(told, part))


def _name(animal: str, language: str = FIRST) -> str:
    name = voice(language, Units.CM).name(name_said(animal), "")
    return name[:1].upper() + name[1:]
