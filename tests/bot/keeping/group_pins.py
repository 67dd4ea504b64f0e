"""What moderators are answered, one question after the other: status, values and figures.

``python -m tests.bot.keeping.group_pins`` pins it anew; only where a figure changed on purpose.
"""

import asyncio
import json
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from dataclasses import replace
from datetime import UTC, datetime, timedelta
from pathlib import Path
from tempfile import TemporaryDirectory
from typing import Any

from bot.ask import ask
from bot.database.store import Store, open_store
from bot.desk import Desk
from bot.preferences import Language, Preferences
from bot.reply import Reply
from bot.saved.counts import Asked
from tests.bot.keeping.people import CHANNEL, FERN, GARDEN
from tests.bot.saying import pinning

NOW = datetime(2026, 5, 4, 12, 0, tzinfo=UTC)
FILE = Path(__file__).parent.parent / "pinned" / "group.json"
_LAMP = "server lamp name:Hood"
_TARGET = "server target animal"
_OWN = "server animal name:Moss lizard"
# In turn over one store, after a line that sets the unit; one behind ``console`` has no channel,
# one behind ``direct`` no server.
LINES = (
    *("server show", "server changes", "board list", "board refresh", "server stats"),
    *("server set", "server set animal:unicorn", "server set animal:bearded dragon"),
    "server set site:https://guide.example zone:Europe/Berlin",
    *("server answers show:public", "server answers show:usual", "server answers show:private"),
    *("console server answers show:public", "direct server show"),
    f"{_LAMP} readings:4.2 at 12 in, 2.9 at 15 in length:34in",
    f"{_LAMP} readings:4.2 at 30cm, 2.9 at 38cm, 2.1 at 50cm length:22in screen:passes 70%",
    f"{_LAMP} B readings:4.2 at 12 in length:39W",
    f"{_LAMP} C readings:5.8 at 12 in, 43 at 15 in, 3.4 at 18 in length:22in",
    f"{_LAMP} D readings:4.2 at 12 in",
    f"{_LAMP} D readings:2 at 12in, 8 at 12in length:34in",
    f"{_LAMP} D readings:42 at 12in, 29 at 15in length:34in",
    f"{_LAMP} D readings:8 at 10cm, 2 at 20cm, 0.9 at 30cm length:34in",
    "server lamp name:12% readings:4.2 at 12 in length:34in",
    *("server screen name:Mesh lid screen:passes 55%", "server screen name:Net screen:blocks 30%"),
    "server screen name:Fine mesh readings:3.0 at 30cm without:6.0 at 30cm",
    *("server screen name:Mesh", "server screen name:none screen:passes 50%"),
    f"{_TARGET}:beardie of:basking range:98-106F best:103F",
    f"{_TARGET}:beardie of:basking range:37-41C",
    f"{_TARGET}:beardie of:uvi range:3-4 best:3.5",
    f"{_TARGET}:beardie of:warm range:84-90F",
    f"{_TARGET}:corn snake of:cool range:72-76F",
    f"{_TARGET}:corn snake of:night floor range:62-66F best:64F",
    f"{_TARGET}:corn snake of:night off range:66-70F",
    f"{_TARGET}:corn snake of:hours range:10-14h best:12h",
    f"{_TARGET}:leopard gecko of:uvi range:1-5",
    f"{_TARGET}:bearded dragon of:basking range:100-115F",
    f"{_TARGET}:corn snake of:hours range:12-20h",
    f"{_TARGET}:crested gecko of:warm range:85-90F",
    f"{_TARGET}:bearded dragon of:basking range:95",
    f"{_TARGET}:bearded dragon of:basking range:95-110F best:200F",
    f"{_OWN} uvi:2-3 basking:88-93F cool:70-76F night:58-64F hours:12-14h",
    f"{_OWN} scientific:Lacerta muscosa basking:31-34C warm:26-29C night_off:18-20C uvi_limit:5",
    f"{_OWN} uvi:2-3 basking:88-93F surface_limit:104F cool_limit:86F night_limit:52F uvi_limit:6",
    *(_OWN, f"{_OWN} basking:110-120F", f"{_OWN} uvi:8-9", f"{_OWN} cool:90-95F"),
    f"{_OWN} uvi:2-3 basking:88-93F surface_limit:200F",
    *("server animal name:Bearded dragon basking:88-93F", "server animal name:the lamp uvi:1-2"),
    f"{_TARGET}:moss lizard of:basking range:88-93F",
    *("server show", "server changes"),
    *("board preview topic:distances", "board preview topic:distances animal:moss lizard"),
    *("board preview topic:temperatures", "board preview topic:temperatures animal:leopard gecko"),
    *("board preview topic:first day", "board preview topic:guide"),
    *("board preview topic:temperatures animal:unicorn", "board post topic:temperatures"),
    *("board post topic:temperatures", "board post topic:guide", "console board post topic:guide"),
    "board post topic:distances animal:moss lizard",
    *("board list", "board refresh", "board remove topic:guide", "board remove topic:first day"),
    *("board list", "server remove", "server remove lamp:Nothing", "server remove lamp:Hood"),
    *("server remove screen:Net", "server remove animal:corn snake of:hours"),
    "server remove animal:moss lizard",
    *("server set site:none animal:none zone:none", "board preview topic:guide"),
    *("board preview topic:temperatures", "server show"),
    *("counted server stats", "server stats weeks:26", "server stats weeks:1"),
    *(
        "server stats weeks:0",
        "server import file:{}",
        'server import file:{"noonstone": "server"}',
    ),
    *("server forget", "server forget sure:yes", "server forget sure:yes", "server show"),
)
_COUNTED = (
    (0, {(Asked.QUESTION, "distance"): 30, (Asked.ANIMAL, "bearded-dragon"): 4}),
    (1, {(Asked.QUESTION, "uvi"): 10, (Asked.PAGE, "screens"): 2}),
    (3, {(Asked.QUESTION, "distance"): 4, (Asked.ANIMAL, "corn-snake"): 3}),
    (12, {(Asked.QUESTION, "night"): 1}),
)


