"""The button that shows an answer to whoever presses it, where a channel's answers are private."""

from typing import Any

import discord

from bot.facts import Say
from bot.fronts.discord.carried import QuestionButton, carried
from bot.fronts.discord.sending import guarded

__all__ = ["ShowButton"]


class ShowButton(QuestionButton, template=r"a:(?P<asked>.+)"):
    """Answers the question that it carries, to the presser alone."""

    says, prefix = Say("button-show"), "a:"

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Answer the presser alone."""
        async with guarded(interaction, "showing an answer"):
            if question := await carried(interaction, self):
                await interaction.client.answer(interaction, question)
