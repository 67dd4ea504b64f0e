"""The picture of an answer: drawn when somebody asks for it, with its words for those who listen.

The answer stands without it, so whatever goes wrong here costs only the picture.
"""

import re
from typing import TYPE_CHECKING, Any, Self

import discord

from bot.facts import Say
from bot.fronts.discord.carried import carried
from bot.fronts.discord.labels import label
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.public import kept_private, post_once, refused_post
from bot.fronts.discord.question import Question
from bot.fronts.discord.said import said
from bot.fronts.discord.seen import seen
from bot.fronts.discord.sending import (
    Attached,
    Message,
    edit_in_place,
    guarded,
    in_direct_messages,
    send,
    tell,
    think,
)
from bot.language.quantities import Units
from bot.preferences import FIRST
from bot.render.escaping import escape
from bot.serving.studio import Missing

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["PictureButton"]

_LABELS = {
    "see": Say("button-picture"),
    "sheet": Say("button-sheet"),
    "share": Say("button-share"),
    "hand": Say("button-share"),
}
# What each button draws, and which button shares it.
_SHEETS, _SHARED = frozenset(("sheet", "hand")), {"see": "share", "sheet": "hand"}


class PictureButton(
    Limited,
    discord.ui.DynamicItem[discord.ui.Button[Any]],
    template=r"p:(?P<how>see|sheet|share|hand):(?P<units>in|cm):(?P<asked>.+)",
):
    """Draws the picture or the care sheet for the presser, or, under it, for the channel."""

    def __init__(self, how: str, units: Units, custom_id: str, language: str = FIRST) -> None:
        told = label(_LABELS[how], language)
        # The picture stands first, its care sheet where there is room.
        row = None if how == "sheet" else 0
        super().__init__(discord.ui.Button(label=told, custom_id=custom_id, row=row))
        self.how = how
        self.units = units

    @classmethod
    def of(cls, question: Question, units: Units, language: str, how: str = "see") -> Self:
        """Return the button for a question's picture with ``units`` first."""
        return cls(how, units, question.custom_id(f"p:{how}:{units.value}:"), language)

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(match["how"], Units(match["units"]), match[0])

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Say that it is being drawn, draw it, send it."""
        async with guarded(interaction, "showing a picture"):
            question = await carried(interaction, self)
            if question is None:
                return
            alone = in_direct_messages(interaction)
            shared = self.how not in _SHARED
            if shared and interaction.message is not None:
                pressed = interaction.client.shares.wait(interaction.message.id)
                why = None if pressed else await refused_post(interaction, question.command)
                if why is not None:
                    await tell(interaction, why)
                    return
            may_share = await kept_private(interaction) is None
            if shared:
                await edit_in_place(interaction, _without_button(interaction))
            else:
                await think(interaction, private=not alone)
            share = may_share and not (shared or alone)
            picture = await _drawn(interaction, question, self, share=share)
            if shared and picture.attached and interaction.message is not None:
                if not interaction.client.shares.take(interaction.message.id):
                    await post_once(interaction, picture)
            else:
                await send(interaction, picture, private=not alone)


def _without_button(interaction: discord.Interaction[Any]) -> Message:
    """Return the pressed message with no button, so that it is shared once."""
    assert interaction.message is not None
    there = seen(interaction.message)
    return Message(there.words, there.post, colour=there.colour)


async def _drawn(
    interaction: discord.Interaction["Noonstone"],
    question: Question,
    pressed: PictureButton,
    *,
    share: bool,
) -> Message:
    """Return the picture as a message, or a sentence why there is none."""
    client, units = interaction.client, pressed.units
    reply = question.answered(await client.preferences_of(interaction, units))
    is_sheet = pressed.how in _SHEETS
    picture = reply.sheet if is_sheet else reply.picture
    if client.studio is None or picture is None or picture.drawing is None:
        return Message(await said(interaction, Say("front-no-picture")))
    png = await client.studio.png(picture.drawing)
    outcome = png.name.lower() if isinstance(png, Missing) else "ready"
    client.metrics.pictures.labels(outcome).inc()
    if isinstance(png, Missing):
        return Message(await said(interaction, Say.by("front-picture", png)))
    view = discord.ui.View(timeout=None)
    button = PictureButton.of(question, units, reply.around, _SHARED.get(pressed.how, "share"))
    if share and not button.custom_id.endswith(":?"):
        view.add_item(button)
    name = f"{reply.command}{'-sheet' if is_sheet else ''}.png"
    return Message(
        escape(reply.title),
        attached=(Attached(name, png, picture.alt),),
        rows=view.to_components(),
    )
