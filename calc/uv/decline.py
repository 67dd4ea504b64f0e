"""A tube's fading from dated readings at one place: trend, its doubt, and the date to act.

The straight line on the logarithm is only drawn through the keeper's own readings; without
them there is no curve here, only the ages at which tubes are commonly replaced.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from math import exp, inf, log, sqrt

import numpy as np

from calc.judgement import Move, judge_value
from calc.quantities import Quantity
from calc.uncertainty import Doubt, Estimate, combined_factor
from calc.uv.dated import DatedReading, Finding, Odd, days_and_logs, findings_of, kept
from calc.uv.evidence import NINE_IN_TEN, Weighed, weigh
from calc.uv.lamp_unknowns import Cause
from calc.uv.meter import METER_DOUBT
from calc.validity import OutsideModelError

__all__ = [
    "READ_AGAIN_DAYS",
    "REPLACE_AFTER_DAYS",
    "REPLACE_OTHERS_AFTER_DAYS",
    "DatedReading",
    "Decline",
    "Trend",
    "decline_of",
    "trend_at",
]

REPLACE_AFTER_DAYS = (182.6, 365.25)
"""The ages [d] between which T5 HO tubes are replaced unread. Source: uv_replace_ages."""

REPLACE_OTHERS_AFTER_DAYS = {
    "T8 or other tube": (182.6, 182.6),
    "compact lamp": (182.6, 182.6),
    "mercury vapour lamp": (182.6, 365.25),
    "metal halide lamp": (365.25, 365.25),
}
"""The same [d] of other UV lamps; of one that is not here nothing is known.

Source: uv_replace_ages_others.
"""

READ_AGAIN_DAYS = (14.0, 90.0)
"""The soonest and the latest next reading [d]. Source: uv_read_again."""

MOST_READINGS = 200
_FARTHEST_DAYS = 730.5


class Trend(Enum):
    """What dated readings show."""

    TOO_FEW = "fewer than three readings, or some that cannot be"
    STEADY = "no more change than readings repeat to"
    FALLING = "falling"
    RISING = "rising, which a tube past its burn-in does not do"


@dataclass(frozen=True, slots=True)
class Decline:
    """The trend of a lamp at one place, said of a day that is today.

    ``now`` is the true UVI on the last day read, ``today`` what the line makes of it since, None
    past ``horizon_day``; both with the meter's own doubt. ``below_already``: one of them is at
    least probably below the range. ``changed`` is the last over the first
    reading; ``month_factor`` what 30 days change it by. A falling lamp leaves the wanted range on
    ``falls_below_day``, between ``earliest_day`` and ``latest_day``; None: not before
    ``horizon_day``, beyond which nothing is said. ``found`` is what no tube does, by the order of
    the days; where ``is_unsound``, no day is told. ``read_again_day`` is never before today.
    """

    trend: Trend
    first_day: float
    last_day: float
    now: Estimate
    changed: float
    change_is_real: bool
    month_factor: Estimate | None
    below_already: bool
    falls_below_day: float | None
    earliest_day: float | None
    latest_day: float | None
    horizon_day: float
    read_again_day: float
    today_day: float
    today: Estimate | None
    found: tuple[Finding, ...] = ()

    @property
    def is_unsound(self) -> bool:
        """Whether something odd was found that setting one reading aside does not mend."""
        return any(not finding.set_aside for finding in self.found)


def decline_of(
    readings: Sequence[DatedReading], low_uvi: float, today: float | None = None
) -> Decline:
    """Find how a lamp fades at one place, and when it leaves the wanted range.

    ln UVI = a + b t, weighted least squares; its band t s √(1/Σw + (t - t̄)²/Sxx) crosses ln low
    at the earliest and the latest day; s is 7 %, more where the display is coarse, or the scatter

    Parameters
    ----------
    readings : one to 200; day [d], UVI [1] 0.05 to 100, all at one place, any order
    low_uvi : low end of the wanted range [1], above 0
    today : the day [d] on which this is said, the last day read or later; None is that day

    Returns
    -------
    Decline
        What is odd, trend, change, dates [d]; with fewer than three readings no dates.

    Notes
    -----
    A straight line says nothing beyond the readings; twice their span at most is looked at,
    and never more than two years. Burn-in bends the first 100 hours.
    Source: uv_meter_judgement; student_posterior; uv_odd_judgement; adamse_britz1992.

    Examples
    --------
    >>> seen = [DatedReading(0, 4.4), DatedReading(60, 4.0), DatedReading(150, 3.3)]
    >>> found = decline_of(seen, 3.0, today=240)
    >>> found.trend.name, round(found.falls_below_day), found.read_again_day
    ('FALLING', 202, 240)
    """
    if not 1 <= len(readings) <= MOST_READINGS:
        raise OutsideModelError("number of readings", len(readings), 1, MOST_READINGS, "")
    if not 0.0 < low_uvi <= 20.0:
        raise OutsideModelError("low end of the UV index", low_uvi, 0.0, 20.0, "")
    everything = sorted(readings, key=lambda r: r.day)
    odd = findings_of(everything)
    ordered = kept(everything, odd)
    day = max(everything[-1].day, everything[-1].day if today is None else today)
    line = _line_through(ordered)
    if line is None or any(not finding.set_aside for finding in odd):
        return _without_line(ordered, low_uvi, day, odd)
    return _by_line(ordered, line, low_uvi, day, odd)


def _by_line(
    ordered: Sequence[DatedReading],
    line: Weighed,
    low_uvi: float,
    day: float,
    odd: tuple[Finding, ...],
) -> Decline:
    last, span = ordered[-1].day, ordered[-1].day - ordered[0].day
    is_real = abs(line.slope) > line.slope_half
    trend = Trend.STEADY
    if is_real:
        trend = Trend.FALLING if line.slope < 0.0 else Trend.RISING
    falling = trend is Trend.FALLING
    if trend is Trend.RISING and not any(f.odd is Odd.RISE for f in odd):
        odd += (Finding(Odd.RISE, (0, len(ordered) - 1), exp(line.slope * span)),)
    horizon = last + min(_FARTHEST_DAYS, 2.0 * span)
    goal, now = log(low_uvi), _truly(_told(line, last))
    earliest, latest = _band_crossings(line, goal, last)
    falls = line.middle + (goal - line.level) / line.slope if line.slope < 0.0 else None
    by_now = _truly(_told(line, day)) if day <= horizon else None
    below = _is_below(now, low_uvi) or bool(falling and by_now and _is_below(by_now, low_uvi))
    return Decline(
        trend=trend,
        first_day=ordered[0].day,
        last_day=last,
        now=now,
        changed=ordered[-1].uvi / ordered[0].uvi,
        change_is_real=is_real,
        month_factor=_factor_over(line, 30.0),
        below_already=below,
        falls_below_day=_within(falls if falling else None, horizon),
        earliest_day=_within(earliest if falling else None, horizon),
        latest_day=_within(latest if falling else None, horizon),
        horizon_day=horizon,
        read_again_day=max(day, _read_again(last, earliest)),
        today_day=day,
        today=by_now,
        found=odd,
    )


def trend_at(readings: Sequence[DatedReading], days: Sequence[float]) -> tuple[Estimate, ...]:
    """Return what the meter would show [1] on days [d], by the line; none without a line."""
    everything = sorted(readings, key=lambda r: r.day)
    odd = findings_of(everything)
    line = _line_through(kept(everything, odd))
    if line is None or any(not finding.set_aside for finding in odd):
        return ()
    return tuple(_told(line, day) for day in days)


def _is_below(uvi: Estimate, low_uvi: float) -> bool:
    """Return whether it is at least probably below; a meter's own doubt is no fading."""
    return judge_value(Quantity.UVI, uvi, low_uvi, inf).move is Move.UP


