"""Trains the second hearing of hazards from the sentences beside this file.

    PYTHONPATH=. python -m tests.bot.dangers.training [en|de]

writes ``bot/dangers/learned_<language>.npz`` in about a minute: multinomial logistic regression by
plain stochastic descent with fixed seed and order, weights rounded to eight bits. The sentences of
``told/*.jsonl`` (German: ``told/de``) were written for it; ``signs.toml`` and ``mended.toml`` are
learned from too, so none of these is a measure of what it hears.
"""

import hashlib
import json
import sys
import tomllib
from collections.abc import Iterator
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from bot.dangers.clauses import take_apart
from bot.dangers.learned import BUCKETS, NOTHING, features
from bot.language.tongue import Tongue

__all__ = ["digest", "sentences", "train"]

_HERE = Path(__file__).parent
_TO = _HERE.parents[2] / "bot" / "dangers"
_EPOCHS, _RATE, _LEAST_RATE, _SHRINK = 30, 0.6, 0.02, 0.0005
# A feature of one sentence alone says nothing of another.
_LEAST_SEEN = 2
# Collected as a look-alike of a person's burn; it is an animal's.
_NO_CALM = ("my beardie burned his belly",)
# The sentences that the facts were collected with count as several each.
_SIGNS_COUNT = 3
_LEVELS = 127
# The rest adds nothing that was seen on sentences held aside.
_MOST_FEATURES = 25_000


def sentences(tongue: Tongue = Tongue.ENGLISH) -> Iterator[tuple[str, str]]:
    """Yield every sentence with its hazard, or ``none``; what is only asked about is none."""
    if tongue is Tongue.GERMAN:
        yield from _told(_HERE / "told" / "de")
        return
    yield from _told(_HERE / "told")
    signs = tomllib.loads((_HERE / "signs.toml").read_text(encoding="utf-8"))
    for key, row in signs.items():
        for _ in range(_SIGNS_COUNT):
            yield from ((text, key) for text in row["signs"])
            yield from ((text, NOTHING) for text in row["not_signs"] if text not in _NO_CALM)
    plain = tomllib.loads((_HERE / "plain.toml").read_text(encoding="utf-8"))
    for key, texts in _SIGNS_COUNT * tuple(plain["hazard"].items()):
        yield from ((text, key) for text in texts)
    yield from ((text, NOTHING) for text in _SIGNS_COUNT * plain["calm"])
    mended = tomllib.loads((_HERE / "mended.toml").read_text(encoding="utf-8"))
    yield from ((row["text"], row["key"]) for row in mended["hazard"])
    yield from ((row["text"], NOTHING) for row in mended["look_alike"])
    yield from ((text, NOTHING) for text in mended["ordinary"])


def _told(folder: Path) -> Iterator[tuple[str, str]]:
    for file in sorted(folder.glob("*.jsonl")):
        for line in file.read_text(encoding="utf-8").splitlines():
            row = json.loads(line)
            yield row["text"], NOTHING if row.get("asked") else row["key"]


def digest(tongue: Tongue = Tongue.ENGLISH) -> str:
    """Return a fingerprint of all sentences."""
    told = "\n".join(f"{key}\t{text}" for text, key in sentences(tongue))
    return hashlib.sha256(told.encode()).hexdigest()


def train(
    rows: list[tuple[str, str]],
) -> tuple[tuple[str, ...], NDArray[np.float64], NDArray[np.float64]]:
    """Return the keys, the weights [feature, key] and the bias learned from sentences."""
    keys = (NOTHING, *sorted({key for _, key in rows} - {NOTHING}))
    texts = [numbers_of(text) for text, _ in rows]
    wanted = [keys.index(key) for _, key in rows]
    seen = np.zeros(BUCKETS, dtype=np.int64)
    for numbers in texts:
        seen[numbers] += 1
    texts = [numbers[seen[numbers] >= _LEAST_SEEN] for numbers in texts]
    weights, bias = np.zeros((BUCKETS, len(keys))), np.zeros(len(keys))
    order = np.random.default_rng(0)
    for epoch in range(_EPOCHS):
        rate = _RATE * (1.0 - epoch / _EPOCHS) + _LEAST_RATE
        for at in order.permutation(len(texts)):
            numbers = texts[at]
            if not numbers.size:
                continue
            share = 1.0 / numbers.size**0.5
            scores = weights[numbers].sum(axis=0) * share + bias
            off = np.exp(scores - scores.max())
            off /= off.sum()
            off[wanted[at]] -= 1.0
            weights[numbers] -= rate * share * off
            bias -= 0.1 * rate * off
        weights *= 1.0 - _SHRINK
    return keys, weights, bias


def numbers_of(text: str) -> NDArray[np.int64]:
    """Return the numbers of the features of a text, each once."""
    return np.unique(features(take_apart(text)).numbers)


def save(
    tongue: Tongue,
    keys: tuple[str, ...],
    weights: NDArray[np.float64],
    bias: NDArray[np.float64],
) -> None:
    """Write the model, its weights in eight bits."""
    strongest = np.abs(weights).max(axis=1)
    used = np.sort(np.argsort(strongest, kind="stable")[-_MOST_FEATURES:])
    scale = strongest[used, np.newaxis] / _LEVELS
    np.savez_compressed(
        _TO / f"learned_{tongue}.npz",
        keys=np.array(keys),
        buckets=used.astype(np.int32),
        weights=np.round(weights[used] / scale).astype(np.int8),
        scale=scale.astype(np.float32),
        bias=bias.astype(np.float32),
        digest=np.array(digest(tongue)),
    )


def main() -> None:
    """Train on every sentence of the languages that are named, or of both, and write the models."""
    for tongue in map(Tongue, sys.argv[1:] or list(Tongue)):
        save(tongue, *train(list(sentences(tongue))))


if __name__ == "__main__":
    main()
