"""What each figure of a text is told of, and how it stands, learned from sentences of many hands.

``second.py`` says where it is heard beside the listeners. The model, ``learned.npz``, is made by
``tests/bot/language/linking/training.py``; nothing is learned while the bot runs.
"""

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import cache
from importlib.resources import as_file, files
from importlib.resources.abc import Traversable
from itertools import pairwise
from typing import Any

import numpy as np
from numpy.typing import NDArray

from bot.language.hearing.facts import Standing
from bot.language.hearing.features import features
from bot.language.hearing.items import Item, Numbers, joined, number_of
from bot.language.hearing.scene import Scene
from bot.language.linear import BUCKETS

__all__ = ["FIRST", "NO_ROLE", "Linked", "Linker", "linked_roles", "steps", "steps_after"]

NO_ROLE = ""
"""The role of a figure that tells nothing that is heard."""

FIRST = "first"
"""Stands before the first figure of a text."""

_AFTER = 3000


@dataclass(frozen=True, slots=True)
class Linked:
    """A figure with the chance of each role [1], and of each standing if it has a role [1].

    ``role`` is the likeliest one, ``chance`` how likely it is.
    """

    item: Item
    roles: Mapping[str, float]
    stands: Mapping[str, float]
    role: str
    chance: float

    def stands_as(self, *standings: Standing) -> float:
        """Return how likely it stands in one of these ways, if it tells anything."""
        some = 1.0 - self.stands[NO_ROLE]
        return sum(self.stands[standing] for standing in standings) / max(some, 1e-9)


@dataclass(frozen=True, slots=True)
class Linker:
    """Weights [feature, role and standing]; ``row`` has each bucket's row, the last one is zero."""

    roles: tuple[str, ...]
    stands: tuple[str, ...]
    row: NDArray[np.integer[Any]]
    weights: NDArray[np.float32]
    bias: NDArray[np.float64]

    @classmethod
    def of(cls, kept: Mapping[str, NDArray[Any]]) -> "Linker":
        """Return the model of the arrays that a file keeps."""
        buckets = kept["buckets"]
        # Small, so that it stays near: of each figure of a text some two hundred are looked up.
        row = np.full(BUCKETS, len(buckets), dtype=np.uint16)
        row[buckets] = np.arange(len(buckets))
        weights = kept["weights"].astype(np.float32) * kept["scale"]
        weights = np.concatenate([weights, np.zeros((1, weights.shape[1]), dtype=np.float32)])
        roles, stands = (tuple(str(key) for key in kept[name]) for name in ("roles", "stands"))
        return cls(roles, stands, row, weights, kept["bias"].astype(np.float64))

    def chances(
        self, buckets: NDArray[np.int64], after: Numbers
    ) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
        """Return the chances of roles and standings of a text's figures, in order.

        The role of a figure hangs on that of the one before: its chances are summed over those.
        """
        many = len(self.roles)
        scale = (buckets.shape[1] + after.shape[1]) ** -0.5
        told = self.weights[self.row[buckets]].sum(axis=1, dtype=np.float64) * scale + self.bias
        # Many figures of a text follow the one before them in one way.
        ways, way = np.unique(after, axis=0, return_inverse=True)
        buckets = _followed(ways, (*self.roles, *self.stands))
        follows = self.weights[self.row[buckets]].sum(axis=2) * scale
        first = self.weights[self.row[steps_after(after[:1], FIRST)]].sum(axis=1)[0] * scale
        told[0] += first
        given = follows[way.reshape(-1)]
        roles = _in_order(told[:, :many], given[:, :many, :many])
        return roles, _in_order(told[:, many:], given[:, many:, many:])


def _in_order(told: NDArray[np.float64], follows: NDArray[np.float32]) -> NDArray[np.float64]:
    """Return the chances of labels, each figure's summed over those of the one before."""
    given = _shares(told[:, None, :] + follows)
    here = _shares(told[0])
    chances = [here]
    for place in range(1, len(told)):
        here = here @ given[place]
        chances.append(here)
    return np.array(chances)


def _shares(scores: NDArray[np.float64]) -> NDArray[np.float64]:
    odds = np.exp(scores - scores.max(axis=-1, keepdims=True))
    return np.asarray(odds / odds.sum(axis=-1, keepdims=True))


def steps(scene: Scene, items: Sequence[Item]) -> Numbers:
    """Return how each figure follows the one before it [item, template]."""
    rows = [[1, 2, 3, 4, 5]]
    for before, item in pairwise(items):
        gap = scene.text[before.end : item.start].strip()
        gap = gap if len(gap) <= _SHORT_GAP else f"long{',' in gap}"
        unit = item.unit
        way = (item.value > before.value) - (item.value < before.value)
        names = (f"k{unit}", f"g{gap}", f"w{way}{unit}", f"{gap}{unit}{way}")
        rows.append([7, *(number_of(name) for name in names)])
    return np.array(rows, dtype=np.uint64)


_SHORT_GAP = 6


def steps_after(after: Numbers, label: str) -> NDArray[np.int64]:
    """Return the buckets of figures that follow one of a role or standing [item, template]."""
    known = np.uint64(number_of(f"after {label}"))
    salts = np.arange(_AFTER, _AFTER + after.shape[1], dtype=np.uint64)
    return joined((after << np.uint64(5)) ^ known, salts)


def _followed(ways: Numbers, labels: tuple[str, ...]) -> NDArray[np.int64]:
    """Return the same buckets for each of several labels [way, label, template]."""
    salts = np.arange(_AFTER, _AFTER + ways.shape[1], dtype=np.uint64)
    return joined((ways << np.uint64(5))[:, None, :] ^ _known(labels)[:, None], salts)


@cache
def _known(labels: tuple[str, ...]) -> Numbers:
    return np.array([number_of(f"after {label}") for label in labels], dtype=np.uint64)


def linked_roles(scene: Scene, items: Sequence[Item], read: Mapping[int, str]) -> list[Linked]:
    """Return what each figure may be; ``read`` is what the listeners made of it, by its start."""
    if not items:
        return []
    model = _model()
    roles, stands = model.chances(features(scene, items, read), steps(scene, items))
    best = [model.roles[place] for place in roles.argmax(axis=1).tolist()]
    told = zip(items, roles.tolist(), stands.tolist(), best, roles.max(axis=1), strict=True)
    return [
        Linked(
            item,
            dict(zip(model.roles, of_role, strict=True)),
            dict(zip(model.stands, standing, strict=True)),
            role,
            float(chance),
        )
        for item, of_role, standing, role, chance in told
    ]


@cache
def _model() -> Linker:
    file: Traversable = files("bot.language.hearing") / "learned.npz"
    with as_file(file) as path, np.load(path) as kept:
        return Linker.of(kept)
