"""The buttons under an answer: pressed at once, by others, and after the bot was restarted."""

from pathlib import Path

import pytest

from bot.command import Command
from bot.commands import COMMANDS
from bot.fronts.discord.client import Noonstone
from bot.fronts.discord.question import Question
from bot.language.quantities import Units
from bot.preferences import Preferences
from tests.discord.answers import Answer, forget_the_question, is_card, post_buttons, post_text
from tests.discord.cast import FERN, MOSS, PEBBLE, direct, in_server
from tests.discord.conftest import Maker
from tests.discord.world import World

TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}
# Too long for a custom id, so that its buttons must find the question in the message.
LONG = {
    "tube": "T5 HO 12%",
    "reflector": "polished",
    "screen": "18x16 0.011in",
    "animal": "bearded dragon",
    "uvi": "1.5 to 2.5",
    "length": "2 feet 9.5 inches",
    "age": "11 months",
    "distance": "1 foot 2 inches",
}


async def test_swapping_the_unit_changes_the_own_message_and_swaps_back(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        first = await world.slash("distance", TUBE)
        before = first.text
        swapped = await world.press(first, "In cm")
        assert swapped.post is first.post
        assert "38 to 51 cm (15 to 20 in)" in swapped.text
        back = await world.press(swapped, "In inches")
    assert back.text == before


async def test_swapping_works_after_a_restart(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        first = await world.slash("distance", TUBE)
    async with world.running(bot()):
        swapped = await world.press(first, "In cm")
    assert "38 to 51 cm (15 to 20 in)" in swapped.text


async def test_a_question_too_long_for_a_button_is_read_from_the_message_after_a_restart(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        first = await world.slash("uvi", LONG, where=direct(FERN))
        button = post_buttons(first.post)["In cm"]
    assert button["custom_id"] == "u:cm:?"
    async with world.running(bot()):
        swapped = await world.press(first, "In cm")
    assert "36 cm (14 in)" in swapped.text
    assert first.text.rsplit("\n", 1)[1] == swapped.text.rsplit("\n", 1)[1]


async def test_swapping_somebody_elses_public_answer_leaves_it_as_it_is(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        shared = await world.slash("distance", {**TUBE, "for": MOSS})
        before = shared.text
        swapped = await world.press(shared, "In cm", user=PEBBLE)
    assert shared.text == before
    assert swapped.post is not shared.post
    assert swapped.ephemeral
    assert "38 to 51 cm (15 to 20 in)" in swapped.text


async def test_a_bare_number_keeps_its_unit_when_the_other_is_shown_first(
    world: World, tmp_path: Path
) -> None:
    async with world.running(Noonstone(Preferences(units=Units.IN), tmp_path)):
        first = await world.slash("uvi", {**TUBE, "distance": "14"})
        before = first.text
        swapped = await world.press(first, "In cm")
    assert "14 in (36 cm)" in before
    assert "36 cm (14 in)" in swapped.text


@pytest.mark.slow
async def test_a_conversion_has_no_unit_to_swap(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answer = await world.slash("convert", {"value": "14in"})
    assert "In cm" not in answer.buttons
    assert "In inches" not in answer.buttons


@pytest.mark.parametrize("restart", [False, True], ids=["at once", "after a restart"])
async def test_sharing_posts_what_was_seen_once_and_pings_nobody(
    world: World, bot: Maker, restart: bool
) -> None:
    client = bot()
    async with world.running(client):
        answer = await world.slash("distance", TUBE)
        before = answer.text
        if not restart:
            shared = await share(world, answer)
    if restart:
        async with world.running(bot()):
            shared = await share(world, answer)
    [public] = shared.further
    assert not public.ephemeral
    assert public.pings == frozenset()
    assert post_text(public).startswith(f"<@{FERN.id}> asked:")
    assert public.payload["content"] == f"<@{FERN.id}> asked:\n{before}"
    assert is_card(answer.post)
    assert not is_card(public)
    assert "Share" not in answer.buttons
    assert "In cm" in answer.buttons
    assert [*post_buttons(public)][:3] == ["Why", "Steps", "In cm"]
    assert "Change" not in post_buttons(public)


async def share(world: World, answer: Answer) -> Answer:
    shared = await world.press(answer, "Share")
    await world.platform.until(lambda: shared.further, "the shared message")
    return shared


async def test_a_shared_answer_still_swaps_for_whoever_presses(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        shared = await share(world, await world.slash("distance", TUBE))
        [public] = shared.further
        swapped = await world.press(public, "In cm", user=MOSS, where=in_server())
    assert swapped.ephemeral
    assert "38 to 51 cm" in swapped.text


async def test_a_button_of_an_older_version_is_not_read_as_another_question(
    world: World, bot: Maker
) -> None:
    old = "u:cm:distance.0000|none|12%|polished"
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
        post_buttons(answer.post)["In cm"]["custom_id"] = old
        swapped = await world.press(answer, "In cm")
        post_buttons(answer.post)["In inches"]["custom_id"] = old
        forget_the_question(answer.post)
        lost = await world.press(answer, "In inches")
    assert "38 to 51 cm" in swapped.text
    assert lost.text == "I no longer know which question this was. Ask it again."
    assert lost.ephemeral


@pytest.mark.parametrize("command", COMMANDS, ids=lambda c: c.name)
async def test_every_example_has_buttons_that_discord_takes(
    world: World, bot: Maker, command: Command
) -> None:
    async with world.running(bot()):
        for example in command.examples:
            question = Question.read(example)
            assert question is not None
            answer = await world.slash(command.name, question.given)
            assert is_card(answer.post)
            assert answer.text
