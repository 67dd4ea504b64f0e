"""Whether a lamp's readings fall as under a tube or as in front of a small lamp."""

from collections.abc import Sequence
from dataclasses import replace
from math import exp

import numpy as np
from numpy.typing import NDArray

from calc.uncertainty import Doubt
from calc.uv.evidence import NINE_IN_TEN
from calc.uv.lamp import SHORTEST_LIT_M, Lamp, OwnPoint, uvi_at
from calc.uv.lamp_unknowns import Cause
from calc.uv.lengths import LengthKnown
from calc.uv.meter import (
    METER_DOUBT,
    MeterFit,
    Reading,
    fit_readings,
    passed_through,
    weights_of,
)
from calc.uv.point import Shape, fit_point, point_uvi
from calc.uv.residuals import Pattern, contradicting, pattern_of, suspects_of
from calc.uv.screen import NoScreen, middle_transmission

__all__ = ["fit_lamp", "lamp_by_readings"]

# Laws are told apart at three standard deviations; careful readings leave no more than this.
_CLEARLY, _CAREFUL = 9.0, 4.0
_LEAST_PLACES = 2


def fit_lamp(readings: Sequence[Reading], lamp: Lamp, expected: Shape) -> MeterFit:
    """Fit a lamp to its readings as a tube or as a small lamp, whichever they fit.

    Of two laws the one with the smaller χ² holds where they differ by 9 or more and it leaves no
    more than careful readings scatter; else the expected one

    Parameters
    ----------
    readings : one to 50; distances [m] 0.05 to 3, UVI [1] 0.05 to 100
    lamp : as for ``fit_readings``
    expected : the shape that the lamp's kind lets expect

    Returns
    -------
    MeterFit
        As ``fit_readings``, with the shape.

    Notes
    -----
    Readings at two places fit either law, so the expected one holds; at one place only a tube has
    an answer. Of a small lamp no reading is set aside.
    Source: keitz1971; inverse_square; student_posterior; uv_meter_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> read = [(0.2032, 13.5), (0.3048, 6.0), (0.4064, 3.38), (0.508, 2.16)]
    >>> lamp = Lamp(12.0, Fixture.POLISHED)
    >>> fit_lamp([Reading(d, u) for d, u in read], lamp, Shape.LINE).shape.name
    'POINT'
    """
    line = fit_readings(readings, lamp)
    places = len({reading.distance_m for reading in readings})
    if places < _LEAST_PLACES:
        return line
    point = _as_point(readings, lamp)
    if places == _LEAST_PLACES:
        return point if expected is Shape.POINT else line
    weights = weights_of(readings, lamp)
    of_line, of_point = (_left(fit.ratios, weights) for fit in (line, point))
    clearly = abs(of_line - of_point) > _CLEARLY
    found = Shape.LINE if of_line < of_point else Shape.POINT
    free = len(readings) - (1 if found is Shape.LINE else 2)
    fits = min(of_line, of_point) <= _CAREFUL * free
    if expected is Shape.LINE and line.pattern is not Pattern.NEAR_HIGH:
        # Readings that fall more slowly than under a tube are those of no small lamp.
        found = Shape.LINE
    shape = found if clearly and fits else expected
    chosen = line if shape is Shape.LINE else point
    return replace(chosen, told_by_readings=clearly and fits and found is shape)


def lamp_by_readings(readings: Sequence[Reading], lamp: Lamp, fit: MeterFit) -> Lamp:
    """Return a lamp as its readings give it, at each of the lengths it may have.

    A small lamp has no length.
    """
    found = fit.lamp(lamp)
    if isinstance(found.own, OwnPoint):
        return replace(found, may_be=(), length_known=LengthKnown.TOLD)
    others = tuple(replace(other, own=fit_readings(readings, other).own) for other in lamp.may_be)
    return replace(found, may_be=others)


def _left(ratios: Sequence[float], weights: NDArray[np.float64]) -> float:
    """Return χ² of all readings about their own mean, for one law."""
    rest = np.log(ratios)
    rest = rest - np.average(rest, weights=weights)
    return float(np.sum(weights * rest**2))


def _as_point(readings: Sequence[Reading], lamp: Lamp) -> MeterFit:
    small = replace(lamp, lit_length_m=SHORTEST_LIT_M)
    passed = [middle_transmission(r.screen, r.distance_m, SHORTEST_LIT_M) for r in readings]
    away = np.array([r.distance_m for r in readings])
    uvis = np.array([r.uvi for r in readings]) / np.array(passed)
    weights = weights_of(readings, lamp)
    source = fit_point(away.tolist(), uvis.tolist(), weights.tolist())
    residuals = np.log(uvis / point_uvi(source, away))
    pattern = pattern_of(residuals, weights, np.log(away), np.arange(away.size))
    fit = Doubt(
        Cause.READINGS, exp(NINE_IN_TEN * source.deviation(source.around_m)), "student_posterior"
    )
    beside = uvi_at(replace(small, age_s=None, own=None), source.around_m, NoScreen())
    return MeterFit(
        own=OwnPoint(source, METER_DOUBT, passed_through(readings, weights)),
        fit=fit,
        ratios=tuple(float(r) for r in np.exp(residuals)),
        set_aside=None,
        contradicts=contradicting(residuals, weights),
        pattern=pattern,
        suspects=suspects_of(pattern, None),
        against_class=point_uvi(source, source.around_m) / beside,
        shape=Shape.POINT,
    )
