"""What the rest of a fit says: one wild reading, a trend, a rise, or plain scatter.

Works on logarithms of read over computed with their weights; knows nothing of lamps.
"""

from enum import Enum
from math import log

import numpy as np
from numpy.typing import NDArray

__all__ = [
    "Pattern",
    "Suspect",
    "contradicting",
    "deviation_of_mean",
    "pattern_of",
    "suspects_of",
    "wild_one",
]

_WILD = log(1.25)
_DISTINCT = 2.0
_TREND = 0.15
_NO_TUBE = 3.5
_CONFUSED = 0.8
_LEVEL = 1e-6


class Pattern(Enum):
    """How the readings kept depart from the fitted tube."""

    TOO_FEW = "too few to see a pattern"
    CONSISTENT = "within what a careful reading repeats to"
    NEAR_LOW = "low close by or high far away"
    NEAR_HIGH = "high close by or low far away"
    RISING = "rising in the order they were taken"
    SCATTERED = "scattered more than careful readings are"


class Suspect(Enum):
    """What may lie behind a pattern or a wild reading."""

    OFF_AXIS = "the reading was not taken under the middle of the tube"
    NOT_FACING = "the sensor did not face the tube"
    OTHER_LAMP = "another lamp or daylight was in the reading"
    WARM_UP = "the tube had not warmed up for 20 to 30 minutes"
    MEASURED_POINT = "the distance was not measured from the lit tube to the sensor"
    TUBE_LENGTH = "the tube is longer or shorter than given"
    SHADED = "a hand, a wire or a branch was in the way"


_SUSPECTS = {
    Pattern.TOO_FEW: (),
    Pattern.CONSISTENT: (),
    Pattern.NEAR_LOW: (
        Suspect.OFF_AXIS,
        Suspect.NOT_FACING,
        Suspect.OTHER_LAMP,
        Suspect.MEASURED_POINT,
    ),
    Pattern.NEAR_HIGH: (
        Suspect.SHADED,
        Suspect.NOT_FACING,
        Suspect.TUBE_LENGTH,
        Suspect.MEASURED_POINT,
    ),
    Pattern.RISING: (Suspect.WARM_UP,),
    Pattern.SCATTERED: (Suspect.NOT_FACING, Suspect.OFF_AXIS, Suspect.WARM_UP),
}
_WILD_LOW = (Suspect.NOT_FACING, Suspect.OFF_AXIS, Suspect.SHADED, Suspect.WARM_UP)
_WILD_HIGH = (Suspect.MEASURED_POINT, Suspect.OTHER_LAMP)


def suspects_of(pattern: Pattern, wild_residual: float | None) -> tuple[Suspect, ...]:
    """Return what may lie behind a pattern and behind a wild reading, likely ones first."""
    suspects = _SUSPECTS[pattern]
    if wild_residual is not None:
        suspects += _WILD_LOW if wild_residual < 0.0 else _WILD_HIGH
    return tuple(dict.fromkeys(suspects))


def contradicting(residuals: NDArray[np.float64], weights: NDArray[np.float64]) -> bool:
    """Say whether readings lie so far apart that no tube gives them all.

    That is, over three and a half times what careful readings repeat to, however many there are.
    """
    if residuals.size < 2:
        return False
    return float(np.sum(weights * residuals**2)) / (residuals.size - 1) > _NO_TUBE**2


def deviation_of_mean(residuals: NDArray[np.float64], weights: NDArray[np.float64]) -> float:
    """Return one standard deviation of a weighted mean, widened where readings disagree."""
    freedom = max(1, residuals.size - 1)
    birge = max(1.0, float(np.sum(weights * residuals**2)) / freedom)
    return float(np.sqrt(birge / np.sum(weights)))


def wild_one(
    logs: NDArray[np.float64], weights: NDArray[np.float64], apart: NDArray[np.float64]
) -> int | None:
    """Return the index of the one reading that stands clear of all the others, if any.

    A trend with distance is no wild reading: where a slope explains more, none is.
    """
    if logs.size < 3:
        return None
    centred = logs - np.average(logs, weights=weights)
    slope, _ = _slope(centred, weights, apart)
    line = slope * (apart - np.average(apart, weights=weights))
    least = float(np.sum(weights * (centred - line) ** 2))
    found, most = None, 1.0
    for i in range(logs.size):
        others = np.arange(logs.size) != i
        rest = logs[others] - np.average(logs[others], weights=weights[others])
        spread = deviation_of_mean(rest, weights[others])
        own = (spread**2 + 1.0 / float(weights[i])) ** 0.5
        off = abs(float(logs[i] - np.average(logs[others], weights=weights[others])))
        clear = off / max(_WILD, 3.0 * own)
        if clear > most and float(np.sum(weights[others] * rest**2)) < least:
            found, most = i, clear
    return found


def pattern_of(
    residuals: NDArray[np.float64],
    weights: NDArray[np.float64],
    apart: NDArray[np.float64],
    order: NDArray[np.int_],
) -> Pattern:
    """Return what the residuals of the readings kept look like."""
    if residuals.size < 3:
        return Pattern.TOO_FEW
    if order.size > 3:
        placed = apart.std() > _LEVEL
        confused = placed and abs(float(np.corrcoef(apart, order)[0, 1])) > _CONFUSED
        slope, distinct = _slope(residuals, weights, order.astype(float))
        if not confused and slope > 0.0 and distinct:
            return Pattern.RISING
    slope, distinct = _slope(residuals, weights, apart)
    if distinct and abs(slope) > _TREND:
        return Pattern.NEAR_LOW if slope > 0.0 else Pattern.NEAR_HIGH
    scatter = float(np.sum(weights * residuals**2)) / (residuals.size - 1)
    return Pattern.SCATTERED if scatter > _DISTINCT**2 else Pattern.CONSISTENT


def _slope(
    residuals: NDArray[np.float64], weights: NDArray[np.float64], along: NDArray[np.float64]
) -> tuple[float, bool]:
    """Return the weighted slope of residuals, and whether it stands clear of their noise."""
    centred = along - np.average(along, weights=weights)
    spread = float(np.sum(weights * centred**2))
    if spread <= _LEVEL**2 * float(np.sum(weights)):
        return 0.0, False
    slope = float(np.sum(weights * centred * residuals)) / spread
    return slope, abs(slope) * spread**0.5 > _DISTINCT
