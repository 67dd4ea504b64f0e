"""A keeper's enclosures over the door: kept, read, compared, private, handed over, deleted."""

import json
from datetime import timedelta

import pytest

from bot.saved.keeper_file import KeeperExport
from tests.bot.keeping.conftest import NOW, Ask
from tests.bot.keeping.people import MOSS, row, whole

SAVE = (
    "mine save name:Pebble's box animal:bearded dragon tube:12% reflector:polished "
    "screen:passes 55% distance:14in length:22in age:2 months enclosure:120x60x60cm"
)


async def test_a_set_up_is_told_back_in_both_units_and_can_be_asked_about(ok: Ask) -> None:
    reply = await ok(SAVE)
    assert row(reply, "Tube to back") == "14 in (36 cm)"
    assert row(reply, "Fixture") == "polished reflector"
    assert row(reply, "In use since") == "5 March 2026"
    assert row(reply, "Screen") == "a screen that blocks 45 %"
    question = reply.steps[0].removeprefix("Ask about it: ")
    asked = await ok(question)
    assert asked.command == "uvi"
    same = await ok(
        "uvi distance:14in tube:12% reflector:polished screen:45% animal:bearded dragon length:22in"
    )
    assert [v.best for v in asked.values] == pytest.approx([v.best for v in same.values], rel=1e-3)


async def test_a_fact_is_changed_and_the_rest_stays(ok: Ask) -> None:
    await ok(SAVE)
    reply = await ok("mine save name:pebble’s box distance:40cm")
    assert "is changed" in reply.title
    assert row(reply, "Tube to back").startswith("40 cm")
    assert row(reply, "Screen") == "a screen that blocks 45 %"


async def test_a_set_up_told_in_free_words_is_kept_as_facts_and_not_as_words(ok: Ask) -> None:
    told = (
        "hi my beardie has a 12% in a shiny hood, no screen, tube is 16in above his back, "
        "4x2x2 enclosure, basking 98, please help"
    )
    reply = await ok(f"mine save name:Box words:{told}")
    assert row(reply, "Animal") == "bearded dragon"
    assert row(reply, "UV lamp") == "T5 HO tube, 12 %"
    assert row(reply, "Fixture") == "polished reflector"
    assert row(reply, "Screen") == "no screen"
    assert row(reply, "Tube to back") == "16 in (41 cm)"
    document = (await ok("mine export")).document
    assert document is not None
    assert "please" not in document.text
    assert "hood" not in document.text
    corrected = await ok(f"mine save name:Box distance:14in words:{told}")
    assert row(corrected, "Tube to back") == "14 in (36 cm)"


@pytest.mark.parametrize(
    ("line", "told"),
    [
        ("mine save name:@everyone", "@everyone"),
        ("mine save name:Box distance:90ft", "from 2 in (5 cm) up to 118 in (300 cm)"),
        ("mine save name:Box screen:blocks 100%", "lets something through"),
        ("mine save name:Box enclosure:90x90x90m", "from 10 cm (4 in) up to 2000 cm (787 in)"),
        ("mine reading uvi:4", "keep no enclosure yet"),
        ("mine show name:Nowhere", "keep no enclosure yet"),
        ("mine remove name:Nowhere", "keep no enclosure"),
        ("mine prefer zone:Atlantis", "time zone"),
        ("mine save name:Box animal:unicorn", "animal I know"),
    ],
)
async def test_what_cannot_be_is_refused_in_one_sentence_and_nothing_is_kept(
    ask: Ask, line: str, told: str
) -> None:
    reply = await ask(line)
    assert reply.status == "problem"
    assert told.removeprefix("@") in reply.answer
    kept = await ask("mine list")
    assert kept.answer.startswith("No enclosures")


async def test_readings_are_written_down_replaced_and_taken_away(ok: Ask, ask: Ask) -> None:
    await ok(SAVE)
    first = await ok("mine reading uvi:4.4 basking:103F cool:26C")
    assert row(first, "UV index") == "4.4 at 14 in (36 cm)"
    assert row(first, "Basking surface") == "103 °F (39.5 °C)"
    again = await ok("mine reading uvi:4.2")
    assert row(again, "Replaced") == "UV index: 4.4 at 14 in (36 cm)"
    shown = await ok("mine show")
    assert shown.table is not None
    assert shown.table.rows == (
        ("4 May 2026", "4.2 at 14 in (36 cm)", "103 °F (39.5 °C)", "79 °F (26 °C)"),
    )
    assert (await ok("mine unread day:today of:uvi")).answer == "1 reading taken away."
    assert (await ok("mine unread day:2026-05-04")).answer == "2 readings taken away."
    assert "none on that day" in (await ok("mine unread day:yesterday")).answer
    assert "still to come" in (await ask("mine reading uvi:4 day:2027-01-01")).answer
    assert "basking" in (await ask("mine reading basking:900F")).answer
    assert "no reading" in (await ask("mine reading")).answer


