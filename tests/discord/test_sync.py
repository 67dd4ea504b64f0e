"""The commands are registered once, and again only when they changed."""

from pathlib import Path

import pytest

from bot.commands import COMMANDS
from bot.fronts.listed import said
from bot.menu import about_question
from tests.discord.conftest import Maker
from tests.discord.test_trouble import log_line
from tests.discord.world import World


async def test_a_restart_registers_nothing_new(world: World, bot: Maker) -> None:
    for _ in range(3):
        async with world.running(bot()):
            await world.slash("help")
    assert world.platform.syncs == [None]


async def test_a_changed_command_is_registered_once_more(
    world: World, bot: Maker, monkeypatch: pytest.MonkeyPatch
) -> None:
    async with world.running(bot()):
        await world.slash("help")
    monkeypatch.setattr("bot.fronts.discord.slash.COMMANDS", COMMANDS[:-1])
    for _ in range(2):
        async with world.running(bot()):
            await world.slash("help")
    assert world.platform.syncs == [None, None]
    left = str(world.platform.commands[None])
    assert said(about_question(COMMANDS[-1].name)) not in left
    assert said(about_question(COMMANDS[0].name)) in left


async def test_another_application_is_registered_although_the_commands_are_the_same(
    world: World, bot: Maker, tmp_path: Path
) -> None:
    (tmp_path / "discord-commands.sha256").write_text("of another application", encoding="ascii")
    async with world.running(bot()):
        await world.slash("help")
    assert world.platform.syncs == [None]


async def test_a_folder_that_cannot_be_written_does_not_stop_the_bot(
    world: World, bot: Maker, tmp_path: Path, caplog: pytest.LogCaptureFixture
) -> None:
    (tmp_path / "discord-commands.sha256").mkdir()
    async with world.running(bot()):
        answer = await world.slash("help")
        await log_line(world, caplog, "cannot remember the registered commands")
    assert answer.text


async def test_a_reconnect_registers_nothing(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        await world.slash("help")
        world.gateway.cut()
        await world.slash("help")
    assert world.platform.syncs == [None]
