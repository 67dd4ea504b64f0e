"""A second hearing of hazards, learned from sentences: for what no list of words foresaw.

A linear model for each language over a text's words, their letters and what the thesaurus finds in
them, one by one and two by two. Its weights, made by ``tests/bot/dangers/training.py`` from the
sentences beside it, are ``learned_<language>.npz``; nothing is learned while the bot runs. It says
how likely each hazard is told as happening now. A second model asks only whether any is: it can
tell more features apart, and is believed more.
"""

from collections.abc import Mapping
from dataclasses import dataclass
from functools import cache, lru_cache
from importlib.resources import as_file, files
from typing import NamedTuple, cast
from zlib import crc32

import numpy as np
from numpy.typing import NDArray

from bot.dangers.clauses import Mood, Told
from bot.dangers.thesaurus import listed
from bot.language.linear import BUCKETS, NUMBERS, Either, Linear, number_of, of_letters
from bot.language.tongue import Tongue

__all__ = ["NOTHING", "Guess", "features", "guess"]

NOTHING = "none"
"""The name of the class of texts that tell no hazard."""

# German is typed with and without its own letters.
_FOLDED = str.maketrans({"ä": "ae", "ö": "oe", "ü": "ue", "ß": "ss"})
_APART = 3
_MOST_WORDS = 50_000
# How much the second model's log odds count [1].
_OF_SECOND = 0.5
# Below this chance [1] nobody asks which word told it.
_TELLING = 0.01
_MOST_HITS = 8
_MOST_IN_CLAUSE, _MOST_TOGETHER = 4, 40
# More than any text has words; a power of two.
_MOST_PLACES = 1 << 11


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
    """The weights of each hazard, and of whether any is told."""

    each: Linear
    any: Either


def guess(told: Told) -> Guess | None:
    """Return how likely a text tells each hazard, or None where nothing in it is known."""
    model = _model(told.tongue)
    told_by = features(told)
    found = model.each.row[told_by.numbers % BUCKETS]
    known = found >= 0
    if not known.any():
        return None
    # Each row once, at the first of its words, before what was found: both in one number.
    order = told_by.places
    order[told_by.of_words :] += _MOST_PLACES
    ordered = np.sort(found[known] * (2 * _MOST_PLACES) + order[known])
    rows = ordered // (2 * _MOST_PLACES)
    once = np.flatnonzero(np.diff(rows, prepend=-1))
    rows, ordered = rows[once], ordered[once]
    chosen = model.each.of_rows(rows)
    scores = model.each.bias + chosen.sum(axis=0, dtype=np.float64) / len(rows) ** 0.5
    chances = _chances(model, scores, model.any.odds(told_by.numbers))
    likely = dict(zip(model.each.keys, chances.tolist(), strict=True))
    any_chance = 1.0 - likely.pop(NOTHING)
    telling = {key: at for at, key in enumerate(model.each.keys) if likely.get(key, 0.0) > _TELLING}
    return Guess(likely, any_chance, telling, _Said(ordered % _MOST_PLACES, chosen))


def _chances(model: _Model, scores: NDArray[np.float64], second: float) -> NDArray[np.float64]:
    """Return the chance of each key; the log odds of any are the weighted mean of both."""
    nothing = model.each.keys.index(NOTHING)
    any_odds = np.logaddexp.reduce(np.delete(scores, nothing))
    odds = (1.0 - _OF_SECOND) * (any_odds - scores[nothing]) + _OF_SECOND * second
    scores = scores.copy()
    scores[nothing] = any_odds - odds
    chances = np.exp(scores - scores.max())
    return cast(NDArray[np.float64], chances / chances.sum())


class Features(NamedTuple):
    """The numbers of features and the word that each stands at, ``of_words`` of words first."""

    numbers: NDArray[np.int64]
    places: NDArray[np.int64]
    of_words: int


