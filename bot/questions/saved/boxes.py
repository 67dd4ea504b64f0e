"""All enclosures of a keeper at one look: what each has, what is off, what is due.

Words: ``words/<language>/boxes.ftl``.
"""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import date, timedelta

from bot.command import Command
from bot.dangers.past_limits import merged
from bot.desk import Desk
from bot.facts import Name, Say, Says
from bot.language.uv_lamps import UvLamp
from bot.layered import Brief, Layered, Table
from bot.preferences import Context
from bot.queries.mine import ListQuery
from bot.questions.saved.beside import WEIGHT, Stood, stood
from bot.questions.saved.enclosures import no_such
from bot.questions.saved.reading import what_said
from bot.questions.saved.standing import animal_of
from bot.questions.saved.targets import note_told
from bot.questions.shared import name_of
from bot.reply import Alarm
from bot.saved.keeper import KEPT_AS, Enclosure, Reading
from bot.saved.reminders import ASKED_FOR, Reminder, State
from bot.saved.values import name_key
from calc.judgement import Verdict
from calc.quantities import Quantity
from calc.uv.decline import READ_AGAIN_DAYS, REPLACE_AFTER_DAYS, REPLACE_OTHERS_AFTER_DAYS

__all__ = ["MINE_BOXES", "BoxSeen", "BoxesSeen", "boxes", "is_worn", "last_alarms", "tell_boxes"]

# A reminder counts as due so long before it comes.
_SOON = timedelta(days=7)


@dataclass(frozen=True, slots=True)
class BoxOff:
    """A last reading that is not as it should be."""

    what: Say
    judged: Say


@dataclass(frozen=True, slots=True)
class BoxDue:
    """What is due for an enclosure: a new tube, a reading, how many reminders."""

    tube: date | None
    unread: bool
    reminders: int


@dataclass(frozen=True, slots=True)
class BoxSeen:
    """An enclosure at one look, what matters most of its readings first."""

    name: str
    animal: Name | None
    stood: tuple[Stood, ...]
    due: BoxDue

    @property
    def off(self) -> tuple[Say, ...]:
        """Return what is off, each in a few words."""
        return tuple(Say("boxes-off", one) for one in _off(self.stood))

    @property
    def due_said(self) -> tuple[Say, ...]:
        """Return what is due, each in a few words."""
        return tuple(_due(self.due))

    @property
    def off_count(self) -> int:
        """Return how much is off."""
        return len(self.off)

    @property
    def due_count(self) -> int:
        """Return how much is due."""
        return len(self.due_said)

    @property
    def worst(self) -> float:
        """Return how much that weighs which is off most."""
        return max((_weight(one) for one in self.stood), default=0.0)


@dataclass(frozen=True, slots=True)
class BoxesSeen:
    """All enclosures, those first in which something is off."""

    boxes: tuple[BoxSeen, ...]

    @property
    def count(self) -> int:
        """Return how many there are."""
        return len(self.boxes)

    @property
    def wrong(self) -> int:
        """Return in how many something is off."""
        return sum(bool(box.off) for box in self.boxes)

    @property
    def waiting(self) -> int:
        """Return for how many something is due."""
        return sum(bool(box.due_said) for box in self.boxes)

    @property
    def alarms(self) -> tuple[Alarm, ...]:
        """Return what cannot wait in any of them."""
        return merged(a for box in self.boxes for one in box.stood for a in one.alarms)


def _weight(one: Stood) -> float:
    return 0.0 if one.verdict is None else WEIGHT[one.verdict]


def _off(found: Sequence[Stood]) -> Iterator[BoxOff]:
    for one in found:
        if one.judged is not None and one.verdict is not Verdict.FINE:
            yield BoxOff(what_said(one.read), one.judged)


def _due(due: BoxDue) -> Iterator[Say]:
    if due.tube is not None:
        yield Say("boxes-due-tube", due)
    if due.unread:
        yield Say("boxes-due-reading", due)
    if due.reminders:
        yield Say("boxes-due-reminder", due)


