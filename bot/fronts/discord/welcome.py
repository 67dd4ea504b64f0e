"""The buttons of a welcome board: each opens a form, for whoever presses it alone.

Their ids name a purpose and no question, so that an earlier board leads where a later version asks.
"""

import re
from typing import Any, Final, Self

import discord

from bot.facts import Say
from bot.fronts.discord.forms import open_form
from bot.fronts.discord.labels import label
from bot.fronts.discord.limits import Limited
from bot.fronts.discord.question import Question
from bot.fronts.discord.sending import guarded
from bot.preferences import FIRST

__all__ = ["WelcomeButton", "welcome_buttons"]

_ASKS: Final = {"animal": "plan", "check": "check", "reading": "meter", "wrong": "ask"}


class WelcomeButton(
    Limited,
    discord.ui.DynamicItem[discord.ui.Button[Any]],
    template=r"welcome:(?P<wish>animal|check|reading|wrong)",
):
    """Opens the form of what somebody wants; the answer is the presser's alone."""

    def __init__(self, wish: str, language: str = FIRST) -> None:
        told = label(Say.of("button", "welcome", wish), language)
        super().__init__(discord.ui.Button(label=told, custom_id=f"welcome:{wish}", row=0))
        self.wish = wish

    @classmethod
    async def from_custom_id(
        cls, interaction: discord.Interaction[Any], item: Any, match: re.Match[str], /
    ) -> Self:
        """Return the pressed button."""
        return cls(match["wish"])

    async def callback(self, interaction: discord.Interaction[Any]) -> None:
        """Open the form."""
        async with guarded(interaction, "opening a form"):
            await open_form(interaction, Question(_ASKS[self.wish], {}))


def welcome_buttons(language: str) -> tuple[WelcomeButton, ...]:
    """Return the buttons in a language."""
    return tuple(WelcomeButton(wish, language) for wish in _ASKS)
