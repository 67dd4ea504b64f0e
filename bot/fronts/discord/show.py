"""The button that shows an answer to whoever presses it, where a channel's answers are private."""

import re
from typing import Any, Self

import discord

from bot.facts import Say
from bot.fronts.discord.labels import label
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.question import Question
from bot.fronts.discord.sending import guarded, tell
from bot.preferences import FIRST

__all__ = ["ShowButton"]


class ShowButton(
    Limited,
    discord.ui.DynamicItem[discord.ui.Button[Any]],
    template=r"a:(?P<asked>.+)",
):
    """Answers the question that it carries, to the presser alone."""

    def __init__(self, custom_id: str, language: str = FIRST) -> None:
        told = label(Say("button-show"), language)
        super().__init__(discord.ui.Button(label=told, custom_id=custom_id))

    @classmethod
    def of(cls, question: Question, language: str) -> Self:
        """Return the button for a question."""
        return cls(question.custom_id("a:"), language)

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(match[0])

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Answer the presser alone."""
        async with guarded(interaction, "showing an answer"):
            question = Question.unpacked(self.custom_id.partition(":")[2], None)
            if question is None:
                await tell(interaction, Say("front-ask-again"))
                return
            await interaction.client.answer(interaction, question)
