"""Where a person is better: an answer called wrong, a helper asked, a photo without a word."""

from bot.database.store import Store
from tests.discord.cast import FERN, GARDEN, MOSS, PEBBLE
from tests.discord.saving import Keeper, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

NIGHT = {"room": "64F", "animal": "bearded dragon"}
REFUSED = {"distance": "2 bananas", "tube": "12%", "reflector": "polished", "screen": "none"}


async def test_what_is_called_wrong_is_kept_once_without_a_name(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        answer = await world.slash("night", NIGHT)
        thanked = await world.press(answer, "This is wrong")
        await world.press(answer, "This is wrong")
        seen = await world.slash("server wrong", {}, user=PEBBLE)
    assert thanked.ephemeral
    assert "no words and no name" in thanked.text
    (wrong,) = await store.wrongs.newest(GARDEN.id)
    assert (wrong.command, wrong.given) == ("night", {"room": "64 F", "animal": "bearded dragon"})
    assert "One answer was called wrong." in seen.text


async def test_a_helper_is_asked_by_consent_with_the_acts_already_said(
    world: World, keeper: Keeper
) -> None:
    hot = {"question": "my beardie burnt its belly on the lamp"}
    async with world.running(keeper()):
        before = await world.slash("ask", hot)
        await world.slash("server helpers", {"ask": "here"}, user=PEBBLE)
        fine = await world.slash("night", NIGHT)
        told = await world.slash("ask", hot)
        shown = await world.press(told, "Ask a helper")
        posted = [p.payload["content"] for p in world.posted(GARDEN.channel_id)]
        done = await world.press(shown, "Post this")
        again = await world.press(shown, "Post this")
        after = [p.payload["content"] for p in world.posted(GARDEN.channel_id)]
    assert "Ask a helper" not in before.buttons
    assert "Ask a helper" not in fine.buttons
    assert shown.ephemeral
    assert "with your name" in shown.text
    assert not any("asks for a helper" in text for text in posted)
    assert "Somebody will answer there" in done.text
    assert "Somebody will answer there" in again.text
    asked = [text for text in after if "asks for a helper" in text]
    assert len(asked) == 1
    assert f"<@{FERN.id}>" in asked[0]
    assert "vet" in asked[0]


async def test_a_refusal_offers_a_helper(world: World, keeper: Keeper) -> None:
    async with world.running(keeper()):
        await world.slash("server helpers", {"ask": "here"}, user=PEBBLE)
        refused = await world.slash("distance", {"uvi": "40"})
        nowhere = await world.slash("server helpers", {"ask": "nowhere"}, user=PEBBLE)
        gone = await world.press(refused, "Ask a helper")
    assert "Ask a helper" in refused.buttons
    assert "No helper is asked" in nowhere.text
    assert "no channel for helpers" in gone.text


async def test_a_photo_alone_is_answered_with_what_to_tell(world: World, keeper: Keeper) -> None:
    async with world.running(keeper()):
        await world.shows_a_photo(MOSS)
        await world.platform.until(
            lambda: any(
                "cannot see pictures" in p.payload["content"]
                for p in world.posted(GARDEN.channel_id)
            ),
            "what to tell",
        )
