"""What is told of the distance. Words: ``words/<language>/distance.ftl``."""

from collections.abc import Callable, Iterator
from enum import Enum, auto
from typing import Literal

from bot.facts import Figure, Length, Say, Says, metres
from bot.layered import Brief, Layered, Row, Table, Teller
from bot.questions.uv.asked_uv import Asked, At, at_spot
from bot.questions.uv.distance_facts import Advised, ByLength, NoPlace, OfLength, Placed
from bot.questions.uv.readings import off_brief, off_briefly, off_told, read_again
from bot.questions.uv.shared import UV_CARE, wish_assumed
from bot.questions.uv.tubes import Assumed, length_steps, length_value
from bot.reply import Picture
from calc.uv.placement import FARTHEST_PLACE_M, Spot, Verdict, spot

__all__ = ["tell_by_length", "tell_no_place", "tell_placed"]

_GUIDE = ("measuring-the-distance", "screens", "reflectors", "reading-a-uv-meter")
# A point of the picture: what it is, where, and of which kind.
_Point = tuple[Say, Spot, Literal["START", "HERE"], Length]


class _Shown(Enum):
    """The sign of the answer in its picture: none where it is advice and no verdict."""

    PLAIN = auto()
    DOUBTFUL = auto()
    BAD = auto()


def tell_placed(facts: Placed) -> Layered:
    """Tell from where to where the tube hangs, and where to start."""
    say = Says("distance", facts)
    asked = facts.asked
    near, start, far = facts.expected
    transmission = spot(asked.lamp, facts.start.best, asked.screen).screen_transmission
    brief = off_brief(asked.read) if asked.read.cannot_be else _placed_brief(facts, say)
    tone = _Shown.BAD if facts.says is Advised.WEAKER else _Shown.PLAIN
    return Layered(
        command="distance",
        title=say("title"),
        brief=brief,
        steps=tuple(_placed_steps(facts, say)),
        numbers=(
            Row(say("label-range"), say("whole-range")),
            *(Row(say("label-uvi"), Say("distance-at", at)) for at in facts.expected),
            *asked.rows(transmission),
            *([Row(say("label-held"), say("held-near"))] if facts.held_near else []),
            *([Row(say("label-held"), say("held-far"))] if facts.held_far else []),
        ),
        why=(
            *off_told(asked.read.off),
            *([say("why-held")] if facts.held_for_length else []),
            *([say("why-measure")] if facts.says is Advised.MEASURE else []),
            *([say("why-weaker")] if facts.says is Advised.WEAKER else []),
            *facts.why,
        ),
        care=UV_CARE,
        values=(
            ("distance", facts.start),
            ("uvi_near", near.uvi),
            ("uvi_start", start.uvi),
            ("uvi_far", far.uvi),
            ("screen_transmission", facts.passes),
            length_value(asked.tube),
        ),
        guide=_GUIDE,
        sources=facts.sources,
        picture=_picture(asked, say("title"), brief.head, tone, _placed_point(facts)),
    )


def _placed_brief(facts: Placed, say: Says) -> Brief:
    asked = facts.asked
    held = facts.held_for_length and asked.tube.assumed is not Assumed.NOTHING
    long = (Say.by("distance-held", asked.tube.assumed),) if held else asked.assumed
    assumed = (*wish_assumed(asked.wish), *(long if held else ()), *(() if held else long))
    if facts.says is Advised.WEAKER:
        better = [Say("instead-short", other) for other in facts.better[:1]]
        steps = (*better, say("do-measure")) if better else (say("do-weaker"), say("do-measure"))
        return Brief(say("head-weaker"), (say("this-one"),), assumed, steps)
    meter = facts.says is Advised.MEASURE
    return Brief(
        head=say("head"),
        range=(
            say("range"),
            *([say("only-meter")] if meter else []),
            *off_briefly(asked.read.off),
        ),
        assumed=assumed,
        steps=(
            say("do-measure"),
            say("do-length") if asked.tube.any_length else say("do-meter"),
        ),
    )


def _placed_steps(facts: Placed, say: Says) -> Iterator[Say]:
    asked = facts.asked
    cannot_be = asked.read.cannot_be
    yield from read_again(asked.read)
    if facts.says is Advised.WEAKER:
        yield from (Say("instead-use", other) for other in facts.better)
        if not facts.better:
            yield Say("instead-weaker")
    if not cannot_be:
        yield from length_steps(asked.tube)
    yield from (Say("instead-better", other) for other in facts.stronger)
    yield say("step-measure")
    if not cannot_be:
        yield say("step-hang")
        yield say("step-own-meter" if facts.own_meter else "step-meter")
    yield say("step-again")


def tell_by_length(facts: ByLength) -> Layered:
    """Tell a range for every length that the tube may have, as no one is right for all."""
    say = Says("distance", facts)
    asked, first = facts.asked, facts.first
    weaker = [Say("instead-use", other) for other in facts.weaker] or [Say("instead-weaker")]
    brief = off_brief(asked.read) if asked.read.cannot_be else _by_length_brief(facts, say)
    tone = _Shown.DOUBTFUL if first else _Shown.BAD
    return Layered(
        command="distance",
        status="ok" if first else "problem",
        title=say("title-by-length"),
        brief=brief,
        steps=(
            *read_again(asked.read),
            *([] if first else weaker),
            *([] if asked.read.cannot_be else length_steps(asked.tube)),
            say("step-then-hang"),
        ),
        numbers=asked.rows(facts.blocked),
        table=_table(facts, say),
        why=(*off_told(asked.read.off), say("why-by-length" if first else "why-too-far")),
        care=UV_CARE,
        values=(*_values_by_length(facts), length_value(asked.tube)),
        guide=_GUIDE,
        sources=facts.sources,
        picture=_picture(asked, say("title-by-length"), brief.head, tone, _mild_point(asked)),
    )