@asynccontextmanager
async def opened() -> AsyncIterator[Store]:
    """Return an empty store."""
    with TemporaryDirectory() as folder:
        store = await open_store("", Path(folder))
        yield store
        await store.close()


def replies(units: str, language: Language = "en") -> list[tuple[str, Reply]]:
    """Return what is answered to the lines in turn, in a group with these units."""
    return asyncio.run(_replies(units, language))


async def _replies(units: str, language: Language) -> list[tuple[str, Reply]]:
    found = []
    async with opened() as store:
        desk = Desk(store, FERN, GARDEN, CHANNEL, moderator=True, now=NOW)
        for line in (f"server set units:{units}", *LINES):
            where, _, asked = line.partition(" ")
            channel = None if where in ("console", "direct") else CHANNEL
            server = None if where == "direct" else GARDEN
            if where == "counted":
                for weeks, counts in _COUNTED:
                    day = NOW.date() - timedelta(weeks=weeks)
                    await store.counts.add(GARDEN, day, counts)
            told = line if where in ("server", "board") else asked
            there = replace(desk, server=server, channel=channel)
            reply = await ask(told, Preferences(language=language), there)
            found.append((line, reply))
    return found


def told(reply: Reply) -> dict[str, Any]:
    """Return what must not change when the questions move."""
    return {
        "status": reply.status,
        "values": {v.name: [round(x, 6) for x in (v.low, v.best, v.high)] for v in reply.values},
        "figures": pinning.figures(reply) if reply.status == "ok" else [],
        "table": [len(reply.table.columns), len(reply.table.rows)] if reply.table else [],
    }


def pinned() -> dict[str, list[Any]]:
    """Return what was answered before, by the units of the group."""
    found: dict[str, list[Any]] = json.loads(FILE.read_text(encoding="utf-8"))
    return found


def now() -> dict[str, list[Any]]:
    """Return what is answered now."""
    return {
        units: [[line, told(reply)] for line, reply in replies(units)] for units in ("in", "cm")
    }


if __name__ == "__main__":
    rows = (
        f"{json.dumps(units)}: [\n"
        + ",\n".join(json.dumps(line, ensure_ascii=False) for line in lines)
        + "\n]"
        for units, lines in now().items()
    )
    FILE.write_text("{\n" + ",\n".join(rows) + "\n}\n", encoding="utf-8")
