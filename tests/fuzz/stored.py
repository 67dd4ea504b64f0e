"""The questions about saved data, asked at a desk with a store of their own."""

import asyncio
from contextlib import ExitStack
from datetime import UTC, datetime
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

from bot.ask_stored import ask_stored, ask_stored_options
from bot.commands import ALL_COMMANDS
from bot.desk import Desk
from bot.preferences import Preferences
from bot.store.address import sqlite_address
from bot.store.store import open_store_at
from tests.fuzz.harmless import assert_harmless

__all__ = ["asked_at_a_desk", "taken_back"]

_STORED = [command for command in ALL_COMMANDS if command.stored is not None]
_NOW = datetime(2026, 5, 4, 12, 0, tzinfo=UTC)


class _Office:
    """A store for as long as the process runs, and somebody who may do everything there."""

    def __init__(self) -> None:
        self.loop = asyncio.new_event_loop()
        self.folder = ExitStack()
        name = self.folder.enter_context(TemporaryDirectory())
        file = sqlite_address(Path(name) / "kept.sqlite3")
        store = self.loop.run_until_complete(open_store_at(file))
        self.desk = Desk(store, keeper=1, server=2, channel=3, moderator=True, now=_NOW)


@cache
def _office() -> _Office:
    return _Office()


def asked_at_a_desk(number: int, text: str) -> None:
    """Ask a question about saved data with the text, part by part, as its options."""
    office, command = _office(), _STORED[number % len(_STORED)]
    names = [option.name for option in command.query.options()]
    given = dict(zip(names, text.split("\x1f"), strict=False))
    given = {name: value for name, value in given.items() if value}
    asked = ask_stored_options(command.name, given, Preferences(), office.desk)
    assert_harmless(office.loop.run_until_complete(asked))
    line = ask_stored(f"{command.name} {text}", Preferences(), office.desk)
    assert_harmless(office.loop.run_until_complete(line))


def taken_back(number: int, text: str) -> None:
    """Take a file back, of a keeper or of a server."""
    office, name = _office(), ("mine import", "server import")[number % 2]
    asked = ask_stored_options(name, {"file": text}, Preferences(), office.desk)
    assert_harmless(office.loop.run_until_complete(asked))
