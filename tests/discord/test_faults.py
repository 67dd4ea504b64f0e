"""What the asker sees when the connection, Discord, the disk or a picture process fails."""

import asyncio
import errno
import signal
from itertools import islice
from pathlib import Path
from typing import Any

import discord
import pytest

from bot.fronts.discord.client import Noonstone
from bot.fronts.discord.running import growing_waits
from bot.preferences import Preferences
from bot.serving.studio import Studio
from tests.discord.answers import Answer, post_text
from tests.discord.artists import never, no_time, told
from tests.discord.cast import MOSS
from tests.discord.conftest import Maker
from tests.discord.platform import Fault
from tests.discord.test_process import IMPATIENT, ended, started
from tests.discord.test_trouble import QuickAsyncio, log_line
from tests.discord.world import World

TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}
SHARE, SHOW = "Share", "Picture"


@pytest.fixture
def _quick_retries(monkeypatch: pytest.MonkeyPatch) -> None:
    async def at_once(*_: Any, **__: Any) -> None:
        """Skip the five seconds between two identifies."""

    monkeypatch.setattr("discord.webhook.async_.asyncio", QuickAsyncio())
    monkeypatch.setattr(discord.Client, "before_identify_hook", at_once)


# --- the gateway -----------------------------------------------------------------------------


