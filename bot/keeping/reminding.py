"""Reminders: made, listed, put off, taken away."""

from datetime import UTC, date, datetime, time, timedelta
from zoneinfo import ZoneInfo

from bot.desk import Desk
from bot.keeping.asker import local_now
from bot.keeping.history import next_reading_day
from bot.keeping.places import enclosure_asked
from bot.keeping.words import moment_told
from bot.kept.keeper import Enclosure
from bot.kept.reminders import About, Reminder, ReminderExport, State, Trouble
from bot.language.errors import NotUnderstoodError
from bot.language.moments import read_moment
from bot.language.zones import read_zone
from bot.preferences import Context
from bot.queries.mine import ListQuery
from bot.queries.remind import NumberQuery, RemindQuery, SnoozeQuery
from bot.reply import Reply, Table
from calc.uv.decline import READ_AGAIN_DAYS, REPLACE_AFTER_DAYS

__all__ = ["ABOUT_TOLD", "list_", "off", "remind", "snooze"]

ABOUT_TOLD = {
    About.METER: "read the UV meter",
    About.TUBE: "replace the UV tube",
    About.SEASON: "set the timer for the season",
    About.CHECK: "check the temperatures and the distance",
}
TROUBLE_TOLD = {
    Trouble.NONE: "",
    Trouble.DM_CLOSED: "stopped: your direct messages are closed",
    Trouble.CHANNEL_GONE: "the channel is gone, so it comes by direct message",
    Trouble.NO_RIGHT: "stopped: I may not write there",
    Trouble.REFUSED: "stopped: Discord refused it again and again",
}
# Without one of these nothing can be written into a channel.
_WRITING = frozenset({"View Channel", "Send Messages", "Send Messages in Threads"})
_MORNING = time(9, 0)
_CHECK_DAYS = 30
# The timer is looked at when the seasons turn.
_SEASONS = ((3, 1), (6, 1), (9, 1), (12, 1))


async def remind(query: RemindQuery, context: Context, desk: Desk) -> Reply:
    """Make a reminder; where no time was given, one that suits what it is about."""
    if query.zone:
        zone = read_zone(query.zone).key
        await desk.store.keepers.change(desk.keeper, zone=zone)
    now = await local_now(desk)
    kept = await _enclosure(query, desk)
    due = _moment(query.when, now) if query.when else _usual(query.about, kept, context, now)
    here = query.where == "here"
    if here and (desk.channel is None or desk.server is None):
        raise NotUnderstoodError(
            "here", "message, because this is no channel of a server", "where:message", "where"
        )
    if here and _WRITING & set(desk.lacking):
        raise NotUnderstoodError(
            "here", "message, because I may not write in this channel", "where:message", "where"
        )
    wanted = ReminderExport(
        about=query.about,
        enclosure=kept.name if kept else None,
        due=due.astimezone(UTC),
        zone=_zone(now),
        every_days=query.every,
    )
    made = await desk.store.reminders.add(
        desk.keeper,
        wanted,
        desk.server if here else None,
        desk.channel if here else None,
    )
    where = "in this channel" if here else "by direct message"
    return Reply(
        command="remind me",
        status="ok",
        title=f"Reminder {made.id}",
        answer=(
            f"I will remind you {where} on {moment_told(made.due, made.zone)} to "
            f"{_what(made)}{_again(made)}."
        ),
        steps=(
            f"Put it off: remind snooze number:{made.id} until:in 2 days",
            f"Take it away: remind off number:{made.id}",
        ),
        cautions=()
        if made.zone != "UTC"
        else ("I took UTC as your time zone; tell me yours: mine prefer zone:Europe/Berlin",),
    )


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
    return now.tzinfo.key if isinstance(now.tzinfo, ZoneInfo) else "UTC"


def _what(reminder: Reminder) -> str:
    of = f" of {reminder.enclosure}" if reminder.enclosure else ""
    return f"{ABOUT_TOLD[reminder.about]}{of}"


def _again(reminder: Reminder) -> str:
    return f", and every {reminder.every_days} days from then on" if reminder.every_days else ""


async def list_(query: ListQuery, context: Context, desk: Desk) -> Reply:
    """List a keeper's reminders; the query has no options."""
    reminders = await desk.store.reminders.all(desk.keeper)
    return Reply(
        command="remind list",
        status="ok",
        title="Your reminders",
        answer=f"{len(reminders)} reminder{'' if len(reminders) == 1 else 's'}.",
        table=Table(
            columns=("Number", "What", "When", "Where"),
            rows=tuple(_line(reminder) for reminder in reminders),
        )
        if reminders
        else None,
        steps=(
            f"Put one off: remind snooze number:{reminders[0].id} until:in 2 days",
            f"Take one away: remind off number:{reminders[0].id}",
        )
        if reminders
        else ("Make one: remind me about:meter when:in 3 months",),
    )


def _line(reminder: Reminder) -> tuple[str, ...]:
    when = moment_told(reminder.due, reminder.zone)
    where = "a channel" if reminder.channel else "direct message"
    trouble = TROUBLE_TOLD.get(reminder.trouble, "")
    if reminder.state is State.STOPPED or trouble:
        where = trouble or "stopped"
    return str(reminder.id), f"{_what(reminder)}{_again(reminder)}", when, where


async def snooze(query: SnoozeQuery, context: Context, desk: Desk) -> Reply:
    """Put a reminder off until a moment."""
    until = _moment(query.until, await local_now(desk), "until")
    kept = await desk.store.reminders.snooze(desk.keeper, query.number, until.astimezone(UTC))
    if kept is None:
        raise await _no_such(query.number, desk)
    return Reply(
        command="remind snooze",
        status="ok",
        title=f"Reminder {kept.id} is put off",
        answer=f"It comes on {moment_told(kept.due, kept.zone)}{_again(kept)}.",
        steps=("All of them: remind list",),
    )


async def off(query: NumberQuery, context: Context, desk: Desk) -> Reply:
    """Take a reminder away."""
    if not await desk.store.reminders.off(desk.keeper, query.number):
        raise await _no_such(query.number, desk)
    return Reply(
        command="remind off",
        status="ok",
        title=f"Reminder {query.number} is off",
        answer="It will not come any more.",
        steps=("What is left: remind list",),
    )


async def _no_such(number: int, desk: Desk) -> NotUnderstoodError:
    known = ", ".join(str(r.id) for r in await desk.store.reminders.all(desk.keeper))
    return NotUnderstoodError(
        str(number),
        f"the number of a reminder of yours ({known or 'you have none'})",
        "remind list",
        "number",
    )
