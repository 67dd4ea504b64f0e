"""A question about somebody's message: private to the helper, then given to that person."""

import re

import pytest

from bot.dangers.table import hazard
from bot.facts import Say
from bot.fronts.discord.menus import MENUS, Menu
from tests.bot.dangers.saying import english
from tests.discord.answers import Answer, post_buttons, post_text
from tests.discord.cast import FERN, MOSS, between_friends
from tests.discord.conftest import Maker
from tests.discord.world import World

LABEL, SAID = "Answer this", Say("menu-message-ask")


@pytest.fixture(autouse=True)
def _menu(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("bot.fronts.discord.menus.MENUS", (Menu(SAID, "convert"),))


async def replied(world: World, answer: Answer) -> Answer:
    pressed = await world.press(answer, "Reply in the channel")
    await world.platform.until(lambda: pressed.further, "the public reply")
    return pressed


async def test_a_message_is_answered_to_the_helper_alone(world: World, bot: Maker) -> None:
    asked = world.says(MOSS, "14in")
    async with world.running(bot()):
        answer = await world.menu(LABEL, asked)
    assert answer.ephemeral
    assert "35.56 cm" in answer.text
    assert "Reply in the channel" in answer.buttons
    assert "Share" not in answer.buttons


async def test_the_writer_is_answered_in_the_channel_and_is_the_only_one_pinged(
    world: World, bot: Maker
) -> None:
    asked = world.says(MOSS, "14in")
    async with world.running(bot()):
        answer = await world.menu(LABEL, asked)
    async with world.running(bot()):
        pressed = await replied(world, answer)
    [public] = pressed.further
    assert not public.ephemeral
    assert public.pings == {f"@{MOSS.id}"}
    assert f"<@{FERN.id}>" in post_text(public)
    assert re.search(rf"/channels/\d+/\d+/{asked.id}:", post_text(public))
    assert "35.56 cm" in post_text(public)
    assert "Reply in the channel" not in answer.buttons
    assert "Correct" not in post_buttons(public)


async def test_a_correction_keeps_whom_the_answer_is_for(world: World, bot: Maker) -> None:
    asked = world.says(MOSS, "fourteen of something")
    async with world.running(bot()):
        wrong = await world.menu(LABEL, asked)
        assert post_buttons(wrong.post)["Reply in the channel"]["disabled"]
        form = await world.press(wrong, "Correct")
        assert form.fields["value"]["value"] == "fourteen of something"
        right = await world.submit(form, {"value": "14in"})
        pressed = await replied(world, right)
    assert "Reply in the channel" not in wrong.buttons
    assert pressed.further[0].pings == {f"@{MOSS.id}"}


async def test_a_message_without_words_is_told_so(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answer = await world.menu(LABEL, world.says(MOSS, ""))
    assert answer.text == "I can only read words, and this message has none."


@pytest.mark.parametrize(
    ("told", "key"),
    [
        ("12% tube over my beardie, basking 100F. the plug of the heat lamp is melting", "fire"),
        ("he is limp and does not react", "not_moving"),
    ],
)
async def test_a_danger_in_a_message_is_said_first_to_the_helper_and_then_to_its_writer(
    world: World, bot: Maker, monkeypatch: pytest.MonkeyPatch, told: str, key: str
) -> None:
    monkeypatch.setattr("bot.fronts.discord.menus.MENUS", MENUS)
    asked = world.says(MOSS, told)
    async with world.running(bot()):
        answer = await world.menu(LABEL, asked)
        pressed = await replied(world, answer)
    [public] = pressed.further
    assert answer.ephemeral
    assert public.pings == {f"@{MOSS.id}"}
    for post in (answer.post, public):
        lines = post_text(post).split("\n")
        # In the channel our own words stand above it.
        assert lines[post is public] == f"**{english(hazard(key).do_now[0])}**"


async def test_it_works_between_friends_too(world: World, bot: Maker) -> None:
    place = between_friends()
    async with world.running(bot()):
        answer = await world.menu(LABEL, world.says(MOSS, "14in", place), where=place)
        pressed = await replied(world, answer)
    assert f"/channels/@me/{place.channel_id}/" in post_text(pressed.further[0])


async def test_a_hostile_message_pings_nobody_in_the_reply(world: World, bot: Maker) -> None:
    asked = world.says(MOSS, f"14in @everyone <@{FERN.id}>")
    async with world.running(bot()):
        answer = await world.menu(LABEL, asked)
    assert answer.post.pings == frozenset()
    assert "<@" not in re.sub(r"\\<@", "", answer.text)


async def test_the_entry_is_registered_only_with_its_question(
    world: World, bot: Maker, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setattr("bot.fronts.discord.menus.MENUS", (Menu(SAID, "no-such-question"),))
    async with world.running(bot()):
        kinds = [command["type"] for command in world.platform.commands[None]]
    assert set(kinds) == {1}


@pytest.mark.parametrize(
    ("told", "said"),
    [
        ("does my corn snake need heat at night, room is 58F", "/night room:58 F"),
        ("beardie, 12% in a shiny hood, no mesh, 16in to his back, basking 98, cool 78", "/check"),
    ],
)
async def test_a_question_and_a_set_up_are_both_heard_in_a_message(
    world: World, bot: Maker, monkeypatch: pytest.MonkeyPatch, told: str, said: str
) -> None:
    monkeypatch.setattr("bot.fronts.discord.menus.MENUS", MENUS)
    async with world.running(bot()):
        answer = await world.menu(LABEL, world.says(MOSS, told))
    assert answer.ephemeral
    assert said in answer.text
    assert "Reply in the channel" in answer.buttons
