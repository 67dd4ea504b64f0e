"""A group's own figures: lamps, screens, targets and animals, each change logged."""

from collections.abc import Sequence
from typing import Any

from sqlalchemy import select
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.changes import Changed, note_changes
from bot.database.engine import Database
from bot.database.errors import Full, LimitError
from bot.database.servers import hold_server
from bot.database.tables import AnimalRow, LampRow, ScreenRow, Table, TargetRow
from bot.saved.group import (
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
from bot.saved.values import name_key

__all__ = ["Figures", "put_figures", "read_own"]

_Row = LampRow | ScreenRow | TargetRow | AnimalRow
_KINDS: dict[type[Figure], tuple[type[_Row], Full, int]] = {
    OwnLamp: (LampRow, Full.LAMPS, MOST_LAMPS),
    OwnScreen: (ScreenRow, Full.SCREENS, MOST_SCREENS),
    OwnTarget: (TargetRow, Full.TARGETS, MOST_TARGETS),
    OwnAnimal: (AnimalRow, Full.ANIMALS, MOST_ANIMALS),
}
# What the log calls each kind; databases hold these words.
_LOGGED: dict[type[Figure], str] = {
    OwnLamp: "lamp",
    OwnScreen: "screen",
    OwnTarget: "target",
    OwnAnimal: "animal",
}
# What is a figure's name and not its value.
_NAMING = {"name", "animal", "subject", "set_on"}


async def read_own(session: AsyncSession, server: int) -> Own:
    """Return all of a group's own figures, in the order of their names."""
    lamps, screens, targets, animals = [await _all(session, server, kind) for kind in _KINDS]
    return Own(
        lamps=tuple(lamps), screens=tuple(screens), targets=tuple(targets), animals=tuple(animals)
    )


async def _all(session: AsyncSession, server: int, kind: type[Figure]) -> list[Any]:
    table = _KINDS[kind][0]
    naming = (table.animal, table.subject) if issubclass(table, TargetRow) else (table.key,)
    rows = await session.scalars(select(table).where(table.server_id == server).order_by(*naming))
    return [_value(kind, row) for row in rows]


async def put_figures(
    session: AsyncSession, database: Database, server: int, figures: Sequence[Figure], by: By
) -> int:
    """Write figures of a held server, log them, and return how many replaced one of their name."""
    changed, replaced = [], 0
    for kind, (table, what, most) in _KINDS.items():
        given = [figure for figure in figures if isinstance(figure, kind)]
        if not given:
            continue
        before = {_key(figure): figure for figure in await _all(session, server, kind)}
        after = before | {_key(figure): figure for figure in given}
        if len(after) > max(most, len(before)):
            raise LimitError(most, what)
        await database.put(session, table, [_row(server, figure) for figure in given])
        changed += [_line(before.get(_key(figure)), figure) for figure in given]
        replaced += sum(_key(figure) in before for figure in given)
    await note_changes(session, server, by, changed)
    return replaced


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
            return await put_figures(session, self._database, server, (figure,), by) > 0

    async def remove(self, server: int, figure: Figure, by: By) -> bool:
        """Remove a figure by its name, and say whether it was there."""
        async with self._database.writing() as session:
            await hold_server(session, self._database, server)
            table, _, _ = _KINDS[type(figure)]
            row = await session.get(table, (server, *_key(figure)))
            if row is None:
                return False
            await session.delete(row)
            await note_changes(session, server, by, [_line(_value(type(figure), row), None)])
            return True


def _key(figure: Figure) -> tuple[str, ...]:
    if isinstance(figure, OwnTarget):
        return figure.animal, figure.subject.value
    return (name_key(figure.name),)


def _row(server: int, figure: Figure) -> dict[str, object]:
    told = figure.model_dump() | {"server_id": server}
    return told if isinstance(figure, OwnTarget) else told | {"key": name_key(figure.name)}


def _value(kind: type[Any], row: Table) -> Any:
    return kind.model_validate({name: getattr(row, name) for name in kind.model_fields})


def _line(before: Figure | None, after: Figure | None) -> Changed:
    figure = after or before
    assert figure is not None
    name = (
        f"{figure.animal} {figure.subject.value}" if isinstance(figure, OwnTarget) else figure.name
    )
    told = [f.model_dump_json(exclude=_NAMING) if f else "" for f in (before, after)]
    return Changed(_LOGGED[type(figure)], name, *told)
