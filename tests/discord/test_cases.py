"""A case on Discord: agreed to by a press, told to helpers without a name, answered."""

from bot.database.store import Store
from tests.discord.cast import FERN, GARDEN, MOSS, PEBBLE
from tests.discord.saving import Keeper, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

BOX = {"name": "Pebble's box", "animal": "bearded dragon"}


async def test_a_case_is_shared_by_a_press_and_opened_by_helpers(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await world.slash("server helpers", {"ask": "here"}, user=PEBBLE)
        await world.slash("mine save", BOX)
        asked = await world.slash("mine share", {"name": BOX["name"]})
        assert await store.cases.of_keeper(FERN.id) == ()
        agreed = await world.press(asked, "I agree")
        await world.platform.until(
            lambda: any("case 1" in p.payload["content"] for p in world.posted(GARDEN.channel_id)),
            "the case in the channel of the helpers",
        )
        told = next(p for p in world.posted(GARDEN.channel_id) if "case 1" in p.payload["content"])
        seen = await world.slash("cases show", {"number": "1"}, user=MOSS)
        await world.slash("cases advise", {"number": "1", "measure": "cool"}, user=MOSS)
        mine = await world.slash("mine case", {})
    assert asked.ephemeral, asked.text
    assert agreed.ephemeral
    assert "case 1" in agreed.text
    assert str(FERN.id) not in told.payload["content"]
    assert seen.ephemeral
    assert "Pebble's box" in seen.text
    assert "measure it again" in mine.text
