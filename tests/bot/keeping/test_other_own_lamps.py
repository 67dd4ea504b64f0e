"""A group keeps lamps of every kind, and every question asks with them as with its own tubes."""

import json

import pytest

from bot.ask import ask as at_the_door
from bot.completion import complete
from bot.desk import Desk
from bot.preferences import Preferences
from bot.reply import Reply
from tests.bot.keeping.conftest import Ask
from tests.bot.keeping.people import row, whole

SMALL = "server lamp name:Dome A readings:6.0 at 30cm, 1.5 at 60cm lamp:metal halide lamp"
BAR = "server lamp name:Bar C readings:6.0 at 12 in, 4.6 at 15in lamp:led bar length:34in"
BEARDIE = "screen:none animal:bearded dragon"


def figure(reply: Reply, name: str) -> float:
    return next(value.best for value in reply.values if value.name == name)


async def test_a_small_lamp_falls_by_the_square_of_the_distance(ok: Ask) -> None:
    kept = await ok(SMALL)
    assert row(kept, "By its readings").startswith("metal halide lamp, UV index")
    there = await ok(f"uvi tube:dome a distance:45cm {BEARDIE}")
    # 6.0 at 30 cm, so at one and a half times that 6.0 over 2.25.
    assert figure(there, "uvi") == pytest.approx(6.0 / 2.25, rel=0.01)


async def test_it_answers_as_the_same_readings_do(ok: Ask) -> None:
    await ok(SMALL)
    own = await ok(f"distance tube:Dome A {BEARDIE}")
    read = await ok(f"distance lamp:metal halide lamp readings:6.0 at 30cm, 1.5 at 60cm {BEARDIE}")
    assert own.values == read.values
    assert "the group's own lamp" in row(own, "Lamp")


async def test_its_warmth_is_told_of_where_it_is_too_near(ok: Ask) -> None:
    await ok(SMALL)
    near = await ok(f"uvi tube:Dome A distance:25cm {BEARDIE}")
    assert "takes warmth away too" in whole(near)
    assert near.dangers


async def test_section_check_card_and_meter_know_it(ok: Ask) -> None:
    await ok(SMALL)
    box = "enclosure:48x24x24in animal:bearded dragon"
    assert (await ok(f"section tube:Dome A screen:none distance:16in {box}")).command == "section"
    told = await ok('check bearded dragon, "Dome A" 40cm above its back, no mesh')
    assert figure(told, "uvi") == pytest.approx(6.0 * (30.0 / 40.0) ** 2, rel=0.01)
    table = (await ok("card animal:bearded dragon")).table
    assert table is not None
    assert "Dome A" in [line[0] for line in table.rows]
    read = await ok("meter tube:Dome A readings:6.0 at 30cm, 1.5 at 60cm animal:bearded dragon")
    assert figure(read, "uvi") == pytest.approx(6.0, rel=0.01)


async def test_a_plan_is_made_for_what_is_as_long_as_a_tube(ask: Ask) -> None:
    await ask(SMALL)
    await ask(BAR)
    line = "plan animal:bearded dragon tube:{} enclosure:48x24x24in lid:full mesh room:70F"
    assert (await ask(line.format("Bar C"))).status == "ok"
    assert "Only a UV meter can tell" in (await ask(line.format("Dome A"))).answer


async def test_several_small_ones_together_are_not_worked_out(ask: Ask) -> None:
    await ask(SMALL)
    told = await ask(f"uvi tube:Dome A distance:45cm {BEARDIE} tubes:2")
    assert told.status == "problem"
    assert "one lamp here" in told.answer
    several = await ask('check bearded dragon, two "Dome A" 45cm above its back, no mesh')
    assert not [value for value in several.values if value.name == "uvi"]


@pytest.mark.parametrize(
    ("line", "why"),
    [
        ("readings:6.0 at 12 in lamp:compact lamp", "at two distances"),
        ("readings:6.0 at 12 in, 4.6 at 15in lamp:led bar", "how long"),
        ("readings:6.0 at 12 in, 4.6 at 15in lamp:not sure", "which kind"),
        ("readings:6.0 at 12 in, 2.67 at 18in, 1.5 at 24in length:34in", "a small lamp"),
    ],
)
async def test_what_tells_too_little_is_not_kept(ask: Ask, line: str, why: str) -> None:
    refused = await ask(f"server lamp name:Dome A {line}")
    assert refused.status == "problem"
    assert why in refused.answer
    assert "own lamps" not in whole(await ask("server show"))


async def test_it_comes_back_from_a_file_and_its_change_stands_in_the_log(ok: Ask) -> None:
    await ok(SMALL)
    await ok(BAR)
    document = (await ok("server export")).document
    assert document is not None
    table = (await ok("server changes")).table
    assert table is not None
    assert [line[1] for line in table.rows] == ["lamp Bar C", "lamp Dome A"]
    await ok("server remove lamp:Dome A")
    assert "Dome A" not in whole(await ok("server show"))
    await ok(f"server import file:{json.dumps(json.loads(document.text))}")
    back = (await ok("server export")).document
    assert back is not None
    assert back.text == document.text


async def test_a_day_under_it_is_told_by_its_name(ok: Ask) -> None:
    await ok(SMALL)
    told = await ok("dose lamp:dome a hours:10 distance:45cm")
    # Exact: 6.0 at 30 cm is 6.0 over 2.25 at 45 cm, and 0.9 SED an hour for each UVI.
    assert figure(told, "dose_sed") == pytest.approx(0.9 * 10 * 6.0 / 2.25, rel=0.01)
    assert "I assumed no mesh" in whole(told)
    assert "nobody can say" in told.answer
    assert "Dome A" in row(told, "The group's own")
    with_tube = await ok("dose lamp:T5 HO tube uvi:4 hours:10 distance:45cm")
    assert "I assumed no mesh" not in whole(with_tube)


async def test_a_day_needs_a_place_under_it_and_a_told_uv_index_counts_first(ask: Ask) -> None:
    await ask(SMALL)
    await ask(BAR)
    assert "distance" in (await ask("dose lamp:Dome A hours:10")).answer
    told = await ask("dose lamp:Bar C uvi:2 hours:10 distance:15in")
    assert figure(told, "dose_sed") == pytest.approx(18.0)
    assert "You gave no length" not in whole(told)
    few = await ask("dose lamp:Dome A readings:9 at 45cm hours:10")
    assert figure(few, "dose_sed") == pytest.approx(81.0)


async def test_a_day_past_what_any_animal_bears_is_said_first(ok: Ask) -> None:
    await ok(SMALL)
    near = await ok("dose lamp:Dome A hours:10 distance:20cm")
    assert [danger.key for danger in near.dangers] == ["uv_too_strong"]
    read = await ok("dose readings:13 at 20cm hours:10")
    assert [danger.key for danger in read.dangers] == ["uv_too_strong"]


async def test_a_day_under_it_is_told_in_german_too(ok: Ask, desk: Desk) -> None:
    await ok(SMALL)
    german = Preferences(language="de")
    told = await at_the_door('dose lamp:"Dome A" hours:10 distance:45cm', german, desk)
    assert told.status == "ok"
    assert "kein Gitter unter der eigenen Lampe" in whole(told)


def test_the_option_offers_the_groups_own_lamps_before_the_kinds() -> None:
    offered = complete("dose", "lamp", "", {"uv_lamp": ("Dome A",)})
    assert offered[:2] == ["Dome A", "T5 HO tube"]
