"""Which tube suits: the strength for a fixed place, the length for an enclosure."""

from dataclasses import dataclass, replace
from enum import Enum
from math import log

from calc.judgement import Judged
from calc.limits import Limits
from calc.uncertainty import Estimate
from calc.uv.as_read import Groups, as_read
from calc.uv.danger import judge_uvi
from calc.uv.distances import uvi_by_length
from calc.uv.lamp import Fixture, Lamp, as_long_as, is_between_fitted, of_length, uvi_at
from calc.uv.lamp_unknowns import uvi_estimate
from calc.uv.lengths import TubeLength, length_of_tube
from calc.uv.placement import check_range, place
from calc.uv.screen import Screen
from calc.uv.start import Advice
from calc.uv.tube import STANDARD_T5_HO, StandardTube
from calc.validity import OutsideModelError

__all__ = [
    "STRENGTHS_PERCENT",
    "LengthFit",
    "SuitRow",
    "TubeChoice",
    "strengths_and_fixtures",
    "suits",
    "tube_length_for",
    "weaker_tubes",
]

STRENGTHS_PERCENT = (2.0, 4.0, 6.0, 8.0, 10.0, 12.0, 14.0)
"""Strengths to choose from: every 2 %, so that a label always has one near by, and no range of
products is meant. A strength that is typed is taken as it is. Source: uv_class_strengths."""

_SHORTEST_M = STANDARD_T5_HO[0].lit_length_m
_PREFERRED_M = 0.40
_SHARE_LOW, _SHARE_HIGH = 0.5, 2.0 / 3.0
_ABOUT = 1.15
"""How far beyond half to two thirds still counts as about that."""


class LengthFit(Enum):
    """How a standard tube meets the wanted length."""

    WITHIN = "half to two thirds of the enclosure"
    NEAR = "a little more or less than half to two thirds"
    NONE = "no standard tube comes near"


@dataclass(frozen=True, slots=True)
class SuitRow:
    """One class of tube in one fixture at a fixed place.

    ``longest``: where the length is not known, the longest tube that is not too strong there.
    """

    strength_percent: float
    fixture: Fixture
    uvi: Estimate
    judged: Judged
    longest: StandardTube | None = None


@dataclass(frozen=True, slots=True)
class TubeChoice:
    """The tube for an enclosure; ``shorter`` and ``longer`` are the neighbours to choose from.

    ``middle_from_warm_end_m``: where the tube's middle goes when it starts at the warm end.
    """

    wanted_low_m: float
    wanted_high_m: float
    fit: LengthFit
    tube: StandardTube | None
    share: float | None
    middle_from_warm_end_m: float | None
    shorter: StandardTube | None
    longer: StandardTube | None


def suits(
    distance_m: float,
    screen: Screen,
    low_uvi: float,
    high_uvi: float,
    length: TubeLength | None = None,
    count: int = 1,
    gap_m: float = 0.0,
    limits: Limits | None = None,
    *,
    unchecked: bool = False,
    groups: Groups | None = None,
) -> tuple[SuitRow, ...]:
    """List every strength of tube in both fixtures at a fixed place.

    Parameters
    ----------
    distance_m : tube to back [m], 0.05 to 3
    screen : what lies between
    low_uvi : low end of the range [1], 0 or more
    high_uvi : high end of the range [1], from the low one to 20
    length : lit length [m], 0.1 to 1.6; without it, that of the shortest standard tube
    count : equal tubes side by side [1], 1 to 4
    gap_m : from the middle of one to the middle of the next [m], 0 to 2
    limits : whose; what passes one is dangerous; None: it is held against none
    unchecked : whether the range is from memory alone
    groups : what a group's readings say of classes, by strength [%] and fixture

    Returns
    -------
    tuple of SuitRow
        UVI [1] with its doubt and how it is judged, strongest first.

    Notes
    -----
    All but 6 % and 12 % carry a wider doubt. What is likely too strong by its class stays so,
    whatever a group read.
    Source: uv_class_strengths; uv_distance_rows.

    Examples
    --------
    >>> from calc.uv.screen import NoScreen
    >>> rows = suits(0.4572, NoScreen(), 3.0, 5.0)
    >>> [(r.strength_percent, r.fixture.name) for r in rows if r.judged.is_fine]
    [(14.0, 'POLISHED'), (14.0, 'PLAIN'), (12.0, 'POLISHED'), (10.0, 'POLISHED')]
    """
    check_range(low_uvi, high_uvi)
    rows = []
    for strength in sorted(STRENGTHS_PERCENT, reverse=True):
        for fixture in Fixture:
            many = Lamp(strength, fixture, count=count, gap_m=gap_m)
            ours = of_length(many, length or length_of_tube(_SHORTEST_M))
            lamp = as_read(ours, groups or {})
            uvi = uvi_estimate(lamp, distance_m, screen)
            judged = judge_uvi(uvi, low_uvi, high_uvi, limits, distance_m, unchecked=unchecked)
            if lamp.group is not None and not judged.is_likely_above:
                by_class = uvi_estimate(ours, distance_m, screen)
                strong = judge_uvi(by_class, low_uvi, high_uvi, limits, unchecked=unchecked)
                judged = strong if strong.is_likely_above else judged
            longest = _longest(lamp, distance_m, screen, high_uvi)
            rows.append(SuitRow(strength, fixture, uvi, judged, longest))
    return tuple(rows)


