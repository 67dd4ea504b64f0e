"""Cases: enclosures shared with the helpers of a group, what these advised, and who is reminded.

Whoever looks in comes through the group and the channel that the keeper agreed to. A case goes
with its enclosure, with its keeper and with its group.
"""

from collections.abc import Sequence
from datetime import datetime, timedelta

from sqlalchemy import ColumnElement, delete, func, insert, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.enclosures import enclosure_row, enclosures_where
from bot.database.engine import Database
from bot.database.errors import Full, LimitError
from bot.database.keepers import hold_keeper
from bot.database.reminder_rows import OPEN, remind_at_once
from bot.database.servers import hold_server
from bot.database.tables import AdviceRow, CaseRow, EnclosureRow, ReminderRow
from bot.saved.cases import MOST_ADVICE, MOST_CASES, REST, Advice, Case, Given
from bot.saved.keeper import Enclosure, Reading
from bot.saved.reminders import About

__all__ = ["Cases", "read_cases"]

_LOOK_AGAIN = timedelta(days=7)
"""When a helper is reminded of a case in which nothing moved."""


async def read_cases(session: AsyncSession, *conditions: ColumnElement[bool]) -> tuple[Case, ...]:
    """Return the cases of these conditions, the oldest first."""
    rows = (
        await session.execute(
            select(CaseRow, EnclosureRow.keeper_id)
            .join(EnclosureRow, CaseRow.enclosure_id == EnclosureRow.id)
            .where(*conditions)
            .order_by(CaseRow.id)
        )
    ).all()
    if not rows:
        return ()
    boxes = await enclosures_where(
        session, EnclosureRow.id.in_([row.enclosure_id for row, _ in rows])
    )
    numbers = [row.id for row, _ in rows]
    advised = select(AdviceRow).where(AdviceRow.case_id.in_(numbers)).order_by(AdviceRow.id)
    given: dict[int, list[Given]] = {number: [] for number in numbers}
    for one in await session.scalars(advised):
        told = {"day": one.day, "what": one.what, "of": one.of, "value": one.value}
        given[one.case_id].append(Given.model_validate(told | {"helper": one.helper}))
    return tuple(
        Case.model_validate(
            {
                "number": row.id,
                "server": row.server_id,
                "channel": row.channel_id,
                "keeper": keeper,
                "opened": row.opened_at,
                "moved": row.moved_at,
                "enclosure": boxes[row.enclosure_id],
                "before": row.before,
                "advice": tuple(given[row.id]),
            }
        )
        for row, keeper in rows
    )


