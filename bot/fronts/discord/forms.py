"""A question as a form: opened pre-filled by a button, and again when a field was not understood.

A form is known by its custom id alone, so one opened before a restart is answered after it.
"""

from collections.abc import Mapping
from types import MappingProxyType
from typing import TYPE_CHECKING, Any, Final

import discord

from bot.command import Command
from bot.commands import command_named
from bot.completion import values_of
from bot.facts import Say
from bot.fronts.discord.carried import QuestionButton, carried
from bot.fronts.discord.labels import cut
from bot.fronts.discord.localised import chosen_label, described
from bot.fronts.discord.question import Question
from bot.fronts.discord.rights import asker_of
from bot.fronts.discord.said import FormOf, said_in
from bot.fronts.discord.sending import guarded, note_arrival, tell
from bot.menu import about_option
from bot.preferences import FIRST
from bot.queries.query import QueryOption

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["EditButton", "form_for", "open_form", "opens_a_form", "take_form"]

_FORM: Final = "f:"
# What a keeper saved is picked; the names of a group stand among many others and are typed.
_OF_KEEPERS: Final = frozenset(("enclosure", "reminder"))
# Kinds of which all that is read is on the list, so that nothing has to be typed.
_ALL_LISTED: Final = frozenset(("tube", "uv_lamp", "thermometer", "heat_source"))
_NOTHING: Final[Mapping[str, tuple[str, ...]]] = MappingProxyType({})
_MOST_FIELDS = 5
_MOST_CHOICES = 25
_LONGEST_TITLE = 45
_LONGEST_FIELD_NAME = 45
_LONGEST_VALUE = 200
_LONGEST_SENTENCE = 2000


class EditButton(QuestionButton, template=r"e:(?P<asked>.+)"):
    """Opens the question as a form, filled in as it was asked."""

    says, prefix, in_row = Say("button-change"), "e:", 0

    @staticmethod
    def fits(question: Question) -> bool:
        """Say whether the question has anything to fill in."""
        return bool(_options(question)) and question.command not in ("guide", "help")

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Open the form."""
        async with guarded(interaction, "opening a form"):
            question = await carried(interaction, self)
            if question is None:
                return
            if not self.fits(question):
                await tell(interaction, Say("front-ask-again"))
                return
            await open_form(interaction, question)


def opens_a_form(command: Command) -> bool:
    """Say whether a question sent with nothing opens a form: it could not be answered so.

    A file is attached to the command itself, so that a question for one has no form.
    """
    takes_a_file = any(option.document for option in command.query.options())
    return command.form or (bool(command.query.lacking({})) and not takes_a_file)


async def open_form(interaction: discord.Interaction[Any], question: Question) -> None:
    """Open the form of a question, with what the asker saved to pick from."""
    client: Noonstone = interaction.client
    language = (await client.preferences_of(interaction)).spoken
    own: dict[str, tuple[str, ...]] = {}
    if client.memory is not None:
        for option in _chosen(question):
            if option.completes in _OF_KEEPERS:
                own |= await client.memory.offers(asker_of(interaction), option.completes)
    await interaction.response.send_modal(form_for(question, language, own))


def form_for(
    question: Question, language: str = FIRST, own: Mapping[str, tuple[str, ...]] = _NOTHING
) -> discord.ui.Modal:
    """Return the form of a question: what it needs, what was given, then what else it takes.

    ``own`` are the names to pick from, by the kind of option.
    """
    title = Say("front-form-again" if question.given else "front-form", FormOf(question.command))
    form = discord.ui.Modal(
        title=cut(said_in(language, title), _LONGEST_TITLE),
        custom_id=question.custom_id(_FORM),
    )
    for option in _chosen(question):
        value = question.given.get(option.name, "")
        listed = values_of(question.command, option.name)
        listed = listed if option.completes in _ALL_LISTED else ()
        picked = option.choices or own.get(option.completes, ()) or listed
        form.add_item(_field(question.command, option, value, picked, language))
    # A form that is closed unsent would be kept for ever; its id is enough to know it again.
    form.stop()
    return form


def _options(question: Question) -> tuple[QueryOption, ...]:
    command = command_named(question.command)
    return command.query.options() if command else ()


def _chosen(question: Question) -> list[QueryOption]:
    options, wrong = _options(question), question.unread
    ranked = sorted(
        options,
        key=lambda o: (
            o.name not in wrong,
            not o.required,
            o.name not in question.given,
            # Not required, yet most answers want it.
            o.completes != "animal",
        ),
    )
    chosen = ranked[:_MOST_FIELDS]
    return [option for option in options if option in chosen]


def _field(
    command: str, option: QueryOption, value: str, choices: tuple[str, ...], language: str
) -> discord.ui.Label[Any]:
    if 0 < len(choices) <= _MOST_CHOICES and value in ("", *choices):
        return _choice(command, option, value, choices, language)
    sentence = "\n" in value or len(value) > _LONGEST_VALUE
    longest = _LONGEST_SENTENCE if sentence else _LONGEST_VALUE
    style = discord.TextStyle.paragraph if sentence else discord.TextStyle.short
    return discord.ui.Label(
        text=option.name[:_LONGEST_FIELD_NAME],
        description=described(about_option(command, option.name), language),
        component=discord.ui.TextInput(
            custom_id=option.name,
            style=style,
            default=value[:longest] or None,
            placeholder=(", ".join(option.choices) or option.example)[:100] or None,
            required=option.required,
            max_length=longest,
        ),
    )


def _choice(
    command: str, option: QueryOption, value: str, choices: tuple[str, ...], language: str
) -> discord.ui.Label[Any]:
    """Return the field of an option that is picked and not typed."""
    listed = option.choices == choices
    offered = [
        discord.SelectOption(
            label=chosen_label(choice, language) if listed else choice,
            value=choice,
            default=choice == value,
        )
        for choice in choices
    ]
    return discord.ui.Label(
        text=option.name[:_LONGEST_FIELD_NAME],
        description=described(about_option(command, option.name), language),
        component=discord.ui.Select(
            custom_id=option.name,
            options=offered,
            required=option.required,
            min_values=int(option.required),
        ),
    )


async def take_form(interaction: discord.Interaction[Any]) -> None:
    """Answer a form that was sent; what it did not show stays as it was asked."""
    custom_id = interaction.custom_id or ""
    if not custom_id.startswith(_FORM):
        return
    note_arrival(interaction)
    async with guarded(interaction, "taking a form"):
        question = Question.unpacked(custom_id.removeprefix(_FORM), interaction.message)
        if question is None:
            await tell(interaction, Say("front-ask-again"))
            return
        given = {**question.given, **_filled_in(interaction.data)}
        given = {name: value for name, value in given.items() if value}
        changed = Question(question.command, given)
        client: Noonstone = interaction.client
        command = command_named(question.command)
        if command is not None and command.stored is not None:
            await client.answer_saved(interaction, command, given)
            return
        await client.answer(interaction, changed, in_place=True)


def _filled_in(data: Any) -> dict[str, str]:
    fields = [part["component"] for part in data["components"] if "component" in part]
    return {field["custom_id"]: _told(field).strip() for field in fields}


def _told(field: Any) -> str:
    """Return what was typed into a field, or picked."""
    told: str = field["value"] if "value" in field else "".join(field.get("values") or ())
    return told
