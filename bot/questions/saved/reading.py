"""Readings of an enclosure: written down, and taken away again.

Words: ``words/<language>/home.ftl``, ``mine-reading.ftl``, ``mine-unread.ftl``.
"""

from dataclasses import dataclass
from datetime import date
from enum import Enum, auto

from pydantic import ValidationError

from bot.asker import today
from bot.command import Command
from bot.desk import Desk
from bot.facts import Length, Say, Says, Temp, Uvi, degrees, metres, uvi
from bot.language.dates import read_date
from bot.language.errors import NotUnderstoodError
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.queries.mine import ReadingQuery, UnreadQuery
from bot.questions.saved.enclosures import enclosure_asked
from bot.questions.saved.refused import Why, refused
from bot.saved.keeper import KEPT_AS, Enclosure, Reading, kept_quantity
from calc.quantities import Quantity

__all__ = [
    "MINE_READING",
    "MINE_UNREAD",
    "ReadOnce",
    "Unwritten",
    "What",
    "Written",
    "day_of",
    "last_said",
    "read",
    "read_once",
    "read_said",
    "tell_read",
    "tell_unread",
    "unread",
    "what_said",
]

_COLD = (Quantity.BASKING_SURFACE, Quantity.WARM_AIR, Quantity.COOL_AIR, Quantity.NIGHT_AIR)
_EXAMPLES = {
    Quantity.UVI: "4.2",
    Quantity.BASKING_SURFACE: "103F",
    Quantity.WARM_AIR: "84F",
    Quantity.COOL_AIR: "79F",
    Quantity.NIGHT_AIR: "68F",
}


class What(Enum):
    """What a reading is of."""

    UVI = auto()
    BASKING_SURFACE = auto()
    WARM_AIR = auto()
    COOL_AIR = auto()
    NIGHT_AIR = auto()


@dataclass(frozen=True, slots=True)
class ReadOnce:
    """One reading: a UV index, with where it was read, or a temperature."""

    what: What
    uvi: Uvi | None
    at: Length | None
    temp: Temp | None

    @property
    def label(self) -> Say:
        """Return what it is of."""
        return what_said(self)

    @property
    def told(self) -> Say:
        """Return its value, and where it was taken."""
        return read_said(self)


def read_once(reading: Reading) -> ReadOnce:
    """Return a reading as facts."""
    what = What[reading.of.name]
    if reading.of is not Quantity.UVI:
        return ReadOnce(what, None, None, degrees(reading.value))
    at = reading.distance_m
    return ReadOnce(what, uvi(reading.value), metres(at) if at else None, None)


def read_said(told: ReadOnce) -> Say:
    """Return the value of a reading, and where it was taken."""
    return Say("home-uvi" if told.what is What.UVI else "home-temp", told)


def what_said(told: ReadOnce) -> Say:
    """Return what a reading is of."""
    return Say.by("home-what", told.what)


def last_said(told: ReadOnce) -> Say:
    """Return what the last reading of a kind is called."""
    return Say.by("home-last", told.what)


def day_of(command: str, text: str, now: date, option: str) -> date:
    """Return a day as typed, today where nothing was; a day that is not here yet is refused."""
    try:
        day = read_date(text or "today", now)
    except NotUnderstoodError as error:
        raise NotUnderstoodError(error.read, error.accepted, error.example, option) from error
    if day > now:
        raise refused(command, Why.TO_COME, f"{option}:{now}", option, text)
    return day


@dataclass(frozen=True, slots=True)
class Written:
    """The readings of a day that were written down, and those that they replaced.

    ``offer``: whether the group may have the UV index is asked now, for the only time.
    """

    name: str
    day: date
    readings: tuple[ReadOnce, ...]
    replaced: tuple[ReadOnce, ...]
    offer: bool = False

    @property
    def count(self) -> int:
        """Return how many were written down."""
        return len(self.readings)

    @property
    def typed_day(self) -> str:
        """Return the day as it can be typed."""
        return str(self.day)


