"""What stands around each figure of a text, as numbers that a learned model knows."""

import re
from bisect import bisect_left
from collections.abc import Iterator, Mapping, Sequence
from fractions import Fraction
from functools import lru_cache
from typing import Any

import numpy as np
from numpy.typing import NDArray

from bot.language.hearing.around import beside, marks_around, of_its_kind, whole
from bot.language.hearing.items import Item, Numbers, both, joined, number_of, phrase
from bot.language.hearing.lexicon import Mark
from bot.language.hearing.scene import Scene
from bot.language.units import Dimension, exact

__all__ = ["features"]

_TOKEN = re.compile(r"[^\W\d_]+(?:'[^\W\d_]+)*|\d+|[^\s\w]|\n")
_BEFORE, _AFTER = 14, 10
# Of so many words on either side the place counts, of so many more what the figure is.
_PLACED, _CROSSED = 6, (8, 6)
_FINE = (
    *(0.5, 1, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15, 16, 18, 20, 22, 24, 26),
    *(28, 30, 32, 34, 36, 38, 40, 42, 45, 48, 52, 56, 60, 64, 68, 71, 74, 77, 80, 83, 86, 89, 92),
    *(95, 98, 101, 104, 107, 110, 115, 120, 130, 150, 180, 250, 500, 1000),
)
_COARSE = (2, 4, 7, 11, 15, 20, 26, 30, 36, 42, 50, 60, 70, 78, 84, 90, 98, 106, 120, 160, 300)
_IN_UNIT = {Dimension.LENGTH: "in", Dimension.POWER: "W", Dimension.VOLUME: "gal"}


def features(scene: Scene, items: Sequence[Item], read: Mapping[int, str]) -> NDArray[np.int64]:
    """Return the buckets of each item's features [item, template].

    ``read`` tells by the start of an item what the listeners made of it.
    """
    names, meant, starts = _tokens(scene, items)
    begins = np.array([item.start for item in items])
    at = np.searchsorted(starts, begins, side="right") - 1
    around = at[:, None] + np.arange(_BEFORE + _AFTER + 1)
    words, known = (_padded([number_of(name) for name in row]) for row in (names, meant))
    lines = np.searchsorted(scene.sentence_ends, starts, side="right")
    same = _padded([int(line) for line in lines])[around] == lines[at].astype(np.uint64)[:, None]
    own = np.array([_own(item) for item in items], dtype=np.uint64)
    kind, fine, coarse = own[:, :1], own[:, 1:2], own[:, 2:3]
    told = np.array([[number_of(f"r{read.get(i.start, '')}")] for i in items], dtype=np.uint64)
    stands = np.array([[number_of(scene.standing(i.figure))] for i in items], dtype=np.uint64)
    others = beside(items, names, at)
    in_all = whole(scene, items, names, starts, at)
    marks = marks_around(scene, begins, np.array([i.end for i in items]), starts, at)
    alike = of_its_kind(items, words, at, _BEFORE)
    before, after = _sides(words[around])
    next_to = np.concatenate([before[:, :1], after[:, :1], fine, kind, stands], axis=1)
    blocks = [
        *(own, both(own[:, 3:4], kind), told, both(next_to, told), stands, both(stands, kind)),
        *_in_place(*_sides(words[around]), kind, coarse),
        *_in_place(*_sides(known[around]), kind, coarse),
        *(both(before[:, :2], fine), both(after[:, :2], fine)),
        *(marks, both(marks[:, :10], kind), others, both(others, kind)),
        *(both(others[:, :2], coarse), both(others[:, :1], others[:, 1:2])),
        *(alike, both(alike, before[:, :1]), in_all, both(in_all, kind)),
        both(in_all[:, :3], coarse),
    ]
    placed = np.concatenate(blocks, axis=1)
    # In a bag the place of a word does not count.
    bags = [
        both(side, line.astype(np.uint64))
        for side, line in zip((before, after), _sides(same), strict=True)
    ]
    bags += [both(bag[:, :most], kind) for bag, most in zip(bags, _CROSSED, strict=True)]
    salts = np.arange(1, placed.shape[1] + 1, dtype=np.uint64)
    bag_salts = np.repeat(np.arange(1001, 1005, dtype=np.uint64), [bag.shape[1] for bag in bags])
    return joined(np.concatenate([placed, *bags], axis=1), np.concatenate([salts, bag_salts]))


