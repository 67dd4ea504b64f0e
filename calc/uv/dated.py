"""Dated readings of one lamp: at one distance, and what cannot be among them.

What no tube does is named, and nothing is reckoned from it in silence: two figures for one day, a
lost or a gained point, a fall faster than any tube fades, a rise.
"""

from collections.abc import Sequence
from dataclasses import dataclass, replace
from enum import Enum
from itertools import pairwise
from math import exp, log, sqrt

import numpy as np
from numpy.typing import NDArray

from calc.uv.evidence import NINE_IN_TEN, weigh
from calc.uv.lamp import Lamp, other_lengths, uvi_at
from calc.uv.meter import DISPLAY_UVI, REPEATABILITY
from calc.uv.screen import NoScreen
from calc.validity import OutsideModelError

__all__ = ["DatedReading", "Finding", "Odd", "at_one_place", "days_and_logs", "findings_of", "kept"]

_PLACED = REPEATABILITY * sqrt(2.0)
_TAPE_M = 0.01
# Two readings differ where they lie so many deviations apart; more where many are compared.
_APART, _APART_MORE, _FEW = 2.5, 0.5, 3
# The first 100 hours, 12 a day, and after them twice the steepest fall that is told of.
_BURN_IN, _BURN_IN_DAYS = log(1.3), 100.0 / 12.0
_FASTEST_A_DAY = 2.0 * log(1.0 / 0.7) / 182.6
_POINT, _ABOUT, _ALIKE = log(10.0), log(1.6), log(3.0)
_WILD, _CLEAR, _LEAST = log(1.25), 3.0, 5


class Odd(Enum):
    """What no tube does."""

    TENFOLD = "ten times as much or as little as the others"
    SAME_DAY = "two readings of one day that disagree"
    FADE = "a fall that is faster than a tube fades"
    RISE = "a rise, which a tube past its burn-in does not do"
    STRAY = "one reading that stands clear of all the others"


@dataclass(frozen=True, slots=True)
class DatedReading:
    """A UVI [1] read on a day [d], counted from any fixed day.

    ``distance_m`` [m] where it was told; ``moved`` is one deviation of the logarithm that reckoning
    it to another distance brings in.
    """

    day: float
    uvi: float
    distance_m: float | None = None
    moved: float = 0.0

    def __post_init__(self) -> None:
        if not 0.05 <= self.uvi <= 100.0:
            raise OutsideModelError("UV index read", self.uvi, 0.05, 100.0, "")


@dataclass(frozen=True, slots=True)
class Finding:
    """What is odd, at which readings in the order of their days, and by what factor [1].

    ``set_aside``: the rest holds without the one reading it names; else nothing is said ahead.
    """

    odd: Odd
    at: tuple[int, ...]
    factor: float
    set_aside: bool = False


def at_one_place(
    readings: Sequence[DatedReading], lamp: Lamp, place_m: float
) -> tuple[DatedReading, ...]:
    """Reckon readings to one distance by the law of the lamp.

    UVI(place) = UVI g(place)/g(d)

    Parameters
    ----------
    readings : those without a distance stay as they are
    lamp : the tube, with the other lengths it may have
    place_m : where all are wanted [m], 0.05 to 3

    Returns
    -------
    tuple of DatedReading
        In the same order, each with what the move brings in of doubt.

    Notes
    -----
    A tape within 1 cm at either place (a move of less than 1 mm adds no doubt), and the lengths
    that the tube may have; what no display shows any more (a UVI outside 0.05 to 100) is held at
    that end.
    Source: keitz1971; tape_measure.

    Examples
    --------
    >>> from calc.uv.lamp import Fixture
    >>> near = DatedReading(0.0, 6.0, 0.30)
    >>> (there,) = at_one_place([near], Lamp(12.0, Fixture.POLISHED), 0.40)
    >>> round(there.uvi, 1), round(there.moved, 3)
    (3.8, 0.038)
    """
    return tuple(_moved(reading, lamp, place_m) for reading in readings)


def _moved(reading: DatedReading, lamp: Lamp, place_m: float) -> DatedReading:
    told_m = reading.distance_m
    if told_m is None:
        return reading
    change = _change(lamp, told_m, place_m)
    if abs(told_m - place_m) < _TAPE_M / 10.0:
        return replace(reading, uvi=_shown(reading.uvi * exp(change)), distance_m=place_m)
    others = [_change(other, told_m, place_m) - change for other in other_lengths(lamp)]
    tapes = [_change(lamp, d, d + _TAPE_M) / NINE_IN_TEN for d in (told_m, place_m)]
    doubt = sqrt(sum(t * t for t in tapes) + max((o * o for o in others), default=0.0))
    uvi = _shown(reading.uvi * exp(change))
    return replace(reading, uvi=uvi, distance_m=place_m, moved=doubt)


def _shown(uvi: float) -> float:
    return min(max(uvi, 0.05), 100.0)


def _change(lamp: Lamp, from_m: float, to_m: float) -> float:
    """Return ln of what a lamp gives at one distance over another."""
    ends = (min(d, 3.0) for d in (to_m, from_m))
    there, here = (uvi_at(lamp, d, NoScreen()) for d in ends)
    return log(there / here)


