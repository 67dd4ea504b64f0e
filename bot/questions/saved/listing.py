"""All that is kept for a keeper, listed.

Words: ``words/<language>/mine-list.ftl``, ``remind.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from bot.command import Command
from bot.desk import Desk
from bot.facts import Name, Say, Says
from bot.layered import Brief, Layered, Row, Table
from bot.preferences import Context
from bot.queries.mine import ListQuery
from bot.questions.saved.reminder import Remembered, remembered
from bot.questions.shared import name_of
from bot.saved.keeper import Enclosure
from bot.saved.reminders import State

__all__ = ["MINE_LIST", "KeptBox", "KeptOfMine", "list_", "tell_list"]


@dataclass(frozen=True, slots=True)
class KeptBox:
    """An enclosure in the list: who lives in it, how often and when it was read last."""

    name: str
    animal: Name | None
    readings: int
    last: date | None


@dataclass(frozen=True, slots=True)
class KeptOfMine:
    """All that is kept for a keeper."""

    boxes: tuple[KeptBox, ...]
    waiting: tuple[Remembered, ...]
    given: int

    @property
    def enclosures(self) -> int:
        """Return how many enclosures there are."""
        return len(self.boxes)

    @property
    def reminders(self) -> int:
        """Return how many reminders wait."""
        return len(self.waiting)


async def list_(query: ListQuery, context: Context, desk: Desk) -> KeptOfMine:
    """Find a keeper's enclosures and reminders; the query has no options."""
    enclosures = await desk.store.enclosures.all(desk.keeper)
    reminders = await desk.store.reminders.all(desk.keeper)
    return KeptOfMine(
        boxes=tuple(_box(kept) for kept in enclosures),
        waiting=tuple(remembered(r) for r in reminders if r.state is not State.STOPPED),
        given=await desk.store.pool.given(desk.keeper),
    )


def _box(kept: Enclosure) -> KeptBox:
    animal = kept.setup.animal
    return KeptBox(
        name=kept.name,
        animal=name_of(animal) if animal else None,
        readings=len(kept.readings),
        last=max((r.day for r in kept.readings), default=None),
    )


def tell_list(facts: KeptOfMine) -> Layered:
    """Tell how much there is, then what it is."""
    say = Says("mine-list", facts)
    return Layered(
        command="mine list",
        title=say("title"),
        brief=Brief(head=say("head"), range=(say("alone"),)),
        steps=(
            say("step-look" if facts.boxes else "step-keep"),
            say("step-export"),
            say("step-forget"),
        ),
        numbers=(
            *_reminders(facts.waiting),
            *((Row(say("label-given"), say("given")),) if facts.given else ()),
        ),
        table=_boxes(facts.boxes) if facts.boxes else None,
    )


def _reminders(told: tuple[Remembered, ...]) -> Iterator[Row]:
    for one in told:
        yield Row(Say("remind-label", one), Say("remind-row", one))


def _boxes(boxes: tuple[KeptBox, ...]) -> Table:
    columns = (
        Say("mine-list-column-box"),
        Say("mine-list-column-animal"),
        Say("mine-list-column-readings"),
        Say("mine-list-column-last"),
    )
    return Table(columns, tuple(_cells(box) for box in boxes))


def _cells(box: KeptBox) -> tuple[Say, ...]:
    say = Says("mine-list", box)
    return say("box"), say("animal"), say("readings"), say("last")


MINE_LIST = Command(
    name="mine list",
    query=ListQuery,
    stored=list_,
    tell=tell_list,
    examples=("mine list",),
    guide=("keeping-notes",),
)
