"""What goes out as a file comes back as it was, in any database, or not at all."""

from datetime import UTC, datetime, timedelta
from itertools import count

import pytest
from hypothesis import HealthCheck, given, settings
from pydantic import ValidationError

from bot.database.errors import LimitError
from bot.database.store import Store
from bot.saved.group import By
from bot.saved.group_file import ServerExport
from bot.saved.keeper import MOST_ENCLOSURES, Enclosure
from bot.saved.keeper_file import KeeperExport
from bot.saved.reminders import About, ReminderExport
from bot.saved.values import name_key
from tests.bot.database.kept_values import NOW, keeper_exports, server_exports
from tests.some import some

FERN = 4_000_000_000_000_000_001
BY = By(31, NOW)
numbers = count(1000)
# One store serves all examples: each example takes a server or a keeper of its own.
over_a_store = settings(
    max_examples=some(25),
    deadline=None,
    suppress_health_check=[HealthCheck.function_scoped_fixture],
)


def in_order(given: ServerExport) -> ServerExport:
    return given.model_copy(
        update={
            "lamps": tuple(sorted(given.lamps, key=lambda x: name_key(x.name))),
            "screens": tuple(sorted(given.screens, key=lambda x: name_key(x.name))),
            "targets": tuple(sorted(given.targets, key=lambda x: (x.animal, x.subject))),
            "animals": tuple(sorted(given.animals, key=lambda x: name_key(x.name))),
            "boards": tuple(sorted(given.boards, key=lambda x: (x.channel, x.topic))),
        }
    )


def by_name(given: ServerExport) -> ServerExport:
    return in_order(given).model_copy(update={"channels": dict(sorted(given.channels.items()))})


def alike(given: KeeperExport) -> object:
    """Return a keeper's file without the order in which the database keeps things."""
    enclosures = {
        (e.name, e.setup.model_dump_json(), frozenset(r.model_dump_json() for r in e.readings))
        for e in given.enclosures
    }
    reminders = {r.model_dump_json() for r in given.reminders}
    spares = {s.model_dump_json() for s in given.spares}
    return given.settings, enclosures, reminders, spares


@over_a_store
@given(server_exports)
async def test_a_groups_data_come_back_as_they_went_out(store: Store, given: ServerExport) -> None:
    text = given.model_dump_json()
    server = next(numbers)
    await store.exchange.take_server(server, ServerExport.model_validate_json(text), BY)
    out = await store.exchange.server(server)
    # The database sorts names by code points or by its locale; the order does not matter.
    assert by_name(out) == by_name(given)
    await store.exchange.take_server(server, out, BY)
    assert by_name(await store.exchange.server(server)) == by_name(given)


@over_a_store
@given(keeper_exports())
async def test_a_keepers_data_come_back_as_they_went_out_and_twice_doubles_nothing(
    store: Store, given: KeeperExport
) -> None:
    text = given.model_dump_json()
    keeper = next(numbers)
    for _ in range(2):
        await store.exchange.take_keeper(keeper, KeeperExport.model_validate_json(text), NOW)
        assert alike(await store.exchange.keeper(keeper)) == alike(given)


async def test_an_import_adds_and_replaces_and_leaves_the_rest(store: Store) -> None:
    await store.enclosures.put(FERN, "Left", {"distance_m": 0.3})
    await store.enclosures.put(FERN, "Right", {"distance_m": 0.4})
    new = KeeperExport(enclosures=(Enclosure(name="RIGHT"), Enclosure(name="Third")))
    await store.exchange.take_keeper(FERN, new, NOW)
    kept = {e.name: e.setup.distance_m for e in await store.enclosures.all(FERN)}
    assert kept == {"Left": 0.3, "RIGHT": None, "Third": None}


async def test_an_import_over_a_limit_keeps_nothing_of_it(store: Store) -> None:
    await store.enclosures.put(FERN, "Mine", {})
    many = tuple(Enclosure(name=f"Box {n}") for n in range(MOST_ENCLOSURES))
    with pytest.raises(LimitError):
        await store.exchange.take_keeper(FERN, KeeperExport(enclosures=many), NOW)
    assert await store.enclosures.names(FERN) == ("Mine",)


async def test_reminders_that_are_past_are_left_out_and_repeated_ones_go_on(
    store: Store,
) -> None:
    past = NOW - timedelta(days=3)
    once = ReminderExport(about=About.TUBE, due=past, zone="UTC")
    weekly = ReminderExport(about=About.METER, due=past, zone="UTC", every_days=7)
    await store.exchange.take_keeper(FERN, KeeperExport(reminders=(once, weekly)), NOW)
    (kept,) = await store.reminders.all(FERN)
    assert (kept.about, kept.due) == (About.METER, past + timedelta(days=7))


REMINDER = '{"about": "tube", "due": "2026-05-04T12:00:00%s", "zone": "UTC"%s}'


@pytest.mark.parametrize(
    "text",
    [
        "",
        "[]",
        "{}x",
        '{"noonstone": "server"}',
        '{"noonstone": "keeper", "version": 4}',
        '{"noonstone": "keeper", "surprise": 1}',
        '{"noonstone": "keeper", "enclosures": [{"name": "@everyone"}]}',
        '{"noonstone": "keeper", "enclosures": [{"name": "Box"}, {"name": "BOX"}]}',
        '{"noonstone": "keeper", "enclosures": [{"name": "B", "setup": {"distance_m": NaN}}]}',
        '{"noonstone": "keeper", "enclosures": [{"name": "B", "setup": {"animal": "unicorn"}}]}',
        '{"noonstone": "keeper", "settings": {"zone": "../../etc/passwd"}}',
        '{"noonstone": "keeper", "reminders": [%s]}' % (REMINDER % ("", "")),
        '{"noonstone": "keeper", "reminders": [%s]}' % (REMINDER % ("Z", ', "enclosure": "no"')),
    ],
)
def test_a_file_that_is_not_sound_is_refused(text: str) -> None:
    with pytest.raises(ValidationError):
        KeeperExport.model_validate_json(text)


def test_moments_in_a_file_are_in_utc_and_say_so() -> None:
    due = datetime(2026, 6, 1, 8, tzinfo=UTC)
    given = KeeperExport(reminders=(ReminderExport(about=About.TUBE, due=due, zone="UTC"),))
    assert '"due":"2026-06-01T08:00:00Z"' in given.model_dump_json()
