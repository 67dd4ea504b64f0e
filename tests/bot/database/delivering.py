"""A process that delivers reminders by writing their numbers into a file; run by the tests.

Usage: address file minutes-after-due dies-after. It looks into the file before it delivers what
another may have delivered, and with dies-after above 0 is killed between a delivery and its note.
"""

import asyncio
import os
import signal
import sys
from datetime import UTC, datetime, timedelta
from pathlib import Path

from sqlalchemy import make_url

from bot.database.store import open_store_at
from bot.saved.reminders import Due

DUE = datetime(2026, 5, 4, 8, 0, tzinfo=UTC)
AT_ONCE = 20


def deliver(due: Due, file: Path) -> None:
    """Write the reminder down as delivered, unless it is unsure and written there already."""
    line = f"{due.reminder.id}\n"
    if due.unsure and line in file.read_text().splitlines(keepends=True):
        return
    with file.open("a", encoding="utf-8") as opened:
        opened.write(line)


async def main(address: str, file: Path, minutes: int, dies_after: int) -> None:
    """Deliver everything that is due, then end."""
    store = await open_store_at(make_url(address))
    by = f"process {os.getpid()}"
    now = DUE + timedelta(minutes=minutes)
    done = 0
    while claimed := await store.reminders.claim(by, now, AT_ONCE):
        for due in claimed:
            deliver(due, file)
            done += 1
            if done == dies_after:
                os.kill(os.getpid(), signal.SIGKILL)
            await store.reminders.delivered(due.reminder, by, now)
    await store.close()


if __name__ == "__main__":
    asyncio.run(main(sys.argv[1], Path(sys.argv[2]), int(sys.argv[3]), int(sys.argv[4])))
