"""Flat lamps that shine downwards, a bar and a panel: illuminance per unit of flux.

Positions: ``height_m`` straight down from the lamp's face; ``along_m`` and ``aside_m`` level from
below its middle, along the bar and square to it. Every result times lumens [lm] is an illuminance
[lx] on a level spot.
"""

import numpy as np
from numpy.typing import ArrayLike, NDArray

from calc.shape.beam import beam_power
from calc.validity import check

__all__ = ["bar_per_flux", "panel_per_flux"]

_NODES, _WEIGHTS = np.polynomial.legendre.leggauss(32)
_EVEN_DEG = 120.0
_NEAREST_M = 0.02
_SHORTEST_M, _LONGEST_M = 0.02, 2.5


def bar_per_flux(
    height_m: ArrayLike,
    length_m: float,
    along_m: ArrayLike = 0.0,
    aside_m: ArrayLike = 0.0,
    beam_deg: float = _EVEN_DEG,
) -> NDArray[np.float64]:
    """Illuminance per flux of a level spot under a flat bar, such as a bar of LEDs.

    E/F = (m+1) h^(m+1) / (2 pi L D^(m+2)) times the integral of cos^(m+1) a, D² = h² + aside²

    Parameters
    ----------
    height_m : straight down from the face, h [m], 0.02 or more
    length_m : lit length, L [m], 0.02 to 2.5
    along_m : level along the bar, from below its middle [m], any
    aside_m : level square to the bar [m], any
    beam_deg : beam angle of each part [degree], 5 to 160; 120 glows evenly

    Returns
    -------
    ndarray
        Illuminance per flux [1/m²].

    Notes
    -----
    A thin bar; straight below an evenly glowing one there is pi times the light of a bare tube of
    the same lumens, which shines all round.
    Source: light_forms; beam_shapes.

    Examples
    --------
    >>> round(float(bar_per_flux(1.0, 1.0)), 10)
    0.2749075721
    """
    check("height", height_m, _NEAREST_M, unit="m")
    check("lit length", length_m, _SHORTEST_M, _LONGEST_M, "m")
    power = beam_power(beam_deg)
    height, along, aside = (np.asarray(v, dtype=np.float64) for v in (height_m, along_m, aside_m))
    distance = np.sqrt(height * height + aside * aside)
    first = np.arctan((-length_m / 2.0 - along) / distance)
    last = np.arctan((length_m / 2.0 - along) / distance)
    middle, half = (first + last) / 2.0, (last - first) / 2.0
    nodes = middle[..., None] + half[..., None] * _NODES
    swept = half * np.sum(_WEIGHTS * np.cos(nodes) ** (power + 1.0), axis=-1)
    level = (power + 1.0) / (2.0 * np.pi * length_m)
    return np.asarray(level * height ** (power + 1.0) / distance ** (power + 2.0) * swept)


def panel_per_flux(
    height_m: ArrayLike,
    length_m: float,
    width_m: float,
    along_m: ArrayLike = 0.0,
    aside_m: ArrayLike = 0.0,
) -> NDArray[np.float64]:
    """Illuminance per flux of a level spot under a flat panel that glows evenly.

    E/F = sum over corners of [X/s atan(Y/s) + Y/t atan(X/t)] / (2 pi a b), s² = 1+X², t² = 1+Y²

    Parameters
    ----------
    height_m : straight down from the face [m], 0.02 or more
    length_m : length, a [m], 0.02 to 2.5
    width_m : width, b [m], 0.02 to 2.5
    along_m : level along its length, from below its middle [m], any
    aside_m : level along its width, from below its middle [m], any

    Returns
    -------
    ndarray
        Illuminance per flux [1/m²].

    Notes
    -----
    A beam narrower than 120 degrees, as of a lens, gives more below and less beside.
    Source: light_forms.

    Examples
    --------
    >>> round(float(panel_per_flux(1.0, 1.0, 1.0)), 10)
    0.2394564705
    """
    check("height", height_m, _NEAREST_M, unit="m")
    check("panel length", length_m, _SHORTEST_M, _LONGEST_M, "m")
    check("panel width", width_m, _SHORTEST_M, _LONGEST_M, "m")
    height, along, aside = (np.asarray(v, dtype=np.float64) for v in (height_m, along_m, aside_m))
    # The corner formula is odd in both, so signed corners add up to the panel wherever it is.
    right, left = (length_m / 2.0 - along) / height, (-length_m / 2.0 - along) / height
    front, back = (width_m / 2.0 - aside) / height, (-width_m / 2.0 - aside) / height
    whole = _corner(right, front) - _corner(left, front) - _corner(right, back)
    return np.asarray((whole + _corner(left, back)) / (2.0 * np.pi * length_m * width_m))


def _corner(x: NDArray[np.float64], y: NDArray[np.float64]) -> NDArray[np.float64]:
    over, under = np.sqrt(1.0 + x * x), np.sqrt(1.0 + y * y)
    return np.asarray(x / over * np.arctan(y / over) + y / under * np.arctan(x / under))
