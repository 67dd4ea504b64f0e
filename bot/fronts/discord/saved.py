"""The questions about saved data as groups of slash commands, answered for the asker alone."""

import asyncio
from collections.abc import Callable, Mapping
from typing import TYPE_CHECKING, Any, Final

import discord
from discord import app_commands

from bot.ask import ask
from bot.command import Command
from bot.commands import STORED_COMMANDS, question_at
from bot.database.errors import StoreError
from bot.facts import Say
from bot.fronts.discord.board_preview import PREVIEW, show_preview
from bot.fronts.discord.buttons import rows_for
from bot.fronts.discord.forms import open_form, opens_a_form
from bot.fronts.discord.localised import in_menu
from bot.fronts.discord.public import kept_private
from bot.fronts.discord.question import IN_MESSAGE, Question
from bot.fronts.discord.rights import asker_of, is_moderator, lacking
from bot.fronts.discord.sending import (
    Attached,
    Message,
    answered_as,
    colour_of,
    guarded,
    in_direct_messages,
    send,
    think,
)
from bot.fronts.discord.sure import (
    SURE,
    YES,
    AgreeButton,
    SureButton,
    ask_to_confirm,
    asks_to_be_sure,
)
from bot.menu import STORED_GROUPS, about_group
from bot.problems import problem
from bot.questions.saved.files import MOST_IMPORT
from bot.render.post import MOST_CARD, MOST_TEXT, render_post
from bot.reply import Reply
from bot.serving.memory import Memory

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["answer_saved", "saved_groups"]

_Interaction = discord.Interaction["Noonstone"]
Slash = Callable[[Command, Any], app_commands.Command[Any, ..., None]]
# After this long the asker is told that an answer is coming.
_SOON_S: Final = 1.5
# These may be shown to others, if the asker wants to.
_SHAREABLE: Final = frozenset({"mine show", "mine sheet", "mine compare"})
_AGREED: Final = frozenset({"mine share", "mine offer"})
# A server's settings show them to its helpers; who is one is asked at every question.
_FOR_HELPERS: Final = frozenset({"cases"})


def saved_groups(slash: Slash) -> list[app_commands.Group]:
    """Return the groups; ``slash`` makes a slash command of a question and a callback."""
    groups = []
    for name in STORED_GROUPS:
        within = [c for c in STORED_COMMANDS if c.name.partition(" ")[0] == name]
        for_moderators = all(command.who == "moderator" for command in within)
        group = _group(name, hidden=for_moderators or name in _FOR_HELPERS)
        for command in within:
            sub = slash(command, _answering(command))
            if for_moderators:
                sub.add_check(is_moderator)
            group.add_command(sub)
        groups.append(group)
    return groups


def _group(name: str, *, hidden: bool) -> app_commands.Group:
    about = in_menu(about_group(name))
    if not hidden:
        return app_commands.Group(name=name, description=about, auto_locale_strings=False)
    return app_commands.Group(
        name=name,
        description=about,
        allowed_contexts=app_commands.AppCommandContext(
            guild=True, dm_channel=False, private_channel=False
        ),
        allowed_installs=app_commands.AppInstallationType(guild=True, user=False),
        default_permissions=discord.Permissions(manage_messages=True),
        auto_locale_strings=False,
    )


def _answering(command: Command) -> Any:
    async def answer(interaction: _Interaction, filled: Mapping[str, Any]) -> None:
        if opens_a_form(command) and (not filled or command.query.lacking(filled)):
            async with guarded(interaction, "opening a form"):
                await open_form(interaction, Question(command.name, filled))
            return
        await answer_saved(interaction, command, filled)

    return answer


async def answer_saved(
    interaction: _Interaction,
    command: Command,
    filled: Mapping[str, Any],
    *,
    confirmed: bool = False,
) -> None:
    """Answer a question about saved data to the asker alone; what deletes is confirmed first."""
    async with guarded(interaction, f"answering {command.name}"):
        client, memory = interaction.client, interaction.client.memory
        if memory is None:
            return
        if command.deletes and filled and not (confirmed or command.query.lacking(filled)):
            await ask_to_confirm(interaction, Question(command.name, filled))
            return
        with client.noted(command.name) as note:
            reply = await _soon(interaction, _reply(client, memory, interaction, command, filled))
            note(reply.status)
            if reply.status == "ok":
                # Before it is confirmed, so that the very next question knows of it.
                memory.changed(asker_of(interaction))
            if reply.status == "ok" and command.name == PREVIEW:
                preferences = await client.preferences_of(interaction)
                await show_preview(interaction, memory, filled, preferences)
            else:
                message = await _message(interaction, command, reply, filled)
                await send(interaction, message, private=not in_direct_messages(interaction))
        if reply.status == "ok":
            memory.count(asker_of(interaction), command.name, {})
            client.wake()


