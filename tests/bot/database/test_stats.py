"""What moderators are shown of the counts is the same from either database."""

from datetime import timedelta

from bot.ask import ask
from bot.database.store import Store
from bot.desk import Desk
from bot.preferences import Preferences
from bot.saved.counts import Asked
from tests.bot.database.conftest import NOW

GARDEN = 5_000_000_000_000_000_001
DISTANCE, DRAGON = (Asked.QUESTION, "distance"), (Asked.ANIMAL, "bearded-dragon")
SCREENS = (Asked.PAGE, "screens")


async def test_the_weeks_and_totals_of_a_server(store: Store) -> None:
    today = NOW.date()
    await store.counts.add(GARDEN, today - timedelta(weeks=2), {DISTANCE: 4, DRAGON: 3})
    await store.counts.add(GARDEN, today - timedelta(weeks=2), {DISTANCE: 2})
    await store.counts.add(GARDEN, today, {DISTANCE: 1, SCREENS: 2})
    await store.counts.add(GARDEN + 1, today, {DISTANCE: 50})
    desk = Desk(store, 31, GARDEN, 61, moderator=True, now=NOW)
    reply = await ask("server stats", Preferences(), desk)
    assert reply.answer.startswith(
        "7 questions asked in 3 weeks, since Monday 20 April 2026. "
        "3 animals named and 2 guide pages opened."
    )
    assert reply.table is not None
    assert reply.table.rows == (
        ("4 May 2026 (so far)", "1", "0", "2"),
        ("27 April 2026", "0", "0", "0"),
        ("20 April 2026", "6", "3", "0"),
    )
    assert reply.picture is not None
    assert "Questions asked by week, the oldest first: 6, 0, 1 so far." in reply.picture.alt
