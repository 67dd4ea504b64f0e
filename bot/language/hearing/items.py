"""The figures whose role is asked, and how what stands around them becomes numbers."""

import re
from collections.abc import Mapping
from functools import lru_cache
from typing import NamedTuple
from zlib import crc32

import numpy as np
from numpy.typing import NDArray

from bot.language.hearing.figures import Figure
from bot.language.hearing.scene import Scene
from bot.language.linear import BUCKETS

__all__ = [
    "HOTTEST",
    "LIVING_GROUP",
    "Item",
    "Numbers",
    "both",
    "group_of",
    "items_of",
    "joined",
    "number_of",
    "phrase",
]

Numbers = NDArray[np.uint64]

_NUMBER = re.compile(r"[0-9]+")
_SPREAD, _SALT = np.uint64(0x9E3779B97F4A7C15), np.uint64(0xC2B2AE3D27D4EB4F)
_SHIFT, _FOLD = np.uint64(44), np.uint64(29)
LIVING_GROUP = 2
_GROUPS: Mapping[str, int] = {
    **dict.fromkeys(("place", "reference", "temperature"), 0),
    **dict.fromkeys(("tube", "heat", "lamp", "control", "mesh", "home", "uvi", "hours"), 1),
    **dict.fromkeys(("animal", "kin", "strange", "person"), LIVING_GROUP),
    **dict.fromkeys(("wish", "asked", "intent", "restart", "corrected", "not", "how", "hedge"), 3),
}
_NO_GROUP = 4
# What may be a temperature without its unit.
_COLDEST, HOTTEST = 14, 150
_DEGREES = "degrees"
_KIN = {"temperature": _DEGREES, **dict.fromkeys(("size", "cross", "volume"), "home")}


class Item(NamedTuple):
    """A figure, or one side of a pair such as 106/80, whose role is asked.

    ``unit`` is its unit, or what it is; ``kin`` what it is like: a home is told by sides or by its
    volume, and what may be a temperature is ``degrees``.
    """

    figure: Figure
    start: int
    end: int
    value: float
    unit: str
    kin: str
    side: int = -1

    @property
    def may_be_degrees(self) -> bool:
        """Whether it may be a temperature."""
        return self.kin == _DEGREES


def items_of(scene: Scene) -> list[Item]:
    """Return what the roles of a text are asked of, in order."""
    found: list[Item] = []
    for figure in scene.figures:
        kind = figure.kind
        unit = figure.unit or kind
        if kind not in ("pair", "row"):
            value = float(figure.low)
            kin = _KIN.get(kind, kind)
            if kind == "plain" and _COLDEST <= value <= HOTTEST:
                kin = _DEGREES
            found.append(Item(figure, figure.start, figure.end, value, unit, kin))
            continue
        for side, match in enumerate(_NUMBER.finditer(figure.text)):
            start, end = figure.start + match.start(), figure.start + match.end()
            value = float(figure.sides[side].value)
            found.append(Item(figure, start, end, value, unit, _DEGREES, side))
    return found


@lru_cache(maxsize=1 << 15)
def number_of(name: str) -> int:
    """Return the number of a name."""
    return crc32(name.encode())


def joined(numbers: Numbers, salts: Numbers) -> NDArray[np.int64]:
    """Return the buckets of numbers, each under its template's salt."""
    mixed = (numbers + salts * _SALT) * _SPREAD
    # The number of buckets is a power of two.
    return ((mixed >> _SHIFT) & np.uint64(BUCKETS - 1)).astype(np.int64)


def both(one: Numbers, other: Numbers) -> Numbers:
    """Return numbers for two things that stand together."""
    return np.asarray((one * _SPREAD) ^ (one >> _FOLD) ^ other)


def group_of(kind: str) -> int:
    """Return which of the groups of phrases a kind belongs to."""
    return _GROUPS.get(kind, _NO_GROUP)


def phrase(kind: str, value: str) -> str:
    """Return what a known phrase is known as; every animal is one."""
    return f"m{kind}{'' if group_of(kind) == LIVING_GROUP else value}"
