"""What is not known of the UVI beside a lamp: that of the lamp, how long it is, how it spreads.

At one place it is a range; over many places, whose figures are wrong together, it is a set of
cases, each with one lamp that is there everywhere.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from functools import cache
from math import hypot, log, sqrt
from statistics import NormalDist

import numpy as np
from numpy.typing import NDArray

from calc.unknowns import Between, Effect, Factor, Known, Unknown, Whole, combine
from calc.uv.lamp import FARTHEST_M, NEAREST_M, Lamp, OwnPoint
from calc.uv.lamp_unknowns import Cause, length_effect, length_weights, unknowns_of
from calc.uv.section import HungTube, each_field

__all__ = [
    "DRAWS",
    "FieldCases",
    "Lengths",
    "beside_m",
    "cosine_power",
    "field_cases",
    "field_unknowns",
    "place_unknowns",
    "with_lengths",
]

_SIDEWAYS = Unknown(Cause.SPREAD, Known.UNKNOWN, Factor(1.3), "uv_sideways_judgement")
# From a bare lamp that shines all round to a beam of some 45 degrees, about an even face.
_BEAM = Unknown(Cause.SPREAD, Known.UNKNOWN, Between(0.1, 1.4), "uv_beam_judgement")
# A place level with a tube counts as this far below it, and a back as this far at least.
_LEVEL_M, _NEAR_M = 0.02, 0.15
_LOG_SLANT = log(sqrt(0.5))

DRAWS = 64
"""So many equally likely cases stand for what is not known of a whole field."""

# Steps that fill a square evenly, whatever their number: powers of the plastic number's inverse.
_STEPS = (0.7548776662466927, 0.5698402909980532)


@dataclass(frozen=True, slots=True)
class FieldCases:
    """Equally likely cases of a field: which length [index], the lamp and its spread [ln 1].

    In a case the UVI of a place is that of the length, times e^(lamp + power spread), the power
    as in ``place_unknowns``.
    """

    length: NDArray[np.int64]
    lamp: NDArray[np.float64]
    spread: NDArray[np.float64]

    def logs(self, log_uvi: NDArray[np.float64], power: NDArray[np.float64]) -> NDArray[np.float64]:
        """Return ln UVI, a row for each case, from that of each length and the power [1]."""
        whole = log_uvi[self.length]
        whole += self.lamp[:, None]
        whole += self.spread[:, None] * power
        return whole


Lengths = tuple[tuple[HungTube, ...], ...]


def with_lengths(tubes: Sequence[HungTube]) -> Lengths:
    """Return the tubes at the length they are taken to have, then at each they may have.

    The end nearer to the warm end stays where it is.
    """
    lamp = tubes[0].lamp
    others = lamp.may_be if all(tube.lamp == lamp for tube in tubes) else ()
    return (tuple(tubes), *(tuple(_as_long(tube, other) for tube in tubes) for other in others))


def _as_long(tube: HungTube, lamp: Lamp) -> HungTube:
    start_m = tube.x_m - tube.lamp.lit_length_m / 2.0
    return replace(tube, lamp=lamp, x_m=start_m + lamp.lit_length_m / 2.0)


def place_unknowns(
    tubes: Sequence[HungTube],
    x_m: float,
    y_m: float,
    z_m: float,
    lengths: Lengths | None = None,
    each_uvi: NDArray[np.float64] | None = None,
) -> Whole:
    """Combine why the UVI at a place may be off: of the tube that gives most there, and its angle.

    the sideways doubt goes as the power ln cos a/ln cos 45°, a the angle off straight below,
    across a tube, any way from a small lamp; an untold length as the field of each length there

    Parameters
    ----------
    tubes : one to four
    x_m : place along the enclosure [m]
    y_m : place across it [m]
    z_m : height of the back [m]
    lengths : the tubes ``with_lengths``, where they were worked out before
    each_uvi : UVI there [1] of each length (rows) and tube, where it was worked out before

    Returns
    -------
    Whole
        Spread of the true UVI over ``uvi_field`` [1].

    Notes
    -----
    Several tubes are taken as alike: if one gives a quarter less, so do all. A longer tube begins
    where the shorter one does.
    Source: uv_sideways_judgement; uv_beam_judgement; uv_rules_length.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture, Lamp
    >>> from calc.uv.screen import NoScreen
    >>> tube = HungTube(Lamp(12.0, Fixture.POLISHED), 0.3, 0.2, 0.6, NoScreen())
    >>> below, beside = (place_unknowns([tube], 0.3, y, 0.2) for y in (0.2, 0.6))
    >>> beside.deviation > below.deviation
    True
    """
    lengths = lengths or with_lengths(tubes)
    if each_uvi is None:
        each_uvi = each_field([tube for case in lengths for tube in case], x_m, y_m, z_m)
    by_length = each_uvi.reshape(len(lengths), len(tubes))
    tube = tubes[int(np.argmax(by_length[0]))]
    below = max(tube.z_m - z_m, _LEVEL_M)
    beside = float(beside_m(tube, np.asarray(x_m), np.asarray(y_m)))
    away = min(max(hypot(below, beside), NEAREST_M), FARTHEST_M)
    power = float(cosine_power(np.asarray(below), np.asarray(beside)))
    told = replace(tube.lamp, may_be=())
    effects = (*unknowns_of(told, away, tube.screen).effects, Effect(_spread(tube.lamp), power))
    uvi = by_length.sum(axis=1)
    if len(lengths) == 1 or not uvi[0] > 0.0:
        return combine(effects)
    shares = zip((uvi / uvi[0]).tolist(), length_weights(tube.lamp), strict=True)
    return combine((*effects, length_effect(tube.lamp, tuple(shares))))


def beside_m(
    hung: HungTube, x_m: NDArray[np.float64], y_m: NDArray[np.float64]
) -> NDArray[np.float64]:
    """Return how far beside straight below places are [m]: across a tube, any way from a lamp."""
    across = y_m - hung.y_m
    small = isinstance(hung.lamp.own, OwnPoint)
    return np.hypot(x_m - hung.x_m, across) if small else np.abs(across)


def _spread(lamp: Lamp) -> Unknown:
    return _BEAM if isinstance(lamp.own, OwnPoint) else _SIDEWAYS


def cosine_power(
    below_m: NDArray[np.float64], beside_m: NDArray[np.float64]
) -> NDArray[np.float64]:
    """Return the power of the sideways doubt [1], so far below a tube and beside it [m]."""
    below = np.maximum(below_m, _LEVEL_M)
    return np.asarray(np.log(below / np.hypot(below, beside_m)) / _LOG_SLANT)


def field_unknowns(tubes: Sequence[HungTube], back_z_m: float) -> Whole:
    """Return the widest spread of any tube, for a back at a height [m], aslant at 45°."""
    return combine((*_widest(tubes, back_z_m, told=False).effects, Effect(_spread(tubes[0].lamp))))


def field_cases(
    tubes: Sequence[HungTube], back_z_m: float, lengths: Lengths | None = None
) -> FieldCases:
    """Draw what is not known of a field: one length, one lamp and one spread a case.

    an even filling of the unit cube: u₁ a length by its weight, u₂ a quantile of the lamp's
    spread at the height of the back, u₃ a quantile of the sideways spread

    Parameters
    ----------
    tubes : one to four, equal ones
    back_z_m : height of a back [m]
    lengths : the tubes ``with_lengths``, where they were worked out before

    Returns
    -------
    FieldCases
        64 equally likely cases, the same every time.

    Notes
    -----
    The tape and the length behind the distance rows count as at that height.
    Source: uv_sideways_judgement; uv_rules_length.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture, Lamp
    >>> from calc.uv.screen import NoScreen
    >>> tube = HungTube(Lamp(12.0, Fixture.POLISHED), 0.3, 0.2, 0.6, NoScreen())
    >>> field_cases([tube], 0.2).lamp.shape
    (64,)
    """
    lamp, spread, chosen = _evenly()
    of_lengths = length_weights(tubes[0].lamp)[: len(lengths or with_lengths(tubes))]
    weights = np.cumsum(of_lengths)
    length = np.searchsorted(weights, chosen * weights[-1], side="right")
    whole = _widest(tubes, back_z_m, told=True)
    return FieldCases(
        length, whole.log_at(lamp), combine([Effect(_spread(tubes[0].lamp))]).log_at(spread)
    )


def _widest(tubes: Sequence[HungTube], back_z_m: float, *, told: bool) -> Whole:
    """Return the widest spread of any tube over a back; ``told``: as if its length were known."""
    found = []
    for lamp, screen, z_m in dict.fromkeys((t.lamp, t.screen, t.z_m) for t in tubes):
        below = min(max(z_m - back_z_m, _NEAR_M), FARTHEST_M)
        known = replace(lamp, may_be=()) if told else lamp
        found.append(unknowns_of(known, below, screen))
    return max(found, key=lambda whole: whole.variance)


@cache
def _evenly() -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]:
    """Return the cases' normal deviates of lamp and spread [1], and where in 0 to 1 a length is."""
    number = np.arange(DRAWS, dtype=np.float64)
    normal = NormalDist()
    start = 0.5
    even = (start + number) / DRAWS
    others = [(start + number * step) % 1.0 for step in _STEPS]
    deviates = [np.array([normal.inv_cdf(u) for u in of.tolist()]) for of in (even, others[0])]
    return deviates[0], deviates[1], others[1]
