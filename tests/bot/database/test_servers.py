"""What a group keeps: settings, channels, own figures, the log, and how it is forgotten."""

from datetime import UTC, date, datetime, timedelta

import pytest

from bot.database.changes import MOST_CHANGES
from bot.database.errors import LimitError
from bot.database.servers import GRACE
from bot.database.store import Store
from bot.language.quantities import Units
from bot.saved.counts import Asked, week_of
from bot.saved.group import (
    MOST_ANIMALS,
    MOST_LAMPS,
    By,
    OwnAnimal,
    OwnLamp,
    OwnRange,
    OwnScreen,
    OwnSubject,
    OwnTarget,
    ServerSettings,
    Shown,
)
from bot.saved.wrongs import MOST_WRONGS, Wrong
from calc.animal import Subject

GARDEN, BURROW = 5_000_000_000_000_000_001, 5_000_000_000_000_000_002
MAY = date(2026, 5, 4)


def lamp(name: str = "Hood by the door", constant: float = 1.9) -> OwnLamp:
    return OwnLamp(
        name=name,
        constant_uvi_m=constant,
        doubt_factor=1.15,
        readings=3,
        lit_length_m=0.52,
        set_on=MAY,
    )


def own_animal(name: str = "Moss lizard") -> OwnAnimal:
    wants: dict[OwnSubject, OwnRange] = {Subject.COOL_AIR: OwnRange(low=18.0, high=24.0)}
    return OwnAnimal(name=name, wants=wants, night_limit_c=9.0, set_on=MAY)


def target(low: float = 3.0, high: float = 4.0) -> OwnTarget:
    return OwnTarget(animal="bearded-dragon", subject=Subject.UVI, low=low, high=high, set_on=MAY)


async def test_a_server_of_which_nothing_is_kept_leaves_all_to_the_asker(store: Store) -> None:
    assert await store.servers.settings(GARDEN) == ServerSettings()
    assert await store.figures.own(GARDEN) == (await store.figures.own(BURROW))
    assert await store.servers.known() == frozenset()


async def test_settings_are_changed_one_by_one_and_stay_with_their_server(
    store: Store, by: By
) -> None:
    await store.servers.change(GARDEN, by, units=Units.CM)
    await store.servers.change(GARDEN, by, animal="bearded-dragon")
    await store.servers.change(BURROW, by, zone="Europe/Berlin")
    kept = await store.servers.settings(GARDEN)
    assert kept == ServerSettings(units=Units.CM, animal="bearded-dragon")
    await store.servers.change(GARDEN, by, units=None)
    assert (await store.servers.settings(GARDEN)).units is None


async def test_a_setting_that_cannot_be_is_refused_and_nothing_is_kept(
    store: Store, by: By
) -> None:
    with pytest.raises(ValueError, match="animal"):
        await store.servers.change(GARDEN, by, animal="unicorn")
    assert await store.servers.known() == frozenset()


async def test_channels_are_public_or_private_or_left_alone(store: Store, by: By) -> None:
    await store.servers.show(GARDEN, 61, Shown.PUBLIC, by)
    await store.servers.show(GARDEN, 62, Shown.PRIVATE, by)
    await store.servers.show(GARDEN, 61, Shown.PRIVATE, by)
    await store.servers.show(GARDEN, 62, None, by)
    assert await store.servers.channels(GARDEN) == {61: Shown.PRIVATE}


async def test_a_figure_of_the_same_name_is_replaced_whatever_its_spelling(
    store: Store, by: By
) -> None:
    assert not await store.figures.put(GARDEN, lamp(), by)
    assert await store.figures.put(GARDEN, lamp("hood  BY the door", 2.0), by)
    own = await store.figures.own(GARDEN)
    assert [(x.name, x.constant_uvi_m) for x in own.lamps] == [("hood BY the door", 2.0)]
    assert (await store.figures.own(BURROW)).lamps == ()


async def test_figures_of_each_kind_are_kept_and_removed(store: Store, by: By) -> None:
    screen = OwnScreen(name="Mesh lid", passes=0.6, set_on=MAY)
    figures = (lamp(), screen, target(), own_animal())
    for figure in figures:
        await store.figures.put(GARDEN, figure, by)
    own = await store.figures.own(GARDEN)
    assert (*own.lamps, *own.screens, *own.targets, *own.animals) == figures
    for figure in figures:
        assert await store.figures.remove(GARDEN, figure, by)
        assert not await store.figures.remove(GARDEN, figure, by)
    assert await store.figures.own(GARDEN) == await store.figures.own(BURROW)


async def test_a_group_keeps_no_more_lamps_than_the_limit(store: Store, by: By) -> None:
    for number in range(MOST_LAMPS):
        await store.figures.put(GARDEN, lamp(f"Lamp {number}"), by)
    with pytest.raises(LimitError, match=str(MOST_LAMPS)):
        await store.figures.put(GARDEN, lamp("One more"), by)
    assert await store.figures.put(GARDEN, lamp("Lamp 7", 1.2), by)
    assert len((await store.figures.own(GARDEN)).lamps) == MOST_LAMPS


async def test_a_group_adds_no_more_animals_than_the_limit(store: Store, by: By) -> None:
    for number in range(MOST_ANIMALS):
        await store.figures.put(GARDEN, own_animal(f"Moss lizard {number}"), by)
    with pytest.raises(LimitError, match=str(MOST_ANIMALS)):
        await store.figures.put(GARDEN, own_animal("One more"), by)
    assert await store.figures.put(GARDEN, own_animal("moss lizard 7"), by)
    assert (await store.figures.own(BURROW)).animals == ()


