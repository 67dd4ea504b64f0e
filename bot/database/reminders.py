"""Reminders: kept, claimed by one process at a time, delivered once, snoozed, put off.

A claim is a lease. A process that dies with one leaves it to run out; the next claim says that
it is unsure whether the reminder was sent, and whoever delivers has to look before sending.
"""

from datetime import datetime, timedelta

from sqlalchemy import delete, func, or_, select, update
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.engine import Database
from bot.database.keepers import hold_keeper
from bot.database.reminder_rows import OPEN, add_reminder, read_reminders, reminders_where
from bot.database.servers import hold_server
from bot.database.tables import ReminderRow
from bot.saved.reminders import Due, Reminder, ReminderExport, State, Trouble, next_due

__all__ = ["LEASE", "Reminders"]

LEASE = timedelta(minutes=2)
"""How long a process may take to deliver what it claimed."""

DONE_KEPT = timedelta(days=30)
"""How long a delivered reminder can still be snoozed."""


class Reminders:
    """The reminders of all keepers."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def all(self, keeper: int) -> tuple[Reminder, ...]:
        """Return a keeper's reminders that are not done, the next one first."""
        async with self._database.reading() as session:
            return await read_reminders(session, keeper)

    async def named(self, keeper: int, number: int) -> Reminder | None:
        """Return a keeper's reminder of this number, done or not."""
        async with self._database.reading() as session:
            return await _one(session, keeper, number)

    async def add(
        self, keeper: int, wanted: ReminderExport, server: int | None, channel: int | None
    ) -> Reminder:
        """Keep a reminder, by direct message where no channel is given."""
        async with self._database.writing() as session:
            await hold_keeper(session, self._database, keeper)
            if server is not None:
                await hold_server(session, self._database, server)
            row = await add_reminder(session, keeper, wanted, server, channel)
            return await _found(session, keeper, row.id)

    async def snooze(self, keeper: int, number: int, until: datetime) -> Reminder | None:
        """Put a reminder off until a moment; None where the keeper has no such reminder."""
        async with self._database.writing() as session:
            row = await _held(session, keeper, number)
            if row is None:
                return None
            row.due_at = row.try_at = until
            row.occurrence += 1
            row.state, row.attempt, row.trouble = State.WAITING.value, 0, Trouble.NONE.value
            await session.flush()
            return await _found(session, keeper, number)

    async def off(self, keeper: int, number: int) -> bool:
        """Delete a reminder, and say whether it was there."""
        async with self._database.writing() as session:
            gone = await session.scalars(
                delete(ReminderRow)
                .where(ReminderRow.keeper_id == keeper, ReminderRow.id == number)
                .returning(ReminderRow.id)
            )
            return bool(gone.all())

    # --- delivery ----------------------------------------------------------------------------

    async def claim(self, by: str, now: datetime, most: int) -> tuple[Due, ...]:
        """Claim reminders that are due and in nobody's hands, for one lease."""
        wanted = select(ReminderRow).where(ReminderRow.state.in_(OPEN), ReminderRow.try_at <= now)
        async with self._database.writing() as session:
            rows = (
                await session.scalars(
                    wanted.order_by(ReminderRow.try_at)
                    .limit(most)
                    .with_for_update(skip_locked=True)
                )
            ).all()
            unsure = {row.id: row.attempt > 0 for row in rows}
            failures = {row.id: row.failures for row in rows}
            for row in rows:
                row.state, row.claimed_by = State.SENDING.value, by
                row.attempt += 1
                row.try_at = now + LEASE
            await session.flush()
            claimed = await reminders_where(session, ReminderRow.id.in_(unsure))
            return tuple(
                Due(reminder=r, unsure=unsure[r.id], failures=failures[r.id]) for r in claimed
            )

    async def delivered(self, reminder: Reminder, by: str, now: datetime) -> bool:
        """Note a delivery: done, or waiting for the next time; False if the claim was lost."""
        async with self._database.writing() as session:
            row = await _claimed(session, reminder, by)
            if row is None:
                return False
            row.attempt = row.failures = 0
            row.state = State.DONE.value
            if row.every_days is not None:
                row.due_at = row.try_at = next_due(row.due_at, row.zone, row.every_days, now)
                row.occurrence += 1
                row.state = State.WAITING.value
            else:
                row.try_at = now
            return True

    async def failed(self, reminder: Reminder, by: str, again: datetime) -> int:
        """Note that nothing was sent, and when to try again; return how often that was so."""
        async with self._database.writing() as session:
            row = await _claimed(session, reminder, by)
            if row is None:
                return 0
            row.state, row.attempt, row.try_at = State.WAITING.value, 0, again
            row.failures += 1
            return row.failures

    async def released(self, due: Due, by: str, now: datetime) -> None:
        """Give back what was claimed and not sent, so that it is claimed again at once."""
        async with self._database.writing() as session:
            row = await _claimed(session, due.reminder, by)
            if row is not None:
                # What an earlier claim left unsure stays so.
                row.state, row.try_at, row.attempt = State.WAITING.value, now, int(due.unsure)

    async def by_message(self, reminder: Reminder, by: str, now: datetime) -> None:
        """Turn to direct messages, because the channel cannot be written to any more."""
        async with self._database.writing() as session:
            row = await _claimed(session, reminder, by)
            if row is not None:
                row.channel_id = row.server_id = None
                row.trouble = Trouble.CHANNEL_GONE.value
                row.state, row.try_at = State.WAITING.value, now
                row.attempt = row.failures = 0

    async def channel_gone(self, channel: int) -> None:
        """Turn what would go into a deleted channel to direct messages, each at its own time."""
        async with self._database.writing() as session:
            # What is claimed just now learns of it from Discord.
            await session.execute(
                update(ReminderRow)
                .where(
                    ReminderRow.channel_id == channel,
                    ReminderRow.state == State.WAITING.value,
                )
                .values(channel_id=None, server_id=None, trouble=Trouble.CHANNEL_GONE.value)
            )

    async def stop(self, reminder: Reminder, by: str, trouble: Trouble) -> None:
        """Give up on a reminder, and keep why."""
        async with self._database.writing() as session:
            row = await _claimed(session, reminder, by)
            if row is not None:
                row.state, row.trouble = State.STOPPED.value, trouble.value

    async def next_try(self) -> datetime | None:
        """Return when the next reminder is to be tried, if there is one."""
        async with self._database.reading() as session:
            wanted = select(func.min(ReminderRow.try_at)).where(ReminderRow.state.in_(OPEN))
            return (await session.scalars(wanted)).one()

    async def sweep(self, now: datetime) -> int:
        """Delete what was delivered long ago, and return how many."""
        async with self._database.writing() as session:
            gone = await session.scalars(
                delete(ReminderRow)
                .where(
                    or_(
                        ReminderRow.state == State.DONE.value,
                        ReminderRow.state == State.STOPPED.value,
                    ),
                    ReminderRow.try_at <= now - DONE_KEPT,
                )
                .returning(ReminderRow.id)
            )
            return len(gone.all())


async def _one(session: AsyncSession, keeper: int, number: int) -> Reminder | None:
    found = await reminders_where(
        session, ReminderRow.keeper_id == keeper, ReminderRow.id == number
    )
    return found[0] if found else None


async def _found(session: AsyncSession, keeper: int, number: int) -> Reminder:
    found = await _one(session, keeper, number)
    if found is None:
        raise LookupError(number)
    return found


async def _held(session: AsyncSession, keeper: int, number: int) -> ReminderRow | None:
    wanted = select(ReminderRow).where(ReminderRow.keeper_id == keeper, ReminderRow.id == number)
    return (await session.scalars(wanted.with_for_update())).one_or_none()


async def _claimed(session: AsyncSession, reminder: Reminder, by: str) -> ReminderRow | None:
    """Return the row of a claim that still holds."""
    wanted = select(ReminderRow).where(
        ReminderRow.id == reminder.id,
        ReminderRow.occurrence == reminder.occurrence,
        ReminderRow.state == State.SENDING.value,
        ReminderRow.claimed_by == by,
    )
    return (await session.scalars(wanted.with_for_update())).one_or_none()
