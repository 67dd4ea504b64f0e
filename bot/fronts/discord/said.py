"""Our own sentences around an answer, in the language of whoever reads them."""

from dataclasses import dataclass
from typing import Any

import discord

from bot.facts import Say
from bot.language.units import Units
from bot.preferences import FIRST
from bot.saying.voice import voice

__all__ = ["AskedBy", "Failure", "FormOf", "TryAgain", "asked_for", "said", "said_in"]


@dataclass(frozen=True, slots=True)
class Failure:
    """What went wrong, by the number under which it stands in the log."""

    number: str


@dataclass(frozen=True, slots=True)
class TryAgain:
    """When to try again, as Discord shows it."""

    when: str


@dataclass(frozen=True, slots=True)
class AskedBy:
    """Who asked, for whom and about which message, as Discord shows them."""

    asker: str
    reader: str = ""
    link: str = ""


@dataclass(frozen=True, slots=True)
class FormOf:
    """The question of a form, as it is typed."""

    command: str


def said_in(language: str, say: Say) -> str:
    """Return a sentence in a language."""
    return voice(language, Units.CM).text(say)


async def asked_for(interaction: discord.Interaction[Any], member: int) -> str:
    """Return for whom an answer is, and who asked."""
    asked = AskedBy(interaction.user.mention, f"<@{member}>")
    return await said(interaction, Say("front-asked-for", asked))


async def said(interaction: discord.Interaction[Any], say: Say) -> str:
    """Return a sentence in the asker's language; in English where that cannot be known."""
    try:
        language = (await interaction.client.preferences_of(interaction)).spoken
    except Exception:
        language = FIRST
    return said_in(language, say)
