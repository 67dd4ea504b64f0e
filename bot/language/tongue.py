"""In which language a text is written, by its small words: English, German, or not to be told."""

import re
from enum import StrEnum
from functools import cache, lru_cache

from calc.tables import read_table

__all__ = ["Tongue", "tongue_of"]


class Tongue(StrEnum):
    """A language that people write here; the value is its code in ISO 639-1."""

    ENGLISH = "en"
    GERMAN = "de"


# Letters that only German has of the two.
_LETTERS = re.compile(r"[äöüßÄÖÜẞ]")
_WORD = re.compile(r"[^\W\d_]+")
_SHORTEST_END = 4


@cache
def _listed(name: str) -> frozenset[str]:
    return frozenset(read_table("bot/language/tongue.toml")[name].split())


@lru_cache(maxsize=20_000)
def _is_german(word: str) -> bool:
    if word in _listed("german") or _LETTERS.search(word):
        return True
    return any(
        word[at:] in _listed("german_ends") for at in range(1, len(word) - _SHORTEST_END + 1)
    )


def tongue_of(text: str) -> Tongue | None:
    """Return the language of a text, or None where its small words do not tell.

    >>> tongue_of("die Lampe ist zu nah"), tongue_of("is the lamp too near"), tongue_of("12% 30cm")
    (<Tongue.GERMAN: 'de'>, <Tongue.ENGLISH: 'en'>, None)
    """
    words = _WORD.findall(text.lower())
    german = sum(map(_is_german, words))
    english = sum(word in _listed("english") for word in words)
    if german == english:
        return None
    return Tongue.GERMAN if german > english else Tongue.ENGLISH
