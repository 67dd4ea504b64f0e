"""What everybody in a channel sees: who may change it, whom it pings, and that it comes once."""

import logging
import re
from dataclasses import replace
from math import ceil
from typing import TYPE_CHECKING, Any, Final
from urllib.parse import urlsplit

import aiohttp
import discord

from bot.facts import Say
from bot.fronts.discord.rights import asker_of, is_moderator, roles_of
from bot.fronts.discord.said import TryAgain, asked_for, said
from bot.fronts.discord.seen import pictures_in, seen
from bot.fronts.discord.sending import Attached, Message, is_own, sent, tell
from bot.saved.group import Shown
from bot.saved.public import Reached
from bot.serving.allowance import Allowance

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = [
    "Pings",
    "addressed",
    "attached_to",
    "kept_private",
    "may_change",
    "named_in",
    "post_once",
    "refused_post",
    "too_many",
]

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


async def kept_private(interaction: _Any) -> Say | None:
    """Return why the presser shows nothing to others here; None where that is allowed."""
    client: Noonstone = interaction.client
    memory, asker = client.memory, asker_of(interaction)
    if memory is None:
        return None
    if await memory.shown(asker) is Shown.PRIVATE:
        return Say("front-stays-private")
    allowed = await memory.public(asker)
    if allowed.has(roles_of(interaction), moderator=is_moderator(interaction)):
        return None
    return Say.by("front-public", allowed.who)


async def refused_post(interaction: _Any, command: str, pings: int = 0) -> Say | None:
    """Note a public post of the presser's; where there may be none, return why, and note none."""
    client: Noonstone = interaction.client
    memory, asker = client.memory, asker_of(interaction)
    why = await kept_private(interaction)
    if why is not None or memory is None:
        return why
    most = (await memory.public(asker)).most
    return too_many(await memory.note_post(asker, command, pings, most))


async def addressed(
    interaction: _Any, message: Message, member: int, told_alone: Say | None
) -> Message:
    """Return an answer with the words for whom it is, or why it stays with the asker alone."""
    if told_alone is not None:
        return replace(message, words=await said(interaction, told_alone))
    pings = interaction.client.pings.of(interaction.user.id, member)
    return replace(message, words=await asked_for(interaction, member), pings=pings)


def too_many(reached: Reached | None) -> Say | None:
    """Return that a share of public posts is used up, and until when."""
    if reached is None:
        return None
    when = TryAgain(f"<t:{ceil(reached.again_at.timestamp())}:R>")
    return Say.by("front-public", reached.share, when)


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


async def attached_to(interaction: _Any) -> list[Attached]:
    """Return the pictures of the pressed message, to be sent again, without what is gone."""
    message = interaction.message
    assert message is not None
    there = [(one.url, one.filename, one.description) for one in message.attachments]
    for item in pictures_in(message):
        url = item.media.url
        there.append((url, urlsplit(url).path.rpartition("/")[2], item.description))
    found = []
    for url, name, words in there:
        try:
            content = await interaction.client.http.get_from_cdn(url)
            found.append(Attached(name, content, words or ""))
        except (discord.DiscordException, aiohttp.ClientError) as error:
            _log.warning("a picture could not be shared: %s", type(error).__name__)
    return found
