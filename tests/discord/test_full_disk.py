"""A disk without room: what is kept stays readable, what is new is refused in a sentence."""

from dataclasses import replace
from pathlib import Path

import pytest

from bot.database import engine
from bot.database.pragmas import PRAGMAS
from bot.database.store import open_store
from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from tests.discord.cast import FERN
from tests.discord.world import World

BOX = {"name": "Pebble's box", "distance": "40cm"}
TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "uvi": "3-5"}
MOST_TRIES = 200


@pytest.mark.slow
async def test_saving_is_refused_and_everything_else_goes_on(
    world: World, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    await (await open_store("", tmp_path)).close()
    # SQLite takes this for a full disk: the file may not grow any more.
    full = (*PRAGMAS, "PRAGMA max_page_count = 1")
    monkeypatch.setattr(engine, "PRAGMAS", full)
    store = await open_store("", tmp_path)
    async with world.running(Noonstone(Preferences(), tmp_path, store=store)):
        for number in range(MOST_TRIES):
            who = replace(FERN, id=FERN.id + 100 * number)
            saved = await world.slash("mine save", BOX, user=who)
            if "Saved data cannot be used here" in saved.text:
                break
        shown = await world.slash("mine list", {})
        answer = await world.slash("distance", TUBE)
    await store.close()
    assert "Saved data cannot be used here" in saved.text
    assert saved.ephemeral
    assert "Pebble's box" in shown.text
    assert "Hang it" in answer.text
