"""Typing slips in single words: the known word that was meant, where only one letter is off."""

from functools import cache
from typing import NamedTuple

from bot.language.hearing.word_lists import word_list

__all__ = ["Spelt", "corrected"]

# Shorter words are too like each other: cool and cold, warm and worm, log and lag.
_SHORTEST = 5
_LONG = 9
_LONGEST = 24


class Spelt(NamedTuple):
    """A word as it was meant, and whether it was spelt otherwise."""

    word: str
    slip: bool


def corrected(word: str, known: frozenset[str], also: frozenset[str] = frozenset()) -> Spelt:
    """Return the known word that ``word`` was meant to be, or the word itself."""
    if not _SHORTEST <= len(word) <= _LONGEST or not word.isalpha():
        return Spelt(word, False)
    if word in known or word in also or word in word_list("right"):
        return Spelt(word, False)
    near = _by_ends(known).get((word[0], word[-1]))
    found = _nearest(word, near, 2 if len(word) >= _LONG else 1) if near else None
    return Spelt(found, True) if found else Spelt(word, False)


def _nearest(word: str, near: tuple[str, ...], most: int) -> str | None:
    """Return the word that is at most so many slips away, the nearest one."""
    from rapidfuzz import process
    from rapidfuzz.distance import OSA

    found = process.extractOne(word, near, scorer=OSA.distance, score_cutoff=most)
    return str(found[0]) if found else None


@cache
def _by_ends(known: frozenset[str]) -> dict[tuple[str, str], tuple[str, ...]]:
    """Return the words by their first and last letter.

    Slips are made inside a word. Another first letter makes another word (night and light), and
    so does another ending (replace and replaced, slide and slider).
    """
    ends: dict[tuple[str, str], list[str]] = {}
    for word in sorted(known):
        if len(word.removesuffix("s")) >= _SHORTEST and word.isalpha():
            ends.setdefault((word[0], word[-1]), []).append(word)
    return {pair: tuple(words) for pair, words in ends.items()}
