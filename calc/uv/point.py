"""A UV lamp that is small against its distance: compact, metal halide, mercury vapour.

Its UV falls as from one point, which for a lamp with a reflector lies behind its face. No class
of them has a constant here: both figures of a lamp come from its keeper's readings.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from math import exp, sqrt

import numpy as np
from numpy.typing import NDArray

from calc.shape.line import Real
from calc.uv.evidence import NINE_IN_TEN, scatter_of, t_nine_in_ten
from calc.validity import OutsideModelError

__all__ = ["FARTHEST_BEHIND_M", "PointSource", "Shape", "fit_point", "point_uvi"]

FARTHEST_BEHIND_M = 0.30
"""No apparent point is looked for farther behind a lamp's face [m]. Source: point_judgement."""

_HIGHEST_UVI_M2 = 100.0
_STEPS, _ROUNDS = 41, 6
_LEAST_PLACES = 2


class Shape(Enum):
    """How the UV of a lamp falls with distance."""

    LINE = "as under a tube"
    POINT = "as in front of a small lamp"


@dataclass(frozen=True, slots=True)
class PointSource:
    """A point's strength [UVI m²] and how far behind the face it seems to lie [m].

    ``around_m`` is the middle of the readings; the variances are those of the logarithm of the UVI
    there, of the depth, and their covariance, so that the doubt grows away from what was read.
    """

    strength_uvi_m2: float
    behind_m: float
    around_m: float
    variance: float = 0.0
    depth_variance_m2: float = 0.0
    covariance_m: float = 0.0

    def __post_init__(self) -> None:
        if not 0.0 < self.strength_uvi_m2 < _HIGHEST_UVI_M2:
            raise OutsideModelError(
                "lamp strength", self.strength_uvi_m2, 0.0, _HIGHEST_UVI_M2, "UVI m²"
            )
        if not 0.0 <= self.behind_m <= FARTHEST_BEHIND_M:
            raise OutsideModelError("apparent depth", self.behind_m, 0.0, FARTHEST_BEHIND_M, "m")

    def deviation(self, distance_m: float) -> float:
        """Return one standard deviation of the logarithm of the UVI at a distance [m]."""
        lever = 2.0 / (self.around_m + self.behind_m) - 2.0 / (distance_m + self.behind_m)
        found = (
            self.variance + lever * lever * self.depth_variance_m2 + 2.0 * lever * self.covariance_m
        )
        return sqrt(max(found, 0.0))


def point_uvi(source: PointSource, distance_m: Real) -> Real:
    """UVI in front of a small lamp, facing it.

    UVI = K/(d + d₀)²

    Parameters
    ----------
    source : strength K [UVI m²], above 0, and depth d₀ [m], 0 to 0.3
    distance_m : lamp's face to back [m], above 0; a float or an array

    Returns
    -------
    float or ndarray, as the distance
        UV index [1].

    Notes
    -----
    On the lamp's axis; beside it a reflector gives less, by how much is not modelled. A flat round
    face that glows evenly is within 6 % of this from twice its width on.
    Source: inverse_square; point_judgement.

    Examples
    --------
    >>> round(point_uvi(PointSource(0.557, 0.0, 0.3), 0.3048), 2)
    6.0
    """
    away = distance_m + source.behind_m
    return source.strength_uvi_m2 / (away * away)


def fit_point(
    distances_m: Sequence[float], uvis: Sequence[float], weights: Sequence[float]
) -> PointSource:
    """Fit strength and apparent depth of a small lamp to readings in front of it.

    ln UVI = ln K - 2 ln(d + d₀), weighted least squares over 0 ≤ d₀ ≤ 0.3 m

    Parameters
    ----------
    distances_m : face to meter [m], above 0, at two places at least
    uvis : UV index read there [1], above 0
    weights : 1/variance of each reading's logarithm [1], above 0

    Returns
    -------
    PointSource
        Strength [UVI m²], depth [m], and their variances, by the scatter as in ``evidence``.

    Notes
    -----
    Readings at one place cannot tell the depth, and raise OutsideModelError.
    Source: inverse_square; student_posterior; point_judgement.

    Examples
    --------
    >>> found = fit_point([0.2, 0.3, 0.4], [13.5, 6.0, 3.375], [1.0, 1.0, 1.0])
    >>> round(found.strength_uvi_m2, 3), round(found.behind_m, 3)
    (0.54, 0.0)
    """
    away = np.asarray(distances_m, dtype=np.float64)
    logs, shares = np.log(uvis), np.asarray(weights, dtype=np.float64)
    places = len(set(away.tolist()))
    if places < _LEAST_PLACES:
        raise OutsideModelError("places read at", places, _LEAST_PLACES, 50, "")
    behind = _depth(away, logs, shares)
    level = float(np.average(logs + 2.0 * np.log(away + behind), weights=shares))
    around = float(np.exp(np.average(np.log(away), weights=shares)))
    return PointSource(exp(level), behind, around, *_variances(away, logs, shares, behind, around))


def _depth(
    away: NDArray[np.float64], logs: NDArray[np.float64], weights: NDArray[np.float64]
) -> float:
    """Return the depth [m] that leaves the least weighted squares, by ever finer steps."""
    low, high = 0.0, FARTHEST_BEHIND_M
    best = 0.0
    for _ in range(_ROUNDS):
        tried = np.linspace(low, high, _STEPS)
        rest = logs + 2.0 * np.log(away + tried[:, None])
        middle = np.average(rest, axis=1, weights=weights)
        left = np.sum(weights * (rest - middle[:, None]) ** 2, axis=1)
        best = float(tried[int(np.argmin(left))])
        step = (high - low) / (_STEPS - 1)
        low, high = max(0.0, best - step), min(FARTHEST_BEHIND_M, best + step)
    return best


def _variances(
    away: NDArray[np.float64],
    logs: NDArray[np.float64],
    weights: NDArray[np.float64],
    behind: float,
    around: float,
) -> tuple[float, float, float]:
    """Return the variance of ln UVI at ``around``, that of the depth, and their covariance."""
    slope = 2.0 / (around + behind) - 2.0 / (away + behind)
    rest = logs + 2.0 * np.log(away + behind)
    rest = rest - np.average(rest, weights=weights)
    scatter, freedom = scatter_of(float(np.sum(weights * rest**2)), away.size - 2)
    # Read again as deviations of a normal, nine in ten are those of Student's t.
    wide = (scatter * t_nine_in_ten(freedom) / NINE_IN_TEN) ** 2
    normal = np.array(
        [
            [np.sum(weights), np.sum(weights * slope)],
            [np.sum(weights * slope), np.sum(weights * slope**2)],
        ]
    )
    (of_level, both), (_, of_depth) = (wide * np.linalg.inv(normal)).tolist()
    return of_level, of_depth, both
