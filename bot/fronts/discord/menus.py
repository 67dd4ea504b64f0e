"""Questions asked about somebody's message, from the message's own menu."""

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Any, Final

import discord
from discord import app_commands

from bot.command import Command
from bot.commands import command_named
from bot.facts import Say
from bot.fronts.discord.localised import in_menu
from bot.fronts.discord.question import Question
from bot.fronts.discord.sending import guarded, tell
from bot.fronts.discord.sharing import Target

__all__ = ["MENUS", "Menu", "message_menus"]


@dataclass(frozen=True, slots=True)
class Menu:
    """An entry of the message menu; the message's words go where the command takes free words."""

    label: Say
    command: str


MENUS: Final = (
    Menu(Say("menu-message-ask"), "ask"),
    Menu(Say("menu-message-check"), "check"),
)


def message_menus() -> Iterator[app_commands.ContextMenu]:
    """Yield the entries whose question this bot answers."""
    for menu in MENUS:
        command = command_named(menu.command)
        if command is not None:
            yield _context_menu(menu.label, command)


def _context_menu(label: Say, command: Command) -> app_commands.ContextMenu:
    async def callback(interaction: discord.Interaction[Any], message: discord.Message) -> None:
        async with guarded(interaction, f"reading a message for {command.name}"):
            words = message.content.strip()
            if not words:
                await tell(interaction, Say("front-no-words"))
                return
            await interaction.client.answer(
                interaction,
                Question(command.name, {command.positional: words}),
                about=Target(message.author.id, message.id),
            )

    return app_commands.ContextMenu(name=in_menu(label), callback=callback)
