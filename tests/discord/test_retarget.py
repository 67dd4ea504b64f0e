"""A target that a moderator changes: keepers hear of it once, and a board says what changed."""

from bot.database.store import Store
from tests.discord.cast import FERN, PEBBLE
from tests.discord.saving import Keeper, board_posts, keeper, messages_to, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

BOX = {"name": "Pebble's box", "animal": "bearded dragon"}


async def test_keepers_and_boards_are_told_of_a_changed_target_once(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await world.slash(
            "board post", {"topic": "temperatures", "animal": "bearded dragon"}, user=PEBBLE
        )
        await world.slash("mine save", BOX)
        await world.slash("mine show", {})
        await world.platform.until(lambda: bool(board_posts(world)), "the board")
        changed = {"animal": "bearded dragon", "of": "uvi", "range": "3-4"}
        await world.slash("server target", changed, user=PEBBLE)
        await world.platform.until(lambda: bool(messages_to(world, FERN)), "what changed")
        await world.platform.until(
            lambda: "Changed on" in str(board_posts(world)[0].payload), "what changed on the board"
        )
    async with world.running(keeper()):
        await world.slash("mine list", {})
    (told,) = messages_to(world, FERN)
    assert "has changed for Pebble's box: UV index 3 to 4" in told.payload["content"]
    assert "it was UV index 3 to 5" in told.payload["content"]
