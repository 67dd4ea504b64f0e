"""Boards on Discord: posted, pinned, changed in place, taken down, and put right again."""

import asyncio
from collections.abc import Callable
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from bot.database.boards import LEASE
from bot.database.store import Store
from bot.fronts.discord.client import Noonstone
from bot.saved.boards import Board, Topic
from bot.saved.group import By
from bot.saved.reminders import Trouble
from tests.discord.answers import is_card, post_text
from tests.discord.cast import ALL_RIGHTS, GARDEN, PEBBLE, PIN_MESSAGES, SEND_MESSAGES
from tests.discord.payloads import message, user
from tests.discord.platform import Fault, Post
from tests.discord.saving import Keeper, board_posts, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

DISTANCES = {"topic": "distances", "animal": "bearded dragon"}
NOW = datetime.now(UTC)


async def standing(store: Store, wanted: Callable[[tuple[Board, ...]], bool]) -> tuple[Board, ...]:
    """Return the garden's boards once they stand as wanted."""
    async with asyncio.timeout(60):
        while not wanted(boards := await store.boards.all(GARDEN.id)):
            await asyncio.sleep(0.005)
    return boards


def up(boards: tuple[Board, ...]) -> bool:
    return bool(boards) and all(b.message is not None and b.pinned for b in boards)


def pinned(world: World) -> list[int]:
    return world.platform.pins.get(GARDEN.channel_id, [])


async def posted(world: World, store: Store) -> Post:
    """Have a board posted, and return it once it is noted."""
    await world.slash("board post", DISTANCES, user=PEBBLE)
    await standing(store, up)
    (post,) = board_posts(world)
    return post


