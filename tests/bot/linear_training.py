"""Fits linear models to sentences, and writes them with their weights in eight bits."""

from collections.abc import Sequence
from pathlib import Path
from typing import Any

import numpy as np
from numpy.typing import NDArray
from scipy.optimize import minimize
from scipy.sparse import csr_matrix, diags

from bot.language.linear import BUCKETS, NUMBERS, Either, Linear

__all__ = ["arrays", "either", "fitted", "kept", "of_rows", "rows_in_eight_bits"]

_LEVELS = 127
_CUT = 0.9995


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
    texts = [np.unique(numbers % BUCKETS) for numbers in texts]
    seen = np.bincount(np.concatenate(texts), minlength=BUCKETS)
    told = [numbers[seen[numbers] >= least_seen] for numbers in texts]
    wanted = [keys.index(label) for label in labels]
    used, weights, bias = _solved(_matrix(told), wanted, len(keys), ridge=ridge, rounds=rounds)
    row = np.full(BUCKETS, -1, dtype=np.int64)
    row[used] = np.arange(len(used))
    steps = np.ones((len(weights), 1), dtype=np.float32)
    return Linear(keys, row, weights.astype(np.float32), steps, bias)


def either(
    texts: Sequence[NDArray[np.int64]], yes: Sequence[bool], *, ridge: float, rounds: int
) -> Either:
    """Return the logistic regression of yes or no on features.

    Each feature weighs in the fit by the root of how unlike its shares of yes and of no are
    (log ratio of them, one added to each count): naive Bayes as a prior, Wang and Manning 2012.
    """
    of_yes = np.bincount(
        np.concatenate([numbers for numbers, so in zip(texts, yes, strict=True) if so]),
        minlength=NUMBERS,
    )
    of_no = np.bincount(np.concatenate(texts), minlength=NUMBERS) - of_yes
    unlike = np.log((of_yes + 1) / of_yes.sum() / ((of_no + 1) / of_no.sum()))
    matrix = (_matrix(texts) @ diags(np.abs(unlike).astype(np.float32) ** 0.5)).tocsr()
    used, weights, bias = _solved(matrix, [int(so) for so in yes], 2, ridge=ridge, rounds=rounds)
    odds = np.zeros(NUMBERS)
    odds[used] = (weights[:, 1] - weights[:, 0]) * np.abs(unlike[used]) ** 0.5
    # The few strongest weights are cut off: the step of all others is finer for it.
    step = float(np.quantile(np.abs(odds[used]), _CUT)) / _LEVELS
    rounded = np.clip(np.round(odds / step), -_LEVELS, _LEVELS)
    return Either(rounded.astype(np.int8), step, float(bias[1] - bias[0]))


def of_rows(
    rows: NDArray[np.int64],
    labels: Sequence[str],
    *,
    rate: float,
    rounds: int,
    least_seen: int = 2,
) -> tuple[tuple[str, ...], NDArray[np.float32], NDArray[np.float32]]:
    """Return the labels, their weights [bucket, label] and biases, each row with as many features.

    The same regression by one small step a row, in an order drawn once: quicker where there are
    many rows of many features. The weights are those of the second half of the rounds, averaged.
    """
    keys = tuple(sorted(set(labels)))
    seen = np.bincount(rows.ravel(), minlength=BUCKETS) >= least_seen
    told = np.where(seen[rows], rows, BUCKETS)
    wanted = np.array([keys.index(label) for label in labels])
    weights = np.zeros((BUCKETS + 1, len(keys)), dtype=np.float32)
    bias = np.zeros(len(keys), dtype=np.float32)
    whole, whole_bias = weights.copy(), bias.copy()
    share = np.float32(rows.shape[1] ** -0.5)
    order = np.random.default_rng(0)
    for turn in range(rounds):
        step = np.float32(rate / (1 + turn))
        for at in order.permutation(len(told)):
            these = told[at]
            scores = weights[these].sum(axis=0) * share + bias
            odds = np.exp(scores - scores.max())
            off = odds / odds.sum()
            off[wanted[at]] -= 1
            off *= step
            bias -= off * share
            weights[these] -= off * share
        weights[BUCKETS] = 0
        if turn >= rounds // 2:
            whole += weights
            whole_bias += bias
    many = np.float32(rounds - rounds // 2)
    return keys, whole[:BUCKETS] / many, whole_bias / many


def _matrix(texts: Sequence[NDArray[np.int64]]) -> "csr_matrix[np.float32]":
    """Return the features of texts [text, feature], each the share of its text that it counts."""
    lengths = np.array([len(numbers) for numbers in texts])
    shares = np.repeat(1.0 / np.maximum(lengths, 1) ** 0.5, lengths).astype(np.float32)
    begins = np.concatenate([[0], np.cumsum(lengths)])
    return csr_matrix((shares, np.concatenate(texts), begins), shape=(len(texts), NUMBERS))


def _solved(
    matrix: "csr_matrix[np.float32]",
    wanted: Sequence[int],
    classes: int,
    *,
    ridge: float,
    rounds: int,
) -> tuple[NDArray[np.int64], NDArray[np.float64], NDArray[np.float64]]:
    """Return the features used, their weights [feature, class] and the bias of each class.

    A quasi-Newton descent of the likelihood, quicker than steps where a text has many features.
    """
    used = np.unique(matrix.indices)
    matrix = matrix[:, used]
    turned = matrix.T.tocsr()
    hot = np.zeros((matrix.shape[0], classes), dtype=np.float32)
    hot[np.arange(len(hot)), wanted] = 1.0

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


def _in_eight_bits(
    weights: NDArray[np.floating[Any]],
) -> tuple[NDArray[np.int8], NDArray[np.float32]]:
    """Return each row in eight bits, and what one step of it is."""
    scale = np.maximum(np.abs(weights).max(axis=1, keepdims=True), 1e-9) / _LEVELS
    return np.round(weights / scale).astype(np.int8), scale.astype(np.float32)


def arrays(model: Linear, most: int) -> dict[str, NDArray[Any]]:
    """Return a model of at most so many features as it is kept, its weights in eight bits."""
    buckets = np.flatnonzero(model.row >= 0)
    rows = rows_in_eight_bits(buckets, model.of_rows(model.row[buckets]), most)
    return {"keys": np.array(model.keys), "bias": model.bias.astype(np.float32), **rows}


def rows_in_eight_bits(
    buckets: NDArray[np.int64], weights: NDArray[np.floating[Any]], most: int
) -> dict[str, NDArray[Any]]:
    """Return at most so many rows of weights as they are kept, those with the largest ones."""
    strongest = np.sort(np.argsort(np.abs(weights).max(axis=1), kind="stable")[-most:])
    rounded, scale = _in_eight_bits(weights[strongest])
    return {"buckets": buckets[strongest].astype(np.int32), "weights": rounded, "scale": scale}


def kept(path: Path, digest: str, **told: NDArray[Any]) -> None:
    """Write a model with the fingerprint of its sentences."""
    np.savez_compressed(path, digest=np.array(digest), allow_pickle=False, **told)
