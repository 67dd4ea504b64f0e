"""Slips of the pen in readings: inches for centimetres and back, or a figure ten times off."""

from collections.abc import Sequence
from dataclasses import replace
from enum import Enum
from math import log

import numpy as np

from calc.uv.lamp import FARTHEST_M, NEAREST_M, Lamp, lamp_constant
from calc.uv.meter import HIGHEST_UVI_READ, LOWEST_UVI_READ, Reading, fit_readings

__all__ = ["Slip", "corrected", "slip_among", "slip_of_all"]

_INCH_CM = 2.54
_FITS = log(1.25)
# A lamp that gives between these shares of its class is an honest one.
_HONEST = (0.6, 1.6)


class Slip(Enum):
    """What was written for what; the value is the factor on the distance and on the UVI [1]."""

    INCHES_AS_CM = (_INCH_CM, 1.0)
    CM_AS_INCHES = (1.0 / _INCH_CM, 1.0)
    UVI_TOO_HIGH = (1.0, 0.1)
    UVI_TOO_LOW = (1.0, 10.0)
    TOO_FAR = (0.1, 1.0)
    TOO_NEAR = (10.0, 1.0)


def corrected(reading: Reading, slip: Slip) -> Reading | None:
    """Return the reading as it was meant, or None where that cannot be a reading."""
    distance_m, uvi = reading.distance_m * slip.value[0], reading.uvi * slip.value[1]
    if NEAREST_M <= distance_m <= FARTHEST_M and LOWEST_UVI_READ <= uvi <= HIGHEST_UVI_READ:
        return replace(reading, distance_m=distance_m, uvi=uvi)
    return None


def slip_among(
    readings: Sequence[Reading], lamp: Lamp, allowed: Sequence[Sequence[Slip]]
) -> tuple[int, Slip] | None:
    """Find the one slip that makes readings agree which do not.

    the reading and the slip with the least spread of ln C, where that stays within ln 1.25

    Parameters
    ----------
    readings : two or more that no tube gives together
    lamp : the lit length [m] counts
    allowed : which slips each reading may be, likely ones first

    Returns
    -------
    tuple or None
        Index and slip; None where no single slip mends it, or two readings could each be it.

    Notes
    -----
    Of two readings either may be wrong, so only a change of unit is told there, and only where it
    is the one way.
    Source: uv_odd_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> read = [Reading(0.3048, 5.8), Reading(0.15, 4.3), Reading(0.46, 3.4)]
    >>> slip_among(read, Lamp(12.0, Fixture.POLISHED), [(Slip.INCHES_AS_CM,)] * 3)[0]
    1
    """
    found: list[tuple[float, int, Slip]] = []
    for i, slips in enumerate(allowed):
        for slip in slips:
            meant = corrected(readings[i], slip)
            if meant is None:
                continue
            others = [*readings[:i], meant, *readings[i + 1 :]]
            apart = float(np.max(np.abs(np.log(fit_readings(others, lamp).ratios))))
            if apart < _FITS:
                found.append((apart, i, slip))
    if not found or (len(readings) == 2 and len({i for _, i, _ in found}) > 1):
        return None
    _, index, slip = min(found, key=lambda one: one[0])
    return index, slip


def slip_of_all(
    readings: Sequence[Reading], lamp: Lamp, named: Lamp, allowed: Sequence[Slip]
) -> Slip | None:
    """Find the slip in all readings that makes a lamp an honest one of the class it was named as.

    C(slip)/C(class) within 0.6 to 1.6, and nearest to 1

    Parameters
    ----------
    readings : one or more that agree with each other
    lamp : the lit length [m] counts
    named : the class, strength [%] and fixture
    allowed : which slips it may be

    Returns
    -------
    Slip or None
        The slip; None where none explains it.

    Notes
    -----
    A suspicion to be asked about, and never corrected in silence.
    Source: uv_odd_judgement; uv_lamp_judgement.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> lamp = Lamp(12.0, Fixture.POLISHED)
    >>> slip_of_all([Reading(0.12, 5.9)], lamp, lamp, [Slip.INCHES_AS_CM, Slip.UVI_TOO_LOW]).name
    'INCHES_AS_CM'
    """
    found: list[tuple[float, Slip]] = []
    for slip in allowed:
        meant = [corrected(reading, slip) for reading in readings]
        if None in meant:
            continue
        constant = fit_readings([one for one in meant if one], lamp).estimate.best
        share = constant / lamp_constant(named)
        if _HONEST[0] <= share <= _HONEST[1]:
            found.append((abs(log(share)), slip))
    return min(found, key=lambda one: one[0])[1] if found else None
