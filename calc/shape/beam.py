"""A small lamp with a beam, and a bare one that shines all round: illuminance per unit of flux.

Positions: ``height_m`` straight down from the lamp, ``aside_m`` level from there. Every result
times lumens [lm] is an illuminance [lx] on a level spot. A lamp is small from five times its own
size on.
"""

from math import cos, log, pi, radians

import numpy as np
from numpy.typing import ArrayLike, NDArray

from calc.validity import check

__all__ = ["all_round_per_flux", "beam_per_flux", "beam_power", "flat_top_per_flux"]

_LEAST_DEG, _MOST_DEG = 5.0, 160.0
_NEAREST_M = 0.02


def beam_power(beam_deg: float) -> float:
    """Return the power of the cosine that halves at the edge of a beam.

    m = ln 0.5 / ln cos(beam/2)

    Parameters
    ----------
    beam_deg : full angle to half of the middle's intensity [degree], 5 to 160

    Returns
    -------
    float
        Power m [1]; 1 for a face that glows evenly, which is a beam of 120 degrees.

    Notes
    -----
    A real reflector has an edge that is sharper or softer: see ``flat_top_per_flux``.
    Source: beam_shapes.

    Examples
    --------
    >>> round(beam_power(120.0), 6), round(beam_power(90.0), 6)
    (1.0, 2.0)
    """
    check("beam angle", beam_deg, _LEAST_DEG, _MOST_DEG, "degrees")
    return log(0.5) / log(cos(radians(beam_deg) / 2.0))


def beam_per_flux(height_m: ArrayLike, aside_m: ArrayLike, beam_deg: float) -> NDArray[np.float64]:
    """Illuminance per flux of a level spot under a small lamp that shines straight down.

    E/F = (m+1)/(2 pi) cos^(m+1) t / d², cos t = h/d, d² = h² + aside²

    Parameters
    ----------
    height_m : straight down from the lamp [m], 0.02 or more
    aside_m : level from there [m], any
    beam_deg : beam angle [degree], 5 to 160

    Returns
    -------
    ndarray
        Illuminance per flux [1/m²].

    Notes
    -----
    Too high nearer than five times the lamp's size. On the axis a beam with a sharp edge gives up
    to 1.4 times as much.
    Source: beam_shapes; inverse_square.

    Examples
    --------
    >>> round(1000.0 * float(beam_per_flux(1.0, 0.0, 120.0)), 1)
    318.3
    """
    facing, squared = _seen(height_m, aside_m)
    power = beam_power(beam_deg)
    return np.asarray((power + 1.0) / (2.0 * pi) * facing ** (power + 1.0) / squared)


def flat_top_per_flux(
    height_m: ArrayLike, aside_m: ArrayLike, beam_deg: float
) -> NDArray[np.float64]:
    """Illuminance per flux under a lamp whose beam is even and ends at its edge.

    E/F = cos t / (Omega d²) within the beam, Omega = 2 pi (1 - cos(beam/2)); else 0

    Parameters
    ----------
    height_m : straight down from the lamp [m], 0.02 or more
    aside_m : level from there [m], any
    beam_deg : beam angle [degree], 5 to 160

    Returns
    -------
    ndarray
        Illuminance per flux [1/m²].

    Notes
    -----
    The other end of what a beam may be; with ``beam_per_flux`` it shows the doubt of the shape.
    Source: beam_shapes.

    Examples
    --------
    >>> round(1000.0 * float(flat_top_per_flux(1.0, 0.0, 36.0)))
    3252
    """
    facing, squared = _seen(height_m, aside_m)
    check("beam angle", beam_deg, _LEAST_DEG, _MOST_DEG, "degrees")
    edge = cos(radians(beam_deg) / 2.0)
    even = facing / (2.0 * pi * (1.0 - edge)) / squared
    return np.where(facing >= edge, even, 0.0)


def all_round_per_flux(height_m: ArrayLike, aside_m: ArrayLike = 0.0) -> NDArray[np.float64]:
    """Illuminance per flux of a level spot under a bare bulb that shines all round.

    E/F = cos t / (4 pi d²)

    Parameters
    ----------
    height_m : straight down from the bulb [m], 0.02 or more
    aside_m : level from there [m], any

    Returns
    -------
    ndarray
        Illuminance per flux [1/m²].

    Notes
    -----
    What ceiling and walls send back is not here.
    Source: inverse_square; light_forms.

    Examples
    --------
    >>> round(628.0 * float(all_round_per_flux(1.0)), 2)
    49.97
    """
    facing, squared = _seen(height_m, aside_m)
    return np.asarray(facing / (4.0 * pi * squared))


def _seen(
    height_m: ArrayLike, aside_m: ArrayLike
) -> tuple[NDArray[np.float64], NDArray[np.float64]]:
    """Return how squarely a level spot sees the lamp, cos t [1], and how far off, d² [m²]."""
    check("height", height_m, _NEAREST_M, unit="m")
    height, aside = (np.asarray(v, dtype=np.float64) for v in (height_m, aside_m))
    squared = height * height + aside * aside
    return np.asarray(height / np.sqrt(squared)), np.asarray(squared)
