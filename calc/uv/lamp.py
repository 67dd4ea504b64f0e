"""A UV tube as keepers buy it: class, fixture, length, age; and the UVI it gives.

One fitted constant carries the class 'T5 HO, 12 %'; everything else scales it. A lamp with a
constant of its own, from meter readings, answers from that. How far a UVI may be off is in
``lamp_unknowns``. The class holds for T5 HO tubes alone; a small lamp answers from readings or
not at all.
"""

from dataclasses import dataclass, replace
from enum import Enum
from math import exp

import numpy as np
from numpy.typing import NDArray

from calc.shape.line import Real
from calc.uncertainty import Doubt, combined_factor
from calc.uv.group_class import GroupClass
from calc.uv.lengths import LengthKnown, TubeLength
from calc.uv.point import PointSource, point_uvi
from calc.uv.screen import (
    Screen,
    middle_transmission,
    tube_transmission,
)
from calc.uv.together import FARTHEST_APART_M, MOST_TUBES, shape_together
from calc.uv.tube import STANDARD_T5_HO
from calc.validity import OutsideModelError

__all__ = [
    "CLASS_CONSTANT_UVI_M",
    "FARTHEST_M",
    "LONGEST_LIT_M",
    "NEAREST_M",
    "SHORTEST_LIT_M",
    "AgeBand",
    "Fixture",
    "Lamp",
    "OwnConstant",
    "OwnPoint",
    "age_band",
    "as_long_as",
    "is_between_fitted",
    "lamp_constant",
    "of_group",
    "of_length",
    "other_lengths",
    "side_by_side",
    "uvi_at",
]

CLASS_CONSTANT_UVI_M = 1.78
"""UVI times metre of the class 'T5 HO, 12 %, polished reflector, nothing between'.

Fitted to the twelve ends of six distance rows of the trade (nearer end UVI 5, farther UVI 3)
with a lit length of 0.52 m, plain fixture 0.70, screen that blocks 45 %: 0.55. The geometric
mean is 1.779; one standard deviation of the twelve is 10 %, and the UVI they get back is

    tube  fixture   screen  tube to back  UVI at the ends
    12 %  polished  none    16-20 in      4.48  3.08
    12 %  plain     none    12-16 in      4.91  3.14
     6 %  polished  none    10-12 in      4.54  3.50
     6 %  plain     none     8-10 in      4.27  3.18
    12 %  polished  0.55    10-14 in      5.00  3.05
    12 %  plain     0.55     8-10 in      4.70  3.50

The rows name no length and their twelve ends cannot tell it: at 0.40 m they scatter by 9.6 %
about 2.04, at 0.52 m by 9.7 % about 1.78, at 0.80 m by 12.4 % about 1.53. The constant belongs
to 0.52 m, the shortest standard tube, and is kept for every length, as UVI for each metre of tube:
of the standard lengths the shortest gives the largest constant, so a longer tube is rather taken
as too strong than as too weak, and hangs farther. Where no length is known, the ends of a range
are the rows' own, and the start is safe for the longest tube that may be there (``placement``).
Source: uv_distance_rows.
"""

CLASS_STRENGTH_PERCENT = 12.0
FITTED_STRENGTHS_PERCENT = (6.0, 12.0)
NEAREST_M = 0.05
FARTHEST_M = 3.0
_WEAKEST_PERCENT, _STRONGEST_PERCENT = 1.0, 20.0
SHORTEST_LIT_M, LONGEST_LIT_M = 0.1, 1.6
_HOURS_A_DAY = 12.0
_DAY_S = 86_400.0
_BURN_IN_H = 100.0
_NINE_IN_TEN = 1.645
_HALF_YEAR_S = 182.6 * _DAY_S
_YEAR_S = 365.25 * _DAY_S


class Fixture(Enum):
    """What is behind the tube, with the factor [1] on the UVI below it.

    Source: uv_distance_rows (plain from the same fit as the class constant).
    """

    POLISHED = 1.0
    PLAIN = 0.70

    def __init__(self, factor: float) -> None:
        self.factor = factor


class AgeBand(Enum):
    """How long a tube has been in use, at about 12 hours a day."""

    UNKNOWN = "unknown"
    BURNING_IN = "under 100 hours alight"
    SETTLED = "up to half a year"
    AGEING = "half a year to a year"
    OLD = "over a year"