async def _soon(interaction: _Interaction, asked: Any) -> Reply:
    """Wait for a reply; once it takes long, tell the asker that it is coming."""
    asking = asyncio.ensure_future(asked)
    done, _ = await asyncio.wait({asking}, timeout=_SOON_S)
    if not done:
        await think(interaction, private=not in_direct_messages(interaction))
    reply: Reply = await asking
    return reply


async def _reply(
    client: "Noonstone",
    memory: Memory,
    interaction: _Interaction,
    command: Command,
    filled: Mapping[str, Any],
) -> Reply:
    if command.who == "moderator":
        # So that the newest are shown, and none outlives what a moderator deletes.
        await _keep_counts(memory, interaction)
    given = {}
    for name, value in filled.items():
        if isinstance(value, discord.Attachment):
            if value.size > MOST_IMPORT:
                return problem(command.name, Say("refused-file-large"), client.preferences())
            given[name] = (await value.read()).decode("utf-8", errors="replace")
        else:
            given[name] = value
    desk = memory.desk(
        asker_of(interaction), moderator=is_moderator(interaction), lacking=lacking(interaction)
    )
    return await ask(Question(command.name, given), client.preferences(), desk)


async def _keep_counts(memory: Memory, interaction: _Interaction) -> None:
    try:
        await memory.keep_counts(interaction.guild_id)
    except StoreError:
        # They are kept later; what the moderator asked tells of the trouble itself.
        return


async def _message(
    interaction: _Interaction, command: Command, reply: Reply, filled: Mapping[str, Any]
) -> Message:
    private = not in_direct_messages(interaction)
    attached = []
    if reply.document is not None:
        content = reply.document.text.encode()
        attached.append(Attached(reply.document.name, content, reply.title))
    if reply.picture is not None:
        attached += await _picture(interaction, reply)
    may_share = command.name in _SHAREABLE and await kept_private(interaction) is None
    rows = rows_for(
        reply,
        Question(command.name, {}),
        private=private and may_share,
        own=False,
        swap_to=None,
    )
    asks = reply.status == "ok" and asks_to_be_sure(command, filled.get(SURE))
    if asks and (button := _confirming(command, reply, filled)):
        view = discord.ui.View(timeout=None).add_item(button)
        rows = (*view.to_components(), *rows)
    # A picture or a file stands beside plain text alone, which holds less than a card.
    most = MOST_TEXT if attached else MOST_CARD
    return Message(
        post=render_post(reply, most=most, mention=interaction.client.mention),
        rows=rows,
        attached=attached,
        card=private and not attached,
        colour=colour_of(reply),
    )


def _confirming(
    command: Command, reply: Reply, filled: Mapping[str, Any]
) -> AgreeButton | SureButton | None:
    """Return the button of a yes to what was shown; a question too long for one is typed."""
    if command.name not in _AGREED:
        return SureButton(command.name, reply.around)
    shown = question_at(reply.lines[0]) if reply.lines else None
    given = shown.given if shown else {**filled, SURE: YES}
    button = AgreeButton.of(Question(command.name, given), reply.around)
    return None if button.custom_id.endswith(IN_MESSAGE) else button


async def _picture(interaction: _Interaction, reply: Reply) -> list[Attached]:
    """Return the picture of a reply; without one the answer stands by itself."""
    studio, picture = interaction.client.studio, reply.picture
    if studio is None or picture is None or picture.drawing is None:
        return []
    if answered_as(interaction) is None:
        await think(interaction, private=not in_direct_messages(interaction))
    png = await studio.png(picture.drawing)
    if not isinstance(png, bytes):
        return []
    name = f"{reply.command.replace(' ', '-')}.png"
    return [Attached(name, png, picture.alt)]
