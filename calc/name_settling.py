"""What is left of the names found in a text: one animal under two words is one, food is none."""

from collections.abc import Sequence
from dataclasses import replace

from calc.name_index import (
    Found,
    Known,
    Named,
    Several,
    Unplaced,
    WithoutTargets,
    folded,
    index,
    words_around,
)

__all__ = ["is_bystander", "settled"]


def is_bystander(what: Named) -> bool:
    """Say whether nobody asks for a lamp for this: what is fed, and who lives in the house."""
    return isinstance(what, WithoutTargets) and what.family in words_around().bystanders


def settled(text: str, found: Sequence[Found]) -> tuple[Found, ...]:
    """Return what was found, a kind of a named animal with it, food and pets left out."""
    joined: list[Found] = []
    for one in found:
        last = joined[-1] if joined else None
        if last and _makes_one(last, one) and not text[last.end : one.start].strip(" -"):
            whole = Found(last.what, last.start, one.end, last.slip)
            if not (isinstance(one.what, Several) and _is_of_kind(last, one.what.word, text)):
                whole = replace(whole, what=Unplaced(text[last.start : one.end]))
            joined[-1] = whole
        else:
            joined.append(one)
    sure = [one for one in joined if not isinstance(one.what, Several)]
    kept = [
        one
        for one in joined
        if not isinstance(one.what, Several)
        or not any(_is_of_kind(other, one.what.word, text) for other in sure)
    ]
    return _without_bystanders(text, kept)


def _makes_one(last: Found, one: Found) -> bool:
    """Say whether two names side by side are one: ball python snake, crocodile skink."""
    return isinstance(one.what, Several) or (
        isinstance(last.what, WithoutTargets) and isinstance(one.what, Known)
    )


def _is_of_kind(one: Found, word: str, text: str) -> bool:
    """Say whether an animal may be called by this word for a kind: a corn snake the snake."""
    kinds = words_around().kinds.get(folded(word), (folded(word),))
    if "*" in kinds or (isinstance(one.what, Known) and _is_among(one.what, word)):
        return True
    names = [text[one.start : one.end]]
    if isinstance(one.what, Known | WithoutTargets):
        names.append(one.what.name)
    if isinstance(one.what, Several):
        names.append(one.what.word)
    ends = [folded(name.split()[-1].rpartition("-")[2]) for name in names if name.strip()]
    return any(end.removesuffix("s").endswith(kinds) for end in ends)


def _is_among(known: Known, word: str) -> bool:
    entry = index().get(folded(word))
    several = entry.what if entry else None
    return isinstance(several, Several) and any(
        known.slug == candidate.slug for candidate in several.candidates
    )


def _without_bystanders(text: str, found: Sequence[Found]) -> tuple[Found, ...]:
    """Leave out food and pets, unless they are all that is named and asked for."""
    others = [one for one in found if not is_bystander(one.what)]
    if others or not found:
        return tuple(others)
    kept = []
    for one in found:
        before = text[: one.start].lower().split()[-2:]
        if "for" in before or (not before and not text[one.end :].strip(" \n?.!,")):
            kept.append(one)
    return tuple(kept)
