"""The map of an enclosure: UVI anywhere in the box, from up to four tubes or small lamps.

Axes: x along the enclosure from its warm end, y across from its back wall, z up from the
floor; tubes hang along x. The UVI is that of a level back facing up. Hoods, walls and decor
that stop or return light are not modelled: real corners and hides are darker.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum

import numpy as np
from numpy.typing import ArrayLike, NDArray

from calc.shape.line import parallel_per_flux
from calc.uv.lamp import NEAREST_M, Lamp, OwnPoint, lamp_constant
from calc.uv.point import point_uvi
from calc.uv.screen import FlatScreen, Screen, Weave, passed_by_weave, ray_transmission
from calc.uv.together import MOST_TUBES
from calc.validity import OutsideModelError

__all__ = [
    "MOST_TUBES",
    "Box",
    "Cut",
    "HungTube",
    "SectionMap",
    "each_field",
    "section_map",
    "uvi_field",
]

_TINY_M = 1e-9
_CACHED_POINTS = 8192


class Cut(Enum):
    """Which way an enclosure is cut."""

    SIDE = "along its length, seen from the front"
    END = "across its depth, seen from the end"


@dataclass(frozen=True, slots=True)
class Box:
    """The inside of an enclosure [m]."""

    length_m: float
    depth_m: float
    height_m: float

    def __post_init__(self) -> None:
        for name in ("length_m", "depth_m", "height_m"):
            value = getattr(self, name)
            if not 0.1 <= value <= 4.0:
                raise OutsideModelError(f"enclosure {name[:-2]}", value, 0.1, 4.0, "m")


@dataclass(frozen=True, slots=True)
class HungTube:
    """A tube in its place: middle along x, y and height of its axis [m], and what is below it."""

    lamp: Lamp
    x_m: float
    y_m: float
    z_m: float
    screen: Screen


@dataclass(frozen=True, slots=True)
class SectionMap:
    """UVI [1] over a cut; ``uvi[i, j]`` is at height ``z_m[i]`` and ``across_m[j]``.

    ``across_m`` is x in a side view and y in an end view; NaN within 5 cm of a tube.
    """

    cut: Cut
    at_m: float
    across_m: NDArray[np.float64]
    z_m: NDArray[np.float64]
    uvi: NDArray[np.float64]


def uvi_field(
    tubes: Sequence[HungTube], x_m: ArrayLike, y_m: ArrayLike, z_m: ArrayLike
) -> NDArray[np.float64]:
    """UVI of a level back facing up, anywhere under or beside the tubes.

    UVI = Σ C g(D, x - x₀) (h/D) T(h, x - x₀, y - y₀), D² = h² + (y - y₀)², h = z₀ - z;
    UVI = K/(r + d₀)² (h/r)² T for a small lamp, r² = h² + (x - x₀)² + (y - y₀)²

    Parameters
    ----------
    tubes : one to four
    x_m : place along the enclosure [m], any
    y_m : place across it [m], any
    z_m : height [m], any; the three broadcast

    Returns
    -------
    ndarray
        UV index [1]; 0 level with a tube and above it, NaN within 5 cm of its lit part's axis.

    Notes
    -----
    A line source in the open, or an even face that looks down. A reflector narrows or widens the
    spread; that is a doubt.
    Source: line_source; line_through_weave; inverse_square; uv_sideways_judgement;
    uv_beam_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> from calc.uv.screen import NoScreen
    >>> tube = HungTube(Lamp(12.0, Fixture.POLISHED), 0.3, 0.2, 0.6, NoScreen())
    >>> uvi_field([tube], [0.3, 0.9], 0.2, 0.2).round(2).tolist()
    [4.59, 0.71]
    """
    if not 1 <= len(tubes) <= MOST_TUBES:
        raise OutsideModelError("number of tubes", len(tubes), 1, MOST_TUBES, "")
    return np.asarray(each_field(tubes, x_m, y_m, z_m).sum(axis=0))


def each_field(
    tubes: Sequence[HungTube], x_m: ArrayLike, y_m: ArrayLike, z_m: ArrayLike
) -> NDArray[np.float64]:
    """Return what ``uvi_field`` sums, one tube after the other along the first axis."""
    x, y, z = (np.asarray(v, dtype=np.float64) for v in (x_m, y_m, z_m))
    shape = np.broadcast_shapes(x.shape, y.shape, z.shape)
    if any(isinstance(tube.lamp.own, OwnPoint) for tube in tubes):
        return np.stack([np.broadcast_to(_of_small(tube, x, y, z), shape) for tube in tubes])
    if all(tube.screen == tubes[0].screen for tube in tubes):
        return _of_tubes(tubes, x, y, z, len(shape))
    each = [_of_tubes([tube], x, y, z, len(shape)) for tube in tubes]
    return np.concatenate([np.broadcast_to(one, (1, *shape)) for one in each])


def _of_tubes(
    tubes: Sequence[HungTube],
    x: NDArray[np.float64],
    y: NDArray[np.float64],
    z: NDArray[np.float64],
    axes: int,
) -> NDArray[np.float64]:
    # Heights and sides stay unbroadcast as long as they can: a cut is mostly one-dimensional.
    rows = [(lamp_constant(t.lamp), t.lamp.lit_length_m, t.x_m, t.y_m, t.z_m) for t in tubes]
    columns = np.array(rows).T.reshape(5, len(tubes), *(1,) * axes)
    constant, length, x_tube, y_tube, z_tube = columns
    screen = tubes[0].screen
    offset, lateral, below = x - x_tube, y - y_tube, z_tube - z
    height = np.maximum(below, _TINY_M)
    distance = np.sqrt(height * height + lateral * lateral)
    if isinstance(screen, Weave):
        passed = passed_by_weave(screen, height, length, offset, lateral)
        uvi = constant * (height * distance) * passed
    else:
        share = screen.transmission if isinstance(screen, FlatScreen) else 1.0
        level = constant * share * np.pi**2 * length * (height / distance)
        uvi = level * parallel_per_flux(distance, length, offset)
    beyond = np.maximum(np.abs(offset) - length / 2.0, 0.0)
    inside = lateral**2 + below**2 + beyond**2 < NEAREST_M**2
    return np.where(inside, np.nan, np.where(below > 0.0, uvi, 0.0))


def _of_small(
    hung: HungTube, x: NDArray[np.float64], y: NDArray[np.float64], z: NDArray[np.float64]
) -> NDArray[np.float64]:
    assert isinstance(hung.lamp.own, OwnPoint)
    along, across, below = x - hung.x_m, y - hung.y_m, hung.z_m - z
    height = np.maximum(below, _TINY_M)
    away = np.sqrt(height**2 + along**2 + across**2)
    passed = ray_transmission(hung.screen, along / height, across / height)
    # Once for the face, which looks down, and once for the back, which looks up.
    uvi = point_uvi(hung.lamp.own.source, away) * (height / away) ** 2 * passed
    inside = along**2 + across**2 + below**2 < NEAREST_M**2
    return np.where(inside, np.nan, np.where(below > 0.0, uvi, 0.0))


def section_map(
    tubes: Sequence[HungTube], box: Box, cut: Cut, at_m: float, across: int = 121, up: int = 61
) -> SectionMap:
    """Lay a grid of UVI over a cut through the enclosure.

    Parameters
    ----------
    tubes : one to four
    box : the enclosure [m]
    cut : side or end view
    at_m : where it is cut [m]: y of a side view, x of an end view
    across : points from side to side, 2 to 2000
    up : points from floor to lid, 2 to 2000

    Returns
    -------
    SectionMap
        Axes [m] and UVI [1].

    Notes
    -----
    As ``uvi_field``.
    Source: line_source; line_through_weave.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> from calc.uv.screen import NoScreen
    >>> tube = HungTube(Lamp(12.0, Fixture.POLISHED), 0.3, 0.2, 0.55, NoScreen())
    >>> section_map([tube], Box(1.2, 0.6, 0.6), Cut.SIDE, 0.2).uvi.shape
    (61, 121)
    """
    for name, count in (("points across", across), ("points up", up)):
        if not 2 <= count <= 2000:
            raise OutsideModelError(name, count, 2, 2000, "")
    side = cut is Cut.SIDE
    widths = np.linspace(0.0, box.length_m if side else box.depth_m, across)
    heights = np.linspace(0.0, box.height_m, up)
    x, y = (widths, np.asarray(at_m)) if side else (np.asarray(at_m), widths)
    # A few rows at a time stay in the processor's cache.
    rows = max(1, _CACHED_POINTS // (across * max(1, len(tubes))))
    bands = [uvi_field(tubes, x, y, heights[i : i + rows, None]) for i in range(0, up, rows)]
    uvi = np.concatenate(bands)
    return SectionMap(cut, at_m, widths, heights, uvi)
