"""Axes in one unit or two: what is SI in a drawing is shown in the asker's unit, then the other."""

from collections.abc import Callable
from dataclasses import dataclass
from datetime import date
from typing import TYPE_CHECKING

import numpy as np
from numpy.typing import ArrayLike, NDArray

from bot.drawing import Axis, Scale, Ticks
from bot.render.picture import inks

if TYPE_CHECKING:
    from matplotlib.axes import Axes
    from matplotlib.ticker import Locator

__all__ = ["LABEL", "TICK", "Shown", "dress_x", "dress_y"]

_Function = Callable[[ArrayLike], ArrayLike]
TICK, LABEL = 10.5, 11.0
# Days before each month of a common year.
_STARTS = (0, 31, 59, 90, 120, 151, 181, 212, 243, 273, 304, 334)


@dataclass(frozen=True, slots=True)
class Shown:
    """A scale at work: SI to what is drawn, and from there to another scale."""

    scale: Scale

    def __call__(self, value: ArrayLike) -> NDArray[np.float64]:
        """Return SI values as this scale shows them."""
        return np.asarray(value, dtype=np.float64) * self.scale.factor + self.scale.offset

    def one(self, value: float) -> float:
        """Return one SI value as this scale shows it."""
        return value * self.scale.factor + self.scale.offset

    def to(self, other: Scale) -> tuple[_Function, _Function]:
        """Return the functions from this scale to another and back."""
        ratio = other.factor / self.scale.factor
        shift = other.offset - self.scale.offset * ratio
        return (
            lambda value: np.asarray(value) * ratio + shift,
            lambda value: (np.asarray(value) - shift) / ratio,
        )


def dress_x(axes: "Axes", axis: Axis) -> Shown:
    """Set limits, ticks and titles of x; the second unit stands along the top."""
    shown = Shown(axis.scales[0])
    axes.set_xlim(shown.one(axis.low), shown.one(axis.high))
    axes.tick_params(labelsize=TICK, length=4)
    _tick(axes, axis)
    if axis.ticks is Ticks.NUMBERS:
        # Days and months name themselves.
        axes.set_xlabel(_title(axis, axis.scales[0]), fontsize=LABEL, labelpad=4)
    for scale in axis.scales[1:2]:
        top = axes.secondary_xaxis("top", functions=shown.to(scale))
        top.tick_params(labelsize=TICK, length=4)
        top.xaxis.set_major_locator(_locator())
        top.set_xlabel(scale.unit, fontsize=LABEL, labelpad=4)
        top.spines["top"].set_color(inks.MUTED)
    return shown


def dress_y(axes: "Axes", axis: Axis) -> Shown:
    """Set limits, ticks and title of y; the title stands above the axis, where it is level."""
    shown = Shown(axis.scales[0])
    axes.set_ylim(shown.one(axis.low), shown.one(axis.high))
    axes.yaxis.set_major_locator(_locator())
    axes.grid(axis="y", color=inks.HAIR, linewidth=0.8)
    axes.set_axisbelow(True)
    for scale in axis.scales[1:2]:
        right = axes.secondary_yaxis("right", functions=shown.to(scale))
        right.tick_params(labelsize=TICK, length=4)
        right.yaxis.set_major_locator(_locator())
        right.set_ylabel(scale.unit, fontsize=LABEL)
    axes.set_ylabel(_title(axis, axis.scales[0]), fontsize=LABEL, labelpad=5)
    return shown


def _title(axis: Axis, scale: Scale) -> str:
    return f"{axis.title} ({scale.unit})" if scale.unit else axis.title


def _locator() -> "Locator":
    from matplotlib.ticker import MaxNLocator

    return MaxNLocator(nbins=7, steps=[1, 2, 5, 10], min_n_ticks=3)


def _tick(axes: "Axes", axis: Axis) -> None:
    if axis.ticks is Ticks.NUMBERS:
        axes.xaxis.set_major_locator(_locator())
        return
    if axis.ticks is Ticks.MONTHS:
        axes.set_xticks([start + 15.0 for start in _STARTS], [name[0] for name in axis.months])
        axes.tick_params(axis="x", length=0)
        return
    days = _days(axis.low, axis.high)
    told = [_told(day, days, axis.months) for day in days]
    axes.set_xticks([float(day.toordinal()) for day in days], told)


def _days(low: float, high: float) -> list[date]:
    """Return at most six days that are easy to read: firsts of months where the span is long."""
    first, last = date.fromordinal(int(low)), date.fromordinal(int(high))
    months = (last.year - first.year) * 12 + last.month - first.month
    if months >= 4:
        step = next(s for s in (1, 2, 3, 6, 12, 24, 60, 120, 1200) if months / s <= 6)
        counted = range(first.year * 12 + first.month - 1, last.year * 12 + last.month)
        found = [date(n // 12, n % 12 + 1, 1) for n in counted if n % step == 0]
        return [day for day in found if first <= day <= last]
    step = max(1, round((high - low) / 5))
    return [date.fromordinal(n) for n in range(int(low) + step // 2, int(high) + 1, step)]


def _told(day: date, days: list[date], months: tuple[str, ...]) -> str:
    month = months[day.month - 1]
    if day.day == 1 and all(d.day == 1 for d in days):
        new_year = day is days[0] or day.month == 1
        return f"{month}\n{day.year}" if new_year else month
    return f"{day.day} {month}" + (f"\n{day.year}" if day is days[0] else "")
