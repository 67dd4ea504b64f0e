"""Buttons with ids that this bot never made: damaged, of another version, or out of malice."""

from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from pathlib import Path

import pytest

from bot.database.store import Store, open_store_at
from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from tests.bot.database.databases import sqlite_of_today
from tests.discord.answers import post_buttons
from tests.discord.message_limits import message_breaches
from tests.discord.world import World

NINES = "9" * 18
STRANGE = [
    *(
        "u:in:x",
        "u:cm:?",
        "u:in:distance.0000|12%",
        "u:in:" + "|" * 90,
        "u:in:~n~p~t~",
        "e:?",
        "e:~",
    ),
    *(
        "e:about.e3b0",
        "e:no such thing",
        "p:see:in:?",
        "p:share:cm:convert.ffff|14in",
        "p:see:in:<@5>",
    ),
    *("g:open:no-such-page", "g:back:-", "g:on:" + "a" * 90, "g:open:welcome"),
    *("o:steps:in:?", "o:xwhy:-:e.1|x", "o:rhymes:cm:convert.ffff|14in"),
    *("r:0:0", "r:" + "9" * 19 + ":" + "9" * 19, "share"),
]
SAVED = [
    f"board:{NINES}",
    "board:0",
    f"rem:{NINES}:{NINES}:s999",
    "rem:0:0:s0",
    f"rem:{NINES}:0:c{NINES}",
    "agree:mine share.0000|x",
    "agree:night.0000",
    f"rem:{NINES}:0:off",
]


@asynccontextmanager
async def opened(folder: Path, kept: bool) -> AsyncIterator[Store | None]:
    store = await open_store_at(await sqlite_of_today(folder)) if kept else None
    try:
        yield store
    finally:
        if store is not None:
            await store.close()


@pytest.mark.parametrize("kept", [False, True], ids=["nothing saved", "with a store"])
async def test_a_strange_button_is_answered_and_breaks_nothing(
    world: World, tmp_path: Path, caplog: pytest.LogCaptureFixture, kept: bool
) -> None:
    async with (
        opened(tmp_path, kept) as store,
        world.running(Noonstone(Preferences(), tmp_path, store=store)),
    ):
        for custom_id in (*STRANGE, *(SAVED if kept else ())):
            answer = await world.slash("convert", {"value": "14in"})
            label, button = next(iter(post_buttons(answer.post).items()))
            button["custom_id"] = custom_id
            pressed = await world.press(answer, label)
            payload = pressed.modal if pressed.kind == 9 else pressed.post.payload
            assert pressed.kind == 9 or message_breaches(payload) == [], custom_id
            assert pressed.kind == 9 or pressed.post.pings <= {"@0"}, custom_id
        last = await world.slash("convert", {"value": "14in"})
    assert "35.56 cm" in last.text
    assert "failure" not in caplog.text
    assert "Traceback" not in caplog.text
