"""Where an animal's back can be in a box: over the basking platform, and over the floor beside it.

An animal is a level back at one height over what it stands on. Decor, hides and walls are not
modelled: they add shade.
"""

from collections.abc import Callable
from dataclasses import dataclass

import numpy as np
from numpy.typing import NDArray

from calc.uv.section import Box
from calc.validity import OutsideModelError

__all__ = ["Ground", "HeatPatch", "Platform", "check_within", "ground_of"]


@dataclass(frozen=True, slots=True)
class Platform:
    """A level basking place [m]: from x0 to x1, y0 to y1, its top over the floor."""

    x0_m: float
    x1_m: float
    y0_m: float
    y1_m: float
    top_m: float

    def __post_init__(self) -> None:
        for name, low, high in (
            ("platform length", self.x0_m, self.x1_m),
            ("platform depth", self.y0_m, self.y1_m),
        ):
            if not 0.0 <= low < high:
                raise OutsideModelError(name, high - low, 0.0, np.inf, "m")

    @property
    def middle_m(self) -> tuple[float, float]:
        """Its middle along and across the enclosure [m]."""
        return (self.x0_m + self.x1_m) / 2.0, (self.y0_m + self.y1_m) / 2.0

    def holds(self, x: NDArray[np.float64], y: NDArray[np.float64]) -> NDArray[np.bool_]:
        """Return where points lie over the platform."""
        along = (x >= self.x0_m) & (x <= self.x1_m)
        return along & (y >= self.y0_m) & (y <= self.y1_m)


@dataclass(frozen=True, slots=True)
class HeatPatch:
    """The round patch warmed by a heat lamp: middle and radius [m]."""

    x_m: float
    y_m: float
    radius_m: float

    def __post_init__(self) -> None:
        if not 0.01 <= self.radius_m <= 1.0:
            raise OutsideModelError("radius of the heat patch", self.radius_m, 0.01, 1.0, "m")


@dataclass(frozen=True, slots=True)
class Ground:
    """Places of a back [m], one after the other, and which of them stand for what.

    ``platform``, ``everywhere`` and ``heat`` are middles of equal cells of the platform, of the
    whole box (on the platform where that is), and of the warmed patch; ``edges`` are corners of
    such cells, where the extremes lie.
    """

    x_m: NDArray[np.float64]
    y_m: NDArray[np.float64]
    z_m: NDArray[np.float64]
    platform: slice
    everywhere: slice
    heat: slice
    edges: slice


_Spacing = Callable[[float, float, int], NDArray[np.float64]]
_Plane = tuple[NDArray[np.float64], NDArray[np.float64]]


def ground_of(
    box: Box, platform: Platform, back_m: float, heat: HeatPatch | None, cells: int
) -> Ground:
    """Lay out the places where a back can be, ``cells`` along each side of the platform.

    The floor under the platform is none.
    """
    fine, coarse = max(2, cells * 3 // 4), max(2, cells // 2)
    plane = [
        _over_platform(platform, cells, _middles),
        _over_box(box, fine, _middles),
        _over_disc(heat, max(3, cells // 4)) if heat else (np.empty(0), np.empty(0)),
        _over_platform(platform, coarse, _nodes),
        _over_box(box, coarse, _nodes),
    ]
    x, y = (np.concatenate([one[axis] for one in plane]) for axis in (0, 1))
    on_top = np.where(platform.holds(x, y), platform.top_m, 0.0)
    ends = np.cumsum([one[0].size for one in plane]).tolist()
    # The floor right at the platform's edge counts as its top, so rounding opens no gap.
    on_top[: ends[0]] = on_top[ends[2] : ends[3]] = platform.top_m
    first, second, third, _, last = ends
    parts = slice(0, first), slice(first, second), slice(second, third), slice(third, last)
    return Ground(x, y, on_top + back_m, *parts)


def _middles(low: float, high: float, count: int) -> NDArray[np.float64]:
    return low + (np.arange(count) + 0.5) / count * (high - low)


def _nodes(low: float, high: float, count: int) -> NDArray[np.float64]:
    return np.linspace(low, high, count + 1)


def _mesh(x: NDArray[np.float64], y: NDArray[np.float64]) -> _Plane:
    return np.tile(x, y.size), np.repeat(y, x.size)


def _over_platform(platform: Platform, count: int, spaced: _Spacing) -> _Plane:
    x = spaced(platform.x0_m, platform.x1_m, count)
    return _mesh(x, spaced(platform.y0_m, platform.y1_m, count))


def _over_box(box: Box, count: int, spaced: _Spacing) -> _Plane:
    return _mesh(spaced(0.0, box.length_m, 2 * count), spaced(0.0, box.depth_m, count))


def _over_disc(heat: HeatPatch, rings: int) -> _Plane:
    """Return points that share a disc evenly: rings of equal area."""
    radius = heat.radius_m * np.sqrt(_middles(0.0, 1.0, rings))
    angle = _middles(0.0, 2.0 * np.pi, 3 * rings)[:, None]
    x, y = heat.x_m + radius * np.cos(angle), heat.y_m + radius * np.sin(angle)
    return x.ravel(), y.ravel()


def check_within(box: Box, platform: Platform, back_m: float) -> None:
    """Refuse a platform that lies outside its box, and a back [m] that no animal has."""
    if not 0.0 <= back_m <= 0.5:
        raise OutsideModelError("height of the back", back_m, 0.0, 0.5, "m")
    for name, value, most in (
        ("end of the platform", platform.x1_m, box.length_m),
        ("front of the platform", platform.y1_m, box.depth_m),
        ("top of the platform", platform.top_m, box.height_m),
    ):
        if not 0.0 <= value <= most:
            raise OutsideModelError(name, value, 0.0, most, "m")