def _padded(numbers: Sequence[int]) -> Numbers:
    padded = np.ones(_BEFORE + len(numbers) + _AFTER, dtype=np.uint64)
    padded[_BEFORE : _BEFORE + len(numbers)] = numbers
    return padded


def _sides(window: NDArray[Any]) -> tuple[NDArray[Any], NDArray[Any]]:
    """Return what stands before a figure and what behind it, each from the figure on."""
    return window[:, _BEFORE - 1 :: -1], window[:, _BEFORE + 1 :]


def _in_place(before: Numbers, after: Numbers, kind: Numbers, coarse: Numbers) -> Iterator[Numbers]:
    """Yield the words on either side, alone and with their neighbours and what the figure is."""
    behind = both(before[:, 1:4], before[:, :3])
    ahead = both(after[:, :2], after[:, 1:3])
    between = both(before[:, :1], after[:, :1])
    pairs = np.concatenate([behind[:, :1], ahead[:, :1], between], axis=1)
    yield before[:, :_PLACED]
    yield after[:, :_PLACED]
    yield both(before[:, :4], kind)
    yield both(after[:, :3], kind)
    yield both(np.concatenate([before[:, :2], after[:, :2]], axis=1), coarse)
    yield from (behind, ahead, between, both(pairs, kind))
    yield both(behind[:, 1:2], before[:, :1])
    yield both(behind[:, :1], after[:, :1])
    yield both(ahead[:, :1], before[:, :1])


def _tokens(scene: Scene, items: Sequence[Item]) -> tuple[list[str], list[str], list[int]]:
    """Return the words and signs of a text, what each is known as, and where they begin.

    A figure is one, and so is a known phrase: of its words the last one stands for it.
    """
    text, at = scene.text, 0
    names: list[str] = []
    meant: list[str] = []
    starts: list[int] = []
    parts: list[tuple[int, int, Item | Mark | None]] = [(i.start, i.end, i) for i in items]
    parts += [(mark.start, mark.end, mark) for mark in scene.marks]
    parts.sort(key=_place)
    for start, end, part in (*parts, (len(text), len(text), None)):
        for match in _TOKEN.finditer(text, at, start):
            names.append(match[0])
            meant.append(match[0])
            starts.append(match.start())
        if part is None or start < at:
            continue
        if isinstance(part, Mark):
            names.append(text[start:end].rsplit(" ", 1)[-1])
            meant.append(phrase(part.kind, part.value))
        else:
            names.append(f"#{part.unit}")
            meant.append(names[-1])
        starts.append(start)
        at = end
    return names, meant, starts


def _place(part: tuple[int, int, object]) -> tuple[int, int]:
    return part[:2]


def _own(item: Item) -> tuple[int, ...]:
    figure = item.figure
    high = item.value if item.side >= 0 else float(figure.high)
    label = figure.text.endswith((".0", ",0"))
    return _own_of(figure.kind, figure.unit, item.value, high, label, item.side)


@lru_cache(maxsize=1 << 12)
def _own_of(
    kind: str, unit: str | None, value: float, high: float, label: bool, side: int
) -> tuple[int, ...]:
    plain = value
    if kind in _IN_UNIT and unit:
        plain = float(exact(Fraction(value), unit, _IN_UNIT[Dimension(kind)]))
    elif kind == "temperature" and unit == "degC":
        plain = value * 1.8 + 32
    name = f"{kind}{unit if kind in ('duration', 'temperature') else ''}{side}"
    return (
        number_of(f"k{name}"),
        number_of(f"f{name}{bisect_left(_FINE, plain)}"),
        number_of(f"c{name}{bisect_left(_COARSE, plain)}"),
        number_of(f"s{high > value}{label}{value == int(value)}"),
        number_of(f"u{unit}"),
        number_of(f"v{value:g}{unit}"),
        number_of(f"p{bisect_left(_FINE, value)}"),
    )
