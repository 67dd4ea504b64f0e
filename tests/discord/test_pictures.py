"""The picture of an answer: on demand, with words, and never at the cost of the answer."""

from collections.abc import AsyncIterator, Callable
from pathlib import Path

import pytest

from bot.ask import ask
from bot.drawing import Drawing
from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from bot.serving.studio import Studio
from tests.discord.answers import post_buttons
from tests.discord.artists import hopeless, no_time, told
from tests.discord.cast import FERN, MOSS, direct
from tests.discord.conftest import Maker
from tests.discord.platform import Fault
from tests.discord.world import World

TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}
LINE = "distance tube:12% reflector:polished screen:none animal:bearded dragon"
SHOW, SHARE = "Picture", "Share"


Artist = Callable[[Callable[[Drawing], bytes]], Noonstone]


@pytest.fixture
async def artist(tmp_path: Path) -> AsyncIterator[Artist]:
    """Return a maker of bots that draw in the way given."""
    studios: list[Studio] = []

    def make(job: Callable[[Drawing], bytes]) -> Noonstone:
        studios.append(Studio(job=job, sleep=no_time))
        return Noonstone(Preferences(), tmp_path, studios[-1])

    yield make
    for studio in studios:
        await studio.close()


async def test_a_picture_comes_on_demand_with_its_words(world: World, artist: Artist) -> None:
    picture = ask(LINE, Preferences()).picture
    assert picture is not None
    async with world.running(artist(told)):
        answer = await world.slash("distance", TUBE)
        shown = await world.press(answer, SHOW)
    assert SHOW in answer.buttons
    assert shown.ephemeral
    assert list(shown.post.files) == ["distance.png"]
    assert b"bearded dragon" in shown.post.files["distance.png"]
    assert shown.post.payload["attachments"][0]["description"] == picture.alt


async def test_the_picture_is_acknowledged_before_it_is_drawn(world: World, artist: Artist) -> None:
    async with world.running(artist(told)):
        shown = await world.press(await world.slash("distance", TUBE), SHOW)
    assert shown.kind == 5


async def test_a_picture_has_the_unit_of_its_answer(world: World, artist: Artist) -> None:
    async with world.running(artist(told)):
        answer = await world.slash("distance", TUBE)
        swapped = await world.press(answer, "In cm")
        shown = await world.press(swapped, SHOW)
    assert "38 to 51 cm (15 to 20 in)" in shown.post.payload["attachments"][0]["description"]


async def test_a_picture_is_shared_once_and_pings_nobody(world: World, artist: Artist) -> None:
    async with world.running(artist(told)):
        shown = await world.press(await world.slash("distance", TUBE), SHOW)
        shared = await world.press(shown, SHARE)
        await world.platform.until(lambda: shared.further, "the shared picture")
    [public] = shared.further
    assert not public.ephemeral
    assert public.files == shown.post.files
    assert public.pings == frozenset()
    assert post_buttons(public) == {}
    assert shown.buttons == []


async def test_in_direct_messages_a_picture_is_an_ordinary_message(
    world: World, artist: Artist
) -> None:
    async with world.running(artist(told)):
        answer = await world.slash("distance", TUBE, where=direct(FERN))
        shown = await world.press(answer, SHOW)
    assert not shown.ephemeral
    assert shown.buttons == []


async def test_anybody_may_see_the_picture_of_a_public_answer(world: World, artist: Artist) -> None:
    async with world.running(artist(told)):
        answer = await world.slash("distance", {**TUBE, "for": MOSS})
        shown = await world.press(answer, SHOW, user=MOSS)
    assert shown.ephemeral
    assert shown.post.files


async def test_a_picture_that_cannot_be_drawn_costs_nothing_but_itself(
    world: World, artist: Artist
) -> None:
    async with world.running(artist(hopeless)):
        answer = await world.slash("distance", TUBE)
        shown = await world.press(answer, SHOW)
    assert "it could not be drawn" in shown.text
    assert shown.ephemeral
    assert "Hang it" in answer.text


async def test_a_picture_whose_sending_was_cut_off_is_sent_again(
    world: World, artist: Artist
) -> None:
    async with world.running(artist(told)):
        answer = await world.slash("distance", TUBE)
        world.platform.faults.append(Fault("/webhooks/", "drop", method="PATCH"))
        shown = await world.press(answer, SHOW)
    assert shown.post.files


@pytest.mark.slow
async def test_pictures_work_after_a_restart(world: World, artist: Artist) -> None:
    async with world.running(artist(told)):
        answer = await world.slash("distance", TUBE)
    async with world.running(artist(told)):
        shown = await world.press(answer, SHOW)
    assert shown.post.files


async def test_without_a_studio_no_picture_is_promised(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answer = await world.slash("distance", TUBE)
    assert SHOW not in answer.buttons


PLAN = {
    "animal": "bearded dragon",
    "enclosure": "48x24x24in",
    "lid": "full mesh",
    "room": "70F",
    "night": "62F",
}
SHEET = "Care sheet"


async def test_a_care_sheet_comes_to_the_presser_alone_and_is_shared_by_its_own_button(
    world: World, artist: Artist
) -> None:
    async with world.running(artist(told)):
        answer = await world.slash("plan", PLAN)
        sheet = await world.press(answer, SHEET)
        pressed = await world.press(sheet, SHARE)
        await world.platform.until(lambda: pressed.further, "the shared sheet")
    (shared,) = pressed.further
    assert SHEET in answer.buttons
    assert sheet.ephemeral
    assert list(sheet.post.files) == ["plan-sheet.png"]
    assert b"earded dragon" in sheet.post.files["plan-sheet.png"]
    assert "bearded dragon" in sheet.post.payload["attachments"][0]["description"]
    assert not shared.ephemeral
    assert list(shared.files) == ["plan-sheet.png"]


async def test_a_question_without_a_set_up_has_no_care_sheet(world: World, artist: Artist) -> None:
    async with world.running(artist(told)):
        answer = await world.slash("convert", {"value": "14in"})
    assert SHEET not in answer.buttons
