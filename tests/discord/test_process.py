"""The bot as a process: how it ends, with which words and which exit code."""

import asyncio
import os
import signal
import sys
from pathlib import Path

import pytest

from tests.discord.world import World

# Points discord.py at the stand-in, then starts the bot as `python -m bot …` does.
LAUNCH = """
import sys, discord, yarl
from discord.gateway import DiscordWebSocket
discord.http.Route.BASE, DiscordWebSocket.DEFAULT_GATEWAY = sys.argv[1], yarl.URL(sys.argv[2])
from bot.__main__ import main
sys.exit(main([sys.argv[3]]))
"""
# The same, which waits a short while before it tries again.
IMPATIENT = LAUNCH.replace(
    "from bot.__main__",
    "import bot.fronts.discord.running as r; r._FIRST_WAIT_S = 0.1\nfrom bot.__main__",
)

Process = asyncio.subprocess.Process


async def started(
    world: World,
    folder: Path,
    token: str = "loopback",
    door: str = "discord",
    stderr: int = asyncio.subprocess.PIPE,
    launch: str = LAUNCH,
) -> Process:
    environment = {**os.environ, "NOONSTONE_TOKEN": token, "NOONSTONE_DATA_DIR": str(folder)}
    return await asyncio.create_subprocess_exec(
        sys.executable,
        "-c",
        launch,
        world.url,
        world.gateway.url,
        door,
        stdout=asyncio.subprocess.PIPE,
        stderr=stderr,
        env=environment,
        # Read a talkative log at once: a full pipe would hold the bot up.
        limit=2**24,
    )


async def ended(process: Process) -> tuple[int, str]:
    async with asyncio.timeout(60):
        _, told = await process.communicate()
    assert process.returncode is not None
    return process.returncode, told.decode()


@pytest.mark.slow
async def test_a_wrong_token_ends_with_a_sentence(world: World, tmp_path: Path) -> None:
    code, told = await ended(await started(world, tmp_path, token="wrong"))
    assert code == 2
    assert told.endswith("Discord refused the token. Put a fresh one into NOONSTONE_TOKEN.\n")
    assert "Traceback" not in told
    assert "wrong" not in told


@pytest.mark.slow
@pytest.mark.parametrize(
    ("close_code", "exit_code", "words"),
    [(4014, 2, "privileged intent"), (4011, 1, "so few connections"), (4010, 1, "shard number")],
)
async def test_a_refusal_by_the_gateway_ends_with_a_sentence(
    world: World, tmp_path: Path, close_code: int, exit_code: int, words: str
) -> None:
    world.gateway.refuse_with = close_code
    code, told = await ended(await started(world, tmp_path))
    assert code == exit_code
    assert words in told.splitlines()[-1]
    assert "Traceback" not in told


@pytest.mark.slow
async def test_a_stop_signal_ends_it_cleanly(world: World, tmp_path: Path) -> None:
    process = await started(world, tmp_path)
    await world.platform.until(lambda: world.gateway.session(), "the bot")
    answer = await world.slash("help")
    process.send_signal(signal.SIGTERM)
    code, told = await ended(process)
    assert answer.text
    assert code == 0
    assert "Traceback" not in told


@pytest.mark.slow
async def test_even_a_talkative_log_holds_no_word_of_the_asker(
    world: World, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setenv("NOONSTONE_LOG", "debug")
    process = await started(world, tmp_path)
    await world.platform.until(lambda: world.gateway.session(), "the bot")
    # So much is told that it must be read meanwhile.
    ending = asyncio.create_task(ended(process))
    await world.slash("convert", {"value": "17in"})
    saved = await world.slash("mine save", {"name": "Willow", "distance": "41cm"})
    process.send_signal(signal.SIGTERM)
    _, told = await ending
    assert "Willow" in saved.text
    assert "convert: ok" in told
    assert "mine save: ok" in told
    assert "17in" not in told
    assert "Willow" not in told
    assert "0.41" not in told
    assert "loopback" not in told
    assert "PyNaCl" not in told


@pytest.mark.slow
async def test_an_unreachable_discord_is_tried_again_until_the_bot_is_stopped(
    world: World, tmp_path: Path
) -> None:
    world.url = "http://127.0.0.1:9/api/v10"
    process = await started(world, tmp_path, launch=IMPATIENT)
    assert process.stderr is not None
    told = ""
    async with asyncio.timeout(60):
        while told.count("Discord cannot be reached") < 2:
            told += (await process.stderr.readline()).decode()
    process.send_signal(signal.SIGTERM)
    code, rest = await ended(process)
    assert code == 0
    assert "trying again in " in told
    assert "Traceback" not in told + rest
