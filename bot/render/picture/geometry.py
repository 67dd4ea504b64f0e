"""Rectangles and lines on a sheet, and whether they meet."""

from collections.abc import Sequence
from dataclasses import dataclass
from math import hypot

from bot.render.picture.svg import Point

__all__ = ["Rect", "enters", "thinned"]


@dataclass(frozen=True, slots=True)
class Rect:
    """A rectangle of the sheet [units], y downwards."""

    x0: float
    y0: float
    x1: float
    y1: float

    def grown(self, by: float) -> "Rect":
        """Return it larger on every side."""
        return Rect(self.x0 - by, self.y0 - by, self.x1 + by, self.y1 + by)

    def meets(self, other: "Rect") -> bool:
        """Say whether two share more than an edge."""
        return (
            self.x0 < other.x1 and other.x0 < self.x1 and self.y0 < other.y1 and other.y0 < self.y1
        )

    def lies_in(self, other: "Rect") -> bool:
        """Say whether it is inside another."""
        return (
            self.x0 >= other.x0
            and self.x1 <= other.x1
            and self.y0 >= other.y0
            and self.y1 <= other.y1
        )


def enters(start: Point, end: Point, box: Rect) -> bool:
    """Say whether a straight line enters a rectangle (Liang and Barsky 1984)."""
    (x0, y0), (x1, y1) = start, end
    along, down, first, last = x1 - x0, y1 - y0, 0.0, 1.0
    for step, room in (
        (-along, x0 - box.x0),
        (along, box.x1 - x0),
        (-down, y0 - box.y0),
        (down, box.y1 - y0),
    ):
        if abs(step) < 1e-12:
            if room < 0.0:
                return False
            continue
        share = room / step
        if step < 0.0:
            first = max(first, share)
        else:
            last = min(last, share)
        if first > last:
            return False
    return True


def thinned(points: Sequence[Point], tolerance: float = 0.3) -> list[Point]:
    """Leave out points that a straight line passes within a tolerance (Douglas, Peucker 1973)."""
    kept = {0, len(points) - 1}
    open_ends = [(0, len(points) - 1)]
    while open_ends:
        first, last = open_ends.pop()
        (x0, y0), (x1, y1) = points[first], points[last]
        along, down = x1 - x0, y1 - y0
        long = hypot(along, down)
        farthest, at = 0.0, first
        for number in range(first + 1, last):
            x, y = points[number]
            off = (
                abs((x - x0) * down - (y - y0) * along) / long
                if long > 1e-9
                else hypot(x - x0, y - y0)
            )
            if off > farthest:
                farthest, at = off, number
        if farthest > tolerance:
            kept.add(at)
            open_ends += [(first, at), (at, last)]
    return [points[number] for number in sorted(kept)]
