"""Several equal tubes side by side: their UV adds where the animal lies."""

import numpy as np

from calc.shape.line import Real, line_shape, parallel_per_flux
from calc.validity import OutsideModelError

__all__ = ["FARTHEST_APART_M", "MOST_TUBES", "shape_together"]

MOST_TUBES = 4
"""More tubes than this in one place are not answered for."""

FARTHEST_APART_M = 2.0
"""Tubes farther apart [m] light no animal together."""

_PLACES = 17


def shape_together(distance_m: Real, length_m: float, count: int, gap_m: float) -> Real:
    """Return how the UVI of equal tubes side by side falls, at the strongest place below them.

    g = max over y of Σ g(Dᵢ) h/Dᵢ, Dᵢ² = h² + (y - yᵢ)²; n g(h) where the gap is 0

    Parameters
    ----------
    distance_m : height of the tubes over the back, h [m], above 0; a float or an array
    length_m : lit length of each [m], above 0
    count : number of tubes, 1 to 4
    gap_m : from the middle of one tube to the middle of the next [m], 0 to 2

    Returns
    -------
    float or ndarray, as the distance
        Shape [1/m], per constant of one tube.

    Notes
    -----
    A level back facing up, as in ``section.uvi_field``; the best place is found on a grid that
    holds every tube and every middle between two. With a gap of 0 all tubes count as straight
    above, which is the most that tubes in one fixture can give.
    Source: line_source.

    Examples
    --------
    >>> round(shape_together(0.4, 0.519, 2, 0.0) / shape_together(0.4, 0.519, 1, 0.0), 3)
    2.0
    """
    if not 1 <= count <= MOST_TUBES:
        raise OutsideModelError("number of tubes", count, 1, MOST_TUBES, "")
    if not 0.0 <= gap_m <= FARTHEST_APART_M:
        raise OutsideModelError("gap between the tubes", gap_m, 0.0, FARTHEST_APART_M, "m")
    if count == 1 or gap_m == 0.0:
        return count * line_shape(distance_m, length_m)
    height = np.asarray(distance_m, dtype=np.float64)[..., None, None]
    tubes = gap_m * (np.arange(count) - (count - 1) / 2.0)
    # Symmetric, so that one half is enough; with whole steps both kinds of place are met.
    below = np.linspace(0.0, tubes[-1], (_PLACES - 1) * (count - 1) + 1)[:, None]
    away = np.sqrt(height**2 + (below - tubes) ** 2)
    each = np.pi**2 * length_m * parallel_per_flux(away, length_m) * height / away
    most = each.sum(axis=-1).max(axis=-1)
    return float(most) if isinstance(distance_m, float) else np.asarray(most)