async def test_the_history_shows_the_trend_and_the_next_day(ok: Ask) -> None:
    await ok(SAVE)
    readings = ("2025-11-04 5.2", "2026-01-04 4.6", "2026-03-04 4.1", "2026-05-01 3.6")
    for day, value in (one.split() for one in readings):
        await ok(f"mine reading uvi:{value} distance:14in day:{day}")
    by_hand = await ok(f"decline readings:{', '.join(readings)} animal:bearded dragon")
    shown = await ok("mine show")
    assert shown.values == by_hand.values
    assert by_hand.answer in shown.answer
    remind = next(s for s in shown.steps if "remind me" in s).partition(": ")[2]
    assert remind.rpartition("when:")[2] > "2026-05-04"
    await ok(remind)
    assert (await ok("remind list")).answer == "You have 1 reminder."


async def test_readings_at_other_distances_are_reckoned_to_the_last(ok: Ask) -> None:
    await ok(SAVE)
    # A 22 in tube gives 2.2 times as much at 8 in as at 14 in.
    for day, value, at in (
        ("2025-11-04", "5.2", "14in"),
        ("2026-01-04", "4.6", "14in"),
        ("2026-03-05", "9.0", "8in"),
        ("2026-05-01", "3.6", "14in"),
    ):
        await ok(f"mine reading uvi:{value} distance:{at} day:{day}")
    shown = await ok("mine show")
    assert "rise" not in shown.answer
    month = next(v for v in shown.values if v.name == "month_factor")
    assert month.low < 0.94 < month.high
    assert row(shown, "Worked out for") == "14 in (36 cm), where you read last; 1 read elsewhere"


async def test_what_is_kept_is_doubted_before_any_figure_and_its_danger_comes_first(
    ok: Ask,
) -> None:
    await ok(SAVE)
    await ok("mine reading uvi:4.4 distance:14in day:2026-04-20")
    await ok("mine reading uvi:1.9 distance:14in day:2026-04-27")
    assert "is too fast to be fading" in (await ok("mine show")).answer
    await ok("mine reading uvi:12 distance:14in day:2026-05-02")
    assert [danger.key for danger in (await ok("mine show")).dangers] == ["uv_too_strong"]


async def test_two_days_are_compared(ok: Ask, ask: Ask) -> None:
    await ok(SAVE)
    await ok("mine reading uvi:4.0 basking:100F day:2026-01-10")
    assert "two days" in (await ask("mine compare")).answer
    await ok("mine reading uvi:3.0 basking:104F night:70F")
    table = (await ok("mine compare")).table
    assert table is not None
    assert [(line[0], line[3]) for line in table.rows] == [
        ("UV index", "−25 %"),
        ("Basking surface", "+4 °F (2 °C)"),
    ]
    assert "no readings of" in (await ask("mine compare first:2026-01-11")).answer


async def test_nobody_sees_or_touches_what_another_keeps(ok: Ask, ask: Ask) -> None:
    await ok(SAVE)
    await ok("mine reading uvi:4.4")
    await ok("remind me about:meter when:in 3 days")
    for line in (
        "mine show name:Pebble's box",
        "mine reading name:Pebble's box uvi:9",
        "mine compare name:Pebble's box",
        "mine unread name:Pebble's box day:today",
        "mine remove name:Pebble's box",
        "remind snooze number:1 until:tomorrow",
        "remind off number:1",
    ):
        reply = await ask(line, keeper=MOSS, moderator=True)
        assert reply.status == "problem", line
        assert "4.4" not in whole(reply)
    for line in ("mine list", "mine export", "remind list", "server export", "server show"):
        told = whole(await ok(line, keeper=MOSS)).replace("mine save name:Pebble's box", "")
        assert "Pebble" not in told
    assert "4.4" in whole(await ok("mine show"))


async def test_an_export_comes_back_as_it_was_and_forgetting_leaves_nothing(ok: Ask) -> None:
    await ok(SAVE)
    await ok("mine reading uvi:4.4 cool:26C")
    await ok("remind me about:tube zone:Europe/Berlin")
    document = (await ok("mine export")).document
    assert document is not None
    kept = KeeperExport.model_validate_json(document.text)
    assert [e.name for e in kept.enclosures] == ["Pebble's box"]
    gone = await ok("mine forget sure:yes")
    assert (row(gone, "Enclosures"), row(gone, "Readings"), row(gone, "Reminders")) == (
        "1",
        "2",
        "1",
    )
    empty = (await ok("mine export")).document
    assert empty is not None
    assert KeeperExport.model_validate_json(empty.text) == KeeperExport()
    await ok(f"mine import file:{json.dumps(json.loads(document.text))}")
    back = (await ok("mine export")).document
    assert back is not None
    assert KeeperExport.model_validate_json(back.text) == kept


async def test_forgetting_asks_first(ok: Ask) -> None:
    await ok(SAVE)
    assert "1 enclosure with" in (await ok("mine forget")).answer
    assert (await ok("mine list")).answer.startswith("1 enclosure ")


