"""Messages that talk to the bot: by mention, by reply, in direct messages; no others."""

import pytest

from bot.fronts.discord.talking import talks_to
from tests.discord.answers import post_buttons, post_text
from tests.discord.cast import FERN, MOSS, direct, in_server
from tests.discord.conftest import Maker
from tests.discord.payloads import bot_user
from tests.discord.platform import Post
from tests.discord.world import World

ASKED = "how far for a 12% t5 for my bearded dragon?"


async def answers(world: World, channel_id: int, many: int) -> list[Post]:
    """Return the bot's messages in a channel once there are so many."""
    me = bot_user()["id"]

    def posted() -> list[Post]:
        found = [p for p in world.posted(channel_id) if p.payload["author"]["id"] == me]
        return found if len(found) >= many else []

    return await world.platform.until(posted, f"{many} answers")


async def test_a_mention_is_answered_as_a_reply_that_pings_nobody(world: World, bot: Maker) -> None:
    place = in_server()
    async with world.running(bot()):
        asked = await world.writes(MOSS, ASKED)
        [answer] = await answers(world, place.channel_id, 1)
    assert "20 in (51 cm)" in post_text(answer)
    assert answer.pings == frozenset()
    assert answer.payload["message_reference"]["message_id"] == int(asked.payload["id"])


async def test_a_reply_goes_on_with_the_question_that_is_replied_to(
    world: World, bot: Maker
) -> None:
    place = in_server()
    async with world.running(bot()):
        await world.writes(MOSS, ASKED)
        [first] = await answers(world, place.channel_id, 1)
    # The next process knows no more than what stands in the message.
    async with world.running(bot()):
        await world.writes(FERN, "its on a mesh", to=first)
        _, second = await answers(world, place.channel_id, 2)
        await world.writes(FERN, "thanks", to=second)
        *_, third = await answers(world, place.channel_id, 3)
    assert "15 in (38 cm)" in post_text(second)
    assert post_text(third) == "You are welcome."


async def test_a_direct_message_needs_no_mention_and_goes_on(world: World, bot: Maker) -> None:
    place = direct(MOSS)
    world.platform.direct_channels[place.channel_id] = MOSS
    async with world.running(bot()):
        await world.writes(MOSS, ASKED, place, mentions=False)
        await answers(world, place.channel_id, 1)
        await world.writes(MOSS, "12 inches", place, mentions=False)
        _, second = await answers(world, place.channel_id, 2)
    assert "distance:12 in" in post_text(second)


async def test_a_danger_is_said_first_here_too(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        await world.writes(MOSS, "the plug of the heat lamp is melting")
        [answer] = await answers(world, in_server().channel_id, 1)
    assert post_text(answer).startswith("**Pull the plug now")


async def test_a_mention_without_words_is_told_what_to_do(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        await world.writes(MOSS, "")
        [answer] = await answers(world, in_server().channel_id, 1)
    assert "in your own words" in post_text(answer)
    assert post_buttons(answer) == {}


@pytest.mark.parametrize(
    "change",
    [
        {"mentions": []},
        {"author": {"id": "77", "bot": True}},
        {"webhook_id": "5"},
        {"type": 7},
    ],
)
def test_what_does_not_talk_to_the_bot_is_dropped(change: dict[str, object]) -> None:
    me = int(bot_user()["id"])
    told = {
        "id": "1",
        "channel_id": "2",
        "guild_id": "3",
        "type": 0,
        "author": {"id": "4"},
        "content": f"<@{me}> 14in",
        "mentions": [bot_user()],
    }
    assert talks_to(told, me) is not None
    assert talks_to({**told, **change}, me) is None


async def test_what_is_said_of_the_line_itself_stands_beside_the_answer(
    world: World, bot: Maker
) -> None:
    place = direct(MOSS)
    world.platform.direct_channels[place.channel_id] = MOSS
    async with world.running(bot()):
        first = "uvi at 14 inches under a 6% t5, leopard gecko, no mesh"
        await world.writes(MOSS, first, place, mentions=False)
        await answers(world, place.channel_id, 1)
        await world.writes(MOSS, "raised it 2 inches", place, mentions=False)
        _, second = await answers(world, place.channel_id, 2)
    assert "I reckon with 16 in (41 cm) after the move." in post_text(second)
