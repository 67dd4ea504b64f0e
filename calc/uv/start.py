"""Where to hang a tube first, by the chance of what it gives there; and whether that is enough."""

from dataclasses import dataclass
from enum import Enum
from math import exp, log, sqrt

from calc.unknowns import Whole
from calc.uv.distances import distance_for
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
    "chances_of",
    "start_by_chance",
]

MOST_ABOVE = 0.10
"""At the start a UVI above the range is no likelier than this [1]. Source: uv_start_judgement."""

SURE_ENOUGH = 0.5
"""Where the range holds with less than this chance [1], only a meter tells. The same source."""

FAR_START_M = 0.75
"""A start farther than this [m], about 30 in, asks for a weaker tube. The same source."""

_GOLDEN = (sqrt(5.0) - 1.0) / 2.0
_ROUNDS = 20
_FARTHEST_FACTOR = 4.0
# A start that changes the UVI by less is the same start.
_SAME_UVI = 0.01
_LOOKS = 4
# A start is not moved for less [1].
_WORTH = 0.01


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


def chances_of(whole: Whole, best_uvi: float, low_uvi: float, high_uvi: float) -> Chances:
    """Return how likely the true UVI is below, inside and above a range.

    P(x < low), P(x > high), x the best value times its spread

    Parameters
    ----------
    whole : what is not known of the UVI, as ``unknowns_of``
    best_uvi : the best value [1], above 0
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
    >>> from calc.uv.lamp import Fixture, Lamp
    >>> from calc.uv.lamp_unknowns import unknowns_of
    >>> from calc.uv.screen import NoScreen
    >>> whole = unknowns_of(Lamp(12.0, Fixture.POLISHED), 0.45, NoScreen())
    >>> chances_of(whole, 3.9, 3.0, 5.0).above < 0.05
    True
    """
    below = whole.chance_below(low_uvi / best_uvi)
    above = 1.0 - whole.chance_below(high_uvi / best_uvi)
    return Chances(below, max(0.0, 1.0 - below - above), above)


def best_start_uvi(whole: Whole, most_uvi: float, low_uvi: float, high_uvi: float) -> float:
    """Find the best value of the UVI at which a tube starts.

    the UVI u with the highest P(low <= u x <= high) while P(u x > high) <= 1/10 and u is no
    more than allowed; x the spread

    Parameters
    ----------
    whole : what is not known of the UVI, as ``unknowns_of``
    most_uvi : the most that the best value may be [1], above 0
    low_uvi : low end of the range [1], 0 or more
    high_uvi : high end of the range [1], above 0

    Returns
    -------
    float
        UVI [1], at most the one allowed.

    Notes
    -----
    What is not known of a class leans to less UV, mostly by assumption, so the highest chance
    lies nearer than the middle of the range. No start is moved nearer on that: too little can be
    mended after a reading, a burn cannot, and the next tube, a new one, hangs there too.
    Source: uv_start_judgement.

    Examples
    --------
    >>> from calc.unknowns import Effect, Factor, Known, Unknown, combine
    >>> wide = combine([Effect(Unknown("lamp", Known.UNKNOWN, Factor(1.6), "memory"))])
    >>> round(best_start_uvi(wide, 4.0, 3.0, 5.0), 2)
    3.47
    """
    most = min(most_uvi, high_uvi / whole.at(1.0 - MOST_ABOVE))
    if low_uvi <= 0.0 or most <= low_uvi:
        return most
    # On the logarithm the chance has one top.
    left, right = log(most / _FARTHEST_FACTOR), log(most)

    def inside(level: float) -> float:
        return chances_of(whole, exp(level), low_uvi, high_uvi).inside

    if inside(right) >= inside(right - 0.01):
        return most
    for _ in range(_ROUNDS):
        a, b = right - _GOLDEN * (right - left), left + _GOLDEN * (right - left)
        if inside(a) < inside(b):
            left = a
        else:
            right = b
    found = (left + right) / 2.0
    return exp(found) if inside(found) > inside(log(most)) + _WORTH else most


def start_by_chance(
    lamp: Lamp, screen: Screen, between_m: tuple[float, float], wanted: tuple[float, float]
) -> tuple[float, Chances]:
    """Find where a tube starts by its chances, between the nearest and the farthest allowed.

    the distance of ``best_start_uvi``, looked at again from there, because what is not known may
    spread more farther away

    Parameters
    ----------
    lamp : the tube
    screen : what lies between
    between_m : nearest and farthest start [m], 0.05 to 1.5
    wanted : low and high end of the range [1], the low one 0 or more

    Returns
    -------
    tuple of float and Chances
        The start [m] and the chances [1] there.

    Notes
    -----
    At the farthest start a UVI above may stay likelier than one in ten.
    Source: uv_start_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> from calc.uv.screen import NoScreen
    >>> new = Lamp(14.0, Fixture.POLISHED, age_s=3600.0)
    >>> start_m, chances = start_by_chance(new, NoScreen(), (0.45, 0.7), (3.0, 5.0))
    >>> round(start_m, 2), round(chances.above, 2)
    (0.48, 0.1)
    """
    start_m, far_m = between_m
    for _ in range(_LOOKS):
        whole, here = unknowns_of(lamp, start_m, screen), uvi_at(lamp, start_m, screen)
        uvi = best_start_uvi(whole, here, *wanted)
        if uvi >= here * (1.0 - _SAME_UVI) or start_m >= far_m:
            return start_m, chances_of(whole, here, *wanted)
        weak = uvi <= uvi_at(lamp, far_m, screen)
        start_m = far_m if weak else distance_for(lamp, screen, uvi)
    whole, here = unknowns_of(lamp, start_m, screen), uvi_at(lamp, start_m, screen)
    return start_m, chances_of(whole, here, *wanted)


def advice_for(distance_m: float, chances: Chances) -> Advice:
    """Return what can honestly be said of a start at a distance [m]."""
    if distance_m > FAR_START_M:
        return Advice.WEAKER_TUBE
    return Advice.HANG_HERE if chances.inside >= SURE_ENOUGH else Advice.MEASURE
