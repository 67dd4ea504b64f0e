"""The light of a latitude through the year, as facts: what the timer is set to in each month."""

from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

import numpy as np

from bot.facts import Angle, Hours, Name, Say, angle, hours
from bot.queries.day import Home, HoursQuery
from bot.questions.shared import animal_name
from calc.animal import Animal
from calc.daylight import DayKind, day_hours
from calc.timer import LONGEST_H, SHORTEST_H, LightMonth, month_plan

__all__ = ["ClockChange", "MonthLit", "Outside", "Seasons", "outside_of", "seasons"]

_SOURCES = ("meeus1998", "usno1990", "iana_tz", "day_bound", "common_practice")
_HALF_QUARTER_H = 0.125
_EVERY_DAYS = 7


@dataclass(frozen=True, slots=True)
class ClockChange:
    """A day on which the keeper's clocks change."""

    day: date


@dataclass(frozen=True, slots=True)
class MonthLit:
    """One month: how long the lights are on, from when to when, and the day outside."""

    month: Say
    lit: Hours
    on: time
    off: time
    outside: Hours


@dataclass(frozen=True, slots=True)
class Seasons:
    """The light of a latitude month by month; ``unused`` are options that change nothing.

    ``by_itself``: turned because a home in the south was followed and no months were told.
    """

    latitude: Angle
    south: bool
    home_of: Name | None
    turned: bool
    by_itself: bool
    least: Hours
    least_month: Say
    most: Hours
    most_month: Say
    bound: Hours
    zone: str | None
    changes: tuple[Say, ...]
    polar: tuple[Say, ...]
    polar_all_year: bool
    unused: tuple[str, ...]
    months: tuple[MonthLit, ...]
    plan: tuple[LightMonth, ...]
    year: int
    sources: tuple[str, ...]

    @property
    def changing(self) -> bool:
        """Say whether the keeper's clocks change in that year."""
        return bool(self.changes)

    @property
    def steady(self) -> bool:
        """Say whether every month is as long."""
        return self.least == self.most


@dataclass(frozen=True, slots=True)
class Outside:
    """The shortest and the longest day outside, as the picture shows it."""

    outside: Hours


def outside_of(facts: Seasons) -> tuple[tuple[int, ...], tuple[float, ...]]:
    """Return days of the year, one a week, and the day outside on each [h]."""
    days = [date(facts.year, 1, 1) + timedelta(days=n) for n in range(0, 366, _EVERY_DAYS)]
    latitude_deg = facts.latitude.best * (-1.0 if facts.south else 1.0)
    outside = day_hours(latitude_deg, np.array(days, dtype="datetime64[D]"))
    if facts.turned:
        outside = np.roll(outside, len(days) // 2)
    return tuple(1 + _EVERY_DAYS * n for n in range(len(days))), tuple(outside.tolist())


def seasons(query: HoursQuery, animal: Animal | None) -> Seasons:
    """Work out the light of each month; ``animal`` is whose home is followed, or None."""
    home = None if animal is None else animal.home_latitude_deg
    if home is None:
        assert query.latitude is not None
        assert not isinstance(query.latitude, Home)
        latitude_deg = query.latitude
    else:
        latitude_deg = home.aim
    zone, turned = query.zone or ZoneInfo("UTC"), query.months == "turned"
    # Who follows an animal's home means the own summer, and most are north of the equator.
    by_itself = home is not None and query.months is None and latitude_deg < 0.0
    turned = turned or by_itself
    year = query.year or datetime.now(UTC).year
    plan = month_plan(latitude_deg, zone, year, half_year_later=turned)
    longest = max(plan, key=lambda month: month.times.hours)
    shortest = min(plan, key=lambda month: month.times.hours)
    polar = tuple(_named(m) for m in plan if m.kind is not DayKind.ORDINARY)
    changed = (m.clocks_change for m in plan) if query.zone else ()
    return Seasons(
        latitude=angle(abs(latitude_deg)),
        south=latitude_deg < 0.0,
        home_of=None if animal is None else animal_name(animal),
        turned=turned,
        by_itself=by_itself,
        least=hours(shortest.times.hours),
        least_month=_named(shortest),
        most=hours(longest.times.hours),
        most_month=_named(longest),
        bound=hours((SHORTEST_H + LONGEST_H) / 2.0, (SHORTEST_H, LONGEST_H)),
        zone=query.zone.key if query.zone else None,
        changes=tuple(Say("hours-day", ClockChange(day)) for day in changed if day),
        polar=polar,
        polar_all_year=len(polar) == len(plan),
        unused=tuple(name for name in ("on", "off") if getattr(query, name) is not None),
        months=tuple(map(_lit, plan)),
        plan=plan,
        year=year,
        sources=(*(() if home is None else (home.source,)), *_SOURCES),
    )


def _lit(month: LightMonth) -> MonthLit:
    lit = month.times.hours
    return MonthLit(
        month=_named(month),
        lit=hours(lit, (lit - _HALF_QUARTER_H, lit + _HALF_QUARTER_H)),
        on=month.times.on,
        off=month.times.off,
        outside=hours(month.daylight_h),
    )


def _named(month: LightMonth) -> Say:
    return Say.of("figures-month", str(month.month))
