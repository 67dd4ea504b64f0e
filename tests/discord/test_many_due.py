"""Much that is due at once: so many at a time, each once, and one that hangs or fails alone."""

import asyncio
from collections.abc import Iterator
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from bot.database.errors import StoreUnavailableError
from bot.database.store import Store
from bot.fronts.discord.upkeep import _REMINDING
from bot.fronts.discord.watching import watched
from bot.saved.reminders import Reminder, State
from bot.serving import hands as hands_module
from bot.serving import rounds
from bot.serving.hands import Hands, Pace
from tests.discord.cast import FERN, GARDEN, PEBBLE, Person
from tests.discord.platform import Fault
from tests.discord.saving import Keeper, keeper, messages_to, store
from tests.discord.test_boards import DISTANCES
from tests.discord.test_reminders import HOUR, NOW, remind, settled
from tests.discord.test_watching import fetched, free_port
from tests.discord.world import World

__all__ = ["keeper", "store"]

MANY = 3 * _REMINDING
OPEN, SEND = r"/users/@me/channels$", r"/channels/\d+/messages$"


@pytest.fixture(autouse=True)
def _in_haste(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(hands_module, "_A_SECOND", 10_000)


@pytest.fixture
def crowd(world: World) -> Iterator[list[Person]]:
    """Return many people whom the stand-in knows."""
    people = [replace(FERN, id=FERN.id + number) for number in range(MANY)]
    world.platform.people.update({person.id: person for person in people})
    return iter([people])


async def all_due(store: Store, people: list[Person]) -> list[Reminder]:
    return [await remind(store, NOW - HOUR, person=person) for person in people]


async def standing(store: Store, kept: list[Reminder], state: State) -> int:
    """Return how many stand so."""
    rows = [await store.reminders.named(reminder.keeper, reminder.id) for reminder in kept]
    return sum(row is not None and row.state is state for row in rows)


async def until_done(store: Store, kept: list[Reminder], many: int) -> None:
    """Wait until so many are delivered."""
    async with asyncio.timeout(60):
        while await standing(store, kept, State.DONE) < many:
            pass


async def test_so_many_are_under_way_at_once_and_no_more_are_claimed(
    world: World, keeper: Keeper, store: Store, crowd: Iterator[list[Person]]
) -> None:
    people = next(crowd)
    kept = await all_due(store, people)
    held = Fault(SEND, "hold", times=_REMINDING)
    world.platform.faults.append(held)
    async with world.running(keeper()):
        await world.platform.until(lambda: held.times == 0, "the first ones")
        assert await standing(store, kept, State.SENDING) == _REMINDING
        assert await standing(store, kept, State.WAITING) == MANY - _REMINDING
        held.released.set()
        for reminder in kept:
            await settled(store, reminder, State.DONE)
    assert [len(messages_to(world, person)) for person in people] == [1] * MANY


async def test_one_that_hangs_keeps_no_other_waiting(
    world: World, keeper: Keeper, store: Store, crowd: Iterator[list[Person]]
) -> None:
    people = next(crowd)
    kept = await all_due(store, people)
    held = Fault(SEND, "hold")
    world.platform.faults.append(held)
    async with world.running(keeper()):
        await until_done(store, kept, MANY - 1)
        assert await standing(store, kept, State.SENDING) == 1
        held.released.set()
        await until_done(store, kept, MANY)
    assert [len(messages_to(world, person)) for person in people] == [1] * MANY


@pytest.mark.slow
async def test_what_was_claimed_and_not_sent_is_given_back_when_it_stops(
    world: World,
    keeper: Keeper,
    store: Store,
    crowd: Iterator[list[Person]],
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(rounds, "_FINISH_WITHIN_S", 0.0)
    people = next(crowd)
    kept = await all_due(store, people)
    # The library opens them one after the other until it knows Discord's limit.
    held = Fault(OPEN, "hold")
    world.platform.faults.append(held)
    async with world.running(keeper()):
        await world.platform.until(lambda: held.times == 0, "the first ones")
    assert await standing(store, kept, State.WAITING) == MANY
    held.released.set()
    async with world.running(keeper()):
        for reminder in kept:
            await settled(store, reminder, State.DONE)
    looked = [s for s in world.platform.seen if s.method == "GET" and s.path.endswith("/messages")]
    assert looked == []
    assert [len(messages_to(world, person)) for person in people] == [1] * MANY


async def test_what_is_under_way_is_finished_when_it_stops_and_nothing_more_begun(
    world: World, keeper: Keeper, store: Store, crowd: Iterator[list[Person]]
) -> None:
    people = next(crowd)
    kept = await all_due(store, people)
    held = Fault(SEND, "hold", times=_REMINDING)
    world.platform.faults.append(held)
    client = keeper()
    async with world.running(client):
        await world.platform.until(lambda: held.times == 0, "the first ones")
        leaving = asyncio.create_task(client.leave())
        async with asyncio.timeout(60):
            while not client.in_flight.leaving:
                await asyncio.sleep(0)
        held.released.set()
        await leaving
    assert await standing(store, kept, State.DONE) == _REMINDING
    assert await standing(store, kept, State.WAITING) == MANY - _REMINDING


@pytest.mark.slow
async def test_a_reminder_that_is_refused_again_and_again_ends_and_the_list_says_so(
    world: World, keeper: Keeper, store: Store
) -> None:
    world.platform.people[FERN.id] = FERN
    kept = await remind(store, NOW - HOUR)
    world.platform.faults.append(Fault(SEND, "status", status=400, times=1_000))
    client = keeper()
    assert client.memory is not None
    ahead = timedelta(0)
    client.memory.clock = lambda: datetime.now(UTC) + ahead
    async with world.running(client), asyncio.timeout(60):
        while (await settled(store, kept, *State)).state is not State.STOPPED:
            ahead += timedelta(minutes=6)
            client.wake()
        listed = await world.slash("remind list", {})
    tries = [s for s in world.platform.seen if s.method == "POST" and s.path.endswith("/messages")]
    assert len(tries) == 12
    assert "stopped: Discord refused it again and again" in listed.text


@pytest.mark.slow
async def test_one_that_a_channel_never_takes_comes_by_direct_message(
    world: World, keeper: Keeper, store: Store
) -> None:
    world.platform.people[FERN.id] = FERN
    kept = await remind(store, NOW - HOUR, channel=GARDEN.channel_id)
    # As for a thread that is archived and locked.
    refused = Fault(rf"/channels/{GARDEN.channel_id}/messages$", "status", status=400, times=1_000)
    world.platform.faults.append(refused)
    client = keeper()
    assert client.memory is not None
    ahead = timedelta(0)
    client.memory.clock = lambda: datetime.now(UTC) + ahead
    async with world.running(client), asyncio.timeout(60):
        while (await settled(store, kept, *State)).state is not State.DONE:
            ahead += timedelta(minutes=6)
            client.wake()
    (post,) = messages_to(world, FERN)
    assert "may no longer write in the channel" in post.payload["content"]


async def test_the_counts_tell_what_came_of_reminders_and_boards_and_name_nobody(
    world: World, keeper: Keeper, store: Store
) -> None:
    closed = replace(FERN, id=FERN.id + 50, takes_dms=False)
    world.platform.people.update({FERN.id: FERN, closed.id: closed})
    late = await remind(store, NOW - HOUR)
    stopped = await remind(store, NOW - HOUR, person=closed)
    client, port = keeper(), free_port()
    async with watched(client, port), world.running(client):
        await settled(store, late, State.DONE)
        await settled(store, stopped, State.STOPPED)
        on_time = await remind(store, datetime.now(UTC), channel=GARDEN.channel_id)
        await world.slash("remind list", {})
        await settled(store, on_time, State.DONE)
        [post] = world.posted(GARDEN.channel_id)
        await world.press(post, "Remind me no more")
        await posted_board(world, store)
        _, counts = await fetched(port, "/metrics")
    told = {line for line in counts.splitlines() if line.startswith("noonstone_")}
    for outcome in ("delivered", "late", "undeliverable", "off"):
        assert f'noonstone_reminders_total{{outcome="{outcome}"}} 1.0' in told
    assert 'noonstone_reminders_total{outcome="unsure"} 0.0' in told
    assert 'noonstone_boards_total{outcome="troubled"} 0.0' in told
    assert 'noonstone_boards_total{outcome="shown"} 0.0' not in told
    for secret in (FERN.id, closed.id, GARDEN.id, GARDEN.channel_id, "UV meter"):
        assert str(secret) not in counts


async def posted_board(world: World, store: Store) -> None:
    """Have a board posted in the garden."""
    await world.slash("board post", DISTANCES, user=PEBBLE)
    async with asyncio.timeout(60):
        while not all(board.pinned for board in await store.boards.all(GARDEN.id)):
            await asyncio.sleep(0.005)


# --- the hands themselves ------------------------------------------------------------------------


async def test_what_nobody_expected_of_one_piece_keeps_no_other_from_being_done() -> None:
    pieces, done = list(range(7)), []

    async def claim(most: int) -> list[int]:
        return [pieces.pop(0) for _ in range(min(most, len(pieces)))]

    async def work(piece: int) -> None:
        if piece == 1:
            raise ZeroDivisionError
        done.append(piece)

    await Hands("one", 2, Pace()).work_off(claim, work)
    assert sorted(done) == [0, 2, 3, 4, 5, 6]


async def test_a_store_that_fails_ends_the_round_once_what_was_begun_is_finished() -> None:
    begun: list[int] = []
    finished: list[int] = []
    going_on = asyncio.Event()

    async def claim(most: int) -> list[int]:
        if begun:
            going_on.set()
            raise StoreUnavailableError
        return list(range(most))

    async def work(piece: int) -> None:
        begun.append(piece)
        if piece:
            await going_on.wait()
        finished.append(piece)

    with pytest.raises(StoreUnavailableError):
        await Hands("one", 2, Pace()).work_off(claim, work)
    assert sorted(finished) == begun == [0, 1]


async def test_turns_come_at_an_even_pace_and_a_refusal_costs_one(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.undo()
    waited: list[float] = []

    async def sleep(seconds: float) -> None:
        waited.append(seconds)

    monkeypatch.setattr(asyncio, "sleep", sleep)
    monkeypatch.setattr(asyncio.get_running_loop(), "time", lambda: 100.0)
    # A quarter of the bot has a quarter of its turns.
    pace = Pace(share=0.25)
    for _ in range(3):
        await pace.turn()
    pace.refused()
    await pace.turn()
    assert waited == pytest.approx([0.2, 0.4, 0.8])
