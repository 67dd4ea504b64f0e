"""What a keeper's UV index meter says about the lamp: its own constant, and what looks odd.

One constant is fitted through the tube model; a single wild reading is set aside and named.
What a pattern in the rest may mean is listed, never corrected for.
"""

from collections.abc import Sequence
from dataclasses import dataclass, field, replace
from math import exp, log

import numpy as np
from numpy.typing import NDArray

from calc.uncertainty import Doubt, Estimate, combined_factor
from calc.uv.evidence import weigh
from calc.uv.lamp import (
    FARTHEST_M,
    NEAREST_M,
    SHORTEST_LIT_M,
    Lamp,
    OwnConstant,
    OwnPoint,
    lamp_constant,
    uvi_at,
)
from calc.uv.lamp_unknowns import Cause, own_estimate
from calc.uv.point import Shape
from calc.uv.residuals import (
    Pattern,
    Suspect,
    contradicting,
    pattern_of,
    suspects_of,
    wild_one,
)
from calc.uv.screen import NoScreen, Screen
from calc.validity import OutsideModelError

__all__ = [
    "DISPLAY_UVI",
    "HIGHEST_UVI_READ",
    "LOWEST_UVI_READ",
    "METER_DOUBT",
    "MeterFit",
    "Reading",
    "fit_readings",
    "passed_through",
    "screen_from_readings",
    "weights_of",
]

METER_DOUBT = Doubt(Cause.READINGS, 1.15, "uv_meter_judgement")
"""A hand meter against the true UVI of a tube; common to all its readings."""

LOWEST_UVI_READ, HIGHEST_UVI_READ = 0.05, 100.0
"""Between these a UVI read [1] says something of a lamp; no lamp for animals gives more."""

MOST_READINGS = 50
REPEATABILITY = log(1.05)
"""One standard deviation of a careful reading's logarithm. Source: uv_meter_judgement."""

DISPLAY_UVI = 0.06
"""One standard deviation [1] of a meter with one decimal: rounding, and a digit that flickers.

Source: uv_meter_judgement.
"""
_TAPE_M = 0.005


@dataclass(frozen=True, slots=True)
class Reading:
    """A UVI [1] read at a distance [m] under the middle of the tube, facing it."""

    distance_m: float
    uvi: float
    screen: Screen = field(default_factory=NoScreen)

    def __post_init__(self) -> None:
        if not NEAREST_M <= self.distance_m <= FARTHEST_M:
            raise OutsideModelError("distance", self.distance_m, NEAREST_M, FARTHEST_M, "m")
        if not LOWEST_UVI_READ <= self.uvi <= HIGHEST_UVI_READ:
            raise OutsideModelError(
                "UV index read", self.uvi, LOWEST_UVI_READ, HIGHEST_UVI_READ, ""
            )


@dataclass(frozen=True, slots=True)
class MeterFit:
    """A lamp's own constant and how the readings stand to it.

    ``fit`` is the doubt of the constant from the readings alone, without the meter's own;
    ``shape`` is the law that was fitted, ``told_by_readings`` where they chose it against the
    other. ``ratios`` are read over computed, in the order given; ``set_aside`` the index of a wild
    one; ``contradicts``: the others are so far apart that no tube gives them; ``against_class``
    the constant over that of the class named.
    """

    own: OwnConstant | OwnPoint
    fit: Doubt
    ratios: tuple[float, ...]
    set_aside: int | None
    contradicts: bool
    pattern: Pattern
    suspects: tuple[Suspect, ...]
    against_class: float
    shape: Shape = Shape.LINE
    told_by_readings: bool = False

    @property
    def estimate(self) -> Estimate:
        """The constant of a tube [UVI m], or a small lamp's strength [UVI m²], with its range."""
        return own_estimate(self.own)

    def lamp(self, named: Lamp) -> Lamp:
        """Return the lamp as named with what its readings say in place of its class."""
        if isinstance(self.own, OwnPoint):
            return replace(named, lit_length_m=SHORTEST_LIT_M, own=self.own, count=1, gap_m=0.0)
        return replace(named, own=self.own)


