"""Exports and imports: everything of a keeper or of a group as one checked value.

An import adds and replaces by name and leaves the rest; it is kept whole or not at all.
"""

from datetime import datetime

from bot.database.boards import put_boards, read_boards
from bot.database.cases import read_cases
from bot.database.enclosures import put_enclosures, read_enclosures
from bot.database.engine import Database
from bot.database.figures import put_figures, read_own
from bot.database.keepers import hold_keeper, read_keeper
from bot.database.pool import put_pooled, read_given
from bot.database.public import put_rules, read_rules
from bot.database.readings import put_readings
from bot.database.reminder_rows import put_reminders, read_reminders
from bot.database.servers import (
    hold_server,
    put_channels,
    put_settings,
    read_channels,
    read_settings,
)
from bot.database.spares import put_spares, read_spares
from bot.database.tables import EnclosureRow, KeeperRow
from bot.saved.cases import CaseExport
from bot.saved.group import By, Figure
from bot.saved.group_file import ServerExport
from bot.saved.keeper_file import KeeperExport
from bot.saved.reminders import ASKED_FOR, About, Reminder, ReminderExport, State, next_due
from bot.saved.values import name_key

__all__ = ["Exchange"]


class Exchange:
    """What goes out as a file and comes back."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def keeper(self, keeper: int) -> KeeperExport:
        """Return everything that is kept of a person."""
        async with self._database.reading() as session:
            reminders = await read_reminders(session, keeper)
            cases = await read_cases(session, EnclosureRow.keeper_id == keeper)
            return KeeperExport(
                settings=await read_keeper(session, keeper),
                enclosures=await read_enclosures(session, keeper),
                reminders=tuple(
                    ReminderExport(
                        about=r.about,
                        enclosure=r.enclosure,
                        due=r.due,
                        zone=r.zone,
                        every_days=r.every_days,
                    )
                    for r in reminders
                    if r.state is not State.STOPPED and r.about in ASKED_FOR
                ),
                spares=await read_spares(session, keeper),
                cases=tuple(
                    CaseExport(
                        enclosure=case.enclosure.name,
                        opened=case.opened,
                        before=case.before,
                        advice=tuple(one.bare for one in case.advice),
                    )
                    for case in cases
                ),
                given=await read_given(session, keeper),
            )

    async def take_keeper(
        self, keeper: int, given: KeeperExport, now: datetime, server: int | None = None
    ) -> None:
        """Keep what a file says of a person; reminders that are past are left out.

        Of what was given to groups, that of the one in which this is asked comes back.
        """
        async with self._database.writing() as session:
            row = await hold_keeper(session, self._database, keeper)
            _take_settings(row, given)
            setups = {enclosure.name: enclosure.setup for enclosure in given.enclosures}
            ids = await put_enclosures(session, self._database, keeper, setups)
            readings = {ids[name_key(e.name)]: e.readings for e in given.enclosures}
            await put_readings(session, self._database, readings)
            await put_spares(session, self._database, keeper, given.spares)
            present = {_alike(reminder) for reminder in await read_reminders(session, keeper)}
            due = [r for r in (_still_due(r, now) for r in given.reminders) if r is not None]
            new = [reminder for reminder in due if _alike(reminder) not in present]
            await put_reminders(session, keeper, new, ids)
            ours = [one for one in given.given if one.group == server]
            if server is not None and ours:
                boxes = [(one.reading, ids.get(name_key(one.enclosure or ""))) for one in ours]
                await put_pooled(session, self._database, server, keeper, boxes)

    async def server(self, server: int) -> ServerExport:
        """Return everything that moderators set for a group, without its keepers' readings."""
        async with self._database.reading() as session:
            own = await read_own(session, server)
            return ServerExport(
                settings=await read_settings(session, server),
                channels=await read_channels(session, server),
                public=await read_rules(session, server),
                lamps=own.lamps,
                screens=own.screens,
                targets=own.targets,
                animals=own.animals,
                boards=await read_boards(session, server),
            )

    async def take_server(self, server: int, given: ServerExport, by: By) -> None:
        """Keep what a file says of a group, each change logged."""
        async with self._database.writing() as session:
            row = await hold_server(session, self._database, server)
            before = await read_settings(session, server)
            wanted = before.model_dump() | given.settings.model_dump(exclude_none=True)
            await put_settings(session, row, before.model_validate(wanted), by)
            await put_channels(session, self._database, server, given.channels, by)
            await put_rules(session, self._database, server, given.public, by)
            figures: tuple[Figure, ...] = (
                *given.lamps,
                *given.screens,
                *given.targets,
                *given.animals,
            )
            await put_figures(session, self._database, server, figures, by)
            await put_boards(session, server, given.boards, by)


def _take_settings(row: KeeperRow, given: KeeperExport) -> None:
    for name, value in given.settings.model_dump(mode="json", exclude_none=True).items():
        setattr(row, name, value)


def _alike(reminder: Reminder | ReminderExport) -> tuple[About, str, datetime]:
    """Return what makes two reminders one and the same."""
    return reminder.about, name_key(reminder.enclosure or ""), reminder.due


def _still_due(reminder: ReminderExport, now: datetime) -> ReminderExport | None:
    """Return a reminder as it is due from now on; None where it is past."""
    if reminder.due > now:
        return reminder
    if reminder.every_days is None:
        return None
    due = next_due(reminder.due, reminder.zone, reminder.every_days, now)
    return reminder.model_copy(update={"due": due})
