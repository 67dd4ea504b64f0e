"""The picture in the card of an answer: there where it is ready at once, and never waited for long.

Time is a stand-in's: a quarter of a second lasts until the test ends it.
"""

import asyncio
from collections.abc import AsyncIterator, Callable
from pathlib import Path

import pytest

from bot.ask import ask
from bot.drawing import Drawing
from bot.fronts.discord.ahead import draw_ahead, usual_of
from bot.fronts.discord.client import Noonstone
from bot.fronts.discord.in_card import WITHIN_S
from bot.preferences import Preferences
from bot.saved.counts import Asked, Count
from bot.serving.studio import Studio
from tests.discord.answers import post_buttons
from tests.discord.artists import Clock, hopeless, never, told
from tests.discord.limits import Json
from tests.discord.message_limits import GALLERY, walked
from tests.discord.platform import Post
from tests.discord.saving import Keeper, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}
OTHER = {**TUBE, "tube": "6%"}
LINE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
SHOW = "Picture"
Artist = Callable[[Callable[[Drawing], bytes]], Noonstone]


@pytest.fixture
def clock() -> Clock:
    return Clock()


@pytest.fixture
async def artist(tmp_path: Path, clock: Clock) -> AsyncIterator[Artist]:
    studios: list[Studio] = []

    def make(job: Callable[[Drawing], bytes]) -> Noonstone:
        studios.append(Studio(job=job, sleep=clock.sleep))
        return Noonstone(Preferences(), tmp_path, studios[-1])

    yield make
    for studio in studios:
        await studio.close()


def pictures(post: Post) -> list[Json]:
    parts = walked(post.payload["components"])
    return [item for part in parts if part["type"] == GALLERY for item in part["items"]]


async def test_a_picture_that_is_ready_in_time_lies_in_the_card(
    world: World, artist: Artist, clock: Clock
) -> None:
    picture = ask(LINE, Preferences()).picture
    assert picture is not None
    async with world.running(artist(told)):
        answer = await world.slash("distance", TUBE)
    [shown] = pictures(answer.post)
    assert shown["description"] == picture.alt
    assert b"bearded dragon" in answer.post.files["distance.png"]
    assert SHOW not in answer.buttons
    assert clock.waits == [WITHIN_S]
    assert WITHIN_S <= 0.25


async def test_a_card_waits_a_quarter_of_a_second_and_no_longer(
    world: World, artist: Artist, clock: Clock
) -> None:
    async with world.running(artist(never)):
        asking = asyncio.create_task(world.slash("distance", TUBE))
        while not clock.waits:
            await asyncio.sleep(0)
        assert not asking.done()
        clock.over.set()
        answer = await asking
    assert clock.waits == [WITHIN_S]
    assert pictures(answer.post) == []
    assert SHOW in answer.buttons


async def test_a_kept_picture_is_there_without_a_wait_and_in_its_own_unit(
    world: World, artist: Artist, clock: Clock
) -> None:
    async with world.running(artist(told)):
        first = await world.slash("distance", TUBE)
        again = await world.slash("distance", TUBE)
    assert [one["description"] for one in pictures(again.post)] == [
        one["description"] for one in pictures(first.post)
    ]
    assert clock.waits == [WITHIN_S]


async def test_what_came_too_late_is_kept_for_the_next(
    world: World, artist: Artist, clock: Clock
) -> None:
    clock.over.set()
    client = artist(told)
    async with world.running(client):
        first = await world.slash("distance", TUBE)
        await world.press(first, SHOW)
        again = await world.slash("distance", TUBE)
    assert pictures(first.post) == []
    assert len(pictures(again.post)) == 1


