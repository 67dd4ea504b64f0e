"""Which tube suits a place: its strength by the distance, its length by the box.

Words: ``words/<language>/tube.ftl``.
"""

from collections.abc import Iterator
from dataclasses import replace

from bot.command import Command
from bot.facts import Say, Says
from bot.language.uv_lamps import UvLamp
from bot.layered import Brief, Layered, Row, Table, Teller
from bot.preferences import Context
from bot.queries.uv import TubeQuery
from bot.questions.uv.readings import off_brief, off_briefly, off_told, read_again, readings_rows
from bot.questions.uv.shared import UV_CARE, between_row, wish_assumed, wish_rows
from bot.questions.uv.tube_box import BoxFit, box_rows
from bot.questions.uv.tube_facts import Pick, TubeChosen, tube_chosen
from bot.questions.uv.tube_picture import tube_picture
from bot.questions.uv.tube_places import TubePlaces, tell_places, tube_places
from bot.questions.uv.tubes import length_steps, length_value
from bot.questions.uv.without_figures import (
    OtherLamp,
    ThroughPane,
    tell_without,
    without_figures,
)
from bot.reply import Picture

__all__ = ["TUBE", "tell", "tube"]

_GUIDE = ("uv-and-heat-together", "screens", "measuring-the-distance")
_PROBLEMS = (Pick.TOO_NEAR, Pick.NO_TUBE)
_NOTHING_FITS = (Pick.ALL_WEAK, Pick.ALL_STRONG, Pick.NONE)

Facts = TubeChosen | TubePlaces | ThroughPane | OtherLamp


def tube(query: TubeQuery, context: Context) -> Facts:
    """Work out which tube suits; of another kind than T5 HO none is chosen."""
    without = without_figures(query, UvLamp.T5_HO, context)
    if without is not None:
        return without
    return tube_places(query, context) if query.distance is None else tube_chosen(query, context)


def tell(facts: Facts) -> Layered:
    """Tell what to take and what it gives there, then how long it may be."""
    if isinstance(facts, TubePlaces):
        return _drawn(facts) if facts.places else tell_places(facts)
    if not isinstance(facts, TubeChosen):
        return tell_without("tube", facts)
    say = Says("tube", facts)
    brief = _off_brief(facts, say) if facts.read.cannot_be else _brief(facts, say)
    return Layered(
        command="tube",
        status="problem" if facts.pick in _PROBLEMS else "ok",
        title=say("title"),
        brief=brief,
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        table=_table(facts, say),
        why=tuple(_why(facts, say)),
        care=UV_CARE,
        values=(
            ("uvi_own_lamp", facts.own.there if facts.own else None),
            *((suit.key, suit.there) for suit in facts.suits),
            ("tube_length", facts.box.bought if facts.box else None),
            length_value(facts.tube),
        ),
        guide=_GUIDE,
        sources=facts.sources,
        picture=lambda teller: Picture.later(tube_picture, facts, brief.head, teller),
        alarms=facts.alarms,
    )


def _drawn(facts: TubePlaces) -> Layered:
    return replace(tell_places(facts), picture=lambda teller: Picture.later(_places, facts, teller))


def _places(facts: TubePlaces, teller: Teller) -> Picture:
    # What draws is loaded when somebody looks.
    from bot.questions.uv.places_picture import places_picture

    return places_picture(facts, teller)


def _off_brief(facts: TubeChosen, say: Says) -> Brief:
    """Return what is told first of readings that cannot be; the classes hold without them."""
    off = off_brief(facts.read)
    near = (say.by("head", facts.pick),) if facts.pick is Pick.TOO_NEAR else ()
    return Brief(off.head, (*off.range, *near), (), off.steps)


def _brief(facts: TubeChosen, say: Says) -> Brief:
    return Brief(
        head=say.by("head", facts.pick),
        range=(*_range(facts, say), *off_briefly(facts.read.off)),
        assumed=wish_assumed(facts.wish),
        steps=tuple(_do(facts, say)),
    )


