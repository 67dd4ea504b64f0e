"""Misspelt names: the known one that was probably meant."""

from collections.abc import Iterable

__all__ = ["closest"]

_LONGEST = 64
# Below this share of equal letters a suggestion is a guess; found by trying typing slips.
_ALIKE = 68.0


def closest(word: str, known: Iterable[str]) -> str | None:
    """Return the known name most like ``word``, or None where none is near.

    >>> closest("bearded dargon", ["bearded dragon", "corn snake"])
    'bearded dragon'
    """
    from rapidfuzz import fuzz, process, utils

    if len(word) > _LONGEST:
        return None
    found = process.extractOne(
        word,
        list(known),
        scorer=fuzz.ratio,
        processor=utils.default_process,
        score_cutoff=_ALIKE,
    )
    return str(found[0]) if found else None
