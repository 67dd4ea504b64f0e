"""Questions asked with slash commands: who sees what, in servers, direct messages, elsewhere."""

import re

import discord
import pytest

from bot.ask import ask
from bot.command import Command
from bot.commands import COMMANDS
from bot.fronts.discord.localised import described
from bot.fronts.discord.menus import MENUS
from bot.menu import menu_name
from bot.preferences import FIRST, OFFERED, Preferences
from bot.render.escaping import escape
from tests.discord.answers import FORM
from tests.discord.cast import FERN, MOSS, Place, between_friends, direct, foreign_server
from tests.discord.command_limits import command_breaches
from tests.discord.conftest import Maker
from tests.discord.gateway import PRIVILEGED
from tests.discord.world import World

TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}
LINE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
# The 34 of Discord's specification; discord.py 2.7 knows all but ar and he.
LOCALES = """
    ar bg cs da de el en-GB en-US es-419 es-ES fi fr he hi hr hu id it ja ko lt nl no pl pt-BR
    ro ru sv-SE th tr uk vi zh-CN zh-TW
"""
HOSTILE = f"@everyone <@{MOSS.id}> <@&5> **b** `c` [x](http://evil.invalid) # h"


async def test_an_answer_in_a_server_is_for_the_asker_alone(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
    assert answer.ephemeral
    assert escape(ask(LINE, Preferences()).brief[0].text) in answer.text
    assert answer.text.endswith(f"-# /{LINE}")
    assert answer.buttons[:3] == ["Why", "Steps", "In cm"]


async def test_an_answer_in_direct_messages_is_an_ordinary_message(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE, where=direct(FERN))
    assert not answer.ephemeral
    assert "Share" not in answer.buttons
    assert "In cm" in answer.buttons


@pytest.mark.parametrize("where", [between_friends(), foreign_server()], ids=["friends", "server"])
async def test_a_person_may_bring_the_bot_along(world: World, bot: Maker, where: Place) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE, where=where)
    assert answer.ephemeral
    assert "Share" in answer.buttons


async def test_every_locale_gets_the_answer(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answers = [await world.slash("distance", TUBE, locale=loc) for loc in LOCALES.split()]
    assert len(answers) == 34
    assert len({answer.text for answer in answers}) == len(OFFERED)


async def test_an_answer_is_in_the_language_of_the_askers_discord_where_it_is_offered(
    world: World, bot: Maker, monkeypatch: pytest.MonkeyPatch
) -> None:
    room = {"animal": "corn snake", "room": "18C"}
    async with world.running(bot()):
        german = await world.slash("night", room, locale="de")
        english = await world.slash("night", room, locale="fr")
    monkeypatch.setattr("bot.fronts.discord.client.OFFERED", (FIRST,))
    async with world.running(bot()):
        assert "heizen" not in (await world.slash("night", room, locale="de")).text
    assert "heizen" in german.text
    assert {"Warum", "In Zoll"} <= {*german.buttons}
    assert "heizen" not in english.text


@pytest.mark.parametrize("command", COMMANDS, ids=lambda c: c.name)
async def test_every_question_is_answered_without_options_or_asked_for_them(
    world: World, bot: Maker, command: Command
) -> None:
    options = {o.name: o.example for o in command.query.options() if o.required}
    async with world.running(bot()):
        answer = await world.slash(command.name, options)
    if answer.kind == FORM:
        assert answer.fields
        return
    assert answer.text
    assert answer.post.pings == frozenset()


async def test_an_option_that_is_not_understood_gets_one_plain_sentence(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", {**TUBE, "tube": "strong"})
    assert answer.ephemeral
    assert "I read “strong” for tube" in answer.text
    assert "Share" not in answer.buttons
    assert "Change" in answer.buttons


async def test_an_unexpected_error_is_told_with_the_id_of_the_log(
    world: World,
    bot: Maker,
    monkeypatch: pytest.MonkeyPatch,
    caplog: pytest.LogCaptureFixture,
) -> None:
    async with world.running(bot()):
        monkeypatch.setattr("bot.fronts.discord.question.ask", lambda *_: 1 / 0)
        answer = await world.slash("distance", TUBE)
    found = re.search(r"noted as ([0-9a-f]{6})", answer.text)
    assert found
    assert answer.ephemeral
    assert "Traceback" not in answer.text
    assert f"failure {found[1]}" in caplog.text
    assert "ZeroDivisionError" in caplog.text


@pytest.mark.parametrize("option", ["animal", "tube", "screen"])
async def test_hostile_text_pings_nobody_and_formats_nothing(
    world: World, bot: Maker, option: str
) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", {**TUBE, option: HOSTILE}, where=direct(FERN))
    described = answer.text
    assert answer.post.pings == frozenset()
    assert not re.search(r"(?<!\\)<@|(?<!\\)@everyone|http://|(?<!\\)\*\*b", described)


async def test_an_option_offers_what_fits_and_what_was_typed(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        tubes = await world.type("distance", "tube", "12")
        animals = await world.type("distance", "animal", "beard")
        screens = await world.type("distance", "screen", "blocks 38%")
        pages = await world.type("guide", "page", "scre")
        everything = await world.type("distance", "animal", "")
        endless = await world.type("distance", "screen", "x" * 150)
    assert tubes.choices[0] == "12%"
    assert animals.choices[0] == "bearded dragon"
    assert "blocks 38%" in screens.choices
    assert pages.choices[0] == "screens"
    assert 1 < len(everything.choices) <= 25
    assert "x" * 150 not in endless.choices


async def test_a_failing_completion_offers_what_was_typed(
    world: World, bot: Maker, monkeypatch: pytest.MonkeyPatch
) -> None:
    async with world.running(bot()):
        monkeypatch.setattr("bot.fronts.discord.slash.complete", lambda *_: 1 / 0)
        answer = await world.type("distance", "tube", "12")
    assert answer.choices == ["12"]


async def test_an_answer_for_a_member_is_public_and_pings_only_that_member(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", {**TUBE, "for": MOSS})
    assert not answer.ephemeral
    assert answer.post.pings == {f"@{MOSS.id}"}
    assert answer.text.startswith(f"<@{MOSS.id}>, <@{FERN.id}> asked this for you:")
    assert "Change" not in answer.buttons


async def test_a_question_for_a_member_that_fails_is_told_to_the_asker_alone(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", {**TUBE, "tube": "strong", "for": MOSS})
    assert answer.ephemeral
    assert answer.post.pings == frozenset()


async def test_the_commands_keep_discords_limits_and_need_no_privilege(
    world: World, bot: Maker
) -> None:
    client = bot()
    async with world.running(client):
        session = world.gateway.session()
    registered = world.platform.commands[None]
    assert command_breaches(registered) == []
    menus = {described(menu.label) for menu in MENUS}
    shown = {menu_name(c.name).partition(" ")[0] for c in COMMANDS}
    assert {c["name"] for c in registered} == shown | menus
    assert all(c["contexts"] == [0, 1, 2] for c in registered)
    assert session is not None
    intents = discord.Intents(guilds=True, guild_messages=True, dm_messages=True)
    assert discord.Intents._from_value(session.intents) == intents
    assert not session.intents & PRIVILEGED


async def test_a_command_of_an_older_version_asks_for_a_restart_of_discord(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        gone = {**world.platform.commands[None][0], "name": "gone", "options": []}
        world.platform.commands[None].append(gone)
        answer = await world.slash("gone")
    assert answer.text == "This question has changed. Restart Discord, then ask it again."
    assert answer.ephemeral
