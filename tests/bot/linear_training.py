"""Fits a linear model to sentences, and writes it with its weights in eight bits."""

from collections.abc import Sequence
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import minimize
from scipy.sparse import csr_matrix

from bot.language.linear import BUCKETS, Linear

__all__ = ["fitted", "in_eight_bits", "kept", "solved"]

_LEVELS = 127


def fitted(
    texts: Sequence[NDArray[np.int64]],
    labels: Sequence[str],
    *,
    least_seen: int,
    ridge: float,
    rounds: int,
) -> Linear:
    """Return the multinomial logistic regression of labels on features, all sentences at once.

    What stands in fewer than ``least_seen`` sentences says nothing; ``ridge`` holds the weights.
    """
    keys = tuple(sorted(set(labels)))
    seen = np.bincount(np.concatenate(texts), minlength=BUCKETS)
    told = [numbers[seen[numbers] >= least_seen] for numbers in texts]
    wanted = [keys.index(label) for label in labels]
    used, weights, bias = solved(told, wanted, len(keys), ridge=ridge, rounds=rounds)
    row = np.full(BUCKETS, -1, dtype=np.int64)
    row[used] = np.arange(len(used))
    return Linear(keys, row, weights.astype(np.float32), bias)


def solved(
    texts: Sequence[NDArray[np.int64]],
    wanted: Sequence[int],
    classes: int,
    *,
    ridge: float,
    rounds: int,
) -> tuple[NDArray[np.int64], NDArray[np.float64], NDArray[np.float64]]:
    """Return the features used, their weights [feature, class] and the bias of each class.

    A quasi-Newton descent of the likelihood, quicker than steps where a text has many features.
    """
    lengths = np.array([len(numbers) for numbers in texts])
    shares = np.repeat(1.0 / np.maximum(lengths, 1) ** 0.5, lengths).astype(np.float32)
    begins = np.concatenate([[0], np.cumsum(lengths)])
    matrix = csr_matrix((shares, np.concatenate(texts), begins), shape=(len(texts), BUCKETS))
    used = np.unique(matrix.indices)
    matrix = matrix[:, used]
    turned = matrix.T.tocsr()
    hot = np.zeros((len(texts), classes), dtype=np.float32)
    hot[np.arange(len(texts)), wanted] = 1.0

    def loss(flat: NDArray[np.float64]) -> tuple[float, NDArray[np.float64]]:
        both = flat.reshape(len(used) + 1, classes).astype(np.float32)
        scores = matrix @ both[:-1] + both[-1]
        scores -= scores.max(axis=1, keepdims=True)
        chances = np.exp(scores)
        sums = chances.sum(axis=1, keepdims=True)
        off = chances / sums - hot
        told = float((hot * (np.log(sums) - scores)).sum())
        slope = np.vstack([turned @ off + ridge * both[:-1], off.sum(axis=0, keepdims=True)])
        held = 0.5 * ridge * float((both[:-1] ** 2).sum())
        return told + held, slope.ravel().astype(np.float64)

    start = np.zeros((len(used) + 1) * classes)
    found = minimize(loss, start, jac=True, method="L-BFGS-B", options={"maxiter": rounds})
    both = found.x.reshape(len(used) + 1, classes)
    return used.astype(np.int64), both[:-1], both[-1]


def in_eight_bits(
    weights: NDArray[np.floating[Any]],
) -> tuple[NDArray[np.int8], NDArray[np.float32]]:
    """Return each row in eight bits, and what one step of it is."""
    scale = np.maximum(np.abs(weights).max(axis=1, keepdims=True), 1e-9) / _LEVELS
    return np.round(weights / scale).astype(np.int8), scale.astype(np.float32)


def kept(model: Linear, path: Path, most: int, digest: str) -> None:
    """Write a model of at most so many features, its weights in eight bits."""
    buckets = np.flatnonzero(model.row >= 0)
    weights = model.weights[model.row[buckets]]
    strongest = np.sort(np.argsort(np.abs(weights).max(axis=1), kind="stable")[-most:])
    weights = weights[strongest]
    rounded, scale = in_eight_bits(weights)
    np.savez_compressed(
        path,
        keys=np.array(model.keys),
        buckets=buckets[strongest].astype(np.int32),
        weights=rounded,
        scale=scale,
        bias=model.bias.astype(np.float32),
        digest=np.array(digest),
    )
