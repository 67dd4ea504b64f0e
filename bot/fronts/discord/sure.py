"""The button that confirms what cannot be taken back, under the answer that asks for it."""

import re
from typing import Any, Final, Self

import discord

from bot.command import Command
from bot.commands import command_named
from bot.facts import Say
from bot.fronts.discord.labels import label
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.sending import ASK_AGAIN, Message, guarded, send
from bot.preferences import FIRST

__all__ = ["SURE", "SureButton", "asks_to_be_sure"]

SURE: Final = "sure"
"""The option whose yes confirms."""
_YES: Final = "yes"


def asks_to_be_sure(command: Command, sure: object) -> bool:
    """Whether a question takes a confirmation that was not given yet."""
    return sure != _YES and any(option.name == SURE for option in command.query.options())


class SureButton(
    Limited,
    discord.ui.DynamicItem[discord.ui.Button[Any]],
    template=r"y:(?P<command>[a-z]+ [a-z]+)",
):
    """Does what was asked about, for whoever was asked."""

    def __init__(self, command: str, language: str = FIRST) -> None:
        told = label(Say("button-sure"), language)
        red = discord.ButtonStyle.danger
        super().__init__(discord.ui.Button(label=told, custom_id=f"y:{command}", style=red))
        self._command = command

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(match["command"])

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Answer the question again, with the yes."""
        command = command_named(self._command)
        if command is None or not asks_to_be_sure(command, None):
            async with guarded(interaction, "confirming"):
                await send(interaction, Message(ASK_AGAIN), private=True)
            return
        await interaction.client.answer_saved(interaction, command, {SURE: _YES})