def days_and_logs(
    ordered: Sequence[DatedReading],
) -> tuple[NDArray[np.float64], NDArray[np.float64], NDArray[np.float64]]:
    """Return day [d], logarithm and weight [1] of each reading: place, repeat, digit, move."""
    digit = float(np.mean([(DISPLAY_UVI / r.uvi) ** 2 for r in ordered]))
    days = np.array([r.day for r in ordered])
    weights = np.array([1.0 / (_PLACED**2 + digit + r.moved**2) for r in ordered])
    return days, np.log([r.uvi for r in ordered]), weights


def kept(ordered: Sequence[DatedReading], found: Sequence[Finding]) -> tuple[DatedReading, ...]:
    """Return the readings that are not set aside."""
    aside = {i for finding in found if finding.set_aside for i in finding.at}
    return tuple(r for i, r in enumerate(ordered) if i not in aside)


def findings_of(ordered: Sequence[DatedReading]) -> tuple[Finding, ...]:
    """Name what no tube does among readings that are ordered by their days.

    Two differ where |Δ ln UVI| passes 2.5 deviations, more for many; a fall is no fading where it
    passes that and ln 1.3 for the first 100 hours and twice 30 % in half a year

    Parameters
    ----------
    ordered : one or more readings, the oldest first, at one place

    Returns
    -------
    tuple of Finding
        What is odd; empty where nothing is.

    Notes
    -----
    A lost point among three or more is told by the others; of two it may be either. The last
    reading is never set aside, for it is the one that counts now.
    Source: uv_odd_judgement; sunbed_end_of_life; burn_in; uv_meter_judgement.

    Examples
    --------
    >>> [f.odd.name for f in findings_of([DatedReading(0.0, 4.4), DatedReading(7.0, 2.0)])]
    ['FADE']
    """
    found = _lost_points(ordered)
    found += _stray(ordered, _rest(ordered, found))
    rest = _rest(ordered, found)
    return found + (_between(ordered, rest) if rest else ())


def _rest(ordered: Sequence[DatedReading], found: Sequence[Finding]) -> list[int]:
    named = {i for finding in found for i in finding.at}
    return [i for i in range(len(ordered)) if i not in named]


def _lost_points(ordered: Sequence[DatedReading]) -> tuple[Finding, ...]:
    logs = np.log([r.uvi for r in ordered])
    if logs.size == 2:
        off = float(logs[1] - logs[0])
        if abs(abs(off) - _POINT) < _ABOUT:
            return (Finding(Odd.TENFOLD, (0, 1), exp(off)),)
        return ()
    found = []
    for i in range(logs.size if logs.size > 2 else 0):
        others = np.delete(logs, i)
        off = float(logs[i] - np.median(others))
        alike = others[np.abs(others - np.median(others)) < _ALIKE]
        if abs(abs(off) - _POINT) < _ABOUT and 2 * alike.size > others.size:
            found.append(Finding(Odd.TENFOLD, (i,), exp(off), i < logs.size - 1))
    return tuple(found)


def _between(ordered: Sequence[DatedReading], rest: Sequence[int]) -> tuple[Finding, ...]:
    """Return what neighbours in time say of each other."""
    _, logs, weights = days_and_logs(ordered)
    many = _APART + _APART_MORE * log(max(len(rest), _FEW) / _FEW)
    found = []
    for i, j in pairwise(rest):
        off, days = float(logs[j] - logs[i]), ordered[j].day - ordered[i].day
        noise = many * sqrt(1.0 / float(weights[i]) + 1.0 / float(weights[j]))
        fading = _BURN_IN * min(1.0, days / _BURN_IN_DAYS) + _FASTEST_A_DAY * days
        if days == 0.0:
            odd = Odd.SAME_DAY if abs(off) > noise else None
        elif off > noise:
            odd = Odd.RISE
        else:
            odd = Odd.FADE if -off > noise + fading else None
        if odd:
            found.append(Finding(odd, (i, j), exp(off)))
    return _one_stray(found, rest)


def _one_stray(found: list[Finding], rest: Sequence[int]) -> tuple[Finding, ...]:
    """Join a fall and the rise after it: the one reading between them is off, not the tube."""
    inner = set(rest[1:-1])
    joined: list[Finding] = []
    for finding in found:
        before = joined[-1] if joined else None
        if (
            before
            and len(rest) >= _LEAST - 1
            and before.at[-1] == finding.at[0]
            and finding.at[0] in inner
            and {before.odd, finding.odd} == {Odd.FADE, Odd.RISE}
        ):
            joined[-1] = Finding(Odd.STRAY, (finding.at[0],), before.factor, set_aside=True)
        else:
            joined.append(finding)
    return tuple(joined)


def _stray(ordered: Sequence[DatedReading], rest: Sequence[int]) -> tuple[Finding, ...]:
    """Return the one reading, neither first nor last, that stands clear of the others' line."""
    days, logs, weights = (a[list(rest)] for a in days_and_logs(ordered))
    if days.size < _LEAST:
        return ()
    found, most = None, 1.0
    for i in range(1, days.size - 1):
        o = np.arange(days.size) != i
        if np.ptp(days[o]) == 0.0:
            continue
        line = weigh(logs[o], weights[o], days[o])
        off = float(logs[i]) - line.at(float(days[i]))
        own = sqrt((line.half(float(days[i])) / NINE_IN_TEN) ** 2 + 1.0 / float(weights[i]))
        if abs(off) / max(_WILD, _CLEAR * own) > most:
            most = abs(off) / max(_WILD, _CLEAR * own)
            found = Finding(Odd.STRAY, (rest[i],), exp(off), set_aside=True)
    return (found,) if found else ()
