"""The curves of two set-ups in one picture, each with its doubt and its place."""

import numpy as np

from bot.drawing import Chart, Line, Point, PointKind, Range, Stroke
from bot.facts import Say, Says
from bot.layered import Teller
from bot.questions.uv.compare_facts import Side, SideBySide
from bot.questions.uv.curve_picture import distance_axis, too_near_span, uvi_axis
from bot.questions.uv.curves import alt_of, curve_of, shown_distances
from bot.questions.uv.uvi import Expected
from bot.reply import Picture

__all__ = ["compare_picture"]

_POINTS = 49
_HEADROOM = 2.0
_ABOVE_THE_TOP = 1.15


def compare_picture(facts: SideBySide, teller: Teller) -> Picture:
    """Return both curves with their doubt and places."""
    say = Says("compare", facts)
    head = say.by("head", facts.lead)
    sides = (facts.first, facts.second)
    near, far = shown_distances([side.at.best for side in sides])
    wanted = facts.wanted
    tops = [_ABOVE_THE_TOP * side.there.high for side in sides]
    drawing = Chart(
        over=teller.say(say("title")),
        title=teller.say(head),
        subtitle=teller.say(say("picture-below")),
        x=distance_axis(near, far, teller),
        y=uvi_axis(max(_HEADROOM * wanted.high, *tops), teller),
        lines=(
            _line(facts.one, (near, far), teller.say(say("column-first")), Stroke.MAIN),
            _line(facts.other, (near, far), teller.say(say("column-second")), Stroke.DASHED),
        ),
        bands=(Range(wanted.low, wanted.high, teller.say(say("picture-aim"))),),
        spans=(too_near_span(near, teller),),
        points=(
            _point(facts.first, teller.say(say("column-first"))),
            _point(facts.second, teller.say(say("column-second"))),
        ),
        note=teller.say(say("picture-note")),
    )
    told = (
        say("picture-alt"),
        head,
        Say("compare-first", sides[0]),
        Say("compare-second", sides[1]),
    )
    alt = alt_of(map(teller.say, told))
    return Picture(alt=alt, drawing=drawing)


def _line(one: Expected, ends: tuple[float, float], label: str, stroke: Stroke) -> Line:
    distances = np.linspace(*ends, _POINTS)
    return curve_of(one.asked.lamp, one.asked.screen, distances, label, stroke)


def _point(side: Side, label: str) -> Point:
    there = side.there
    return Point(side.at.best, there.best, there.low, there.high, label, PointKind.HERE)
