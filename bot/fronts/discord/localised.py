"""The descriptions in Discord's menu in every language; names stay as they are typed."""

from typing import Any, Final

import discord
from discord import app_commands

from bot.facts import Say
from bot.language.choices import choice_said
from bot.language.units import Units
from bot.preferences import FIRST, OFFERED
from bot.saying.voice import voice

__all__ = ["Descriptions", "choice_in_menu", "chosen_label", "described", "in_menu"]

_SAY: Final = "say"


def described(say: Say, language: str = FIRST) -> str:
    """Return a description in a language."""
    return voice(language, Units.CM).text(say)


def in_menu(say: Say) -> app_commands.locale_str:
    """Return a description in English that knows how it is said in other languages."""
    return app_commands.locale_str(described(say), **{_SAY: say})


def chosen_label(choice: str, language: str) -> str:
    """Return what there is to choose, as a language has it."""
    said = choice_said(choice)
    return said if isinstance(said, str) else described(said, language)


def choice_in_menu(choice: str) -> app_commands.Choice[str]:
    """Return what there is to choose, said in every language and sent as it is typed."""
    said = choice_said(choice)
    return app_commands.Choice(name=said if isinstance(said, str) else in_menu(said), value=choice)


class Descriptions(app_commands.Translator):
    """Gives the tree the descriptions of every language that is offered."""

    async def translate(
        self,
        string: app_commands.locale_str,
        locale: discord.Locale,
        context: app_commands.TranslationContext[Any, Any],
    ) -> str | None:
        """Return a description in the language of a locale, or nothing: then it is English."""
        language = locale.value.partition("-")[0]
        if _SAY not in string.extras or language == FIRST or language not in OFFERED:
            return None
        return described(string.extras[_SAY], language)
