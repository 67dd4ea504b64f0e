"""The picture of a year of light: the day outside, and the steps of the timer."""

from datetime import date

from bot.drawing import Axis, Chart, Line, Range, Stroke, Ticks
from bot.facts import Say, Says, hours
from bot.layered import Teller
from bot.questions.heat.hours_seasons import Outside, Seasons, outside_of
from bot.questions.shared import months_told
from bot.reply import Picture
from calc.timer import LONGEST_H, SHORTEST_H

__all__ = ["year_picture"]

_MARGIN_H = 1.0
_YEAR = (1.0, 366.0)


def year_picture(facts: Seasons, teller: Teller) -> Picture:
    """Return the lights of each month as steps over the day length outside."""
    say = Says("hours", facts)
    head = say("steady" if facts.steady else "seasons")
    days, outside = outside_of(facts)
    starts = [float(date(facts.year, m.month, 1).timetuple().tm_yday) for m in facts.plan]
    lights = [month.times.hours for month in facts.plan]
    ends = (*outside, *lights, SHORTEST_H, LONGEST_H)
    drawing = Chart(
        over=teller.say(say("picture-title")),
        title=teller.say(head),
        subtitle=teller.say(say("picture-subtitle")),
        x=Axis("", *_YEAR, ticks=Ticks.MONTHS, months=months_told(teller)),
        y=Axis(
            teller.say(say("picture-axis")),
            max(0.0, min(ends) - _MARGIN_H),
            min(24.0, max(ends) + _MARGIN_H),
        ),
        lines=(
            Line(
                teller.say(say("picture-timer")),
                (*starts, _YEAR[1]),
                (*lights, lights[-1]),
                stroke=Stroke.MAIN,
                stepped=True,
            ),
            Line(
                teller.say(say("picture-outside")),
                tuple(map(float, days)),
                outside,
                stroke=Stroke.DASHED,
            ),
        ),
        bands=(Range(SHORTEST_H, LONGEST_H, ""),),
        note=teller.say(say("picture-note")),
    )
    shown = Outside(hours(outside[0], (min(outside), max(outside))))
    told = (say("picture-alt"), head, Say("hours-picture-alt-outside", shown))
    return Picture(alt=" ".join(map(teller.say, told)), drawing=drawing)
