"""Readings of a group over the door: consent, what they show and to whom, what answers make."""

import json
from datetime import date, timedelta
from math import exp
from random import Random
from time import perf_counter

import pytest

from bot.asker import own_of
from bot.brief import MOST_LINES, phone_lines
from bot.database.store import Store
from bot.desk import Desk
from bot.drawing import Ladder
from bot.language.units import Units
from bot.preferences import LANGUAGES, Context, Language, Preferences
from bot.questions.uv.lamp_asked import classes_of
from bot.render.picture import page_of
from bot.render.picture.inks import Theme
from bot.reply import Reply
from bot.saved.pool import PooledReading
from calc.uv.lamp import Fixture, Lamp, uvi_at
from calc.uv.pool import ENOUGH_KEEPERS
from calc.uv.screen import NoScreen
from tests.bot.keeping.conftest import NOW, Ask
from tests.bot.keeping.people import FERN, GARDEN, MOSS, row, whole

TUBE = "tube:12% reflector:polished screen:none length:34in"
OFFER = f"mine offer readings:4.2 at 12 in {TUBE} age:8 months"
DISTANCE = f"distance {TUBE} animal:bearded dragon"
SAVE = f"mine save name:Box distance:14in age:8 months {TUBE}"
OTHER = 5_000_000_000_000_000_009
PLAN = (
    "plan animal:bearded dragon enclosure:48x24x36in lid:full mesh room:70F place:inside "
    "reflector:polished"
)


def reading(off: float, day: date = date(2026, 4, 1), age_days: int = 200) -> PooledReading:
    """Return a reading of a tube that gives so much of what its class gives new [ln 1]."""
    lamp = Lamp(12.0, Fixture.POLISHED, 0.819)
    uvi = float(uvi_at(lamp, 0.35, NoScreen())) * exp(off)
    return PooledReading(
        day=day,
        percent=12.0,
        reflector="polished",
        tube_length_m=0.849,
        age_days=age_days,
        distance_m=0.35,
        uvi=round(uvi, 3),
    )


async def given(store: Store, keepers: int, off: float = -0.5, fades: float = 0.0) -> None:
    """Give the garden a reading of so many keepers, and one two months before where it fades."""
    rng = Random(7)
    for keeper in range(keepers):
        of_one = off + rng.gauss(0.0, 0.1)
        readings = [reading(of_one)]
        if fades:
            before = date(2026, 4, 1) - timedelta(days=60)
            readings.append(reading(of_one + 2.0 * fades * rng.uniform(0.8, 1.2), before, 140))
        await store.pool.give(GARDEN, 1_000 + keeper, readings)


def start(reply: Reply) -> float:
    return next(value.best for value in reply.values if value.name == "distance")


async def test_nothing_is_kept_before_the_keeper_says_yes_to_what_is_shown(
    ok: Ask, store: Store
) -> None:
    shown = await ok(OFFER)
    assert "Nothing is given yet" in shown.answer
    assert row(shown, "Read") == "UV index 4.2 at 12 in (30 cm), 4 May 2026"
    assert row(shown, "Age of the lamp") == "about 8 months"
    assert await store.pool.of_group(GARDEN) == ()
    yes = shown.steps[0].removeprefix("Yes, give it: ")
    assert "has it now" in (await ok(yes)).answer
    assert "has this already" in (await ok(yes)).answer
    assert len(await store.pool.of_group(GARDEN)) == 1
    assert row(await ok("mine list"), "Given to groups") == "one reading, without your name"
    assert "1 reading" not in (await ok("mine withdraw", keeper=MOSS)).answer
    assert "deleted for good" in (await ok("mine withdraw reading:all")).answer
    assert await store.pool.of_group(GARDEN) == ()


async def test_after_a_saved_reading_it_is_asked_once_and_in_a_group_alone(ok: Ask) -> None:
    await ok(SAVE)
    alone = await ok("mine reading name:Box uvi:4.2", server=None)
    first = await ok("mine reading name:Box uvi:4.2")
    again = await ok("mine reading name:Box uvi:4.1")
    told = ["mine offer" in whole(reply) for reply in (alone, first, again)]
    assert told == [False, True, False]
    shown = await ok("mine offer name:box")
    assert row(shown, "Read") == "UV index 4.1 at 14 in (36 cm), 4 May 2026"
    await ok("mine reading name:Box uvi:9.9 day:yesterday")
    given = await ok(shown.steps[0].removeprefix("Yes, give it: "))
    assert row(given, "Read").startswith("UV index 4.1 ")


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("mine offer readings:4.2 at 12 in", "which tube"),
        ("mine offer readings:4.2 at 12 in tube:12%", "behind the tube"),
        ("mine offer readings:4.2 at 12 in tube:12% reflector:plain", "between meter and lamp"),
        ("mine offer readings:4.2 at 12 in tube:12% reflector:plain screen:none", "how long"),
        (f"mine offer readings:42 at 12 in {TUBE}", "Was it 4.2, not 42?"),
        (f"mine offer readings:0.2 at 12 in {TUBE}", ""),
        (f"mine offer readings:4.2 at 12 in, 4.0 at 40 in {TUBE}", ""),
        (f"mine offer readings:4.2 at 12 in {TUBE.replace('none', 'glass')}", "Glass"),
        (f"mine offer readings:4.2 at 12 in {TUBE} day:2027-01-01", "still to come"),
        (f"mine offer readings:bananas {TUBE}", "bananas"),
        ("mine offer", "mine save"),
        ("mine withdraw reading:7", "no reading with that number"),
        ("mine withdraw reading:-1", "the number of a reading"),
        ("server readings clear:7", "No reading here has that number"),
    ],
)
async def test_nonsense_is_refused_and_nothing_is_kept(
    ask: Ask, store: Store, line: str, told: str
) -> None:
    sure = f"{line} sure:yes" if line.startswith("mine offer") else line
    reply = await ask(sure)
    assert reply.status == "problem"
    assert told in whole(reply)
    assert await store.pool.of_group(GARDEN) == ()


