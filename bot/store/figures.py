"""A group's own figures: lamps, screens, targets and animals, each change logged."""

from typing import Any

from sqlalchemy import func, select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.kept.group import (
    MOST_ANIMALS,
    MOST_LAMPS,
    MOST_SCREENS,
    MOST_TARGETS,
    By,
    Figure,
    Own,
    OwnAnimal,
    OwnLamp,
    OwnScreen,
    OwnTarget,
)
from bot.kept.values import name_key
from bot.store.changes import note_change
from bot.store.database import Database
from bot.store.errors import LimitError
from bot.store.servers import hold_server
from bot.store.tables import AnimalRow, LampRow, ScreenRow, TargetRow

__all__ = ["Figures", "put_figure", "read_own"]

_Row = LampRow | ScreenRow | TargetRow | AnimalRow
_KINDS: dict[type[Figure], tuple[type[_Row], str, int]] = {
    OwnLamp: (LampRow, "lamp", MOST_LAMPS),
    OwnScreen: (ScreenRow, "screen", MOST_SCREENS),
    OwnTarget: (TargetRow, "target", MOST_TARGETS),
    OwnAnimal: (AnimalRow, "animal", MOST_ANIMALS),
}
# What is a figure's name and not its value.
_NAMING = {"name", "animal", "subject", "set_on"}


async def read_own(session: AsyncSession, server: int) -> Own:
    """Return all of a group's own figures, in the order of their names."""
    lamps = await session.scalars(
        select(LampRow).where(LampRow.server_id == server).order_by(LampRow.key)
    )
    screens = await session.scalars(
        select(ScreenRow).where(ScreenRow.server_id == server).order_by(ScreenRow.key)
    )
    targets = await session.scalars(
        select(TargetRow)
        .where(TargetRow.server_id == server)
        .order_by(TargetRow.animal, TargetRow.subject)
    )
    animals = await session.scalars(
        select(AnimalRow).where(AnimalRow.server_id == server).order_by(AnimalRow.key)
    )
    return Own(
        lamps=tuple(_value(OwnLamp, row) for row in lamps),
        screens=tuple(_value(OwnScreen, row) for row in screens),
        targets=tuple(_value(OwnTarget, row) for row in targets),
        animals=tuple(_value(OwnAnimal, row) for row in animals),
    )


async def put_figure(session: AsyncSession, server: int, figure: Figure, by: By) -> bool:
    """Write a figure of a held server, log it, and say whether it replaced one of its name."""
    table, what, most = _KINDS[type(figure)]
    row: _Row | None = await session.get(table, _identity(server, figure))
    before = _value(type(figure), row) if row else None
    if row is None:
        counted = select(func.count()).select_from(table).where(table.server_id == server)
        if (await session.scalars(counted)).one() >= most:
            raise LimitError(most, f"{what}s of the group's own")
        row = table(server_id=server)
        session.add(row)
    for name, value in figure.model_dump().items():
        setattr(row, name, value)
    if not isinstance(row, TargetRow):
        row.key = name_key(row.name)
    await _note(session, server, by, before, figure)
    return before is not None


class Figures:
    """The own figures of all groups."""

    def __init__(self, database: Database) -> None:
        self._database = database

    async def own(self, server: int) -> Own:
        """Return all of a group's own figures."""
        async with self._database.reading() as session:
            return await read_own(session, server)

    async def put(self, server: int, figure: Figure, by: By) -> bool:
        """Keep a figure and say whether it replaced one of the same name."""
        async with self._database.writing() as session:
            await hold_server(session, self._database, server)
            return await put_figure(session, server, figure, by)

    async def remove(self, server: int, figure: Figure, by: By) -> bool:
        """Remove a figure by its name, and say whether it was there."""
        async with self._database.writing() as session:
            await hold_server(session, self._database, server)
            table, _, _ = _KINDS[type(figure)]
            row = await session.get(table, _identity(server, figure))
            if row is None:
                return False
            await session.delete(row)
            await _note(session, server, by, figure, None)
            return True


def _identity(server: int, figure: Figure) -> tuple[object, ...]:
    if isinstance(figure, OwnTarget):
        return server, figure.animal, figure.subject.value
    return server, name_key(figure.name)


def _value(kind: type[Any], row: _Row) -> Any:
    return kind.model_validate({name: getattr(row, name) for name in kind.model_fields})


async def _note(
    session: AsyncSession,
    server: int,
    by: By,
    before: Figure | None,
    after: Figure | None,
) -> None:
    figure = after or before
    if figure is None:
        return
    name = (
        f"{figure.animal} {figure.subject.value}" if isinstance(figure, OwnTarget) else figure.name
    )
    told = [f.model_dump_json(exclude=_NAMING) if f else "" for f in (before, after)]
    what = _KINDS[type(figure)][1]
    await note_change(session, server, by, what, name, before=told[0], after=told[1])
