"""Servers: how a group wants to be answered, which channels are public, who left."""

from collections.abc import Mapping
from datetime import datetime, timedelta

from sqlalchemy import delete, select, update
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.changes import Changed, note_changes
from bot.database.engine import Database
from bot.database.errors import Full, LimitError
from bot.database.tables import ChannelRow, ServerRow
from bot.saved.group import MOST_CHANNELS, By, ServerSettings, Shown

__all__ = [
    "GRACE",
    "Servers",
    "hold_server",
    "put_channels",
    "put_settings",
    "read_channels",
    "read_settings",
]

GRACE = timedelta(days=30)
"""How long a group's data is kept after it removed the bot."""


async def hold_server(session: AsyncSession, database: Database, server: int) -> ServerRow:
    """Return the row of a server, made if it is missing, held until the transaction ends."""
    new = database.insert(ServerRow).values(id=server).on_conflict_do_nothing()
    await session.execute(new)
    held = select(ServerRow).where(ServerRow.id == server).with_for_update()
    return (await session.scalars(held)).one()


async def read_settings(session: AsyncSession, server: int) -> ServerSettings:
    """Return a group's settings, all open where nothing is kept."""
    row = await session.get(ServerRow, server)
    return ServerSettings() if row is None else _settings(row)


async def read_channels(session: AsyncSession, server: int) -> dict[int, Shown]:
    """Return the channels of a group for which something was said."""
    rows = await session.execute(
        select(ChannelRow.id, ChannelRow.shown)
        .where(ChannelRow.server_id == server)
        .order_by(ChannelRow.id)
    )
    return {channel: Shown(shown) for channel, shown in rows}


async def put_settings(
    session: AsyncSession, row: ServerRow, settings: ServerSettings, by: By
) -> None:
    """Write a group's settings and log what changed."""
    before = _settings(row).model_dump(mode="json")
    after = settings.model_dump(mode="json")
    for name, value in after.items():
        setattr(row, name, value)
    changed = [
        Changed("setting", name, str(before[name] or ""), str(after[name] or "")) for name in after
    ]
    await note_changes(session, row.id, by, changed)


async def put_channels(
    session: AsyncSession,
    database: Database,
    server: int,
    given: Mapping[int, Shown | None],
    by: By,
) -> None:
    """Write who sees the answers of channels of a held server, None for nothing, and log it."""
    before = await read_channels(session, server)
    after: dict[int, Shown | None] = {**before, **given}
    kept = {channel: shown for channel, shown in after.items() if shown is not None}
    if len(kept) > max(MOST_CHANNELS, len(before)):
        raise LimitError(MOST_CHANNELS, Full.CHANNELS)
    gone = [channel for channel in before if channel not in kept]
    if gone:
        await session.execute(
            delete(ChannelRow).where(ChannelRow.server_id == server, ChannelRow.id.in_(gone))
        )
    written = [
        {"server_id": server, "id": channel, "shown": shown.value}
        for channel, shown in given.items()
        if shown is not None
    ]
    await database.put(session, ChannelRow, written)
    changed = [
        Changed("channel", str(channel), before.get(channel, ""), shown or "")
        for channel, shown in given.items()
    ]
    await note_changes(session, server, by, changed)


class Servers:
    """The settings of all groups."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def settings(self, server: int) -> ServerSettings:
        """Return a group's settings."""
        async with self._database.reading() as session:
            return await read_settings(session, server)

    async def change(self, server: int, by: By, **changed: object) -> None:
        """Change some of a group's settings by name, and log it."""
        async with self._database.writing() as session:
            row = await hold_server(session, self._database, server)
            wanted = _settings(row).model_dump() | changed
            await put_settings(session, row, ServerSettings.model_validate(wanted), by)

    async def channels(self, server: int) -> dict[int, Shown]:
        """Return the channels of a group for which something was said."""
        async with self._database.reading() as session:
            return await read_channels(session, server)

    async def show(self, server: int, channel: int, shown: Shown | None, by: By) -> None:
        """Set who sees the answers of a channel; None leaves it to what is usual."""
        async with self._database.writing() as session:
            await hold_server(session, self._database, server)
            await put_channels(session, self._database, server, {channel: shown}, by)

    async def left(self, server: int, now: datetime) -> None:
        """Note that the bot was removed from a server; the grace begins once."""
        async with self._database.writing() as session:
            await session.execute(
                update(ServerRow)
                .where(ServerRow.id == server, ServerRow.left_at.is_(None))
                .values(left_at=now)
            )

    async def came(self, server: int) -> None:
        """Note that the bot is in a server (again)."""
        async with self._database.writing() as session:
            await session.execute(
                update(ServerRow)
                .where(ServerRow.id == server, ServerRow.left_at.is_not(None))
                .values(left_at=None)
            )

    async def known(self) -> frozenset[int]:
        """Return the servers of which something is kept and which have not left."""
        async with self._database.reading() as session:
            rows = await session.scalars(select(ServerRow.id).where(ServerRow.left_at.is_(None)))
            return frozenset(rows)

    async def away(self) -> frozenset[int]:
        """Return the servers that removed the bot and are not deleted yet."""
        async with self._database.reading() as session:
            rows = await session.scalars(select(ServerRow.id).where(ServerRow.left_at.is_not(None)))
            return frozenset(rows)

    async def sweep(self, now: datetime) -> int:
        """Delete everything of the servers whose grace is over, and return how many."""
        async with self._database.writing() as session:
            gone = await session.scalars(
                delete(ServerRow).where(ServerRow.left_at <= now - GRACE).returning(ServerRow.id)
            )
            return len(gone.all())


def _settings(row: ServerRow) -> ServerSettings:
    return ServerSettings.model_validate(
        {
            "units": row.units,
            "animal": row.animal,
            "guide_url": row.guide_url,
            "zone": row.zone,
            "language": row.language,
            "vets": row.vets,
            "helpers": row.helpers,
            "helper_role": row.helper_role,
        }
    )
