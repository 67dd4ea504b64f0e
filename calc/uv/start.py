"""Where to hang a tube first, by the chance of what it gives there; and whether that is enough."""

from dataclasses import dataclass
from enum import Enum
from math import exp, log, sqrt

from calc.unknowns import Whole
from calc.uv.lamp import Lamp, uvi_at
from calc.uv.lamp_unknowns import unknowns_of
from calc.uv.screen import Screen

__all__ = [
    "FAR_START_M",
    "MOST_ABOVE",
    "SURE_ENOUGH",
    "Advice",
    "Chances",
    "advice_for",
    "best_start_uvi",
    "chances_at",
    "middle_uvi",
]

MOST_ABOVE = 0.10
"""At the start a UVI above the range is no likelier than this [1]. Source: uv_start_judgement."""

SURE_ENOUGH = 0.5
"""Where the range holds with less than this chance [1], only a meter tells. The same source."""

FAR_START_M = 0.75
"""A start farther than this [m], about 30 in, asks for a weaker tube. The same source."""

_GOLDEN = (sqrt(5.0) - 1.0) / 2.0
_ROUNDS = 24
_FARTHEST_FACTOR = 4.0


class Advice(Enum):
    """What can honestly be said of the start."""

    HANG_HERE = "more likely right than not"
    MEASURE = "start here and measure: more likely wrong than right"
    WEAKER_TUBE = "so far away that a weaker tube is the better choice"


@dataclass(frozen=True, slots=True)
class Chances:
    """How likely [1] the UVI is below, inside and above a range; they sum to 1."""

    below: float
    inside: float
    above: float


def middle_uvi(low_uvi: float, high_uvi: float) -> float:
    """Return the UVI [1] in the middle of a range: √(low high), or half of high where low is 0."""
    return sqrt(low_uvi * high_uvi) if low_uvi > 0.0 else high_uvi / 2.0


def chances_at(
    lamp: Lamp, distance_m: float, screen: Screen, low_uvi: float, high_uvi: float
) -> Chances:
    """Return how likely the true UVI at a distance is below, inside and above a range.

    P(x < low), P(x > high), x = uvi_at times the spread of ``unknowns_of``

    Parameters
    ----------
    lamp : the tube
    distance_m : tube to back [m], 0.05 to 3
    screen : what lies between
    low_uvi : low end of the range [1], 0 or more
    high_uvi : high end of the range [1], above 0

    Returns
    -------
    Chances
        Three chances [1].

    Notes
    -----
    As good as what is assumed of the unknowns.
    Source: uv_lamp_judgement; uv_rules_length.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> from calc.uv.screen import NoScreen
    >>> chances_at(Lamp(12.0, Fixture.POLISHED), 0.45, NoScreen(), 3.0, 5.0).above < 0.05
    True
    """
    whole = unknowns_of(lamp, distance_m, screen)
    return _chances(whole, uvi_at(lamp, distance_m, screen), low_uvi, high_uvi)


def best_start_uvi(
    lamp: Lamp, distance_m: float, screen: Screen, low_uvi: float, high_uvi: float
) -> float:
    """Find the best value of the UVI at which a tube starts, from where it might.

    the UVI u with the highest P(low <= u x <= high) while P(u x > high) <= 1/10, and no more
    than at the distance given; x as there

    Parameters
    ----------
    lamp : the tube
    distance_m : the nearest that the start may be [m], 0.05 to 3
    screen : what lies between
    low_uvi : low end of the range [1], 0 or more
    high_uvi : high end of the range [1], above 0

    Returns
    -------
    float
        UVI [1], at most that at the distance.

    Notes
    -----
    What is not known of a class leans to less UV, so the highest chance mostly lies nearer than
    the middle of the range. The start is not moved nearer on that: too little can be mended after
    a reading, a burn cannot. The spread is taken at the distance given.
    Source: uv_start_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> from calc.uv.screen import NoScreen
    >>> round(best_start_uvi(Lamp(12.0, Fixture.POLISHED), 0.4513, NoScreen(), 3.0, 5.0), 2)
    3.85
    """
    whole = unknowns_of(lamp, distance_m, screen)
    most = min(uvi_at(lamp, distance_m, screen), high_uvi / whole.at(1.0 - MOST_ABOVE))
    if low_uvi <= 0.0:
        return most
    # On the logarithm the chance has one top.
    left, right = log(most / _FARTHEST_FACTOR), log(most)

    def inside(level: float) -> float:
        return _chances(whole, exp(level), low_uvi, high_uvi).inside

    if inside(right) >= inside(right - 0.01):
        return most
    for _ in range(_ROUNDS):
        a, b = right - _GOLDEN * (right - left), left + _GOLDEN * (right - left)
        if inside(a) < inside(b):
            left = a
        else:
            right = b
    return exp((left + right) / 2.0)


def advice_for(distance_m: float, chances: Chances) -> Advice:
    """Return what can honestly be said of a start at a distance [m]."""
    if distance_m > FAR_START_M:
        return Advice.WEAKER_TUBE
    return Advice.HANG_HERE if chances.inside >= SURE_ENOUGH else Advice.MEASURE


def _chances(whole: Whole, best_uvi: float, low_uvi: float, high_uvi: float) -> Chances:
    below = whole.chance_below(low_uvi / best_uvi)
    above = 1.0 - whole.chance_below(high_uvi / best_uvi)
    return Chances(below, max(0.0, 1.0 - below - above), above)
