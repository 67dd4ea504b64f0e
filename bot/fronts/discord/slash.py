"""The slash commands, made from the questions' own models: no second list to keep."""

import inspect
import keyword
import logging
from collections.abc import Awaitable, Callable, Coroutine, Mapping
from typing import TYPE_CHECKING, Any

import discord
from discord import app_commands

from bot.command import Command
from bot.commands import COMMANDS
from bot.completion import complete
from bot.facts import Say
from bot.fronts.discord.forms import open_form, opens_a_form
from bot.fronts.discord.limits import admitted
from bot.fronts.discord.localised import choice_in_menu, in_menu
from bot.fronts.discord.menus import message_menus
from bot.fronts.discord.question import Question
from bot.fronts.discord.rights import asker_of, is_moderator
from bot.fronts.discord.saved import saved_groups
from bot.fronts.discord.sending import guarded, tell
from bot.menu import GROUPS, about_group, about_option, about_question, menu_name
from bot.queries.query import QueryOption

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["Tree", "build_tree", "slash_command"]

_log = logging.getLogger(__name__)

# Also heard by those whom an administrator let see the command in the server's settings.
_FOR = "for"
_FOR_SAYS = Say("menu-for")
_LONGEST_OPTION = 200
_LONGEST_SENTENCE = 2000
_MOST_CHOICES = 25
_LONGEST_CHOICE = 100

_Interaction = discord.Interaction["Noonstone"]
_Answer = Callable[[_Interaction, Mapping[str, Any]], Awaitable[None]]
_Completer = Callable[
    [discord.Interaction[Any], str], Coroutine[Any, Any, list[app_commands.Choice[str]]]
]


class Tree(app_commands.CommandTree["Noonstone"]):
    """The command tree; what fails before a question is asked is told in a sentence."""

    async def interaction_check(self, interaction: discord.Interaction["Noonstone"], /) -> bool:
        """Let the question through, or ask to wait."""
        return await admitted(interaction)

    async def on_error(
        self,
        interaction: discord.Interaction["Noonstone"],
        error: app_commands.AppCommandError,
        /,
    ) -> None:
        """Tell the asker what to do about a command that Discord and the bot disagree on."""
        async with guarded(interaction, "telling of a command error"):
            if isinstance(
                error, app_commands.CommandNotFound | app_commands.CommandSignatureMismatch
            ):
                sentence = Say("front-changed")
            elif isinstance(error, app_commands.CheckFailure):
                sentence = Say("front-needs-right")
            else:
                raise error
            await tell(interaction, sentence)


def build_tree(client: "Noonstone") -> Tree:
    """Return the tree of every question, for servers, direct messages and elsewhere."""
    tree = Tree(
        client,
        allowed_contexts=app_commands.AppCommandContext(
            guild=True, dm_channel=True, private_channel=True
        ),
        allowed_installs=app_commands.AppInstallationType(guild=True, user=True),
    )
    groups = {
        name: app_commands.Group(
            name=name, description=in_menu(about_group(name)), auto_locale_strings=False
        )
        for name in GROUPS
    }
    for command in COMMANDS:
        first = menu_name(command.name).partition(" ")[0]
        groups.get(first, tree).add_command(slash_command(command))
    for menu_group in groups.values():
        tree.add_command(menu_group)
    for menu in message_menus():
        tree.add_command(menu)
    if client.memory is not None:
        for group in saved_groups(slash_form):
            tree.add_command(group)
    return tree


def slash_command(command: Command) -> app_commands.Command[Any, ..., None]:
    """Return a question as a slash command whose form is its model."""

    async def answer(interaction: _Interaction, filled: Mapping[str, Any]) -> None:
        given = {name: text for name, text in filled.items() if name != _FOR}
        question = Question(command.name, given)
        if opens_a_form(command) and not filled:
            async with guarded(interaction, "opening a form"):
                await open_form(interaction, question)
            return
        await interaction.client.answer(interaction, question, addressee=filled.get(_FOR))

    slash = slash_form(command, answer, addressed=True)
    if command.who == "moderator":
        slash.guild_only = True
        slash.default_permissions = discord.Permissions(manage_messages=True)
        slash.add_check(is_moderator)
    return slash


