"""What stands around a figure: known phrases, other figures, and its place in the whole text."""

from collections.abc import Sequence
from functools import lru_cache
from itertools import pairwise

import numpy as np
from numpy.typing import NDArray

from bot.language.hearing.items import HOTTEST, Item, Numbers, both, group_of, number_of, phrase
from bot.language.hearing.scene import Scene

__all__ = ["beside", "marks_around", "of_its_kind", "whole"]

_FAR = (1, 2, 3, 5, 8, 12, 20, 40)
_SHORT_GAP = 2


def marks_around(
    scene: Scene,
    begins: NDArray[np.int64],
    ends: NDArray[np.int64],
    starts: Sequence[int],
    at: NDArray[np.int64],
) -> Numbers:
    """Return the known phrases before and behind: the nearest ones, and those of each group.

    Of each whether it is in the same sentence, how near, and how many figures stand between.
    """
    marks = list(scene.marks)
    if not marks:
        return np.zeros((len(begins), 24), dtype=np.uint64)
    first = np.array([mark.start for mark in marks])
    last = np.array([mark.end for mark in marks])
    ids = [number_of(phrase(mark.kind, mark.value)) for mark in marks]
    groups = np.array([group_of(mark.kind) for mark in marks])
    order = np.arange(len(marks))
    # The last phrase of each group up to each one, and the next one from it on.
    so_far = [np.maximum.accumulate(np.where(groups == g, order, -1)) for g in range(4)]
    to_come = [
        np.minimum.accumulate(np.where(groups == g, order, len(marks))[::-1])[::-1]
        for g in range(3)
    ]
    back = np.searchsorted(last, begins, side="right") - 1
    on = np.searchsorted(first, ends)
    found = np.stack(
        [
            *(back - step for step in range(3)),
            *(on + step for step in range(2)),
            *(np.where(back >= 0, column[back], -1) for column in so_far),
            *(np.append(column, len(marks))[on] for column in to_come),
        ],
        axis=1,
    )
    there = (found >= 0) & (found < len(marks))
    safe = np.where(there, found, 0)
    sentence = np.searchsorted(scene.sentence_ends, first, side="right")
    here = np.searchsorted(scene.sentence_ends, begins, side="right")
    near = (sentence[safe] == here[:, None]).astype(np.uint64)
    token = np.searchsorted(starts, first)
    far = np.searchsorted(_FAR, np.abs(at[:, None] - token[safe])).astype(np.uint64)
    rank = np.arange(len(begins))[:, None]
    passed = np.searchsorted(begins, first)[safe]
    figures = np.where(first[safe] < begins[:, None], rank - passed, passed - rank - 1)
    figures = np.minimum(figures, 2).astype(np.uint64)
    eight, two = np.uint64(8), np.uint64(2)
    known = np.array(ids, dtype=np.uint64)[safe]
    nearest = both(known, near)
    placed = both(known, (figures * eight * two + far) * two + near)
    told = np.stack([placed, nearest], axis=2).reshape(len(begins), -1)
    return np.where(np.repeat(there, 2, axis=1), told, np.uint64(0))


def beside(items: Sequence[Item], names: Sequence[str], at: NDArray[np.int64]) -> Numbers:
    """Return what the two figures before and the two behind are, and what stands between."""
    gaps = []
    for low, high in pairwise(at.tolist()):
        many = high - low - 1
        gaps.append(" ".join(names[low + 1 : high]) if many <= _SHORT_GAP else str(min(many, 9)))
    rows = []
    for place, item in enumerate(items):
        row: list[int] = []
        for step, gap in ((-1, place - 1), (1, place), (-2, -1), (2, -1)):
            if not 0 <= place + step < len(items):
                row += [5, 6]
                continue
            other = items[place + step]
            way = (other.value > item.value) - (other.value < item.value)
            row.append(_stands(step, other.unit, gaps[gap] if gap >= 0 else way))
            row.append(_is_like(step, other.unit, way, other.kin == item.kin))
        rows.append(row)
    return np.array(rows, dtype=np.uint64)


@lru_cache(maxsize=1 << 12)
def _stands(step: int, unit: str, gap: str | int) -> int:
    return number_of(f"{step}{unit}{gap}")


@lru_cache(maxsize=1 << 10)
def _is_like(step: int, unit: str, way: int, alike: bool) -> int:
    return number_of(f"{step}{unit}{way}{alike}")


def of_its_kind(
    items: Sequence[Item], padded: Numbers, at: NDArray[np.int64], before_first: int
) -> Numbers:
    """Return the words about the last figure of the same kind, and about the next one."""
    last: dict[str, int] = {}
    before, behind = [-1] * len(items), [-1] * len(items)
    for place, item in enumerate(items):
        other = last.get(item.kin, -1)
        before[place] = other
        if other >= 0:
            behind[other] = place
        last[item.kin] = place
    values = np.array([item.value for item in items])
    columns = []
    for places in (np.array(before), np.array(behind)):
        there = places >= 0
        token = np.where(there, at[places], 0) + before_first
        more = np.sign(values[places] - values).astype(np.int64).astype(np.uint64)
        words = [padded[token - 2], padded[token - 1], padded[token + 1]]
        words.append(both(words[1], more))
        columns += [np.where(there, word, np.uint64(3)) for word in words]
    return np.stack(columns, axis=1)


def whole(
    scene: Scene,
    items: Sequence[Item],
    names: Sequence[str],
    starts: Sequence[int],
    at: NDArray[np.int64],
) -> Numbers:
    """Return where in the text each figure stands, and how it ranks among what may be degrees."""
    warm = sorted({item.value for item in items if item.may_be_degrees})
    told = {mark.value for mark in scene.marks if mark.kind == "place"}
    units = {item.figure.unit for item in items}
    hot = any(_HOT <= value <= HOTTEST for value in warm)
    english, metric = not units.isdisjoint(("degF", "in")), not units.isdisjoint(("degC", "cm"))
    system = number_of(f"h{hot}{english}{metric}{scene.normal.metric}")
    places = number_of(f"b{bool(told & {'basking', 'hot'})}{'cool' in told}{'night' in told}")
    first = np.searchsorted(starts, [scene.sentence(item.start)[0] for item in items])
    clause = np.searchsorted(starts, [scene.clause(item.start)[0] for item in items])
    rows = []
    for place, item in enumerate(items):
        rank = -1
        if item.may_be_degrees:
            rank = 0 if item.value == warm[-1] else 1 if item.value == warm[0] else 2
        token = int(at[place])
        rows.append(
            (
                number_of(f"n{min(place, 5)}{min(len(items) - place, 4)}"),
                number_of(f"t{rank}{min(len(warm), 4)}"),
                system,
                places,
                number_of(f"l{names[first[place]] if first[place] < token else ''}"),
                number_of(f"q{names[clause[place]] if clause[place] < token else ''}"),
                number_of(f"?{_end(names, token)}"),
            )
        )
    return np.array(rows, dtype=np.uint64)


_HOT = 60
_MOST_WORDS = 25


def _end(names: Sequence[str], at: int) -> str:
    """Return how the sentence of a figure ends."""
    return next((name for name in names[at + 1 : at + _MOST_WORDS] if name in ".?!\n;"), "")
