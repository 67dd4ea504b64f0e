"""Reminders on Discord: once each, late ones said so, with buttons, whatever is closed or gone."""

import asyncio
import re
from dataclasses import replace
from datetime import UTC, datetime, timedelta

import pytest

from bot.database.reminders import LEASE
from bot.database.store import Store
from bot.language.tongue import Tongue
from bot.saved.reminders import About, Reminder, ReminderExport, State, Trouble
from tests.discord.answers import post_buttons
from tests.discord.cast import FERN, GARDEN, MOSS, Person, direct
from tests.discord.platform import Fault
from tests.discord.saving import Keeper, keeper, messages_to, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

NOW = datetime.now(UTC)
HOUR = timedelta(hours=1)


async def remind(
    store: Store,
    due: datetime | None = None,
    channel: int | None = None,
    every_days: int | None = None,
    person: Person = FERN,
) -> Reminder:
    wanted = ReminderExport(
        about=About.METER,
        due=due or datetime.now(UTC),
        zone="Europe/Berlin",
        every_days=every_days,
    )
    server = GARDEN.id if channel else None
    return await store.reminders.add(person.id, wanted, server, channel)


async def settled(store: Store, reminder: Reminder, *states: State) -> Reminder:
    """Return a reminder once it stands as wanted."""
    async with asyncio.timeout(60):
        while True:
            kept = await store.reminders.named(reminder.keeper, reminder.id)
            if kept is not None and kept.state in states:
                return kept
            await asyncio.sleep(0.005)


@pytest.fixture(autouse=True)
def _known(world: World) -> None:
    world.platform.people.update({person.id: person for person in (FERN, MOSS)})


async def test_it_speaks_the_language_that_its_keeper_chose(
    world: World, keeper: Keeper, store: Store
) -> None:
    await store.keepers.change(FERN.id, language=Tongue.GERMAN)
    await remind(store, NOW - HOUR, every_days=7)
    async with world.running(keeper()):
        (post,) = await world.platform.until(lambda: messages_to(world, FERN), "the reminder")
    due = int((NOW - HOUR).timestamp())
    first, *rest = post.payload["content"].split("\n")
    assert re.fullmatch(
        r"Eine Erinnerung: UV messen. Schreib den Wert auf mit </mine reading:\d+>.", first
    )
    assert rest == [
        f"Sie kommt zu spät: Fällig war sie am <t:{due}:F>.",
        "Sie kommt alle 7 Tage wieder.",
    ]
    assert next(iter(post_buttons(post))) == "Morgen"


async def test_one_that_fell_due_while_the_bot_was_away_comes_late_and_says_so(
    world: World, keeper: Keeper, store: Store
) -> None:
    kept = await remind(store, NOW - HOUR)
    async with world.running(keeper()):
        await settled(store, kept, State.DONE)
    async with world.running(keeper()):
        await world.slash("convert", {"value": "14in"})
    (post,) = messages_to(world, FERN)
    words = post.payload["content"]
    assert words.startswith("A reminder to read the UV meter.")
    assert f"it was due on <t:{int((NOW - HOUR).timestamp())}:F>" in words
    assert post.pings == frozenset()
    assert list(post_buttons(post)) == [
        "Tomorrow",
        "In a week",
        "In a month",
        "Remind me no more",
    ]