def fit_readings(readings: Sequence[Reading], lamp: Lamp) -> MeterFit:
    """Fit a lamp's own constant to its readings.

    ln C = Σ w (ln UVI - ln g T) / Σ w; 1/w = (ln 1.05)² + display² + tape²; the doubt is that of
    ``evidence.weigh``, nine cases in ten

    Parameters
    ----------
    readings : one to 50; distances [m] 0.05 to 3, UVI [1] 0.05 to 100
    lamp : the lit length [m] counts; strength and fixture only for the comparison

    Returns
    -------
    MeterFit
        Own constant [UVI m], its doubt, and what looks odd.

    Notes
    -----
    The display is one digit of a meter with one decimal, at the UVI of the fit's median. With
    three or more, one reading that is off by 25 % and stands clear of the others is set
    aside; two that disagree cannot be told apart, and only widen the doubt. A fault common to
    all readings (tilt, tape, meter) is not seen.
    Source: keitz1971; student_posterior; uv_meter_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> lamp = Lamp(12.0, Fixture.POLISHED)
    >>> fit = fit_readings([Reading(0.30, 6.9), Reading(0.40, 4.6)], lamp)
    >>> round(fit.estimate.best, 2), fit.set_aside
    (1.75, None)
    """
    if not 1 <= len(readings) <= MOST_READINGS:
        raise OutsideModelError("number of readings", len(readings), 1, MOST_READINGS, "")
    unit = _of_constant(lamp, 1.0)
    apart = np.log([r.distance_m for r in readings])
    logs = np.array([log(r.uvi / uvi_at(unit, r.distance_m, r.screen)) for r in readings])
    set_aside = wild_one(logs, _weights(unit, readings, logs), apart)
    kept = np.array([i for i in range(len(readings)) if i != set_aside])
    weights = _weights(unit, readings, logs[kept])
    together = weigh(logs[kept], weights[kept])
    best, half = together.level, together.half(together.middle)
    residuals = logs - best
    fit = Doubt(Cause.READINGS, exp(half), "student_posterior")
    pattern = pattern_of(residuals[kept], weights[kept], apart[kept], kept)
    wild = None if set_aside is None else float(residuals[set_aside])
    factor = combined_factor((fit, METER_DOUBT))
    whole = Doubt(Cause.READINGS, factor, METER_DOUBT.source)
    constant = exp(best)
    return MeterFit(
        own=OwnConstant(
            constant, whole, passed_through([readings[i] for i in kept], weights[kept])
        ),
        fit=fit,
        ratios=tuple(float(r) for r in np.exp(residuals)),
        set_aside=set_aside,
        contradicts=contradicting(residuals[kept], weights[kept]),
        pattern=pattern,
        suspects=suspects_of(pattern, wild),
        against_class=constant / lamp_constant(_of_class(lamp)),
    )


def screen_from_readings(
    bare: Sequence[Reading], screened: Sequence[Reading], lamp: Lamp
) -> Estimate:
    """Find what a screen passes from readings without and with it.

    T = C₂/C₁, the constants fitted to the readings with and without it

    Parameters
    ----------
    bare : readings without the screen; their own ``screen`` field is not looked at
    screened : readings with it; their own ``screen`` field is not looked at
    lamp : the lit length [m] counts

    Returns
    -------
    Estimate
        Share passed [1], above 0, at most 1.

    Notes
    -----
    The meter's own error drops out; at one distance the tube does too. A result clearly above 1
    raises OutsideModelError: a screen cannot add, so the two were not alike.
    Source: keitz1971; uv_meter_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> lamp = Lamp(12.0, Fixture.POLISHED)
    >>> passed = screen_from_readings([Reading(0.3, 6.0)], [Reading(0.3, 3.3)], lamp)
    >>> round(passed.best, 2)
    0.55
    """
    without, with_it = (
        fit_readings([Reading(r.distance_m, r.uvi) for r in readings], lamp)
        for readings in (bare, screened)
    )
    passed = with_it.estimate.best / without.estimate.best
    factor = combined_factor((without.fit, with_it.fit))
    if passed > factor:
        raise OutsideModelError("screen transmission", passed, 0.0, 1.0, "")
    return Estimate(min(passed / factor, 1.0), min(passed, 1.0), min(passed * factor, 1.0))


def weights_of(readings: Sequence[Reading], lamp: Lamp) -> NDArray[np.float64]:
    """Return 1/variance [1] of each reading's logarithm, repeat, display and tape together."""
    unit = _of_constant(lamp, 1.0)
    logs = np.array([log(r.uvi / uvi_at(unit, r.distance_m, r.screen)) for r in readings])
    return _weights(unit, readings, logs)


def passed_through(
    readings: Sequence[Reading], weights: NDArray[np.float64]
) -> tuple[tuple[Screen, float], ...]:
    """Return each screen that readings were taken through, with its share of their weight."""
    shares: dict[Screen, float] = {}
    for reading, weight in zip(readings, weights / np.sum(weights), strict=True):
        if not isinstance(reading.screen, NoScreen):
            shares[reading.screen] = shares.get(reading.screen, 0.0) + float(weight)
    return tuple(shares.items())


def _of_constant(lamp: Lamp, constant_uvi_m: float) -> Lamp:
    return replace(lamp, age_s=None, own=OwnConstant(constant_uvi_m, METER_DOUBT))


def _of_class(lamp: Lamp) -> Lamp:
    return replace(lamp, age_s=None, own=None)


def _weights(
    unit: Lamp, readings: Sequence[Reading], logs: NDArray[np.float64]
) -> NDArray[np.float64]:
    """Return the weights of readings whose lamp is near the median of ``logs``."""
    level = exp(float(np.median(logs)))
    return np.array([1.0 / _variance(unit, r, level) for r in readings])


def _variance(unit: Lamp, reading: Reading, level: float) -> float:
    """Return the variance of a careful reading's logarithm: repeat, display and tape.

    The display counts at what a lamp of that ``level`` gives there: a reading that is wrong
    because it is low must not excuse itself by being low.
    """
    nearer = max(reading.distance_m - _TAPE_M, NEAREST_M)
    at, near = (uvi_at(unit, d, NoScreen()) for d in (reading.distance_m, nearer))
    expected = level * uvi_at(unit, reading.distance_m, reading.screen)
    return REPEATABILITY**2 + (DISPLAY_UVI / expected) ** 2 + log(near / at) ** 2