async def boxes(query: ListQuery, context: Context, desk: Desk) -> BoxesSeen:
    """Look at all enclosures; the query has no options."""
    kept = await desk.store.enclosures.all(desk.keeper)
    if not kept:
        raise no_such("", (), "mine boxes")
    reminders = await desk.store.reminders.all(desk.keeper)
    soon = [
        one
        for one in reminders
        if one.about in ASKED_FOR and one.state is not State.STOPPED and one.due <= desk.now + _SOON
    ]
    await note_told(desk, context, *kept)
    seen = (_seen(box, soon, context) for box in kept)
    return BoxesSeen(tuple(sorted(seen, key=lambda box: -box.worst)))


def _newest(kept: Enclosure) -> dict[Quantity, Reading]:
    return {read.of: read for read in sorted(kept.readings, key=lambda read: read.day)}


def last_alarms(kept: Enclosure, context: Context) -> tuple[Alarm, ...]:
    """Return what cannot wait by the last readings of an enclosure."""
    animal = animal_of(kept.setup.animal, context)
    last = (stood(reading, animal) for reading in _newest(kept).values())
    return merged(alarm for one in last for alarm in one.alarms)


def _seen(kept: Enclosure, soon: Sequence[Reminder], context: Context) -> BoxSeen:
    animal, newest = animal_of(kept.setup.animal, context), _newest(kept)
    found = [stood(newest[of], animal) for of in KEPT_AS if of in newest]
    return BoxSeen(
        name=kept.name,
        animal=name_of(kept.setup.animal) if kept.setup.animal else None,
        stood=tuple(sorted(found, key=_weight, reverse=True)),
        due=BoxDue(
            tube=_worn_out(kept, context.day),
            unread=_is_unread(kept, newest.get(Quantity.UVI), context.day),
            reminders=sum(name_key(one.enclosure or "") == name_key(kept.name) for one in soon),
        ),
    )


def _worn_out(kept: Enclosure, now: date) -> date | None:
    """Return since when the tube hangs, where it is time for a new one by its age alone."""
    since = kept.setup.tube_since
    return since if is_worn(since, kept.setup.lamp, now) else None


def is_worn(since: date | None, lamp: UvLamp | None, now: date) -> bool:
    """Say whether it is time for a new UV lamp by its age alone; unknown of some kinds."""
    of_t5 = lamp in (None, UvLamp.T5_HO)
    days = REPLACE_AFTER_DAYS if of_t5 else REPLACE_OTHERS_AFTER_DAYS.get(lamp or "")
    return since is not None and days is not None and since + timedelta(days=days[1]) <= now


def _is_unread(kept: Enclosure, last: Reading | None, now: date) -> bool:
    """Say whether the UV under a kept lamp was not read for too long."""
    has_lamp = kept.setup.lamp is not None or kept.setup.tube_percent is not None
    return has_lamp and (last is None or last.day + timedelta(days=READ_AGAIN_DAYS[1]) <= now)


def tell_boxes(facts: BoxesSeen) -> Layered:
    """Tell in how many something is off, then each."""
    say = Says("boxes", facts)
    worst = [Say("boxes-worst", box) for box in facts.boxes if box.off]
    return Layered(
        command="mine boxes",
        title=say("title"),
        brief=Brief(head=say("head"), range=(*worst[:2], *([say("due")] if facts.waiting else []))),
        steps=(say("step-one"), say("step-lamps"), say("step-timer")),
        table=Table(
            (say("column-box"), say("column-off"), say("column-due")),
            tuple(map(_cells, facts.boxes)),
        ),
        guide=("keeping-notes",),
        alarms=facts.alarms,
    )


def _cells(box: BoxSeen) -> tuple[Say, ...]:
    say = Says("boxes", box)
    return say("box"), say("cell-off"), say("cell-due")


MINE_BOXES = Command(
    name="mine boxes",
    query=ListQuery,
    stored=boxes,
    tell=tell_boxes,
    examples=("mine boxes",),
    guide=("keeping-notes",),
)
