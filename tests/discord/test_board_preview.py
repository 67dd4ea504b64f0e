"""A board before it is posted: beside what stands, for the moderator alone, posted by a button."""

from dataclasses import replace

from bot.database.store import Store
from bot.saved.boards import BoardExport, Topic
from bot.saved.group import By
from bot.saved.group_file import ServerExport
from tests.discord.answers import post_text
from tests.discord.artists import told
from tests.discord.cast import BURROW, FERN, GARDEN, PEBBLE
from tests.discord.saving import Keeper, board_posts, keeper, store
from tests.discord.test_board_pictures import Artist, artist
from tests.discord.test_boards import DISTANCES, NOW, looked_at, standing, up
from tests.discord.world import World

__all__ = ["artist", "keeper", "store"]

GECKO = {"topic": "distances", "animal": "leopard gecko"}
POST = "Post it here"


async def test_a_new_board_is_shown_just_as_it_will_stand_and_posted_by_a_button(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        preview = await world.slash("board preview", DISTANCES, user=PEBBLE)
        assert board_posts(world) == []
        asked = await world.press(preview, POST, user=PEBBLE)
        await standing(store, up)
    (post,) = board_posts(world)
    assert preview.ephemeral
    assert "no board of this topic yet" in preview.text
    assert post.payload["content"] in preview.text
    assert "posted and pinned" in asked.text


async def test_a_change_is_shown_beside_what_stands_and_changes_nothing_before_the_button(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await world.slash("board post", DISTANCES, user=PEBBLE)
        await standing(store, up)
        (post,) = board_posts(world)
        stood = post.payload["content"]
        preview = await world.slash("board preview", GECKO, user=PEBBLE)
        same = await world.slash("board preview", DISTANCES, user=PEBBLE)
        assert post.payload["content"] == stood
        await world.press(preview, POST, user=PEBBLE)
        await world.platform.until(lambda: post.payload["content"] != stood, "the change")
    assert board_posts(world) == [post]
    above, _, below = preview.text.partition("**Then")
    assert "### ~~Tube distances for a bearded dragon~~" in above
    assert "### __Tube distances for a leopard gecko__" in below
    # What stays is marked in neither.
    care = "- Give shade: your animal must be able to leave the UV."
    assert care in below.split("\n")
    assert "Give shade" not in above.replace(care, "")
    assert "Nothing would change" in same.text
    assert POST not in same.buttons


async def test_the_language_and_unit_are_those_of_the_group_and_not_the_moderators(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await world.slash("server set", {"units": "cm", "language": "de"}, user=PEBBLE)
        await world.slash("mine prefer", {"units": "in", "language": "en"}, user=PEBBLE)
        preview = await world.slash("board preview", DISTANCES, user=PEBBLE)
        await world.press(preview, POST, user=PEBBLE)
        await standing(store, up)
    (post,) = board_posts(world)
    assert "no board of this topic" in preview.text
    assert post.payload["content"] in preview.text
    assert "Röhrenabstände" in preview.text


async def test_the_pictures_follow_the_preview(world: World, artist: Artist) -> None:
    async with world.running(artist(told)):
        preview = await world.slash("board preview", DISTANCES, user=PEBBLE)
        await world.platform.until(lambda: preview.further, "the pictures")
    (pictures,) = preview.further
    assert pictures.ephemeral
    assert list(pictures.files) == ["board-1.png"]
    assert board_posts(world) == []


async def test_what_a_moderator_may_is_looked_at_again_where_the_button_is_pressed(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        preview = await world.slash("board preview", DISTANCES, user=PEBBLE)
        refused = await world.press(preview, POST, user=replace(PEBBLE, rights=FERN.rights))
    assert "for the moderators" in refused.text
    assert board_posts(world) == []


async def test_a_file_brings_boards_back_in_the_channels_of_its_own_group_alone(
    world: World, keeper: Keeper, store: Store
) -> None:
    elsewhere = BURROW.channel_id
    world.platform.servers.append(BURROW)
    file = ServerExport(
        boards=(
            BoardExport(channel=GARDEN.channel_id, topic=Topic.GUIDE),
            BoardExport(channel=elsewhere, topic=Topic.GUIDE),
        )
    )
    await store.exchange.take_server(GARDEN.id, file, By(PEBBLE.id, NOW))
    async with world.running(keeper()):
        await standing(store, lambda boards: len(boards) == 1 and up(boards))
        await looked_at(store)
    assert len(board_posts(world)) == 1
    assert world.posted(elsewhere) == []
    assert (await store.exchange.server(GARDEN.id)).boards == file.boards[:1]
    assert post_text(board_posts(world)[0])
