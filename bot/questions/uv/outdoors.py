"""What real sun gives: in an open pen, behind a window, in a greenhouse.

Words: ``words/<language>/outdoors.ftl``.
"""

from collections.abc import Iterator

from bot.command import Command
from bot.facts import Say, Says
from bot.layered import Brief, Care, Layered, Row, Table, Teller, Weight
from bot.queries.outdoors import OutdoorsQuery
from bot.questions.heat.shared import VET_CARE
from bot.questions.uv.outdoors_facts import BehindGlass, Outdoors, Shady, Suits, outdoors
from bot.questions.uv.shared import wish_rows
from bot.reply import Picture

__all__ = ["OUTDOORS", "tell"]

_GUIDE = ("sun-and-outdoors", "too-hot-or-too-cold", "screens")
_RIGHT = (Suits.NOON, Suits.EDGES)


def tell(facts: Outdoors | BehindGlass) -> Layered:
    """Tell when the sun is right and how to keep the animal from too much of it."""
    return _closed(facts) if isinstance(facts, BehindGlass) else _open(facts)


def _closed(facts: BehindGlass) -> Layered:
    say = Says("outdoors", facts)
    return Layered(
        command="outdoors",
        status="problem",
        title=say("title-closed"),
        brief=Brief(head=say("head-closed"), range=(say("range-closed"),), steps=(say("do-tube"),)),
        steps=(say("step-tube"), say("step-blind"), say("step-pen")),
        why=(say("why-glass"), say("why-oven")),
        care=(VET_CARE,),
        guide=_GUIDE,
        sources=facts.sources,
        alarms=facts.alarms,
    )


def _open(facts: Outdoors) -> Layered:
    say = Says("outdoors", facts)
    hot = facts.shady is Shady.HOT
    return Layered(
        command="outdoors",
        status="problem" if hot else "ok",
        title=say("title"),
        brief=_brief(facts, say),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        table=_table(facts, say),
        why=(say("why-clear"), say("why-shade")),
        care=(Care(say("care-glass"), say("care-glass-short"), Weight.STEP), VET_CARE),
        values=(
            ("noon_uvi", facts.noon),
            ("uvi", facts.here.there if facts.here else None),
        ),
        guide=_GUIDE,
        sources=facts.sources,
        picture=lambda teller: _picture(facts, _brief(facts, say).head, teller),
    )


def _picture(facts: Outdoors, head: Say, teller: Teller) -> Picture:
    from bot.questions.uv.outdoors_picture import outdoors_picture

    return Picture.later(outdoors_picture, facts, head, teller)


def _brief(facts: Outdoors, say: Says) -> Brief:
    if facts.shady is Shady.HOT:
        return Brief(head=say("head-hot"), range=(say("shade-hot"),), steps=(say("do-inside"),))
    here = facts.here
    head = say.by("head", facts.suits) if here is None else Say("outdoors-here", here)
    told = [say("right")] if facts.suits in _RIGHT else []
    if facts.suits is not Suits.ANYBODY:
        told.append(say("noon"))
    if facts.shady is Shady.COLD:
        told.append(say("shade-cold"))
    elif facts.shady is Shady.FINE:
        told.append(say("shade-fine"))
    return Brief(
        head=head,
        range=tuple(told),
        assumed=(say("assumed"),),
        steps=(say("do-shade"), say("do-stay")),
    )


def _steps(facts: Outdoors, say: Says) -> Iterator[Say]:
    if facts.shady is Shady.HOT:
        yield say("step-inside")
        return
    yield from (say("step-pen"), say("step-half"), say("step-stay"), say("step-begin"))
    yield say("step-meter")


def _numbers(facts: Outdoors, say: Says) -> Iterator[Row]:
    if facts.wish is not None:
        yield from wish_rows(facts.wish)
    yield Row(say("label-sky"), say("sky"))
    if facts.shady is not Shady.UNTOLD:
        yield Row(say("label-shade"), say.by("shade-told", facts.shady))


def _table(facts: Outdoors, say: Says) -> Table:
    columns = (say("column-hour"), say("column-uvi"), say("column-verdict"))
    rows = (
        (
            Say("outdoors-cell-hour", one),
            Say("outdoors-cell-uvi", one),
            one.verdict or say("no-verdict"),
        )
        for one in facts.hours
    )
    return Table(columns, tuple(rows))


OUTDOORS = Command(
    name="outdoors",
    query=OutdoorsQuery,
    facts=outdoors,
    tell=tell,
    examples=(
        "outdoors latitude:40N month:June animal:bearded dragon",
        "outdoors latitude:33S month:January hour:9:00 animal:Hermann's tortoise shade:24C",
    ),
    guide=("sun-and-outdoors", "too-hot-or-too-cold"),
)
