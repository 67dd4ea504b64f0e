"""Two set-ups under a UV tube beside each other, the difference that matters first.

Words: ``words/<language>/compare.ftl``.
"""

from collections.abc import Iterator

from bot.command import Command
from bot.facts import Say, Says
from bot.layered import Brief, Layered, Row, Table
from bot.queries.compare import CompareQuery
from bot.questions.uv.compare_facts import Facts, Lead, Side, SideBySide, Stronger, compare
from bot.questions.uv.compare_picture import compare_picture
from bot.questions.uv.shared import UV_CARE, wish_assumed, wish_rows
from bot.questions.uv.tubes import group_short
from bot.questions.uv.uvi import tell as tell_one
from bot.reply import Picture

__all__ = ["COMPARE", "tell"]

_WORKED_OUT = ("there", "verdict", "hangs")
# What a row is called, and the fact that it tells where that differs.
_TOLD = {"lamp": "tube", "between": "between", "at": "at", "age": "months"}


def tell(facts: Facts) -> Layered:
    """Tell which is right, then what each gives and how much they differ."""
    return _tell(facts) if isinstance(facts, SideBySide) else tell_one(facts)


def _tell(facts: SideBySide) -> Layered:
    say = Says("compare", facts)
    near = (say("do-away"),) if facts.near else ()
    return Layered(
        command="compare",
        title=say("title"),
        brief=Brief(
            head=say.by("head", facts.lead),
            range=(
                Say("compare-first", facts.first),
                Say("compare-second", facts.second),
                say.by("times", facts.stronger),
                *([say("unsure")] if facts.unsure else []),
            ),
            assumed=(*wish_assumed(facts.one.asked.wish), *_by_group(facts)),
            steps=(*near, say("do-meter")),
        ),
        steps=(*near, say("step-measure"), say("step-meter"), say("step-ask")),
        numbers=(*wish_rows(facts.one.asked.wish), *_group_rows(facts)),
        table=_table(facts, say),
        why=tuple(_why(facts, say)),
        care=UV_CARE,
        values=(
            ("uvi", facts.first.there),
            ("uvi_other", facts.second.there),
            ("distance_wanted", facts.first.hangs),
            ("distance_wanted_other", facts.second.hangs),
        ),
        guide=("reading-a-uv-meter", "screens", "reflectors"),
        sources=tuple(dict.fromkeys((*facts.one.sources, *facts.other.sources))),
        picture=lambda teller: Picture.later(compare_picture, facts, teller),
        alarms=facts.alarms,
        undecided=facts.lead is Lead.NEITHER and not facts.alarms,
    )


def _by_group(facts: SideBySide) -> tuple[Say, ...]:
    """Return that one or both go by the group, in brief."""
    told = [side for side in (facts.first, facts.second) if side.group is not None]
    if len(told) == 1:
        return (Say("compare-by-one", told[0]),)
    return group_short(facts.first.tube)


def _group_rows(facts: SideBySide) -> Iterator[Row]:
    """Yield by how many keepers each goes that goes by them, each lamp once."""
    sides = {side.tube: side for side in (facts.first, facts.second) if side.tube.group}
    for side in sides.values():
        yield Row(Say("tubes-group-label"), Say("compare-group", side))


def _why(facts: SideBySide, say: Says) -> Iterator[Say]:
    if facts.unsure:
        yield say("why-unsure")
    elif facts.stronger is not Stronger.ALIKE:
        yield say("why")
    yield from facts.one.why


def _table(facts: SideBySide, say: Says) -> Table:
    """Return what each gives and where it hangs, then what is told otherwise of them."""
    first, second = facts.first, facts.second
    whats = [
        *_WORKED_OUT,
        *(w for w, f in _TOLD.items() if getattr(first, f) != getattr(second, f)),
    ]
    return Table(
        (say("column"), say("column-first"), say("column-second")),
        tuple(
            (Say.of("compare-row", what), _cell(what, first), _cell(what, second)) for what in whats
        ),
    )


def _cell(what: str, side: Side) -> Say:
    return Say.of("compare-cell", what, facts=side)


COMPARE = Command(
    name="compare",
    query=CompareQuery,
    facts=compare,
    tell=tell,
    examples=(
        (
            "compare distance:14in tube:12% reflector:polished screen:none "
            "animal:bearded dragon with_tube:6%"
        ),
        (
            "compare distance:30cm tube:12% reflector:polished screen:none "
            "animal:bearded dragon with_screen:blocks 45%"
        ),
    ),
    guide=("reading-a-uv-meter", "screens"),
)
