"""A tube's fading from dated readings at one place: trend, its doubt, and the date to act.

The straight line on the logarithm is only drawn through the keeper's own readings; without
them there is no curve here, only the ages at which tubes are commonly replaced.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from enum import Enum
from math import exp, log, sqrt

import numpy as np

from calc.uncertainty import Doubt, Estimate, combined_factor
from calc.uv.lamp_unknowns import Cause
from calc.uv.meter import DISPLAY_UVI, METER_DOUBT, REPEATABILITY
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
_NINE_IN_TEN = 1.645
_FARTHEST_DAYS = 730.5
_PLACED = REPEATABILITY * sqrt(2.0)
"""One deviation of a reading taken at the same place on another day."""


class Trend(Enum):
    """What dated readings show."""

    TOO_FEW = "fewer than three readings"
    STEADY = "no more change than readings repeat to"
    FALLING = "falling"
    RISING = "rising, which a tube past its burn-in does not do"


@dataclass(frozen=True, slots=True)
class DatedReading:
    """A UVI [1] read on a day [d], counted from any fixed day."""

    day: float
    uvi: float

    def __post_init__(self) -> None:
        if not 0.05 <= self.uvi <= 100.0:
            raise OutsideModelError("UV index read", self.uvi, 0.05, 100.0, "")


@dataclass(frozen=True, slots=True)
class Decline:
    """The trend of a lamp at one place.

    ``now`` is the true UVI on the last day read, with the meter's own doubt; ``changed`` the last
    over the first reading; ``month_factor`` what 30 days change it by. A falling lamp leaves the
    wanted range on ``falls_below_day``, between ``earliest_day`` and ``latest_day``; None: not
    before ``horizon_day``, beyond which nothing is said.
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


def decline_of(readings: Sequence[DatedReading], low_uvi: float) -> Decline:
    """Find how a lamp fades at one place, and when it leaves the wanted range.

    ln UVI = a + b t, least squares; its band 1.645 s √(1/n + (t - t̄)²/Sxx) crosses ln low at
    the earliest and the latest day; s is 7 %, more where the display is coarse, or the scatter

    Parameters
    ----------
    readings : one to 200; day [d], UVI [1] 0.05 to 100, all at one place, any order
    low_uvi : low end of the wanted range [1], above 0

    Returns
    -------
    Decline
        Trend, change, dates [d]; with fewer than three readings no dates.

    Notes
    -----
    A straight line says nothing beyond the readings; twice their span at most is looked at,
    and never more than two years. Burn-in bends the first 100 hours.
    Source: uv_meter_judgement; birge1932; adamse_britz1992.

    Examples
    --------
    >>> seen = [DatedReading(0, 4.4), DatedReading(60, 4.0), DatedReading(150, 3.3)]
    >>> found = decline_of(seen, 3.0)
    >>> found.trend.name, round(found.falls_below_day)
    ('FALLING', 202)
    """
    if not 1 <= len(readings) <= MOST_READINGS:
        raise OutsideModelError("number of readings", len(readings), 1, MOST_READINGS, "")
    if not 0.0 < low_uvi <= 20.0:
        raise OutsideModelError("low end of the UV index", low_uvi, 0.0, 20.0, "")
    ordered = sorted(readings, key=lambda r: r.day)
    changed = ordered[-1].uvi / ordered[0].uvi
    real = abs(log(changed)) > _NINE_IN_TEN * _placed(ordered) * sqrt(2.0)
    last, span = ordered[-1].day, ordered[-1].day - ordered[0].day
    line = _line_through(ordered)
    if line is None:
        return _without_line(ordered, low_uvi, changed, real)
    trend = Trend.STEADY
    if line.slope_is_real:
        trend = Trend.FALLING if line.slope < 0.0 else Trend.RISING
    horizon = last + min(_FARTHEST_DAYS, 2.0 * span)
    goal, now = log(low_uvi), _truly(line.at(last))
    earliest, latest = line.band_crossings(goal, last)
    falls = line.mean_day + (goal - line.mean_log) / line.slope if line.slope < 0.0 else None
    falling = trend is Trend.FALLING
    return Decline(
        trend=trend,
        first_day=ordered[0].day,
        last_day=last,
        now=now,
        changed=changed,
        change_is_real=line.slope_is_real,
        month_factor=line.factor_over(30.0),
        below_already=now.best < low_uvi,
        falls_below_day=_within(falls if falling else None, horizon),
        earliest_day=_within(earliest if falling else None, horizon),
        latest_day=_within(latest if falling else None, horizon),
        horizon_day=horizon,
        read_again_day=_read_again(last, earliest),
    )


