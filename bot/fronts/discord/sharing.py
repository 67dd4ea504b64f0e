"""A private answer made public: shared in the channel, or given to the one it is about."""

import re
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Self

import discord

from bot.fronts.discord.forms import EditButton
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.public import STAYS_PRIVATE, attached_to, post_once
from bot.fronts.discord.sending import Message, edit_in_place, guarded, send

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["ReplyButton", "ShareButton", "Target", "target_of"]

_SHARE = "share"
_REPLY = re.compile(r"r:(?P<author>\d{1,19}):(?P<message>\d{1,19})")


@dataclass(frozen=True, slots=True)
class Target:
    """Somebody's message that an answer is about."""

    author_id: int
    message_id: int


class ShareButton(Limited, discord.ui.DynamicItem[discord.ui.Button[Any]], template=_SHARE):
    """Posts a private answer in the channel, exactly as it was seen."""

    def __init__(self) -> None:
        super().__init__(discord.ui.Button(label="Share", custom_id=_SHARE, row=1))

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls()

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Post the answer, once."""
        async with guarded(interaction, "sharing an answer"):
            await _post(interaction, f"{interaction.user.mention} asked:")


class ReplyButton(Limited, discord.ui.DynamicItem[discord.ui.Button[Any]], template=_REPLY):
    """Posts a private answer for the writer of the message it is about, who alone is pinged.

    It cannot be pressed under an answer that failed, but it is there: it remembers the message
    until the question is put right.
    """

    def __init__(self, about: Target, *, ready: bool = True) -> None:
        button: discord.ui.Button[Any] = discord.ui.Button(
            label="Reply in the channel",
            custom_id=f"r:{about.author_id}:{about.message_id}",
            disabled=not ready,
            row=1,
        )
        super().__init__(button)
        self.about = about

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(_target(match))

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Post the answer, once, with a link to the message."""
        async with guarded(interaction, "replying in the channel"):
            place = interaction.guild_id or "@me"
            link = f"https://discord.com/channels/{place}/{interaction.channel_id}/{self.about.message_id}"
            writer = self.about.author_id
            words = f"<@{writer}>, {interaction.user.mention} asked me about {link}:"
            await _post(interaction, words, writer)


def target_of(message: discord.Message | None) -> Target | None:
    """Return whose message an answer is about, told by its reply button."""
    rows = message.components if message is not None else []
    for row in rows:
        for part in getattr(row, "children", []):
            match = _REPLY.fullmatch(getattr(part, "custom_id", None) or "")
            if match:
                return _target(match)
    return None


def _target(match: re.Match[str]) -> Target:
    return Target(int(match["author"]), int(match["message"]))


async def _post(
    interaction: discord.Interaction["Noonstone"], words: str, writer: int | None = None
) -> None:
    """Take the button away, so that it is pressed once, then post what the presser sees."""
    client, seen = interaction.client, interaction.message
    assert seen is not None
    if not await client.may_share(interaction):
        await send(interaction, Message(STAYS_PRIVATE), private=True)
        return
    kept = _without(seen, ShareButton, ReplyButton)
    await edit_in_place(interaction, Message(seen.content, seen.embeds, view=kept))
    if client.shares.take(seen.id):
        # Pressed twice before the button was gone.
        return
    public = _without(seen, ShareButton, ReplyButton, EditButton)
    pings = discord.AllowedMentions.none()
    if writer is not None:
        pings = client.pings.of(interaction.user.id, writer)
    attached = await attached_to(seen)
    await post_once(interaction, Message(words, seen.embeds, attached, public, pings))


def _without(
    message: discord.Message, *kinds: type[discord.ui.DynamicItem[Any]]
) -> discord.ui.View:
    """Return the message's buttons but for some kinds."""
    view = discord.ui.View.from_message(message, timeout=None)
    patterns = [kind.__discord_ui_compiled_template__ for kind in kinds]
    for item in list(view.children):
        custom_id = getattr(item, "custom_id", None) or ""
        if any(pattern.fullmatch(custom_id) for pattern in patterns):
            view.remove_item(item)
    return view
