"""How often may be asked: a person and a server each have a share that refills steadily.

Commands and buttons count. What is offered while somebody types does not, nor does a form: the
button that opened it counted already, and what was filled in is never thrown away.
"""

import logging
import time
from collections.abc import Callable
from math import ceil
from typing import TYPE_CHECKING, Any, Final

import discord

from bot.fronts.discord.sending import Message, guarded, in_direct_messages, note_arrival, send
from bot.operating.allowance import Allowance, Claim, take_together

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["Limited", "Limits", "admitted"]

_log = logging.getLogger(__name__)

# Many times what anybody types, and an answer costs milliseconds.
_PERSON_PER_MINUTE: Final = 20
_SERVER_PER_MINUTE: Final = 240
_LEAVING: Final = "I am being restarted. Please ask again in a minute."


class Limits:
    """The shares of everybody who asks."""

    def __init__(
        self,
        person_per_minute: int = _PERSON_PER_MINUTE,
        server_per_minute: int = _SERVER_PER_MINUTE,
        clock: Callable[[], float] = time.monotonic,
    ) -> None:
        self._persons = Allowance(person_per_minute, clock)
        self._servers = Allowance(server_per_minute, clock)

    def take(self, person: int, server: int | None) -> float:
        """Take one question of both shares; return 0, or the seconds to wait."""
        claims: list[Claim] = [(self._persons, person)]
        if server is not None:
            claims.append((self._servers, server))
        return take_together(*claims)


async def admitted(interaction: discord.Interaction[Any]) -> bool:
    """Say whether this may go on; the one who must wait is told until when."""
    note_arrival(interaction)
    client: Noonstone = interaction.client
    if interaction.type is discord.InteractionType.autocomplete:
        return True
    words = _LEAVING if client.in_flight.leaving else _too_many(client.limits, interaction)
    if not words:
        return True
    async with guarded(interaction, "asking to wait"):
        await send(interaction, Message(words), private=not in_direct_messages(interaction))
    return False


def _too_many(limits: Limits | None, interaction: discord.Interaction[Any]) -> str:
    """Take a question of the asker's share; the words say until when to wait."""
    wait_s = limits.take(interaction.user.id, interaction.guild_id) if limits else 0.0
    if not wait_s:
        return ""
    _log.info("asked to wait %.0f s", wait_s)
    return f"Many questions came at once. Please try again <t:{ceil(time.time() + wait_s)}:R>."


class Limited:
    """What is pressed or picked, and counts."""

    async def interaction_check(self, interaction: discord.Interaction[Any], /) -> bool:
        """Let the press through, or ask to wait."""
        return await admitted(interaction)