@dataclass(frozen=True, slots=True)
class OwnConstant:
    """A lamp's own constant [UVI m], from readings, with the doubt of that.

    ``through`` is what the readings were taken through, each screen with its share [1] of them;
    the doubt of the screens is not in ``doubt``.
    """

    constant_uvi_m: float
    doubt: Doubt
    through: tuple[tuple[Screen, float], ...] = ()

    def __post_init__(self) -> None:
        if not 0.0 < self.constant_uvi_m < 100.0:
            raise OutsideModelError("lamp constant", self.constant_uvi_m, 0.0, 100.0, "UVI m")

    def doubt_at(self, _distance_m: float) -> Doubt:
        """Return the doubt of the UVI, the same at every distance."""
        return self.doubt


@dataclass(frozen=True, slots=True)
class OwnPoint:
    """A small lamp's own law, from readings; ``doubt`` is the meter's, ``through`` as of a tube."""

    source: PointSource
    doubt: Doubt
    through: tuple[tuple[Screen, float], ...] = ()

    def doubt_at(self, distance_m: float) -> Doubt:
        """Return the doubt of the UVI at a distance [m], which grows away from what was read."""
        fit = Doubt(
            self.doubt.name,
            exp(_NINE_IN_TEN * self.source.deviation(distance_m)),
            self.doubt.source,
        )
        return Doubt(self.doubt.name, combined_factor((fit, self.doubt)), self.doubt.source)


@dataclass(frozen=True, slots=True)
class Lamp:
    """A tube by label strength [%], fixture, lit length [m], age [s] and, if read, own constant.

    With an own constant, strength, fixture and age no longer count: the readings hold them. Of
    ``count`` equal tubes side by side, ``gap_m`` [m] from middle to middle, the constant is one's;
    a small lamp with its own point holds all that was lit.
    ``may_be`` is the same lamp at the other lengths it may have, the longest last; ``group`` is
    what a group's readings say of its class.
    """

    strength_percent: float
    fixture: Fixture
    lit_length_m: float = STANDARD_T5_HO[0].lit_length_m
    age_s: float | None = None
    own: OwnConstant | OwnPoint | None = None
    count: int = 1
    gap_m: float = 0.0
    length_known: LengthKnown = LengthKnown.TOLD
    may_be: tuple["Lamp", ...] = ()
    group: GroupClass | None = None

    def __post_init__(self) -> None:
        for name, value, low, high, unit in (
            ("number of tubes", self.count, 1.0, MOST_TUBES, ""),
            ("gap between the tubes", self.gap_m, 0.0, FARTHEST_APART_M, "m"),
            ("tube strength", self.strength_percent, _WEAKEST_PERCENT, _STRONGEST_PERCENT, "%"),
            ("lit length", self.lit_length_m, SHORTEST_LIT_M, LONGEST_LIT_M, "m"),
            ("age", self.age_s or 0.0, 0.0, 100.0 * _YEAR_S, "s"),
        ):
            if not low <= value <= high:
                raise OutsideModelError(name, value, low, high, unit)


def is_between_fitted(strength_percent: float) -> bool:
    """Say whether a strength [%] lies between those that the class constant was fitted to."""
    return min(FITTED_STRENGTHS_PERCENT) <= strength_percent <= max(FITTED_STRENGTHS_PERCENT)


def of_length(lamp: Lamp, length: TubeLength) -> Lamp:
    """Return a lamp with a length, and with the others it may have."""
    known = replace(lamp, lit_length_m=length.lit_m, length_known=length.known, may_be=())
    others = tuple(replace(known, lit_length_m=other) for other in length.others_m)
    return replace(known, may_be=others)


def of_group(lamp: Lamp, group: GroupClass | None) -> Lamp:
    """Return a lamp, at each of its lengths, with what a group's readings say of its class."""
    if lamp.group == group:
        return lamp
    others = tuple(replace(other, group=group) for other in lamp.may_be)
    return replace(lamp, group=group, may_be=others)


def side_by_side(lamp: Lamp, count: int, gap_m: float) -> Lamp:
    """Return a lamp as one of ``count`` equal ones, ``gap_m`` [m] from middle to middle."""
    if (count, gap_m) == (lamp.count, lamp.gap_m):
        return lamp
    others = tuple(replace(other, count=count, gap_m=gap_m) for other in lamp.may_be)
    return replace(lamp, count=count, gap_m=gap_m, may_be=others)