def features(told: Told) -> Features:
    """Return the features of a text: of its words, of pairs of them, of what was found in it."""
    words = [_of_word("#" if word.word[0].isdecimal() else word.word) for word in told.words]
    numbers = [word.numbers for word in words]
    lengths = np.array([len(one) for one in numbers], dtype=np.int64)
    places = [np.repeat(np.arange(len(words)), lengths)]
    moody = [at for at, mood in enumerate(told.moods) if mood]
    listed = [number_of(f"{told.moods[at]}w{words[at].text}") for at in moody]
    at = moody
    for apart in range(1, _APART + 1):
        pairs = zip(words, words[apart:], strict=False)
        if apart == 1:
            listed += [crc32(later.written, word.beside) for word, later in pairs]
        else:
            listed += [crc32(later.written, word.near) for word, later in pairs]
        at = [*at, *range(len(words) - apart)]
    found, there = _findings(told)
    together, where = _together(told)
    numbers.append(np.array(listed + found + together, dtype=np.int64) % NUMBERS)
    places.append(np.array(at + there + where, dtype=np.int64))
    of_words = int(lengths.sum()) + len(listed)
    return Features(np.concatenate(numbers), np.concatenate(places), of_words)


class _Word(NamedTuple):
    """A word, its features, and the checksums with which its pairs with later words begin."""

    text: str
    written: bytes
    numbers: NDArray[np.int64]
    beside: int
    near: int


@lru_cache(maxsize=_MOST_WORDS)
def _of_word(word: str) -> _Word:
    word = word.translate(_FOLDED)
    letters = set(of_letters(word))
    numbers = np.array([number_of(name) for name in (f"w{word}", *letters)], dtype=np.int64)
    beside, near = crc32(f"b{word} ".encode()), crc32(f"s{word} ".encode())
    return _Word(word, word.encode(), numbers, beside, near)


def _findings(told: Told) -> tuple[list[int], list[int]]:
    numbers: list[int] = []
    places: list[int] = []
    for name, hits in told.hits.items():
        plain, in_mood = _of_name(name)
        numbers.append(plain)
        places.append(hits[0].start)
        for hit in hits[:_MOST_HITS]:
            numbers.append(in_mood[told.mood(hit)])
            places.append(hit.start)
    return numbers, places


def _together(told: Told) -> tuple[list[int], list[int]]:
    """Return the numbers of what was found in one clause, two by two."""
    in_clause: dict[int, dict[tuple[str, int], int]] = {}
    for name, hits in told.hits.items():
        if name in _alone():
            continue
        for hit in hits[:_MOST_IN_CLAUSE]:
            here = in_clause.setdefault(told.clause[hit.start], {})
            here.setdefault((name, _mood_bits(told.mood(hit))), hit.start)
    numbers, places = [], []
    for here in in_clause.values():
        marks = sorted(here)[:_MOST_TOGETHER]
        for at, mark in enumerate(marks):
            begun = _begun(*mark)
            numbers += [crc32(_written(*other), begun) for other in marks[at + 1 :]]
            places += [here[mark]] * (len(marks) - at - 1)
    return numbers, places


def _mood_bits(mood: int) -> int:
    """Return whether something is denied, and whether it is in any other mood, as two bits."""
    return (mood & Mood.DENIED) + 2 * bool(mood & ~Mood.DENIED)


@cache
def _written(name: str, mood: int) -> bytes:
    return f"{name}{mood}".encode()


@cache
def _begun(name: str, mood: int) -> int:
    return crc32(f"j{name}{mood}&".encode())


@cache
def _alone() -> frozenset[str]:
    """Return the lists of small words, which say nothing beside another list."""
    return frozenset(listed("groups.toml")["small_words"].split())


@cache
def _of_name(name: str) -> tuple[int, tuple[int, ...]]:
    """Return the number of a finding of the thesaurus, and its numbers in each mood."""
    in_moods = (number_of(f"h{name}/{mood}") for mood in range(Mood.ALL + 1))
    return number_of(f"h{name}"), tuple(in_moods)


@cache
def _model(tongue: Tongue) -> _Model:
    with as_file(files("bot.dangers") / f"learned_{tongue}.npz") as path, np.load(path) as kept:
        either = Either(kept["any_weights"], float(kept["any_step"]), float(kept["any_bias"]))
        return _Model(Linear.of(kept), either)
