"""Texts that only say what they are about, such as ``corn snake uvb?``: they tell of no hazard."""

import re
from functools import cache

from calc.naming import Unplaced, names_in
from calc.tables import read_table

__all__ = ["is_only_a_topic"]

_WORD = re.compile(r"[^\W_]+")
_MOST_WORDS = 12


def is_only_a_topic(text: str) -> bool:
    """Whether a text has nothing but names of animals and words for what is asked about.

    >>> is_only_a_topic("corn snake uvb?"), is_only_a_topic("corn snake uvb burnt")
    (True, False)
    >>> is_only_a_topic("the lamp is in the water")
    False
    """
    topics, phrases = _topics()
    text = phrases.sub(" ", text)
    words = _WORD.findall(text.lower())
    if len(words) > _MOST_WORDS:
        return False
    if all(word in topics for word in words):
        return bool(text.strip())
    rest = text
    for found in reversed(names_in(text)):
        if not isinstance(found.what, Unplaced):
            rest = f"{rest[: found.start]} {rest[found.end :]}"
    return rest != text and all(word in topics for word in _WORD.findall(rest.lower()))


@cache
def _topics() -> tuple[frozenset[str], re.Pattern[str]]:
    told = read_table("bot/dangers/topics.toml")
    phrases = re.compile(rf"\b(?:{'|'.join(told['phrases'])})\b", re.I)
    return frozenset(f"{told['en']} {told['de']}".split()), phrases