async def test_a_distance_that_was_kept_is_not_doubted_and_one_that_is_typed_is(
    ok: Ask, ask: Ask, store: Store
) -> None:
    await ok(SAVE.replace("14in", "35.6cm"))
    await ok("mine reading name:Box uvi:1.5")
    assert (await ask("mine offer")).status == "ok"
    typed = await ask(f"mine offer readings:1.5 at 35.6cm {TUBE}")
    assert "inches" in typed.answer


async def test_a_lamp_of_the_groups_own_is_given_by_its_name(ok: Ask, store: Store) -> None:
    await ok("server lamp name:Hood A readings:4.2 at 12 in, 2.9 at 15 in length:34in")
    await ok("mine offer readings:3.9 at 12 in tube:Hood A screen:none sure:yes")
    (one,) = await store.pool.of_group(GARDEN)
    assert (one.reading.own_lamp, one.reading.percent) == ("Hood A", None)
    assert "Hood A" in whole(await ok("mine group"))


async def test_moderators_alone_see_the_list_without_anybody_in_it_and_clear_by_number(
    ask: Ask, ok: Ask, store: Store
) -> None:
    await given(store, 9)
    await store.pool.give(GARDEN, MOSS, [reading(1.8)])
    assert "moderators" in (await ask("server readings", moderator=False)).answer
    shown = await ok("server readings")
    assert shown.rows[0].label == "10 (far off)"
    assert sum("far off" in one.label for one in shown.rows) == 1
    for text in (whole(shown), whole(await ok("mine group")), whole(await ok("server export"))):
        assert not any(str(who) in text for who in (MOSS, FERN, *range(1_000, 1_009)))
    cleared = await ok("server readings clear:10")
    assert "deleted for good" in cleared.answer
    assert len(await store.pool.of_group(GARDEN)) == 9


async def test_of_few_keepers_no_figure_is_shown(ok: Ask, store: Store) -> None:
    await given(store, 2)
    few = await ok("mine group")
    assert few.values == ()
    assert few.picture is None
    assert "too few to show" in row(few, "12 %, polished")
    await store.pool.give(GARDEN, MOSS, [reading(-0.4)])
    values = {value.name for value in (await ok("mine group")).values}
    assert {"class_12_polished_median", "class_12_polished_spread"} <= values


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("units", Units)
async def test_table_picture_and_json_tell_the_same_in_each_language(
    store: Store, desk: Desk, language: Language, units: Units
) -> None:
    from bot.ask import ask

    await given(store, 12, fades=0.03)
    asker = Preferences(forced_units=units, language=language)
    for line in ("mine group", "server readings", "mine withdraw", OFFER, DISTANCE):
        reply = await ask(line, asker, desk)
        assert reply.language == language
        assert phone_lines(reply.brief) <= MOST_LINES, line
    reply = await ask("mine group", asker, desk)
    (known,) = (v for v in reply.values if v.name == "class_12_polished")
    assert reply.table is not None
    assert f"{round(100 * known.low)}" in reply.table.rows[0][3]
    assert reply.picture is not None
    drawing = reply.picture.drawing
    assert isinstance(drawing, Ladder)
    assert drawing.rungs[0].best == pytest.approx(100.0 * known.best)
    assert drawing.rungs[0].picked
    # It raises where two words meet.
    page_of(drawing).svg(Theme.LIGHT)
    assert 100 < len(reply.picture.alt) <= 1024


async def test_enough_keepers_take_the_place_of_our_figure_here_and_nowhere_else(
    ok: Ask, store: Store
) -> None:
    before = await ok(DISTANCE)
    await given(store, ENOUGH_KEEPERS - 1)
    assert (await ok(DISTANCE)).values == before.values
    await store.pool.give(GARDEN, MOSS, [reading(-0.5)])
    after = await ok(DISTANCE)
    assert start(after) < start(before)
    assert "8 keepers" in row(after, "Your group")
    assert "1 April 2026" in row(after, "Your group")
    for elsewhere in (OTHER, None):
        assert (await ok(DISTANCE, server=elsewhere)).values == before.values
    for line in (f"{DISTANCE} readings:4.2 at 12in", DISTANCE.replace("12%", "6%")):
        assert (await ok(line)).values == (await ok(line, server=None)).values
    # Two years on the tubes are others.
    assert (await ok(DISTANCE, now=NOW + timedelta(days=800))).values == before.values
    await ok("mine forget sure:yes", keeper=MOSS)
    assert (await ok(DISTANCE)).values == before.values


