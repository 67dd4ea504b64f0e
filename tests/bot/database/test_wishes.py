"""Who has set anything at all: nobody else need be looked up."""

from datetime import UTC, date, datetime

import pytest

from bot.database.store import Store
from bot.language.quantities import Units
from bot.saved.counts import Asked
from bot.saved.group import (
    By,
    Figure,
    OwnAnimal,
    OwnLamp,
    OwnRange,
    OwnScreen,
    OwnTarget,
    Shown,
)
from calc.animal import Subject

KEEPER, GARDEN, BURROW = 4_000_000_000_000_001, 5_000_000_000_000_001, 5_000_000_000_000_002
MAY = date(2026, 5, 4)
FIGURES = (
    OwnLamp(
        name="Hood",
        constant_uvi_m=1.9,
        doubt_factor=1.2,
        readings=3,
        lit_length_m=0.5,
        set_on=MAY,
    ),
    OwnScreen(name="Mesh", passes=0.5, set_on=MAY),
    OwnTarget(animal="bearded-dragon", subject=Subject.UVI, low=3.0, high=4.0, set_on=MAY),
    OwnAnimal(name="Moss lizard", wants={Subject.UVI: OwnRange(low=2.0, high=3.0)}, set_on=MAY),
)


async def test_who_is_only_known_has_no_wish(store: Store, by: By) -> None:
    await store.keepers.change(KEEPER, units=Units.CM)
    await store.keepers.change(KEEPER, units=None)
    await store.servers.change(GARDEN, by, zone="Europe/Berlin")
    await store.servers.change(GARDEN, by, zone=None)
    await store.counts.add(BURROW, datetime.now(UTC).date(), {(Asked.QUESTION, "help"): 3})
    assert await store.wishes.keepers() == frozenset()
    assert await store.wishes.groups() == frozenset()


@pytest.mark.parametrize(
    "wish", [{"units": Units.IN}, {"zone": "Europe/Berlin"}, {"language": "de"}]
)
async def test_a_keeper_with_a_setting_has_one(store: Store, wish: dict[str, object]) -> None:
    await store.keepers.change(KEEPER, **wish)
    assert await store.wishes.keepers() == {KEEPER}


@pytest.mark.parametrize(
    "wish",
    [
        {"units": Units.CM},
        {"animal": "bearded-dragon"},
        {"guide_url": "https://guide.invalid"},
        {"zone": "Europe/Berlin"},
        {"language": "de"},
    ],
)
async def test_a_group_with_a_setting_has_one(
    store: Store, by: By, wish: dict[str, object]
) -> None:
    await store.servers.change(GARDEN, by, **wish)
    assert await store.wishes.groups() == {GARDEN}


@pytest.mark.parametrize("figure", FIGURES)
async def test_a_group_with_a_figure_has_one(store: Store, by: By, figure: Figure) -> None:
    await store.figures.put(GARDEN, figure, by)
    assert await store.wishes.groups() == {GARDEN}


async def test_a_group_with_a_public_channel_has_one_once(store: Store, by: By) -> None:
    for channel in (1, 2):
        await store.servers.show(GARDEN, channel, Shown.PUBLIC, by)
    await store.servers.change(GARDEN, by, units=Units.CM)
    assert await store.wishes.groups() == {GARDEN}
