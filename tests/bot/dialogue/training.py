"""Trains what a line does after an answer from the lines beside it.

    PYTHONPATH=. python -m tests.bot.dialogue.training

writes ``bot/dialogue/following.npz``. A line of ``told/*.tsv`` is the question answered last, what
it had asked for or ``-``, a label, and the line, each behind a tab. Whole questions that the
routing is taught with are learned too, a few of each kind, as lines that ask on. All were written
for it, so none of these is a measure of what it understands.
"""

import hashlib
import tomllib
from collections.abc import Iterator
from importlib.resources import files
from pathlib import Path
from random import Random

from bot.dialogue.following import Line, features
from bot.language.linear import Linear
from bot.preferences import Preferences
from bot.queries.setup import AskQuery
from bot.question_context import context_of
from bot.routes.routing import asked_in
from tests.bot.linear_training import arrays, fitted, kept
from tests.bot.routing.training import sentences

__all__ = ["Told", "digest", "learned", "line_of", "lines", "questions"]

_HERE = Path(__file__).parent
_LEAST_SEEN, _MOST_FEATURES = 2, 14_000
_RIDGE, _ROUNDS = 0.01, 60
_OF_EACH = 40

Told = tuple[str, str, str, str]
"""The question before, what was asked for, the label and the line."""


def lines(names: tuple[str, ...] = ()) -> Iterator[Told]:
    """Yield every line as it is told, or those of some files."""
    for file in sorted((_HERE / "told").glob("*.tsv")):
        if names and file.stem not in names:
            continue
        for row in file.read_text(encoding="utf-8").splitlines():
            before, wanted, label, line = row.split("\t")
            yield before, wanted, label, line


def questions() -> Iterator[Told]:
    """Yield a few whole questions of each kind as lines that ask on, whatever stands before."""
    kinds = tomllib.loads((_HERE / "asked_on.toml").read_text(encoding="utf-8"))
    of_label = {label: kind for kind, labels in kinds.items() for label in labels}
    told: dict[str, list[str]] = {}
    for text, label in sentences():
        if kind := of_label.get(label):
            told.setdefault(kind, []).append(text)
    for kind, texts in sorted(told.items()):
        for text in Random(1).sample(texts, min(_OF_EACH, len(texts))):
            yield "?", "?", kind, text


def digest() -> str:
    """Return a fingerprint of all lines."""
    told = "\n".join("\t".join(row) for row in (*lines(), *questions()))
    return hashlib.sha256(told.encode()).hexdigest()


def line_of(told: Told) -> Line:
    """Return a line as it is looked at."""
    before, wanted, _, text = told
    query = AskQuery(question=text)
    context = context_of(query, {"question": text}, Preferences())
    return Line(asked_in(query, context), before, wanted)


def learned(rows: list[Told]) -> Linear:
    """Return what is learned from lines."""
    texts = [features(line_of(row)) for row in rows]
    labels = [label for _, _, label, _ in rows]
    return fitted(texts, labels, least_seen=_LEAST_SEEN, ridge=_RIDGE, rounds=_ROUNDS)


def main() -> None:
    """Train on every line and write the model."""
    model = learned([*lines(), *questions()])
    to = Path(str(files("bot.dialogue"))) / "following.npz"
    kept(to, digest(), **arrays(model, _MOST_FEATURES))


if __name__ == "__main__":
    main()