def as_long_as(lamp: Lamp, other: Lamp) -> Lamp:
    """Return a lamp with the length of another, and with the lengths that one may have."""
    others = tuple(may_be.lit_length_m for may_be in other.may_be)
    return of_length(lamp, TubeLength(other.lit_length_m, other.length_known, others))


def other_lengths(lamp: Lamp) -> tuple[Lamp, ...]:
    """Return the lamp at the other lengths it may have; by readings each has its own constant."""
    if lamp.count == 1 and all(other.count == 1 for other in lamp.may_be):
        return lamp.may_be
    return tuple(replace(other, count=lamp.count, gap_m=lamp.gap_m) for other in lamp.may_be)


def lamp_constant(lamp: Lamp) -> float:
    """Return the constant of a lamp.

    C = 1.78 UVI m (strength / 12 %) fixture, by a group's readings times their factor; or the
    lamp's own

    Parameters
    ----------
    lamp : strength [%] 1 to 20, fixture, own constant if read

    Returns
    -------
    float
        Constant [UVI m].

    Notes
    -----
    UVI in proportion to the label is an assumption; the fit holds it for 6 % and 12 %.
    Source: uv_distance_rows; uv_class_strengths.

    Examples
    --------
    >>> round(lamp_constant(Lamp(6.0, Fixture.PLAIN)), 3)
    0.623
    """
    if isinstance(lamp.own, OwnPoint):
        raise ValueError("a small lamp has no constant of a tube")
    if lamp.own is not None:
        return lamp.own.constant_uvi_m
    of_class = CLASS_CONSTANT_UVI_M * lamp.strength_percent / CLASS_STRENGTH_PERCENT
    return of_class * lamp.fixture.factor * (lamp.group.factor if lamp.group else 1.0)


def uvi_at(lamp: Lamp, distance_m: Real, screen: Screen) -> Real:
    """UVI straight under the middle of a tube, facing it; of several, at the strongest place.

    UVI = C g(d) T(d), g from ``together.shape_together``, T from ``screen.tube_transmission``;
    UVI = K/(d + d₀)² T(d) for a small lamp

    Parameters
    ----------
    lamp : the tube
    distance_m : tube to back [m], 0.05 to 3; a float or an array
    screen : what lies between

    Returns
    -------
    float or ndarray, as the distance
        UV index [1], best value without its doubt.

    Notes
    -----
    Off the middle it is less; a curved reflector near the tube is not modelled. Raises
    OutsideModelError outside the range.
    Source: keitz1971; line_source; line_through_weave; uv_distance_rows; inverse_square.

    Examples
    --------
    >>> from calc.uv.screen import NoScreen
    >>> round(uvi_at(Lamp(12.0, Fixture.POLISHED), 0.4064, NoScreen()), 2)
    4.48
    """
    _check_distance(distance_m)
    bare = _bare(lamp, distance_m)
    if isinstance(distance_m, float):
        return bare * middle_transmission(screen, distance_m, lamp.lit_length_m)
    return bare * tube_transmission(screen, distance_m, lamp.lit_length_m)


def _bare(lamp: Lamp, distance_m: Real) -> Real:
    if isinstance(lamp.own, OwnPoint):
        return point_uvi(lamp.own.source, distance_m)
    shape = shape_together(distance_m, lamp.lit_length_m, lamp.count, lamp.gap_m)
    return lamp_constant(lamp) * shape


def _check_distance(distance_m: float | NDArray[np.float64]) -> None:
    ends = (
        (distance_m,) if isinstance(distance_m, float) else (np.min(distance_m), np.max(distance_m))
    )
    for end in ends:
        if not NEAREST_M <= end <= FARTHEST_M:
            raise OutsideModelError("distance", float(end), NEAREST_M, FARTHEST_M, "m")


def age_band(age_s: float | None) -> AgeBand:
    """Return the band of an age [s] since first use; None is unknown."""
    if age_s is None:
        return AgeBand.UNKNOWN
    if age_s / _DAY_S * _HOURS_A_DAY < _BURN_IN_H:
        return AgeBand.BURNING_IN
    if age_s <= _HALF_YEAR_S:
        return AgeBand.SETTLED
    return AgeBand.AGEING if age_s <= _YEAR_S else AgeBand.OLD
