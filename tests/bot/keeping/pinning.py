"""What questions about saved data answered before they moved: status, values, dangers, figures.

``python -m tests.bot.keeping.pinning`` writes the pin anew: before a move, and afterwards only
where a figure was changed on purpose. The lines are asked one after the other at one desk.
"""

import asyncio
import json
import tempfile
from datetime import UTC, datetime
from pathlib import Path
from typing import Any

from bot.ask import ask
from bot.database.store import Store, open_store
from bot.desk import Desk
from bot.language.units import Units
from bot.preferences import Language, Preferences
from bot.reply import Reply
from tests.bot.keeping.people import CHANNEL, FERN, GARDEN
from tests.bot.saying import pinning

PIN = Path(__file__).parent.parent / "pinned" / "saved.json"
LINES = Path(__file__).parent.parent / "pinned" / "saved.txt"
NOW = datetime(2026, 5, 4, 12, 0, tzinfo=UTC)


def lines() -> list[str]:
    """Return what is asked, one line after the other."""
    told = LINES.read_text(encoding="utf-8").splitlines()
    return [line for line in told if line and not line.startswith("#")]


def desk_at(store: Store) -> Desk:
    """Return the desk of a moderator in a channel."""
    return Desk(store, FERN, GARDEN, CHANNEL, moderator=True, now=NOW)


async def answers(desk: Desk, units: Units, language: Language) -> list[Reply]:
    """Return the answers to all lines, told in one language."""
    asker = Preferences(forced_units=units, language=language)
    return [await ask(line, asker, desk) for line in lines()]


def told(reply: Reply) -> dict[str, Any]:
    """Return what must not change when a question moves."""
    values = {v.name: [round(x, 6) for x in (v.low, v.best, v.high)] for v in reply.values}
    return {
        "status": reply.status,
        "values": values,
        "dangers": [danger.key for danger in reply.dangers],
        "figures": pinning.figures(reply) if reply.status == "ok" else [],
    }


def pinned() -> list[dict[str, Any]]:
    """Return what was answered before."""
    found: list[dict[str, Any]] = json.loads(PIN.read_text(encoding="utf-8"))
    return found


async def _write() -> None:
    with tempfile.TemporaryDirectory() as folder:
        store = await open_store("", Path(folder))
        found = await answers(desk_at(store), Units.IN, "en")
        await store.close()
    rows = (
        json.dumps({"line": line, **told(reply)}, ensure_ascii=False)
        for line, reply in zip(lines(), found, strict=True)
    )
    PIN.write_text("[\n" + ",\n".join(rows) + "\n]\n", encoding="utf-8")


if __name__ == "__main__":
    asyncio.run(_write())
