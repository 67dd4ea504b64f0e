"""The descriptions in Discord's menu in other languages; names stay as they are typed."""

import tomllib
from collections.abc import Mapping
from functools import cache
from importlib.resources import files
from typing import Any, Final

import discord
from discord import app_commands

from bot.preferences import FIRST, OFFERED

__all__ = ["Descriptions", "menu_words"]

_Where = app_commands.TranslationContextLocation
_DESCRIBED: Final = frozenset(
    {_Where.command_description, _Where.group_description, _Where.parameter_description}
)


@cache
def menu_words(language: str) -> Mapping[str, str]:
    """Return the descriptions in a language by those in English."""
    path = files("bot.words") / language / "menu.toml"
    return tomllib.loads(path.read_text(encoding="utf-8")) if path.is_file() else {}


class Descriptions(app_commands.Translator):
    """Gives the tree the descriptions of every language that is offered and has them."""

    async def translate(
        self,
        string: app_commands.locale_str,
        locale: discord.Locale,
        context: app_commands.TranslationContext[Any, Any],
    ) -> str | None:
        """Return a description in the language of a locale, or nothing: then it is English."""
        language = locale.value.partition("-")[0]
        if context.location not in _DESCRIBED or language == FIRST or language not in OFFERED:
            return None
        return menu_words(language).get(string.message)
