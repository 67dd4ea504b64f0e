"""What everybody in a channel sees: who may change it, whom it pings, and that it comes once."""

import logging
import re
from typing import Any, Final

import aiohttp
import discord

from bot.facts import Say
from bot.fronts.discord.seen import seen
from bot.fronts.discord.sending import Attached, Message, is_own, sent, tell
from bot.saved.group import Shown
from bot.serving.allowance import Allowance

__all__ = ["Pings", "attached_to", "may_change", "named_in", "post_once"]

_log = logging.getLogger(__name__)

# How our own words above an answer begin: for whom it is, where it is for somebody, and who asked.
_ASKED: Final = re.compile(r"(?:<@(?P<writer>\d+)>, )?<@(?P<asker>\d+)>")
_LOOKED_AT: Final = 50

_Any = discord.Interaction[Any]


class Pings:
    """Who was pinged for whom: one member at most once a minute from one asker."""

    def __init__(self) -> None:
        self._once = Allowance(1)

    def of(self, asker: int, member: int) -> discord.AllowedMentions:
        """Return whom a message pings: the member, or nobody where it is too soon."""
        told = [] if self._once.take((asker, member)) else [discord.Object(member)]
        return discord.AllowedMentions(everyone=False, users=told, roles=False, replied_user=False)


def may_change(interaction: _Any, shown: Shown | None) -> bool:
    """Say whether the presser may change the pressed message.

    One that only the presser sees; of those that everybody sees, an answer to the presser: to who
    asked, and to the one for whom it was asked.
    """
    return is_own(interaction) or (shown is not Shown.PRIVATE and _is_answered(interaction))


def _is_answered(interaction: _Any) -> bool:
    message = interaction.message
    if message is None:
        return False
    asked = message.interaction_metadata
    theirs = {asked.user.id} if asked is not None else set()
    named = named_in(message)
    if named:
        theirs |= {number for number in named if number}
    return interaction.user.id in theirs


def named_in(message: discord.Message) -> tuple[int, int] | None:
    """Return for whom a message is, 0 for nobody, and who asked, as our words above it say."""
    found = _ASKED.match(seen(message).words)
    return (int(found["writer"] or 0), int(found["asker"])) if found else None


async def post_once(interaction: _Any, message: Message) -> None:
    """Post a further message for everybody, once even where Discord's answer to it is lost."""
    try:
        await sent(interaction, message, private=False)
    except aiohttp.ClientConnectionError:
        _log.info("the connection was lost while posting; looking whether it is there")
        there = await _is_there(interaction)
        if there is None:
            await tell(interaction, Say("front-unsure-posted"))
        elif not there:
            await sent(interaction, message, private=False)


async def _is_there(interaction: _Any) -> bool | None:
    """Say whether a message of this interaction is in the channel; None where I may not look."""
    channel = interaction.client.get_partial_messageable(interaction.channel_id)
    try:
        async for message in channel.history(limit=_LOOKED_AT):
            asked = message.interaction_metadata
            if asked is not None and asked.id == interaction.id:
                return True
    except (discord.HTTPException, aiohttp.ClientError):
        return None
    return False


async def attached_to(message: discord.Message) -> list[Attached]:
    """Return the pictures of a message, to be sent again; what cannot be read is left out."""
    found = []
    for one in message.attachments:
        try:
            found.append(Attached(one.filename, await one.read(), one.description or ""))
        except (discord.DiscordException, aiohttp.ClientError) as error:
            _log.warning("a picture could not be shared: %s", type(error).__name__)
    return found
