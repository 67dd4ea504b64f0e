"""Saved data on Discord: groups of commands, for the asker alone, by right, with files."""

import asyncio
import json
from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager
from dataclasses import replace
from datetime import UTC, datetime
from pathlib import Path

import pytest
from sqlalchemy.ext.asyncio import AsyncSession

from bot.commands import STORED_COMMANDS
from bot.database.engine import Database
from bot.database.errors import StoreUnavailableError
from bot.database.store import Store
from bot.drawing import Drawing
from bot.fronts.discord.client import Noonstone
from bot.language.quantities import Units
from bot.menu import STORED_GROUPS
from bot.preferences import Preferences
from bot.saved.counts import Asked
from bot.saved.group import By, Shown
from bot.serving.studio import Studio
from tests.discord.artists import hopeless, no_time, told
from tests.discord.cast import (
    FERN,
    GARDEN,
    MOSS,
    PEBBLE,
    direct,
    foreign_server,
)
from tests.discord.command_limits import command_breaches
from tests.discord.conftest import Maker
from tests.discord.saving import Keeper, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

NOW = datetime.now(UTC)
SAVE = {"name": "Pebble's box", "animal": "bearded dragon", "distance": "40cm"}
TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "uvi": "3-5"}


async def test_the_groups_keep_discords_limits_and_ask_for_their_rights(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        pass
    registered = {c["name"]: c for c in world.platform.commands[None]}
    assert command_breaches(list(registered.values())) == []
    assert registered.keys() >= set(STORED_GROUPS)
    for name in ("server", "board"):
        assert registered[name]["contexts"] == [0]
        assert registered[name]["integration_types"] == [0]
        assert int(registered[name]["default_member_permissions"]) == 1 << 13
    for name in ("mine", "remind"):
        assert registered[name]["contexts"] == [0, 1, 2]
    within = {f"{g} {sub['name']}" for g in STORED_GROUPS for sub in registered[g]["options"]}
    assert within == {command.name for command in STORED_COMMANDS}


async def test_a_bot_without_a_store_has_none_of_them(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        pass
    assert not set(STORED_GROUPS) & {c["name"] for c in world.platform.commands[None]}


async def test_what_is_saved_is_seen_by_the_asker_alone_and_there_after_a_restart(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        saved = await world.slash("mine save", SAVE)
        read = await world.slash("mine reading", {"uvi": "4.2", "basking": "103F"})
    async with world.running(keeper()):
        shown = await world.slash("mine show", {})
        of_moss = await world.slash("mine show", {"name": "Pebble's box"}, user=MOSS)
        at_home = await world.slash("mine list", {}, where=direct(FERN))
    assert saved.ephemeral
    assert read.ephemeral
    assert "15.5 in (40 cm)" in shown.text
    assert "Share" in shown.buttons
    assert "Share" not in saved.buttons
    assert "keep no enclosure yet" in of_moss.text
    assert not at_home.ephemeral
    assert "Pebble's box" in at_home.text


async def test_who_may_not_manage_messages_is_refused_even_if_discord_lets_them(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        refused = await world.slash("server set", {"units": "cm"}, user=FERN)
        done = await world.slash("server set", {"units": "cm"}, user=PEBBLE)
    assert "moderators" in refused.text
    assert refused.ephemeral
    assert "Kept." in done.text
    assert done.ephemeral
    (line,) = await store.changes.newest(GARDEN.id, 9)
    assert (line.who, line.name, line.after) == (PEBBLE.id, "units", "cm")


async def test_the_groups_settings_count_from_the_next_question_on(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        before = await world.slash("distance", TUBE)
        await world.slash("server set", {"units": "cm"}, user=PEBBLE)
        lamp = {
            "name": "Hood by the door",
            "readings": "4.2 at 12 in, 2.9 at 15 in",
            "length": "34in",
        }
        await world.slash("server lamp", lamp, user=PEBBLE)
        after = await world.slash("distance", TUBE)
        own = await world.slash("distance", {**TUBE, "tube": "hood by the door"})
        own = await world.press(own, "Numbers")
        offered = await world.type("distance", "tube", "hoo")
        elsewhere = await world.slash("distance", TUBE, where=direct(FERN))
    assert "In cm" in before.buttons
    assert "In inches" in after.buttons
    assert "The group's own" in own.text
    assert offered.choices[0] == "Hood by the door"
    assert "In cm" in elsewhere.buttons


@pytest.mark.slow
async def test_a_server_that_did_not_add_the_bot_has_no_settings(
    world: World, keeper: Keeper, store: Store
) -> None:
    where = foreign_server()
    assert where.server is not None
    await store.servers.change(where.server.id, By(1, NOW), units=Units.CM)
    async with world.running(keeper()):
        answer = await world.slash("distance", TUBE, where=where)
    assert "In cm" in answer.buttons


async def test_a_public_channel_shows_answers_to_all_and_keeps_saved_data_private(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        await world.slash("server answers", {"show": "public"}, user=PEBBLE)
        answer = await world.slash("distance", TUBE)
        refused = await world.slash("distance", {**TUBE, "tube": "banana"})
        saved = await world.slash("mine save", SAVE)
        await world.slash("server answers", {"show": "usual"}, user=PEBBLE)
        again = await world.slash("distance", TUBE)
    assert not answer.ephemeral
    assert answer.post.pings == frozenset()
    assert refused.ephemeral
    assert saved.ephemeral
    assert again.ephemeral


async def test_an_export_is_a_file_and_an_attached_one_is_taken_back(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        await world.slash("mine save", SAVE)
        out = await world.slash("mine export", {})
        content = out.post.files["mine.json"]
        await world.slash("mine forget", {"sure": "yes"})
        empty = await world.slash("mine list", {})
        upload = world.attaches("mine.json", content)
        back = await world.slash("mine import", {"file": upload})
        shown = await world.slash("mine show", {})
        huge = await world.slash("mine import", {"file": replace(upload, size=2_100_000)})
        wrong = world.attaches("wrong.json", b"\xff\xfe nonsense")
        refused = await world.slash("mine import", {"file": wrong})
    assert json.loads(content)["noonstone"] == "keeper"
    assert out.ephemeral
    assert "No enclosures" in empty.text
    assert "taken back" in back.text
    assert "40 cm" in shown.text
    assert "two megabytes" in huge.text
    assert "It is no JSON" in refused.text
    assert "nonsense" not in refused.text


@pytest.mark.parametrize(("job", "files"), [(told, ["mine-show.png"]), (hopeless, [])])
async def test_the_history_comes_with_its_picture_or_without_one(
    world: World, store: Store, tmp_path: Path, job: Callable[[Drawing], bytes], files: list[str]
) -> None:
    studio = Studio(job=job, sleep=no_time)
    async with world.running(Noonstone(Preferences(), tmp_path, studio, store=store)):
        await world.slash("mine save", SAVE)
        await world.slash("mine reading", {"uvi": "4.2"})
        shown = await world.slash("mine show", {})
    await studio.close()
    assert shown.kind == 5
    assert list(shown.post.files) == files
    assert "UV index" in shown.text
    assert shown.ephemeral


async def test_names_and_numbers_of_the_asker_are_offered(world: World, keeper: Keeper) -> None:
    async with world.running(keeper()):
        await world.slash("mine save", SAVE)
        await world.slash("remind me", {"about": "meter"})
        names = await world.type("mine show", "name", "")
        of_moss = await world.type("mine show", "name", "", user=MOSS)
        numbers = await world.type("remind off", "number", "")
        zones = await world.type("mine prefer", "zone", "berl")
    assert names.choices == ["Pebble's box"]
    assert of_moss.choices == []
    assert numbers.choices == ["1"]
    assert "Europe/Berlin" in zones.choices


async def test_questions_are_counted_without_text_and_kept_when_the_bot_leaves(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await world.slash("distance", {**TUBE, "animal": "beardie"})
        await world.slash("distance", {**TUBE, "tube": "my secret words"})
        await world.slash("distance", TUBE, where=direct(FERN))
        await world.slash("guide", {"page": "screens"})
    counts = await store.counts.since(GARDEN.id, NOW.date())
    assert {(c.kind, c.name): c.times for c in counts} == {
        (Asked.QUESTION, "distance"): 1,
        (Asked.QUESTION, "guide"): 1,
        (Asked.ANIMAL, "bearded-dragon"): 1,
        (Asked.PAGE, "screens"): 1,
    }


@pytest.mark.slow
async def test_a_server_that_removed_the_bot_while_it_was_away_is_noted(
    world: World, keeper: Keeper, store: Store
) -> None:
    gone = 5_999_999_999_999_999
    for server in (gone, GARDEN.id):
        await store.servers.show(server, 61, Shown.PUBLIC, By(1, NOW))
    await store.servers.left(GARDEN.id, NOW)
    async with world.running(keeper()) as running:
        async with asyncio.timeout(60):
            while await store.servers.away() != {gone}:
                assert not running.done()
    assert await store.servers.known() == {GARDEN.id}


async def test_without_its_store_everything_else_is_answered(
    world: World, keeper: Keeper, monkeypatch: pytest.MonkeyPatch
) -> None:
    @asynccontextmanager
    async def vanished(_: Database) -> AsyncIterator[AsyncSession]:
        raise StoreUnavailableError
        yield AsyncSession()

    async with world.running(keeper()):
        monkeypatch.setattr(Database, "reading", vanished)
        monkeypatch.setattr(Database, "writing", vanished)
        answer = await world.slash("distance", TUBE)
        saved = await world.slash("mine list", {})
        offered = await world.type("distance", "animal", "beard")
    assert "In cm" in answer.buttons
    assert "cannot be reached" in saved.text
    assert offered.choices[0] == "bearded dragon"


@pytest.mark.slow
async def test_what_cannot_be_taken_back_is_confirmed_by_a_button(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        await world.slash("mine save", SAVE)
        asked = await world.slash("mine forget", {})
        kept = await world.slash("mine list", {})
        done = await world.press(asked, "Yes, delete for good")
        empty = await world.slash("mine list", {})
    assert "No enclosures" not in kept.text
    assert done.ephemeral
    assert "Yes, delete for good" not in done.buttons
    assert "No enclosures" in empty.text
