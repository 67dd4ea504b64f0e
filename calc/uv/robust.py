"""Figures of a few values that a wrong one among them hardly moves: middle, spread, slope."""

from collections.abc import Sequence
from itertools import combinations
from math import sqrt
from statistics import median

__all__ = ["far_from", "huber_middle", "middle_slope", "spread_of"]

_NORMAL = 1.482602218505602
_ROUNDS, _ENOUGH = 60, 1e-10


def spread_of(values: Sequence[float]) -> float:
    """Return the spread of values as one deviation of a normal with the same middle half.

    s = 1.4826 median(abs(x - median(x)))

    Parameters
    ----------
    values : one or more, in any unit

    Returns
    -------
    float
        One deviation, in that unit; 0 where over half of the values are alike.

    Notes
    -----
    Up to half of the values may be wrong. Of few values it is itself only roughly known: of eight
    within about a third.
    Source: amc1989_robust.

    Examples
    --------
    >>> round(spread_of([1.0, 2.0, 3.0, 4.0, 100.0]), 2)
    1.48
    """
    middle = median(values)
    return _NORMAL * median(abs(value - middle) for value in values)


def huber_middle(values: Sequence[float], spread: float, k: float = 1.5) -> float:
    """Return the middle of values, those beyond k deviations counted as if they lay there.

    m = mean(clip(x, m - k s, m + k s)), from the median on

    Parameters
    ----------
    values : one or more, in any unit
    spread : one deviation s [that unit], 0 or more
    k : how many deviations a value may pull [1], above 0

    Returns
    -------
    float
        The middle, in that unit; the median where the spread is 0.

    Notes
    -----
    Huber's proposal with a fixed spread; of normal values nearly as sharp as the mean.
    Source: huber1964; amc1989_robust.

    Examples
    --------
    >>> huber_middle([1.0, 2.0, 3.0], 1.0)
    2.0
    >>> round(huber_middle([1.0, 2.0, 3.0, 100.0], 1.0), 2)
    2.5
    """
    found = median(values)
    if spread <= 0.0:
        return found
    for _ in range(_ROUNDS):
        low, high = found - k * spread, found + k * spread
        moved = sum(min(max(value, low), high) for value in values) / len(values)
        if abs(moved - found) < _ENOUGH * spread:
            return moved
        found = moved
    return found


def middle_slope(along: Sequence[float], values: Sequence[float]) -> float | None:
    """Return the slope of values along something: the median of those of all pairs.

    median((y_j - y_i)/(x_j - x_i))

    Parameters
    ----------
    along : where each value lies, in any unit
    values : as many, in any unit

    Returns
    -------
    float or None
        Slope; None where no two lie apart.

    Notes
    -----
    More than a quarter of the values may be wrong.
    Source: sen1968.

    Examples
    --------
    >>> middle_slope([0.0, 1.0, 2.0, 3.0, 4.0], [0.0, 1.0, 2.0, 3.0, 40.0])
    1.0
    >>> middle_slope([1.0, 1.0], [0.0, 1.0]) is None
    True
    """
    pairs = combinations(zip(along, values, strict=True), 2)
    slopes = [(y2 - y1) / (x2 - x1) for (x1, y1), (x2, y2) in pairs if x1 != x2]
    return median(slopes) if slopes else None


def far_from(value: float, middle: float, variance: float, most: float = 3.0) -> bool:
    """Say whether a value lies more than ``most`` deviations [1] from a middle."""
    return abs(value - middle) > most * sqrt(variance)