async def test_while_one_picture_is_drawn_no_other_card_waits(
    world: World, artist: Artist, clock: Clock
) -> None:
    async with world.running(artist(never)):
        asking = asyncio.create_task(world.slash("distance", TUBE))
        while not clock.waits:
            await asyncio.sleep(0)
        other = await world.slash("distance", OTHER)
        assert not asking.done()
        assert SHOW in other.buttons
        clock.over.set()
        await asking
    assert clock.waits == [WITHIN_S]


async def test_a_card_keeps_its_picture_while_its_parts_are_opened(
    world: World, artist: Artist
) -> None:
    async with world.running(artist(told)):
        answer = await world.slash("distance", TUBE)
        before = pictures(answer.post)
        opened = await world.press(answer, "Why")
    assert pictures(opened.post) == before
    assert before[0]["media"]["url"].endswith("distance.png")
    assert SHOW not in opened.buttons


async def test_a_picture_in_the_other_unit_goes_and_its_button_comes(
    world: World, artist: Artist
) -> None:
    async with world.running(artist(told)):
        swapped = await world.press(await world.slash("distance", TUBE), "In cm")
        shown = await world.press(swapped, SHOW)
    assert pictures(swapped.post) == []
    assert "38 to 51 cm (15 to 20 in)" in shown.post.payload["attachments"][0]["description"]


async def test_an_answer_is_shared_with_the_picture_in_its_card(
    world: World, artist: Artist
) -> None:
    async with world.running(artist(told)):
        answer = await world.slash("distance", TUBE)
        before = pictures(answer.post)
        shared = await world.press(answer, "Share")
        await world.platform.until(lambda: shared.further, "the shared answer")
    [public] = shared.further
    assert not public.ephemeral
    assert list(public.files) == ["distance.png"]
    assert public.payload["attachments"][0]["description"] == before[0]["description"]
    assert SHOW not in post_buttons(public)
    assert pictures(shared.post) == before


async def test_a_picture_that_fails_costs_only_itself(world: World, artist: Artist) -> None:
    async with world.running(artist(hopeless)):
        answer = await world.slash("distance", TUBE)
    assert "Hang it" in answer.text
    assert pictures(answer.post) == []
    assert SHOW in answer.buttons


async def test_what_is_urgent_waits_for_no_picture(
    world: World, artist: Artist, clock: Clock
) -> None:
    hot = {"basking": "200F", "cool": "75F", "animal": "bearded dragon"}
    reply = ask("temps basking:200F cool:75F animal:bearded dragon", Preferences())
    assert reply.dangers
    assert reply.picture is not None
    async with world.running(artist(never)):
        answer = await world.slash("temps", hot)
    assert clock.waits == []
    assert SHOW in answer.buttons


async def test_what_a_group_usually_asks_is_drawn_ahead(
    world: World, keeper: Keeper, clock: Clock
) -> None:
    client = keeper()
    client.studio = Studio(job=told, sleep=clock.sleep)
    clock.over.set()
    assert client.memory is not None
    async with world.running(client):
        await world.slash("temps", {"basking": "98F", "animal": "bearded dragon"})
        await client.memory.keep_counts()
        waits = len(clock.waits)
        await draw_ahead(client, client.memory)
        answer = await world.slash("needs", {"animal": "bearded dragon"})
    await client.studio.close()
    assert len(clock.waits) == waits
    assert len(pictures(answer.post)) == 1


def test_the_animals_asked_for_most_are_the_usual_ones() -> None:
    asked = [
        *(("corn-snake", 3), ("bearded-dragon", 2), ("leopard-gecko", 4)),
        *(("bearded-dragon", 9), ("axolotl", 1)),
    ]
    counts = [Count(week="2026-W40", kind=Asked.ANIMAL, name=n, times=t) for n, t in asked]
    counts.append(Count(week="2026-W40", kind=Asked.PAGE, name="screens", times=99))
    assert usual_of(tuple(counts)) == [
        "needs animal:bearded-dragon",
        "card animal:bearded-dragon",
        "needs animal:leopard-gecko",
        "card animal:leopard-gecko",
    ]
