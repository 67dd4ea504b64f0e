"""Trains the second opinion on figures from the marked messages beside it.

    PYTHONPATH=. python -m tests.bot.language.linking.training

writes ``bot/language/hearing/learned.npz`` in minutes: two multinomial logistic regressions, of
the role of each figure and of how it stands. The messages were written for it, each file by
another hand, so none of them is a measure of what is heard; ``without FILE…`` trains on the others
and says how well the named ones are heard.
"""

import hashlib
import sys
import tomllib
from collections.abc import Callable, Iterator, Sequence, Set
from importlib.resources import files
from pathlib import Path
from typing import NamedTuple
from unittest.mock import patch

import numpy as np
from numpy.typing import NDArray

from bot.language.hearing import learned
from bot.language.hearing.facts import Fact, Standing
from bot.language.hearing.features import features
from bot.language.hearing.items import Item, items_of
from bot.language.hearing.learned import FIRST, NO_ROLE, Linker, steps, steps_after
from bot.language.hearing.listening import Listened, listened
from bot.language.hearing.second import ROLES
from bot.questions.setup.told import kept_names
from tests.bot.language.hearing_score import SENTENCES, sentences
from tests.bot.language.hearing_score import told as value_told
from tests.bot.language.marked import Found, Mark, found_of, messages, taken_apart
from tests.bot.linear_training import kept, of_rows, rows_in_eight_bits

__all__ = ["digest", "linker", "told"]

_HERE = Path(__file__).parent
_MOST_FEATURES = 11_000
_RATE, _ROUNDS = 8.0, 8

_UNSAID = "unsaid"

_ROLES = {
    "en": "enclosure",
    "tu": "tube",
    "tl": "tube_length",
    "ta": "age",
    "aa": "animal_age",
    "di": "distance",
    "ld": "lamp_distance",
    "ba": "basking",
    "wa": "warm",
    "co": "cool",
    "ni": "night",
    "ro": "room",
    "wt": "watts",
    "ho": "hours",
    "of": "on_for",
    "uv": "uvi",
    "wd": "water",
}
_STANDS = {
    "": Standing.IS,
    "-": Standing.WAS,
    "!": Standing.WISHED,
    "?": Standing.ASKED,
    "+": Standing.PLANNED,
    "~": Standing.OTHERS,
}


class Told(NamedTuple):
    """The figures of a message: their features, and the role and standing of each."""

    buckets: NDArray[np.int64]
    after: NDArray[np.uint64]
    roles: list[str]
    stands: list[str]


def rows_told(paths: Sequence[Path]) -> list[Told]:
    """Return what files of marked messages teach, and the project's own sentences."""
    marked = [message for path in paths for message in messages(path)]
    kinds = tomllib.loads(_text(SENTENCES / "kinds.toml"))
    marked += [message for rows in kinds.values() for message in rows]
    return [*(row for row in map(told, marked) if row), *own()]


def files_told() -> list[Path]:
    """Return the files of marked messages."""
    return sorted((_HERE / "told").glob("*.toml"))


def digest() -> str:
    """Return a fingerprint of all messages."""
    files = [*files_told(), *sorted(SENTENCES.glob("*.toml"))]
    told = "\n".join(_text(file) for file in files)
    return hashlib.sha256(told.encode()).hexdigest()


def told(message: str) -> Told | None:
    """Return what a marked message teaches; None: it has no figure."""
    text, marks = taken_apart(message)
    first = listened(text, kept_names())
    items = items_of(first.scene)
    if not items:
        return None
    buckets = features(first.scene, items, {item.start: first.read(item) for item in items})
    found = [_mark_of(item, first.scene.normal.span, marks) for item in items]
    roles = [_ROLES[mark.role] if mark else NO_ROLE for mark in found]
    stands = [_STANDS[mark.sign].value if mark else NO_ROLE for mark in found]
    return Told(buckets, steps(first.scene, items), roles, stands)


def own() -> Iterator[Told]:
    """Yield what the sentences of ``tests/bot/language/sentences`` teach.

    The listeners were made beside these, so what they made of them is left out.
    """
    names = tuple(p.name for p in sorted(SENTENCES.glob("*.toml")) if "[[sentence]]" in _text(p))
    for row in sentences(names):
        first = listened(row["text"], kept_names())
        items = items_of(first.scene)
        if not items:
            continue
        wanted = {(name, value) for name, values in row["hear"].items() for value in values}
        found = [_heard(first, item, wanted) for item in items]
        buckets = features(first.scene, items, dict.fromkeys((i.start for i in items), _UNSAID))
        roles, stands = ([one[at] for one in found] for at in (0, 1))
        yield Told(buckets, steps(first.scene, items), roles, stands)


