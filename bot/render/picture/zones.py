"""A field of UV as four calm zones: stronger, right, weaker, shade; each a fill and a texture."""

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass
from math import ceil, floor
from typing import Any

import numpy as np
from contourpy import contour_generator
from numpy.typing import NDArray

from bot.drawing import Grid
from bot.render.picture.geometry import Rect, thinned
from bot.render.picture.inks import Ink
from bot.render.picture.svg import Point, Shape, path, polyline

__all__ = ["Field", "zone_shapes"]

_Floats = NDArray[np.float64]
_WELL_ABOVE = 1e9
_BELOW_ALL = -1.0


_Told = dict[str, float | Ink | str]
_HEAVY: _Told = {"stroke": Ink.UV, "stroke_width": 3.2}
_THIN: _Told = {"stroke": Ink.UV, "stroke_width": 1.4, "stroke_opacity": 0.6}
_SHADED: _Told = {"stroke": Ink.SHADE_LINE, "stroke_width": 2.4, "stroke_dasharray": "3 7"}


@dataclass(frozen=True, slots=True)
class Field:
    """Values at places of the sheet [units], and the box they are drawn in."""

    x: _Floats
    y: _Floats
    values: _Floats
    box: Rect

    @classmethod
    def of(
        cls, grid: Grid, to_x: Callable[[float], float], to_y: Callable[[float], float], box: Rect
    ) -> "Field":
        """Return a grid where it lies on the sheet; what has no value is the brightest there is."""
        values = np.array(grid.values, dtype=np.float64)
        values = np.where(np.isnan(values), np.nanmax(values), values)
        xs, ys = np.array([to_x(x) for x in grid.x]), np.array([to_y(y) for y in grid.y])
        return cls(xs, ys, values, box)

    def at(self, x: _Floats, y: _Floats) -> _Floats:
        """Return the values at places, bilinear between those that are known."""
        across, down = self.x[1] - self.x[0], self.y[1] - self.y[0]
        row = np.clip((y - self.y[0]) / down, 0.0, len(self.y) - 1.001)
        column = np.clip((x - self.x[0]) / across, 0.0, len(self.x) - 1.001)
        i, j = row.astype(int), column.astype(int)
        a, b, v = row - i, column - j, self.values
        return np.asarray(
            v[i, j] * (1 - a) * (1 - b)
            + v[i + 1, j] * a * (1 - b)
            + v[i, j + 1] * (1 - a) * b
            + v[i + 1, j + 1] * a * b
        )


def zone_shapes(
    field: Field, wanted: tuple[float, float] | None, levels: tuple[float, ...]
) -> list[Shape]:
    """Return the zones of a field as shapes, the lines between them, and the other levels thin.

    The lowest level is where shade begins.
    """
    shade = levels[0]
    low, high = wanted or (_WELL_ABOVE, _WELL_ABOVE)
    zones = (
        (high, _WELL_ABOVE, Ink.UV_STRONG, _slanted),
        (low, high, Ink.UV_RIGHT, None),
        (shade, low, Ink.UV_WEAK, _dotted),
        (_BELOW_ALL, shade, Ink.SHADE, _level),
    )
    found: list[Shape] = []
    contours = contour_generator(x=field.x, y=field.y, z=field.values, fill_type="OuterCode")
    for first, last, ink, texture in zones:
        if first >= last:
            continue
        d = "".join(_rings(*contours.filled(first, last)[:2]))
        if d:
            found.append(path(d, fill=ink, fill_rule="evenodd"))
            if texture is not None:
                found.append(texture(field, first, last))
    for level in levels:
        told = _THIN
        if level == shade:
            told = _SHADED
        elif level in (low, high):
            told = _HEAVY
        for line in contours.lines(level):
            found.append(polyline(thinned([_pair(point) for point in line]), **told))
    return found


def _pair(point: Any) -> Point:
    return float(point[0]), float(point[1])


def _rings(outlines: Sequence[Any], kinds: Sequence[Any]) -> Iterator[str]:
    """Return each ring of the outlines as a path; a kind of 1 begins a new one."""
    for points, codes in zip(outlines, kinds, strict=True):
        ring: list[Point] = []
        for point, code in zip(points, codes, strict=True):
            if code == 1 and len(ring) > 2:
                yield _closed(ring)
                ring = []
            ring.append(_pair(point))
        if len(ring) > 2:
            yield _closed(ring)


def _closed(ring: list[Point]) -> str:
    kept = thinned(ring)
    return "M" + "L".join(f"{x:.1f} {y:.1f}" for x, y in kept) + "z" if len(kept) > 2 else ""


def _inside(field: Field, x: _Floats, y: _Floats, low: float, high: float) -> NDArray[np.bool_]:
    values = field.at(x, y)
    first, last = sorted((float(field.y[0]), float(field.y[-1])))
    return np.asarray((values >= low) & (values < high) & (y >= first) & (y <= last))


def _dotted(field: Field, low: float, high: float) -> Shape:
    box = field.box
    xs = np.arange(ceil(box.x0 / 14) * 14 + 3, box.x1 - 3, 14, dtype=np.float64)
    ys = np.arange(ceil(box.y0 / 14) * 14 + 3, box.y1 - 3, 14, dtype=np.float64)
    across, down = (part.ravel() for part in np.meshgrid(xs, ys))
    kept = _inside(field, across, down, low, high)
    d = "".join(f"M{x:.0f} {y:.0f}h0" for x, y in zip(across[kept], down[kept], strict=True))
    return path(
        d or "M0 0", stroke=Ink.UV, stroke_width=2.7, stroke_linecap="round", stroke_opacity=0.5
    )


def _slanted(field: Field, low: float, high: float) -> Shape:
    box, tall = field.box, field.box.y1 - field.box.y0
    runs = []
    for start in np.arange(floor((box.x0 - tall) / 15.6) * 15.6, box.x1, 15.6):
        steps = np.arange(max(box.x0 + 2 - start, 2.0), min(box.x1 - 2 - start, tall - 1.0), 3.0)
        runs.append((start + steps, box.y0 + steps))
    return path(_cut(field, runs, low, high), stroke=Ink.UV, stroke_width=1.8, stroke_opacity=0.42)


def _level(field: Field, low: float, high: float) -> Shape:
    box = field.box
    xs = np.arange(box.x0 + 2, box.x1 - 2, 3.0)
    ys = np.arange(ceil(box.y0 / 12) * 12 + 2, box.y1 - 1, 12.0)
    runs = [(xs, np.full_like(xs, y)) for y in ys]
    return path(
        _cut(field, runs, low, high), stroke=Ink.SHADE_LINE, stroke_width=1.3, stroke_opacity=0.55
    )


def _cut(field: Field, runs: list[tuple[_Floats, _Floats]], low: float, high: float) -> str:
    """Return the parts of straight runs along which the value lies between two."""
    parts = []
    for xs, ys in runs:
        if len(xs) < 2:
            continue
        kept = np.concatenate([[False], _inside(field, xs, ys, low, high), [False]])
        edges = np.flatnonzero(kept[1:] != kept[:-1])
        for first, after in zip(edges[::2], edges[1::2], strict=True):
            if after - first > 1:
                last = after - 1
                parts.append(f"M{xs[first]:.0f} {ys[first]:.0f}L{xs[last]:.0f} {ys[last]:.0f}")
    return "".join(parts) or "M0 0"
