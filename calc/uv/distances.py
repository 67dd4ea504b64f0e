"""The distance at which a tube gives a UVI, and the one that is safe whatever its length."""

from math import log

from calc.roots import rising_root
from calc.uncertainty import Estimate
from calc.uv.lamp import NEAREST_M, Lamp, of_group, other_lengths, uvi_at
from calc.uv.screen import Screen
from calc.validity import OutsideModelError

__all__ = ["FARTHEST_PLACE_M", "distance_for", "safe_by_class", "safe_for_length", "uvi_by_length"]

FARTHEST_PLACE_M = 1.5
"""The farthest place that is answered; no enclosure is higher."""


def distance_for(lamp: Lamp, screen: Screen, uvi: float) -> float:
    """Find the distance at which a lamp gives a UVI.

    uvi_at(d) = UVI, solved on the logarithm

    Parameters
    ----------
    lamp : the tube
    screen : what lies between
    uvi : wanted UV index [1], above 0

    Returns
    -------
    float
        Distance [m], 0.05 to 1.5.

    Notes
    -----
    Raises OutsideModelError where the lamp gives that UVI nearer or farther only.
    Source: keitz1971; line_through_weave.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> from calc.uv.screen import NoScreen
    >>> round(distance_for(Lamp(12.0, Fixture.POLISHED), NoScreen(), 4.5), 2)
    0.41
    """
    most = uvi_at(lamp, NEAREST_M, screen)
    least = uvi_at(lamp, FARTHEST_PLACE_M, screen)
    if not least <= uvi <= most:
        raise OutsideModelError("UV index", uvi, least, most, "")

    def lacking(distance_m: float) -> float:
        return log(uvi / uvi_at(lamp, distance_m, screen))

    ends = log(uvi / most), log(uvi / least)
    return rising_root(lacking, NEAREST_M, FARTHEST_PLACE_M, ends)


def safe_for_length(lamp: Lamp, screen: Screen, high_uvi: float) -> float:
    """Return how far [m] a tube gives the upper end at most, whatever its length may be.

    0 where no other length is possible, or none is too strong anywhere.
    """
    others = other_lengths(lamp)
    # Of a class the longest tube gives most everywhere.
    strong = (
        other
        for other in (others[-1:] if lamp.own is None else others)
        if uvi_at(other, NEAREST_M, screen) > high_uvi >= uvi_at(other, FARTHEST_PLACE_M, screen)
    )
    safe_m = max((distance_for(other, screen, high_uvi) for other in strong), default=0.0)
    if lamp.group is None or lamp.own is not None:
        return safe_m
    return max(safe_m, safe_for_length(of_group(lamp, None), screen, high_uvi))


def safe_by_class(lamp: Lamp, screen: Screen, high_uvi: float) -> float:
    """Return how far [m] a tube gives the upper end by its class, whatever a group read of it.

    0 where no group's readings count, or the class is not too strong anywhere.
    """
    if lamp.group is None or lamp.own is not None:
        return 0.0
    ours = of_group(lamp, None)
    if not uvi_at(ours, NEAREST_M, screen) > high_uvi >= uvi_at(ours, FARTHEST_PLACE_M, screen):
        return 0.0
    return distance_for(ours, screen, high_uvi)


def uvi_by_length(lamp: Lamp, distance_m: float, screen: Screen) -> Estimate:
    """Return the UVI [1] at a distance [m], its range by the length of the tube alone."""
    best = uvi_at(lamp, distance_m, screen)
    found = [uvi_at(other, distance_m, screen) for other in other_lengths(lamp)]
    return Estimate(min([best, *found]), best, max([best, *found]))
