"""The picture of a day of sun: the UV index by the hour, and when it is right."""

from bot.drawing import Axis, Chart, Line, Range
from bot.facts import Say, Says
from bot.layered import Teller
from bot.questions.uv.curves import shortened
from bot.questions.uv.outdoors_facts import Outdoors
from bot.reply import Picture

__all__ = ["outdoors_picture"]

_HEADROOM = 1.15


def outdoors_picture(facts: Outdoors, head: Say, teller: Teller) -> Picture:
    """Return the UV index of a clear day over sun time, with the hours at which it is right."""
    say = Says("outdoors", facts)
    told = teller.say
    day = facts.course
    hours = tuple(hour for hour, _ in day)
    line = Line(
        "",
        hours,
        tuple(there.best for _, there in day),
        tuple(there.low for _, there in day),
        tuple(there.high for _, there in day),
    )
    wanted = facts.wanted
    bands = () if wanted is None else (Range(wanted.low, wanted.high, told(say("picture-band"))),)
    top = max(facts.noon.high, 1.0 if wanted is None else wanted.high)
    drawing = Chart(
        title=told(head),
        subtitle=told(say("title")),
        x=Axis(told(say("picture-hour")), hours[0], hours[-1]),
        y=Axis(told(say("picture-axis")), 0.0, _HEADROOM * top),
        lines=(line,),
        bands=bands,
        spans=tuple(Range(a, b, told(say("picture-right"))) for a, b in facts.spans),
        note=told(say("picture-note")),
    )
    alt = [told(say("picture-alt")), told(head)]
    if facts.parts:
        alt.append(told(say("right")))
    return Picture(alt=shortened(alt), drawing=drawing)
