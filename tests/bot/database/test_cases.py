"""Cases in each database: whom they reach, who is reminded, and that nothing of them is left."""

from datetime import timedelta

from bot.database.store import Store
from bot.saved.cases import REST, Advice, Advised
from bot.saved.keeper import Reading, Spare
from bot.saved.reminders import About
from calc.quantities import Quantity
from tests.bot.database.kept_values import NOW

FERN, MOSS, GARDEN, HELPERS = 41, 42, 51, 61
TODAY = NOW.date()
COOL = Advice(day=TODAY, what=Advised.READ, of=Quantity.COOL_AIR)


async def shared(store: Store) -> int:
    await store.enclosures.put(FERN, "Box", {"animal": "bearded-dragon"})
    case = await store.cases.share(FERN, "Box", GARDEN, HELPERS, NOW)
    assert case is not None
    return case.number


async def abouts(store: Store, keeper: int) -> list[About]:
    return [reminder.about for reminder in await store.reminders.all(keeper)]


async def test_a_case_is_seen_where_its_keeper_agreed_and_nowhere_else(store: Store) -> None:
    number = await shared(store)
    assert [case.number for case in await store.cases.of_group(GARDEN, HELPERS)] == [number]
    for server, channel in ((GARDEN, 62), (GARDEN, None), (52, HELPERS)):
        assert await store.cases.of_group(server, channel) == ()
        assert await store.cases.advise(server, channel, number, MOSS, (COOL,), NOW) is None
        assert await store.cases.end(server, channel, number, NOW) is None


async def test_what_was_said_to_some_helpers_does_not_go_to_others(store: Store) -> None:
    number = await shared(store)
    await store.cases.advise(GARDEN, HELPERS, number, MOSS, (COOL,), NOW)
    moved = await store.cases.share(FERN, "Box", GARDEN, 62, NOW)
    assert moved is not None
    assert moved.advice == ()
    assert await store.cases.of_group(GARDEN, HELPERS) == ()


async def test_both_sides_are_reminded_once_of_what_moves(store: Store) -> None:
    number = await shared(store)
    for _ in range(2):
        await store.cases.advise(GARDEN, HELPERS, number, MOSS, (COOL,), NOW)
    assert await abouts(store, FERN) == [About.ADVISED]
    (waiting,) = await store.reminders.all(MOSS)
    assert (waiting.about, waiting.due) == (About.CASE, NOW + timedelta(days=7))
    later = NOW + timedelta(days=1)
    read = Reading(day=later.date(), of=Quantity.COOL_AIR, value=26.0)
    await store.enclosures.read(FERN, "Box", (read,))
    await store.cases.moved(FERN, "Box", later)
    (moved,) = await store.reminders.all(MOSS)
    assert moved.due == later
    # All of it is done, so nobody is asked to look at it any more.
    assert await abouts(store, FERN) == []


async def test_a_case_that_rests_is_forgotten_with_its_reminders(store: Store) -> None:
    number = await shared(store)
    await store.cases.advise(GARDEN, HELPERS, number, MOSS, (COOL,), NOW)
    assert await store.cases.sweep(NOW + REST - timedelta(seconds=1)) == 0
    assert await store.cases.sweep(NOW + REST) == 1
    assert await store.cases.of_keeper(FERN) == ()
    assert await abouts(store, FERN) == await abouts(store, MOSS) == []


async def test_either_side_ends_it_and_helpers_tell_the_keeper(store: Store) -> None:
    number = await shared(store)
    assert await store.cases.end(GARDEN, HELPERS, number, NOW) == "Box"
    assert await abouts(store, FERN) == [About.ENDED]
    await shared(store)
    assert await store.cases.end_of_keeper(FERN, "Box")
    assert not await store.cases.end_of_keeper(FERN, "Box")
    assert await store.cases.of_group(GARDEN, HELPERS) == ()


async def test_a_keeper_who_is_forgotten_leaves_no_case_and_no_lamp(store: Store) -> None:
    number = await shared(store)
    await store.cases.advise(GARDEN, HELPERS, number, MOSS, (COOL,), NOW)
    await store.spares.put(FERN, Spare(name="Tube", tube_percent=12.0))
    gone = await store.forgetting.keeper(FERN)
    assert (gone.cases, gone.spares) == (1, 1)
    assert await store.cases.of_group(GARDEN, HELPERS) == ()
    assert await store.spares.all(FERN) == ()
    assert await abouts(store, MOSS) == []


async def test_a_helper_who_is_forgotten_stands_by_no_advice(store: Store) -> None:
    number = await shared(store)
    await store.cases.advise(GARDEN, HELPERS, number, MOSS, (COOL,), NOW)
    assert (await store.forgetting.keeper(MOSS)).advice == 1
    (case,) = await store.cases.of_keeper(FERN)
    assert [(one.helper, one.bare) for one in case.advice] == [(None, COOL)]


async def test_a_group_that_is_forgotten_takes_its_cases_along(store: Store) -> None:
    await shared(store)
    await store.forgetting.server(GARDEN)
    assert await store.cases.of_keeper(FERN) == ()
    assert await store.enclosures.names(FERN) == ("Box",)


async def test_a_keepers_file_tells_of_cases_and_shares_none(store: Store) -> None:
    number = await shared(store)
    await store.cases.advise(GARDEN, HELPERS, number, MOSS, (COOL,), NOW)
    file = await store.exchange.keeper(FERN)
    assert [case.advice for case in file.cases] == [(COOL,)]
    await store.forgetting.keeper(FERN)
    await store.exchange.take_keeper(FERN, file, NOW)
    assert await store.enclosures.names(FERN) == ("Box",)
    assert await store.cases.of_keeper(FERN) == ()
