"""Axes in one unit or two: what is SI in a drawing is shown in the asker's unit, then the other."""

from dataclasses import dataclass
from datetime import date
from math import ceil, floor, log10

from bot.drawing import Axis, Scale, Ticks

__all__ = ["Tick", "day_ticks", "even_ticks", "month_ticks", "power_ticks", "ticks_of"]

_STEPS = (1.0, 2.0, 5.0, 10.0)
# Days before each month of a common year.
_STARTS = (0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334)


@dataclass(frozen=True, slots=True)
class Tick:
    """A place on an axis [SI of the axis] with what is written there, a line for each part."""

    at: float
    lines: tuple[str, ...]


def ticks_of(axis: Axis, scale: Scale, most: int = 7) -> list[Tick]:
    """Return the ticks of an axis in one of its scales."""
    if axis.ticks is Ticks.MONTHS:
        return month_ticks(axis)
    if axis.ticks is Ticks.DATES:
        return day_ticks(axis)
    if axis.ticks is Ticks.CLOCK:
        return [Tick(float(hour), (f"{hour:02}:00",)) for hour in range(0, 25, 6)]
    if axis.ticks is Ticks.POWERS:
        return power_ticks(axis)
    return even_ticks(axis.low, axis.high, scale, most)


def even_ticks(low: float, high: float, scale: Scale, most: int = 7) -> list[Tick]:
    """Return at most so many round figures of a scale between two values [SI]."""
    first, last = sorted((low * scale.factor + scale.offset, high * scale.factor + scale.offset))
    if last <= first:
        return []
    rough = (last - first) / most
    size = 10.0 ** floor(log10(rough))
    step = next(s * size for s in _STEPS if s * size >= rough * (1.0 - 1e-9))
    digits = max(0, -floor(log10(step) + 1e-9))
    numbers = range(ceil(first / step - 1e-9), floor(last / step + 1e-9) + 1)
    values = [number * step for number in numbers]
    return [
        Tick((value - scale.offset) / scale.factor, (_written(value, digits),)) for value in values
    ]


def power_ticks(axis: Axis) -> list[Tick]:
    """Return the powers of ten from 1 on between the ends of an axis of their exponents."""
    first, last = max(0, ceil(axis.low - 1e-9)), floor(axis.high + 1e-9)
    return [Tick(float(power), (f"{10**power}",)) for power in range(first, last + 1)]


def _written(value: float, digits: int) -> str:
    return f"{value:.{digits}f}".replace("-", "\u2212")


def month_ticks(axis: Axis) -> list[Tick]:
    """Return the middles of the months of a year."""
    names = zip(_STARTS, axis.months, strict=True)
    return [Tick(start + 15.0, (name[0],)) for start, name in names]


def day_ticks(axis: Axis) -> list[Tick]:
    """Return at most six days that are easy to read: firsts of months where the span is long."""
    days = _days(axis.low, axis.high)
    return [Tick(float(day.toordinal()), _told(day, days, axis.months)) for day in days]


def _days(low: float, high: float) -> list[date]:
    first, last = date.fromordinal(int(low)), date.fromordinal(int(high))
    months = (last.year - first.year) * 12 + last.month - first.month
    if months >= 4:
        step = next(s for s in (1, 2, 3, 6, 12, 24, 60, 120, 1200) if months / s <= 6)
        counted = range(first.year * 12 + first.month - 1, last.year * 12 + last.month)
        found = [date(n // 12, n % 12 + 1, 1) for n in counted if n % step == 0]
        return [day for day in found if first <= day <= last]
    step = max(1, round((high - low) / 5))
    return [date.fromordinal(n) for n in range(int(low) + step // 2, int(high) + 1, step)]


def _told(day: date, days: list[date], months: tuple[str, ...]) -> tuple[str, ...]:
    month = months[day.month - 1]
    if day.day == 1 and all(d.day == 1 for d in days):
        new_year = day is days[0] or day.month == 1
        return (month, str(day.year)) if new_year else (month,)
    return (f"{day.day} {month}", str(day.year)) if day is days[0] else (f"{day.day} {month}",)