def _by_length_brief(facts: ByLength, say: Says) -> Brief:
    assumed = (*wish_assumed(facts.asked.wish), *facts.asked.assumed)
    if facts.first is None:
        weaker = [Say("instead-short", other) for other in facts.weaker[:1]]
        steps = tuple(weaker) or (say("do-weaker"),)
        return Brief(say("head-weaker"), (say("any-length-too-far"),), assumed, steps)
    ranges = (Say("distance-if-long", facts.first),)
    return Brief(say("head-by-length"), ranges, assumed, (say("do-measure-tube"),))


def _table(facts: ByLength, say: Says) -> Table:
    rows = tuple(tuple(_cells(one)) for one in facts.each)
    return Table((say("column-long"), say("column-away"), say("column-start")), rows)


def _cells(one: OfLength) -> Iterator[Say]:
    yield Say("distance-cell-long", one)
    if one.away is None:
        yield Say.by("placed", one.verdict)
        yield Say("distance-cell-none")
    else:
        yield Say("distance-cell-away", one)
        yield Say("distance-cell-start", one)


def _values_by_length(facts: ByLength) -> Iterator[tuple[str, Figure | None]]:
    for one in facts.each:
        if one.begin is not None:
            yield f"distance_{round(one.long.best * 1000.0)}_mm", one.begin


def tell_no_place(facts: NoPlace) -> Layered:
    """Refuse, and tell what would work."""
    say = Says("distance", facts)
    asked = facts.asked
    instead = [Say("instead-use", other) for other in facts.instead] or [Say("instead-keeper")]
    brief = off_brief(asked.read) if asked.read.cannot_be else _no_place_brief(facts, say)
    return Layered(
        command="distance",
        status="problem",
        title=say("title-no"),
        brief=brief,
        steps=(
            *read_again(asked.read),
            *instead,
            *([] if asked.read.cannot_be else length_steps(asked.tube)),
            say("step-then-measure"),
        ),
        numbers=asked.rows(asked.placement.at_safe_minimum.screen_transmission),
        why=(*off_told(asked.read.off), say.by("why", facts.verdict)),
        care=UV_CARE,
        values=(("uvi_at_safe_minimum", facts.safe_uvi), length_value(asked.tube)),
        guide=_GUIDE,
        sources=facts.sources,
        picture=_picture(asked, say("title-no"), brief.head, _Shown.BAD, _no_place_point(asked)),
    )


def _no_place_brief(facts: NoPlace, say: Says) -> Brief:
    instead = [Say("instead-short", other) for other in facts.instead[:1]]
    return Brief(
        head=say.by("no", facts.verdict),
        range=(say.by("no-range", facts.verdict), *off_briefly(facts.asked.read.off)),
        assumed=(*wish_assumed(facts.asked.wish), *facts.asked.assumed),
        steps=tuple(instead) or (Say("instead-keeper-short"),),
    )


def _picture(
    asked: Asked, over: Say, head: Say, shown: _Shown, point: _Point
) -> Callable[[Teller], Picture]:
    return lambda teller: Picture.later(_drawn, asked, (over, head), shown, point, teller)


def _drawn(
    asked: Asked, told: tuple[Say, Say], shown: _Shown, point: _Point, teller: Teller
) -> Picture:
    # What draws is loaded when somebody looks.
    from bot.drawing import PointKind, Tone
    from bot.questions.uv.curve_picture import Heading, Shown, curve_picture

    ends = asked.placement.ends
    advised = (ends[0].distance_m, ends[2].distance_m) if ends else None
    tone = Tone.DOUBTFUL if asked.read.cannot_be else Tone[shown.name]
    heading = Heading(*told, tone, asked.below_picture, asked.wish.animal)
    label, there, kind, at = point
    points = (Shown(label, there, PointKind[kind], at),)
    lamp = asked.lamp, asked.screen
    return curve_picture(heading, lamp, asked.wanted, advised, points, teller)


def _placed_point(facts: Placed) -> _Point:
    ends = facts.asked.placement.ends
    assert ends is not None
    return Say("distance-point-start", facts), ends[1], "START", facts.start


def _mild_point(asked: Asked) -> _Point:
    assert asked.placement.mild_m is not None
    mild = spot(asked.lamp, asked.placement.mild_m, asked.screen)
    return Say("distance-point-mild", _at(mild)), mild, "HERE", _at(mild).at


def _no_place_point(asked: Asked) -> _Point:
    placement = asked.placement
    if placement.start:
        there = placement.start
        return Say("distance-point-would", _at(there)), there, "HERE", _at(there).at
    there = placement.at_safe_minimum
    if placement.verdict is Verdict.OUT_OF_RANGE:
        there = spot(asked.lamp, FARTHEST_PLACE_M, asked.screen)
    return Say("distance-point-here", _at(there)), there, "HERE", _at(there).at


def _at(there: Spot) -> At:
    return at_spot(there, metres(there.distance_m))
