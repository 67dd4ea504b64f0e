"""Readings of a group in both databases: whose they are stays inside, and what goes is gone."""

from datetime import date, timedelta

import pytest
from sqlalchemy import select, text

from bot.database.errors import Full, LimitError
from bot.database.pool_table import PooledRow
from bot.database.store import Store
from bot.language.uv_lamps import UvLamp
from bot.saved.group import By
from bot.saved.group_file import ServerExport
from bot.saved.keeper_file import KeeperExport
from bot.saved.kept_screens import KeptScreen
from bot.saved.pool import MOST_GIVEN, MOST_GIVEN_EVERYWHERE, PooledReading
from tests.bot.database.conftest import NOW

FERN, MOSS = 4_000_000_000_000_000_001, 4_000_000_000_000_000_002
GARDEN, BURROW = 5_000_000_000_000_000_001, 5_000_000_000_000_000_002


def reading(uvi: float, **told: object) -> PooledReading:
    """Return a reading under a tube of a class."""
    tube = {"percent": 12.0, "reflector": "polished", "tube_length_m": 0.849}
    whole = {"day": date(2026, 5, 1), "distance_m": 0.3, "uvi": uvi, **tube, **told}
    return PooledReading.model_validate(whole)


EVERY_KIND = (
    reading(4.2, age_days=240),
    reading(2.1, screen=KeptScreen(passes=0.55)),
    reading(2.6, screen=KeptScreen(mesh_x_per_m=700.0, mesh_y_per_m=600.0, wire_m=0.0003)),
    PooledReading(day=date(2026, 4, 1), own_lamp="Hood A", distance_m=0.4, uvi=3.0),
    PooledReading(day=date(2026, 4, 2), lamp=UvLamp.MERCURY, distance_m=0.5, uvi=5.5),
)


async def test_what_is_given_is_there_with_keepers_counted_anew(store: Store) -> None:
    assert await store.pool.give(GARDEN, MOSS, EVERY_KIND) == len(EVERY_KIND)
    await store.enclosures.put(FERN, "Box", {})
    assert await store.pool.give(GARDEN, FERN, [reading(4.0)], "Box") == 1
    shared = await store.pool.of_group(GARDEN)
    assert tuple(one.reading for one in shared) == (*EVERY_KIND, reading(4.0))
    assert [one.keeper for one in shared] == [0, 0, 0, 0, 0, 1]
    assert [one.box for one in shared] == [None, None, None, None, None, 0]
    assert await store.pool.of_group(BURROW) == ()
    assert GARDEN in await store.wishes.groups()


