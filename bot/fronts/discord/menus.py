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
from bot.fronts.discord.sending import guarded

__all__ = ["MENUS", "Menu", "message_menus"]


@dataclass(frozen=True, slots=True)
class Menu:
    """An entry of the message menu; the message's words go where the command takes free words.

    ``more``: what they tell is added to the last message of the same writer.
    """

    label: Say
    command: str
    more: bool = False


MENUS: Final = (
    Menu(Say("menu-message-ask"), "ask"),
    Menu(Say("menu-message-check"), "check"),
    Menu(Say("menu-message-add"), "ask", more=True),
)


def message_menus() -> Iterator[app_commands.ContextMenu]:
    """Yield the entries whose question this bot answers."""
    for menu in MENUS:
        command = command_named(menu.command)
        if command is not None:
            yield _context_menu(menu, command)


def _context_menu(menu: Menu, command: Command) -> app_commands.ContextMenu:
    async def callback(interaction: discord.Interaction[Any], message: discord.Message) -> None:
        async with guarded(interaction, f"reading a message for {command.name}"):
            helpers = interaction.client.helpers
            await helpers.answer(interaction, message, command, more=menu.more)

    return app_commands.ContextMenu(name=in_menu(menu.label), callback=callback)
