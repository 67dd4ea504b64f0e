"""Which targets a keeper was told last of each enclosure, and who is told that they changed.

What is found changed is written down together with the reminder that tells it, so that nobody is
told twice, whichever process looks and whatever ends it meanwhile.
"""

from collections.abc import Callable, Mapping
from datetime import datetime

from sqlalchemy import func, select

from bot.database.engine import Database
from bot.database.figures import read_own
from bot.database.reminder_rows import remind_at_once
from bot.database.servers import hold_server
from bot.database.tables import ChangeRow, EnclosureRow, ToldRow
from bot.saved.group import NOTHING_OWN, Own
from bot.saved.reminders import About
from bot.saved.targets import Targets, moved_between, targets_kept
from bot.saved.values import name_key

__all__ = ["TargetsTold"]

_AT_ONCE = 200
_OF_TARGETS = ("target", "animal")


class TargetsTold:
    """What was told of all enclosures."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def tell(
        self, keeper: int, server: int | None, told: Mapping[str, tuple[str, Targets]]
    ) -> None:
        """Note which animal's targets a keeper is told just now, by the name of the enclosure."""
        if not told:
            return
        by_key = {name_key(name): one for name, one in told.items()}
        wanted = select(EnclosureRow.id, EnclosureRow.key).where(
            EnclosureRow.keeper_id == keeper, EnclosureRow.key.in_(by_key)
        )
        async with self._database.writing() as session:
            boxes = (await session.execute(wanted)).all()
            if server is not None:
                await hold_server(session, self._database, server)
            rows = [
                {"enclosure_id": box, "server_id": server, "animal": animal}
                | {"targets": _kept(targets)}
                for box, key in boxes
                for animal, targets in [by_key[key]]
            ]
            await self._database.put(session, ToldRow, rows)

    async def newest_change(self) -> int:
        """Return the number of the newest line in any log of a group; 0: there is none."""
        async with self._database.reading() as session:
            return (await session.scalars(select(func.max(ChangeRow.id)))).one() or 0

    async def groups_changed(self, since: int) -> frozenset[int]:
        """Return the groups that changed a target or an animal after a line of the logs."""
        wanted = select(ChangeRow.server_id).where(
            ChangeRow.id > since, ChangeRow.what.in_(_OF_TARGETS)
        )
        async with self._database.reading() as session:
            return frozenset(await session.scalars(wanted.distinct()))

    async def look(
        self,
        targets_of: Callable[[str, Own], Targets],
        now: datetime,
        only: int | None = None,
    ) -> int:
        """Remind every keeper whose targets are others than were told; return how many.

        ``targets_of`` gives those of an animal with a group's figures; ``only`` is one group.
        """
        reminded, last = 0, 0
        found: dict[tuple[str, int | None], Targets] = {}
        while True:
            async with self._database.writing() as session:
                wanted = (
                    select(ToldRow, EnclosureRow.keeper_id)
                    .join(EnclosureRow, ToldRow.enclosure_id == EnclosureRow.id)
                    .where(ToldRow.enclosure_id > last)
                    .order_by(ToldRow.enclosure_id)
                    .limit(_AT_ONCE)
                    # Another process that looks has these, and tells of them.
                    .with_for_update(of=ToldRow, skip_locked=True)
                )
                if only is not None:
                    wanted = wanted.where(ToldRow.server_id == only)
                rows = (await session.execute(wanted)).all()
                if not rows:
                    return reminded
                owns: dict[int | None, Own] = {None: NOTHING_OWN}
                for row, keeper in rows:
                    last, server = row.enclosure_id, row.server_id
                    if server is not None and server not in owns:
                        owns[server] = await read_own(session, server)
                    key = row.animal, server
                    if key not in found:
                        found[key] = targets_of(row.animal, owns[server])
                    targets = found[key]
                    moved = moved_between(targets_kept(row.targets), targets)
                    row.targets = _kept(targets)
                    if moved:
                        of = {"enclosure_id": row.enclosure_id, "server_id": server}
                        told = [one.model_dump(mode="json") for one in moved]
                        await remind_at_once(session, keeper, About.RETARGET, now, moved=told, **of)
                        reminded += 1


def _kept(targets: Targets) -> dict[str, object]:
    return {subject.value: aim.model_dump(exclude_none=True) for subject, aim in targets.items()}
