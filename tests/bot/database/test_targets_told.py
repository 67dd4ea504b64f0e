"""Who was told a target that changed is reminded of it once, whoever looks and how often."""

import asyncio
from datetime import timedelta

from bot.database.store import Store
from bot.questions.saved.targets import targets_of
from bot.saved.group import NOTHING_OWN, By, OwnTarget
from bot.saved.reminders import About, Reminder
from calc.animal import Subject
from tests.bot.database.kept_values import NOW

FERN, MOSS, GARDEN = 41, 42, 51
DRAGON = "bearded-dragon"
BY = By(31, NOW)


def target(low: float, high: float) -> OwnTarget:
    return OwnTarget(animal=DRAGON, subject=Subject.UVI, low=low, high=high, set_on=NOW.date())


async def told(store: Store, keeper: int, server: int | None) -> None:
    await store.enclosures.put(keeper, "Box", {"animal": DRAGON})
    told = {"Box": (DRAGON, targets_of(DRAGON, NOTHING_OWN))}
    await store.told.tell(keeper, server, told)


async def waiting(store: Store, keeper: int) -> list[Reminder]:
    return [r for r in await store.reminders.all(keeper) if r.about is About.RETARGET]


async def test_a_group_that_changes_a_figure_reminds_those_whom_it_told(store: Store) -> None:
    await told(store, FERN, GARDEN)
    await told(store, MOSS, None)
    before = await store.told.newest_change()
    await store.figures.put(GARDEN, target(1.0, 2.0), BY)
    assert await store.told.groups_changed(before) == {GARDEN}
    assert await store.told.look(targets_of, NOW, GARDEN) == 1
    (reminder,) = await waiting(store, FERN)
    ((moved),) = reminder.moved
    assert moved.now is not None
    assert (moved.subject, moved.now.low, moved.now.high) == (Subject.UVI, 1.0, 2.0)
    assert await waiting(store, MOSS) == []


async def test_nobody_is_told_twice_also_by_two_that_look_at_once(store: Store) -> None:
    await told(store, FERN, GARDEN)
    await store.figures.put(GARDEN, target(1.0, 2.0), BY)
    found = await asyncio.gather(*(store.told.look(targets_of, NOW) for _ in range(3)))
    assert sum(found) == 1
    assert len(await waiting(store, FERN)) == 1
    assert await store.told.look(targets_of, NOW + timedelta(days=1)) == 0


async def test_a_change_that_is_taken_back_before_it_was_told_tells_the_last(store: Store) -> None:
    await told(store, FERN, GARDEN)
    for low, high in ((1.0, 2.0), (1.5, 2.5)):
        await store.figures.put(GARDEN, target(low, high), BY)
        await store.told.look(targets_of, NOW)
    (reminder,) = await waiting(store, FERN)
    ((moved),) = reminder.moved
    assert moved.now is not None
    usual = targets_of(DRAGON, NOTHING_OWN)[Subject.UVI]
    assert (moved.before, moved.now.low) == (usual, 1.5)


async def test_a_newer_table_of_our_own_reminds_whoever_was_told_the_old_one(store: Store) -> None:
    await store.enclosures.put(FERN, "Box", {"animal": DRAGON})
    old = targets_of(DRAGON, NOTHING_OWN)
    aim = old[Subject.UVI]
    older = {**old, Subject.UVI: aim.model_copy(update={"high": aim.high + 1.0})}
    await store.told.tell(FERN, None, {"Box": (DRAGON, older)})
    assert await store.told.look(targets_of, NOW) == 1
    assert await store.told.look(targets_of, NOW) == 0
