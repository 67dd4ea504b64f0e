"""What a keeper's own readings say of the lamp, and where it should hang by them.

Words: ``words/<language>/meter.ftl``.
"""

from collections.abc import Iterator

from bot.command import Command
from bot.drawing import PointKind, Tone
from bot.facts import Say, Says
from bot.layered import Brief, Layered, Row, Teller
from bot.preferences import Context
from bot.queries.options import kind_of
from bot.queries.uv_depth import MeterQuery
from bot.questions.uv.curve_picture import Heading, Shown, behind_told, curve_picture
from bot.questions.uv.fit import fit_rows, fit_table
from bot.questions.uv.meter_facts import Metered, metered
from bot.questions.uv.move import MoveWay
from bot.questions.uv.readings import (
    off_brief,
    off_briefly,
    off_told,
    read_again,
)
from bot.questions.uv.shared import EYES_CARE, SHADE_CARE, between_row, wish_assumed, wish_rows
from bot.questions.uv.tubes import length_steps
from bot.questions.uv.without_figures import (
    OtherLamp,
    ThroughPane,
    tell_without,
    without_figures,
)
from bot.reply import Picture
from calc.uncertainty import Estimate
from calc.uv.placement import Spot, Verdict

__all__ = ["METER", "meter", "tell"]

_SOURCES = ("keitz1971", "student_posterior", "uv_meter_judgement", "nearest_distance")


def meter(query: MeterQuery, context: Context) -> Metered | ThroughPane | OtherLamp:
    """Work out the lamp's own distances, and what looks odd."""
    kind = kind_of(query.tube, query.lamp)
    where = query.distance or query.readings[0].distance
    none = without_figures(query, kind, context, query.readings, where.low)
    return none or metered(query, context)


def tell(facts: Metered | ThroughPane | OtherLamp) -> Layered:
    """Tell where the lamp hangs by its readings, and how it stands where it was read."""
    if not isinstance(facts, Metered):
        return tell_without("meter", facts)
    say = Says("meter", facts)
    brief = off_brief(facts.read) if facts.read.cannot_be else _brief(facts, say)
    return Layered(
        command="meter",
        title=say("title"),
        brief=brief,
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        table=fit_table(facts.fit),
        why=(*off_told(facts.read.off), *([say("why-class")] if facts.against else [])),
        care=(EYES_CARE, SHADE_CARE),
        values=(("uvi", facts.here), ("place", facts.at), *facts.extra),
        guide=("how-to-take-a-reading", "reading-a-uv-meter", "measuring-the-distance"),
        sources=(*facts.wish.sources, *_SOURCES),
        picture=lambda teller: Picture.later(_picture, facts, brief.head, teller),
        alarms=facts.alarms,
    )


def _brief(facts: Metered, say: Says) -> Brief:
    fits = facts.place is Verdict.FITS
    moved = Say.by("move-do", facts.move.way, facts.move)
    return Brief(
        head=say.by("head", facts.place),
        range=(
            *((say("span"),) if fits else ()),
            say("here"),
            *off_briefly(facts.read.off),
        ),
        assumed=wish_assumed(facts.wish),
        steps=(
            say("do-nearer") if facts.read.is_loose else moved,
            say("do-again"),
        ),
    )


def _steps(facts: Metered, say: Says) -> Iterator[Say]:
    first = tuple(read_again(facts.read))
    yield from first
    if not facts.read.cannot_be:
        yield Say.by("move-step", facts.move.way, facts.move)
    if not first and (facts.fit.others_only or facts.fit.suspects):
        yield Say("reading-again")
    yield say("step-again")
    if facts.move.way is not MoveWay.OTHER_TUBE or facts.tube.any_length:
        yield from length_steps(facts.tube)


def _numbers(facts: Metered, say: Says) -> Iterator[Row]:
    if facts.away is not None:
        row = say("range-not-yet" if facts.read.cannot_be else "range")
        yield Row(say("label-range"), row)
    yield Row(say("label-basks" if facts.basks else "label-first"), say("place"))
    yield from wish_rows(facts.wish)
    if not facts.tube.point:
        yield Row(Say("tubes-long-label"), Say("tubes-long", facts.tube))
    yield from fit_rows(facts.fit, facts.read)
    if facts.passes is not None:
        yield Row(Say("between-label"), say("passes"))
    else:
        yield between_row(facts.between)
    if facts.against is not None:
        yield Row(say("label-class"), say("class"))


def _picture(facts: Metered, head: Say, teller: Teller) -> Picture:
    say = Says("meter", facts)
    fits = facts.place is Verdict.FITS and not facts.read.cannot_be
    shown = []
    advised = None
    if fits and facts.ends is not None and facts.begin is not None:
        near, start, far = facts.ends
        advised = (near.distance_m, far.distance_m)
        shown.append(Shown(say("point-start"), start, PointKind.START, facts.begin))
    for one in facts.shown:
        there = Spot(one.at.best, Estimate.exact(one.shows.best), 1.0)
        kind = PointKind.READING if one.used else PointKind.SET_ASIDE
        shown.append(Shown(Say("meter-read", one), there, kind, one.at))
    below = (Say("tubes-name", facts.tube), Say("between-name", facts.between))
    wanted = facts.wanted.low, facts.wanted.high
    lamp = facts.read.lamp, facts.screen
    behind = behind_told(facts.behind)
    heading = Heading(say("title"), head, _tone(facts), below, facts.wish.animal, behind)
    return curve_picture(heading, lamp, wanted, advised, shown, teller)


def _tone(facts: Metered) -> Tone:
    if facts.read.cannot_be:
        return Tone.DOUBTFUL
    return Tone.PLAIN if facts.place is Verdict.FITS else Tone.BAD


METER = Command(
    name="meter",
    query=MeterQuery,
    facts=meter,
    tell=tell,
    examples=(
        "meter readings:4.2 at 12 in, 2.9 at 15 in animal:bearded dragon",
        "meter readings:3.1 at 30cm, 2.3 at 36cm without:5.6 at 30cm, 4.3 at 36cm uvi:2-4",
    ),
    guide=("how-to-take-a-reading", "reading-a-uv-meter"),
    positional="readings",
)
