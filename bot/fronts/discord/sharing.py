"""A private answer made public: shared in the channel, or given to the one it is about."""

import re
from collections.abc import Iterable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING, Any, Self

import discord

from bot.facts import Say
from bot.fronts.discord.forms import EditButton
from bot.fronts.discord.labels import label
from bot.fronts.discord.limits import CarriesNothing, Limited
from bot.fronts.discord.parts import closed
from bot.fronts.discord.public import attached_to, post_once, refused_post
from bot.fronts.discord.question import command_in
from bot.fronts.discord.said import AskedBy, said
from bot.fronts.discord.seen import Row, custom_ids, seen
from bot.fronts.discord.sending import Message, edit_in_place, guarded, tell
from bot.preferences import FIRST

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["ReplyButton", "ShareButton", "Target", "target_of", "without"]

_SHARE = "share"
_REPLY = re.compile(r"r:(?P<author>\d{1,19}):(?P<message>\d{1,19})")


@dataclass(frozen=True, slots=True)
class Target:
    """Somebody's message that an answer is about."""

    author_id: int
    message_id: int


class ShareButton(CarriesNothing, discord.ui.DynamicItem[discord.ui.Button[Any]], template=_SHARE):
    """Posts a private answer in the channel, exactly as it was seen."""

    def __init__(self, language: str = FIRST) -> None:
        told = label(Say("button-share"), language)
        super().__init__(discord.ui.Button(label=told, custom_id=_SHARE, row=1))

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Post the answer, once."""
        async with guarded(interaction, "sharing an answer"):
            asked = AskedBy(interaction.user.mention)
            await _post(interaction, await said(interaction, Say("front-asked", asked)))


class ReplyButton(Limited, discord.ui.DynamicItem[discord.ui.Button[Any]], template=_REPLY):
    """Posts a private answer for the writer of the message it is about, who alone is pinged.

    It cannot be pressed under an answer that failed, but it is there: it remembers the message
    until the question is put right.
    """

    def __init__(self, about: Target, *, ready: bool = True, language: str = FIRST) -> None:
        button: discord.ui.Button[Any] = discord.ui.Button(
            label=label(Say("button-reply"), language),
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
            asked = AskedBy(interaction.user.mention, f"<@{writer}>", link)
            words = await said(interaction, Say("front-asked-about", asked))
            await _post(interaction, words, writer)


def target_of(message: discord.Message | None) -> Target | None:
    """Return whose message an answer is about, told by its reply button."""
    for custom_id in custom_ids(seen(message).rows) if message is not None else ():
        match = _REPLY.fullmatch(custom_id)
        if match:
            return _target(match)
    return None


def _target(match: re.Match[str]) -> Target:
    return Target(int(match["author"]), int(match["message"]))


async def _post(
    interaction: discord.Interaction["Noonstone"], words: str, writer: int | None = None
) -> None:
    """Take the button away, so that it is pressed once, then post the brief that was seen."""
    client, message = interaction.client, interaction.message
    assert message is not None
    there = seen(message)
    if not client.shares.wait(message.id):
        why = await refused_post(interaction, command_in(there.asked), int(writer is not None))
        if why is not None:
            await tell(interaction, why)
            return
    kept = without(there.rows, ShareButton, ReplyButton)
    # A picture or a file stands beside plain text, and would be lost in a card.
    card = not message.attachments
    changed = Message(
        there.words, there.post, kept, card=card, colour=there.colour, drawn=there.drawn
    )
    await edit_in_place(interaction, changed)
    if client.shares.take(message.id):
        # Pressed twice before the button was gone.
        return
    pings = discord.AllowedMentions.none()
    if writer is not None:
        pings = client.pings.of(interaction.user.id, writer)
    shown = replace(there.post, part="")
    language = (await client.preferences_of(interaction)).spoken
    rows = closed(without(kept, EditButton), language)
    attached = await attached_to(interaction)
    await post_once(interaction, Message(words, shown, rows, attached, pings=pings))


def without(rows: Iterable[Row], *kinds: type[discord.ui.DynamicItem[Any]]) -> tuple[Row, ...]:
    """Return the rows but for some kinds of buttons."""
    patterns = [kind.__discord_ui_compiled_template__ for kind in kinds]

    def stays(part: Row) -> bool:
        custom_id = part.get("custom_id") or ""
        return not any(pattern.fullmatch(custom_id) for pattern in patterns)

    kept = ({**row, "components": [*filter(stays, row["components"])]} for row in rows)
    return tuple(row for row in kept if row["components"])