def _heard(first: Listened, item: Item, wanted: Set[tuple[str, str]]) -> tuple[str, str]:
    """Return role and standing of a figure by what must be heard in its sentence."""
    row = first.scene.read.get(item.figure.start)
    if isinstance(row, Fact) and row.name in ROLES and (row.name.value, value_told(row)) in wanted:
        return ROLES[row.name], row.standing.value
    row = first.apart.get(item.figure.start)
    if isinstance(row, Fact) and row.name in ROLES:
        stands = Standing.WAS if row.standing is Standing.NOT else row.standing
        return ROLES[row.name], stands.value
    return NO_ROLE, NO_ROLE


def _text(path: Path) -> str:
    return path.read_text(encoding="utf-8")


def _mark_of(
    item: Item, span: Callable[[int, int], tuple[int, int]], marks: Sequence[Mark]
) -> Mark | None:
    """Return the mark of a figure; of several the one that is so now."""
    start, end = span(item.start, max(item.end, item.figure.told_to))
    found = [m for m in marks if m.role in _ROLES and m.start < end and start < m.end]
    if item.figure.told_to:
        found = [m for m in found if m.words.strip("~ ") in item.figure.text] or found
    return min(found, key=lambda mark: mark.sign != "", default=None)


def linker(rows: Sequence[Told]) -> Linker:
    """Return what is learned from messages."""
    keys, of_role, bias = _fitted(rows, [row.roles for row in rows])
    ways, of_stand, stand_bias = _fitted(rows, [row.stands for row in rows])
    weights = np.concatenate([of_role, of_stand], axis=1)
    used = np.flatnonzero(np.abs(weights).max(axis=1))
    row = np.full(len(weights), len(used))
    row[used] = np.arange(len(used))
    kept_rows = np.concatenate([weights[used], np.zeros((1, weights.shape[1]))])
    return Linker(keys, ways, row, kept_rows.astype(np.float32), np.concatenate([bias, stand_bias]))


def _fitted(
    rows: Sequence[Told], labels: Sequence[Sequence[str]]
) -> tuple[tuple[str, ...], NDArray[np.float32], NDArray[np.float32]]:
    """Return labels, weights and biases; the label before each figure is one of its features."""
    before = [label for row in labels for label in (FIRST, *row[:-1])]
    after = np.concatenate([row.after for row in rows])
    stepped = np.empty(after.shape, dtype=np.int64)
    for label in set(before):
        these = np.array([each == label for each in before])
        stepped[these] = steps_after(after[these], label)
    both = np.concatenate([np.concatenate([row.buckets for row in rows]), stepped], axis=1)
    flat = [str(label) for row in labels for label in row]
    return of_rows(both, flat, rate=_RATE, rounds=_ROUNDS)


def heard_without(names: Sequence[str]) -> None:
    """Print how the named files are heard where only the others were learned."""
    paths = files_told()
    left = [path for path in paths if path.stem in names]
    model = linker(rows_told([path for path in paths if path not in left]))
    with patch.object(learned, "_model", lambda: model):
        for path in left:
            print(path.stem, summed(found_of(messages(path))))


def summed(found: Found) -> str:
    """Return the three figures of a batch."""
    return f"{found.precision:.3f} / {found.recall:.3f} / {found.found_or_asked:.3f}"


def main() -> None:
    """Train on every message and write the model, or try it on files left out."""
    if sys.argv[1:2] == ["without"]:
        heard_without(sys.argv[2:])
        return
    model = linker(rows_told(files_told()))
    buckets = np.flatnonzero(model.row < len(model.weights) - 1)
    kept(
        Path(str(files("bot.language.hearing"))) / "learned.npz",
        digest(),
        roles=np.array(model.roles),
        stands=np.array(model.stands),
        bias=model.bias.astype(np.float32),
        **rows_in_eight_bits(buckets, model.weights[:-1], _MOST_FEATURES),
    )


if __name__ == "__main__":
    main()
