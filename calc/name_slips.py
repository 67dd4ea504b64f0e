"""Typing slips in the words of names: the words that may have been meant, one letter off."""

from functools import cache, lru_cache

from calc.name_index import name_rows, word_index, words_around

__all__ = ["meant"]

# Shorter words are too like each other.
_SHORTEST_SLIP = 6
_LONGEST_SLIP = 24


@lru_cache(maxsize=4096)
def meant(word: str) -> tuple[str, ...]:
    """Return the words of names that this one may have been meant to be, else itself."""
    around = words_around()
    if word in word_index()[1] or word in around.in_front or word in around.no_slips:
        return (word,)
    if word in around.misspelt:
        return (around.misspelt[word],)
    if not _SHORTEST_SLIP <= len(word) <= _LONGEST_SLIP:
        return (word,)
    from rapidfuzz import process
    from rapidfuzz.distance import OSA

    words = _by_first().get(word[0], ())
    near = process.extract(word, words, scorer=OSA.distance, score_cutoff=1, limit=None)
    return tuple(other for other, _, _ in near) or (word,)


@cache
def _by_first() -> dict[str, tuple[str, ...]]:
    """Return the words of names as they are listed, and with an s, by their first letter.

    No other plural is likely: so "grapes" is no "gtpes", many green tree pythons.
    """
    listed = {word for words, _, _ in name_rows() for word in words}
    long = {word for word in listed if len(word) >= _SHORTEST_SLIP - 1}
    rows: dict[str, list[str]] = {}
    for word in sorted(long | {f"{word}s" for word in long}):
        rows.setdefault(word[0], []).append(word)
    return {first: tuple(words) for first, words in rows.items()}
