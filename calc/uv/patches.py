"""What an animal can reach in the box: the platform's share in range, shade, and the heat.

An animal is a level back at one height over what it stands on: the basking platform, or the
floor beside it. Decor, hides and walls are not modelled: they add shade.
"""

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from enum import Enum
from typing import NamedTuple

import numpy as np
from numpy.typing import NDArray

from calc.uncertainty import Estimate
from calc.unknowns import Whole
from calc.uv.field_unknowns import field_unknowns, place_unknowns
from calc.uv.lamp import FARTHEST_M, NEAREST_M
from calc.uv.placement import SAFE_MINIMUM_M, check_range
from calc.uv.section import Box, HungTube, uvi_field
from calc.validity import OutsideModelError

__all__ = [
    "SHADE_UVI",
    "HeatPatch",
    "Overlap",
    "Patches",
    "Place",
    "Platform",
    "patches",
]

SHADE_UVI = 0.5
"""Under this an animal is in the shade. Source: uv_shade."""

_TOGETHER, _APART = 0.5, 0.05
_CELLS = 60


class Overlap(Enum):
    """How the patch of heat and the patch of ultraviolet lie."""

    TOGETHER = "at least half of the heat patch is in the UVI range"
    PARTLY = "some of the heat patch is in the UVI range"
    APART = "hardly any of the heat patch is in the UVI range"


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
class Place:
    """A point an animal's back can reach [m], with its UVI [1]."""

    x_m: float
    y_m: float
    z_m: float
    uvi: Estimate


@dataclass(frozen=True, slots=True)
class Patches:
    """What the animal can reach.

    ``in_range`` is the share [1] of the platform whose UVI is in the range: best, and with
    every lamp at the low and at the high end of its doubt. ``heat_in_range`` the same share of
    the heat patch. ``shade_share``: the share of the floor and platform under UVI 0.5.
    ``too_near``: the strongest place lies nearer to a tube than the safe minimum.
    """

    in_range: Estimate
    strongest: Place
    weakest: Place
    shade_share: float
    shade_reached: bool
    shade_is_sure: bool
    too_near: bool
    overlap: Overlap | None
    heat_in_range: float | None


def patches(
    tubes: Sequence[HungTube],
    box: Box,
    platform: Platform,
    back_m: float,
    low_uvi: float,
    high_uvi: float,
    heat: HeatPatch | None = None,
) -> Patches:
    """Judge the places an animal can reach against its UVI range.

    Parameters
    ----------
    tubes : one to four
    box : the enclosure [m]
    platform : the basking place [m], inside the box
    back_m : height of the animal's back over what it stands on [m], 0 to 0.5
    low_uvi : low end of the range [1], 0 or more
    high_uvi : high end of the range [1], to 20
    heat : the heat patch, if there is one

    Returns
    -------
    Patches
        Shares [1], places [m, UVI], shade and overlap.

    Notes
    -----
    3600 cells on the platform and 7200 over the whole box; the floor under the platform does
    not count. The field is that of ``uvi_field``.
    Source: line_source; uv_sideways_judgement; uv_shade.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture, Lamp
    >>> from calc.uv.screen import NoScreen
    >>> tube = HungTube(Lamp(12.0, Fixture.POLISHED), 0.3, 0.2, 0.85, NoScreen())
    >>> found = patches(
    ...     [tube], Box(1.2, 0.6, 0.9), Platform(0.15, 0.45, 0.1, 0.4, 0.3), 0.05, 3.0, 5.0
    ... )
    >>> round(found.in_range.best, 2), found.shade_reached
    (0.37, True)
    """
    check_range(low_uvi, high_uvi)
    _check(box, platform, back_m)
    doubts = field_unknowns(tubes, platform.top_m + back_m)
    # Shares count the middles of equal cells; the extremes lie on edges and corners.
    on_top, everywhere = (
        _Lit.of(tubes, *grid)
        for grid in (_over_platform(platform, back_m), _over_box(box, platform, back_m))
    )
    edges = (_over_platform(platform, back_m, _nodes), _over_box(box, platform, back_m, _nodes))
    lit = _Lit.of(tubes, *(np.concatenate(pair) for pair in zip(*edges, strict=True)))
    if np.any(np.isnan(lit.uvi)):
        raise OutsideModelError("distance from a tube to the back", 0.0, NEAREST_M, FARTHEST_M, "m")
    strong, weak = (lit.place(tubes, int(i)) for i in (np.argmax(lit.uvi), np.argmin(lit.uvi)))
    in_heat = None
    if heat is not None:
        x, y = _over_disc(heat)
        warm = uvi_field(tubes, x, y, _standing(platform, x, y) + back_m)
        in_heat = _share(warm, low_uvi, high_uvi)
    return Patches(
        in_range=_share_with_doubt(on_top.uvi, low_uvi, high_uvi, doubts),
        strongest=strong,
        weakest=weak,
        shade_share=float(np.mean(everywhere.uvi < SHADE_UVI)),
        shade_reached=weak.uvi.best < SHADE_UVI,
        shade_is_sure=weak.uvi.high < SHADE_UVI,
        too_near=_nearest(tubes, lit) < SAFE_MINIMUM_M,
        overlap=None if in_heat is None else _overlap(in_heat),
        heat_in_range=in_heat,
    )


