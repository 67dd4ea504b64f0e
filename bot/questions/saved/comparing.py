"""Two days of an enclosure beside each other.

Words: ``words/<language>/mine-compare.ftl``, ``home.ftl``.
"""

from dataclasses import dataclass
from datetime import date
from enum import Enum, auto

from bot.asker import today
from bot.command import Command
from bot.desk import Desk
from bot.facts import Diff, Say, Says, Share, Uvi, kelvins, share, uvi
from bot.layered import Brief, Layered, Table
from bot.preferences import Context
from bot.queries.mine import CompareQuery
from bot.questions.saved.enclosures import enclosure_asked
from bot.questions.saved.reading import ReadOnce, day_of, read_once, read_said, what_said
from bot.questions.saved.refused import Why, refused
from bot.questions.saved.showing import day_said
from bot.saved.keeper import KEPT_AS, Reading
from calc.quantities import Quantity

__all__ = ["MINE_COMPARE", "Changed", "Compared", "compare", "tell_compare"]


class Way(Enum):
    """Which way something changed."""

    MORE = auto()
    LESS = auto()


@dataclass(frozen=True, slots=True)
class Changed:
    """One kind of reading on two days: a difference, or of a UV index its part of the first."""

    earlier: ReadOnce
    later: ReadOnce
    way: Way
    part: Share | None
    index: Uvi | None
    degrees: Diff | None


@dataclass(frozen=True, slots=True)
class Compared:
    """Two days of an enclosure, with what was read on both."""

    name: str
    first: date
    second: date
    both: tuple[Changed, ...]

    @property
    def count(self) -> int:
        """Return how many kinds of reading were taken on both days."""
        return len(self.both)


async def compare(query: CompareQuery, context: Context, desk: Desk) -> Compared:
    """Compare two days of an enclosure, the first and the last where none are named."""
    kept = await enclosure_asked(desk, query.name, "mine compare")
    days = sorted({r.day for r in kept.readings})
    if len(days) < 2:
        example = f"mine reading name:{kept.name} uvi:4.2"
        raise refused("mine compare", Why.FEW_DAYS, example)
    now = await today(desk)
    first, second = (
        day_of("mine compare", text, now, option) if text else usual
        for text, option, usual in (
            (query.first, "first", days[0]),
            (query.second, "second", days[-1]),
        )
    )
    for day, option in ((first, "first"), (second, "second")):
        if day not in days:
            known = tuple(map(str, reversed(days)))
            example = f"mine compare name:{kept.name} {option}:{days[0]}"
            raise refused("mine compare", Why.OTHER_DAY, example, option, str(day), known)
    one, other = ({r.of: r for r in kept.readings if r.day == day} for day in (first, second))
    both = tuple(_change(one[of], other[of]) for of in KEPT_AS if of in one and of in other)
    return Compared(kept.name, first, second, both)


def _change(one: Reading, other: Reading) -> Changed:
    change = other.value - one.value
    of_uvi = one.of is Quantity.UVI
    grown = of_uvi and one.value <= 0.0
    return Changed(
        earlier=read_once(one),
        later=read_once(other),
        way=Way.MORE if change >= 0 else Way.LESS,
        part=share(abs(change) / one.value) if of_uvi and not grown else None,
        index=uvi(abs(change)) if grown else None,
        degrees=None if of_uvi else kelvins(abs(change)),
    )


def tell_compare(facts: Compared) -> Layered:
    """Tell what changed."""
    say = Says("mine-compare", facts)
    return Layered(
        command="mine compare",
        title=say("title"),
        brief=Brief(head=say("head"), range=(say("days"),)),
        steps=(say("step"),),
        table=_table(facts) if facts.both else None,
    )


def _table(facts: Compared) -> Table:
    return Table(
        columns=(
            Say("mine-compare-what"),
            day_said(facts.first),
            day_said(facts.second),
            Say("mine-compare-change"),
        ),
        rows=tuple(
            (
                what_said(one.earlier),
                read_said(one.earlier),
                read_said(one.later),
                _changed(one),
            )
            for one in facts.both
        ),
    )


def _changed(one: Changed) -> Say:
    if one.degrees is not None:
        return Say("mine-compare-degrees", one)
    return Say("mine-compare-part" if one.part is not None else "mine-compare-index", one)


MINE_COMPARE = Command(
    name="mine compare",
    query=CompareQuery,
    stored=compare,
    tell=tell_compare,
    examples=("mine compare name:Pebble's box",),
    guide=("keeping-notes",),
)
