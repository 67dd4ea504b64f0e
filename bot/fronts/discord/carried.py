"""Buttons that carry a question in their custom id, and the question of what was pressed."""

import re
from typing import Any, ClassVar, Self

import discord

from bot.facts import Say
from bot.fronts.discord.labels import label
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.question import Question
from bot.fronts.discord.sending import tell
from bot.preferences import FIRST

__all__ = ["QuestionButton", "carried"]


class QuestionButton(Limited, discord.ui.DynamicItem[discord.ui.Button[Any]], template=r"[^\s\S]"):
    """A button that needs nothing but its question: one made of its custom id alone is the same."""

    says: ClassVar[Say]
    prefix: ClassVar[str]
    in_row: ClassVar[int | None] = None
    style: ClassVar[discord.ButtonStyle] = discord.ButtonStyle.secondary

    def __init__(self, custom_id: str, language: str = FIRST, says: Say | None = None) -> None:
        button: discord.ui.Button[Any] = discord.ui.Button(
            label=label(says or self.says, language),
            custom_id=custom_id,
            row=self.in_row,
            style=self.style,
        )
        super().__init__(button)

    @classmethod
    def of(cls, question: Question, language: str, says: Say | None = None) -> Self:
        """Return the button for a question; ``says`` stands on it in place of the usual."""
        return cls(question.custom_id(cls.prefix), language, says)

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(match[0])


async def carried(
    interaction: discord.Interaction[Any], item: discord.ui.DynamicItem[Any]
) -> Question | None:
    """Return the question that a pressed item carries; None where it is lost, which is told."""
    match = item.template.fullmatch(item.custom_id)
    question = Question.unpacked(match["asked"] if match else "", interaction.message)
    if question is None:
        await tell(interaction, Say("front-ask-again"))
    return question
