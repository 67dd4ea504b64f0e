"""Reminders as rows: written for a keeper, and read back as values."""

from collections.abc import Mapping, Sequence
from datetime import datetime
from typing import Any

from sqlalchemy import func, insert, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.enclosures import enclosure_row
from bot.database.errors import Full, LimitError
from bot.database.tables import EnclosureRow, ReminderRow
from bot.saved.reminders import (
    ASKED_FOR,
    MOST_REMINDERS,
    About,
    Reminder,
    ReminderExport,
    State,
    Trouble,
)
from bot.saved.targets import TargetMoved, joined
from bot.saved.values import name_key

__all__ = [
    "OPEN",
    "add_reminder",
    "put_reminders",
    "read_reminders",
    "remind_at_once",
    "reminders_where",
]

OPEN = (State.WAITING.value, State.SENDING.value)
"""The states of what is still to be delivered."""

_NEW = {
    "occurrence": 1,
    "state": State.WAITING.value,
    "attempt": 0,
    "failures": 0,
    "claimed_by": "",
    "trouble": Trouble.NONE.value,
}


async def add_reminder(
    session: AsyncSession,
    keeper: int,
    wanted: ReminderExport,
    server: int | None = None,
    channel: int | None = None,
) -> ReminderRow:
    """Write a reminder of a held keeper; an enclosure that is not there is left out."""
    await _hold_to_limit(session, keeper, 1)
    about = await enclosure_row(session, keeper, wanted.enclosure or "")
    told = _told(keeper, wanted, about.id if about else None)
    row = ReminderRow(**told, server_id=server, channel_id=channel)
    session.add(row)
    await session.flush()
    return row


async def put_reminders(
    session: AsyncSession,
    keeper: int,
    wanted: Sequence[ReminderExport],
    enclosures: Mapping[str, int],
) -> None:
    """Write reminders of a held keeper, by direct message; ``enclosures`` are rows by their key."""
    if not wanted:
        return
    await _hold_to_limit(session, keeper, len(wanted))
    rows = [_told(keeper, one, enclosures.get(name_key(one.enclosure or ""))) for one in wanted]
    await session.execute(insert(ReminderRow), rows)


async def _hold_to_limit(session: AsyncSession, keeper: int, more: int) -> None:
    counted = select(func.count()).where(
        ReminderRow.keeper_id == keeper,
        ReminderRow.state.in_(OPEN),
        ReminderRow.about.in_(ASKED_FOR),
    )
    if (await session.scalars(counted)).one() + more > MOST_REMINDERS:
        raise LimitError(MOST_REMINDERS, Full.REMINDERS)


def _told(keeper: int, wanted: ReminderExport, enclosure: int | None) -> dict[str, object]:
    return {
        "keeper_id": keeper,
        "enclosure_id": enclosure,
        "about": wanted.about.value,
        "due_at": wanted.due,
        "zone": wanted.zone,
        "every_days": wanted.every_days,
        "try_at": wanted.due,
        **_NEW,
    }


async def remind_at_once(
    session: AsyncSession, keeper: int, about: About, due: datetime, **of: Any
) -> None:
    """Write a reminder that comes by itself, or bring the one that waits already up to date.

    ``of`` are the columns that tell of what: an enclosure, a case, what moved. One is never two.
    """
    waiting = select(ReminderRow).where(
        ReminderRow.keeper_id == keeper,
        ReminderRow.about == about.value,
        ReminderRow.state == State.WAITING.value,
        ReminderRow.enclosure_id == of.get("enclosure_id"),
        ReminderRow.case_id.is_not_distinct_from(of.get("case_id")),
    )
    row = (await session.scalars(waiting.with_for_update())).first()
    if row is None:
        told = {"keeper_id": keeper, "about": about.value, "due_at": due, "zone": "UTC", **of}
        session.add(ReminderRow(**(_NEW | told | {"try_at": due})))
        return
    if of.get("moved"):
        both = (map(TargetMoved.model_validate, moved) for moved in (row.moved or (), of["moved"]))
        row.moved = [one.model_dump(mode="json") for one in joined(*map(tuple, both))]
    if row.try_at > due:
        row.due_at = row.try_at = due


async def read_reminders(session: AsyncSession, keeper: int) -> tuple[Reminder, ...]:
    """Return a keeper's reminders that are not done, the next one first."""
    return await reminders_where(
        session,
        ReminderRow.keeper_id == keeper,
        ReminderRow.state != State.DONE.value,
        # What goes to the channel of the helpers is nobody's to put off.
        ReminderRow.about != About.SHARED.value,
    )


async def reminders_where(session: AsyncSession, *conditions: object) -> tuple[Reminder, ...]:
    """Return the reminders of these conditions, the next one first."""
    rows = await session.execute(
        select(ReminderRow, EnclosureRow.name)
        .outerjoin(EnclosureRow, ReminderRow.enclosure_id == EnclosureRow.id)
        .where(*conditions)  # type: ignore[arg-type]
        .order_by(ReminderRow.due_at, ReminderRow.id)
    )
    return tuple(_reminder(row, name) for row, name in rows)


def _reminder(row: ReminderRow, enclosure: str | None) -> Reminder:
    return Reminder.model_validate(
        {
            "id": row.id,
            "keeper": row.keeper_id,
            "about": row.about,
            "enclosure": enclosure,
            "due": row.due_at,
            "zone": row.zone,
            "every_days": row.every_days,
            "server": row.server_id,
            "channel": row.channel_id,
            "occurrence": row.occurrence,
            "state": row.state,
            "trouble": row.trouble,
            "case": row.case_id,
            "moved": row.moved or (),
        }
    )
