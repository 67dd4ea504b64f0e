"""Finds a page by what somebody worries about, in the words of any language, one slip forgiven."""

import re
from collections.abc import Mapping
from functools import cache
from importlib.resources import files
from types import MappingProxyType

from bot.guide.loader import FIRST, pages

__all__ = ["of_worry", "worries"]

_WORD = re.compile(r"[^\W_]+")
# A short word with one letter changed is another word.
_SHORTEST_SLIPPED = 4
_LONGEST = 200


@cache
def worries(language: str = FIRST) -> Mapping[str, str]:
    """Return the slug of the page for every worry of a language."""
    found = pages(language)
    return MappingProxyType({worry: page.slug for page in found for worry in page.worries})


def of_worry(wish: str) -> str | None:
    """Return the slug of the page whose worry is told, the one with the most letters of it.

    Each word of the worry is in the wish, in any order, with at most one slip in it.
    """
    told = _WORD.findall(wish.lower()[:_LONGEST])
    found = [
        (sum(map(len, words)), slug)
        for words, slug in _known()
        if all(any(_is_like(word, other) for other in told) for word in words)
    ]
    return max(found, key=lambda one: one[0])[1] if found else None


@cache
def _known() -> tuple[tuple[tuple[str, ...], str], ...]:
    folders = files("bot.guide").iterdir()
    others = (folder.name for folder in folders if (folder / "glossary.toml").is_file())
    return tuple(
        (tuple(_WORD.findall(worry)), slug)
        for language in (FIRST, *others)
        for worry, slug in worries(language).items()
    )


def _is_like(word: str, other: str) -> bool:
    from rapidfuzz.distance import OSA

    if word == other or min(len(word), len(other)) < _SHORTEST_SLIPPED:
        return word == other
    # Another first letter makes another word: cage and page.
    return word[0] == other[0] and OSA.distance(word, other, score_cutoff=1) <= 1