@pytest.mark.slow
async def test_a_board_is_previewed_alone_then_posted_and_pinned(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        preview = await world.slash("board preview", DISTANCES, user=PEBBLE)
        assert board_posts(world) == []
        post = await posted(world, store)
        about = await world.press(post, "About this board")
        listed = await world.slash("board list", {}, user=PEBBLE)
    assert preview.ephemeral
    assert is_card(preview.post)
    assert not is_card(post)
    # The last lines, the sources, may not fit a plain text.
    told = post.payload["content"].split("\n")
    assert set(told[:20]) <= set(preview.text.split("\n"))
    assert post.pings == frozenset()
    assert pinned(world) == [post.id]
    assert about.ephemeral
    assert "pinned" in listed.text
    assert f"<#{GARDEN.channel_id}>" in listed.text
    assert f"by <@{PEBBLE.id}>: from nothing to bearded dragon" in listed.text


async def test_there_is_one_board_a_topic_and_it_changes_in_place(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        post = await posted(world, store)
        before = post_text(post)
        gecko = {"topic": "distances", "animal": "leopard gecko"}
        await world.slash("board post", gecko, user=PEBBLE)
        await world.platform.until(lambda: post_text(post) != before, "the change")
    assert board_posts(world) == [post]
    assert pinned(world) == [post.id]
    assert "leopard gecko" in post_text(post)


async def test_a_new_figure_of_the_group_is_on_the_board_at_once(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        post = await posted(world, store)
        lamp = {
            "name": "Hood by the door",
            "readings": "4.2 at 12 in, 2.9 at 15 in",
            "length": "34in",
        }
        await world.slash("server lamp", lamp, user=PEBBLE)
        await world.platform.until(lambda: "Hood by the door" in post_text(post), "the lamp")
        cm = {"units": "cm"}
        before = post_text(post)
        await world.slash("server set", cm, user=PEBBLE)
        await world.platform.until(lambda: post_text(post) != before, "the unit")
    assert board_posts(world) == [post]


@pytest.mark.slow
async def test_a_newer_engine_changes_it_at_the_next_start_and_the_same_one_leaves_it(
    world: World, keeper: Keeper, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    async with world.running(keeper()):
        post = await posted(world, store)
    edits = edits_of(world, post)
    async with world.running(keeper()):
        await looked_at(store)
    assert edits_of(world, post) == edits
    monkeypatch.setattr("calc.uv.lamp.CLASS_CONSTANT_UVI_M", 2.5)
    async with world.running(keeper()):
        await world.platform.until(lambda: edits_of(world, post) == edits + 1, "the change")
    assert board_posts(world) == [post]


def edits_of(world: World, post: Post) -> int:
    path = f"/messages/{post.id}"
    return sum(s.method == "PATCH" and s.path.endswith(path) for s in world.platform.seen)


async def looked_at(store: Store) -> None:
    """Wait until no board is to be looked at soon, and none is being looked at."""
    async with asyncio.timeout(60):
        while (await store.boards.next_look() or NOW) < datetime.now(UTC) + timedelta(minutes=30):
            pass


async def test_a_deleted_message_is_posted_again(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        post = await posted(world, store)
        post.deleted = True
        world.platform.pins[GARDEN.channel_id].clear()
        await world.slash("board refresh", {}, user=PEBBLE)
        await world.platform.until(lambda: board_posts(world), "the board")
        await standing(store, lambda boards: boards[0].message != post.id)
    (again,) = board_posts(world)
    assert pinned(world) == [again.id]


async def test_a_board_that_people_unpinned_stays_unpinned(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        post = await posted(world, store)
        world.platform.pins[GARDEN.channel_id].clear()
        post.payload["pinned"] = False
        await world.slash("board refresh", {}, user=PEBBLE)
        await looked_at(store)
    assert pinned(world) == []
    assert board_posts(world) == [post]


async def test_a_board_is_taken_down_and_unpinned_cleanly(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await posted(world, store)
        asked = await world.slash("board remove", {"topic": "distances"}, user=PEBBLE)
        await world.press(asked, "Yes, delete for good", user=PEBBLE)
        await standing(store, lambda boards: not boards)
    assert board_posts(world) == []
    assert pinned(world) == []


async def test_a_deleted_channel_takes_its_boards_along(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        post = await posted(world, store)
        post.deleted = True
        world.platform.servers[0] = replace(GARDEN, channel_id=GARDEN.channel_id + 5)
        await world.slash("board refresh", {}, user=PEBBLE)
        await standing(store, lambda boards: not boards)


@pytest.mark.slow
async def test_a_full_list_of_pins_is_told_and_tried_again(
    world: World, keeper: Keeper, store: Store
) -> None:
    others = [Post(message(GARDEN.channel_id, user(PEBBLE)), None, frozenset()) for _ in range(250)]
    world.platform.posts.update({post.id: post for post in others})
    world.platform.pins[GARDEN.channel_id] = [post.id for post in others]
    async with world.running(keeper()):
        await world.slash("board post", DISTANCES, user=PEBBLE)
        await standing(store, lambda boards: boards[0].trouble is Trouble.PINS_FULL)
        listed = await world.slash("board list", {}, user=PEBBLE)
        world.platform.pins[GARDEN.channel_id].pop()
        await world.slash("board refresh", {}, user=PEBBLE)
        await standing(store, up)
    assert "250 pins" in listed.text
    (post,) = board_posts(world)
    assert post.id in pinned(world)


async def test_a_missing_right_is_named_and_what_can_be_done_is_done(
    world: World, keeper: Keeper, store: Store
) -> None:
    garden = replace(GARDEN, bot_rights=GARDEN.bot_rights & ~PIN_MESSAGES)
    world.platform.servers[0] = garden
    async with world.running(keeper()):
        await world.slash("board post", DISTANCES, user=PEBBLE)
        await standing(store, lambda boards: boards[0].trouble is Trouble.NO_PIN_RIGHT)
        unpinned = await world.slash("board list", {}, user=PEBBLE)
        (post,) = board_posts(world)
        world.platform.servers[0] = replace(GARDEN, bot_rights=ALL_RIGHTS & ~SEND_MESSAGES)
        post.deleted = True
        await world.slash("board refresh", {}, user=PEBBLE)
        await standing(store, lambda boards: boards[0].trouble is Trouble.NO_RIGHT)
        silent = await world.slash("board list", {}, user=PEBBLE)
        world.platform.servers[0] = GARDEN
        await world.slash("board refresh", {}, user=PEBBLE)
        await standing(store, up)
    assert "Pin Messages" in unpinned.text
    assert "Send Messages" in silent.text
    assert len(board_posts(world)) == 1


async def test_too_many_edits_of_an_old_message_have_another_take_its_place(
    world: World, keeper: Keeper, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    client: Noonstone = keeper()
    async with world.running(client):
        post = await posted(world, store)
        refuse_edits(world, monkeypatch)
        gecko = {"topic": "distances", "animal": "leopard gecko"}
        await world.slash("board post", gecko, user=PEBBLE)
        await standing(store, lambda boards: boards[0].message != post.id and boards[0].pinned)
    (again,) = board_posts(world)
    assert again is not post
    assert pinned(world) == [again.id]


def refuse_edits(world: World, monkeypatch: pytest.MonkeyPatch) -> None:
    from tests.discord import messages
    from tests.discord.platform import ApiError

    def refused(*_: object) -> Post:
        raise ApiError(400, 30046, "Maximum number of edits to messages older than 1 hour")

    monkeypatch.setattr(messages, "edit", refused)


async def test_a_rate_limit_and_an_outage_only_delay_it(
    world: World, keeper: Keeper, store: Store
) -> None:
    limited = Fault(r"/messages$", "status", "POST", status=429, retry_after=0.01)
    world.platform.faults.append(limited)
    async with world.running(keeper()):
        await posted(world, store)
    assert len(board_posts(world)) == 1


@pytest.mark.parametrize(("status", "told"), [(400, "refuses it"), (429, "waiting to be posted")])
async def test_a_refusal_is_listed_and_tried_again_and_a_ban_by_the_edge_sooner(
    world: World, keeper: Keeper, store: Store, status: int, told: str
) -> None:
    refused = Fault(r"/messages$", "status", status=status, times=1, through_proxy=False)
    world.platform.faults.append(refused)
    client = keeper()
    assert client.memory is not None
    ahead = timedelta(0)
    client.memory.clock = lambda: datetime.now(UTC) + ahead
    async with world.running(client):
        await world.slash("board post", DISTANCES, user=PEBBLE)
        async with asyncio.timeout(60):
            while not await given_back(store):
                await asyncio.sleep(0.005)
        listed = await world.slash("board list", {}, user=PEBBLE)
        ahead = timedelta(minutes=6 if status == 429 else 61)
        client.wake()
        await standing(store, up)
    assert told in listed.text


async def given_back(store: Store) -> bool:
    """Say whether nobody looks at the board just now, and nobody will for two minutes."""
    soon = datetime.now(UTC) + LEASE + timedelta(seconds=30)
    return (await store.boards.next_look() or NOW) > soon


async def test_a_board_sent_without_being_noted_is_found_again_and_not_posted_twice(
    world: World, keeper: Keeper, store: Store
) -> None:
    by = By(PEBBLE.id, NOW)
    await store.boards.put(GARDEN.id, GARDEN.channel_id, Topic.GUIDE, (), by)
    world.platform.faults.append(Fault(r"/messages$", "lose", "POST"))
    client = keeper()
    assert client.memory is not None
    ahead = timedelta(0)
    client.memory.clock = lambda: datetime.now(UTC) + ahead
    async with world.running(client):
        await world.platform.until(lambda: board_posts(world), "the board")
        world.platform.nonces.clear()
        ahead = LEASE + timedelta(seconds=1)
        client.wake()
        await standing(store, up)
    assert len(board_posts(world)) == 1


async def test_two_processes_post_one_board_once(
    world: World, keeper: Keeper, store: Store
) -> None:
    for topic in (Topic.GUIDE, Topic.FIRST_DAY):
        await store.boards.put(GARDEN.id, GARDEN.channel_id, topic, (), By(PEBBLE.id, NOW))
    async with world.running(keeper()), world.running(keeper()):
        await standing(store, up)
    assert len(board_posts(world)) == 2
    assert len(pinned(world)) == 2
