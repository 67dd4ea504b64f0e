"""The picture of a year of light: the day outside, and the steps of the timer."""

from datetime import date, timedelta

import numpy as np

from bot.answers.curves import shortened
from bot.answers.figures import hours
from bot.drawing import Axis, Chart, Line, Range, Stroke, Ticks
from bot.reply import Picture
from calc.daylight import day_hours
from calc.timer import LONGEST_H, SHORTEST_H, LightMonth

__all__ = ["year_picture"]

_EVERY_DAYS = 7
_MARGIN_H = 1.0


def year_picture(
    title: str, latitude_deg: float, year: int, plan: tuple[LightMonth, ...], turned: bool
) -> Picture:
    """Return the lights of each month as steps over the day length outside."""
    days = [date(year, 1, 1) + timedelta(days=n) for n in range(0, 366, _EVERY_DAYS)]
    outside = day_hours(latitude_deg, np.array(days, dtype="datetime64[D]"))
    if turned:
        outside = np.roll(outside, len(days) // 2)
    starts = [float(date(year, m.month, 1).timetuple().tm_yday) for m in plan]
    lights = [m.times.hours for m in plan]
    ends = (*outside.tolist(), *lights, SHORTEST_H, LONGEST_H)
    longest, shortest = (pick(plan, key=lambda month: month.times.hours) for pick in (max, min))
    drawing = Chart(
        title=title,
        subtitle="hours of light a day, over the year",
        x=Axis("", 1.0, 366.0, ticks=Ticks.MONTHS),
        y=Axis("Hours a day", max(0.0, min(ends) - _MARGIN_H), min(24.0, max(ends) + _MARGIN_H)),
        lines=(
            Line(
                "your timer",
                (*starts, 366.0),
                (*lights, lights[-1]),
                stroke=Stroke.MAIN,
                stepped=True,
            ),
            Line(
                "sunrise to sunset",
                tuple(float(1 + _EVERY_DAYS * n) for n in range(len(days))),
                tuple(outside.tolist()),
                stroke=Stroke.DASHED,
            ),
        ),
        bands=(Range(SHORTEST_H, LONGEST_H, ""),),
        note=(
            "Steps: what the timer is set to, once a month. Dashed: the day outside there. Amber: "
            f"the bounds, {hours(SHORTEST_H)} to {hours(LONGEST_H)}."
        ),
    )
    alt = [f"Chart: {title}, {drawing.subtitle}."]
    alt.append(
        f"The timer follows the day outside in monthly steps, from {hours(min(lights))} in "
        f"{_month(shortest)} to {hours(max(lights))} in {_month(longest)}."
    )
    alt.append(
        f"Outside the day goes from {hours(float(outside.min()))} to {hours(float(outside.max()))}."
    )
    return Picture(alt=shortened(alt), drawing=drawing)


def _month(month: LightMonth) -> str:
    return f"{date(2000, month.month, 1):%B}"
