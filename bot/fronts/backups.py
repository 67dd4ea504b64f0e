"""Backups from the command line: what was done in the language set, and an exit code."""

import asyncio
import sys
from collections.abc import Coroutine
from dataclasses import dataclass
from pathlib import Path

from bot.database.backup import back_up, is_empty, restore
from bot.database.errors import BackupError, BackupFault, StoreError
from bot.database.store import open_store
from bot.facts import Say
from bot.language.units import Units
from bot.preferences import FIRST, Language
from bot.problems import store_told
from bot.saying.voice import voice

__all__ = ["back_up_now", "restore_now"]

_REFUSED = 2


@dataclass(frozen=True, slots=True)
class KeptIn:
    """A file that saved data went into, or could not."""

    file: str


@dataclass(frozen=True, slots=True)
class Restored:
    """How many rows came back out of a file."""

    rows: int
    file: str


def back_up_now(database_url: str, folder: Path, file: Path, language: Language = FIRST) -> int:
    """Write all saved data into a new file, also while the bot runs."""

    async def work() -> Say:
        store = await open_store(database_url, folder)
        try:
            await back_up(store.database, file)
        finally:
            await store.close()
        return Say("run-kept", KeptIn(str(file)))

    return _told(work(), language)


def restore_now(
    database_url: str, folder: Path, file: Path, language: Language = FIRST, *, replace: bool
) -> int:
    """Put the saved data of a backup in place of what there is."""

    async def work() -> Say:
        store = await open_store(database_url, folder)
        try:
            if not replace and not await is_empty(store.database):
                raise BackupError(BackupFault.WOULD_BE_LOST, file)
            rows = await restore(store.database, file)
        finally:
            await store.close()
        return Say("run-restored", Restored(rows, str(file)))

    return _told(work(), language)


def _told(work: Coroutine[None, None, Say], language: Language) -> int:
    say = voice(language, Units.CM).text
    try:
        print(say(asyncio.run(work)))
    except StoreError as error:
        print(say(_trouble(error)), file=sys.stderr)
        return _REFUSED
    return 0


def _trouble(error: StoreError) -> Say:
    if isinstance(error, BackupError):
        return _fault(error.fault, KeptIn(str(error.file)))
    return store_told(error)


def _fault(fault: BackupFault, told: KeptIn) -> Say:
    return Say.of("run-fault", fault.name.lower(), facts=told)
