"""Too many questions: the asker is told until when, and others are answered meanwhile."""

import re
import time
from pathlib import Path

from bot.fronts.discord.buttons import BUTTONS
from bot.fronts.discord.client import Noonstone
from bot.fronts.discord.limits import Limited
from bot.preferences import Preferences
from bot.serving.allowance import Limits
from tests.discord.answers import Answer
from tests.discord.cast import FERN, MOSS, direct
from tests.discord.world import World

LENGTH = {"value": "14in"}


def refused(answer: Answer) -> bool:
    return answer.text.startswith("Many questions came at once. Try again <t:")


def limited(folder: Path, person: int = 2, server: int = 100) -> Noonstone:
    limits = Limits(person_per_minute=person, server_per_minute=server)
    return Noonstone(Preferences(), folder, limits=limits)


async def test_who_asks_too_often_is_told_until_when_and_alone(
    world: World, tmp_path: Path
) -> None:
    async with world.running(limited(tmp_path)):
        answers = [await world.slash("convert", LENGTH) for _ in range(3)]
        other = await world.slash("convert", LENGTH, user=MOSS)
    assert [refused(answer) for answer in answers] == [False, False, True]
    assert answers[2].ephemeral
    assert not refused(other)
    until = re.search(r"<t:(\d+):R>", answers[2].text)
    assert until
    assert 0 < int(until[1]) - time.time() < 31


async def test_a_whole_server_has_a_share_too_and_direct_messages_go_on(
    world: World, tmp_path: Path
) -> None:
    async with world.running(limited(tmp_path, person=100, server=2)):
        answers = [await world.slash("convert", LENGTH, user=who) for who in (FERN, MOSS, FERN)]
        alone = await world.slash("convert", LENGTH, where=direct(FERN))
    assert [refused(answer) for answer in answers] == [False, False, True]
    assert not refused(alone)


async def test_buttons_count_but_typing_does_not(world: World, tmp_path: Path) -> None:
    async with world.running(limited(tmp_path, person=3)):
        for _ in range(5):
            await world.type("distance", "tube", "12")
        answer = await world.slash("convert", LENGTH)
        page = next(label for label in (await world.slash("guide")).buttons if "Next" in label)
        opened = await world.press(await world.slash("guide"), page)
        pressed = await world.press(answer, "Change")
    assert refused(opened)
    assert refused(pressed)


async def test_what_was_filled_in_is_answered_although_the_share_is_used_up(
    world: World, tmp_path: Path
) -> None:
    async with world.running(limited(tmp_path)):
        answer = await world.slash("convert", LENGTH)
        form = await world.press(answer, "Change")
        sent = await world.submit(form, {"value": "15in"})
        again = await world.slash("convert", LENGTH)
    assert "15 in is 38.1 cm" in sent.text
    assert refused(again)


def test_every_button_counts() -> None:
    assert all(issubclass(button, Limited) for button in BUTTONS)


async def test_a_bot_that_was_given_no_limits_has_none(world: World, tmp_path: Path) -> None:
    async with world.running(Noonstone(Preferences(), tmp_path)):
        answers = [await world.slash("convert", LENGTH) for _ in range(30)]
    assert not any(refused(answer) for answer in answers)
