"""The distances at which a tube serves a UVI range, and why not farther or nearer: no doubts."""

from dataclasses import dataclass
from enum import Enum
from functools import lru_cache
from math import sqrt

from calc.uv.distances import (
    FARTHEST_PLACE_M,
    distance_for,
    safe_by_class,
    safe_for_length,
    uvi_by_length,
)
from calc.uv.lamp import Lamp, uvi_at
from calc.uv.nearest import COMFORTABLE_MINIMUM_M
from calc.uv.screen import Screen
from calc.uv.start import Chances, start_by_chance
from calc.validity import OutsideModelError

__all__ = ["HIGHEST_UVI", "SAFE_MINIMUM_M", "Reach", "Reason", "Verdict", "check_range", "reach"]

SAFE_MINIMUM_M = 0.15
"""No tube nearer than this to an animal's back. Source: nearest_distance."""


HIGHEST_UVI = 20.0
"""The strongest UVI that is placed; the sun hardly gives more."""

# A start that is moved by less is the same place.
_SAME_PLACE_M = 1e-5


class Verdict(Enum):
    """Whether a lamp can serve a UVI range from a sensible distance."""

    FITS = "fits"
    TOO_WEAK = "too weak even at the safe minimum"
    TOO_CLOSE = "would hang nearer than the comfortable minimum"
    OUT_OF_RANGE = "would hang farther than is answered"
    BY_LENGTH = "no place is right for every length that it may have"


class Reason(Enum):
    """What bounded a placement."""

    NEAR_END_HELD_FOR_COMFORT = "near end held at the comfortable minimum"
    NEAR_END_HELD_FOR_SAFETY = "near end held at the safe minimum"
    START_HELD_FOR_SAFETY = "start held at the safe minimum"
    FAR_END_HELD_AT_LIMIT = "far end held at the farthest place answered"
    TOO_STRONG_AT_LIMIT = "still above the wanted UVI at the farthest place answered"
    TOO_WEAK_AT_SAFE_MINIMUM = "below the range at the safe minimum"
    LONGEST_TOO_STRONG_AT_FAR_END = "at the far end a longer tube gives more than the upper end"
    START_HELD_FOR_LENGTH = "start held where the longest tube it may be gives the upper end"
    START_MOVED_BY_CHANCE = "start moved from the middle by the chance of what it gives there"
    START_NEARER_THAN_COMFORT = "the start lies nearer than the comfortable minimum"


@dataclass(frozen=True, slots=True)
class Reach:
    """The distances [m] of a placement; ``ends_m`` are near end, start and far end, where it fits.

    ``chances`` and ``mild_m`` as in ``Placement``.
    """

    verdict: Verdict
    reasons: tuple[Reason, ...]
    target_uvi: float
    ends_m: tuple[float, float, float] | None = None
    chances: Chances | None = None
    mild_m: float | None = None


_BY_LENGTH = (Reason.LONGEST_TOO_STRONG_AT_FAR_END,)


@lru_cache(maxsize=1024)
def reach(lamp: Lamp, screen: Screen, low_uvi: float, high_uvi: float) -> Reach:
    """Find the distances at which a lamp gives a UVI range, without the doubt of what it gives.

    near = d(high), far = d(low), start = d(√(low high)); low 0: start = d(high/2); for an
    unknown length no nearer than d(high) of the longest tube it may be, by a group's readings no
    nearer than d(high) of the class; moved farther by ``start.start_by_chance``

    Parameters
    ----------
    lamp : the tube
    screen : what lies between
    low_uvi : low end of the range [1], 0 or more
    high_uvi : high end of the range [1], from the low one to 20

    Returns
    -------
    Reach
        Distances [m], verdict and what bounded them.

    Notes
    -----
    The latest are kept, because the same classes come up in every box.
    Source: uv_distance_rows; nearest_distance; t5_lengths; uv_start_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> from calc.uv.screen import NoScreen
    >>> found = reach(Lamp(12.0, Fixture.POLISHED), NoScreen(), 3.0, 5.0)
    >>> [round(end, 2) for end in found.ends_m]
    [0.38, 0.44, 0.52]
    """
    check_range(low_uvi, high_uvi)
    target = sqrt(low_uvi * high_uvi) if low_uvi > 0.0 else high_uvi / 2.0
    safe_uvi = uvi_at(lamp, SAFE_MINIMUM_M, screen)
    limit_uvi = uvi_at(lamp, FARTHEST_PLACE_M, screen)
    if safe_uvi < low_uvi:
        return Reach(Verdict.TOO_WEAK, (Reason.TOO_WEAK_AT_SAFE_MINIMUM,), target)
    longest_uvi = uvi_by_length(lamp, FARTHEST_PLACE_M, screen).high
    if limit_uvi >= target or longest_uvi > high_uvi:
        return Reach(Verdict.OUT_OF_RANGE, (Reason.TOO_STRONG_AT_LIMIT,), target)
    reasons, least_m = list[Reason](), safe_by_class(lamp, screen, high_uvi)

    def held(uvi: float, reason: Reason) -> float:
        """Return the distance of a UVI, held at the safe minimum; a hold adds its reason."""
        if safe_uvi <= uvi:
            reasons.append(reason)
            return max(SAFE_MINIMUM_M, least_m)
        return max(distance_for(lamp, screen, uvi), least_m)

    near_m = held(high_uvi, Reason.NEAR_END_HELD_FOR_SAFETY)
    start_m = held(target, Reason.START_HELD_FOR_SAFETY)
    far_m = FARTHEST_PLACE_M
    if limit_uvi < low_uvi:
        far_m = max(distance_for(lamp, screen, low_uvi), least_m)
    else:
        reasons.append(Reason.FAR_END_HELD_AT_LIMIT)
    verdict = Verdict.FITS
    if start_m < COMFORTABLE_MINIMUM_M:
        verdict = Verdict.TOO_CLOSE
        reasons.append(Reason.START_NEARER_THAN_COMFORT)
    elif near_m < COMFORTABLE_MINIMUM_M:
        near_m = COMFORTABLE_MINIMUM_M
        reasons = [r for r in reasons if r is not Reason.NEAR_END_HELD_FOR_SAFETY]
        reasons.append(Reason.NEAR_END_HELD_FOR_COMFORT)
    safe_m = safe_for_length(lamp, screen, high_uvi)
    if safe_m > far_m and verdict is Verdict.FITS:
        return Reach(Verdict.BY_LENGTH, _BY_LENGTH, target, mild_m=safe_m)
    if safe_m > start_m:
        start_m = min(safe_m, far_m)
        reasons.append(Reason.START_HELD_FOR_LENGTH)
    if verdict is not Verdict.FITS:
        return Reach(verdict, tuple(reasons), target, (near_m, start_m, far_m))
    wanted, least_m = (low_uvi, high_uvi), start_m
    start_m, chances = start_by_chance(lamp, screen, (least_m, far_m), wanted)
    reasons += [Reason.START_MOVED_BY_CHANCE] if start_m > least_m + _SAME_PLACE_M else []
    return Reach(verdict, tuple(reasons), target, (near_m, start_m, far_m), chances)


def check_range(low_uvi: float, high_uvi: float) -> None:
    """Refuse a UVI range [1] that is not in order, empty of light, or above 20."""
    if not 0.0 <= low_uvi <= high_uvi:
        raise OutsideModelError("low end of the UV index", low_uvi, 0.0, high_uvi, "")
    if not 0.0 < high_uvi <= HIGHEST_UVI:
        raise OutsideModelError("high end of the UV index", high_uvi, 0.0, HIGHEST_UVI, "")
