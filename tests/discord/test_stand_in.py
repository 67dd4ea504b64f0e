"""The stand-in itself, met by a plain discord.py client over real sockets."""

import asyncio
import io
from collections.abc import Callable, Coroutine
from typing import Any

import aiohttp
import discord
import pytest
from discord import app_commands

from tests.discord.cast import FERN, MOSS, between_friends, direct
from tests.discord.platform import Fault
from tests.discord.world import World

Reaction = Callable[[discord.Interaction], Coroutine[Any, Any, Any]]


class Plain(discord.Client):
    """A client with one command that does what the test says."""

    def __init__(self, reaction: Reaction, intents: discord.Intents | None = None) -> None:
        super().__init__(intents=intents or discord.Intents(guilds=True))
        self.tree = app_commands.CommandTree(self)
        self._failed: asyncio.Queue[Exception] = asyncio.Queue()

        @self.tree.command(name="lamp", description="A lamp.")
        async def lamp(interaction: discord.Interaction, tube: str = "") -> None:
            try:
                await reaction(interaction)
            except (discord.DiscordException, aiohttp.ClientError) as error:
                self._failed.put_nowait(error)

        @lamp.autocomplete("tube")
        async def tubes(_: discord.Interaction, typed: str) -> list[app_commands.Choice[str]]:
            return [app_commands.Choice(name=f"{typed}%", value=f"{typed} %")]

    async def setup_hook(self) -> None:
        await self.tree.sync()

    async def failure(self) -> Any:
        async with asyncio.timeout(60):
            return await self._failed.get()


async def says_hello(interaction: discord.Interaction) -> None:
    await interaction.response.send_message("hello", ephemeral=True)


async def test_a_client_logs_in_syncs_and_answers(world: World) -> None:
    async with world.running(Plain(says_hello)):
        answer = await world.slash("lamp", {"tube": "12%"})
    assert answer.text == "hello"
    assert answer.ephemeral
    assert world.platform.syncs == [None]


async def test_autocomplete_is_answered_with_choices(world: World) -> None:
    async with world.running(Plain(says_hello)):
        answer = await world.type("lamp", "tube", "12")
    assert answer.choices == ["12 %"]


@pytest.mark.parametrize("where", [direct(FERN), between_friends()])
async def test_a_command_works_without_a_server(world: World, where: Any) -> None:
    seen: list[Any] = []

    async def looks_around(interaction: discord.Interaction) -> None:
        seen.extend([interaction.guild, interaction.user.id])
        await interaction.response.send_message("hi")

    async with world.running(Plain(looks_around)):
        answer = await world.slash("lamp", where=where)
    assert seen == [None, FERN.id]
    assert not answer.ephemeral


async def test_a_second_callback_is_refused(world: World) -> None:
    async def answers_twice(interaction: discord.Interaction) -> None:
        await interaction.response.send_message("one")
        interaction.response._response_type = None
        await interaction.response.send_message("two")

    client = Plain(answers_twice)
    async with world.running(client):
        answer = await world.slash("lamp")
        error = await client.failure()
    assert error.code == 40060
    assert answer.text == "one"


async def test_a_late_callback_finds_the_interaction_gone(world: World) -> None:
    async def answers_late(interaction: discord.Interaction) -> None:
        world.platform.ahead_s += 3.1
        await interaction.response.send_message("late")

    client = Plain(answers_late)
    async with world.running(client):
        await world.begin("lamp")
        error = await client.failure()
    assert error.code == 10062


async def test_a_token_is_void_after_fifteen_minutes(world: World) -> None:
    async def edits_late(interaction: discord.Interaction) -> None:
        await interaction.response.send_message("first")
        world.platform.ahead_s += 15 * 60 + 1
        await interaction.edit_original_response(content="second")

    client = Plain(edits_late)
    async with world.running(client):
        answer = await world.slash("lamp")
        error = await client.failure()
    assert (error.status, error.code) == (401, 50027)
    assert answer.text == "first"


async def test_a_deferred_answer_is_filled_in_and_keeps_its_reader(world: World) -> None:
    async def thinks(interaction: discord.Interaction) -> None:
        await interaction.response.defer(ephemeral=True)
        await interaction.followup.send("thought")

    async with world.running(Plain(thinks)):
        answer = await world.slash("lamp")
    assert answer.text == "thought"
    assert answer.ephemeral
    assert answer.further == []


async def test_files_arrive_with_their_words(world: World) -> None:
    async def draws(interaction: discord.Interaction) -> None:
        picture = discord.File(io.BytesIO(b"png"), "uv.png", description="UV falls with distance")
        await interaction.response.send_message("a picture", file=picture)

    async with world.running(Plain(draws)):
        answer = await world.slash("lamp")
    assert answer.post.files == {"uv.png": b"png"}
    assert answer.post.payload["attachments"][0]["description"] == "UV falls with distance"


