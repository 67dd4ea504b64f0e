"""A linear model that was learned from sentences: which class the features of a text speak for."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from importlib.abc import Traversable
from importlib.resources import as_file
from math import sqrt
from typing import Any
from zlib import crc32

import numpy as np
from numpy.typing import NDArray

__all__ = ["BUCKETS", "NUMBERS", "Either", "Linear", "number_of", "of_letters"]

NUMBERS = 1 << 20
"""Features are numbered by a checksum of their names, in this many places."""

BUCKETS = 1 << 16
"""In so many of them where a model has many classes: numbers alike in their last bits are one."""

_LETTERS = (3, 4, 5)


def number_of(name: str) -> int:
    """Return the number of a feature, 0 to ``NUMBERS`` - 1."""
    return crc32(name.encode()) % NUMBERS


def of_letters(word: str) -> Iterator[str]:
    """Yield the names of a word's features: its letters three, four and five at a time."""
    framed = f"<{word}>"
    for length in _LETTERS:
        yield from (f"c{framed[at : at + length]}" for at in range(len(framed) - length + 1))


@dataclass(frozen=True, slots=True)
class Linear:
    """The weights [feature, class] in steps of ``scale`` [feature]; ``row``: its row, or -1.

    They stay in eight bits, as a file keeps them: a text has a hundred features of forty thousand.

    Score of a class: its bias, and the sum of the weights of the known features over the root of
    their number; the chance of a class is its share of the exponentials.
    """

    keys: tuple[str, ...]
    row: NDArray[np.int64]
    weights: NDArray[np.int8] | NDArray[np.float32]
    scale: NDArray[np.float32]
    bias: NDArray[np.float64]

    @classmethod
    def load(cls, file: Traversable) -> "Linear":
        """Return the model of a file, whose weights are kept in eight bits."""
        with as_file(file) as path, np.load(path) as kept:
            return cls.of(kept)

    @classmethod
    def of(cls, kept: Mapping[str, NDArray[Any]]) -> "Linear":
        """Return the model of the arrays that a file keeps."""
        row = np.full(BUCKETS, -1, dtype=np.int64)
        row[kept["buckets"]] = np.arange(len(kept["buckets"]))
        keys = tuple(str(key) for key in kept["keys"])
        return cls(keys, row, kept["weights"], kept["scale"], kept["bias"].astype(np.float64))

    def of_rows(self, rows: NDArray[np.int64]) -> NDArray[np.float32]:
        """Return the weights of some rows."""
        return self.weights[rows].astype(np.float32) * self.scale[rows]

    def chances(self, numbers: NDArray[np.int64]) -> NDArray[np.float64] | None:
        """Return the chance of each class [1], or None where no feature is known."""
        rows = self.row[np.unique(numbers % BUCKETS)]
        rows = rows[rows >= 0]
        if not rows.size:
            return None
        scores = self.bias + self.of_rows(rows).sum(axis=0, dtype=np.float64) / rows.size**0.5
        odds = np.exp(scores - scores.max())
        return np.asarray(odds / odds.sum())


@dataclass(frozen=True, slots=True)
class Either:
    """The weights [feature] of one question of yes or no, in eight bits of ``step`` each.

    Its log odds: the bias, and the sum of all features' weights over the root of their number.
    """

    weights: NDArray[np.int8]
    step: float
    bias: float

    def odds(self, numbers: NDArray[np.int64]) -> float:
        """Return the log odds of yes for the features of a text, each of which counts once."""
        once = np.unique(numbers)
        told = int(self.weights[once].sum(dtype=np.int64)) * self.step
        return self.bias + told / sqrt(max(len(once), 1))
