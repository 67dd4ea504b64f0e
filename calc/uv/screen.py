"""A screen between tube and animal: how much of the tube's ultraviolet comes through.

A weave takes more from slanting rays, so under a long tube it passes less than its open area.
A keeper's own two readings, with and without the screen, beat everything here.
"""

from dataclasses import dataclass
from math import atan, inf, sqrt

import numpy as np
from numpy.typing import ArrayLike, NDArray

from calc.validity import OutsideModelError

__all__ = [
    "FlatScreen",
    "NoScreen",
    "Screen",
    "Weave",
    "middle_transmission",
    "open_area",
    "passed_by_weave",
    "ray_transmission",
    "tube_transmission",
]


@dataclass(frozen=True, slots=True)
class NoScreen:
    """Nothing between tube and animal."""


@dataclass(frozen=True, slots=True)
class FlatScreen:
    """A screen known by the share [1] of the ultraviolet it passes, at every angle."""

    transmission: float

    def __post_init__(self) -> None:
        if not 0.0 < self.transmission <= 1.0:
            raise OutsideModelError("screen transmission", self.transmission, 0.0, 1.0, "")


@dataclass(frozen=True, slots=True)
class Weave:
    """A square weave of round wire: wires per metre along and across the tube, wire [m]."""

    mesh_x_per_m: float
    mesh_y_per_m: float
    wire_m: float

    def __post_init__(self) -> None:
        for name, gamma in (("along", self.gamma_x), ("across", self.gamma_y)):
            if not 0.0 < gamma < 1.0:
                raise OutsideModelError(f"wire over pitch {name} the tube", gamma, 0.0, 1.0, "")

    @property
    def gamma_x(self) -> float:
        """Wire over pitch [1] along the tube."""
        return self.mesh_x_per_m * self.wire_m

    @property
    def gamma_y(self) -> float:
        """Wire over pitch [1] across the tube."""
        return self.mesh_y_per_m * self.wire_m


Screen = NoScreen | FlatScreen | Weave


def open_area(weave: Weave) -> float:
    """Share of a weave that is hole, seen square on.

    A = (1 - γx) (1 - γy), γ = wire/pitch

    Parameters
    ----------
    weave : wires per metre [1/m] and wire [m], wire below pitch

    Returns
    -------
    float
        Open area [1], 0 to 1.

    Notes
    -----
    Exact for a parallel beam square to the screen and black round wire only.
    Source: open_area, worked examples.

    Examples
    --------
    >>> round(open_area(Weave(40 / 0.0254, 40 / 0.0254, 0.010 * 0.0254)), 4)
    0.36
    """
    return (1.0 - weave.gamma_x) * (1.0 - weave.gamma_y)


def ray_transmission(screen: Screen, tan_x: ArrayLike, tan_y: ArrayLike) -> NDArray[np.float64]:
    """Share of a slanting parallel beam that passes.

    T = max(0, 1 - γx √(1 + tx²)) max(0, 1 - γy √(1 + ty²))

    Parameters
    ----------
    screen : none, a flat share [1], or a weave
    tan_x : tangent [1] of the ray to the screen's normal, along the tube, any
    tan_y : the same [1] across the tube, any

    Returns
    -------
    ndarray
        Transmission [1], 0 to 1.

    Notes
    -----
    Black round wire in two layers that do not hide each other; bright wire passes a little more.
    Source: energyplus_screen, direct beam.

    Examples
    --------
    >>> round(float(ray_transmission(Weave(100.0, 100.0, 0.001), 0.0, 1.0)), 6)
    0.772721
    """
    along, across = np.broadcast_arrays(
        np.asarray(tan_x, dtype=np.float64), np.asarray(tan_y, dtype=np.float64)
    )
    match screen:
        case NoScreen():
            return np.ones(along.shape)
        case FlatScreen(transmission):
            return np.full(along.shape, transmission)
        case Weave():
            passed_x = np.maximum(0.0, 1.0 - screen.gamma_x * np.sqrt(1.0 + along * along))
            passed_y = np.maximum(0.0, 1.0 - screen.gamma_y * np.sqrt(1.0 + across * across))
            return np.asarray(passed_x * passed_y)


def tube_transmission(
    screen: Screen,
    height_m: ArrayLike,
    length_m: float,
    offset_m: ArrayLike = 0.0,
    lateral_m: ArrayLike = 0.0,
) -> NDArray[np.float64]:
    """Share of a whole tube's irradiance that passes a level screen below it.

    T = ∫ T(u/h, y/h) du/(D² + u²)² / ∫ du/(D² + u²)² over the tube, D² = h² + y²

    Parameters
    ----------
    screen : none, a flat share [1], or a weave
    height_m : height of the tube over the receiver, h [m], above 0
    length_m : lit length [m], above 0
    offset_m : offset along the axis from the tube's middle [m], any
    lateral_m : offset square to the axis, y [m], any

    Returns
    -------
    ndarray
        Effective transmission [1], 0 to 1.

    Notes
    -----
    The height of the screen between the two does not matter. Closed form: with
    s = u/√(h² + u²) the weave's part is ∫ h ds/(D² - y² s²)². As ``ray_transmission``.
    Source: line_through_weave; energyplus_screen.

    Examples
    --------
    >>> insect = Weave(18 / 0.0254, 18 / 0.0254, 0.009 * 0.0254)
    >>> round(float(tube_transmission(insect, 0.30, 0.519)), 3)
    0.691
    """
    height = np.asarray(height_m, dtype=np.float64)
    if not isinstance(screen, Weave):
        shape = np.broadcast_shapes(height.shape, np.shape(offset_m), np.shape(lateral_m))
        return ray_transmission(screen, np.zeros(shape), 0.0)
    if np.any(~(height > 0.0)) or not length_m > 0.0:
        raise OutsideModelError("tube height", float(np.min(height)), 0.0, np.inf, "m")
    offset, lateral = np.asarray(offset_m), np.asarray(lateral_m)
    distance = np.sqrt(height * height + lateral * lateral)
    whole = _flux_between(-length_m / 2.0 - offset, length_m / 2.0 - offset, distance)
    return np.asarray(passed_by_weave(screen, height, length_m, offset, lateral) / whole)