async def test_a_payload_over_a_limit_is_refused_with_discords_words(world: World) -> None:
    async def shouts(interaction: discord.Interaction) -> None:
        await interaction.response.send_message("x" * 2001)

    client = Plain(shouts)
    async with world.running(client):
        await world.begin("lamp")
        error = await client.failure()
    assert error.code == 50035


async def test_a_message_pings_by_default_and_the_stand_in_tells(world: World) -> None:
    async def names(interaction: discord.Interaction) -> None:
        await interaction.response.send_message(f"<@{MOSS.id}> @everyone <@&5>")

    async with world.running(Plain(names)):
        answer = await world.slash("lamp")
    assert answer.post.pings == {f"@{MOSS.id}", "@everyone", "&5"}


async def test_a_form_is_opened_filled_in_and_sent(world: World) -> None:
    class Form(discord.ui.Modal, title="A plan"):
        size: discord.ui.Label[Any] = discord.ui.Label(
            text="Size", component=discord.ui.TextInput(custom_id="size", default="4x2x2")
        )

        async def on_submit(self, interaction: discord.Interaction, /) -> None:
            assert isinstance(self.size.component, discord.ui.TextInput)
            await interaction.response.send_message(self.size.component.value)

    async with world.running(Plain(lambda i: i.response.send_modal(Form()))):
        form = await world.slash("lamp")
        answer = await world.submit(form, {"size": "3x2x2"})
    assert form.fields["size"]["value"] == "4x2x2"
    assert answer.text == "3x2x2"


async def test_a_cut_socket_is_resumed_and_the_waiting_command_comes_again(world: World) -> None:
    async with world.running(Plain(says_hello)):
        await world.slash("lamp")
        world.gateway.cut()
        answer = await world.slash("lamp")
    assert answer.text == "hello"
    assert (world.gateway.identifies, world.gateway.resumes) == (1, 1)


async def test_op_7_leads_to_a_resume(world: World) -> None:
    async with world.running(Plain(says_hello)):
        await world.slash("lamp")
        await world.gateway.ask_to_reconnect()
        await world.platform.until(lambda: world.gateway.resumes, "a resume")
        answer = await world.slash("lamp")
    assert answer.text == "hello"


async def test_op_9_leads_to_a_new_session(world: World, monkeypatch: pytest.MonkeyPatch) -> None:
    async def at_once(*_: Any, **__: Any) -> None:
        """Skip the five seconds between two identifies."""

    monkeypatch.setattr(discord.Client, "before_identify_hook", at_once)
    async with world.running(Plain(says_hello)):
        await world.slash("lamp")
        await world.gateway.invalidate(resumable=False)
        await world.platform.until(lambda: world.gateway.identifies == 2, "a new session")
        answer = await world.slash("lamp")
    assert answer.text == "hello"


async def test_a_rate_limited_callback_is_tried_again(world: World) -> None:
    world.platform.faults.append(Fault("/callback", status=429, retry_after=0.01))
    async with world.running(Plain(says_hello)):
        answer = await world.slash("lamp")
    assert answer.text == "hello"


async def test_a_dropped_callback_raises_and_a_lost_one_has_taken_effect(world: World) -> None:
    client = Plain(says_hello)
    world.platform.faults += [Fault("/callback", "drop"), Fault("/callback", "lose")]
    async with world.running(client):
        await world.begin("lamp")
        dropped = await client.failure()
        answer = await world.slash("lamp")
        lost = await client.failure()
    assert isinstance(dropped, aiohttp.ServerDisconnectedError)
    assert isinstance(lost, aiohttp.ServerDisconnectedError)
    assert answer.text == "hello"


async def test_a_wrong_token_is_refused_at_login(world: World) -> None:
    client = Plain(says_hello)
    with pytest.raises(discord.LoginFailure):
        await client.start("wrong")
    await client.close()


async def test_a_privileged_intent_is_refused(world: World) -> None:
    client = Plain(says_hello, discord.Intents(guilds=True, message_content=True))
    with pytest.raises(discord.PrivilegedIntentsRequired):
        async with asyncio.timeout(60), world.running(client) as task:
            await task


async def test_a_channel_message_needs_rights_and_may_be_pinned(world: World) -> None:
    async def pins(interaction: discord.Interaction) -> None:
        assert isinstance(interaction.channel, discord.TextChannel)
        await interaction.response.defer()
        message = await interaction.channel.send("a board")
        await message.pin()
        names = [m.content async for m in interaction.channel.pins()]
        await message.unpin()
        await message.edit(content="an old board")
        await message.delete()
        await interaction.edit_original_response(content=str(names))

    async with world.running(Plain(pins)):
        answer = await world.slash("lamp")
    assert answer.text == "['a board']"
    assert sum(post.deleted for post in world.platform.posts.values()) == 1
