"""Reminders: claimed once, delivered once, late after an outage, snoozed, stopped, put off."""

from datetime import UTC, datetime, timedelta

import pytest

from bot.database.errors import LimitError
from bot.database.reminders import DONE_KEPT, LEASE
from bot.database.store import Store
from bot.saved.reminders import (
    MOST_REMINDERS,
    About,
    Reminder,
    ReminderExport,
    State,
    Trouble,
    next_due,
)

FERN, MOSS = 4_000_000_000_000_000_001, 4_000_000_000_000_000_002
DUE = datetime(2026, 5, 4, 8, 0, tzinfo=UTC)
ONE, OTHER = "process one", "process other"
SOON = timedelta(seconds=1)


def wish(
    due: datetime = DUE, every_days: int | None = None, zone: str = "Europe/Berlin"
) -> ReminderExport:
    return ReminderExport(about=About.METER, due=due, zone=zone, every_days=every_days)


async def added(store: Store, reminder: ReminderExport | None = None) -> Reminder:
    return await store.reminders.add(FERN, reminder or wish(), None, None)


async def test_nothing_is_claimed_before_it_is_due(store: Store) -> None:
    kept = await added(store)
    assert await store.reminders.next_try() == DUE
    assert await store.reminders.claim(ONE, DUE - SOON, 10) == ()
    due = await store.reminders.claim(ONE, DUE, 10)
    assert [(d.reminder.id, d.unsure) for d in due] == [(kept.id, False)]


async def test_what_one_process_claimed_the_other_does_not_get(store: Store) -> None:
    await added(store)
    assert await store.reminders.claim(ONE, DUE, 10)
    assert await store.reminders.claim(OTHER, DUE + LEASE - SOON, 10) == ()


async def test_a_delivered_one_is_done_and_never_comes_again(store: Store) -> None:
    await added(store)
    (due,) = await store.reminders.claim(ONE, DUE, 10)
    assert await store.reminders.delivered(due.reminder, ONE, DUE)
    assert not await store.reminders.delivered(due.reminder, ONE, DUE)
    assert await store.reminders.claim(ONE, DUE + timedelta(days=9), 10) == ()
    assert await store.reminders.all(FERN) == ()
    assert await store.reminders.next_try() is None


async def test_a_claim_that_ran_out_goes_to_the_next_who_is_told_to_look_first(
    store: Store,
) -> None:
    await added(store)
    (first,) = await store.reminders.claim(ONE, DUE, 10)
    (second,) = await store.reminders.claim(OTHER, DUE + LEASE, 10)
    assert (first.unsure, second.unsure) == (False, True)
    assert not await store.reminders.delivered(first.reminder, ONE, DUE + LEASE)
    assert await store.reminders.delivered(second.reminder, OTHER, DUE + LEASE)


async def test_one_that_was_not_sent_is_tried_again_later_and_is_sure(store: Store) -> None:
    await added(store)
    later = DUE + timedelta(minutes=5)
    for failures in (1, 2):
        (due,) = await store.reminders.claim(ONE, later, 10)
        assert not due.unsure
        assert due.reminder.due == DUE
        later += timedelta(minutes=5)
        assert await store.reminders.failed(due.reminder, ONE, later) == failures
        assert await store.reminders.claim(ONE, later - SOON, 10) == ()


async def test_a_repeated_one_waits_for_its_next_day_at_the_same_time_of_day(
    store: Store,
) -> None:
    winter = datetime(2026, 3, 1, 8, 0, tzinfo=UTC)
    await added(store, wish(winter, every_days=30))
    (due,) = await store.reminders.claim(ONE, winter, 10)
    assert await store.reminders.delivered(due.reminder, ONE, winter)
    (kept,) = await store.reminders.all(FERN)
    # Nine in the morning in Berlin is eight in UTC before the clock change and seven after it.
    assert kept.due == datetime(2026, 3, 31, 7, 0, tzinfo=UTC)
    assert (kept.state, kept.occurrence) == (State.WAITING, 2)


async def test_after_an_outage_a_repeated_one_is_delivered_once_and_not_for_every_day_missed(
    store: Store,
) -> None:
    await added(store, wish(every_days=7))
    back = DUE + timedelta(days=40)
    (due,) = await store.reminders.claim(ONE, back, 10)
    assert due.reminder.due == DUE
    await store.reminders.delivered(due.reminder, ONE, back)
    assert await store.reminders.claim(ONE, back, 10) == ()
    (kept,) = await store.reminders.all(FERN)
    assert kept.due == DUE + timedelta(days=42)


async def test_a_delivered_one_can_be_snoozed_by_its_keeper_alone(store: Store) -> None:
    kept = await added(store)
    (due,) = await store.reminders.claim(ONE, DUE, 10)
    await store.reminders.delivered(due.reminder, ONE, DUE)
    until = DUE + timedelta(days=1)
    assert await store.reminders.snooze(MOSS, kept.id, until) is None
    snoozed = await store.reminders.snooze(FERN, kept.id, until)
    assert snoozed is not None
    assert (snoozed.due, snoozed.occurrence, snoozed.state) == (until, 2, State.WAITING)
    (again,) = await store.reminders.claim(ONE, until, 10)
    assert not again.unsure


