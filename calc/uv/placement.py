"""Where a tube goes: the distances for a UVI range, and whether a given distance is right.

Answers are fields and enums; the wording is the bot's. Which tube suits is in ``choice``.
"""

from dataclasses import dataclass
from enum import Enum
from math import sqrt

from calc.judgement import Judged, judge_value
from calc.limits import Limits
from calc.quantities import Quantity
from calc.uncertainty import Estimate
from calc.uv.danger import judge_uvi
from calc.uv.distances import FARTHEST_PLACE_M, distance_for, safe_for_length, uvi_by_length
from calc.uv.lamp import Lamp, uvi_at
from calc.uv.lamp_unknowns import uvi_estimate
from calc.uv.nearest import COMFORTABLE_MINIMUM_M
from calc.uv.screen import Screen, middle_transmission
from calc.uv.start import Advice, Chances, advice_for, start_by_chance
from calc.validity import OutsideModelError

__all__ = [
    "COMFORTABLE_MINIMUM_M",
    "FARTHEST_PLACE_M",
    "HIGHEST_UVI",
    "SAFE_MINIMUM_M",
    "PlaceCheck",
    "Placement",
    "Reason",
    "Spot",
    "Verdict",
    "check_place",
    "check_range",
    "distance_for",
    "place",
    "safe_for_length",
    "spot",
]

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
class Spot:
    """A distance [m] under a tube with its UVI [1] and the share [1] that a screen passes."""

    distance_m: float
    uvi: Estimate
    screen_transmission: float


@dataclass(frozen=True, slots=True)
class Placement:
    """The distances at which a lamp gives a UVI range; no spots where it cannot.

    ``chances`` are those at the start; None where the lamp does not fit. ``mild_m``: where its
    length decides, from this distance [m] on it is not too strong at any.
    """

    verdict: Verdict
    reasons: tuple[Reason, ...]
    low_uvi: float
    high_uvi: float
    target_uvi: float
    near: Spot | None
    start: Spot | None
    far: Spot | None
    at_safe_minimum: Spot
    chances: Chances | None = None
    mild_m: float | None = None

    @property
    def advice(self) -> Advice | None:
        """What can honestly be said of the start; None where the lamp does not fit."""
        if self.start is None or self.chances is None:
            return None
        return advice_for(self.start.distance_m, self.chances)

    @property
    def ends(self) -> tuple[Spot, Spot, Spot] | None:
        """The near end, the start and the far end, where the lamp fits."""
        fits = self.verdict is Verdict.FITS
        if not fits or self.near is None or self.start is None or self.far is None:
            return None
        return self.near, self.start, self.far


@dataclass(frozen=True, slots=True)
class PlaceCheck:
    """A given distance against a range; moves [m] are positive away from the tube.

    ``judged`` is how the UVI stands with its doubt, ``placement`` what would fit.
    ``by_length`` is the UVI [1] from the typical tube to the longest it may be.
    """

    here: Spot
    judged: Judged
    placement: Placement
    move_into_range_m: float | None
    move_to_start_m: float | None
    by_length: Estimate

    @property
    def may_be_above(self) -> bool:
        """Whether the tube, not likely above the range, is above it if it is a longer one."""
        ends = self.placement.low_uvi, self.placement.high_uvi
        longest = judge_value(Quantity.UVI, Estimate.exact(self.by_length.high), *ends)
        return longest.is_likely_above and not self.judged.is_likely_above