@pytest.mark.parametrize(
    "text",
    [
        "nonsense",
        '{"noonstone": "server"}',
        '{"noonstone": "keeper", "enclosures": [{"name": "x y", "setup": {"tube_percent": 99}}]}',
    ],
)
async def test_a_file_that_is_not_sound_is_refused_and_said_why(ask: Ask, text: str) -> None:
    reply = await ask(f"mine import file:{text}")
    assert reply.status == "problem"
    assert "cannot take this file back" in reply.answer
    assert "http" not in reply.answer


async def test_reminders_suit_what_they_are_about_where_no_time_is_given(ok: Ask, ask: Ask) -> None:
    await ok("mine prefer zone:Europe/Berlin")
    assert "2 August 2026 at 09:00 (Europe/Berlin)" in (await ok("remind me about:meter")).answer
    assert "1 June 2026 at 09:00" in (await ok("remind me about:season")).answer
    assert "3 June 2026 at 09:00" in (await ok("remind me about:check")).answer
    await ok(SAVE)
    assert "5 March 2027 at 09:00" in (await ok("remind me about:tube")).answer
    weekly = await ok("remind me about:check when:2026-05-10 18:30 every:1 week where:here")
    assert "in this channel" in weekly.answer
    assert "10 May 2026 at 18:30" in weekly.answer
    assert "every 7 days" in weekly.answer
    table = (await ok("remind list")).table
    assert table is not None
    assert [line[3] for line in table.rows].count("a channel") == 1
    assert (
        "no channel"
        in (await ask("remind me about:meter where:here", server=None, channel=None)).answer
    )
    for wrong in ("yesterday", "in 9 years", "2020-01-01", "whenever"):
        assert (await ask(f"remind me about:meter when:{wrong}")).status == "problem"


async def test_a_reminder_is_put_off_and_taken_away_by_its_number(ok: Ask, ask: Ask) -> None:
    await ok("remind me about:meter when:in 2 weeks")
    moved = await ok("remind snooze number:#1 until:tomorrow 8:00")
    assert "5 May 2026 at 08:00 (UTC)" in moved.answer
    assert "You have: 1." in (await ask("remind off number:7")).answer
    await ok("remind off number:1")
    assert (await ok("remind list")).answer == "You have no reminders."


async def test_the_day_is_the_keepers_and_not_ours(ok: Ask) -> None:
    await ok(SAVE)
    await ok("mine prefer zone:Pacific/Auckland")
    late = NOW + timedelta(hours=10)
    reply = await ok("mine reading uvi:4", now=late)
    assert "5 May 2026" in reply.title


@pytest.mark.parametrize(
    ("told", "label", "text", "asked"),
    [
        ("words:beardie, t8 10.0 in a plain hood", "UV lamp", "T8 or other tube, 10 %", "lamp:T8"),
        ("tube:t8 10.0", "UV lamp", "T8 or other tube, 10 %", "lamp:T8"),
        ("lamp:mercury vapour lamp", "UV lamp", "mercury vapour lamp", "lamp:mercury"),
        ("words:beardie with a compact bulb", "UV lamp", "compact lamp", "lamp:compact lamp"),
        (
            "tube:12% reflector:plain screen:glass",
            "Screen",
            "glass, which lets",
            "screen:glass",
        ),
        ("words:beardie, 12% t5 tube, glass lid", "Lid", "glass: it lets no useful UV", ""),
        (
            "tube:12% reflector:plain screen:none tubes:2 gap:2in",
            "Side by side",
            "2 of them, 2 in",
            "tubes:2 gap:5.08cm",
        ),
    ],
)
async def test_which_lamp_how_many_and_through_what_are_kept_and_asked_again(
    ok: Ask, ask: Ask, told: str, label: str, text: str, asked: str
) -> None:
    await ok(f"mine save name:Box animal:bearded dragon distance:16in {told}")
    shown = await ok("mine show name:Box")
    assert text in row(shown, label)
    questions = [s.removeprefix("Ask about it: ") for s in shown.steps if s.startswith("Ask")]
    assert [asked in question for question in questions] == ([True] if asked else [])
    for question in questions:
        reply = await ask(question)
        assert reply.title != "That did not work", reply.answer
    document = (await ok("mine export")).document
    assert document is not None
    [kept] = KeeperExport.model_validate_json(document.text).enclosures
    await ok(f"mine import file:{document.text}")
    assert KeeperExport.model_validate_json(document.text).enclosures == (kept,)


async def test_another_lamp_does_not_keep_the_strength_of_the_one_before(ok: Ask) -> None:
    await ok(SAVE)
    assert row(await ok("mine save name:Pebble's box tube:compact"), "UV lamp").startswith(
        "compact"
    )
    assert "12 %" not in row(await ok("mine show"), "UV lamp")
    again = await ok("mine save name:Pebble's box tube:T5 HO 6%")
    assert row(again, "UV lamp").startswith("T5 HO tube, 6 %")


async def test_words_that_tell_a_danger_are_heard_when_they_are_saved(ask: Ask) -> None:
    reply = await ask("mine save name:Box words:beardie, 12% tube, the plug is melting")
    assert [danger.key for danger in reply.dangers] == ["fire"]
    assert "Kept." in reply.answer