async def test_snoozing_what_is_being_sent_takes_it_from_the_sender(store: Store) -> None:
    kept = await added(store)
    (due,) = await store.reminders.claim(ONE, DUE, 10)
    until = DUE + timedelta(days=1)
    await store.reminders.snooze(FERN, kept.id, until)
    assert not await store.reminders.delivered(due.reminder, ONE, DUE)
    (waiting,) = await store.reminders.all(FERN)
    assert waiting.due == until


async def test_one_that_is_off_is_gone_and_only_for_its_keeper(store: Store) -> None:
    kept = await added(store)
    assert not await store.reminders.off(MOSS, kept.id)
    assert await store.reminders.off(FERN, kept.id)
    assert not await store.reminders.off(FERN, kept.id)
    assert await store.reminders.claim(ONE, DUE, 10) == ()


async def test_a_channel_that_is_gone_turns_it_to_a_direct_message(store: Store) -> None:
    await store.reminders.add(FERN, wish(), 51, 61)
    (due,) = await store.reminders.claim(ONE, DUE, 10)
    assert (due.reminder.server, due.reminder.channel) == (51, 61)
    await store.reminders.by_message(due.reminder, ONE, DUE)
    (again,) = await store.reminders.claim(ONE, DUE, 10)
    assert (again.reminder.server, again.reminder.channel) == (None, None)
    assert again.reminder.trouble is Trouble.CHANNEL_GONE


async def test_one_that_cannot_be_delivered_is_stopped_and_says_why(store: Store) -> None:
    await added(store)
    (due,) = await store.reminders.claim(ONE, DUE, 10)
    await store.reminders.stop(due.reminder, ONE, Trouble.DM_CLOSED)
    (kept,) = await store.reminders.all(FERN)
    assert (kept.state, kept.trouble) == (State.STOPPED, Trouble.DM_CLOSED)
    assert await store.reminders.claim(ONE, DUE + 9 * LEASE, 10) == ()


async def test_what_was_delivered_long_ago_is_swept_away(store: Store) -> None:
    kept = await added(store)
    (due,) = await store.reminders.claim(ONE, DUE, 10)
    await store.reminders.delivered(due.reminder, ONE, DUE)
    assert await store.reminders.sweep(DUE + DONE_KEPT - SOON) == 0
    assert await store.reminders.named(FERN, kept.id) is not None
    assert await store.reminders.sweep(DUE + DONE_KEPT) == 1
    assert await store.reminders.named(FERN, kept.id) is None


async def test_a_person_has_no_more_open_reminders_than_the_limit(store: Store) -> None:
    for _ in range(MOST_REMINDERS):
        await added(store)
    with pytest.raises(LimitError, match=str(MOST_REMINDERS)):
        await added(store)
    claimed = await store.reminders.claim(ONE, DUE, 1)
    await store.reminders.delivered(claimed[0].reminder, ONE, DUE)
    await added(store)


async def test_reminders_in_a_server_that_is_forgotten_go_with_it(store: Store) -> None:
    await store.reminders.add(FERN, wish(), 51, 61)
    await added(store)
    assert await store.forgetting.server(51)
    assert [r.server for r in await store.reminders.all(FERN)] == [None]


@pytest.mark.parametrize("late_days", [0, 1, 6, 7, 8, 365])
def test_the_next_time_is_the_first_one_after_now(late_days: int) -> None:
    now = DUE + timedelta(days=late_days)
    following = next_due(DUE, "Australia/Sydney", 7, now)
    assert now < following <= now + timedelta(days=7, hours=1)


async def test_one_given_back_is_claimed_again_at_once_and_stays_as_sure_as_it_was(
    store: Store,
) -> None:
    await added(store)
    (due,) = await store.reminders.claim(ONE, DUE, 10)
    await store.reminders.released(due, OTHER, DUE)
    assert await store.reminders.claim(OTHER, DUE, 10) == ()
    await store.reminders.released(due, ONE, DUE)
    (sure,) = await store.reminders.claim(OTHER, DUE, 10)
    (unsure,) = await store.reminders.claim(ONE, DUE + LEASE, 10)
    await store.reminders.released(unsure, ONE, DUE + LEASE)
    (still,) = await store.reminders.claim(OTHER, DUE + LEASE, 10)
    assert (sure.unsure, unsure.unsure, still.unsure) == (False, True, True)


async def test_a_deleted_channel_turns_what_waits_for_it_to_messages_at_its_own_time(
    store: Store,
) -> None:
    gone, other = 61, 62
    for channel in (gone, other):
        await store.reminders.add(FERN, wish(), 51, channel)
    await store.reminders.channel_gone(gone)
    first, second = await store.reminders.all(FERN)
    assert (first.channel, first.server, first.trouble) == (None, None, Trouble.CHANNEL_GONE)
    assert (second.channel, second.trouble) == (other, Trouble.NONE)
    assert await store.reminders.next_try() == DUE
