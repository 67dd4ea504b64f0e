"""Misspelt names: the known one that was probably meant."""

from collections.abc import Iterable

__all__ = ["closest", "ranked"]

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


def ranked(typed: str, known: Iterable[str], most: int) -> list[str]:
    """Return the known names that could complete what is typed, the likeliest first.

    >>> ranked("drag", ["corn snake", "bearded dragon"], 25)
    ['bearded dragon']
    """
    from rapidfuzz import fuzz, process, utils

    names = list(known)
    wish = typed.strip().lower()[:_LONGEST]
    if not wish:
        return names[:most]
    starting = [name for name in names if name.lower().startswith(wish)]
    within = [name for name in names if wish in name.lower() and name not in starting]
    near = process.extract(
        wish,
        [name for name in names if name not in starting and name not in within],
        scorer=fuzz.partial_ratio,
        processor=utils.default_process,
        score_cutoff=_ALIKE,
        limit=most,
    )
    return [*starting, *within, *(str(name) for name, _, _ in near)][:most]
