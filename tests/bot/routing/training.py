"""Trains the second opinion on free questions from the sentences beside it.

    PYTHONPATH=. python -m tests.bot.routing.training

writes ``bot/routes/learned.npz`` in seconds: multinomial logistic regression over all sentences at
once, weights rounded to eight bits. A line of ``told/*.tsv`` is a label, a tab and a question. The
sentences were written for it, so none of these is a measure of what it understands. Beside it is
``ordinary.txt``: the words that people write, which name no unknown animal.
"""

import hashlib
import json
import re
from collections.abc import Iterator
from importlib.resources import files
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from bot.language.linear import Linear
from bot.preferences import Preferences
from bot.queries.setup import AskQuery
from bot.question_context import context_of
from bot.routes.learned import features
from bot.routes.routing import asked_in
from tests.bot.linear_training import arrays, fitted, kept

__all__ = ["digest", "learned", "numbers_of", "ordinary", "sentences"]

HERE = Path(__file__).parent
_WORD = re.compile(r"[a-z]{5,}")
_LEAST_SEEN, _MOST_FEATURES = 2, 14_000
_RIDGE, _ROUNDS = 0.01, 60


def sentences() -> Iterator[tuple[str, str]]:
    """Yield every question with its label."""
    for file in sorted((HERE / "told").glob("*.tsv")):
        for line in file.read_text(encoding="utf-8").splitlines():
            label, _, text = line.partition("\t")
            yield text, label


def digest() -> str:
    """Return a fingerprint of all sentences."""
    told = "\n".join(f"{label}\t{text}" for text, label in sentences())
    return hashlib.sha256(told.encode()).hexdigest()


def numbers_of(text: str) -> NDArray[np.int64]:
    """Return the features of a question."""
    query = AskQuery(question=text)
    return features(asked_in(query, context_of(query, {"question": text}, Preferences())))


def ordinary() -> str:
    """Return the words that people write in English, of five letters or more, a line each."""
    calm = (HERE.parent / "dangers" / "told").glob("*.jsonl")
    told = [row.partition("\t")[2] for file in _english() for row in _lines(file)]
    told += [json.loads(row)["text"] for file in sorted(calm) for row in _lines(file)]
    words = {word for text in told for word in _WORD.findall(text.lower())}
    return "".join(f"{word}\n" for word in sorted(words))


def _english() -> list[Path]:
    return [file for file in sorted((HERE / "told").glob("*.tsv")) if file.stem != "de"]


def _lines(file: Path) -> list[str]:
    return file.read_text(encoding="utf-8").splitlines()


def learned(rows: list[tuple[str, str]]) -> Linear:
    """Return what is learned from questions."""
    texts = [numbers_of(text) for text, _ in rows]
    return fitted(
        texts, [label for _, label in rows], least_seen=_LEAST_SEEN, ridge=_RIDGE, rounds=_ROUNDS
    )


def main() -> None:
    """Train on every question and write the model."""
    model = learned(list(sentences()))
    to = Path(str(files("bot.routes"))) / "learned.npz"
    kept(to, digest(), **arrays(model, _MOST_FEATURES))
    to.with_name("ordinary.txt").write_text(ordinary(), encoding="ascii")


if __name__ == "__main__":
    main()
