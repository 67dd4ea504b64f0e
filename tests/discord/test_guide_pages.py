"""The guide in the chat: opened from an answer, turned, picked from the list."""

from pathlib import Path

from bot import guide
from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from tests.discord.answers import post_buttons, post_text
from tests.discord.cast import FERN, MOSS, PEBBLE, direct
from tests.discord.conftest import Maker
from tests.discord.platform import Post
from tests.discord.world import World

TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}
PAGES = guide.pages()


def title(post: Post) -> str:
    told = post_text(post).split("\n")
    return next(line for line in told if line.startswith("### ")).removeprefix("### ")


async def test_a_page_opens_beside_the_answer_and_leaves_it(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        answer = await world.press(await world.slash("distance", TUBE), "Sources")
        label = next(label for label in answer.buttons if label.startswith("Guide: "))
        page = await world.press(answer, label)
    assert page.post is not answer.post
    assert page.ephemeral
    assert title(page.post) == label.removeprefix("Guide: ")
    assert "Hide sources" in answer.buttons


async def test_the_guide_is_read_from_the_first_page_to_the_last_and_back(
    world: World, bot: Maker
) -> None:
    async with world.running(bot()):
        page = await world.slash("guide", {"page": PAGES[0].slug})
        assert not any(label.startswith("Back: ") for label in page.buttons)
        for expected in PAGES[1:]:
            page = await world.press(page, f"Next: {expected.title}"[:80])
            assert title(page.post) == expected.title
        assert not any(label.startswith("Next: ") for label in page.buttons)
        back = await world.press(page, f"Back: {PAGES[-2].title}"[:80])
    assert title(back.post) == PAGES[-2].title
    assert len(world.platform.posts) == 1


async def test_pages_turn_after_a_restart(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        page = await world.slash("guide", {"page": PAGES[0].slug})
    async with world.running(bot()):
        page = await world.press(page, f"Next: {PAGES[1].title}")
        picked = await world.pick(page, PAGES[3].slug)
    assert title(picked.post) == PAGES[3].title


async def test_the_list_of_pages_opens_any_of_them(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        contents = await world.slash("guide", where=direct(FERN))
        picked = await world.pick(contents, PAGES[-1].slug)
    assert title(picked.post) == PAGES[-1].title
    assert picked.post is contents.post


async def test_turning_somebody_elses_page_opens_an_own_one(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        page = await world.slash("guide", {"page": PAGES[0].slug, "for": MOSS})
        turned = await world.press(page, f"Next: {PAGES[1].title}", user=PEBBLE)
    assert title(page.post) == PAGES[0].title
    assert title(turned.post) == PAGES[1].title
    assert turned.ephemeral


async def test_a_page_that_is_gone_is_told_plainly(world: World, bot: Maker) -> None:
    async with world.running(bot()):
        page = await world.slash("guide", {"page": PAGES[0].slug})
        label = f"Next: {PAGES[1].title}"
        post_buttons(page.post)[label]["custom_id"] = "g:on:a-page-of-long-ago"
        gone = await world.press(page, label)
    assert "the name of a guide page" in gone.text


async def test_with_a_site_the_pages_are_links(world: World, tmp_path: Path) -> None:
    preferences = Preferences(guide_url="https://guide.invalid")
    async with world.running(Noonstone(preferences, tmp_path)):
        answer = await world.press(await world.slash("distance", TUBE), "Sources")
    links = [b["url"] for b in post_buttons(answer.post).values() if "url" in b]
    assert links[0] == "https://guide.invalid/measuring-the-distance.html"