def slash_form(
    command: Command, answer: _Answer, *, addressed: bool = False
) -> app_commands.Command[Any, ..., None]:
    """Return a slash command whose form is a question's model, answered by ``answer``.

    ``answer`` gets what was filled in by the names of the options; ``addressed`` adds the member
    for whom it is asked.
    """
    options = sorted(command.query.options(), key=lambda option: not option.required)
    names = {_parameter_name(option.name): option.name for option in options}
    if addressed:
        names[_parameter_name(_FOR)] = _FOR

    async def callback(interaction: _Interaction, **filled: Any) -> None:
        await answer(interaction, {names[key]: value for key, value in filled.items() if value})

    parameters = {_parameter_name(option.name): option for option in options}
    _declare(callback, command, parameters, addressed=addressed)
    # Only the last word names it: the first one, if there are two, is the group's.
    name = command.name.rpartition(" ")[2]
    told = in_menu(about_question(command.name))
    # Names stay as they are: discord.py would ask for each of them in each of its locales.
    return app_commands.Command(
        name=name, description=told, callback=callback, auto_locale_strings=False
    )


def _declare(
    callback: Callable[..., Any],
    command: Command,
    parameters: dict[str, QueryOption],
    *,
    addressed: bool,
) -> None:
    """Give the callback the signature, the words and the choices of the model."""
    signature = [_parameter("interaction", discord.Interaction)]
    # Discord lets nobody send a command without its required options, so nobody could open a form.
    strict = not opens_a_form(command)
    signature += [
        _parameter(
            name,
            _text_type(command, option),
            required=option.required and strict,
        )
        for name, option in parameters.items()
    ]
    described = {
        name: in_menu(about_option(command.name, option.name))
        for name, option in parameters.items()
    }
    names = {name: option.name for name, option in parameters.items()}
    if addressed:
        who = discord.Member | discord.User
        signature.append(_parameter(_parameter_name(_FOR), who, required=False))
        described[_parameter_name(_FOR)] = in_menu(_FOR_SAYS)
        names[_parameter_name(_FOR)] = _FOR
    callback.__signature__ = inspect.Signature(signature)  # type: ignore[attr-defined]
    app_commands.describe(**described)(callback)
    app_commands.rename(**{n: shown for n, shown in names.items() if n != shown})(callback)
    app_commands.choices(
        **{
            name: [choice_in_menu(choice) for choice in option.choices]
            for name, option in parameters.items()
            if 0 < len(option.choices) <= _MOST_CHOICES
        }
    )(callback)
    app_commands.autocomplete(
        **{
            name: _completer(command.name, option)
            for name, option in parameters.items()
            if option.completes or len(option.choices) > _MOST_CHOICES
        }
    )(callback)


def _parameter_name(option: str) -> str:
    return f"{option}_" if keyword.iskeyword(option) else option


def _parameter(name: str, kind: Any, *, required: bool = True) -> inspect.Parameter:
    default = inspect.Parameter.empty if required else None
    place = inspect.Parameter.POSITIONAL_OR_KEYWORD
    return inspect.Parameter(name, place, annotation=kind, default=default)


def _text_type(command: Command, option: QueryOption) -> Any:
    if option.document:
        return discord.Attachment
    if option.choices:
        return str
    longest = _LONGEST_SENTENCE if option.name == command.positional else _LONGEST_OPTION
    return app_commands.Range[str, 1, longest]


def _completer(command: str, option: QueryOption) -> _Completer:
    async def completer(
        interaction: discord.Interaction[Any], typed: str
    ) -> list[app_commands.Choice[str]]:
        try:
            memory = interaction.client.memory
            asker = asker_of(interaction)
            offers = {} if memory is None else await memory.offers(asker, option.completes)
            values = complete(command, option.name, typed, offers)
        except Exception:
            # An autocomplete that fails shows an error in the asker's face for every key.
            _log.exception("failure while completing %s of %s", option.name, command)
            values = []
        own = typed.strip()
        # What was typed is offered too: most options take more than the list shows.
        if own and own.lower() not in (value.lower() for value in values):
            values = [*values[: _MOST_CHOICES - 1], own]
        return [
            app_commands.Choice(name=value, value=value)
            for value in values[:_MOST_CHOICES]
            if len(value) <= _LONGEST_CHOICE
        ]

    return completer
