"""The world of the end-to-end tests, with discord.py pointed at it and no way out of the host."""

import socket
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any

import discord
import pytest
from discord.app_commands import CommandTree
from discord.gateway import DiscordWebSocket

from bot.fronts.discord import localised, sync
from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from tests.discord.world import World

Maker = Callable[[], Noonstone]


@asynccontextmanager
async def stand_in() -> AsyncIterator[World]:
    """Give a stand-in of Discord that discord.py takes for the real one."""
    world = World()
    await world.open()
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(discord.http.Route, "BASE", world.url)
        patch.setattr(DiscordWebSocket, "DEFAULT_GATEWAY", world.gateway_address)
        yield world
    await world.close()
    assert world.platform.broken == []


@pytest.fixture
async def world() -> AsyncIterator[World]:
    """Return a stand-in of Discord that discord.py takes for the real one."""
    async with stand_in() as world:
        yield world


@pytest.fixture
def bot(tmp_path: Path) -> Maker:
    """Return a maker of bots that share one data folder, as one bot does over restarts."""
    return lambda: Noonstone(Preferences(), tmp_path)


_PAYLOADS: dict[tuple[object, ...], list[Any]] = {}


@pytest.fixture(autouse=True)
def _payloads_made_once(monkeypatch: pytest.MonkeyPatch) -> None:
    """Have bots with the same commands share what is registered of them: it takes 50 ms to make."""
    make = sync._payload

    async def made_once(tree: CommandTree[Any]) -> list[Any]:
        names = [command.qualified_name for command in tree.walk_commands()]
        names += [menu.name for menu in tree.get_commands(type=discord.AppCommandType.message)]
        key = (type(tree.translator), vars(localised)["OFFERED"], *names)
        if key not in _PAYLOADS:
            _PAYLOADS[key] = await make(tree)
        return _PAYLOADS[key]

    monkeypatch.setattr(sync, "_payload", made_once)


@pytest.fixture(autouse=True)
def _loopback_only(monkeypatch: pytest.MonkeyPatch) -> None:
    """Refuse every connection that leaves this host."""
    connect = socket.socket.connect

    def guarded(self: socket.socket, address: Any) -> None:
        assert not isinstance(address, tuple) or address[0] in ("127.0.0.1", "::1"), address
        connect(self, address)

    monkeypatch.setattr(socket.socket, "connect", guarded)