async def test_one_that_was_just_asked_for_comes_in_the_channel_and_pings_its_keeper_alone(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        kept = await remind(store, channel=GARDEN.channel_id)
        await world.slash("remind list", {})
        await settled(store, kept, State.DONE)
    (post,) = world.posted(GARDEN.channel_id)
    assert post.payload["content"].startswith(f"<@{FERN.id}>, a reminder to read the UV meter.")
    assert post.pings == {f"@{FERN.id}"}
    assert "late" not in post.payload["content"]


async def test_two_processes_over_one_store_send_each_once(
    world: World, keeper: Keeper, store: Store
) -> None:
    kept = [await remind(store, NOW - HOUR) for _ in range(6)]
    one, other = keeper(), keeper()
    async with world.running(one), world.running(other):
        for reminder in kept:
            await settled(store, reminder, State.DONE)
    assert len(messages_to(world, FERN)) == 6


async def test_one_comes_when_its_time_has_come(world: World, keeper: Keeper, store: Store) -> None:
    client = keeper()
    assert client.memory is not None
    ahead = timedelta(0)
    client.memory.clock = lambda: datetime.now(UTC) + ahead
    async with world.running(client):
        asked = await world.slash("remind me", {"about": "tube", "when": "in 3 days"})
        assert messages_to(world, FERN) == []
        ahead = timedelta(days=3, minutes=1)
        client.wake()
        await world.platform.until(lambda: messages_to(world, FERN), "the reminder")
        async with asyncio.timeout(60):
            while await store.reminders.all(FERN.id):
                pass
    assert "by direct message" in asked.text
    (post,) = messages_to(world, FERN)
    assert "replace the UV tube" in post.payload["content"]
    assert "late" not in post.payload["content"]


async def test_a_lost_answer_is_looked_for_before_anything_is_sent_again(
    world: World, keeper: Keeper, store: Store
) -> None:
    kept = await remind(store, NOW - HOUR)
    world.platform.faults.append(Fault(r"/channels/\d+/messages$", "lose", "POST"))
    client = keeper()
    assert client.memory is not None
    ahead = timedelta(0)
    client.memory.clock = lambda: datetime.now(UTC) + ahead
    async with world.running(client):
        await world.platform.until(lambda: messages_to(world, FERN), "the message")
        # Discord has forgotten the number of the first try by the time of the second.
        world.platform.nonces.clear()
        ahead = LEASE + timedelta(seconds=1)
        client.wake()
        await settled(store, kept, State.DONE)
    assert len(messages_to(world, FERN)) == 1


async def test_closed_direct_messages_stop_it_and_the_list_says_why(
    world: World, keeper: Keeper, store: Store
) -> None:
    world.platform.people[FERN.id] = replace(FERN, takes_dms=False)
    kept = await remind(store, NOW - HOUR)
    async with world.running(keeper()):
        stopped = await settled(store, kept, State.STOPPED)
        listed = await world.slash("remind list", {})
    assert stopped.trouble is Trouble.DM_CLOSED
    assert "your direct messages are closed" in listed.text


@pytest.mark.slow
@pytest.mark.parametrize("why", ["gone", "no right"])
async def test_a_channel_that_takes_nothing_any_more_turns_it_to_a_direct_message(
    world: World, keeper: Keeper, store: Store, why: str
) -> None:
    channel = 777 if why == "gone" else GARDEN.channel_id
    if why == "no right":
        world.platform.servers[0] = replace(GARDEN, bot_rights=0)
    kept = await remind(store, NOW - HOUR, channel=channel)
    async with world.running(keeper()):
        await settled(store, kept, State.DONE)
    (post,) = messages_to(world, FERN)
    assert "may no longer write in the channel" in post.payload["content"]


async def test_a_refused_one_is_tried_again_later_and_a_round_is_never_ended_by_it(
    world: World, keeper: Keeper, store: Store
) -> None:
    world.platform.faults.append(Fault(r"/channels/\d+/messages$", "status", "POST", status=400))
    first = await remind(store, NOW - 2 * HOUR)
    second = await remind(store, NOW - HOUR, person=MOSS)
    async with world.running(keeper()):
        await settled(store, second, State.DONE)
        waiting = await settled(store, first, State.WAITING)
    assert waiting.due == first.due
    assert messages_to(world, FERN) == []


async def test_a_repeated_one_waits_for_its_next_time(
    world: World, keeper: Keeper, store: Store
) -> None:
    kept = await remind(store, NOW - HOUR, every_days=7)
    async with world.running(keeper()):
        await world.platform.until(lambda: messages_to(world, FERN), "the message")
        async with asyncio.timeout(60):
            while (await store.reminders.all(FERN.id))[0].occurrence == 1:
                pass
    (waiting,) = await store.reminders.all(FERN.id)
    assert (waiting.id, waiting.due - kept.due) == (kept.id, timedelta(days=7))
    assert "again every 7 days" in messages_to(world, FERN)[0].payload["content"]


async def test_the_buttons_put_it_off_and_end_it_also_after_a_restart(
    world: World, keeper: Keeper, store: Store
) -> None:
    one, other = await remind(store, NOW - HOUR), await remind(store, NOW - HOUR)
    async with world.running(keeper()):
        for kept in (one, other):
            await settled(store, kept, State.DONE)
    first, second = messages_to(world, FERN)
    async with world.running(keeper()):
        put_off = await world.press(first, "In a week", where=direct(FERN))
        ended = await world.press(second, "Remind me no more", where=direct(FERN))
    assert "Put off until <t:" in put_off.data["content"]
    assert not put_off.data.get("components")
    assert "not come any more" in ended.data["content"]
    (waiting,) = await store.reminders.all(FERN.id)
    assert timedelta(days=6) < waiting.due - NOW < timedelta(days=8)
    assert waiting.occurrence == 2


async def test_nobody_else_presses_the_buttons_of_a_reminder(
    world: World, keeper: Keeper, store: Store
) -> None:
    kept = await remind(store, NOW - HOUR, channel=GARDEN.channel_id, every_days=7)
    async with world.running(keeper()):
        await world.platform.until(lambda: world.posted(GARDEN.channel_id), "the message")
        (post,) = world.posted(GARDEN.channel_id)
        off = await world.press(post, "Remind me no more", user=MOSS)
        later = await world.press(post, "Tomorrow", user=MOSS)
    assert "not a reminder of yours" in off.text
    assert off.ephemeral
    assert "not a reminder of yours" in later.text
    assert await store.reminders.named(FERN.id, kept.id) is not None
