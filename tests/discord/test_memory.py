"""Settings at hand for every question, without a look into the store for those who have none."""

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from datetime import UTC, date, datetime

import pytest
from sqlalchemy.ext.asyncio import AsyncSession

from bot.database.engine import Database
from bot.database.store import Store
from bot.language.quantities import Units
from bot.saved.group import By, Own, OwnAnimal, OwnRange
from calc.animal import Subject
from tests.bot.database.large import FULL_SERVER
from tests.discord.cast import FERN, GARDEN, MOSS
from tests.discord.saving import Keeper, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "uvi": "3-5"}
IN_INCHES, IN_CENTIMETRES = "15 to 20 in (38", "38 to 51 cm (15"


@pytest.fixture
def reads(monkeypatch: pytest.MonkeyPatch) -> list[str]:
    """Return a list that grows with every look into the store."""
    seen: list[str] = []
    reading = Database.reading

    @asynccontextmanager
    async def noted(self: Database) -> AsyncIterator[AsyncSession]:
        seen.append("read")
        async with reading(self) as session:
            yield session

    monkeypatch.setattr(Database, "reading", noted)
    return seen


async def test_who_has_set_nothing_is_answered_without_the_store(
    world: World, keeper: Keeper, reads: list[str]
) -> None:
    client = keeper()
    async with world.running(client):
        assert client.memory is not None
        await client.memory.look_around()
        before = len(reads)
        answers = [await world.slash("distance", TUBE, user=who) for who in (FERN, MOSS)]
        assert len(reads) == before
    assert all(IN_INCHES in answer.text for answer in answers)


async def test_a_setting_counts_at_once_and_for_its_keeper_only(
    world: World, keeper: Keeper
) -> None:
    client = keeper()
    async with world.running(client):
        assert client.memory is not None
        await client.memory.look_around()
        before = await world.slash("distance", TUBE)
        await world.slash("mine prefer", {"units": "cm"})
        after = await world.slash("distance", TUBE)
        await client.memory.look_around()
        later = await world.slash("distance", TUBE)
        other = await world.slash("distance", TUBE, user=MOSS)
    assert [IN_INCHES in answer.text for answer in (before, after, later, other)] == [
        True,
        False,
        False,
        True,
    ]


async def test_a_setting_made_through_another_process_counts_after_a_look_around(
    world: World, keeper: Keeper, store: Store
) -> None:
    client = keeper()
    async with world.running(client):
        assert client.memory is not None
        await client.memory.look_around()
        before = await world.slash("distance", TUBE)
        await store.keepers.change(FERN.id, units=Units.CM)
        await client.memory.look_around()
        after = await world.slash("distance", TUBE)
    assert IN_INCHES in before.text
    assert IN_CENTIMETRES in after.text


@pytest.mark.slow
async def test_typing_looks_into_the_store_only_for_what_the_keeper_saved(
    world: World, keeper: Keeper, reads: list[str]
) -> None:
    client = keeper()
    async with world.running(client):
        assert client.memory is not None
        await client.memory.look_around()
        before = len(reads)
        await world.type("distance", "animal", "bea")
        await world.type("distance", "tube", "12")
        assert len(reads) == before
        await world.type("mine show", "name", "x")
        assert len(reads) > before


async def test_a_group_with_an_animal_of_its_own_is_answered_as_every_group(
    world: World, keeper: Keeper, store: Store
) -> None:
    own = OwnAnimal(
        name="Moss lizard",
        wants={Subject.COOL_AIR: OwnRange(low=18.0, high=24.0)},
        set_on=date(2026, 5, 4),
    )
    await store.figures.put(GARDEN.id, own, By(FERN.id, datetime(2026, 5, 4, tzinfo=UTC)))
    async with world.running(keeper()):
        answer = await world.slash("distance", TUBE)
        again = await world.slash("distance", TUBE)
    assert IN_INCHES in answer.text
    assert again.text == answer.text


def test_figures_are_the_same_by_what_they_hold() -> None:
    whole = Own(lamps=FULL_SERVER.lamps, targets=FULL_SERVER.targets, animals=FULL_SERVER.animals)
    again = Own.model_validate_json(whole.model_dump_json())
    assert (again, hash(again)) == (whole, hash(whole))
    assert Own(lamps=whole.lamps[1:], targets=whole.targets, animals=whole.animals) != whole
