"""When the lights go on and off: a flat day, or the seasons of a latitude month by month.

Times are the keeper's own wall clock. The day is centred on solar noon, so that it does not jump
when the clocks change; the timer does.
"""

from calendar import monthrange
from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

import numpy as np

from calc.daylight import DayKind, day_hours, kind_of, solar_noon
from calc.validity import check

__all__ = [
    "LONGEST_H",
    "SHORTEST_H",
    "LightMonth",
    "LightTimes",
    "flat_times",
    "month_plan",
    "monthly_mean_hours",
]

SHORTEST_H, LONGEST_H = 10.0, 14.0
"""Bounds of the planned lights [h]. Source: day_bound."""

_LEAST_LIGHT_H, _MOST_LIGHT_H = 1.0, 23.0
_STEP_H = 0.25
_ROUND_S = 300.0
_HALF_YEAR = 6


@dataclass(frozen=True, slots=True)
class LightTimes:
    """When the timer switches on and off, on the keeper's wall clock, and the time between [h]."""

    on: time
    off: time
    hours: float


@dataclass(frozen=True, slots=True)
class LightMonth:
    """One month of the plan.

    ``daylight_h`` is the month's mean outside [h], before the bound; ``kind`` tells of its
    middle; ``clocks_change`` is the day in the month on which the keeper's clocks change, where
    they do: the times hold for the middle of the month.
    """

    month: int
    daylight_h: float
    kind: DayKind
    times: LightTimes
    clocks_change: date | None

    @property
    def is_bounded(self) -> bool:
        """Whether the planned hours were held back from the daylight outside."""
        return abs(self.times.hours - self.daylight_h) > _STEP_H


def monthly_mean_hours(latitude_deg: float, year: int) -> tuple[float, ...]:
    """Return the mean day length of each month, January first.

    mean of ``day_hours`` over the days of the month

    Parameters
    ----------
    latitude_deg : latitude [degree], -90 to 90, north positive
    year : year, 1900 to 2100

    Returns
    -------
    tuple of float
        Twelve day lengths [h], sunrise to sunset.

    Notes
    -----
    Source: meeus1998; usno1990.

    Examples
    --------
    >>> [round(hours, 2) for hours in monthly_mean_hours(40.0, 2025)[:2]]
    [9.71, 10.71]
    """
    days = np.arange(f"{year}-01-01", f"{year + 1}-01-01", dtype="datetime64[D]")
    hours = day_hours(latitude_deg, days)
    months = days.astype("datetime64[M]").astype(int) % 12
    return tuple(float(hours[months == month].mean()) for month in range(12))


def flat_times(hours: float = 12.0, on: time = time(8)) -> LightTimes:
    """Return the times of a day that is the same all year.

    off = on + hours

    Parameters
    ----------
    hours : lights on [h], 1 to 23
    on : when they go on

    Returns
    -------
    LightTimes

    Notes
    -----
    Source: common_practice for 12 hours.

    Examples
    --------
    >>> flat_times().off
    datetime.time(20, 0)
    """
    check("hours of light", hours, _LEAST_LIGHT_H, _MOST_LIGHT_H, "h")
    starts = datetime.combine(date(2000, 1, 1), on)
    return LightTimes(on, (starts + timedelta(hours=hours)).time(), hours)


def month_plan(
    latitude_deg: float,
    zone: ZoneInfo,
    year: int,
    *,
    longitude_deg: float | None = None,
    shortest_h: float = SHORTEST_H,
    longest_h: float = LONGEST_H,
    half_year_later: bool = False,
) -> tuple[LightMonth, ...]:
    """Return the seasons of a latitude as a timer plan in the keeper's time.

    hours = month's mean daylight, within the bounds, to a quarter; centred on solar noon

    Parameters
    ----------
    latitude_deg : whose seasons [degree], -90 to 90, north positive
    zone : the keeper's time zone
    year : year of the clock changes, 1900 to 2100
    longitude_deg : the keeper's longitude [degree], east positive; without it noon is taken at
        12:00 standard time
    shortest_h, longest_h : bounds [h], 1 to 23
    half_year_later : turn the seasons round, for an animal of the other hemisphere

    Returns
    -------
    tuple of LightMonth
        Twelve rows for the middle of each month, to five minutes.

    Notes
    -----
    A timer that does not know of daylight saving must be set by hand on the day named.
    Source: meeus1998; iana_tz; day_bound.

    Examples
    --------
    >>> june = month_plan(51.5, ZoneInfo("Europe/London"), 2025, longitude_deg=0.0)[5]
    >>> june.times.hours, june.times.on
    (14.0, datetime.time(6, 0))
    """
    check("longest lights", longest_h, _LEAST_LIGHT_H, _MOST_LIGHT_H, "h")
    check("shortest lights", shortest_h, _LEAST_LIGHT_H, longest_h, "h")
    means = monthly_mean_hours(latitude_deg, year)
    middle_days = np.array([date(year, month, 15) for month in range(1, 13)], dtype="datetime64[D]")
    middles = day_hours(latitude_deg, middle_days).tolist()
    rows = []
    for month in range(1, 13):
        season = (month - 1 + _HALF_YEAR * half_year_later) % 12
        lights_h = _quarter(min(max(means[season], shortest_h), longest_h))
        middle = date(year, month, 15)
        noon = _solar_noon(middle, zone, longitude_deg)
        rows.append(
            LightMonth(
                month=month,
                daylight_h=means[season],
                kind=kind_of(middles[season]),
                times=_around(noon, lights_h),
                clocks_change=_clock_change(year, month, zone),
            )
        )
    return tuple(rows)


def _quarter(hours: float) -> float:
    return round(hours / _STEP_H) * _STEP_H


def _solar_noon(when: date, zone: ZoneInfo, longitude_deg: float | None) -> datetime:
    """Return the middle of the lighting day on the wall clock."""
    midday = datetime(when.year, when.month, when.day, 12, tzinfo=zone)
    if longitude_deg is None:
        return midday + (midday.dst() or timedelta(0))
    return solar_noon(when, longitude_deg).astimezone(zone)


def _around(noon: datetime, hours: float) -> LightTimes:
    wall = noon.replace(tzinfo=UTC)
    starts = wall - timedelta(hours=hours / 2)
    rounded = round(starts.timestamp() / _ROUND_S) * _ROUND_S
    on = datetime.fromtimestamp(rounded, UTC)
    return LightTimes(on.time(), (on + timedelta(hours=hours)).time(), hours)


def _clock_change(year: int, month: int, zone: ZoneInfo) -> date | None:
    first = datetime(year, month, 1, 12, tzinfo=zone)
    days = range(monthrange(year, month)[1] + 1)
    # From the day before the month, so that a change on its first day is seen.
    offsets = [(first + timedelta(days=number - 1)).utcoffset() for number in days]
    for number, (before, after) in enumerate(pairwise(offsets), start=1):
        if before != after:
            return date(year, month, number)
    return None
