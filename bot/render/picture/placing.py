"""Finding a place for words that no other word, sign, thing or line already has.

Candidates lie in rings round what the words belong to, dearer the farther away and the more they
turn from the liked side; those that meet something are left out. Fewest candidates first, then
some other orders from a fixed start: the same input gives the same picture.
"""

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from math import cos, hypot, pi, sin
from random import Random

from bot.render.picture.geometry import Rect, enters
from bot.render.picture.lettering import leading, width
from bot.render.picture.svg import Point

__all__ = ["CLEAR", "Label", "Placed", "placed"]

CLEAR = 5.0
"""How far words keep from everything [units]: kerning is left out of their widths."""

_DIRECTIONS, _RINGS, _ORDERS = 24, (0.0, 6.0, 14.0, 24.0, 38.0, 56.0, 80.0, 110.0, 150.0), 24
_LEADER_FROM = 22.0


@dataclass(frozen=True, slots=True)
class Label:
    """Lines of clean words that belong to a point; ``liked`` is the side they are best on."""

    lines: tuple[str, ...]
    at: Point
    size: float
    bold: bool = False
    away: float = 12.0
    liked: Point = (1.0, -1.0)

    @property
    def wide(self) -> float:
        """Return how wide the words are [units]."""
        return max(width(line, self.size, bold=self.bold) for line in self.lines)

    @property
    def tall(self) -> float:
        """Return how high the words are [units]."""
        return len(self.lines) * leading(self.size)


@dataclass(frozen=True, slots=True)
class Placed:
    """Where a label went, and the line from it to its point where it is far from it."""

    label: Label
    box: Rect
    leader: tuple[Point, Point] | None


@dataclass(frozen=True, slots=True)
class _Candidate:
    cost: float
    box: Rect
    leader: tuple[Point, Point] | None


def placed(
    labels: Sequence[Label],
    bounds: Rect,
    taken: Iterable[Rect],
    lines: Iterable[tuple[Point, Point]] = (),
) -> list[Placed | None]:
    """Return a place for each label, or None for one that fits nowhere."""
    stand, cross = list(taken), list(lines)
    choices = [sorted(_free(label, bounds, stand, cross), key=lambda c: c.cost) for label in labels]
    order = sorted(range(len(labels)), key=lambda n: (len(choices[n]), n))
    best, best_cost, random = _set(order, choices), 0.0, Random(7)
    best_cost = _cost(best)
    for _ in range(_ORDERS if len(labels) > 1 else 0):
        random.shuffle(order)
        found = _set(order, choices)
        cost = _cost(found)
        if cost < best_cost:
            best, best_cost = found, cost
    return [
        Placed(label, chosen.box, chosen.leader) if chosen else None
        for label, chosen in zip(labels, best, strict=True)
    ]


def _cost(found: Sequence[_Candidate | None]) -> float:
    return sum(1e6 if one is None else one.cost for one in found)


def _set(order: Sequence[int], choices: Sequence[Sequence[_Candidate]]) -> list[_Candidate | None]:
    chosen: list[_Candidate | None] = [None] * len(choices)
    for number in order:
        others = [one for one in chosen if one]
        chosen[number] = next((c for c in choices[number] if _suits(c, others)), None)
    return chosen


def _suits(candidate: _Candidate, others: Sequence[_Candidate]) -> bool:
    grown = candidate.box.grown(CLEAR)
    for other in others:
        if grown.meets(other.box):
            return False
        if other.leader and enters(*other.leader, grown):
            return False
        if candidate.leader and enters(*candidate.leader, other.box.grown(CLEAR)):
            return False
    return True


def _free(
    label: Label, bounds: Rect, taken: Sequence[Rect], lines: Sequence[tuple[Point, Point]]
) -> Iterable[_Candidate]:
    wide, tall = label.wide, label.tall
    x, y = label.at
    liked = hypot(*label.liked) or 1.0
    for ring in _RINGS:
        for turn in range(_DIRECTIONS):
            along, down = cos(2 * pi * turn / _DIRECTIONS), sin(2 * pi * turn / _DIRECTIONS)
            away = label.away + ring
            # The box touches the ring from outside on the side it lies on.
            left = x + along * away - (wide / 2.0) * (1.0 - along)
            top = y + down * away - (tall / 2.0) * (1.0 - down)
            box = Rect(left, top, left + wide, top + tall)
            grown = box.grown(CLEAR)
            if not box.lies_in(bounds) or any(grown.meets(other) for other in taken):
                continue
            if any(enters(*line, grown) for line in lines):
                continue
            leader = None
            if ring >= _LEADER_FROM:
                nearest = (
                    min(max(x, box.x0), box.x1) - along * 3.0,
                    min(max(y, box.y0), box.y1) - down * 3.0,
                )
                leader = (nearest, (x + along * label.away * 0.7, y + down * label.away * 0.7))
                if any(enters(*leader, other) for other in taken if not _holds(other, label.at)):
                    continue
            turned = 1.0 - (along * label.liked[0] + down * label.liked[1]) / liked
            yield _Candidate(ring + 14.0 * turned, box, leader)


def _holds(box: Rect, at: Point) -> bool:
    return box.x0 <= at[0] <= box.x1 and box.y0 <= at[1] <= box.y1
