"""The buttons that open one part of an answer under its brief, and close it again.

Who may not change the message, because everybody sees it, gets the brief and the part alone.
"""

import re
from collections.abc import Iterable
from typing import TYPE_CHECKING, Any, Self

import discord

from bot.brief import held_back
from bot.facts import Say
from bot.fronts.discord.carried import carried
from bot.fronts.discord.labels import label
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.question import Question
from bot.fronts.discord.seen import Row
from bot.fronts.discord.sending import guarded, is_own, tell
from bot.language.quantities import Units
from bot.reply import Part, PartName, Reply

if TYPE_CHECKING:
    from bot.fronts.discord.client import Noonstone

__all__ = ["PartButton", "parts_behind_buttons"]

_NONE = "-"
_SECOND_ROW = (PartName.CARE, PartName.NUMBERS, PartName.SOURCES)
_ORDER = (PartName.WHY, PartName.STEPS, *_SECOND_ROW)


class PartButton(
    Limited,
    discord.ui.DynamicItem[discord.ui.Button[Any]],
    template=r"o:(?P<close>x?)(?P<part>[a-z]{1,12}):(?P<units>in|cm|-):(?P<asked>.+)",
):
    """Opens a part of an answer in its message, or closes the one that is open."""

    def __init__(
        self, part: str, units: Units | None, custom_id: str, *, is_open: bool, told: str = ""
    ) -> None:
        button: discord.ui.Button[Any] = discord.ui.Button(
            label=told or part,
            style=discord.ButtonStyle.primary if is_open else discord.ButtonStyle.secondary,
            custom_id=custom_id,
            row=1 if part in _SECOND_ROW else 0,
        )
        super().__init__(button)
        self.part = part
        self.units = units
        self.is_open = is_open

    @classmethod
    def of(
        cls, question: Question, part: Part, units: Units | None, language: str, *, is_open: bool
    ) -> Self:
        """Return the button for a part of a question's answer with ``units`` first."""
        how = "x" if is_open else ""
        first = units.value if units else _NONE
        custom_id = question.custom_id(f"o:{how}{part.name}:{first}:")
        told = label(Say.of("button-hide", part.name), language) if is_open else part.label
        return cls(part.name, units, custom_id, is_open=is_open, told=told)

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        units = None if match["units"] == _NONE else Units(match["units"])
        return cls(match["part"], units, match[0], is_open=bool(match["close"]))

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Show the answer with the part open, or without it."""
        async with guarded(interaction, "opening a part"):
            question = await carried(interaction, self)
            if question is None:
                return
            if self.part not in set(PartName):
                await tell(interaction, Say("front-ask-again"))
                return
            client: Noonstone = interaction.client
            await client.answer(
                interaction,
                question,
                first=self.units,
                in_place=is_own(interaction),
                part=None if self.is_open else PartName(self.part),
            )


def closed(rows: Iterable[Row], language: str) -> tuple[Row, ...]:
    """Return the rows with no part open."""
    return tuple(
        {**row, "components": [_closed(part, language) for part in row["components"]]}
        for row in rows
    )


def _closed(part: Row, language: str) -> Row:
    custom_id: str = part.get("custom_id") or ""
    match = PartButton.__discord_ui_compiled_template__.fullmatch(custom_id)
    if match is None or not match["close"] or match["part"] not in set(PartName):
        return part
    told = label(Say.of("part", PartName(match["part"])), language)
    style = discord.ButtonStyle.secondary.value
    return {**part, "custom_id": custom_id.replace("o:x", "o:", 1), "label": told, "style": style}


def parts_behind_buttons(reply: Reply, *, pages_shown: bool) -> list[Part]:
    """Return the parts that a button opens; pages that have buttons of their own need none."""
    held = list(held_back(reply))
    if pages_shown and not reply.sources and PartName.SOURCES in held:
        held.remove(PartName.SOURCES)
    named = {part.name: part for part in reply.parts}
    return [named[name] for name in _ORDER if name in held]