def _told(line: Weighed, day: float) -> Estimate:
    best, half = line.at(day), line.half(day)
    return Estimate(exp(best - half), exp(best), exp(best + half))


def _factor_over(line: Weighed, days: float) -> Estimate:
    return Estimate(*(exp(days * (line.slope + k * line.slope_half)) for k in (-1.0, 0.0, 1.0)))


def _band_crossings(line: Weighed, goal: float, last: float) -> tuple[float | None, float | None]:
    """Return the first days from the last reading on which each edge is below the goal."""
    reach = line.reach**2
    above = line.level - goal
    roots = np.roots(
        [
            line.slope**2 - reach / line.spread,
            2.0 * line.slope * above,
            above**2 - reach / line.total,
        ]
    )
    days = sorted(line.middle + float(r.real) for r in roots if abs(r.imag) < 1e-9)
    later = [day for day in days if day >= last]
    low = [day for day in later if line.at(day) > goal]
    high = [day for day in later if line.at(day) <= goal]
    now, half = line.at(last), line.half(last)
    earliest = last if now - half < goal else next(iter(low), None)
    latest = last if now + half < goal else next(iter(high), None)
    return earliest, latest


def _line_through(ordered: Sequence[DatedReading]) -> Weighed | None:
    """Fit the line; None with fewer than three readings or all on one day."""
    days, logs, weights = days_and_logs(ordered)
    if days.size < 3 or np.ptp(days) == 0.0:
        return None
    return weigh(logs, weights, days)


def _without_line(
    ordered: Sequence[DatedReading], low_uvi: float, day: float, odd: tuple[Finding, ...]
) -> Decline:
    first, last = ordered[0], ordered[-1]
    _, _, weights = days_and_logs(ordered)
    one = 1.0 / sqrt(float(weights[-1]))
    both = sqrt(1.0 / float(weights[0]) + 1.0 / float(weights[-1]))
    factor = exp(NINE_IN_TEN * one)
    changed = last.uvi / first.uvi
    weak = last.uvi / factor < low_uvi
    now = _truly(Estimate(last.uvi / factor, last.uvi, last.uvi * factor))
    return Decline(
        trend=Trend.RISING if any(f.odd is Odd.RISE for f in odd) else Trend.TOO_FEW,
        first_day=first.day,
        last_day=last.day,
        now=now,
        changed=changed,
        change_is_real=abs(log(changed)) > NINE_IN_TEN * both,
        month_factor=None,
        below_already=_is_below(now, low_uvi),
        falls_below_day=None,
        earliest_day=None,
        latest_day=None,
        horizon_day=last.day,
        read_again_day=day if odd else max(day, _read_again(last.day, last.day if weak else None)),
        today_day=day,
        today=None,
        found=odd,
    )


def _truly(read: Estimate) -> Estimate:
    """Widen what a meter shows by the meter's own doubt, which no row of its readings tells."""
    band = Doubt(Cause.READINGS, read.high / read.best, "student_posterior")
    factor = combined_factor((band, METER_DOUBT))
    return Estimate(read.best / factor, read.best, read.best * factor)


def _within(day: float | None, horizon: float) -> float | None:
    return day if day is not None and day <= horizon else None


def _read_again(last: float, earliest: float | None) -> float:
    """Return the day for the next reading: halfway to the earliest day it may be too low."""
    soonest, latest = READ_AGAIN_DAYS
    if earliest is None:
        return last + latest
    return last + min(max((earliest - last) / 2.0, soonest), latest)
