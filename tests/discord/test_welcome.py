"""A welcome board: its buttons open forms for whoever presses, also after a restart."""

import pytest

from bot.database.store import Store
from tests.discord.cast import FERN, GARDEN, MOSS, PEBBLE, Person
from tests.discord.payloads import bot_user
from tests.discord.saving import Keeper, board_posts, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]


async def test_a_newcomer_is_led_from_the_board_to_an_answer_alone(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await world.slash("board post", {"topic": "welcome"}, user=PEBBLE)
        await world.platform.until(lambda: board_posts(world), "the board")
    # The next process knows the buttons by their ids.
    async with world.running(keeper()):
        (board,) = board_posts(world)
        told = board.payload["content"]
        form = await world.press(board, "Something is wrong", user=MOSS)
        words = {"question": "smoke comes out of the lamp"}
        answer = await world.submit(form, words, user=MOSS)
        plan = await world.press(board, "I have a new animal", user=FERN)
        check = await world.press(board, "Check my set-up", user=FERN)
        reading = await world.press(board, "Is this reading right?", user=FERN)
    assert answer.ephemeral
    assert answer.post is not board
    assert "smoke" in answer.text.lower()
    assert {"animal", "enclosure"} <= plan.fields.keys()
    assert "readings" in reading.fields
    assert check.fields
    assert board.payload["content"] == told
    me = bot_user()["id"]
    posted = [p for p in world.posted(GARDEN.channel_id) if p.payload["author"]["id"] == me]
    assert posted == [board]


@pytest.mark.parametrize("person", [FERN, MOSS])
async def test_nobody_but_a_moderator_posts_it(
    world: World, keeper: Keeper, person: Person
) -> None:
    async with world.running(keeper()):
        refused = await world.slash("board post", {"topic": "welcome"}, user=person)
    assert "Manage Messages" in refused.text
    assert board_posts(world) == []