def trend_at(readings: Sequence[DatedReading], days: Sequence[float]) -> tuple[Estimate, ...]:
    """Return what the meter would show [1] on days [d], by the line; none without a line."""
    line = _line_through(sorted(readings, key=lambda r: r.day))
    return tuple(line.at(day) for day in days) if line else ()


@dataclass(frozen=True, slots=True)
class _Line:
    """A straight line through logarithms, with the deviation of one reading."""

    count: int
    mean_day: float
    mean_log: float
    slope: float
    deviation: float
    spread: float

    @property
    def slope_is_real(self) -> bool:
        return abs(self.slope) * sqrt(self.spread) > _NINE_IN_TEN * self.deviation

    def band(self, day: float) -> float:
        """Half the width of the line's band, on the logarithm."""
        away = (day - self.mean_day) ** 2 / self.spread
        return _NINE_IN_TEN * self.deviation * sqrt(1.0 / self.count + away)

    def at(self, day: float) -> Estimate:
        best = self.mean_log + self.slope * (day - self.mean_day)
        return Estimate(exp(best - self.band(day)), exp(best), exp(best + self.band(day)))

    def factor_over(self, days: float) -> Estimate:
        half = _NINE_IN_TEN * self.deviation / sqrt(self.spread)
        return Estimate(*(exp(days * (self.slope + k * half)) for k in (-1.0, 0.0, 1.0)))

    def band_crossings(self, goal: float, last: float) -> tuple[float | None, float | None]:
        """Return the first days from the last reading on which each edge is below the goal."""
        now = self.mean_log + self.slope * (last - self.mean_day)
        reach = (_NINE_IN_TEN * self.deviation) ** 2
        above = self.mean_log - goal
        roots = np.roots(
            [
                self.slope**2 - reach / self.spread,
                2.0 * self.slope * above,
                above**2 - reach / self.count,
            ]
        )
        days = sorted(self.mean_day + float(r.real) for r in roots if abs(r.imag) < 1e-9)
        later = [day for day in days if day >= last]
        low = [day for day in later if self._line(day) > goal]
        high = [day for day in later if self._line(day) <= goal]
        earliest = last if now - self.band(last) < goal else next(iter(low), None)
        latest = last if now + self.band(last) < goal else next(iter(high), None)
        return earliest, latest

    def _line(self, day: float) -> float:
        return self.mean_log + self.slope * (day - self.mean_day)


def _line_through(ordered: Sequence[DatedReading]) -> _Line | None:
    """Fit the line; None with fewer than three readings or all on one day."""
    days = np.array([r.day for r in ordered])
    logs = np.log([r.uvi for r in ordered])
    spread = float(np.sum((days - days.mean()) ** 2))
    if days.size < 3 or spread == 0.0:
        return None
    slope = float(np.sum((days - days.mean()) * logs)) / spread
    residuals = logs - logs.mean() - slope * (days - days.mean())
    placed = _placed(ordered)
    birge = max(1.0, float(np.sum(residuals**2)) / (days.size - 2) / placed**2)
    deviation = placed * sqrt(birge)
    return _Line(days.size, float(days.mean()), float(logs.mean()), slope, deviation, spread)


def _placed(ordered: Sequence[DatedReading]) -> float:
    """Return one deviation of such a reading's logarithm: place, repeat, and a weak one's digit."""
    digit = float(np.mean([(DISPLAY_UVI / r.uvi) ** 2 for r in ordered]))
    return sqrt(_PLACED**2 + digit)


def _without_line(
    ordered: Sequence[DatedReading], low_uvi: float, changed: float, real: bool
) -> Decline:
    last, factor = ordered[-1], exp(_NINE_IN_TEN * _placed(ordered))
    return Decline(
        trend=Trend.TOO_FEW,
        first_day=ordered[0].day,
        last_day=last.day,
        now=_truly(Estimate(last.uvi / factor, last.uvi, last.uvi * factor)),
        changed=changed,
        change_is_real=real,
        month_factor=None,
        below_already=last.uvi < low_uvi,
        falls_below_day=None,
        earliest_day=None,
        latest_day=None,
        horizon_day=last.day,
        read_again_day=_read_again(last.day, last.day if last.uvi / factor < low_uvi else None),
    )


def _truly(read: Estimate) -> Estimate:
    """Widen what a meter shows by the meter's own doubt, which no row of its readings tells."""
    band = Doubt(Cause.READINGS, read.high / read.best, "birge1932")
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