@pytest.mark.parametrize(
    "line",
    [
        f"uvi distance:16in {TUBE} animal:bearded dragon",
        f"section distance:16in enclosure:48x24x24in {TUBE} animal:bearded dragon",
        "tube distance:14in screen:none length:34in animal:bearded dragon",
        "check setup:bearded dragon, 12% T5 HO 34in in a polished hood, no screen, 16 in",
        "card animal:bearded dragon length:34in",
        f"compare distance:16in {TUBE} animal:bearded dragon with_tube:6%",
        f"{PLAN} tube:12%",
        f"uvi distance:16in {TUBE.replace('screen:none', 'screen:unsure')} animal:bearded dragon",
        f"meter readings:4.2 at 12in {TUBE} animal:bearded dragon",
    ],
)
async def test_every_question_of_a_tube_goes_by_it_and_says_the_count(
    ok: Ask, store: Store, line: str
) -> None:
    await given(store, 12, off=-0.1)
    ours, groups = await ok(line, server=None), await ok(line)
    assert ours.values != groups.values
    if not line.startswith(("section", "tube", "check")):
        assert "12 keepers of your group" in whole(groups)
        assert "keepers of your group" not in whole(ours)


@pytest.mark.parametrize("off", [-0.5, -0.1, 0.25])
async def test_no_plan_and_no_card_hangs_a_tube_nearer_than_our_own_figure_allows(
    ok: Ask, store: Store, off: float
) -> None:
    """However weak a group's tubes are read, the near end stays that of a new one of its class."""
    await given(store, 12, off=off)
    for line in ("card animal:bearded dragon length:34in", f"{PLAN} tube:12%"):
        ours = {v.name: v for v in (await ok(line, server=None)).values}
        for value in (await ok(line)).values:
            if value.name.startswith(("distance", "tube_to_back")):
                assert value.low >= ours[value.name].low - 1e-9, value.name


async def test_a_tube_offered_instead_goes_by_it_too(ask: Ask, store: Store) -> None:
    weak = DISTANCE.replace("tube:12%", "tube:2%").replace("screen:none", "screen:blocks 45%")
    before = await ask(weak)
    await given(store, 12, off=-0.1)
    after = await ask(weak)
    assert "12 keepers of your group" not in str(before.steps)
    assert "(by 12 keepers of your group)" in str(after.steps)


async def test_what_tubes_lose_stands_beside_an_age_and_too_few_readings(
    ok: Ask, store: Store
) -> None:
    await given(store, 9, fades=0.03)
    by_age = await ok("decline age:8 months")
    assert "3 % in 30 days" in row(by_age, "In your group")
    assert "9 tubes of 9 keepers" in row(by_age, "In your group")
    few = await ok("decline readings:2026-05-01 3.3 uvi:3-5")
    assert "too weak about" in row(few, "At that pace")
    many = "2026-01-03 5.2, 2026-03-01 4.6, 2026-05-02 4.1"
    assert "In your group" not in whole(await ok(f"decline readings:{many} uvi:3-5"))
    assert "In your group" not in whole(await ok("decline age:8 months", server=OTHER))


async def test_files_a_keepers_brings_its_readings_back_a_groups_lists_them(
    ok: Ask, store: Store
) -> None:
    await ok(f"{OFFER} sure:yes")
    mine, ours = [(await ok(f"{who} export")).document for who in ("mine", "server")]
    assert mine is not None
    assert ours is not None
    assert len(json.loads(ours.text)["readings"]) == 1
    forgotten = await ok("mine forget sure:yes")
    assert row(forgotten, "Readings given to groups") == "1"
    back = await ok(f"server import file:{ours.text}")
    assert "mine import" in whole(back)
    assert await store.pool.of_group(GARDEN) == ()
    assert "another group" in whole(await ok(f"mine import file:{mine.text}", server=OTHER))
    assert await store.pool.of_group(OTHER) == ()
    await ok(f"mine import file:{mine.text}")
    assert len(await store.pool.of_group(GARDEN)) == 1


async def test_it_costs_an_asker_next_to_nothing(store: Store) -> None:
    await given(store, 12)
    own = await own_of(store, GARDEN, NOW.date())
    assert own.classes
    contexts = [Context(Units.IN, own=own) for _ in range(2)]
    classes_of(own)
    began = perf_counter()
    for _ in range(1_000):
        assert contexts[0] == contexts[1]
        hash(own)
        classes_of(own)
    # 20 µs each on a quiet machine; ten times that on a busy one.
    assert perf_counter() - began < 0.2
