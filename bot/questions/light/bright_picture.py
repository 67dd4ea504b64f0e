"""The picture of a brightness: the place beside the sun, open shade, an overcast day and a room."""

from collections.abc import Iterator
from math import log10

from bot.drawing import Axis, Gauge, Scale, Sheet, Ticks
from bot.facts import Lux, Say, Says
from bot.layered import Teller
from bot.questions.light.brightness import Bright
from bot.reply import Picture

__all__ = ["bright_picture"]

_LEAST_LX, _MOST_LX = 10.0, 200_000.0


def bright_picture(facts: Bright, teller: Teller) -> Picture:
    """Return the light of the place, and of the cool end, beside that of other places."""
    rows = tuple(_rows(facts))
    ends = log10(_LEAST_LX), log10(_MOST_LX)
    say = Says("bright", facts)
    told = [teller.say(say("title")) + "."]
    told += [f"{teller.say(label)}: {teller.say(cell)}." for label, cell, _ in rows]
    drawing = Sheet(
        title=teller.say(say("title")),
        subtitle=teller.say(say.by("range", facts.asked)),
        axis=Axis("", *ends, (Scale("lx"),), Ticks.POWERS),
        gauges=tuple(_gauge(label, cell, light, teller) for label, cell, light in rows),
        note=teller.say(say("picture-note")),
    )
    return Picture(alt=" ".join(told), drawing=drawing)


def _rows(facts: Bright) -> Iterator[tuple[Say, Say, Lux]]:
    say, sky, lit = Says("bright", facts), facts.sky, facts.lit
    yield say("label-spot"), say("spot"), facts.spot
    if lit is not None and lit.cool is not None:
        yield say("label-cool"), Say("bright-cool", lit), lit.cool
    yield Say("bright-row-sun", sky), Say("bright-cell-sun", sky), sky.sun
    yield Say("bright-row-overcast", sky), Say("bright-cell-overcast", sky), sky.overcast
    yield Say("bright-row-shaded", sky), Say("bright-cell-shaded", sky), sky.shade
    yield Say("bright-row-room", sky), Say("bright-cell-room", sky), sky.room


def _gauge(label: Say, cell: Say, light: Lux, teller: Teller) -> Gauge:
    low, high = (log10(max(end, _LEAST_LX)) for end in (light.low, light.high))
    return Gauge(
        label=teller.say(label),
        where="",
        wanted=None,
        wanted_text="",
        reading=(low, high),
        reading_text=teller.say(cell),
        verdict="",
    )
