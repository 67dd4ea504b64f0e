"""Two days of an enclosure, two enclosures or two lamps beside each other.

Words: ``words/<language>/mine-compare.ftl``, ``home.ftl``.
"""

from dataclasses import dataclass, replace
from datetime import date
from enum import Enum, auto

from bot.asker import today
from bot.command import Command
from bot.dangers.past_limits import merged
from bot.desk import Desk
from bot.facts import Say, Says
from bot.layered import Brief, Layered, Row, Table
from bot.preferences import Context
from bot.queries.mine import CompareQuery
from bot.questions.saved.beside import Beside, Stood, beside_each_other, stood
from bot.questions.saved.beside_picture import beside_picture
from bot.questions.saved.comparing_lamps import LampsBeside, lamps_beside
from bot.questions.saved.enclosures import enclosure_asked
from bot.questions.saved.reading import day_of
from bot.questions.saved.refused import Why, refused
from bot.questions.saved.setup import setup_rows, setup_told
from bot.questions.saved.showing import day_said
from bot.questions.saved.standing import animal_of
from bot.questions.uv.compare import COMPARE
from bot.reply import Alarm, Picture
from bot.saved.keeper import Enclosure
from calc.quantities import Quantity

__all__ = ["MINE_COMPARE", "BoxDiffers", "Compared", "compare", "tell_compare"]


class Lead(Enum):
    """What matters most of what is compared."""

    NOTHING = auto()
    ALIKE = auto()
    TURNED = auto()
    TURNED_BOXES = auto()


@dataclass(frozen=True, slots=True)
class BoxDiffers:
    """A fact of the set-up in both enclosures, where it is not the same."""

    label: Say
    here: Say | None
    there: Say | None


@dataclass(frozen=True, slots=True)
class BoxName:
    """The name of an enclosure."""

    name: str


@dataclass(frozen=True, slots=True)
class Compared:
    """Two days of an enclosure, or two enclosures by their last readings (``other``)."""

    name: str
    other: str | None
    first: date
    second: date
    both: tuple[Beside, ...]
    differs: tuple[BoxDiffers, ...] = ()

    @property
    def count(self) -> int:
        """Return how many kinds of reading were taken both times."""
        return len(self.both)

    @property
    def sides(self) -> tuple[Say, Say]:
        """Return what the two sides are called."""
        if self.other is None:
            return day_said(self.first), day_said(self.second)
        return _named(self.name), _named(self.other)

    @property
    def lead(self) -> Lead:
        """Return what matters most."""
        if not self.both:
            return Lead.NOTHING
        if not self.both[0].turned:
            return Lead.ALIKE
        return Lead.TURNED if self.other is None else Lead.TURNED_BOXES

    @property
    def alarms(self) -> tuple[Alarm, ...]:
        """Return what cannot wait: of two days the later one counts."""
        shown = [one.later for one in self.both]
        if self.other is not None:
            shown += [one.earlier for one in self.both]
        return merged(alarm for each in shown for alarm in each.alarms)

    @property
    def what(self) -> Say | None:
        """Return what of the readings matters most."""
        return self.both[0].what if self.both else None

    @property
    def was(self) -> Say | None:
        """Return how that is judged first."""
        return self.both[0].earlier.judged if self.both else None

    @property
    def is_now(self) -> Say | None:
        """Return how that is judged then."""
        return self.both[0].later.judged if self.both else None


def _named(name: str) -> Say:
    return Say("mine-compare-box", BoxName(name))


async def compare(query: CompareQuery, context: Context, desk: Desk) -> Compared | LampsBeside:
    """Compare two lamps, two enclosures, or two days: the first and the last if none is named."""
    if query.lamp or query.other_lamp:
        return await lamps_beside(query, context, desk)
    kept = await enclosure_asked(desk, query.name, "mine compare")
    if query.other:
        other = await enclosure_asked(desk, query.other, "mine compare")
        return _boxes(kept, other, context)
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
    one, then = (_read(kept, context, day) for day in (first, second))
    return Compared(kept.name, None, first, second, beside_each_other(one, then))


def _read(kept: Enclosure, context: Context, day: date | None = None) -> dict[Quantity, Stood]:
    """Return what was read on a day, or what was read last of each kind."""
    animal, found = animal_of(kept.setup.animal, context), {}
    for reading in sorted(kept.readings, key=lambda one: one.day):
        if day in (None, reading.day):
            found[reading.of] = stood(reading, animal)
    return found


def _boxes(kept: Enclosure, other: Enclosure, context: Context) -> Compared:
    here, there = (
        {row.label.id: row for row in setup_rows(setup_told(box.setup))} for box in (kept, other)
    )
    labels = {**here, **there}
    pairs = ((row.label, here.get(key), there.get(key)) for key, row in labels.items())
    return Compared(
        name=kept.name,
        other=other.name,
        first=context.day,
        second=context.day,
        both=beside_each_other(_read(kept, context), _read(other, context)),
        differs=tuple(
            BoxDiffers(label, one.say if one else None, then.say if then else None)
            for label, one, then in pairs
            if one != then
        ),
    )


def tell_compare(facts: Compared | LampsBeside) -> Layered:
    """Tell the difference that matters first, then all of them."""
    if not isinstance(facts, Compared):
        assert COMPARE.tell is not None
        say = Says("mine-compare", facts)
        told = COMPARE.tell(facts.compared)
        return replace(told, command="mine compare", title=say("title-lamps"))
    say = Says("mine-compare", facts)
    head = say.by("lead", facts.lead)
    of_boxes = facts.other is not None
    return Layered(
        command="mine compare",
        title=say("title-boxes" if of_boxes else "title"),
        brief=Brief(
            head=head,
            range=(*map(_change_said, facts.both[:2]), say("boxes" if of_boxes else "days")),
        ),
        steps=(say("step"),),
        numbers=tuple(Row(one.label, Say("mine-compare-differs", one)) for one in facts.differs),
        table=_table(facts) if facts.both else None,
        guide=("keeping-notes",),
        alarms=facts.alarms,
        picture=(
            lambda teller: Picture.later(
                beside_picture, say("title-boxes" if of_boxes else "title"), head,
                facts.sides, facts.both, teller,
            )
        )
        if facts.both
        else None,
    )  # fmt: skip


def _change_said(one: Beside) -> Say:
    return Say("mine-compare-changed", one)


def _table(facts: Compared) -> Table:
    return Table(
        columns=(Say("mine-compare-what"), *facts.sides, Say("mine-compare-change")),
        rows=tuple(map(_row, facts.both)),
    )


def _row(one: Beside) -> tuple[Say, ...]:
    return one.what, _cell(one.earlier), _cell(one.later), one.said


def _cell(one: Stood) -> Say:
    return Say("mine-compare-judged", one) if one.judged else one.told


MINE_COMPARE = Command(
    name="mine compare",
    query=CompareQuery,
    stored=compare,
    tell=tell_compare,
    examples=("mine compare name:Pebble's box",),
    guide=("keeping-notes",),
)