class Cases:
    """The cases of all groups."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def share(
        self, keeper: int, name: str, server: int, channel: int | None, now: datetime
    ) -> Case | None:
        """Share an enclosure with the helpers of a group; None where there is no such enclosure.

        One that was shared already is shared here from now on, with nobody else.
        """
        async with self._database.writing() as session:
            await hold_keeper(session, self._database, keeper)
            await hold_server(session, self._database, server)
            box = await enclosure_row(session, keeper, name)
            if box is None:
                return None
            row = await _row(session, CaseRow.enclosure_id == box.id)
            if row is not None and (row.server_id, row.channel_id) != (server, channel):
                # Other people: nothing that was said to the first goes to them.
                await session.delete(row)
                await session.flush()
                row = None
            if row is None:
                counted = select(func.count()).where(CaseRow.server_id == server)
                if (await session.scalars(counted)).one() >= MOST_CASES:
                    raise LimitError(MOST_CASES, Full.CASES)
                kept = (await enclosures_where(session, EnclosureRow.id == box.id))[box.id]
                row = CaseRow(server_id=server, enclosure_id=box.id, channel_id=channel)
                row.opened_at, row.before = now, _last(kept)
                session.add(row)
                row.moved_at = now
                await session.flush()
                if channel is not None:
                    where = {"server_id": server, "channel_id": channel}
                    of = {"enclosure_id": box.id, "case_id": row.id, **where}
                    await remind_at_once(session, keeper, About.SHARED, now, **of)
            row.moved_at = now
            await session.flush()
            return (await read_cases(session, CaseRow.id == row.id))[0]

    async def of_keeper(self, keeper: int) -> tuple[Case, ...]:
        """Return the cases of a keeper's enclosures."""
        async with self._database.reading() as session:
            return await read_cases(session, EnclosureRow.keeper_id == keeper)

    async def of_group(self, server: int, channel: int | None) -> tuple[Case, ...]:
        """Return the cases that are shared with the helpers of a group in this channel."""
        async with self._database.reading() as session:
            return await read_cases(session, *_there(server, channel))

    async def advise(
        self,
        server: int,
        channel: int | None,
        number: int,
        helper: int,
        advice: Sequence[Advice],
        now: datetime,
    ) -> Case | None:
        """Keep what a helper advises, and remind both sides; None where there is no such case."""
        async with self._database.writing() as session:
            row = await _row(session, CaseRow.id == number, *_there(server, channel))
            if row is None:
                return None
            counted = select(func.count()).where(AdviceRow.case_id == number)
            if (await session.scalars(counted)).one() + len(advice) > MOST_ADVICE:
                raise LimitError(MOST_ADVICE, Full.ADVICE)
            told = [one.model_dump(mode="json") | {"day": one.day} for one in advice]
            of = {"case_id": number, "helper": helper}
            await session.execute(insert(AdviceRow), [of | one for one in told])
            row.moved_at = now
            await hold_keeper(session, self._database, helper)
            await _remind_helper(session, row, helper, now + _LOOK_AGAIN)
            keeper = await _keeper_of(session, row)
            box = {"enclosure_id": row.enclosure_id, "case_id": row.id}
            again = _LOOK_AGAIN.days
            await remind_at_once(session, keeper, About.ADVISED, now, every_days=again, **box)
            await session.flush()
            return (await read_cases(session, CaseRow.id == number))[0]

    async def moved(self, keeper: int, name: str, now: datetime) -> None:
        """Note that a keeper changed a shared enclosure; its helpers are reminded, once each."""
        async with self._database.writing() as session:
            box = await enclosure_row(session, keeper, name)
            row = None if box is None else await _row(session, CaseRow.enclosure_id == box.id)
            if row is None:
                return
            row.moved_at = now
            helpers = select(AdviceRow.helper).where(
                AdviceRow.case_id == row.id, AdviceRow.helper.is_not(None)
            )
            for helper in (await session.scalars(helpers.distinct())).all():
                if helper is not None:
                    await _remind_helper(session, row, helper, now)
            await session.flush()
            (case,) = await read_cases(session, CaseRow.id == row.id)
            if not case.open_advice:
                # Nothing is open any more, so nobody is asked to look.
                await session.execute(
                    delete(ReminderRow).where(
                        ReminderRow.case_id == row.id,
                        ReminderRow.about == About.ADVISED.value,
                        ReminderRow.state.in_(OPEN),
                    )
                )

    async def end_of_keeper(self, keeper: int, name: str) -> bool:
        """End the case of a keeper's enclosure, and say whether there was one."""
        async with self._database.writing() as session:
            box = await enclosure_row(session, keeper, name)
            row = None if box is None else await _row(session, CaseRow.enclosure_id == box.id)
            if row is None:
                return False
            await session.delete(row)
        await self._database.settle()
        return True

    async def end(self, server: int, channel: int | None, number: int, now: datetime) -> str | None:
        """End a case for the helpers, and tell its keeper; return the name of its enclosure."""
        async with self._database.writing() as session:
            row = await _row(session, CaseRow.id == number, *_there(server, channel))
            if row is None:
                return None
            keeper = await _keeper_of(session, row)
            (case,) = await read_cases(session, CaseRow.id == number)
            await remind_at_once(session, keeper, About.ENDED, now, enclosure_id=row.enclosure_id)
            await session.delete(row)
        await self._database.settle()
        return case.enclosure.name

    async def sweep(self, now: datetime) -> int:
        """Forget the cases in which nothing moved for long, and return how many."""
        async with self._database.writing() as session:
            gone = await session.scalars(
                delete(CaseRow).where(CaseRow.moved_at <= now - REST).returning(CaseRow.id)
            )
            return len(gone.all())


async def _row(session: AsyncSession, *conditions: ColumnElement[bool]) -> CaseRow | None:
    wanted = select(CaseRow).where(*conditions).with_for_update()
    return (await session.scalars(wanted)).one_or_none()


def _there(server: int, channel: int | None) -> tuple[ColumnElement[bool], ...]:
    return CaseRow.server_id == server, CaseRow.channel_id.is_not_distinct_from(channel)


async def _keeper_of(session: AsyncSession, row: CaseRow) -> int:
    wanted = select(EnclosureRow.keeper_id).where(EnclosureRow.id == row.enclosure_id)
    return (await session.scalars(wanted)).one()


async def _remind_helper(session: AsyncSession, row: CaseRow, helper: int, due: datetime) -> None:
    of = {"enclosure_id": row.enclosure_id, "case_id": row.id}
    await remind_at_once(session, helper, About.CASE, due, **of)


def _last(kept: Enclosure) -> list[dict[str, object]]:
    """Return the newest reading of each kind, as it is kept."""
    newest: dict[object, Reading] = {}
    for reading in sorted(kept.readings, key=lambda one: one.day):
        newest[reading.of] = reading
    return [reading.model_dump(mode="json", exclude_none=True) for reading in newest.values()]
