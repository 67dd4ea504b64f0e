"""Readings of a group on Discord: asked once, given by a press, taken back, cleared by number."""

from bot.database.store import Store
from tests.discord.cast import FERN, GARDEN, MOSS, PEBBLE, direct
from tests.discord.saving import Keeper, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

SAVE = {
    "name": "Box",
    "tube": "12%",
    "reflector": "polished",
    "screen": "none",
    "length": "34in",
    "distance": "14in",
}
TYPED = {k: v for k, v in SAVE.items() if k not in ("name", "distance")}


async def test_a_keeper_is_asked_once_and_gives_by_a_press_what_was_shown(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await world.slash("mine save", SAVE)
        first = await world.slash("mine reading", {"name": "Box", "uvi": "4.2"})
        second = await world.slash("mine reading", {"name": "Box", "uvi": "4.3"})
        shown = await world.slash("mine offer", {"name": "Box"})
        before = await store.pool.of_group(GARDEN.id)
        given = await world.press(shown, "I agree")
    assert "mine offer" in first.text
    assert "mine offer" not in second.text
    assert shown.ephemeral
    assert "no name" in shown.text
    assert before == ()
    assert given.ephemeral
    (kept,) = await store.pool.of_group(GARDEN.id)
    assert (kept.reading.uvi, kept.reading.percent) == (4.3, 12.0)


async def test_it_is_taken_back_and_cleared_by_a_press_and_seen_by_moderators_without_names(
    world: World, keeper: Keeper, store: Store
) -> None:
    offered = {**TYPED, "readings": "4.2 at 12 in", "sure": "yes"}
    async with world.running(keeper()):
        await world.slash("mine offer", offered)
        await world.slash("mine offer", {**offered, "readings": "3.1 at 15 in"}, user=MOSS)
        seen = await world.slash("server readings", {}, user=PEBBLE)
        ours = await world.slash("mine withdraw", {}, user=MOSS)
        sure = await world.slash("mine withdraw", {"reading": "all"}, user=MOSS)
        await world.press(sure, "Yes, delete for good", user=MOSS)
        (left,) = await store.pool.of_group(GARDEN.id)
        sure = await world.slash("server readings", {"clear": str(left.number)}, user=PEBBLE)
        gone = await world.press(sure, "Yes, delete for good", user=PEBBLE)
    assert "2 readings" in seen.text
    assert not any(str(who.id) in seen.text or who.name in seen.text for who in (FERN, MOSS))
    assert "3.1" in ours.text
    assert "4.2" not in ours.text
    assert "deleted for good" in gone.text
    assert await store.pool.of_group(GARDEN.id) == ()


async def test_a_reading_that_was_asked_about_is_offered_by_a_press_and_asks_for_a_yes(
    world: World, keeper: Keeper, store: Store
) -> None:
    asked = {"readings": "4.2 at 12 in", "animal": "bearded dragon", **TYPED}
    async with world.running(keeper()):
        plain = await world.slash("uv meter", {**asked, "tubes": "2"})
        answer = await world.slash("uv meter", asked)
        alone = await world.slash("uv meter", asked, where=direct(FERN))
        shown = await world.press(answer, "Give it to the group")
        before = await store.pool.of_group(GARDEN.id)
        await world.press(shown, "I agree")
    offers = ["Give it to the group" in reply.buttons for reply in (plain, answer, alone)]
    assert offers == [False, True, False]
    assert shown.ephemeral
    assert "Nothing is given yet" in shown.text
    assert before == ()
    (kept,) = await store.pool.of_group(GARDEN.id)
    assert (kept.reading.uvi, kept.reading.percent) == (4.2, 12.0)


async def test_in_a_direct_message_there_is_no_group_to_give_to(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        told = await world.slash(
            "mine offer", {**TYPED, "readings": "4.2 at 12 in"}, where=direct(FERN)
        )
    assert "Ask this in a server" in told.text