class _Lit(NamedTuple):
    """Points [m] and their UVI [1], all flat."""

    x: NDArray[np.float64]
    y: NDArray[np.float64]
    z: NDArray[np.float64]
    uvi: NDArray[np.float64]

    @classmethod
    def of(
        cls,
        tubes: Sequence[HungTube],
        x: NDArray[np.float64],
        y: NDArray[np.float64],
        z: NDArray[np.float64],
    ) -> "_Lit":
        return cls(x, y, z, uvi_field(tubes, x, y, z))

    def place(self, tubes: Sequence[HungTube], i: int) -> Place:
        x, y, z = float(self.x[i]), float(self.y[i]), float(self.z[i])
        return Place(x, y, z, place_unknowns(tubes, x, y, z).around(float(self.uvi[i])))


_Points = tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]


_Spacing = Callable[[float, float, int], NDArray[np.float64]]


def _cells(low: float, high: float, count: int) -> NDArray[np.float64]:
    return low + (np.arange(count) + 0.5) / count * (high - low)


def _nodes(low: float, high: float, count: int) -> NDArray[np.float64]:
    return np.linspace(low, high, count + 1)


def _standing(
    platform: Platform, x: NDArray[np.float64], y: NDArray[np.float64]
) -> NDArray[np.float64]:
    return np.where(platform.holds(x, y), platform.top_m, 0.0)


def _over_platform(platform: Platform, back_m: float, spaced: _Spacing = _cells) -> _Points:
    x, y = np.meshgrid(
        spaced(platform.x0_m, platform.x1_m, _CELLS), spaced(platform.y0_m, platform.y1_m, _CELLS)
    )
    return x.ravel(), y.ravel(), np.full(x.size, platform.top_m + back_m)


def _over_box(box: Box, platform: Platform, back_m: float, spaced: _Spacing = _cells) -> _Points:
    x, y = np.meshgrid(spaced(0.0, box.length_m, 2 * _CELLS), spaced(0.0, box.depth_m, _CELLS))
    return x.ravel(), y.ravel(), (_standing(platform, x, y) + back_m).ravel()


def _over_disc(heat: HeatPatch) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Return points that share a disc evenly: rings of equal area."""
    radius = heat.radius_m * np.sqrt(_cells(0.0, 1.0, 20))
    angle = _cells(0.0, 2.0 * np.pi, 36)[:, None]
    x, y = heat.x_m + radius * np.cos(angle), heat.y_m + radius * np.sin(angle)
    return x.ravel(), y.ravel()


def _share(uvi: NDArray[np.float64], low_uvi: float, high_uvi: float) -> float:
    return float(np.mean((uvi >= low_uvi) & (uvi <= high_uvi)))


def _share_with_doubt(
    uvi: NDArray[np.float64], low_uvi: float, high_uvi: float, doubts: Whole
) -> Estimate:
    around = doubts.around(1.0)
    shares = [_share(k * uvi, low_uvi, high_uvi) for k in (around.low, 1.0, around.high)]
    return Estimate(min(shares), shares[1], max(shares))


def _overlap(in_heat: float) -> Overlap:
    if in_heat >= _TOGETHER:
        return Overlap.TOGETHER
    return Overlap.PARTLY if in_heat > _APART else Overlap.APART


def _nearest(tubes: Sequence[HungTube], lit: _Lit) -> float:
    """Return the shortest way [m] from a reachable back to the lit part of a tube."""
    ways = []
    for tube in tubes:
        beyond = np.maximum(np.abs(lit.x - tube.x_m) - tube.lamp.lit_length_m / 2.0, 0.0)
        squared = beyond**2 + (lit.y - tube.y_m) ** 2 + (lit.z - tube.z_m) ** 2
        ways.append(float(np.sqrt(squared.min())))
    return min(ways)


def _check(box: Box, platform: Platform, back_m: float) -> None:
    if not 0.0 <= back_m <= 0.5:
        raise OutsideModelError("height of the back", back_m, 0.0, 0.5, "m")
    for name, value, most in (
        ("end of the platform", platform.x1_m, box.length_m),
        ("front of the platform", platform.y1_m, box.depth_m),
        ("top of the platform", platform.top_m, box.height_m),
    ):
        if not 0.0 <= value <= most:
            raise OutsideModelError(name, value, 0.0, most, "m")
