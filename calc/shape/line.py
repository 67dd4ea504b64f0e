"""A lit tube as a thin Lambertian line: irradiance per unit of flux, in closed form.

One law for ultraviolet (flux in W) and for light (flux in lm).

Positions: ``distance_m`` is square to the tube's axis; ``offset_m`` runs along the axis from
the middle of the tube to the receiver (more than half the length: beyond the end). Every
result times the tube's flux [W] is an irradiance [W/m²]; times lumens [lm] it is an illuminance
[lx]. Screens and reflectors are not here.
"""

from math import atan, inf
from typing import TypeVar

import numpy as np
from numpy.typing import ArrayLike, NDArray

from calc.validity import OutsideModelError

__all__ = [
    "Real",
    "axial_per_flux",
    "far_field_per_flux",
    "infinite_line_per_flux",
    "line_shape",
    "parallel_per_flux",
    "tilted_per_flux",
]

Real = TypeVar("Real", float, NDArray[np.float64])


def _positive(name: str, value: ArrayLike) -> NDArray[np.float64]:
    values = np.asarray(value, dtype=np.float64)
    if np.any(~(values > 0.0)) or np.any(np.isinf(values)):
        raise OutsideModelError(name, float(np.min(values)), 0.0, np.inf, "m")
    return values


def parallel_per_flux(
    distance_m: ArrayLike, length_m: ArrayLike, offset_m: ArrayLike = 0.0
) -> NDArray[np.float64]:
    """Irradiance per flux of a receiver parallel to the tube and facing it.

    E/P = [u/(1+u²) + atan u] / (2 π² L D), from u1 = (-L/2 - z)/D to u2 = (L/2 - z)/D

    Parameters
    ----------
    distance_m : distance square to the axis, D [m], above 0
    length_m : lit length, L [m], above 0
    offset_m : offset along the axis from the tube's middle, z [m], any

    Returns
    -------
    ndarray
        Irradiance per flux [1/m²].

    Notes
    -----
    A thin line: a tube 16 mm thick differs by less than 0.4 % from 0.1 m on.
    Source: keitz1971 (z = 0); line_source.

    Examples
    --------
    >>> round(float(parallel_per_flux(1.0, 1.0)), 10)
    0.087505798
    """
    distance, length = _positive("distance", distance_m), _positive("lit length", length_m)
    return tilted_per_flux(distance, length, offset_m, 0.0)


def axial_per_flux(
    distance_m: ArrayLike, length_m: ArrayLike, offset_m: ArrayLike = 0.0
) -> NDArray[np.float64]:
    """Irradiance per flux of a receiver facing along the axis, towards rising offset.

    E/P = D/(2 π² L) [1/(a² + D²) - 1/(b² + D²)], a and b the near and far end in front

    Parameters
    ----------
    distance_m : distance square to the axis, D [m], above 0
    length_m : lit length, L [m], above 0
    offset_m : offset along the axis from the tube's middle, z [m], any

    Returns
    -------
    ndarray
        Irradiance per flux [1/m²]; 0 where no part of the tube is in front.

    Notes
    -----
    A thin line; see ``parallel_per_flux``.
    Source: line_source.

    Examples
    --------
    >>> round(float(axial_per_flux(0.5, 1.0, -0.75)), 10)
    0.0670816112
    """
    return tilted_per_flux(distance_m, length_m, offset_m, np.pi / 2.0)