async def read(query: ReadingQuery, context: Context, desk: Desk) -> Written:
    """Write the readings of one day down."""
    kept = await enclosure_asked(desk, query.name, "mine reading")
    day = day_of("mine reading", query.day, await today(desk), "day")
    readings = _readings(query, kept, day)
    replaced = await desk.store.enclosures.read(desk.keeper, kept.name, readings)
    await desk.store.cases.moved(desk.keeper, kept.name, desk.now)
    return Written(
        name=kept.name,
        day=day,
        readings=tuple(map(read_once, readings)),
        replaced=tuple(map(read_once, replaced or ())),
        offer=await _asks_once(desk, readings),
    )


async def _asks_once(desk: Desk, readings: tuple[Reading, ...]) -> bool:
    if desk.server is None or not any(r.of is Quantity.UVI and r.distance_m for r in readings):
        return False
    return await desk.store.pool.ask_once(desk.keeper, desk.now.date())


def _readings(query: ReadingQuery, kept: Enclosure, day: date) -> tuple[Reading, ...]:
    typed: list[tuple[Quantity, float, float | None, str]] = []
    if query.uvi is not None:
        at = query.distance.low if query.distance else kept.setup.distance_m
        typed.append((Quantity.UVI, query.uvi, at, f"{query.uvi:g}"))
    for of in _COLD:
        measure = getattr(query, KEPT_AS[of])
        if measure is not None:
            typed.append((of, measure.low, None, measure.text))
    line = f"mine reading name:{kept.name}"
    if not typed:
        raise refused("mine reading", Why.NO_READING, f"{line} uvi:4.2")
    readings = []
    for of, value, at, text in typed:
        try:
            readings.append(Reading(day=day, of=of, value=value, distance_m=at))
        except ValidationError as error:
            option = KEPT_AS[of]
            example = f"{line} {option}:{_EXAMPLES[of]}"
            raise refused("mine reading", Why.CANNOT_BE, example, option, text) from error
    return tuple(readings)


def tell_read(facts: Written) -> Layered:
    """Tell what was written down."""
    say = Says("mine-reading", facts)
    asked = (say("step-offer"),) if facts.offer else ()
    replaced = tuple(Row(say("replaced"), Say("home-labelled", one)) for one in facts.replaced)
    return Layered(
        command="mine reading",
        title=say("title"),
        brief=Brief(head=say("head")),
        steps=(*asked, say("step-show"), say("step-unread")),
        numbers=(*(Row(what_said(one), read_said(one)) for one in facts.readings), *replaced),
    )


@dataclass(frozen=True, slots=True)
class Unwritten:
    """How many readings of a day were taken away."""

    name: str
    day: date
    gone: int


async def unread(query: UnreadQuery, context: Context, desk: Desk) -> Unwritten:
    """Take the readings of a day away."""
    kept = await enclosure_asked(desk, query.name, "mine unread")
    day = day_of("mine unread", query.day, await today(desk), "day")
    of = kept_quantity(query.of) if query.of else None
    gone = await desk.store.enclosures.unread(desk.keeper, kept.name, day, of)
    return Unwritten(kept.name, day, gone or 0)


def tell_unread(facts: Unwritten) -> Layered:
    """Tell how many are gone."""
    say = Says("mine-unread", facts)
    return Layered(
        command="mine unread",
        title=say("title"),
        brief=Brief(head=say("head")),
        steps=(say("step"),),
    )


MINE_READING = Command(
    name="mine reading",
    form=True,
    query=ReadingQuery,
    stored=read,
    tell=tell_read,
    examples=(
        "mine reading name:Pebble's box uvi:4.2 distance:16in basking:103F cool:79F",
        "mine reading name:Pebble's box uvi:4.4 distance:16in day:2026-01-10",
    ),
    guide=("keeping-notes", "how-to-take-a-reading"),
)

MINE_UNREAD = Command(
    name="mine unread",
    deletes=True,
    query=UnreadQuery,
    stored=unread,
    tell=tell_unread,
    examples=("mine unread name:Pebble's box day:today of:cool",),
)
