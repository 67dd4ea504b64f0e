"""Plain lists of words, kept as data beside the lexicon."""

from functools import cache

from calc.tables import read_table

__all__ = ["word_list"]


@cache
def word_list(name: str) -> frozenset[str]:
    """Return the words of a list."""
    return frozenset(read_table("bot/language/hearing/word_lists.toml")[name].split())
