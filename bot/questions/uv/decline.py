"""How a tube fades by dated readings, when it leaves the range, when to read it again.

Words: ``words/<language>/decline.ftl``.
"""

from collections.abc import Iterator
from datetime import date

from bot.command import Command
from bot.facts import Say, Says, uvi
from bot.layered import Brief, Layered, Row, Table
from bot.preferences import Context
from bot.queries.uv_depth import DeclineQuery
from bot.questions.uv.dated_asked import dated_asked
from bot.questions.uv.decline_age import ByAge, by_age
from bot.questions.uv.decline_age_told import tell_by_age
from bot.questions.uv.fading import DatedRead, Fading, Leaves, Stands, fading
from bot.questions.uv.fading_picture import fading_picture
from bot.questions.uv.group_fading import pace_rows
from bot.questions.uv.shared import EYES_CARE, SHADE_CARE, wish_assumed, wish_rows
from bot.reply import Picture

__all__ = ["DECLINE", "decline", "tell", "tell_fading"]

# More odd findings than these stand among the numbers.
_TOLD_FIRST = 2


def decline(query: DeclineQuery, context: Context) -> Fading | ByAge:
    """Work out a trend from dated readings, or without them what is common practice."""
    if query.readings:
        seen = dated_asked(query.readings, context)
        return fading(seen, query.animal, query.uvi, context)
    return by_age(query.lamp, query.age.low if query.age else None, context.own)


def tell(facts: Fading | ByAge) -> Layered:
    """Tell how the tube stands, then when to read it again."""
    return tell_fading(facts) if isinstance(facts, Fading) else tell_by_age(facts)


def tell_fading(facts: Fading) -> Layered:
    """Tell what no tube does, else how the tube stands and fades."""
    say = Says("decline", facts)
    return Layered(
        command="decline",
        title=say("title"),
        brief=_brief(facts, say),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        table=_table(facts, say),
        why=tuple(_why(facts, say)),
        care=(EYES_CARE, SHADE_CARE),
        values=facts.values,
        guide=("when-a-lamp-is-worn-out", "how-to-take-a-reading"),
        sources=facts.sources,
        picture=lambda teller: Picture.later(fading_picture, facts, teller),
        alarms=facts.alarms,
    )


def _brief(facts: Fading, say: Says) -> Brief:
    odd = tuple(Say.by("decline-odd", one.kind, one) for one in facts.odd[:_TOLD_FIRST])
    head = say.by("head", facts.stands)
    if facts.stands is Stands.UNSOUND:
        return Brief(head=head, range=odd, steps=(say("do-wipe"),))
    told = tuple(_ranges(facts, say))
    steps = tuple(_do(facts, say))
    assumed = wish_assumed(facts.wish)
    if odd:
        return Brief(odd[0], (head, *told[:1], *odd[1:]), assumed, steps)
    return Brief(head, told, assumed, steps)


def _ranges(facts: Fading, say: Says) -> Iterator[Say]:
    if facts.stands is Stands.ABOVE:
        yield say("aim")
        yield say.by("head", facts.trend)
        if facts.leaves is not None:
            yield say.by("leaves", facts.leaves)
        return
    if facts.stands is Stands.BELOW:
        yield say("aim")
        return
    if facts.leaves is not None:
        yield say.by("leaves", facts.leaves)
    elif facts.stands is Stands.FEW:
        yield say.by("change-short", facts.change)
    if facts.says_age:
        yield say("old")
    if facts.window is not None and facts.leaves is Leaves.ON:
        yield say.by("window", facts.window)


def _do(facts: Fading, say: Says) -> Iterator[Say]:
    if facts.stands is Stands.ABOVE:
        yield say("do-farther")
    elif facts.stands is Stands.BELOW:
        yield say("do-sure")
        yield say("do-below")
    else:
        yield say("do-again")


def _steps(facts: Fading, say: Says) -> Iterator[Say]:
    if facts.odd:
        yield say("step-wipe")
    if facts.below_already:
        yield say("step-below")
    if facts.stands is Stands.ABOVE:
        yield say("step-farther")
    if facts.rising:
        yield say("step-place")
    yield say("step-mark")
    yield say("step-new")


def _why(facts: Fading, say: Says) -> Iterator[Say]:
    yield from (Say.by("decline-odd-why", one.kind, one) for one in facts.odd[:_TOLD_FIRST])
    if facts.stands is Stands.FEW:
        yield say("why-few")
    if facts.stands is Stands.STEADY:
        yield say("why-steady")


def _numbers(facts: Fading, say: Says) -> Iterator[Row]:
    for one in facts.odd[_TOLD_FIRST:]:
        yield Row(say("label-odd"), Say.by("decline-odd", one.kind, one))
    yield Row(
        say("label-now" if facts.read_today else "label-last"),
        say("read-unsound" if facts.stands is Stands.UNSOUND else "read"),
    )
    if facts.today is not None and not facts.read_today:
        yield Row(say("label-today"), say("today"))
    yield from wish_rows(facts.wish)
    yield Row(say("label-change"), say.by("change", facts.change))
    if facts.month_factor is not None:
        yield Row(say("label-month"), say("month"))
    if facts.window is not None and not facts.below_already:
        yield Row(say("label-below"), say("falls"))
        yield Row(say("label-window"), say.by("window", facts.window))
    yield from pace_rows(facts.pace)
    yield Row(say("label-again"), say("again"))


def _table(facts: Fading, say: Says) -> Table:
    seen = (DatedRead(date.fromordinal(round(r.day)), uvi(r.uvi)) for r in facts.seen)
    return Table(
        columns=(say("column-day"), say("column-read")),
        rows=tuple((Say("decline-day", one), Say("decline-uvi", one)) for one in seen),
    )


DECLINE = Command(
    name="decline",
    query=DeclineQuery,
    facts=decline,
    tell=tell,
    examples=(
        "decline readings:2026-01-03 5.2, 2026-03-01 4.6, 2026-05-02 4.1 animal:bearded dragon",
        "decline age:8 months",
    ),
    guide=("when-a-lamp-is-worn-out", "how-to-take-a-reading"),
    positional="readings",
)