def _range(facts: TubeChosen, say: Says) -> Iterator[Say]:
    if facts.pick is Pick.TAKE and facts.best is not None:
        if facts.best.longest is not None:
            yield Say("tube-no-longer", facts.best)
        elif facts.box is not None and not facts.fixed:
            yield Say.by("tube-length", facts.box.fit, facts.box)
    yield say.by("range", facts.pick)
    if facts.other is not None:
        yield Say.by("otherlamp-why-short", facts.other)
    if facts.own is not None and facts.pick is not Pick.KEEP_OWN:
        yield Say("tube-own-gives", facts.own)


def _asks_box(facts: TubeChosen) -> bool:
    """Say whether the length of the enclosure would tell which one to buy."""
    buys = facts.pick is not Pick.KEEP_OWN
    return buys and facts.tube.any_length and facts.box is None


def _do(facts: TubeChosen, say: Says) -> Iterator[Say]:
    if facts.pick is Pick.TOO_NEAR:
        yield say("do-higher")
    elif facts.pick is Pick.NO_TUBE:
        yield say("do-longer-box")
    elif facts.pick in _NOTHING_FITS:
        yield say("do-distance")
    else:
        yield say("do-measure")
        yield say("do-box" if _asks_box(facts) else "do-meter")


def _steps(facts: TubeChosen, say: Says) -> Iterator[Say]:
    yield from read_again(facts.read)
    if facts.pick is Pick.TOO_NEAR:
        yield say("step-higher")
    if facts.box is not None and facts.box.fit is BoxFit.NO_TUBE and not facts.fixed:
        yield Say("tube-step-longer-box", facts.box)
        yield say("step-other-kinds")
    if _asks_box(facts):
        yield say("step-box")
    else:
        yield from length_steps(facts.tube)
    if facts.best is None and facts.pick is not Pick.KEEP_OWN:
        yield say("step-distance")
    yield say("step-measure")
    yield say("step-meter")


def _numbers(facts: TubeChosen, say: Says) -> Iterator[Row]:
    yield Row(say("label-place"), say("place"))
    yield from wish_rows(facts.wish)
    yield Row(Say("tubes-long-label"), Say("tubes-long", facts.tube))
    if facts.tube.count > 1:
        yield Row(Say("tubes-together-label"), say("several"))
    yield between_row(facts.between)
    if facts.box is not None:
        yield from box_rows(facts.box, fixed=facts.fixed)
    yield from readings_rows(facts.read)


def _table(facts: TubeChosen, say: Says) -> Table:
    rows = [
        (
            Say("tube-cell", suit),
            Say("tubes-fixture", suit),
            Say("tube-there", suit),
            Say("tube-verdict", suit),
        )
        for suit in facts.suits
    ]
    if facts.own is not None:
        own = facts.own
        rows.insert(
            0,
            (say("own"), say("as-read"), Say("tube-own-there", own), Say("tube-own-verdict", own)),
        )
    columns = (
        say("column-tube"),
        say("column-fixture"),
        say("column-there"),
        say("column-verdict"),
    )
    return Table(columns, tuple(rows))


def _why(facts: TubeChosen, say: Says) -> Iterator[Say]:
    yield from off_told(facts.read.off)
    yield say.by("why", facts.pick)
    if facts.read.cannot_be and facts.best is not None:
        yield Say("tube-without-readings", facts.best)
    if facts.pick is Pick.NO_TUBE and facts.best is not None:
        yield Say("tube-for-longer-box", facts.best)
    if facts.other is not None:
        yield Say.by("otherlamp-why", facts.other)
        yield Say("otherlamp-why-t5")


TUBE = Command(
    name="tube",
    query=TubeQuery,
    facts=tube,
    tell=tell,
    examples=(
        "tube distance:14in screen:none animal:bearded dragon enclosure:4ft",
        "tube distance:30cm screen:passes 55% animal:bearded dragon enclosure:120cm",
        "tube animal:leopard gecko enclosure:90cm",
    ),
    guide=("uv-and-heat-together", "screens"),
)
