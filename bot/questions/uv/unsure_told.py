"""What is told of a tube while its fixture or its screen is not known. Words: ``unsure.ftl``."""

from collections.abc import Iterator

from bot.facts import Say, Says
from bot.layered import Brief, Layered, Row, Table, Teller
from bot.questions.uv.shared import UV_CARE, wish_assumed, wish_rows
from bot.questions.uv.tubes import (
    group_rows,
    group_sources,
    length_steps,
    length_value,
    tube_assumed,
)
from bot.questions.uv.unsure import Unsurely, UnsureWay
from bot.reply import Picture

__all__ = ["tell_unsurely"]

_GUIDE = ("screens", "reflectors", "measuring-the-distance", "how-to-take-a-reading")
_SOURCES = ("keitz1971", "uv_distance_rows")


def tell_unsurely(command: str, facts: Unsurely) -> Layered:
    """Tell where none of the ways is too strong, and how to find out which it is."""
    say = Says("unsure", facts)
    there, brief = facts.at is not None, _brief(facts, say)
    return Layered(
        command=command,
        title=say("title"),
        brief=brief,
        steps=(*_steps(facts, say), *length_steps(facts.tube)),
        numbers=(
            *wish_rows(facts.wish),
            Row(say("label-unknown"), say("unknown")),
            *group_rows(facts.tube),
            Row(Say("tubes-long-label"), Say("tubes-long", facts.tube)),
        ),
        table=Table(
            (say("column-way"), say("column-there" if there else "column-away")),
            tuple((Say("unsure-way", way), _cell(way)) for way in facts.ways),
        ),
        why=(
            say("why-there" if there else "why-start"),
            say("why-wide" if facts.differ is None else "why-group"),
        ),
        care=UV_CARE,
        values=(
            ("distance", facts.ends),
            ("uvi", facts.expect),
            length_value(facts.tube),
        ),
        guide=_GUIDE,
        sources=(
            *facts.wish.sources,
            *_SOURCES,
            "common_practice",
            *group_sources(facts.tube),
        ),
        picture=lambda teller: Picture.later(_drawn, facts, brief.head, teller),
        alarms=facts.alarms,
    )


def _drawn(facts: Unsurely, head: Say, teller: Teller) -> Picture:
    # What draws is loaded when somebody looks.
    from bot.questions.uv.unsure_picture import unsure_picture

    return unsure_picture(facts, head, teller)


def _cell(way: UnsureWay) -> Say:
    if way.there is not None:
        return Say("unsure-there", way)
    return Say.by("placed", way.verdict) if way.span is None else Say("unsure-away", way)


def _brief(facts: Unsurely, say: Says) -> Brief:
    assumed = (*wish_assumed(facts.wish), *tube_assumed(facts.tube))
    find = (say("do-fixture" if facts.fixture_unknown else "do-screen"), say("do-again"))
    if facts.at is not None:
        hang = (say.by("until", facts.until),)
        near = (say("too-near"),) if facts.too_near else ()
        return Brief(say("head-there"), (say("standing"), *near), assumed, (*hang, *find[:1]))
    if facts.start is None:
        return Brief(say("head-nothing"), (say("not-every-way"),), assumed, find)
    return Brief(say("head-start"), (say("mild"), say("expect")), assumed, find)


def _steps(facts: Unsurely, say: Says) -> Iterator[Say]:
    if facts.at is not None:
        yield say.by("step-until", facts.until)
    if facts.fixture_unknown:
        yield say("step-fixture")
    if facts.screen_unknown:
        if not facts.some_mesh:
            yield say("step-screen")
        yield say("step-mesh")
    yield say("step-again")
    yield say("step-change")
