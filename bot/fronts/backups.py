"""Backups from the command line: one sentence about what was done, and an exit code."""

import asyncio
import sys
from collections.abc import Coroutine
from pathlib import Path

from bot.database.backup import back_up, is_empty, restore
from bot.database.errors import StoreError
from bot.database.store import open_store

__all__ = ["back_up_now", "restore_now"]

_REFUSED = 2


def back_up_now(database_url: str, folder: Path, file: Path) -> int:
    """Write all saved data into a new file, also while the bot runs."""

    async def work() -> str:
        store = await open_store(database_url, folder)
        try:
            await back_up(store.database, file)
        finally:
            await store.close()
        return f"All saved data is in {file}; keep it where only you can read it."

    return _told(work())


def restore_now(database_url: str, folder: Path, file: Path, *, replace: bool) -> int:
    """Put the saved data of a backup in place of what there is."""

    async def work() -> str:
        store = await open_store(database_url, folder)
        try:
            if not replace and not await is_empty(store.database):
                raise StoreError(
                    "There is saved data already, and it would be lost: make a backup of it, "
                    "then restore with --replace."
                )
            rows = await restore(store.database, file)
        finally:
            await store.close()
        return f"{rows} rows are restored from {file}."

    return _told(work())


def _told(work: Coroutine[None, None, str]) -> int:
    try:
        print(asyncio.run(work))
    except StoreError as error:
        print(error, file=sys.stderr)
        return _REFUSED
    return 0
