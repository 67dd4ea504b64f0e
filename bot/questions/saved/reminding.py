"""Reminders: made, listed, put off, taken away. Words: ``words/<language>/remind.ftl``."""

from dataclasses import dataclass
from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from bot.asker import local_now
from bot.command import Command
from bot.desk import Desk
from bot.facts import Say, Says
from bot.language.errors import NotUnderstoodError
from bot.language.moments import read_moment
from bot.language.zones import read_zone
from bot.layered import Brief, Care, Layered, Table
from bot.preferences import Context
from bot.queries.mine import ListQuery
from bot.queries.remind import NumberQuery, RemindQuery, SnoozeQuery
from bot.questions.saved.enclosures import enclosure_asked
from bot.questions.saved.refused import Why, refused
from bot.questions.saved.reminder import Remembered, remembered
from bot.questions.saved.trend import next_reading_day
from bot.refusal import RefusedError
from bot.saved.keeper import Enclosure
from bot.saved.reminders import About, ReminderExport
from calc.uv.decline import READ_AGAIN_DAYS, REPLACE_AFTER_DAYS

__all__ = [
    "REMIND_LIST",
    "REMIND_ME",
    "REMIND_OFF",
    "REMIND_SNOOZE",
    "NoReminder",
    "Reminders",
    "list_",
    "off",
    "remind",
    "snooze",
    "tell_list",
    "tell_off",
    "tell_remind",
    "tell_snooze",
]

_MORNING = time(9, 0)
_CHECK_DAYS = 30
# The timer is looked at when the seasons turn.
_SEASONS = ((3, 1), (6, 1), (9, 1), (12, 1))
_NO_ZONE = "UTC"


async def remind(query: RemindQuery, context: Context, desk: Desk) -> Remembered:
    """Make a reminder; where no time was given, one that suits what it is about."""
    if query.zone:
        zone = read_zone(query.zone).key
        await desk.store.keepers.change(desk.keeper, zone=zone)
    now = await local_now(desk)
    kept = await _enclosure(query, desk)
    due = _moment(query.when, now) if query.when else _usual(query.about, kept, context, now)
    here = query.where == "here"
    if here:
        _check_the_channel(desk, query.about)
    wanted = ReminderExport(
        about=query.about,
        enclosure=kept.name if kept else None,
        due=due.astimezone(UTC),
        zone=_zone(now),
        every_days=query.every,
    )
    server, channel = (desk.server, desk.channel) if here else (None, None)
    return remembered(await desk.store.reminders.add(desk.keeper, wanted, server, channel))


def _check_the_channel(desk: Desk, about: About) -> None:
    why = None
    if desk.channel is None or desk.server is None:
        why = Why.NO_CHANNEL
    elif not desk.may_write:
        why = Why.NO_RIGHT
    if why is not None:
        example = f"remind me about:{about.value} where:message"
        raise refused("remind me", why, example, "where")


async def _enclosure(query: RemindQuery, desk: Desk) -> Enclosure | None:
    if query.name:
        return await enclosure_asked(desk, query.name, "remind me about:meter")
    names = await desk.store.enclosures.names(desk.keeper)
    return await desk.store.enclosures.named(desk.keeper, names[0]) if len(names) == 1 else None


def _moment(text: str, now: datetime, option: str = "when") -> datetime:
    try:
        return read_moment(text, now)
    except NotUnderstoodError as error:
        raise NotUnderstoodError(error.read, error.accepted, error.example, option) from error


def _usual(about: About, kept: Enclosure | None, context: Context, now: datetime) -> datetime:
    """Return the moment that suits what a reminder is about."""
    today = now.date()
    if about is About.METER:
        day = next_reading_day(kept, context) if kept else None
        day = day or today + timedelta(days=READ_AGAIN_DAYS[1])
    elif about is About.TUBE:
        since = kept.setup.tube_since if kept and kept.setup.tube_since else today
        day = since + timedelta(days=REPLACE_AFTER_DAYS[1])
    elif about is About.SEASON:
        turns = [date(today.year + y, month, day) for y in (0, 1) for month, day in _SEASONS]
        day = next(turn for turn in turns if turn > today)
    else:
        day = today + timedelta(days=_CHECK_DAYS)
    # What is overdue is due tomorrow.
    return datetime.combine(max(day, today + timedelta(days=1)), _MORNING, now.tzinfo)