def _longest(lamp: Lamp, distance_m: float, screen: Screen, high_uvi: float) -> StandardTube | None:
    """Return the longest tube that is not too strong, where a longer one that may be there is.

    Where even the shortest is a little above, no longer one may be taken than that.
    """
    if not lamp.may_be or uvi_by_length(lamp, distance_m, screen).high <= high_uvi:
        return None
    lit = (lamp.lit_length_m, *(other.lit_length_m for other in lamp.may_be))
    known = [tube for tube in STANDARD_T5_HO if tube.lit_length_m in lit]
    mild = [
        tube
        for tube in known
        if uvi_at(replace(lamp, lit_length_m=tube.lit_length_m), distance_m, screen) <= high_uvi
    ]
    return max(mild or known[:1], key=lambda tube: tube.face_to_face_m, default=None)


def weaker_tubes(
    lamp: Lamp, screen: Screen, low_uvi: float, high_uvi: float, groups: Groups | None = None
) -> tuple[Lamp, ...]:
    """List the weaker classes of tube that serve a range from near by, where one starts far away.

    those with less UVI than the lamp at its start, whose own start is no farther than
    ``start.FAR_START_M``; the one that starts nearest to 0.4 m first

    Parameters
    ----------
    lamp : the tube that is too strong
    screen : what lies between
    low_uvi : low end of the range [1], 0 or more
    high_uvi : high end of the range [1], from the low one to 20
    groups : what a group's readings say of classes, by strength [%] and fixture

    Returns
    -------
    tuple of Lamp
        Tubes of the same length, as far as that is known; empty where none serves.

    Notes
    -----
    Strengths outside the fit, under 6 % or over 12 %, are not offered.
    Source: uv_class_strengths; uv_start_judgement; nearest_distance.

    Examples
    --------
    >>> from calc.uv.screen import NoScreen
    >>> found = weaker_tubes(Lamp(14.0, Fixture.POLISHED), NoScreen(), 1.0, 1.5)
    >>> [(one.strength_percent, one.fixture.name) for one in found[:3]]
    [(6.0, 'PLAIN'), (8.0, 'PLAIN'), (6.0, 'POLISHED')]
    """
    found = []
    for strength, fixture in strengths_and_fixtures():
        one = as_read(as_long_as(Lamp(strength, fixture), lamp), groups or {})
        placement = place(one, screen, low_uvi, high_uvi)
        if placement.ends is None or placement.advice is Advice.WEAKER_TUBE:
            continue
        start_m = placement.ends[1].distance_m
        if uvi_at(one, start_m, screen) < uvi_at(lamp, start_m, screen):
            found.append((abs(log(start_m / _PREFERRED_M)), one))
    return tuple(one for _, one in sorted(found, key=lambda pair: pair[0]))


def strengths_and_fixtures() -> tuple[tuple[float, Fixture], ...]:
    """Return the strengths to exchange a tube for [%]: those from end to end of the fit."""
    strengths = filter(is_between_fitted, STRENGTHS_PERCENT)
    return tuple((s, fixture) for s in strengths for fixture in Fixture)


def tube_length_for(enclosure_length_m: float) -> TubeChoice:
    """Pick the standard T5 HO tube of half to two thirds of an enclosure.

    L/2 <= tube <= 2L/3, else the nearest within 15 % of that

    Parameters
    ----------
    enclosure_length_m : inner length of the enclosure, L [m], 0.3 to 4

    Returns
    -------
    TubeChoice
        Tube, its share [1] of the length, and where it goes [m].

    Notes
    -----
    The tube starts at the warm end, so that ultraviolet and heat lie together and the other
    end stays in shade. Of two that fit, the longer.
    Source: half_to_two_thirds; t5_lengths.

    Examples
    --------
    >>> tube_length_for(1.2192).tube.face_to_face_m
    0.849
    """
    if not 0.3 <= enclosure_length_m <= 4.0:
        raise OutsideModelError("enclosure length", enclosure_length_m, 0.3, 4.0, "m")
    low, high = _SHARE_LOW * enclosure_length_m, _SHARE_HIGH * enclosure_length_m

    def miss(tube: StandardTube) -> float:
        return max(low / tube.face_to_face_m, tube.face_to_face_m / high, 1.0)

    best = min(reversed(STANDARD_T5_HO), key=miss)
    fit = LengthFit.WITHIN if miss(best) == 1.0 else LengthFit.NEAR
    shorter = [t for t in STANDARD_T5_HO if t.face_to_face_m < low]
    longer = [t for t in STANDARD_T5_HO if high < t.face_to_face_m <= enclosure_length_m]
    neighbours = (shorter[-1] if shorter else None, longer[0] if longer else None)
    if miss(best) > _ABOUT:
        return TubeChoice(low, high, LengthFit.NONE, None, None, None, *neighbours)
    length = best.face_to_face_m
    return TubeChoice(low, high, fit, best, length / enclosure_length_m, length / 2.0, *neighbours)
