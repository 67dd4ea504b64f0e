"""What counts as asking, and who asked too often for now.

Commands and buttons count. What is offered while somebody types does not, nor does a form: the
button that opened it counted already, and what was filled in is never thrown away.
"""

import logging
import re
import time
from math import ceil
from typing import TYPE_CHECKING, Any, Self

import discord

from bot.facts import Say
from bot.fronts.discord.said import TryAgain, said
from bot.fronts.discord.sending import Message, guarded, in_direct_messages, note_arrival, send
from bot.serving.allowance import Limits

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["CarriesNothing", "Limited", "admitted"]

_log = logging.getLogger(__name__)


async def admitted(interaction: discord.Interaction[Any]) -> bool:
    """Say whether this may go on; the one who must wait is told until when."""
    note_arrival(interaction)
    client: Noonstone = interaction.client
    if interaction.type is discord.InteractionType.autocomplete:
        return True
    leaving = client.in_flight.leaving
    say = Say("front-leaving") if leaving else _too_many(client.limits, interaction)
    if say is None:
        return True
    async with guarded(interaction, "asking to wait"):
        words = await said(interaction, say)
        await send(interaction, Message(words), private=not in_direct_messages(interaction))
    return False


def _too_many(limits: Limits | None, interaction: discord.Interaction[Any]) -> Say | None:
    """Take a question of the asker's share; the sentence says until when to wait."""
    wait_s = limits.take(interaction.user.id, interaction.guild_id) if limits else 0.0
    if not wait_s:
        return None
    _log.info("asked to wait %.0f s", wait_s)
    when = f"<t:{ceil(time.time() + wait_s)}:R>"
    return Say("front-too-many", TryAgain(when))


class Limited:
    """What is pressed or picked, and counts."""

    async def interaction_check(self, interaction: discord.Interaction[Any], /) -> bool:
        """Let the press through, or ask to wait."""
        return await admitted(interaction)


class CarriesNothing(Limited):
    """The same where its id says everything: whatever was pressed, it is made anew."""

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return what was pressed or used."""
        return cls()
