"""Messages that an earlier version sent, as they were recorded: every button of them still works.

`earlier/messages.json` holds what stood in the channels on 28 November 2026, when answers were
embeds. It is never renewed: what people press in a year was sent long before.
"""

import json
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager
from copy import deepcopy
from pathlib import Path

import pytest
import pytest_asyncio

from bot.database.store import Store
from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from bot.serving.studio import Studio
from tests.discord.answers import FORM, post_buttons
from tests.discord.artists import no_time, told
from tests.discord.cast import FERN, MOSS, Place, direct, in_server
from tests.discord.conftest import stand_in
from tests.discord.platform import Post
from tests.discord.saving import an_empty_store, store
from tests.discord.world import World

__all__ = ["store"]

EARLIER = json.loads(
    Path(__file__).with_name("earlier").joinpath("messages.json").read_text(encoding="utf-8")
)
SHARING = ("Share", "Reply in the channel")
LOST = ("I no longer know which question", "Something went wrong", "Restart Discord")
LABELS = [
    (name, part["label"])
    for name, kept in EARLIER.items()
    for row in kept["payload"]["components"]
    for part in row["components"]
    if "label" in part and part["style"] != 5
]
MEAN = {"Tomorrow": "Put off until", "Remind me no more": "will not come"}
MEAN |= {"Sources": "Sources", "Numbers": "Numbers", "Steps": "Steps", "Why": "Why"}
MEAN |= {"Care": "Care", "About this board": "keeps itself up to date"}


# What is shared is shared once a minute, and a reminder is put off once.
ALONE = [(name, label) for name, label in LABELS if name == "reminder" or label in SHARING]
TOGETHER = [each for each in LABELS if each not in ALONE]


@asynccontextmanager
async def a_bot(folder: Path, store: Store) -> AsyncIterator[Noonstone]:
    """Give a bot of today that draws and has a store."""
    studio = Studio(job=told, sleep=no_time)
    yield Noonstone(Preferences(), folder, studio, store=store)
    await studio.close()


@pytest.fixture
async def remembering(tmp_path: Path, store: Store) -> AsyncIterator[Noonstone]:
    async with a_bot(tmp_path, store) as bot:
        yield bot


@pytest_asyncio.fixture(scope="module", loop_scope="module")
async def inhabited(tmp_path_factory: pytest.TempPathFactory) -> AsyncIterator[World]:
    """Return a world in which one bot runs for all the messages whose buttons do not meet."""
    folder = tmp_path_factory.mktemp("inhabited")
    async with (
        stand_in() as world,
        an_empty_store(folder) as kept,
        a_bot(folder, kept) as bot,
        world.running(bot),
    ):
        yield world


def stands(world: World, name: str) -> tuple[Post, Place]:
    """Return an earlier message as it stands in its channel, and the place."""
    kept = deepcopy(EARLIER[name])
    post = Post(kept["payload"], kept["seen_by"], frozenset())
    world.platform.posts[post.id] = post
    private = direct(FERN)
    return post, private if kept["payload"]["channel_id"] == str(private.channel_id) else (
        in_server()
    )


async def does_what_it_says(world: World, name: str, label: str) -> None:
    post, place = stands(world, name)
    pressed = await world.press(post, label, where=place)
    if pressed.kind == FORM:
        assert pressed.fields
        return
    if label in SHARING:
        await world.platform.until(lambda: pressed.further, "what was shared")
    told = pressed.further[0] if pressed.further else pressed.post
    assert not any(words in pressed.text for words in LOST)
    assert MEAN.get(label, "") in pressed.text
    assert pressed.text or told.files


@pytest.mark.parametrize(("name", "label"), ALONE)
async def test_a_button_that_acts_once_still_does_what_it_says(
    world: World, remembering: Noonstone, name: str, label: str
) -> None:
    async with world.running(remembering):
        await world.slash("remind me", {"about": "meter", "when": "in 3 months"})
        await does_what_it_says(world, name, label)


@pytest.mark.asyncio(loop_scope="module")
@pytest.mark.parametrize(("name", "label"), TOGETHER)
async def test_a_button_of_an_earlier_message_still_does_what_it_says(
    inhabited: World, name: str, label: str
) -> None:
    await does_what_it_says(inhabited, name, label)


@pytest.mark.parametrize("name", ["page", "list of pages"])
async def test_a_list_of_an_earlier_message_still_opens_a_page(
    world: World, remembering: Noonstone, name: str
) -> None:
    async with world.running(remembering):
        post, place = stands(world, name)
        picked = await world.pick(post, "reflectors", where=place)
    assert "Reflectors" in picked.text
    assert picked.post is post


async def test_a_strangers_press_leaves_an_earlier_public_answer_as_it_is(
    world: World, remembering: Noonstone
) -> None:
    async with world.running(remembering):
        post, place = stands(world, "shared")
        before = deepcopy(post.payload)
        pressed = await world.press(post, "In cm", user=MOSS, where=place)
    assert post.payload == before
    assert pressed.ephemeral
    assert "39.5 °C (103 °F)" in pressed.text


@pytest.mark.slow
async def test_an_earlier_answer_is_changed_in_place_by_its_own_asker(
    world: World, remembering: Noonstone
) -> None:
    async with world.running(remembering):
        post, place = stands(world, "for a member")
        swapped = await world.press(post, "In cm", where=place)
        again = await world.press(swapped, "In inches")
    assert swapped.post is again.post is post
    assert f"<@{FERN.id}>" in again.text
    assert [*post_buttons(post)][:2] == ["Picture", "Why"]