async def test_a_command_is_answered_over_a_reconnect_that_discord_asked_for(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        await world.slash("help")
        await world.gateway.ask_to_reconnect()
        answer = await world.slash("distance", TUBE)
        await world.platform.until(lambda: world.gateway.resumes, "the connection")
    assert "Hang it" in answer.text
    assert (world.gateway.identifies, world.gateway.resumes) == (1, 1)


async def test_a_session_that_may_be_resumed_after_op_9_is(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        await world.slash("help")
        await world.gateway.invalidate(resumable=True)
        await world.platform.until(lambda: world.gateway.resumes, "the connection")
        answer = await world.slash("distance", TUBE)
    assert "Hang it" in answer.text
    assert world.gateway.identifies == 1


@pytest.mark.usefixtures("_quick_retries")
@pytest.mark.parametrize("code", [4000, 4007, 4009])
async def test_a_connection_that_discord_closed_is_made_anew(
    world: World, bot: Maker, code: int
) -> None:
    async with world.running(bot()):
        await world.slash("help")
        await world.gateway.close(code)
        answer = await world.slash("distance", TUBE)
    assert "Hang it" in answer.text
    assert world.platform.syncs == [None]


# --- follow-ups ------------------------------------------------------------------------------


@pytest.mark.usefixtures("_quick_retries")
@pytest.mark.parametrize("status", [429, 500, 502, 503])
async def test_a_passing_error_at_a_follow_up_is_waited_out(
    world: World, bot: Maker, status: int
) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
        world.platform.faults.append(Fault("/webhooks/", status=status, retry_after=0.01))
        pressed = await world.press(answer, SHARE)
        await world.platform.until(lambda: pressed.further, "the shared answer")
    [shared] = pressed.further
    assert "Hang it" in post_text(shared)
    assert shared.seen_by is None


@pytest.mark.usefixtures("_quick_retries")
async def test_an_error_at_a_follow_up_that_stays_is_told_to_the_one_who_pressed(
    world: World, bot: Maker, caplog: pytest.LogCaptureFixture
) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
        world.platform.faults.append(Fault("/webhooks/", status=503, times=5))
        pressed = await world.press(answer, SHARE)
        await world.platform.until(lambda: pressed.further, "the apology")
    [apology] = pressed.further
    assert "noted as" in post_text(apology)
    assert apology.seen_by == pressed.exchange.person.id
    assert "failure" in caplog.text


async def test_a_token_that_ran_out_costs_a_log_line_and_nothing_else(
    world: World, tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    held = Fault("/webhooks/", "hold", method="PATCH")
    async with world.running(Noonstone(Preferences(), tmp_path, Studio(job=told, sleep=no_time))):
        answer = await world.slash("distance", TUBE)
        world.platform.faults.append(held)
        pressing = asyncio.create_task(world.press(answer, SHOW))
        await world.platform.until(lambda: held.times == 0, "the picture")
        world.platform.ahead_s = 16 * 60.0
        held.released.set()
        await log_line(world, caplog, "too late to answer while showing a picture (50027)")
        other = await world.slash("distance", TUBE, user=MOSS)
        pressing.cancel()
    assert "Hang it" in other.text
    assert "failure" not in caplog.text


# --- pictures --------------------------------------------------------------------------------


async def test_a_picture_whose_receipt_was_lost_is_one_picture(
    world: World, tmp_path: Path
) -> None:
    async with world.running(Noonstone(Preferences(), tmp_path, Studio(job=told, sleep=no_time))):
        answer = await world.slash("distance", TUBE)
        world.platform.faults.append(Fault("/webhooks/", "lose", method="PATCH"))
        shown = await world.press(answer, SHOW)
        await world.slash("help")
    assert list(shown.post.files) == ["distance.png"]
    assert shown.further == []


async def test_a_picture_that_hangs_is_given_up_and_answers_go_on(
    world: World, tmp_path: Path
) -> None:
    studio = Studio(job=never, limit_s=0.2, sleep=no_time)
    async with world.running(Noonstone(Preferences(), tmp_path, studio)):
        answer = await world.slash("distance", TUBE)
        pressing = asyncio.create_task(world.press(answer, SHOW))
        meanwhile = await world.slash("distance", TUBE, user=MOSS)
        shown = await pressing
    assert "Hang it" in meanwhile.text
    assert shown.text.startswith("There is no picture just now")


# --- a restart between two steps -------------------------------------------------------------


async def pressed(world: World, seen: Answer, label: str) -> Answer:
    answer = await world.press(seen, label)
    if label.startswith("Share"):
        await world.platform.until(lambda: answer.further, "what was shared")
    return answer


@pytest.mark.parametrize(
    ("path", "words"),
    [
        ((SHARE,), "asked:"),
        (("In cm",), "38 to 51 cm"),
        (("Sources", "Guide: Measuring the distance"), "Measuring the distance"),
        ((SHOW,), "Distance from tube to back"),
        ((SHOW, "Share"), "Distance from tube to back"),
    ],
    ids=lambda value: value[-1] if isinstance(value, tuple) else "",
)
async def test_a_button_sent_before_a_restart_works_after_it(
    world: World, tmp_path: Path, path: tuple[str, ...], words: str
) -> None:
    def bot() -> Noonstone:
        return Noonstone(Preferences(), tmp_path, Studio(job=told, sleep=no_time))

    async with world.running(bot()):
        seen: Answer = await world.slash("distance", TUBE)
    for label in path:
        async with world.running(bot()):
            seen = await pressed(world, seen, label)
    last = seen.further[-1] if seen.further else seen.post
    assert words in post_text(last)


# --- the start -------------------------------------------------------------------------------


async def test_a_full_disk_does_not_stop_the_bot(
    world: World, bot: Maker, monkeypatch: pytest.MonkeyPatch, caplog: pytest.LogCaptureFixture
) -> None:
    def full(*_: Any, **__: Any) -> int:
        raise OSError(errno.ENOSPC, "No space left on device")

    monkeypatch.setattr(Path, "write_text", full)
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
        await log_line(world, caplog, "No space left on device")
    assert "Hang it" in answer.text


async def test_commands_that_cannot_be_registered_now_are_answered_as_they_are(
    world: World, bot: Maker, tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    async with world.running(bot()):
        await world.slash("help")
    (tmp_path / "discord-commands.sha256").unlink()
    world.platform.faults.append(Fault("/commands", method="PUT", status=503))
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
    assert "Hang it" in answer.text
    assert "cannot register the commands" in caplog.text
    async with world.running(bot()):
        await world.slash("help")
    assert world.platform.syncs == [None, None]


@pytest.mark.slow
async def test_discord_out_of_order_at_the_start_is_tried_again(
    world: World, tmp_path: Path
) -> None:
    world.platform.faults.append(Fault("/users/@me", method="GET", status=503, times=5))
    process = await started(world, tmp_path, launch=IMPATIENT)
    await world.platform.until(lambda: world.gateway.session(), "the bot")
    answer = await world.slash("distance", TUBE)
    process.send_signal(signal.SIGTERM)
    code, told_ = await ended(process)
    assert code == 0
    assert "Hang it" in answer.text
    assert "Discord does not answer as it should" in told_
    assert "Traceback" not in told_


def test_the_waits_grow_up_to_five_minutes() -> None:
    waits = list(islice(growing_waits(), 10))
    wanted = [5, 10, 20, 40, 80, 160, *[300] * 4]
    assert all(0.75 * most <= wait <= most for wait, most in zip(waits, wanted, strict=True))


@pytest.mark.slow
async def test_without_a_place_to_keep_anything_questions_are_answered(
    world: World, tmp_path: Path
) -> None:
    folder = tmp_path / "kept"
    folder.write_text("in the way", encoding="ascii")
    process = await started(world, folder)
    await world.platform.until(lambda: world.gateway.session(), "the bot")
    answer = await world.slash("distance", TUBE)
    saved = await world.slash("mine list", {})
    process.send_signal(signal.SIGTERM)
    code, told_ = await ended(process)
    assert "Hang it" in answer.text
    assert "Saved data cannot be reached just now" in saved.text
    assert code == 0
    assert "the database cannot be reached" in told_
    assert "Traceback" not in told_
