"""A database locked, taken away or put back while the bot runs: what the asker sees."""

import asyncio
import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from bot.database import FILE_NAME, engine
from bot.database.pragmas import PRAGMAS
from bot.database.store import Store
from bot.fronts.discord.watching import watched
from tests.discord.answers import Answer
from tests.discord.saving import Keeper, keeper, store
from tests.discord.test_watching import fetched, free_port
from tests.discord.world import World

__all__ = ["keeper", "store"]

TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}
BOX = {"name": "Willow", "distance": "40cm"}
NOT_JUST_NOW = "Saved data cannot be reached just now; every other question still works."
BROKEN = "Saved data cannot be used here: whoever runs me has to look."


@pytest.fixture
def _no_patience(monkeypatch: pytest.MonkeyPatch) -> None:
    pragmas = ("PRAGMA busy_timeout = 50", *PRAGMAS[1:])
    monkeypatch.setattr(engine, "PRAGMAS", pragmas)


def file_of(tmp_path: Path) -> Path:
    return tmp_path / "kept" / FILE_NAME


async def told(world: World) -> tuple[Answer, Answer]:
    """Return what a question and one about saved data are answered."""
    return await world.slash("distance", TUBE), await world.slash("mine save", BOX)


@pytest.mark.usefixtures("_no_patience")
async def test_a_locked_database_costs_saved_data_only_and_until_it_is_let_go(
    world: World, tmp_path: Path, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await world.slash("help")
        with closing(
            sqlite3.connect(file_of(tmp_path), timeout=30, check_same_thread=False)
        ) as holder:
            await asyncio.to_thread(holder.execute, "BEGIN EXCLUSIVE")
            answer, refused = await told(world)
        _, saved = await told(world)
    assert "Hang it" in answer.text
    assert NOT_JUST_NOW in refused.text
    assert refused.ephemeral
    assert NOT_JUST_NOW not in saved.text
    assert "Willow" in saved.text


async def test_a_file_that_was_taken_away_takes_nothing_and_comes_back(
    world: World, tmp_path: Path, keeper: Keeper, store: Store
) -> None:
    file, aside = file_of(tmp_path), tmp_path / "aside"
    client, port = keeper(), free_port()
    async with watched(client, port), world.running(client):
        await told(world)
        await store.database.settle()
        file.rename(aside)
        answer, refused = await told(world)
        status, _ = await fetched(port, "/healthz")
        assert not file.exists()
        aside.rename(file)
        listed = await world.slash("mine list", {})
    assert "Hang it" in answer.text
    assert NOT_JUST_NOW in refused.text
    assert status == 503
    assert "Willow" in listed.text


async def test_another_file_in_its_place_is_used_from_then_on(
    world: World, tmp_path: Path, keeper: Keeper, store: Store
) -> None:
    file, earlier = file_of(tmp_path), tmp_path / "earlier"
    await store.database.settle()
    earlier.write_bytes(file.read_bytes())
    async with world.running(keeper()):
        await told(world)
        await store.database.settle()
        earlier.replace(file)
        listed = await world.slash("mine list", {})
        await told(world)
        again = await world.slash("mine list", {})
    assert "Willow" not in listed.text
    assert "Willow" in again.text
