"""The largest import that is allowed holds nobody up: few statements, and others save meanwhile."""

import asyncio

from bot.database.changes import MOST_CHANGES
from bot.database.store import Store
from bot.saved.group import By
from tests.bot.database.kept_values import NOW
from tests.bot.database.large import FULL_KEEPER, FULL_SERVER, LARGE, counted_statements
from tests.bot.database.test_exchange import alike, by_name

FERN, MOSS = 4_000_000_000_000_000_001, 4_000_000_000_000_000_002


async def test_another_keeper_saves_while_a_large_import_is_kept(store: Store) -> None:
    importing = asyncio.create_task(store.exchange.take_keeper(FERN, LARGE, NOW))
    saved = 0
    while not importing.done():
        await store.enclosures.put(MOSS, "Willow", {"distance_m": 0.4})
        saved += 1
    await importing
    assert saved
    assert await store.enclosures.all(FERN) == LARGE.enclosures
    assert await store.enclosures.names(MOSS) == ("Willow",)


async def test_a_large_import_takes_few_statements_also_over_what_is_there(store: Store) -> None:
    for _ in range(2):
        with counted_statements(store) as sent:
            await store.exchange.take_keeper(FERN, LARGE, NOW)
        # One for some hundred readings.
        assert len([statement for statement in sent if "reading" in statement]) <= 20
        assert len(sent) <= 32
    with counted_statements(store) as sent:
        assert await store.exchange.keeper(FERN) == LARGE
    assert len(sent) <= 8


async def test_the_loop_goes_on_while_a_large_import_is_kept_and_read(store: Store) -> None:
    turns = 0

    async def count_turns() -> None:
        nonlocal turns
        while True:
            await asyncio.sleep(0)
            turns += 1

    counting = asyncio.create_task(count_turns())
    await store.exchange.take_keeper(FERN, LARGE, NOW)
    kept, turns = turns, 0
    await store.exchange.keeper(FERN)
    counting.cancel()
    # At least once for each piece of 500.
    assert min(kept, turns) >= len(LARGE.enclosures) * 450 // 500


async def test_all_that_a_group_may_set_takes_few_statements(store: Store) -> None:
    for _ in range(2):
        with counted_statements(store) as sent:
            await store.exchange.take_server(71, FULL_SERVER, By(31, NOW))
        assert len(sent) <= 24
    assert by_name(await store.exchange.server(71)) == by_name(FULL_SERVER)
    # The log keeps the newest of more lines than it holds.
    assert len(await store.changes.newest(71, 10_000)) == MOST_CHANGES


async def test_all_that_a_keeper_may_keep_comes_back(store: Store) -> None:
    for _ in range(2):
        with counted_statements(store) as sent:
            await store.exchange.take_keeper(FERN, FULL_KEEPER, NOW)
        assert len(sent) <= 40
    assert alike(await store.exchange.keeper(FERN)) == alike(FULL_KEEPER)
