"""Readings as one body of evidence: a level, or a line, through logarithms, and its doubt.

How far readings scatter is itself only roughly known. Few readings lean on what careful readings
are held to repeat to; many replace it, and then may be closer together or farther apart.
"""

from dataclasses import dataclass
from math import sqrt

import numpy as np
from numpy.typing import NDArray

__all__ = ["NINE_IN_TEN", "Weighed", "scatter_of", "t_nine_in_ten", "weigh"]

NINE_IN_TEN = 1.645
"""Standard deviations of a normal that hold nine cases in ten."""

_KNOWN_AS_BY = 8.0
"""The scatter is known beforehand as well as so many readings tell it."""

# No careful readings leave more χ² for each degree of freedom.
_CAREFUL, _LEAST_FREEDOM = 4.0, 4.0


@dataclass(frozen=True, slots=True)
class Weighed:
    """A straight line through logarithms, level where it was not asked for a slope.

    ``scatter`` is one deviation of the readings [1] over what their weights say, ``freedom`` how
    well it is known: behind the range of a mean stands Student's t of that many degrees.
    """

    middle: float
    level: float
    slope: float
    total: float
    spread: float
    scatter: float
    freedom: float

    def at(self, along: float) -> float:
        """Return the line's logarithm at a place along it."""
        return self.level + self.slope * (along - self.middle)

    def half(self, along: float) -> float:
        """Return half the width of the line's band, nine in ten, on the logarithm."""
        away = (along - self.middle) ** 2 / self.spread if self.spread > 0.0 else 0.0
        return self.reach * sqrt(1.0 / self.total + away)

    @property
    def reach(self) -> float:
        """Half the width [1] for a weight of 1."""
        return t_nine_in_ten(self.freedom) * self.scatter

    @property
    def slope_half(self) -> float:
        """Return half the width of the slope, nine in ten."""
        return self.reach / sqrt(self.spread)


def weigh(
    logs: NDArray[np.float64],
    weights: NDArray[np.float64],
    along: NDArray[np.float64] | None = None,
) -> Weighed:
    """Weigh logarithms of readings together.

    level and slope by weighted least squares; scatter² = (ν₀ s₀² + χ²)/(ν₀ + n - k), ν₀ = 8,
    s₀ = 1.645/t(ν₀), k what is fitted; past χ²/(n - k) = 4 ν₀ falls by the square

    Parameters
    ----------
    logs : one or more, of a UVI or of a UVI over what a law gives
    weights : 1/variance of each [1], above 0
    along : a day or a place for each, not all the same, where a slope is asked for

    Returns
    -------
    Weighed
        Level, slope, and what they leave open.

    Notes
    -----
    A single reading is doubted by 1.645 of its deviations, as before any was taken. The posterior
    is that of a normal with a scaled inverse chi-squared variance.
    Source: student_posterior; uv_meter_judgement.

    Examples
    --------
    >>> import numpy as np
    >>> one = weigh(np.array([1.5]), np.array([400.0]))
    >>> round(one.half(0.0) * 20.0, 3)
    1.645
    """
    total = float(np.sum(weights))
    level = float(np.sum(weights * logs)) / total
    middle = slope = spread = 0.0
    fitted = 1
    if along is not None:
        middle = float(np.sum(weights * along)) / total
        spread = float(np.sum(weights * (along - middle) ** 2))
        slope = float(np.sum(weights * (along - middle) * logs)) / spread
        fitted = 2
    line = level + (0.0 if along is None else slope * (along - middle))
    left = float(np.sum(weights * (logs - line) ** 2))
    scatter, freedom = scatter_of(left, logs.size - fitted)
    return Weighed(middle, level, slope, total, spread, scatter, freedom)


def scatter_of(left: float, free: int) -> tuple[float, float]:
    """Return the scatter [1] of readings over what their weights say, and how well it is known.

    ``left`` is χ² about the law that was fitted, ``free`` the readings beyond what was fitted.
    Where they scatter more than careful readings do, what was known beforehand loses its weight.
    """
    before = NINE_IN_TEN / t_nine_in_ten(_KNOWN_AS_BY)
    ratio = left / free if free > 0 else 0.0
    known = _KNOWN_AS_BY * (_CAREFUL / max(ratio, _CAREFUL)) ** 2
    freedom = known + free
    return sqrt((known * before**2 + left) / freedom), max(freedom, _LEAST_FREEDOM)


def t_nine_in_ten(freedom: float) -> float:
    """Return the deviations of Student's t that hold nine cases in ten, for 3 degrees or more.

    Expansion in 1/ν; within 0.2 % from 4 degrees on.
    """
    z = NINE_IN_TEN
    first = (z**3 + z) / 4.0
    second = (5.0 * z**5 + 16.0 * z**3 + 3.0 * z) / 96.0
    third = (3.0 * z**7 + 19.0 * z**5 + 17.0 * z**3 - 15.0 * z) / 384.0
    return z + first / freedom + second / freedom**2 + third / freedom**3
