"""The enclosures of a keeper: which one is meant, all of them listed, one of them taken away.

Words: ``words/<language>/mine-list.ftl``, ``mine-remove.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from bot.desk import Desk
from bot.facts import Moment, Name, Say, Says
from bot.kept.keeper import Enclosure
from bot.kept.reminders import About, Reminder, State
from bot.language.names import closest
from bot.layered import Brief, Layered, Row, Table
from bot.preferences import Context
from bot.queries.mine import ListQuery, RemoveQuery
from bot.questions.saved.refused import Why, refused
from bot.questions.shared import name_of
from bot.refusal import RefusedError

__all__ = [
    "EnclosureGone",
    "KeptBox",
    "KeptOfMine",
    "Waiting",
    "enclosure_asked",
    "list_of_mine",
    "remove",
    "tell_list",
    "tell_removed",
]

_SAVE = "mine save name:Pebble's box animal:bearded dragon"


async def enclosure_asked(desk: Desk, name: str, command: str) -> Enclosure:
    """Return the keeper's enclosure of this name, or the only one where no name was given."""
    names = await desk.store.enclosures.names(desk.keeper)
    wish = name or (names[0] if len(names) == 1 else "")
    found = await desk.store.enclosures.named(desk.keeper, wish) if wish else None
    if found is None:
        raise no_such(name, names, command)
    return found


def no_such(name: str, names: tuple[str, ...], command: str) -> RefusedError:
    """Return the refusal of a name that no enclosure has."""
    if not names:
        return refused(command, Why.NO_ENCLOSURE, _SAVE)
    near = closest(name, names) or names[0]
    why = Why.OTHER_ENCLOSURE if name else Why.WHICH_ENCLOSURE
    return refused(command, why, f"{command} name:{near}", "name", name, names)


@dataclass(frozen=True, slots=True)
class KeptBox:
    """An enclosure in the list: who lives in it, how often and when it was read last."""

    name: str
    animal: Name | None
    readings: int
    last: date | None


@dataclass(frozen=True, slots=True)
class Waiting:
    """A reminder in the list."""

    number: int
    about: About
    enclosure: str | None
    due: Moment


@dataclass(frozen=True, slots=True)
class KeptOfMine:
    """All that is kept for a keeper."""

    boxes: tuple[KeptBox, ...]
    waiting: tuple[Waiting, ...]

    @property
    def enclosures(self) -> int:
        """Return how many enclosures there are."""
        return len(self.boxes)

    @property
    def reminders(self) -> int:
        """Return how many reminders wait."""
        return len(self.waiting)


async def list_of_mine(query: ListQuery, context: Context, desk: Desk) -> KeptOfMine:
    """Find a keeper's enclosures and reminders; the query has no options."""
    enclosures = await desk.store.enclosures.all(desk.keeper)
    reminders = await desk.store.reminders.all(desk.keeper)
    return KeptOfMine(
        boxes=tuple(_box(kept) for kept in enclosures),
        waiting=tuple(waiting(r) for r in reminders if r.state is not State.STOPPED),
    )


def _box(kept: Enclosure) -> KeptBox:
    animal = kept.setup.animal
    return KeptBox(
        name=kept.name,
        animal=name_of(animal) if animal else None,
        readings=len(kept.readings),
        last=max((r.day for r in kept.readings), default=None),
    )


def waiting(reminder: Reminder) -> Waiting:
    """Return a reminder as facts."""
    due = Moment(reminder.due, reminder.zone)
    return Waiting(reminder.id, reminder.about, reminder.enclosure, due)


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
        numbers=tuple(_reminders(facts.waiting)),
        table=_boxes(facts.boxes) if facts.boxes else None,
    )


def _reminders(told: tuple[Waiting, ...]) -> Iterator[Row]:
    for one in told:
        yield Row(Say("mine-list-reminder", one), Say("mine-list-due", one))


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


@dataclass(frozen=True, slots=True)
class EnclosureGone:
    """An enclosure that was taken away, with what hung on it."""

    name: str
    readings: int


async def remove(query: RemoveQuery, context: Context, desk: Desk) -> EnclosureGone:
    """Take an enclosure away with all that hangs on it."""
    found = await desk.store.enclosures.named(desk.keeper, query.name)
    if found is None or not await desk.store.enclosures.remove(desk.keeper, query.name):
        names = await desk.store.enclosures.names(desk.keeper)
        raise no_such(query.name, names, "mine remove")
    return EnclosureGone(found.name, len(found.readings))


def tell_removed(facts: EnclosureGone) -> Layered:
    """Tell what is gone."""
    say = Says("mine-remove", facts)
    return Layered(
        command="mine remove",
        title=say("title"),
        brief=Brief(head=say("head"), range=(say("with"),)),
        steps=(say("step"),),
    )
