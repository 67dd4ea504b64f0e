"""The button that confirms what cannot be taken back, under the answer that asks for it."""

import re
from typing import Any, Final, Self

import discord

from bot.command import Command
from bot.commands import command_named
from bot.facts import Say
from bot.fronts.discord.carried import QuestionButton
from bot.fronts.discord.labels import label
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.question import Question
from bot.fronts.discord.said import said_in
from bot.fronts.discord.sending import (
    Message,
    guarded,
    in_direct_messages,
    send,
    tell,
)
from bot.preferences import FIRST
from bot.render.escaping import escape

__all__ = [
    "SURE",
    "YES",
    "AgreeButton",
    "DeleteButton",
    "SureButton",
    "ask_to_confirm",
    "asks_to_be_sure",
]

SURE: Final = "sure"
"""The option whose yes confirms."""
YES: Final = "yes"


def asks_to_be_sure(command: Command, sure: object) -> bool:
    """Whether a question takes a confirmation that was not given yet."""
    return sure != YES and any(option.name == SURE for option in command.query.options())


class DeleteButton(QuestionButton, template=r"d:(?P<asked>.+)"):
    """Deletes what was named, for whoever named it."""

    says, prefix, style = Say("button-sure"), "d:", discord.ButtonStyle.danger

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Delete it."""
        question = Question.unpacked(self.custom_id.partition(":")[2], None)
        command = command_named(question.command) if question else None
        if question is None or command is None or not command.deletes:
            async with guarded(interaction, "confirming"):
                await tell(interaction, Say("front-ask-again"))
            return
        client = interaction.client
        await client.answer_saved(interaction, command, question.given, confirmed=True)


class AgreeButton(QuestionButton, template=r"agree:(?P<asked>.+)"):
    """Agrees to what was just explained, for whoever asked."""

    says, prefix, style = Say("button-agree"), "agree:", discord.ButtonStyle.primary

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Do it."""
        question = Question.unpacked(self.custom_id.partition(":")[2], None)
        command = command_named(question.command) if question else None
        if question is None or command is None or not asks_to_be_sure(command, None):
            async with guarded(interaction, "agreeing"):
                await tell(interaction, Say("front-ask-again"))
            return
        await interaction.client.answer_saved(interaction, command, question.given)


async def ask_to_confirm(interaction: discord.Interaction[Any], question: Question) -> None:
    """Ask whether something is to be deleted, with the question as it was asked and a button."""
    language = (await interaction.client.preferences_of(interaction)).spoken
    view = discord.ui.View(timeout=None)
    view.add_item(DeleteButton.of(question, language))
    words = f"{said_in(language, Say('front-delete'))}\n{escape(question.line())}"
    message = Message(words, rows=view.to_components())
    await send(interaction, message, private=not in_direct_messages(interaction))


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
                await tell(interaction, Say("front-ask-again"))
            return
        await interaction.client.answer_saved(interaction, command, {SURE: YES})