def middle_transmission(screen: Screen, height_m: float, length_m: float) -> float:
    """Share of a tube's irradiance that passes a screen straight under its middle.

    ``tube_transmission`` with no offset, for the many single values of root finding:
    T = (1 - γy) (1 - γx ∫√(1 + u²/h²) du/(h² + u²)² / ∫ du/(h² + u²)²), cut where |u| > reach

    Parameters
    ----------
    screen : none, a flat share [1], or a weave
    height_m : height of the tube over the receiver, h [m], above 0
    length_m : lit length [m], above 0

    Returns
    -------
    float
        Effective transmission [1], 0 to 1.

    Notes
    -----
    As ``tube_transmission``.
    Source: line_through_weave; energyplus_screen.

    Examples
    --------
    >>> insect = Weave(18 / 0.0254, 18 / 0.0254, 0.009 * 0.0254)
    >>> round(middle_transmission(insect, 0.30, 0.519), 3)
    0.691
    """
    if not (height_m > 0.0 and length_m > 0.0):
        raise OutsideModelError("tube height", height_m, 0.0, inf, "m")
    match screen:
        case NoScreen():
            return 1.0
        case FlatScreen(transmission):
            return transmission
    gamma = screen.gamma_x
    whole = length_m / 2.0 / height_m
    # Rays flatter than this meet a closed wall of wires.
    seen = min(whole, sqrt(1.0 / gamma**2 - 1.0))
    lost = 2.0 * gamma * seen / sqrt(1.0 + seen * seen)
    passed = seen / (1.0 + seen * seen) + atan(seen) - lost
    return (1.0 - screen.gamma_y) * passed / (whole / (1.0 + whole * whole) + atan(whole))


def passed_by_weave(
    weave: Weave,
    height_m: NDArray[np.float64],
    length_m: float | NDArray[np.float64],
    offset_m: NDArray[np.float64],
    lateral_m: NDArray[np.float64],
) -> NDArray[np.float64]:
    """Sum a tube's light that passes a weave: the upper integral of ``tube_transmission``.

    ∫ T(u/h, y/h) du/(D² + u²)², as ``tube_transmission``; times C h D the UVI of a level back

    Parameters
    ----------
    weave : the screen
    height_m : height of the tube over the receiver, h [m], above 0
    length_m : lit length [m], above 0
    offset_m : offset along the axis from the tube's middle [m], any
    lateral_m : offset square to the axis, y [m], any; the three broadcast

    Returns
    -------
    ndarray
        Integral [1/m³].

    Notes
    -----
    As ``ray_transmission``; unchecked, for whole maps.
    Source: line_through_weave; energyplus_screen.

    Examples
    --------
    >>> fine = Weave(1000.0, 1000.0, 1e-9)
    >>> at = (np.array(0.3), 0.519, np.array(0.0), np.array(0.0))
    >>> round(float(passed_by_weave(fine, *at)), 3)
    44.738
    """
    distance = np.sqrt(height_m * height_m + lateral_m * lateral_m)
    gamma = weave.gamma_x
    # Rays flatter than this meet a closed wall of wires.
    reach = height_m * np.sqrt(1.0 / gamma**2 - 1.0)
    first = np.maximum(np.minimum(-length_m / 2.0 - offset_m, reach), -reach)
    last = np.maximum(np.minimum(length_m / 2.0 - offset_m, reach), -reach)
    seen = _flux_between(first, last, distance)
    lost = _wire_between(first, last, height_m, lateral_m)
    across = np.maximum(0.0, 1.0 - weave.gamma_y * distance / height_m)
    return np.asarray(across * (seen - gamma * lost))


def _flux_between(
    first: NDArray[np.float64], last: NDArray[np.float64], distance: NDArray[np.float64]
) -> NDArray[np.float64]:
    """Return the integral of 1/(D² + u²)²."""
    a, b = first / distance, last / distance
    swept = b / (1.0 + b * b) - a / (1.0 + a * a) + np.arctan2(b - a, 1.0 + a * b)
    return np.asarray(swept / (2.0 * distance**3))


def _wire_between(
    first: NDArray[np.float64],
    last: NDArray[np.float64],
    height: NDArray[np.float64],
    lateral: NDArray[np.float64],
) -> NDArray[np.float64]:
    """Return the integral of √(1 + u²/h²)/(D² + u²)², with s = u/√(h² + u²)."""
    level = height * height
    squared = level + lateral * lateral
    # artanh(q)/q is 1 straight under the tube; a hair beside it that is exact to rounding.
    tilt = np.maximum(np.abs(lateral / np.sqrt(squared)), 1e-7)
    a, b = first / np.sqrt(level + first * first), last / np.sqrt(level + last * last)
    leaning = tilt * tilt
    straight = b / (1.0 - leaning * (b * b)) - a / (1.0 - leaning * (a * a))
    turned = np.arctanh(tilt * ((b - a) / (1.0 - leaning * (a * b)))) / tilt
    return np.asarray((straight + turned) * (height / (2.0 * squared * squared)))
