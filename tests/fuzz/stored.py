"""The questions about saved data, asked at a desk with a store of their own."""

import asyncio
from collections.abc import Mapping
from contextlib import ExitStack
from datetime import UTC, datetime
from functools import cache
from pathlib import Path
from tempfile import TemporaryDirectory

from bot.ask import ask
from bot.commands import ALL_COMMANDS
from bot.database.address import sqlite_address
from bot.database.store import open_store_at
from bot.desk import Desk
from bot.preferences import Preferences
from bot.queries.question import Question
from bot.reply import Reply
from tests.fuzz.files import FILES
from tests.fuzz.harmless import assert_harmless
from tests.fuzz.pool import given_of

__all__ = ["asked_at_a_desk", "asked_of_the_office", "office_cleared", "taken_back"]

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
    given = given_of(command, text)
    asked = ask(Question(command.name, given), Preferences(), office.desk)
    assert_harmless(office.loop.run_until_complete(asked))
    line = ask(f"{command.name} {text}", Preferences(), office.desk)
    assert_harmless(office.loop.run_until_complete(line))


def file_of(number: int, text: str) -> str:
    """Return the text, or a whole file with the text put into it at a place."""
    if not number & 2:
        return text
    file, place = FILES[number % 2], number // 4
    return file[:place] + text + file[place + len(text) :]


def taken_back(number: int, text: str) -> None:
    """Take a file back, of a keeper or of a server."""
    office, name = _office(), ("mine import", "server import")[number % 2]
    asked = ask(Question(name, {"file": file_of(number, text)}), Preferences(), office.desk)
    assert_harmless(office.loop.run_until_complete(asked))


def asked_of_the_office(name: str, given: Mapping[str, str]) -> Reply:
    """Return the reply to a question of any kind, asked by who may do everything."""
    office = _office()
    asked = ask(Question(name, given), Preferences(), office.desk)
    return office.loop.run_until_complete(asked)


def office_cleared() -> None:
    """Forget everything that was kept, so that the next question does not depend on the last."""
    for name in ("mine forget", "server forget"):
        assert asked_of_the_office(name, {"sure": "yes"}).status == "ok"
