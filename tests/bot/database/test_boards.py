"""Boards: one a topic and channel, looked at by one process, wishes never lost."""

from datetime import timedelta

import pytest

from bot.database.boards import LEASE
from bot.database.errors import LimitError
from bot.database.store import Store
from bot.saved.boards import MOST_BOARDS, BoardState, Topic
from bot.saved.group import By
from bot.saved.reminders import Trouble
from tests.bot.database.large import counted_statements

GARDEN, CHANNEL = 51, 61
ONE, OTHER = "process one", "process other"
HOUR = timedelta(hours=1)


async def test_a_topic_has_one_board_in_a_channel(store: Store, by: By) -> None:
    first, known = await store.boards.put(GARDEN, CHANNEL, Topic.DISTANCES, (), by)
    assert not known
    second, known = await store.boards.put(GARDEN, CHANNEL, Topic.DISTANCES, ["leopard-gecko"], by)
    assert known
    assert second.id == first.id
    await store.boards.put(GARDEN, CHANNEL, Topic.GUIDE, (), by)
    await store.boards.put(GARDEN, CHANNEL + 1, Topic.GUIDE, (), by)
    boards = await store.boards.all(GARDEN)
    assert [(b.channel, b.topic, b.animals) for b in boards] == [
        (CHANNEL, Topic.DISTANCES, ("leopard-gecko",)),
        (CHANNEL, Topic.GUIDE, ()),
        (CHANNEL + 1, Topic.GUIDE, ()),
    ]
    assert await store.boards.all(GARDEN + 1) == ()


async def test_a_new_board_is_looked_at_at_once_and_by_one_process(store: Store, by: By) -> None:
    await store.boards.put(GARDEN, CHANNEL, Topic.GUIDE, (), by)
    assert await store.boards.next_look() == by.at
    (look,) = await store.boards.claim(ONE, by.at, 10)
    assert (look.unsure, look.board.message) == (False, None)
    assert await store.boards.claim(OTHER, by.at + HOUR / 60, 10) == ()
    shown = look.board.model_copy(
        update={"message": 71, "pinned": True, "fingerprint": "f", "trouble": Trouble.NONE}
    )
    assert await store.boards.shown(shown, ONE, by.at, by.at + HOUR)
    assert await store.boards.all(GARDEN) == (shown,)
    assert await store.boards.claim(OTHER, by.at + HOUR / 2, 10) == ()
    (again,) = await store.boards.claim(OTHER, by.at + HOUR, 10)
    assert not again.unsure


async def test_a_claim_that_ran_out_goes_to_the_next_who_is_told_to_look_first(
    store: Store, by: By
) -> None:
    await store.boards.put(GARDEN, CHANNEL, Topic.GUIDE, (), by)
    (first,) = await store.boards.claim(ONE, by.at, 10)
    (second,) = await store.boards.claim(OTHER, by.at + LEASE, 10)
    assert second.unsure
    assert not await store.boards.shown(first.board, ONE, by.at, by.at + HOUR)
    assert await store.boards.shown(second.board, OTHER, by.at, by.at + HOUR)


async def test_a_wish_during_the_work_has_the_board_looked_at_again(store: Store, by: By) -> None:
    await store.boards.put(GARDEN, CHANNEL, Topic.GUIDE, (), by)
    (look,) = await store.boards.claim(ONE, by.at, 10)
    await store.boards.put(GARDEN, CHANNEL, Topic.GUIDE, ["leopard-gecko"], by)
    assert await store.boards.claim(OTHER, by.at, 10) == ()
    await store.boards.shown(look.board, ONE, by.at, by.at + HOUR)
    (again,) = await store.boards.claim(OTHER, by.at, 10)
    assert again.board.animals == ("leopard-gecko",)


async def test_changed_data_have_a_groups_boards_looked_at_again(store: Store, by: By) -> None:
    for server in (GARDEN, GARDEN + 1):
        await store.boards.put(server, CHANNEL + server, Topic.GUIDE, (), by)
    for look in await store.boards.claim(ONE, by.at, 10):
        await store.boards.shown(look.board, ONE, by.at, by.at + HOUR)
    await store.boards.look_again(by.at, GARDEN)
    assert [x.board.server for x in await store.boards.claim(ONE, by.at, 10)] == [GARDEN]
    with counted_statements(store) as sent:
        await store.boards.look_again(by.at)
    assert [statement.split()[0] for statement in sent if "board" in statement] == ["UPDATE"]
    assert [x.board.server for x in await store.boards.claim(ONE, by.at, 10)] == [GARDEN + 1]


