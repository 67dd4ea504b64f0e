"""A second hearing of hazards, learned from sentences: for what no list of words foresaw.

A linear model over a text's words, their letters and what the thesaurus finds in them. Its weights
are ``learned.npz``, made by ``tests/bot/dangers/training.py`` from the sentences beside it; nothing
is learned while the bot runs. It says how likely each hazard is told as happening now.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from importlib.resources import as_file, files
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


@dataclass(frozen=True, slots=True)
class Guess:
    """How likely a text tells each hazard [1], and any at all.

    ``places`` has the word of the text that speaks most for each hazard.
    """

    chances: Mapping[str, float]
    any_chance: float
    places: Mapping[str, int]


@dataclass(frozen=True, slots=True)
class _Model:
    """The weights; ``row`` has the row of each feature that has one."""

    keys: tuple[str, ...]
    row: Mapping[int, int]
    weights: NDArray[np.float32]
    bias: NDArray[np.float64]


def guess(told: Told) -> Guess | None:
    """Return how likely a text tells each hazard, or None where nothing in it is known."""
    model = _model()
    places: dict[int, int] = {}
    for number, place in features(told):
        row = model.row.get(number)
        if row is not None:
            places.setdefault(row, place)
    if not places:
        return None
    rows = np.fromiter(sorted(places), dtype=np.int64, count=len(places))
    chosen = model.weights[rows]
    scores = model.bias + chosen.sum(axis=0, dtype=np.float64) / len(places) ** 0.5
    chances = np.exp(scores - scores.max())
    chances /= chances.sum()
    likely = dict(zip(model.keys, chances.tolist(), strict=True))
    any_chance = 1.0 - likely.pop(NOTHING)
    telling = (at for at, key in enumerate(model.keys) if likely.get(key, 0.0) > _TELLING)
    clues = {model.keys[at]: _clue(chosen[:, at].tolist(), rows.tolist(), places) for at in telling}
    return Guess(likely, any_chance, clues)


def _clue(weights: list[float], rows: list[int], places: Mapping[int, int]) -> int:
    """Return the word whose features weigh most."""
    of_word: dict[int, float] = {}
    for weight, row in zip(weights, rows, strict=True):
        of_word[places[row]] = of_word.get(places[row], 0.0) + weight
    return max(of_word, key=lambda place: (of_word[place], -place))


def features(told: Told) -> Iterator[tuple[int, int]]:
    """Yield the number of each feature of a text with the word it stands at."""
    words = ["#" if word.word[0].isdecimal() else word.word for word in told.words]
    for place, word in enumerate(words):
        for number in _of_word(word):
            yield number, place
        if told.moods[place]:
            yield _number(f"{told.moods[place].value}w{word}"), place
        for apart, follower in enumerate(words[place + 1 : place + 1 + _APART]):
            yield _number(f"{'s' if apart else 'b'}{word} {follower}"), place
    yield from _findings(told)


@lru_cache(maxsize=_MOST_WORDS)
def _of_word(word: str) -> tuple[int, ...]:
    """Return the numbers of a word and of the letters in it."""
    framed = f"<{word}>"
    letters = {
        f"c{framed[start : start + length]}"
        for length in _LETTERS
        for start in range(len(framed) - length + 1)
    }
    return (_number(f"w{word}"), *(_number(name) for name in sorted(letters)))


def _findings(told: Told) -> Iterator[tuple[int, int]]:
    for name, hits in told.hits.items():
        for hit in hits[:_MOST_HITS]:
            yield _number(f"h{name}"), hit.start
            yield _number(f"h{name}/{told.mood(hit).value}"), hit.start


@lru_cache(maxsize=_MOST_WORDS)
def _number(name: str) -> int:
    return crc32(name.encode()) % BUCKETS


@cache
def _model() -> _Model:
    with as_file(files("bot.dangers") / "learned.npz") as path, np.load(path) as kept:
        row = {bucket: at for at, bucket in enumerate(kept["buckets"].tolist())}
        weights = kept["weights"].astype(np.float32) * kept["scale"]
        keys = tuple(str(key) for key in kept["keys"])
        return _Model(keys, row, weights, kept["bias"].astype(np.float64))
