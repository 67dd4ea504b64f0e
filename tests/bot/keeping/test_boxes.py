"""All enclosures at one look, lamps in stock, one timer plan, and two of a kind compared."""

import json

import pytest

from bot.ask import ask as at_the_door
from bot.database.store import Store
from bot.desk import Desk
from bot.drawing import Chart, Sheet
from bot.preferences import LANGUAGES, Language, Preferences
from bot.render.picture import page_of
from bot.saved.wrongs import Wrong
from tests.bot.keeping.conftest import NOW, Ask
from tests.bot.keeping.people import FERN, GARDEN, whole

DRAGON = (
    "mine save name:Sun animal:bearded dragon tube:12% reflector:polished screen:none distance:16in"
)
GECKO = "mine save name:Dusk animal:leopard gecko tube:6% reflector:plain distance:10in"


async def two_boxes(ok: Ask) -> None:
    await ok(f"{DRAGON} age:14 months")
    await ok(GECKO)


async def test_what_is_off_and_due_stands_in_one_table_the_worst_first(ok: Ask) -> None:
    await two_boxes(ok)
    await ok("mine reading name:Dusk uvi:0.6 basking:90F cool:60F")
    await ok("mine reading name:Sun uvi:4 basking:120F day:2026-01-04")
    seen = await ok("mine boxes")
    assert seen.table is not None
    assert [row[0].partition(",")[0] for row in seen.table.rows] == ["Sun", "Dusk"]
    assert seen.table.rows[0][1] == "Basking surface dangerous"
    assert "a new UV lamp" in seen.table.rows[0][2]
    assert "read the UV" in seen.table.rows[0][2]
    assert "Cool end low" in seen.table.rows[1][1]
    assert [danger.key for danger in seen.dangers] == ["box_too_hot"]


async def test_a_spare_lamp_goes_over_an_enclosure_and_leaves_the_stock(
    ok: Ask, store: Store
) -> None:
    await two_boxes(ok)
    await ok("mine spare name:New one tube:12% length:22in bought:2026-04-01")
    listed = await ok("mine lamps")
    assert listed.answer.startswith("2 in use, 1 in stock.")
    assert "due for a new one" in whole(listed)
    assert "bought 1 April 2026" in whole(listed)
    await ok("mine spare name:New one into:Dusk")
    kept = await store.enclosures.named(FERN, "Dusk")
    assert kept is not None
    assert (kept.setup.tube_percent, kept.setup.tube_since) == (12.0, NOW.date())
    assert await store.spares.all(FERN) == ()


async def test_an_unknown_spare_is_refused_with_what_there_is(ask: Ask, ok: Ask) -> None:
    await two_boxes(ok)
    await ok("mine spare name:Old tube:6%")
    refused = await ask("mine spare name:Odl into:Dusk")
    assert refused.status == "problem"
    assert "Old" in refused.answer
    assert (await ask("mine spare name:Far bought:2027-01-01 tube:6%")).status == "problem"


async def test_spare_lamps_go_out_and_come_back_with_all_else(ok: Ask, store: Store) -> None:
    await ok("mine spare name:New one tube:12% bought:2026-04-01")
    document = (await ok("mine export")).document
    assert document is not None
    await ok("mine forget sure:yes")
    assert await store.spares.all(FERN) == ()
    kept = json.dumps(json.loads(document.text))
    await ok(f"mine import file:{kept}")
    (spare,) = await store.spares.all(FERN)
    assert (spare.name, spare.tube_percent) == ("New one", 12.0)


async def test_one_timer_does_where_the_hours_of_all_animals_meet(ok: Ask) -> None:
    await two_boxes(ok)
    told = await ok("mine timer on:7:30")
    assert told.answer.startswith("One timer does for all 2.")
    assert told.table is not None
    assert {row[1:3] for row in told.table.rows} == {("07:30", "19:30")}


async def test_other_hours_are_said_plainly_around_one_noon(ok: Ask) -> None:
    await two_boxes(ok)
    await ok("server target animal:bearded dragon of:hours range:13-14h")
    await ok("server target animal:leopard gecko of:hours range:10-11h")
    told = await ok("mine timer on:7:00")
    assert told.answer.startswith("They need different hours")
    assert told.table is not None
    assert [row[1:3] for row in told.table.rows] == [("07:00", "20:00"), ("08:00", "19:00")]


