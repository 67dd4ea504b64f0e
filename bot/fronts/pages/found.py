"""Looking words up in the search index: as typed, then with the nearest words that stand there.

The same is done by ``search.js`` where no server answers.
"""

import re
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache

from bot.fronts.pages.edition import Edition
from bot.fronts.pages.search import Entry, search_entries

__all__ = ["Found", "find", "folded"]

_MOST = 20
_WORTH = {"title": 6, "also": 5, "part": 3, "text": 1}
# From so many letters on one slip is forgiven, and from so many two.
_SLIP, _SLIPS = 4, 8
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

    Where nothing does, each word that stands nowhere is taken as the nearest one that does.
    """
    words = _WORD.findall(folded(typed))[:12]
    entries = _entries(edition)
    hits = _hits(words, entries)
    if not hits and words:
        known = _known(edition)
        hits = _hits([_nearest(word, known) for word in words], entries)
    return tuple(hits)


def folded(text: str) -> str:
    """Return words as they are compared: Röhre, roehre and rohre are one, and heiß and heiss."""
    plain = unicodedata.normalize("NFD", text.lower().replace("ß", "ss"))
    bare = "".join(c for c in plain if unicodedata.category(c) != "Mn")
    return re.sub("([aou])e", r"\1", bare)


@cache
def _entries(edition: Edition) -> tuple[_Entry, ...]:
    return tuple(
        _Entry(entry, {key: folded(entry.get(key, "")) for key in _WORTH})
        for entry in search_entries(edition)
    )


@cache
def _known(edition: Edition) -> tuple[str, ...]:
    words = {
        word
        for entry in _entries(edition)
        for told in entry.told.values()
        for word in _WORD.findall(told)
        if len(word) >= _SLIP
    }
    return tuple(sorted(words))


def _nearest(word: str, known: Sequence[str]) -> str:
    """Return the word that stands somewhere and is nearest, itself where none is near."""
    from rapidfuzz import process
    from rapidfuzz.distance import OSA

    if len(word) < _SLIP or any(word in other for other in known):
        return word
    most = 2 if len(word) >= _SLIPS else 1
    found = process.extractOne(word, known, scorer=OSA.distance, score_cutoff=most)
    return str(found[0]) if found else word


def _hits(words: Sequence[str], entries: Sequence[_Entry]) -> list[Found]:
    if not words:
        return []
    worth = [(min(_worth(entry, word) for word in words), entry) for entry in entries]
    told = [(sum(_worth(entry, word) for word in words), entry) for least, entry in worth if least]
    told.sort(key=lambda one: -one[0])
    return [_found(entry.entry, words[0]) for _, entry in told[:_MOST]]


def _worth(entry: _Entry, word: str) -> int:
    return sum(worth for key, worth in _WORTH.items() if word in entry.told[key])


def _found(entry: Entry, word: str) -> Found:
    """Return an entry with the part of its text round the word."""
    text = entry["text"]
    at = max(folded(text).find(word), 0)
    start = text.rfind(" ", 0, max(at - _PIECE // 3, 0)) + 1
    piece = text[start : start + _PIECE]
    cut = piece if start + _PIECE >= len(text) else piece[: piece.rfind(" ")] + " …"
    return Found(entry["title"], entry["part"], entry["url"], f"… {cut}" if start else cut)