def tilted_per_flux(
    distance_m: ArrayLike,
    length_m: ArrayLike,
    offset_m: ArrayLike,
    tilt_rad: ArrayLike,
) -> NDArray[np.float64]:
    """Irradiance per flux of a receiver tilted from facing the tube towards its axis.

    E/P = cos t E_par + sin t E_ax, over the part of the tube in front of the receiver

    Parameters
    ----------
    distance_m : distance square to the axis, D [m], above 0
    length_m : lit length, L [m], above 0
    offset_m : offset along the axis from the tube's middle, z [m], any
    tilt_rad : tilt from the perpendicular towards rising offset, t [rad], -pi/2 to pi/2

    Returns
    -------
    ndarray
        Irradiance per flux [1/m²].

    Notes
    -----
    The part behind the receiver's plane is cut off, so grazing tilts hold too.
    Source: line_source.

    Examples
    --------
    >>> round(float(tilted_per_flux(0.5, 1.0, -0.75, np.pi / 4)), 10)
    0.0955412553
    """
    distance, length = _positive("distance", distance_m), _positive("lit length", length_m)
    offset, tilt = np.asarray(offset_m, dtype=np.float64), np.asarray(tilt_rad, dtype=np.float64)
    if np.any(~(np.abs(tilt) <= np.pi / 2.0)):
        raise OutsideModelError("tilt", float(tilt.flat[0]), -np.pi / 2, np.pi / 2, "rad")
    facing, along = np.cos(tilt), np.sin(tilt)
    first, last = (-length / 2.0 - offset) / distance, (length / 2.0 - offset) / distance
    with np.errstate(divide="ignore", over="ignore"):
        horizon = -facing / along
    first = np.where(along > 0.0, np.maximum(first, horizon), first)
    last = np.where(along < 0.0, np.minimum(last, horizon), last)
    last = np.maximum(first, last)
    parallel = _swept(last) - _swept(first)
    axial = 1.0 / (1.0 + first * first) - 1.0 / (1.0 + last * last)
    return (facing * parallel + along * axial) / (2.0 * np.pi**2 * length * distance)


def _swept(u: NDArray[np.float64]) -> NDArray[np.float64]:
    return u / (1.0 + u * u) + np.arctan(u)


def line_shape(distance_m: Real, length_m: float, offset_m: float = 0.0) -> Real:
    """Return how the UVI of a tube falls with distance, per constant of its class.

    g = π² L E_par/P; under the middle g = (α + sin α cos α)/D with tan α = L/2D

    Parameters
    ----------
    distance_m : distance square to the axis, D [m], above 0; a float or an array
    length_m : lit length, L [m], above 0
    offset_m : offset along the axis from the tube's middle [m], any

    Returns
    -------
    float or ndarray, as the distance
        Shape [1/m].

    Notes
    -----
    A thin line; see ``parallel_per_flux``. Tubes of one class give equal flux per length.
    Source: keitz1971; line_source.

    Examples
    --------
    >>> round(float(line_shape(0.45, 0.519)), 3)
    2.124
    """
    half = length_m / 2.0
    if isinstance(distance_m, float):
        # Root finding calls this many times an answer: plain floats stay out of numpy.
        if not (distance_m > 0.0 and length_m > 0.0):
            raise OutsideModelError("distance", min(distance_m, length_m), 0.0, inf, "m")
        first, last = (-half - offset_m) / distance_m, (half - offset_m) / distance_m
        swept = last / (1.0 + last * last) - first / (1.0 + first * first)
        return (swept + atan(last) - atan(first)) / (2.0 * distance_m)
    per_flux = parallel_per_flux(distance_m, length_m, offset_m)
    return np.asarray(np.pi**2 * length_m * per_flux)


def far_field_per_flux(distance_m: ArrayLike) -> NDArray[np.float64]:
    """Irradiance per flux facing a tube far away: 1/(π² D²), not 1/(4π D²).

    E/P = 1/(π² D²)

    Parameters
    ----------
    distance_m : distance square to the axis, D [m], above 0; 4 lengths for 1 %

    Returns
    -------
    ndarray
        Irradiance per flux [1/m²].

    Notes
    -----
    Too high near the tube: by 10 % at 1.2 lengths.
    Source: line_source.

    Examples
    --------
    >>> round(float(far_field_per_flux(1.0)), 6)
    0.101321
    """
    return np.asarray(1.0 / (np.pi * _positive("distance", distance_m)) ** 2)


def infinite_line_per_flux(distance_m: ArrayLike, length_m: ArrayLike) -> NDArray[np.float64]:
    """Irradiance per flux facing the middle of a tube much longer than its distance.

    E/P = 1/(2 π L D)

    Parameters
    ----------
    distance_m : distance square to the axis, D [m], above 0, below a tenth of the length
    length_m : lit length, L [m], above 0

    Returns
    -------
    ndarray
        Irradiance per flux [1/m²].

    Notes
    -----
    Too high from a tenth of the length on: by 2 % at a fifth.
    Source: line_source.

    Examples
    --------
    >>> round(float(infinite_line_per_flux(0.1, 1.0)), 6)
    1.591549
    """
    distance, length = _positive("distance", distance_m), _positive("lit length", length_m)
    return np.asarray(1.0 / (2.0 * np.pi * length * distance))
