"""The button under a helper's answer that asks the writer of the message for what is missing."""

import re
from typing import TYPE_CHECKING, Any, Final, Self

import discord

from bot.facts import Say
from bot.fronts.discord.labels import label
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.public import refused_post
from bot.fronts.discord.question import Question
from bot.fronts.discord.seen import seen
from bot.fronts.discord.sending import Message, edit_in_place, guarded, tell
from bot.fronts.discord.sharing import Target, without
from bot.preferences import FIRST

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["AskMissingButton"]

_MISSING: Final = re.compile(r"m:(?P<author>\d{1,19}):(?P<message>\d{1,19})")


class AskMissingButton(Limited, discord.ui.DynamicItem[discord.ui.Button[Any]], template=_MISSING):
    """Posts what an answer still lacks, with lists that the writer of its message picks from."""

    def __init__(self, about: Target, language: str = FIRST) -> None:
        told = label(Say("button-ask-missing"), language)
        custom_id = f"m:{about.author_id}:{about.message_id}"
        super().__init__(discord.ui.Button(label=told, custom_id=custom_id, row=1))
        self.about = about

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(Target(int(match["author"]), int(match["message"])))

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Post it, once."""
        async with guarded(interaction, "asking for what is missing"):
            client: Noonstone = interaction.client
            message = interaction.message
            assert message is not None
            there = seen(message)
            question = Question.read(there.asked)
            if question is None:
                await tell(interaction, Say("front-ask-again"))
                return
            if not client.shares.wait(message.id):
                why = await refused_post(interaction, question.command, 1)
                if why is not None:
                    await tell(interaction, why)
                    return
            kept = without(there.rows, AskMissingButton)
            card = not message.attachments
            colour = there.colour
            changed = Message(there.words, there.post, kept, card=card, colour=colour)
            await edit_in_place(interaction, changed)
            # Pressed twice before the button was gone, it is posted once.
            if not client.shares.take(message.id):
                await client.ask_writer(interaction, question, self.about)