async def test_the_same_is_kept_once_and_there_is_a_most(store: Store) -> None:
    many = [reading(4.0 + n / 100.0) for n in range(MOST_GIVEN)]
    assert await store.pool.give(GARDEN, FERN, [*many, *many]) == MOST_GIVEN
    assert await store.pool.give(GARDEN, FERN, many) == 0
    with pytest.raises(LimitError) as full:
        await store.pool.give(GARDEN, FERN, [reading(9.0)])
    assert full.value.what is Full.GIVEN
    assert len(await store.pool.of_group(GARDEN)) == MOST_GIVEN
    others = range(MOST_GIVEN_EVERYWHERE // MOST_GIVEN - 1)
    for other in others:
        await store.pool.give(other, FERN, many)
    with pytest.raises(LimitError) as full:
        await store.pool.give(BURROW, FERN, [reading(9.0)])
    assert full.value.what is Full.GIVEN_EVERYWHERE
    assert await store.pool.given(FERN) == MOST_GIVEN_EVERYWHERE
    assert len((await store.exchange.keeper(FERN)).given) == MOST_GIVEN_EVERYWHERE


async def test_nobody_takes_back_what_another_gave(store: Store) -> None:
    await store.pool.give(GARDEN, MOSS, [reading(4.2), reading(4.3)])
    await store.pool.give(BURROW, FERN, [reading(4.4)])
    first, _ = (one.number for one in await store.pool.of_group(GARDEN))
    assert await store.pool.take_back(GARDEN, FERN, first) == 0
    assert await store.pool.take_back(GARDEN, FERN) == 0
    assert await store.pool.clear(BURROW, first) == 0
    assert await store.pool.take_back(GARDEN, MOSS, first) == 1
    assert len(await store.pool.of_keeper(GARDEN, MOSS)) == 1
    assert await store.pool.take_back(GARDEN, MOSS) == 1
    assert await store.pool.of_group(GARDEN) == ()
    assert len(await store.pool.of_group(BURROW)) == 1


async def test_forgetting_a_keeper_takes_all_readings_of_that_keeper_and_no_others(
    store: Store,
) -> None:
    await store.pool.give(GARDEN, FERN, [reading(4.2), reading(4.3)])
    await store.pool.give(BURROW, FERN, [reading(4.4)])
    await store.pool.give(GARDEN, MOSS, [reading(4.5)])
    gone = await store.forgetting.keeper(FERN)
    assert gone.given == 3
    (left,) = await store.pool.of_group(GARDEN)
    assert left.reading == reading(4.5)
    async with store.database.reading() as session:
        owners = set(await session.scalars(select(PooledRow.keeper_id)))
        assert owners == {MOSS}
        if not store.database.is_postgresql:
            assert (await session.scalars(text("PRAGMA secure_delete"))).one() == 1


async def test_forgetting_a_group_takes_its_readings_and_an_enclosure_leaves_them(
    store: Store,
) -> None:
    await store.enclosures.put(FERN, "Box", {})
    await store.pool.give(GARDEN, FERN, [reading(4.2)], "Box")
    await store.pool.give(BURROW, FERN, [reading(4.2)], "Box")
    await store.enclosures.remove(FERN, "Box")
    (there,) = await store.pool.of_group(GARDEN)
    assert there.box is None
    assert await store.forgetting.server(GARDEN)
    assert await store.pool.of_group(GARDEN) == ()
    assert len(await store.pool.of_group(BURROW)) == 1


async def test_a_keepers_file_brings_back_what_was_given_to_the_group_where_it_is_taken(
    store: Store,
) -> None:
    await store.enclosures.put(FERN, "Box", {})
    await store.pool.give(GARDEN, FERN, EVERY_KIND, "Box")
    await store.pool.give(BURROW, FERN, [reading(1.1)])
    text_of = (await store.exchange.keeper(FERN)).model_dump_json()
    await store.forgetting.keeper(FERN)
    file = KeeperExport.model_validate_json(text_of)
    await store.exchange.take_keeper(FERN, file, NOW)
    assert await store.pool.of_group(GARDEN) == ()
    for _ in range(2):
        await store.exchange.take_keeper(FERN, file, NOW, GARDEN)
        shared = await store.pool.of_group(GARDEN)
        assert tuple(one.reading for one in shared) == EVERY_KIND
        assert {one.box for one in shared} == {0}
    assert await store.pool.of_group(BURROW) == ()
    given = (await store.exchange.keeper(FERN)).given
    assert {(one.group, one.enclosure) for one in given} == {(GARDEN, "Box")}


async def test_a_groups_file_brings_no_reading_back(store: Store, by: By) -> None:
    """Else a file of moderators would bring back what its keeper withdrew, and nobody's at that."""
    file = ServerExport(readings=EVERY_KIND)
    await store.exchange.take_server(
        GARDEN, ServerExport.model_validate_json(file.model_dump_json()), by
    )
    assert await store.pool.of_group(GARDEN) == ()


async def test_a_keeper_is_asked_once(store: Store) -> None:
    day = NOW.date()
    assert await store.pool.ask_once(FERN, day)
    assert not await store.pool.ask_once(FERN, day + timedelta(days=900))
    assert await store.pool.ask_once(MOSS, day)
