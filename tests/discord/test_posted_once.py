"""What is shared comes once, whatever is lost or pressed twice, and with its picture."""

from collections.abc import AsyncIterator

import pytest

from bot.fronts.discord.client import Noonstone
from bot.serving.studio import Studio
from tests.discord.answers import post_buttons, post_text
from tests.discord.artists import no_time, told
from tests.discord.platform import Fault
from tests.discord.saving import Keeper, keeper, store
from tests.discord.test_public import SHARE, STAYS, TUBE, public_posts, set_to, stable
from tests.discord.test_saved import SAVE
from tests.discord.world import World

__all__ = ["keeper", "store"]

SHOW, SHARE_PICTURE = "Picture", "Share"


@pytest.mark.parametrize("kind", ["lose", "drop"])
@pytest.mark.parametrize("path", ["/callback", "/webhooks/"])
async def test_a_share_is_posted_once_whatever_is_lost(
    world: World, keeper: Keeper, kind: str, path: str
) -> None:
    async with world.running(keeper()):
        answer = await world.slash("distance", TUBE)
        world.platform.faults.append(Fault(path, kind))  # type: ignore[arg-type]
        pressed = await world.press(answer, SHARE)
        await world.platform.until(lambda: public_posts(world), "the shared answer")
        await stable(world)
    assert public_posts(world) == pressed.further
    assert len(pressed.further) == 1
    assert SHARE not in answer.buttons


async def test_who_may_not_look_posts_once_at_most_and_says_so(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        answer = await world.slash("distance", TUBE)
        world.platform.faults.append(Fault("/webhooks/", "lose"))
        world.platform.faults.append(Fault("/channels/", "status", method="GET", status=403))
        pressed = await world.press(answer, SHARE)
        await world.platform.until(lambda: len(pressed.further) == 2, "the word about it")
    public, word = pressed.further
    assert public_posts(world) == [public]
    assert word.ephemeral
    assert "Look whether it is there" in post_text(word)


async def test_two_presses_at_once_share_once(world: World, keeper: Keeper) -> None:
    async with world.running(keeper()):
        answer = await world.slash("distance", TUBE)
        held = Fault("/callback", "hold")
        world.platform.faults.append(held)
        first = await world.begin_press(answer, SHARE)
        second = await world.begin_press(answer, SHARE)
        # Either of the two may be the one that is held.
        await world.platform.until(lambda: first.callback or second.callback, "a press")
        held.released.set()
        await world.platform.until(lambda: first.callback and second.callback, "the other")
        await stable(world)
        await world.platform.until(lambda: public_posts(world), "the shared answer")
    assert len(public_posts(world)) == 1


async def test_an_answer_that_was_promised_comes_where_discords_word_for_it_is_lost(
    world: World, artist: Noonstone
) -> None:
    async with world.running(artist):
        answer = await world.slash("distance", TUBE)
        world.platform.faults.append(Fault("/callback", "lose"))
        shown = await world.press(answer, SHOW)
    assert shown.post.files
    assert shown.further == []


# --- pictures ----------------------------------------------------------------------------------


@pytest.fixture
async def artist(keeper: Keeper) -> AsyncIterator[Noonstone]:
    studio = Studio(job=told, sleep=no_time)
    client = keeper()
    client.studio = studio
    yield client
    await studio.close()


async def test_an_answer_with_a_picture_is_shared_with_it(world: World, artist: Noonstone) -> None:
    async with world.running(artist):
        await world.slash("mine save", SAVE)
        await world.slash("mine reading", {"uvi": "4.2"})
        shown = await world.slash("mine show", {})
        pressed = await world.press(shown, SHARE)
        await world.platform.until(lambda: pressed.further, "the shared answer")
    [public] = pressed.further
    assert shown.post.files
    assert public.files == shown.post.files
    described = [a["description"] for a in shown.post.payload["attachments"]]
    assert [a["description"] for a in public.payload["attachments"]] == described
    assert str(SAVE["name"]) in post_text(public)


async def test_a_picture_of_a_private_channel_is_not_shared(
    world: World, artist: Noonstone
) -> None:
    async with world.running(artist):
        answer = await world.slash("distance", TUBE)
        early = await world.press(answer, SHOW)
        assert SHARE_PICTURE in post_buttons(early.post)
        await set_to(world, "private")
        late = await world.press(answer, SHOW)
        refused = await world.press(early, SHARE_PICTURE)
        await stable(world)
    assert SHARE_PICTURE not in post_buttons(late.post)
    assert refused.text.startswith(STAYS)
    assert public_posts(world) == []


async def test_a_picture_is_shared_once_where_discords_answer_is_lost(
    world: World, artist: Noonstone
) -> None:
    async with world.running(artist):
        shown = await world.press(await world.slash("distance", TUBE), SHOW)
        world.platform.faults.append(Fault("/webhooks/", "lose"))
        await world.press(shown, SHARE_PICTURE)
        await world.platform.until(lambda: public_posts(world), "the shared picture")
        await stable(world)
    assert len(public_posts(world)) == 1