def _zone(now: datetime) -> str:
    return now.tzinfo.key if isinstance(now.tzinfo, ZoneInfo) else _NO_ZONE


def tell_remind(facts: Remembered) -> Layered:
    """Tell when and where it comes."""
    say = Says("remind", facts)
    is_guessed = facts.due.zone == _NO_ZONE
    return Layered(
        command="remind me",
        title=say("label"),
        brief=Brief(head=say("will"), range=(say("for"), say("where"))),
        steps=(say("step-snooze"), say("step-off")),
        care=(Care(say("care-zone")),) if is_guessed else (),
    )


@dataclass(frozen=True, slots=True)
class Reminders:
    """A keeper's reminders."""

    all: tuple[Remembered, ...]

    @property
    def count(self) -> int:
        """Return how many there are."""
        return len(self.all)


async def list_(query: ListQuery, context: Context, desk: Desk) -> Reminders:
    """Find a keeper's reminders; the query has no options."""
    return Reminders(tuple(map(remembered, await desk.store.reminders.all(desk.keeper))))


def tell_list(facts: Reminders) -> Layered:
    """Tell how many there are, and which."""
    say = Says("remind", facts)
    first = facts.all[0] if facts.all else None
    steps = (Say("remind-step-snooze", first), Say("remind-step-off", first))
    return Layered(
        command="remind list",
        title=say("list-title"),
        brief=Brief(head=say("count")),
        steps=steps if first else (say("step-make"),),
        table=_table(facts.all) if first else None,
    )


def _table(told: tuple[Remembered, ...]) -> Table:
    columns = (
        Say("remind-column-number"),
        Say("remind-column-what"),
        Say("remind-column-when"),
        Say("remind-column-where"),
    )
    return Table(columns, tuple(_cells(one) for one in told))


def _cells(one: Remembered) -> tuple[Say, ...]:
    say = Says("remind", one)
    return say("number"), say("repeated"), say("when"), say("trouble")


async def snooze(query: SnoozeQuery, context: Context, desk: Desk) -> Remembered:
    """Put a reminder off until a moment."""
    until = _moment(query.until, await local_now(desk), "until")
    kept = await desk.store.reminders.snooze(desk.keeper, query.number, until.astimezone(UTC))
    if kept is None:
        raise await _no_such("remind snooze", query.number, desk)
    return remembered(kept)


def tell_snooze(facts: Remembered) -> Layered:
    """Tell when it comes now."""
    say = Says("remind", facts)
    return Layered(
        command="remind snooze",
        title=say("snoozed"),
        brief=Brief(head=say("comes"), range=(say("every"),) if facts.every else ()),
        steps=(say("step-all"),),
    )


@dataclass(frozen=True, slots=True)
class NoReminder:
    """A reminder that was taken away."""

    number: int


async def off(query: NumberQuery, context: Context, desk: Desk) -> NoReminder:
    """Take a reminder away."""
    if not await desk.store.reminders.off(desk.keeper, query.number):
        raise await _no_such("remind off", query.number, desk)
    return NoReminder(query.number)


def tell_off(facts: NoReminder) -> Layered:
    """Tell that it is gone."""
    say = Says("remind", facts)
    return Layered(
        command="remind off",
        title=say("off"),
        brief=Brief(head=say("gone")),
        steps=(say("step-left"),),
    )


async def _no_such(command: str, number: int, desk: Desk) -> RefusedError:
    known = tuple(str(r.id) for r in await desk.store.reminders.all(desk.keeper))
    if not known:
        return refused(command, Why.NO_REMINDER, "remind me about:meter")
    return refused(command, Why.OTHER_REMINDER, "remind list", "number", str(number), known)


REMIND_ME = Command(
    name="remind me",
    query=RemindQuery,
    stored=remind,
    tell=tell_remind,
    examples=("remind me about:meter when:in 3 months", "remind me about:season"),
    guide=("keeping-notes",),
)

REMIND_LIST = Command(
    name="remind list",
    query=ListQuery,
    stored=list_,
    tell=tell_list,
    examples=("remind list",),
)

REMIND_SNOOZE = Command(
    name="remind snooze",
    query=SnoozeQuery,
    stored=snooze,
    tell=tell_snooze,
    examples=("remind snooze number:1 until:in 2 days",),
)

REMIND_OFF = Command(
    name="remind off",
    deletes=True,
    query=NumberQuery,
    stored=off,
    tell=tell_off,
    examples=("remind off number:1",),
)