async def test_no_lamp_is_planned_for_the_night(ask: Ask, ok: Ask) -> None:
    await two_boxes(ok)
    assert (await ask("mine timer on:23:00")).status == "problem"


async def test_of_two_days_the_difference_that_matters_stands_first(ok: Ask) -> None:
    await ok(DRAGON)
    await ok("mine reading uvi:4.6 basking:103F cool:79F day:2026-01-10")
    # The UV fell by more, and only the surface is judged otherwise.
    await ok("mine reading uvi:3.4 basking:118F cool:80F day:2026-05-01")
    told = await ok("mine compare")
    assert "Basking surface: first fine, then dangerous." in told.answer
    assert told.table is not None
    assert told.table.rows[0][0] == "Basking surface"
    assert told.picture is not None
    drawing = told.picture.drawing
    assert isinstance(drawing, Sheet)
    assert drawing.gauges[0].label == "Basking surface, 10 January 2026"
    assert "dangerous" in told.picture.alt


async def test_two_enclosures_are_compared_by_their_last_readings(ok: Ask) -> None:
    await two_boxes(ok)
    await ok("mine reading name:Sun uvi:4 basking:103F")
    await ok("mine reading name:Dusk uvi:0.2 basking:90F")
    told = await ok("mine compare name:Sun other:Dusk")
    assert told.answer.startswith("UV index: fine in the first, ")
    assert told.picture is not None
    assert told.picture.drawing is not None
    assert "bearded dragon / leopard gecko" in whole(told)


async def test_two_lamps_are_compared_as_compare_does(ok: Ask, ask: Ask) -> None:
    await two_boxes(ok)
    await ok("mine spare name:New one tube:6%")
    told = await ok("mine compare lamp:Sun other_lamp:New one")
    line = (
        "compare distance:40.64cm tube:12% with_tube:6% reflector:polished screen:none "
        "animal:bearded dragon age:425 days with_age:new"
    )
    alone = await ok(line)
    assert told.values == alone.values
    assert told.title.startswith("“Sun” and “New one”")
    assert told.picture is not None
    assert isinstance(told.picture.drawing, Chart)
    assert (await ask("mine compare lamp:Sun other_lamp:Nothing")).status == "problem"


@pytest.mark.parametrize("kind", ["csv", "json"])
async def test_what_was_called_wrong_comes_as_a_file(ok: Ask, store: Store, kind: str) -> None:
    given = {"room": "64 F", "animal": "bearded dragon"}
    await store.wrongs.add(GARDEN, Wrong(day=NOW.date(), command="night", given=given))
    document = (await ok(f"server wrong file:{kind}")).document
    assert document is not None
    assert document.name == f"wrong.{kind}"
    if kind == "csv":
        rows = document.text.splitlines()
        assert rows[0] == "day,command,option,value"
        assert "2026-05-04,night,room,64 F" in rows
    else:
        assert json.loads(document.text)["wrongs"][0]["given"] == given


@pytest.mark.parametrize("language", LANGUAGES)
async def test_no_words_of_a_comparison_meet_however_long_its_names(
    ok: Ask, desk: Desk, language: Language
) -> None:
    names = [f"The longest name that a box may have {n}" for n in "AB"]
    for name in names:
        await ok(f"mine save name:{name} animal:bearded dragon tube:12% reflector:plain")
    await ok(f"mine reading name:{names[0]} uvi:4 basking:103F cool:79F warm:84F")
    await ok(f"mine reading name:{names[1]} uvi:0.1 basking:80F cool:79F warm:90F")
    await ok(f"mine reading name:{names[1]} basking:150F day:2026-05-01")
    for line in (f"name:{names[0]} other:{names[1]}", f"lamp:{names[0]} other_lamp:{names[1]}"):
        reply = await at_the_door(f"mine compare {line}", Preferences(language=language), desk)
        assert reply.picture is not None
        assert reply.picture.drawing is not None
        # Two words that met would be an error.
        assert page_of(reply.picture.drawing).words
