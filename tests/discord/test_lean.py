"""Of a server the bot keeps that it is there, and nothing of what is in it."""

from dataclasses import replace

from tests.discord.cast import GARDEN, in_server
from tests.discord.conftest import Maker
from tests.discord.payloads import guild
from tests.discord.world import World

FULL = replace(GARDEN, more_channels=3, more_roles=2)


async def test_channels_and_roles_are_not_kept_and_questions_are_answered(
    world: World, bot: Maker
) -> None:
    world.platform.servers[:] = [FULL]
    client = bot()
    async with world.running(client):
        answer = await world.slash("convert", {"value": "14in"}, where=in_server(FULL))
        [server] = client.guilds
        assert (server.id, server.name) == (FULL.id, FULL.name)
        assert [role.id for role in server.roles] == [FULL.id]
        assert list(server.channels) == []
    assert "35.56 cm" in answer.text
    assert answer.ephemeral


async def test_what_changes_inside_a_server_is_not_listened_to(world: World, bot: Maker) -> None:
    client = bot()
    async with world.running(client):
        await world.slash("help")
        channel = guild(FULL)["channels"][1]
        await world.gateway.dispatch("CHANNEL_CREATE", channel, GARDEN.id)
        await world.gateway.dispatch("GUILD_UPDATE", guild(FULL), GARDEN.id)
        await world.slash("help")
        [server] = client.guilds
        assert list(server.channels) == []
        assert len(server.roles) == 1


async def test_a_server_that_joins_or_leaves_is_known(world: World, bot: Maker) -> None:
    other = replace(FULL, id=FULL.id + 1)
    client = bot()
    async with world.running(client):
        await world.slash("help")
        await world.gateway.dispatch("GUILD_CREATE", guild(other))
        await world.slash("help")
        assert {server.id for server in client.guilds} == {GARDEN.id, other.id}
        await world.gateway.dispatch("GUILD_DELETE", {"id": str(GARDEN.id)})
        await world.slash("help")
        assert {server.id for server in client.guilds} == {other.id}
