"""The pictures of a board: drawn, attached with their words, and changed with the board."""

from collections.abc import AsyncIterator, Callable
from dataclasses import replace
from pathlib import Path

import pytest

from bot.database.store import Store
from bot.drawing import Drawing
from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from bot.saved.reminders import Trouble
from bot.serving.studio import Studio
from tests.discord.artists import hopeless, told
from tests.discord.cast import ALL_RIGHTS, ATTACH_FILES, GARDEN, PEBBLE, in_server
from tests.discord.platform import Post
from tests.discord.saving import board_posts, store
from tests.discord.test_boards import edits_of, pinned, standing, up
from tests.discord.world import World

__all__ = ["store"]

BOTH = {"topic": "distances", "animal": "bearded dragon; leopard gecko"}
ONE = {"topic": "temperatures", "animal": "bearded dragon"}
Artist = Callable[[Callable[[Drawing], bytes]], Noonstone]


@pytest.fixture
async def artist(tmp_path: Path, store: Store) -> AsyncIterator[Artist]:
    """Return a maker of bots that remember and draw in the way given."""
    studios: list[Studio] = []

    def make(job: Callable[[Drawing], bytes]) -> Noonstone:
        studios.append(Studio(job=job))
        return Noonstone(Preferences(), tmp_path, studios[-1], store=store)

    yield make
    for studio in studios:
        await studio.close()


def pictures(post: Post) -> list[str]:
    return [attachment["filename"] for attachment in post.payload["attachments"]]


async def test_a_board_shows_a_picture_of_each_animal_with_its_words(
    world: World, artist: Artist, store: Store
) -> None:
    async with world.running(artist(told)):
        await world.slash("board post", BOTH, user=PEBBLE)
        await standing(store, up)
    (post,) = board_posts(world)
    assert pictures(post) == ["board-1.png", "board-2.png"]
    assert b"bearded dragon" in post.files["board-1.png"]
    words = [attachment["description"] for attachment in post.payload["attachments"]]
    assert "bearded dragon" in words[0]
    assert "leopard gecko" in words[1]


async def test_the_picture_changes_with_the_board_and_stays_where_nothing_changed(
    world: World, artist: Artist, store: Store
) -> None:
    async with world.running(artist(told)):
        await world.slash("board post", ONE, user=PEBBLE)
        await standing(store, up)
        (post,) = board_posts(world)
        before = dict(post.files)
        await world.slash("board refresh", {}, user=PEBBLE)
        gecko = {"topic": "temperatures", "animal": "leopard gecko"}
        edits = edits_of(world, post)
        await world.slash("board post", gecko, user=PEBBLE)
        await world.platform.until(lambda: edits_of(world, post) == edits + 1, "the change")
        target = {"animal": "leopard gecko", "of": "basking", "range": "90-94F"}
        await world.slash("server target", target, user=PEBBLE)
        await world.platform.until(lambda: edits_of(world, post) == edits + 2, "the target")
    assert edits == 0
    assert pictures(post) == ["board-1.png"]
    assert b"leopard gecko" in post.files["board-1.png"] != before["board-1.png"]


async def test_a_picture_that_cannot_be_drawn_costs_no_board_and_comes_later(
    world: World, artist: Artist, store: Store
) -> None:
    async with world.running(artist(hopeless)):
        await world.slash("board post", ONE, user=PEBBLE)
        await standing(store, up)
    (post,) = board_posts(world)
    assert pictures(post) == []
    async with world.running(artist(told)):
        await world.platform.until(lambda: pictures(post), "the picture")
    assert board_posts(world) == [post]
    assert pinned(world) == [post.id]


async def test_without_the_right_to_attach_it_stands_without_its_picture_and_says_so(
    world: World, artist: Artist, store: Store
) -> None:
    garden = replace(GARDEN, bot_rights=ALL_RIGHTS & ~ATTACH_FILES)
    world.platform.servers[0] = garden
    async with world.running(artist(told)):
        asked = await world.slash("board post", ONE, user=PEBBLE, where=in_server(garden))
        await standing(store, lambda boards: boards[0].trouble is Trouble.NO_FILE_RIGHT)
        listed = await world.slash("board list", {}, user=PEBBLE)
        (post,) = board_posts(world)
        edits = edits_of(world, post)
        world.platform.servers[0] = GARDEN
        await world.slash("board refresh", {}, user=PEBBLE)
        await standing(store, lambda boards: boards[0].trouble is Trouble.NONE)
    assert "posted and pinned" in asked.text
    assert "Attach Files" in asked.text
    assert "without its picture" in listed.text
    assert edits == 0
    assert pictures(post) == ["board-1.png"]
    assert pinned(world) == [post.id]
