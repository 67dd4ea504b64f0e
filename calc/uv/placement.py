"""Where a tube goes: the distances for a UVI range, and whether a given distance is right.

Answers are fields and enums; the wording is the bot's. Which tube suits is in ``choice``.
"""

from dataclasses import dataclass

from calc.judgement import Judged, judge_value
from calc.judgement import Verdict as Judgement
from calc.limits import Limits
from calc.quantities import Quantity
from calc.uncertainty import Estimate
from calc.uv.danger import judge_uvi
from calc.uv.distances import FARTHEST_PLACE_M, distance_for, safe_for_length, uvi_by_length
from calc.uv.lamp import Lamp, of_group
from calc.uv.lamp_unknowns import uvi_estimate
from calc.uv.nearest import COMFORTABLE_MINIMUM_M
from calc.uv.reach import HIGHEST_UVI, SAFE_MINIMUM_M, Reason, Verdict, check_range, reach
from calc.uv.screen import Screen, middle_transmission
from calc.uv.start import Advice, Chances, advice_for

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
    "feared",
    "place",
    "safe_for_length",
    "spot",
]


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
    ``by_length`` is the UVI [1] from the typical tube to the longest it may be; ``feared`` what is
    held against limits: by a group's readings no less than by the class.
    """

    here: Spot
    judged: Judged
    placement: Placement
    move_into_range_m: float | None
    move_to_start_m: float | None
    by_length: Estimate
    feared: Estimate

    @property
    def may_be_above(self) -> bool:
        """Whether the tube, not likely above the range, is above it if it is a longer one."""
        ends = self.placement.low_uvi, self.placement.high_uvi
        longest = judge_value(Quantity.UVI, Estimate.exact(self.by_length.high), *ends)
        return longest.is_likely_above and not self.judged.is_likely_above


def place(lamp: Lamp, screen: Screen, low_uvi: float, high_uvi: float) -> Placement:
    """Find the distances from tube to back at which a lamp gives a UVI range.

    the distances of ``reach``, each with its UVI

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
    found = reach(lamp, screen, low_uvi, high_uvi)
    safe = spot(lamp, SAFE_MINIMUM_M, screen)
    at = found.ends_m or (None, None, None)
    near, start, far = (None if d is None else spot(lamp, d, screen) for d in at)
    return Placement(
        verdict=found.verdict,
        reasons=found.reasons,
        low_uvi=low_uvi,
        high_uvi=high_uvi,
        target_uvi=found.target_uvi,
        near=near,
        start=start,
        far=far,
        at_safe_minimum=safe,
        chances=found.chances,
        mild_m=found.mild_m,
    )


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
    worst = feared(lamp, here, screen)
    if worst is not here.uvi:
        ours = judge_uvi(worst, low_uvi, high_uvi, limits, distance_m, unchecked=unchecked)
        judged = ours if ours.verdict is Judgement.DANGEROUS else judged
    by_length = uvi_by_length(lamp, distance_m, screen)
    return PlaceCheck(here, judged, placement, into, to_start, by_length, worst)


def feared(lamp: Lamp, here: Spot, screen: Screen) -> Estimate:
    """Return the UVI [1] that a danger goes by: that of the class where a group read less."""
    if lamp.group is None or lamp.own is not None:
        return here.uvi
    ours = uvi_estimate(of_group(lamp, None), here.distance_m, screen)
    return ours if ours.best > here.uvi.best else here.uvi


def spot(lamp: Lamp, distance_m: float, screen: Screen) -> Spot:
    """Return the spot at a distance [m], 0.05 to 3, under a lamp."""
    passed = middle_transmission(screen, distance_m, lamp.lit_length_m)
    return Spot(distance_m, uvi_estimate(lamp, distance_m, screen), passed)
