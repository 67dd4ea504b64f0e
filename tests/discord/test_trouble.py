"""What the asker sees, and what the log says, when Discord or the connection misbehaves."""

import asyncio
from typing import Any

import discord
import pytest

from bot.fronts.discord.answering import warm_up
from bot.reply import Reply
from tests.discord.answers import Answer
from tests.discord.cast import FERN, MOSS
from tests.discord.conftest import Maker
from tests.discord.platform import Fault
from tests.discord.world import World

TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}


class QuickAsyncio:
    """asyncio without waiting, for the one module of discord.py that waits between its tries."""

    def __getattr__(self, name: str) -> Any:
        return getattr(asyncio, name)

    async def sleep(self, _: float) -> None:
        await asyncio.sleep(0)


@pytest.fixture
def _quick_retries(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr("discord.webhook.async_.asyncio", QuickAsyncio())


def callbacks(world: World) -> list[int]:
    return [seen.status for seen in world.platform.seen if seen.path.endswith("/callback")]


async def log_line(world: World, caplog: pytest.LogCaptureFixture, words: str) -> None:
    """Wait until the log says something; the log wakes nobody, so it is looked at."""
    async with asyncio.timeout(60):
        while words not in caplog.text:
            await asyncio.sleep(0.005)


async def test_a_callback_that_was_cut_off_is_sent_again(world: World, bot: Maker) -> None:
    world.platform.faults.append(Fault("/callback", "drop"))
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
    assert "Hang it" in answer.text
    assert callbacks(world) == [0, 200]


async def test_a_callback_whose_answer_was_lost_is_answered_once(
    world: World, bot: Maker, caplog: pytest.LogCaptureFixture
) -> None:
    world.platform.faults.append(Fault("/callback", "lose"))
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
        await world.platform.until(lambda: len(callbacks(world)) == 2, "the second try")
        await world.slash("help")
    assert "Hang it" in answer.text
    assert answer.further == []
    assert callbacks(world) == [0, 400, 200]
    assert "failure" not in caplog.text


async def test_a_connection_lost_twice_is_logged_and_the_bot_goes_on(
    world: World, bot: Maker, caplog: pytest.LogCaptureFixture
) -> None:
    world.platform.faults.append(Fault("/callback", "drop", times=4))
    async with world.running(bot()):
        await world.begin("distance", TUBE)
        await world.platform.until(lambda: len(callbacks(world)) == 4, "the last try")
        answer = await world.slash("help")
        await log_line(world, caplog, "failure")
    assert answer.text


@pytest.mark.usefixtures("_quick_retries")
@pytest.mark.parametrize("status", [429, 500, 502, 503])
async def test_a_passing_error_of_discord_is_waited_out(
    world: World, bot: Maker, status: int
) -> None:
    world.platform.faults.append(Fault("/callback", status=status, retry_after=0.01))
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
    assert "Hang it" in answer.text


@pytest.mark.usefixtures("_quick_retries")
async def test_an_error_of_discord_that_stays_is_logged_and_the_bot_goes_on(
    world: World, bot: Maker, caplog: pytest.LogCaptureFixture
) -> None:
    world.platform.faults.append(Fault("/callback", status=503, times=10))
    async with world.running(bot()):
        await world.begin("distance", TUBE)
        await world.platform.until(lambda: len(callbacks(world)) == 10, "the last try")
        answer = await world.slash("help")
        await log_line(world, caplog, "could not tell the asker")
    assert answer.text
    assert "failure" in caplog.text


async def test_a_ban_by_the_edge_is_not_hammered(
    world: World, bot: Maker, caplog: pytest.LogCaptureFixture
) -> None:
    fault = Fault("/callback", status=429, retry_after=60, through_proxy=False, times=2)
    world.platform.faults.append(fault)
    async with world.running(bot()):
        await world.begin("distance", TUBE)
        await world.platform.until(lambda: fault.times == 0, "the refusals")
        await world.slash("help")
    assert len(callbacks(world)) == 3


async def test_an_answer_past_three_seconds_is_logged_and_not_tried_again(
    world: World,
    bot: Maker,
    monkeypatch: pytest.MonkeyPatch,
    caplog: pytest.LogCaptureFixture,
) -> None:
    async with world.running(bot()):
        await world.slash("help")

        def slow(_: Reply) -> None:
            world.platform.ahead_s = 3.1

        monkeypatch.setattr("bot.fronts.discord.answering._swap", slow)
        await world.begin("distance", TUBE)
        await world.platform.until(lambda: len(callbacks(world)) == 2, "the late callback")
        await log_line(world, caplog, "too late to answer")
    assert callbacks(world) == [200, 404]
    assert "failure" not in caplog.text


async def test_a_command_that_waits_while_the_socket_is_cut_is_answered_once(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        await world.slash("help")
        world.gateway.cut()
        answer = await world.slash("distance", TUBE)
    assert "Hang it" in answer.text
    assert (world.gateway.identifies, world.gateway.resumes) == (1, 1)


async def test_a_new_session_after_op_9_answers_as_before(
    world: World, bot: Maker, monkeypatch: pytest.MonkeyPatch
) -> None:
    async def at_once(*_: Any, **__: Any) -> None:
        """Skip the five seconds between two identifies."""

    monkeypatch.setattr(discord.Client, "before_identify_hook", at_once)
    async with world.running(bot()):
        before = await world.slash("distance", TUBE)
        await world.gateway.invalidate(resumable=False)
        await world.platform.until(lambda: world.gateway.identifies == 2, "a new session")
        swapped = await world.press(before, "In cm")
    assert "38 to 51 cm" in swapped.text
    assert world.platform.syncs == [None]


async def test_an_unexpected_error_behind_a_button_is_told_too(
    world: World, bot: Maker, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
        monkeypatch.setattr("bot.fronts.discord.answering.render_post", lambda *_, **__: 1 / 0)
        pressed = await world.press(answer, "In cm")
    assert "noted as" in pressed.text
    assert pressed.ephemeral
    assert "Hang it" in answer.text


async def test_a_question_broken_at_the_start_does_not_stop_the_others(
    world: World, bot: Maker, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    monkeypatch.setattr("bot.fronts.discord.answering.ask", lambda *_, **__: 1 / 0)
    # A process warms up once.
    warm_up.cache_clear()
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
    assert "Hang it" in answer.text
    assert "while warming up distance" in caplog.text


async def test_fifty_people_at_once_are_each_answered(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        people = [FERN, MOSS] * 25
        answers = await asyncio.gather(*(world.slash("distance", TUBE, user=p) for p in people))
    assert len({answer.post.id for answer in answers}) == 50
    assert all(
        answer.post.seen_by == person.id for answer, person in zip(answers, people, strict=True)
    )


async def test_the_log_holds_no_word_of_the_asker(
    world: World, bot: Maker, caplog: pytest.LogCaptureFixture
) -> None:
    caplog.set_level("INFO", logger="bot")
    async with world.running(bot()):
        await world.slash("distance", TUBE)
        answer: Answer = await world.slash("distance", {**TUBE, "screen": "my secret mesh"})
        await world.press(answer, "Change")
    mine = [record.getMessage() for record in caplog.records if record.name.startswith("bot")]
    assert any(line.startswith("distance: ok") for line in mine)
    assert not any("bearded" in line or "secret" in line or FERN.name in line for line in mine)
