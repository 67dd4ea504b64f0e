"""What the bot itself may do in a channel: nothing is promised there that it may not do."""

from dataclasses import replace

import pytest

from bot.database.store import Store
from tests.discord.cast import (
    BOT_RIGHTS,
    FERN,
    GARDEN,
    PEBBLE,
    PIN_MESSAGES,
    SEND_MESSAGES,
    Place,
    between_friends,
    in_server,
)
from tests.discord.saving import Keeper, board_posts, keeper, store
from tests.discord.test_boards import DISTANCES, up
from tests.discord.test_boards import standing as boards_standing
from tests.discord.world import World

__all__ = ["keeper", "store"]

HERE = {"about": "meter", "when": "in 3 days", "where": "here"}
ADMINISTRATOR = 1 << 3


def garden(world: World, rights: int) -> Place:
    """Return the garden's channel, where the bot has these rights."""
    server = replace(GARDEN, bot_rights=rights)
    world.platform.servers[0] = server
    return in_server(server)


@pytest.mark.slow
async def test_a_board_that_may_not_be_pinned_is_promised_without_a_pin(
    world: World, keeper: Keeper, store: Store
) -> None:
    where = garden(world, BOT_RIGHTS & ~PIN_MESSAGES)
    async with world.running(keeper()):
        told = await world.slash("board post", DISTANCES, user=PEBBLE, where=where)
        await boards_standing(store, lambda boards: boards[0].message is not None)
    assert "posted here in a moment, but I may not pin it" in told.text
    assert "I lack rights in this channel: Pin Messages." in told.text
    assert "board refresh" in told.text
    assert len(board_posts(world)) == 1


async def test_a_board_that_may_not_be_posted_is_noted_and_comes_with_the_right(
    world: World, keeper: Keeper, store: Store
) -> None:
    where = garden(world, BOT_RIGHTS & ~SEND_MESSAGES)
    async with world.running(keeper()):
        told = await world.slash("board post", DISTANCES, user=PEBBLE, where=where)
        assert board_posts(world) == []
        await boards_standing(store, lambda boards: boards[0].trouble.value == "no right")
        where = garden(world, BOT_RIGHTS)
        await world.slash("board refresh", {}, user=PEBBLE, where=where)
        await boards_standing(store, up)
    assert "noted, but I may not post it here yet" in told.text
    assert "I lack rights in this channel: Send Messages." in told.text


@pytest.mark.parametrize("rights", [BOT_RIGHTS, ADMINISTRATOR], ids=["invited", "administrator"])
async def test_with_its_rights_a_board_is_promised_with_its_pin(
    world: World, keeper: Keeper, rights: int
) -> None:
    where = garden(world, rights)
    async with world.running(keeper()):
        told = await world.slash("board post", DISTANCES, user=PEBBLE, where=where)
    assert "posted and pinned here in a moment" in told.text
    assert "I lack" not in told.text


async def test_a_reminder_is_not_promised_where_the_bot_may_not_write(
    world: World, keeper: Keeper, store: Store
) -> None:
    where = garden(world, BOT_RIGHTS & ~SEND_MESSAGES)
    async with world.running(keeper()):
        refused = await world.slash("remind me", HERE, where=where)
        assert await store.reminders.all(FERN.id) == ()
        taken = await world.slash("remind me", {**HERE, "where": "message"}, where=where)
    assert "I may not write in this channel" in refused.text
    assert "where:message" in refused.text
    assert "by direct message" in taken.text


async def test_a_reminder_needs_no_right_to_pin(world: World, keeper: Keeper) -> None:
    where = garden(world, BOT_RIGHTS & ~PIN_MESSAGES)
    async with world.running(keeper()):
        taken = await world.slash("remind me", HERE, where=where)
    assert "in this channel" in taken.text


async def test_where_the_bot_is_only_brought_along_a_reminder_comes_by_message(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        refused = await world.slash("remind me", HERE, where=between_friends())
    assert "this is no channel of a server" in refused.text
