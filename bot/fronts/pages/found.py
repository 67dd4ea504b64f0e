"""Looking words up in the search index: as typed, then with the nearest words that stand there.

The same is done by ``search.js`` where no server answers.
"""

import re
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from itertools import pairwise
from math import sqrt

from bot.fronts.pages.edition import Edition
from bot.fronts.pages.search import Entry, search_entries

__all__ = ["Found", "find", "folded"]

_MOST = 20
_WORTH = {"title": 6, "also": 5, "part": 3, "text": 1}
# How much a word counts as it stands, as the beginning of another, and within another: the last
# only from so many letters on.
_WHOLE, _BEGINS, _WITHIN, _LEAST_WITHIN = 4, 3, 1, 4
# From so many letters on one slip is forgiven, and from so many two.
_SLIP, _SLIPS = 4, 8
# Words of fewer letters tell nothing by themselves.
_TELLS = 3
# From so many words on they are a sentence, and no page need hold all of them.
_SENTENCE = 4
# An ending of so many letters is left off where what is left is a word.
_LONGEST_ENDING = 3
_WORD = re.compile(r"[^\W_]+")
_PIECE = 220


@dataclass(frozen=True, slots=True)
class Found:
    """An entry that was found, and the beginning of its text."""

    title: str
    part: str
    url: str
    text: str


@dataclass(frozen=True, slots=True)
class _Entry:
    entry: Entry
    told: dict[str, str]


def find(typed: str, edition: Edition) -> tuple[Found, ...]:
    """Return what holds every word that was typed, the best first.

    Where nothing does, each word that stands nowhere is taken as the nearest one that does. Where
    that finds nothing either, or a whole sentence was typed, what holds some of the words is
    returned: the rarest count most.
    """
    entries, known = _entries(edition), _known(edition)
    words = [_single(word, known) for word in _WORD.findall(folded(typed))[:12]]
    hits = _hits(words, entries) if len(words) < _SENTENCE else []
    if not hits and words:
        words = [_nearest(word, known) for word in words]
        hits = _hits(words, entries) if len(words) < _SENTENCE else []
        hits = hits or _some_hits(words, entries)
    return tuple(hits)


def folded(text: str) -> str:
    """Return words as they are compared: Röhre, roehre and rohre are one, and heiß and heiss."""
    written = re.sub("['’]", "", text.lower().replace("ß", "ss"))
    plain = unicodedata.normalize("NFD", written)
    bare = "".join(c for c in plain if unicodedata.category(c) != "Mn")
    return re.sub("([aou])e", r"\1", bare)


@cache
def _entries(edition: Edition) -> tuple[_Entry, ...]:
    return tuple(
        _Entry(entry, {key: f" {' '.join(_words(entry.get(key, '')))} " for key in _WORTH})
        for entry in search_entries(edition)
    )


def _words(text: str) -> list[str]:
    return _WORD.findall(folded(text))


@cache
def _known(edition: Edition) -> tuple[str, ...]:
    told = (text for entry in _entries(edition) for text in entry.told.values())
    return tuple(sorted({word for text in told for word in text.split() if len(word) >= _SLIP}))


def _single(word: str, known: Sequence[str]) -> str:
    """Return one of what was typed as many, where that is a word: screens are found by a screen."""
    one = word.removesuffix("s")
    return one if len(one) >= _SLIP and one in known else word


def _nearest(word: str, known: Sequence[str]) -> str:
    """Return the word that stands somewhere and is nearest, itself where none is near."""
    from rapidfuzz import process
    from rapidfuzz.distance import OSA

    if len(word) < _SLIP or any(word in other for other in known):
        return word
    for left in range(1, _LONGEST_ENDING + 1):
        if len(word) - left >= _SLIP and word[:-left] in known:
            return word[:-left]
    most = 2 if len(word) >= _SLIPS else 1
    found = process.extractOne(word, known, scorer=OSA.distance, score_cutoff=most)
    return str(found[0]) if found else word


def _hits(words: Sequence[str], entries: Sequence[_Entry]) -> list[Found]:
    if not words:
        return []
    whole = " ".join(words)
    worths = [([_worth(entry, word) for word in words], entry) for entry in entries]
    told = [(sum(each) + _sought(entry, whole), entry) for each, entry in worths if min(each)]
    told.sort(key=lambda one: -one[0])
    return [_found(entry.entry, words[0]) for _, entry in told[:_MOST]]


def _some_hits(words: Sequence[str], entries: Sequence[_Entry]) -> list[Found]:
    """Return what holds some words, or is looked for by two side by side: the rarest count most."""
    found: dict[int, float] = {}
    told = [word for word in words if len(word) >= _TELLS]
    by_word = ({at: _worth(entry, w) for at, entry in enumerate(entries)} for w in told)
    by_two = (
        {at: _sought(entry, f"{one} {other}") for at, entry in enumerate(entries)}
        for one, other in pairwise(words)
    )
    for worths in (*by_word, *by_two):
        held = [(at, worth) for at, worth in worths.items() if worth]
        for at, worth in held:
            found[at] = found.get(at, 0.0) + sqrt(worth) / len(held)
    best = [entries[at] for at in sorted(found, key=lambda at: -found[at])[:_MOST]]
    return [_found(e.entry, next((w for w in told if _worth(e, w)), "")) for e in best]


def _worth(entry: _Entry, word: str) -> int:
    return sum(worth * _fit(entry.told[key], word) for key, worth in _WORTH.items())


def _sought(entry: _Entry, words: str) -> int:
    """Return what it counts that people look for an entry by several words, side by side."""
    return _WORTH["also"] * _fit(entry.told["also"], words) if " " in words else 0


def _fit(text: str, word: str) -> int:
    """Return how well a word stands in a text of words with a space round each."""
    if f" {word}" in text:
        return _WHOLE if f" {word} " in text else _BEGINS
    return _WITHIN if len(word) >= _LEAST_WITHIN and word in text else 0


def _found(entry: Entry, word: str) -> Found:
    """Return an entry with the part of its text round the word."""
    text = entry["text"]
    at = max(folded(text).find(word), 0)
    start = text.rfind(" ", 0, max(at - _PIECE // 3, 0)) + 1
    piece = text[start : start + _PIECE]
    cut = piece if start + _PIECE >= len(text) else piece[: piece.rfind(" ")] + " …"
    return Found(entry["title"], entry["part"], entry["url"], f"… {cut}" if start else cut)