def place(lamp: Lamp, screen: Screen, low_uvi: float, high_uvi: float) -> Placement:
    """Find the distances from tube to back at which a lamp gives a UVI range.

    near = d(high), far = d(low), start = d(√(low high)); low 0: start = d(high/2); for an
    unknown length no nearer than d(high) of the longest tube it may be; moved farther by
    ``start.start_by_chance``

    Parameters
    ----------
    lamp : the tube
    screen : what lies between
    low_uvi : low end of the range [1], 0 or more
    high_uvi : high end of the range [1], from the low one to 20

    Returns
    -------
    Placement
        Spots [m, UVI], verdict and what bounded them.

    Notes
    -----
    Nearer than 0.15 m nothing is placed, farther than 1.5 m nothing is answered. Of an unknown
    length the ends are those of the typical tube; where the longest gives more than the high end
    even at the far one, no place is right until the length is known.
    Source: uv_distance_rows; nearest_distance; t5_lengths; uv_start_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> from calc.uv.screen import FlatScreen
    >>> place(Lamp(6.0, Fixture.POLISHED), FlatScreen(0.55), 3.0, 5.0).verdict.name
    'TOO_CLOSE'
    """
    check_range(low_uvi, high_uvi)
    target = sqrt(low_uvi * high_uvi) if low_uvi > 0.0 else high_uvi / 2.0
    safe = spot(lamp, SAFE_MINIMUM_M, screen)
    limit_uvi = uvi_at(lamp, FARTHEST_PLACE_M, screen)

    def nothing(verdict: Verdict, reason: Reason, mild_m: float | None = None) -> Placement:
        no_ends = (None, None, None, safe, None, mild_m)
        return Placement(verdict, (reason,), low_uvi, high_uvi, target, *no_ends)

    if safe.uvi.best < low_uvi:
        return nothing(Verdict.TOO_WEAK, Reason.TOO_WEAK_AT_SAFE_MINIMUM)
    longest_uvi = uvi_by_length(lamp, FARTHEST_PLACE_M, screen).high
    if limit_uvi >= target or longest_uvi > high_uvi:
        return nothing(Verdict.OUT_OF_RANGE, Reason.TOO_STRONG_AT_LIMIT)
    reasons: list[Reason] = []
    near_m = _held(lamp, screen, high_uvi, safe, reasons, Reason.NEAR_END_HELD_FOR_SAFETY)
    start_m = _held(lamp, screen, target, safe, reasons, Reason.START_HELD_FOR_SAFETY)
    far_m = FARTHEST_PLACE_M
    if limit_uvi < low_uvi:
        far_m = distance_for(lamp, screen, low_uvi)
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
        return nothing(Verdict.BY_LENGTH, Reason.LONGEST_TOO_STRONG_AT_FAR_END, safe_m)
    if safe_m > start_m:
        start_m = min(safe_m, far_m)
        reasons.append(Reason.START_HELD_FOR_LENGTH)
    chances = None
    if verdict is Verdict.FITS:
        least_m, wanted = start_m, (low_uvi, high_uvi)
        start_m, chances = start_by_chance(lamp, screen, (least_m, far_m), wanted)
        reasons += [Reason.START_MOVED_BY_CHANCE] if start_m > least_m + _SAME_PLACE_M else []
    near, start, far = (spot(lamp, d, screen) for d in (near_m, start_m, far_m))
    ends = (near, start, far, safe, chances)
    return Placement(verdict, tuple(reasons), low_uvi, high_uvi, target, *ends)


def check_place(
    lamp: Lamp,
    screen: Screen,
    distance_m: float,
    low_uvi: float,
    high_uvi: float,
    limits: Limits | None = None,
    *,
    unchecked: bool = False,
) -> PlaceCheck:
    """Judge a given distance against a UVI range, and say how far to move.

    Parameters
    ----------
    lamp : the tube
    screen : what lies between
    distance_m : tube to back [m], 0.05 to 3
    low_uvi : low end of the range [1], 0 or more
    high_uvi : high end of the range [1], from the low one to 20
    limits : whose; what passes one is dangerous; None: it is held against none
    unchecked : whether the range is from memory alone

    Returns
    -------
    PlaceCheck
        Judgement and moves [m], positive away from the tube; None where no distance fits.

    Notes
    -----
    Moves end inside the placement, so never nearer than the safe minimum.
    Source: uv_distance_rows; limits_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> from calc.uv.screen import NoScreen
    >>> check_place(Lamp(12.0, Fixture.POLISHED), NoScreen(), 0.9, 3.0, 5.0).judged.verdict.name
    'FAR_TOO_LOW'
    """
    placement = place(lamp, screen, low_uvi, high_uvi)
    here = spot(lamp, distance_m, screen)
    into = to_start = None
    if placement.near and placement.start and placement.far:
        nearest = min(max(distance_m, placement.near.distance_m), placement.far.distance_m)
        into, to_start = nearest - distance_m, placement.start.distance_m - distance_m
    judged = judge_uvi(here.uvi, low_uvi, high_uvi, limits, distance_m, unchecked=unchecked)
    by_length = uvi_by_length(lamp, distance_m, screen)
    return PlaceCheck(here, judged, placement, into, to_start, by_length)


def spot(lamp: Lamp, distance_m: float, screen: Screen) -> Spot:
    """Return the spot at a distance [m], 0.05 to 3, under a lamp."""
    passed = middle_transmission(screen, distance_m, lamp.lit_length_m)
    return Spot(distance_m, uvi_estimate(lamp, distance_m, screen), passed)


def _held(
    lamp: Lamp, screen: Screen, uvi: float, safe: Spot, reasons: list[Reason], reason: Reason
) -> float:
    """Return the distance of a UVI, held at the safe minimum; a hold adds its reason."""
    if safe.uvi.best <= uvi:
        reasons.append(reason)
        return SAFE_MINIMUM_M
    return distance_for(lamp, screen, uvi)


def check_range(low_uvi: float, high_uvi: float) -> None:
    """Refuse a UVI range [1] that is not in order, empty of light, or above 20."""
    if not 0.0 <= low_uvi <= high_uvi:
        raise OutsideModelError("low end of the UV index", low_uvi, 0.0, high_uvi, "")
    if not 0.0 < high_uvi <= HIGHEST_UVI:
        raise OutsideModelError("high end of the UV index", high_uvi, 0.0, HIGHEST_UVI, "")
