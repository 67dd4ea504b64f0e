"""Plain lists of words, kept as data beside the lexicon."""

import tomllib
from functools import cache
from importlib.resources import files

__all__ = ["word_list"]


@cache
def word_list(name: str) -> frozenset[str]:
    """Return the words of a list."""
    text = (files("bot.language.hearing") / "word_lists.toml").read_text(encoding="utf-8")
    return frozenset(tomllib.loads(text)[name].split())
