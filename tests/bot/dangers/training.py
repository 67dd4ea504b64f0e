"""Trains the second hearing of hazards from the sentences beside this file.

    PYTHONPATH=. python -m tests.bot.dangers.training [en|de]

writes ``bot/dangers/learned_<language>.npz`` in minutes: logistic regression over all sentences at
once, of which hazard is told, and a second time of whether any is; weights rounded to eight bits.
The sentences of
``told/*.jsonl`` (German: ``told/de``) were written for it; ``signs.toml`` and ``mended.toml`` are
learned from too, so none of these is a measure of what it hears.
"""

import hashlib
import json
import sys
import tomllib
from collections.abc import Iterator
from itertools import cycle, islice
from pathlib import Path
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from bot.dangers.clauses import take_apart
from bot.dangers.learned import NOTHING, features
from bot.language.linear import Either, Linear
from bot.language.tongue import Tongue
from tests.bot.linear_training import arrays, either, fitted, kept

__all__ = ["Learned", "digest", "sentences", "train"]

_HERE = Path(__file__).parent
_TO = _HERE.parents[2] / "bot" / "dangers"
# A feature of one sentence alone says nothing of another.
_LEAST_SEEN = 2
_RIDGE, _ROUNDS = 0.01, 90
_RIDGE_OF_ANY, _ROUNDS_OF_ANY = 0.01, 150
_QUESTIONS = _HERE.parent / "routing" / "told"
# A question, a page and its part; of these a set-up that is asked about may be a dangerous one.
_CALM_LABELS = (
    *("q:", "t:", "g:light-and-colour", "g:arranging-the-lamps", "g:up-from-the-minimum"),
    *("g:reflectors", "g:screens", "g:reading-a-uv-meter", "g:measuring-temperatures"),
)
_MAY_BE_WRONG = frozenset({"q:vet", "q:night", "q:temps", "q:check"})
# Collected as a look-alike of a person's burn; it is an animal's.
_NO_CALM = ("my beardie burned his belly",)
# The sentences that the facts were collected with count as several each.
_SIGNS_COUNT = 3
# In German each of so many sentences is learned inside of others as well.
_RAMBLING_EVERY = 3
# So often each clause is told as so, and as not so.
_FRAMES = 6
# The rest adds nothing that was seen on sentences held aside.
_MOST_FEATURES = 40_000


def sentences(tongue: Tongue = Tongue.ENGLISH) -> Iterator[tuple[str, str]]:
    """Yield every sentence with its hazard, or ``none``; what is only asked about is none."""
    yield from _only_asked(tongue)
    if tongue is Tongue.GERMAN:
        yield from _told(_HERE / "told" / "de")
        yield from _rambling(_HERE / "told" / "de")
        yield from _aside(_HERE / "told" / "de")
        yield from _framed(_HERE / "told" / "de")
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


def _told(folder: Path, files: str = "*.jsonl") -> Iterator[tuple[str, str]]:
    for file in sorted(folder.glob(files)):
        for line in file.read_text(encoding="utf-8").splitlines():
            row = json.loads(line)
            yield row["text"], NOTHING if row.get("asked") else row["key"]


def _only_asked(tongue: Tongue) -> Iterator[tuple[str, str]]:
    """Yield questions that the routing was taught with and that tell nothing that is wrong."""
    for file in sorted(_QUESTIONS.glob("*.tsv")):
        if (file.stem == Tongue.GERMAN) is not (tongue is Tongue.GERMAN):
            continue
        for line in file.read_text(encoding="utf-8").splitlines():
            label, _, text = line.partition("\t")
            if label.startswith(_CALM_LABELS) and label not in _MAY_BE_WRONG:
                yield text, NOTHING


def _rambling(folder: Path) -> Iterator[tuple[str, str]]:
    """Yield a part of the sentences again, between what people say around what matters."""
    around = tomllib.loads((folder / "around.toml").read_text(encoding="utf-8"))
    before, after = cycle(around["before"]), cycle(around["after"])
    ends = cycle((". ", ", ", " ", "\n", "! "))
    for text, key in islice(_told(folder), 0, None, _RAMBLING_EVERY):
        first = f"{next(before)}{next(ends)}"
        yield f"{first}{text}{next(ends)}{next(after)}", key


def _aside(folder: Path) -> Iterator[tuple[str, str]]:
    """Yield another part again beside an ordinary message: as a side remark, or before one."""
    ordinary = cycle(text for text, _ in _told(folder, "ordinary_*.jsonl"))
    ends = cycle((". ", ", ", " ", "\n", "? Und ", " ach und ", ". Übrigens: "))
    for at, (text, key) in enumerate(islice(_told(folder), 1, None, _RAMBLING_EVERY)):
        both = (next(ordinary), text) if at % 2 else (text, next(ordinary))
        yield next(ends).join(both), key


def _framed(folder: Path) -> Iterator[tuple[str, str]]:
    """Yield each clause as it is told of now, and as it is only feared, read of, over or denied.

    What is told of another thing or body as of now is none.
    """
    framed = tomllib.loads((folder / "framed.toml").read_text(encoding="utf-8"))
    now, calm = cycle(framed["now"]), cycle(framed["calm"])
    for key, clauses in framed["clauses"].items():
        for clause in clauses:
            for _ in range(_FRAMES):
                yield f"{next(now)} {clause}", key
                yield f"{next(calm)} {clause}", NOTHING
    for clause in framed["other"]:
        for _ in range(_FRAMES):
            yield f"{next(now)} {clause}", NOTHING


def digest(tongue: Tongue = Tongue.ENGLISH) -> str:
    """Return a fingerprint of all sentences."""
    told = "\n".join(f"{key}\t{text}" for text, key in sentences(tongue))
    return hashlib.sha256(told.encode()).hexdigest()


class Learned(NamedTuple):
    """Which hazard a text tells, and whether it tells any."""

    each: Linear
    any: Either


def train(rows: list[tuple[str, str]], tongue: Tongue = Tongue.ENGLISH) -> Learned:
    """Return what is learned from sentences."""
    texts = [numbers_of(text, tongue) for text, _ in rows]
    labels = [key for _, key in rows]
    each = fitted(texts, labels, least_seen=_LEAST_SEEN, ridge=_RIDGE, rounds=_ROUNDS)
    told = [key != NOTHING for key in labels]
    return Learned(each, either(texts, told, ridge=_RIDGE_OF_ANY, rounds=_ROUNDS_OF_ANY))


def numbers_of(text: str, tongue: Tongue) -> NDArray[np.int64]:
    """Return the numbers of the features of a text, each once."""
    return np.unique(features(take_apart(text, tongue)).numbers)


def save(tongue: Tongue, learned: Learned) -> None:
    """Write the models of a language."""
    kept(
        _TO / f"learned_{tongue}.npz",
        digest(tongue),
        any_weights=learned.any.weights,
        any_step=np.array(learned.any.step),
        any_bias=np.array(learned.any.bias),
        **arrays(learned.each, _MOST_FEATURES),
    )


def main() -> None:
    """Train on every sentence of the languages that are named, or of both, and write the models."""
    for tongue in map(Tongue, sys.argv[1:] or list(Tongue)):
        save(tongue, train(list(sentences(tongue)), tongue))


if __name__ == "__main__":
    main()