async def test_the_log_says_who_changed_what_from_what_to_what_and_when(
    store: Store, by: By
) -> None:
    await store.figures.put(GARDEN, target(), by)
    await store.figures.put(GARDEN, target(2.5, 4.0), by)
    await store.servers.change(GARDEN, by, units=Units.CM)
    await store.servers.change(GARDEN, by, units=Units.CM)
    lines = await store.changes.newest(GARDEN, 10)
    told = [(line.what, line.name, line.who, line.at) for line in lines]
    assert told == [
        ("setting", "units", by.who, by.at),
        ("target", "bearded-dragon uvi", by.who, by.at),
        ("target", "bearded-dragon uvi", by.who, by.at),
    ]
    assert '"low":3.0' in lines[1].before
    assert '"low":2.5' in lines[1].after
    assert await store.changes.newest(BURROW, 10) == ()


@pytest.mark.slow
async def test_the_log_keeps_the_newest_lines_only(store: Store, by: By) -> None:
    for number in range(MOST_CHANGES + 3):
        await store.servers.show(
            GARDEN, number % 2, Shown(["private", "public"][number // 2 % 2]), by
        )
    lines = await store.changes.newest(GARDEN, MOST_CHANGES * 2)
    assert len(lines) == MOST_CHANGES


async def test_a_server_that_removed_the_bot_is_deleted_after_the_grace(
    store: Store, by: By
) -> None:
    for server in (GARDEN, BURROW):
        await store.figures.put(server, lamp(), by)
    await store.servers.left(GARDEN, by.at)
    # A second notice does not begin the grace anew.
    await store.servers.left(GARDEN, by.at + timedelta(days=9))
    assert await store.servers.known() == {BURROW}
    assert await store.servers.away() == {GARDEN}
    assert await store.servers.sweep(by.at + GRACE - timedelta(seconds=1)) == 0
    assert (await store.figures.own(GARDEN)).lamps
    assert await store.servers.sweep(by.at + GRACE) == 1
    assert not (await store.figures.own(GARDEN)).lamps
    assert await store.changes.newest(GARDEN, 10) == ()
    assert (await store.figures.own(BURROW)).lamps


async def test_a_server_that_comes_back_keeps_its_data(store: Store, by: By) -> None:
    await store.figures.put(GARDEN, lamp(), by)
    await store.servers.left(GARDEN, by.at)
    await store.servers.came(GARDEN)
    assert await store.servers.sweep(by.at + 2 * GRACE) == 0


async def test_what_is_asked_is_counted_by_week(store: Store) -> None:
    distance, dragon = (Asked.QUESTION, "distance"), (Asked.ANIMAL, "bearded-dragon")
    await store.counts.add(GARDEN, MAY, {distance: 2, dragon: 1})
    await store.counts.add(GARDEN, MAY, {distance: 3})
    await store.counts.add(GARDEN, MAY + timedelta(days=7), {distance: 1})
    await store.counts.add(BURROW, MAY, {distance: 9})
    await store.counts.add(GARDEN, MAY, {})
    told = [(c.week, c.kind, c.name, c.times) for c in await store.counts.since(GARDEN, MAY)]
    assert told == [
        ("2026-W19", Asked.ANIMAL, "bearded-dragon", 1),
        ("2026-W19", Asked.QUESTION, "distance", 5),
        ("2026-W20", Asked.QUESTION, "distance", 1),
    ]


async def test_counts_of_long_ago_are_dropped(store: Store) -> None:
    await store.counts.add(GARDEN, MAY, {(Asked.PAGE, "screens"): 1})
    later = MAY + timedelta(weeks=105)
    await store.counts.add(GARDEN, later, {(Asked.PAGE, "screens"): 1})
    assert [c.week for c in await store.counts.since(GARDEN, MAY)] == [week_of(later)]


async def test_moments_come_back_in_utc_and_one_without_a_zone_is_refused(
    store: Store, by: By
) -> None:
    summer = datetime.fromisoformat("2026-07-01T08:00:00+02:00")
    await store.servers.change(GARDEN, By(1, summer), units=Units.IN)
    line = (await store.changes.newest(GARDEN, 1))[0]
    assert line.at == summer
    assert line.at.tzinfo is UTC
    with pytest.raises(Exception, match="zone"):
        await store.servers.change(GARDEN, By(1, summer.replace(tzinfo=None)), units=Units.CM)


async def test_what_was_called_wrong_is_kept_for_its_group_alone_and_the_oldest_go(
    store: Store,
) -> None:
    day = date(2026, 5, 4)
    for number in range(MOST_WRONGS + 2):
        wrong = Wrong(day=day, command="night", given={"room": f"{number} F"})
        await store.wrongs.add(71, wrong)
    await store.wrongs.add(72, Wrong(day=day, command="temps", given={}))
    kept = await store.wrongs.newest(71)
    assert [one.given["room"] for one in kept] == [
        f"{number} F" for number in range(MOST_WRONGS + 1, 1, -1)
    ]
    assert await store.wrongs.clear(71) == MOST_WRONGS
    assert await store.wrongs.newest(71) == ()
    assert len(await store.wrongs.newest(72)) == 1
    await store.forgetting.server(72)
    assert await store.wrongs.newest(72) == ()