async def test_a_board_leaves_when_it_was_taken_down(store: Store, by: By) -> None:
    await store.boards.put(GARDEN, CHANNEL, Topic.GUIDE, (), by)
    assert not await store.boards.leave(GARDEN + 1, CHANNEL, Topic.GUIDE, by)
    assert await store.boards.leave(GARDEN, CHANNEL, Topic.GUIDE, by)
    (look,) = await store.boards.claim(ONE, by.at, 10)
    assert look.board.state is BoardState.LEAVING
    assert not await store.boards.gone(look.board, OTHER)
    assert await store.boards.gone(look.board, ONE)
    assert await store.boards.all(GARDEN) == ()
    assert [line.after for line in await store.changes.newest(GARDEN, 9)] == ["", "shown"]


async def test_a_board_wanted_again_while_it_is_taken_down_stays(store: Store, by: By) -> None:
    await store.boards.put(GARDEN, CHANNEL, Topic.GUIDE, (), by)
    await store.boards.leave(GARDEN, CHANNEL, Topic.GUIDE, by)
    (look,) = await store.boards.claim(ONE, by.at, 10)
    await store.boards.put(GARDEN, CHANNEL, Topic.GUIDE, (), by)
    assert not await store.boards.gone(look.board, ONE)
    (board,) = await store.boards.all(GARDEN)
    assert board.state is BoardState.SHOWN


async def test_a_group_has_no_more_boards_than_the_limit(store: Store, by: By) -> None:
    for number in range(MOST_BOARDS):
        await store.boards.put(GARDEN, number, Topic.GUIDE, (), by)
    with pytest.raises(LimitError, match=str(MOST_BOARDS)):
        await store.boards.put(GARDEN, 99, Topic.GUIDE, (), by)


async def test_a_look_that_was_broken_off_is_taken_up_at_once_and_unsure(
    store: Store, by: By
) -> None:
    await store.boards.put(GARDEN, CHANNEL, Topic.GUIDE, (), by)
    (look,) = await store.boards.claim(ONE, by.at, 10)
    await store.boards.released(look.board, OTHER, by.at)
    assert await store.boards.claim(OTHER, by.at, 10) == ()
    await store.boards.released(look.board, ONE, by.at)
    (again,) = await store.boards.claim(OTHER, by.at, 10)
    assert again.unsure


async def test_a_deleted_channel_takes_its_boards_along_and_no_others(store: Store, by: By) -> None:
    for channel in (CHANNEL, CHANNEL + 1):
        await store.boards.put(GARDEN, channel, Topic.GUIDE, (), by)
    await store.boards.channel_gone(CHANNEL)
    assert [board.channel for board in await store.boards.all(GARDEN)] == [CHANNEL + 1]


async def test_two_groups_have_boards_of_one_topic_for_one_channel_until_it_is_looked_at(
    store: Store, by: By
) -> None:
    """A file that was taken back may name any channel, and must keep nobody from their own."""
    await store.boards.put(GARDEN, CHANNEL, Topic.GUIDE, (), by)
    _, known = await store.boards.put(GARDEN + 1, CHANNEL, Topic.GUIDE, (), by)
    assert not known


async def test_the_log_tells_who_changed_each_board_last(store: Store, by: By) -> None:
    await store.boards.put(GARDEN, CHANNEL, Topic.GUIDE, (), by)
    await store.boards.put(GARDEN, CHANNEL, Topic.DISTANCES, ["boa"], by)
    other = By(by.who + 1, by.at + HOUR)
    await store.boards.put(GARDEN, CHANNEL, Topic.DISTANCES, ["boa", "corn-snake"], other)
    await store.servers.change(GARDEN, other, units="cm")
    last = await store.changes.last_of(GARDEN, "board")
    assert {name: (one.who, one.before, one.after) for name, one in last.items()} == {
        f"guide in {CHANNEL}": (by.who, "", "shown"),
        f"distances in {CHANNEL}": (other.who, "boa", "boa; corn-snake"),
    }
    assert await store.changes.last_of(GARDEN + 1, "board") == {}
