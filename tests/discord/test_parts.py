"""The parts of an answer on Discord: opened in place, closed again, and for the presser alone."""

import pytest

from bot.ask import ask
from bot.preferences import Preferences
from bot.reply import PartName, part_label
from tests.discord.answers import post_buttons, post_rows
from tests.discord.cast import FERN, MOSS, PEBBLE, direct
from tests.discord.conftest import Maker
from tests.discord.world import World

TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}
LINE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
LONG = {**TUBE, "screen": "18x16 0.011in", "length": "2 feet 9.5 inches", "uvi": "1.5 to 2.5"}
LONG |= {"age": "11 months", "animal": "central bearded dragon"}
FIRE = {"question": "the lamp is smoking"}


async def test_a_part_opens_in_its_message_and_closes_again(world: World, bot: Maker) -> None:
    reply = ask(LINE, Preferences())
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
        before = answer.text
        for part in reply.parts:
            label = part_label(part.name)
            opened = await world.press(answer, label)
            assert opened.post is answer.post
            assert f"**{label}**\n" in opened.text
            told = opened.text.replace("**", "").replace("\\", "")
            assert all(item.rpartition(" [")[0] in told for item in part.items)
            assert opened.text.startswith(before.rpartition("\n")[0])
            closed = await world.press(opened, f"Hide {label.lower()}")
            assert closed.text == before


async def test_one_part_is_open_at_a_time_also_after_a_restart(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answer = await world.press(await world.slash("distance", TUBE), "Care")
    async with world.running(bot()):
        opened = await world.press(answer, "Steps")
    assert [label for label in opened.buttons if label.startswith("Hide")] == ["Hide steps"]
    assert "**Care**" not in opened.text


async def test_the_buttons_stand_in_the_order_of_what_is_pressed_most(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
    labels = [[part["label"] for part in row] for row in post_rows(answer.post)]
    assert labels == [["Why", "Steps", "In cm", "Change"], ["Care", "Numbers", "Sources", "Share"]]


async def test_a_part_keeps_the_unit_that_stands_first(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        metric = await world.press(await world.slash("distance", TUBE), "In cm")
        opened = await world.press(metric, "Steps")
    assert "51 cm (20 in)" in opened.text
    assert "In inches" in opened.buttons


async def test_the_part_of_a_long_question_is_found_in_the_message(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", LONG, where=direct(FERN))
        assert post_buttons(answer.post)["Steps"]["custom_id"] == "o:steps:in:?"
        opened = await world.press(answer, "Steps")
    assert "**Steps**" in opened.text


@pytest.mark.parametrize("presser", [FERN, MOSS, PEBBLE])
async def test_a_part_of_what_everybody_sees_is_for_the_presser_alone(
    world: World, bot: Maker, presser: object
) -> None:
    async with world.running(bot()):
        public = await world.slash("distance", {**TUBE, "for": MOSS})
        before = public.text
        opened = await world.press(public, "Care", user=presser)  # type: ignore[arg-type]
    assert public.text == before
    assert opened.post is not public.post
    assert opened.ephemeral
    assert "**Care**" in opened.text


async def test_a_danger_is_in_sight_and_its_page_one_press_away(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answer = await world.slash("ask", FIRE)
        opened = await world.press(answer, "Why")
    for told in (answer, opened):
        assert "**Pull the plug now, or switch off at the breaker.**" in told.text
        assert "Emergency number now" in told.text
        assert any(label.startswith("Guide: When something smokes") for label in told.buttons)


async def test_an_unknown_part_is_told_plainly(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
        button = post_buttons(answer.post)["Steps"]
        button["custom_id"] = button["custom_id"].replace(PartName.STEPS, "rhymes")
        pressed = await world.press(answer, "Steps")
    assert pressed.ephemeral
    assert "Ask it again" in pressed.text
