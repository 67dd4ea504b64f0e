"""A second hearing of hazards, learned from sentences: for what no list of words foresaw.

A linear model over a text's words, their letters and what the thesaurus finds in them. Its weights
are ``learned.npz``, made by ``tests/bot/dangers/training.py`` from the sentences beside it; nothing
is learned while the bot runs. It says how likely each hazard is told as happening now.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from importlib.resources import as_file, files
from typing import NamedTuple
from zlib import crc32

import numpy as np
from numpy.typing import NDArray

from bot.dangers.clauses import Told

__all__ = ["BUCKETS", "NOTHING", "Guess", "features", "guess"]

BUCKETS = 1 << 16
"""Features are numbered by a checksum of their names, in this many places."""

NOTHING = "none"
"""The name of the class of texts that tell no hazard."""

_LETTERS = (3, 4, 5)
_APART = 3
_MOST_WORDS = 50_000
# Below this chance [1] nobody asks which word told it.
_TELLING = 0.01
_MOST_HITS = 8
# No text of 2,000 characters has so many features; a power of two.
_MOST_FEATURES = 1 << 20


@dataclass(frozen=True, slots=True)
class _Said:
    """What a text has of the model: rows in order, the word of each, their weights [row, key]."""

    words: NDArray[np.int64]
    weights: NDArray[np.float32]


@dataclass(frozen=True, slots=True)
class Guess:
    """How likely a text tells each hazard [1], and any at all.

    ``telling`` are the hazards likely enough to ask which word told them, with their columns.
    """

    chances: Mapping[str, float]
    any_chance: float
    telling: Mapping[str, int]
    _said: _Said

    def place_of(self, key: str) -> int:
        """Return the word of the text that speaks most for a hazard."""
        words, weights = self._said.words, self._said.weights[:, self.telling[key]]
        of_word = np.bincount(words, weights=weights)
        of_word[np.bincount(words) == 0] = -np.inf
        return int(of_word.argmax())


@dataclass(frozen=True, slots=True)
class _Model:
    """The weights; ``row`` has the row of each feature, or -1."""

    keys: tuple[str, ...]
    row: NDArray[np.int64]
    weights: NDArray[np.float32]
    bias: NDArray[np.float64]


def guess(told: Told) -> Guess | None:
    """Return how likely a text tells each hazard, or None where nothing in it is known."""
    model = _model()
    numbers, words = features(told)
    found = model.row[numbers]
    at = np.flatnonzero(found >= 0)
    if not at.size:
        return None
    # Each row once, and of its words the first that was named: row and order in one number.
    ordered = np.sort(found[at] * _MOST_FEATURES + at)
    rows = ordered // _MOST_FEATURES
    once = np.flatnonzero(np.diff(rows, prepend=-1))
    rows, ordered = rows[once], ordered[once]
    chosen = model.weights[rows]
    scores = model.bias + chosen.sum(axis=0, dtype=np.float64) / len(rows) ** 0.5
    chances = np.exp(scores - scores.max())
    chances /= chances.sum()
    likely = dict(zip(model.keys, chances.tolist(), strict=True))
    any_chance = 1.0 - likely.pop(NOTHING)
    telling = {key: at for at, key in enumerate(model.keys) if likely.get(key, 0.0) > _TELLING}
    return Guess(likely, any_chance, telling, _Said(words[ordered % _MOST_FEATURES], chosen))


def features(told: Told) -> tuple[NDArray[np.int64], NDArray[np.int64]]:
    """Return the numbers of the features of a text, and the word that each stands at."""
    words = [_of_word("#" if word.word[0].isdecimal() else word.word) for word in told.words]
    numbers: list[int] = []
    counts = []
    for place, word in enumerate(words):
        before = len(numbers)
        numbers += word.numbers
        if told.moods[place]:
            numbers.append(_number(f"{told.moods[place]}w{word.text}"))
        start = word.beside
        for follower in words[place + 1 : place + 1 + _APART]:
            numbers.append(crc32(follower.written, start) % BUCKETS)
            start = word.near
        counts.append(len(numbers) - before)
    places = np.repeat(np.arange(len(words)), counts)
    found, at = _findings(told)
    return np.array(numbers + found, dtype=np.int64), np.concatenate((places, at))


class _Word(NamedTuple):
    """A word, its features, and the checksums with which its pairs with later words begin."""

    text: str
    written: bytes
    numbers: tuple[int, ...]
    beside: int
    near: int


@lru_cache(maxsize=_MOST_WORDS)
def _of_word(word: str) -> _Word:
    framed = f"<{word}>"
    letters = {
        f"c{framed[start : start + length]}"
        for length in _LETTERS
        for start in range(len(framed) - length + 1)
    }
    numbers = (_number(f"w{word}"), *(_number(name) for name in sorted(letters)))
    beside, near = crc32(f"b{word} ".encode()), crc32(f"s{word} ".encode())
    return _Word(word, word.encode(), numbers, beside, near)


def _findings(told: Told) -> tuple[list[int], NDArray[np.int64]]:
    numbers, places = [], []
    for name, hits in told.hits.items():
        for hit in hits[:_MOST_HITS]:
            numbers += _of_hit(name, told.mood(hit))
            places.append(hit.start)
    return numbers, np.repeat(np.array(places, dtype=np.int64), 2)


@lru_cache(maxsize=_MOST_WORDS)
def _of_hit(name: str, mood: int) -> tuple[int, int]:
    return _number(f"h{name}"), _number(f"h{name}/{mood}")


def _number(name: str) -> int:
    return crc32(name.encode()) % BUCKETS


@cache
def _model() -> _Model:
    with as_file(files("bot.dangers") / "learned.npz") as path, np.load(path) as kept:
        row = np.full(BUCKETS, -1, dtype=np.int64)
        row[kept["buckets"]] = np.arange(len(kept["buckets"]))
        weights = kept["weights"].astype(np.float32) * kept["scale"]
        keys = tuple(str(key) for key in kept["keys"])
        return _Model(keys, row, weights, kept["bias"].astype(np.float64))
