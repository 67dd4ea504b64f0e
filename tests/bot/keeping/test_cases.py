"""Cases: shared by consent, answered in figures, seen by helpers alone, ended by either side."""

import pytest

from bot.drawing import Side
from tests.bot.keeping.conftest import Ask
from tests.bot.keeping.people import CHANNEL, MOSS, row, whole

ELSEWHERE = CHANNEL + 1
BOX = "mine save name:Box animal:bearded dragon tube:12% reflector:polished screen:none"
HELPER = {"keeper": MOSS, "moderator": False}


async def set_up(ok: Ask) -> None:
    await ok(f"{BOX} distance:16in enclosure:120x60x60cm")
    await ok("mine reading uvi:4.2 distance:16in basking:103F day:2026-05-01")
    await ok("server helpers ask:here")


async def test_nothing_is_shared_before_the_keeper_agrees(ok: Ask, ask: Ask) -> None:
    await set_up(ok)
    asked = await ok("mine share")
    assert asked.answer.startswith("Nothing is shared yet.")
    assert (await ask("cases show number:1", **HELPER)).status == "problem"
    await ok("mine share sure:yes")
    seen = await ok("cases show number:1", **HELPER)
    assert seen.picture is not None
    assert isinstance(seen.picture.drawing, Side)
    assert row(seen, "Last UV index").startswith("4.2")


async def test_only_helpers_see_cases(ok: Ask, ask: Ask) -> None:
    await set_up(ok)
    await ok("mine share sure:yes")
    for there in ({"channel": ELSEWHERE}, {"channel": None, "server": None}):
        refused = await ask("cases list", **(HELPER | there))
        assert refused.status == "problem"
        assert "Box" not in whole(refused)
    thread = await ok("cases list", **HELPER, channel=ELSEWHERE, parent=CHANNEL)
    assert "Box" in whole(thread)
    assert "Box" in whole(await ok("cases list", keeper=MOSS, channel=ELSEWHERE))


async def test_helpers_that_moved_see_nothing_until_the_keeper_agrees_anew(ok: Ask) -> None:
    await set_up(ok)
    await ok("mine share sure:yes")
    await ok("server helpers ask:here", channel=ELSEWHERE)
    assert "Box" not in whole(await ok("cases list", **HELPER, channel=ELSEWHERE))
    assert (await ok("mine case")).answer.startswith("No helper sees it: they moved elsewhere.")
    await ok("mine share sure:yes")
    assert "Box" in whole(await ok("cases list", **HELPER, channel=ELSEWHERE))


async def test_what_was_advised_is_open_until_set_up_and_readings_show_it(ok: Ask) -> None:
    await set_up(ok)
    await ok("mine share sure:yes")
    await ok("cases advise number:1 distance:18in tube:new measure:basking cool:78F", **HELPER)
    assert (await ok("mine case")).answer.startswith("4 things are still to do.")
    await ok("mine save name:Box distance:18in age:new")
    await ok("mine reading basking:103F cool:84F")
    told = await ok("mine case")
    assert told.answer.startswith("1 thing is still to do.")
    assert "Cool end: bring it to 78 °F" in row(told, "To do")
    await ok("mine reading cool:78F")
    assert (await ok("mine case")).answer.startswith("All that was advised is done.")


@pytest.mark.slow
async def test_readings_stand_beside_those_of_when_it_was_shared(ok: Ask) -> None:
    await set_up(ok)
    await ok("mine share sure:yes")
    await ok("mine reading basking:110F")
    table = (await ok("cases show number:1", **HELPER)).table
    assert table is not None
    cells = {line[0]: line[1:] for line in table.rows}
    assert cells["Basking surface"] == ("103 °F (39.5 °C)", "110 °F (43.5 °C)")
    assert cells["UV index"][1] == "not read"


@pytest.mark.parametrize("past", ["basking:150F", "cool:100F", "night:30F", "distance:3in"])
async def test_no_advice_leads_past_a_limit(ok: Ask, ask: Ask, past: str) -> None:
    await set_up(ok)
    await ok("mine share sure:yes")
    refused = await ask(f"cases advise number:1 {past}", **HELPER)
    assert refused.status == "problem"
    assert "would lead past a limit" in whole(refused)
    assert (await ok("mine case")).answer.startswith("Nothing was advised yet.")


async def test_a_stronger_tube_that_would_harm_is_no_advice(ok: Ask, ask: Ask) -> None:
    await ok("mine save name:Box animal:crested gecko tube:6% reflector:polished screen:none")
    await ok("mine save name:Box distance:10in")
    await ok("mine share sure:yes")
    refused = await ask("cases advise number:1 tube:12%")
    assert "would lead past a limit" in whole(refused)


async def test_no_words_of_helpers_are_taken(ask: Ask, ok: Ask) -> None:
    await set_up(ok)
    await ok("mine share sure:yes")
    for told in ("cases advise number:1 note:hello", "cases advise number:1 measure:hello you"):
        assert (await ask(told, **HELPER)).status == "problem"


async def test_what_cannot_wait_in_a_case_is_told_first(ok: Ask) -> None:
    await set_up(ok)
    await ok("mine share sure:yes")
    await ok("mine reading basking:140F")
    for told in (await ok("mine case"), await ok("cases show number:1", **HELPER)):
        assert [danger.key for danger in told.dangers] == ["box_too_hot"]
