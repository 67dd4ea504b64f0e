"""The studio: pictures from other processes, kept, bounded, and never the end of an answer."""

import asyncio
import os
import threading
from collections.abc import AsyncIterator, Callable

import pytest

from bot.ask import ask
from bot.drawing import Card, Drawing
from bot.preferences import Preferences
from bot.render.picture import draw
from bot.serving.studio import Missing, Studio

Maker = Callable[..., Studio]
DISTANCE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"


def titled(title: str) -> Drawing:
    return Card(title, "", "", (), ())


def unlike_any_other(drawing: Drawing) -> bytes:
    """Draw at random, and behave as badly as the title says."""
    match drawing.title:
        case "hang":
            threading.Event().wait()
        case "crash":
            os._exit(3)
        case "fail":
            raise ValueError("this one never works")
    return os.urandom(100)


@pytest.fixture
async def studio() -> AsyncIterator[Maker]:
    opened: list[Studio] = []

    def make(**bounds: float) -> Studio:
        opened.append(Studio(job=unlike_any_other, **bounds))  # type: ignore[arg-type]
        return opened[-1]

    yield make
    for one in opened:
        await one.close()


@pytest.mark.slow
async def test_a_picture_from_another_process_is_the_same_to_the_byte() -> None:
    picture = ask(DISTANCE, Preferences()).picture
    assert picture is not None
    assert picture.drawing is not None
    studio = Studio()
    try:
        await studio.warm()
        assert await studio.png(picture.drawing) == draw(picture.drawing)
    finally:
        await studio.close()


async def test_the_processes_start_without_a_complaint(caplog: pytest.LogCaptureFixture) -> None:
    studio = Studio()
    try:
        await studio.warm()
    finally:
        await studio.close()
    assert caplog.records == []


async def test_the_same_picture_is_drawn_once_for_all_who_ask(studio: Maker) -> None:
    one = studio()
    first, second = await asyncio.gather(one.png(titled("a")), one.png(titled("a")))
    assert isinstance(first, bytes)
    assert first == second == await one.png(titled("a"))
    assert first != await one.png(titled("b"))


async def test_only_the_latest_pictures_are_kept(studio: Maker) -> None:
    one = studio(most_bytes=299)
    first = await one.png(titled("a"))
    await one.png(titled("b"))
    assert await one.png(titled("a")) == first
    await one.png(titled("c"))
    assert await one.png(titled("a")) == first
    await one.png(titled("b"))
    await one.png(titled("c"))
    assert await one.png(titled("a")) != first


async def test_what_is_kept_is_bounded_in_bytes(studio: Maker) -> None:
    one = studio(most_bytes=99)
    assert await one.png(titled("a")) != await one.png(titled("a"))


async def test_a_picture_that_fails_is_missing_and_the_next_is_drawn(studio: Maker) -> None:
    one = studio()
    assert await one.png(titled("fail")) is Missing.FAILED
    assert isinstance(await one.png(titled("a")), bytes)


@pytest.mark.slow
async def test_a_process_that_dies_is_replaced(studio: Maker) -> None:
    one = studio()
    assert await one.png(titled("crash")) is Missing.FAILED
    assert isinstance(await one.png(titled("a")), bytes)


@pytest.mark.slow
async def test_a_process_that_hangs_is_killed_and_replaced(studio: Maker) -> None:
    one = studio(limit_s=0.5)
    assert await one.png(titled("hang")) is Missing.FAILED
    assert isinstance(await one.png(titled("a")), bytes)


@pytest.mark.slow
async def test_a_second_worker_draws_while_the_first_hangs(studio: Maker) -> None:
    one = studio(workers=2)
    hanging = asyncio.create_task(one.png(titled("hang")))
    assert isinstance(await one.png(titled("a")), bytes)
    assert not hanging.done()
    await one.close()
    assert await hanging is Missing.FAILED


async def test_too_many_at_once_are_told_so_at_once(studio: Maker) -> None:
    one = studio(waiting=1)
    waiting = [asyncio.create_task(one.png(titled(t))) for t in ("hang", "b")]
    assert await asyncio.create_task(one.png(titled("c"))) is Missing.BUSY
    await one.close()
    assert await asyncio.gather(*waiting) == [Missing.FAILED, Missing.FAILED]


async def test_one_who_leaves_does_not_take_the_picture_from_the_others(studio: Maker) -> None:
    one = studio()
    leaving = asyncio.create_task(one.png(titled("a")))
    staying = asyncio.create_task(one.png(titled("a")))
    await asyncio.sleep(0)
    leaving.cancel()
    assert isinstance(await staying, bytes)


async def test_a_closed_studio_draws_nothing_and_says_so(studio: Maker) -> None:
    one = studio()
    await one.close()
    assert await one.png(titled("a")) is Missing.FAILED
