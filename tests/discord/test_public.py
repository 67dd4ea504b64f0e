"""What everybody sees: who may change it, whom it pings and how often, and that it comes once."""

import pytest

from tests.discord.answers import Answer
from tests.discord.cast import FERN, GARDEN, MOSS, PEBBLE, Person, in_thread
from tests.discord.platform import Post
from tests.discord.saving import Keeper, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}
CM, SHARE, REPLY = "In cm", "Share", "Reply in the channel"
STAYS = "In this channel each answer is for the one who asks"


async def set_to(world: World, show: str) -> None:
    await world.slash("server answers", {"show": show}, user=PEBBLE)


def public_posts(world: World, channel: int = GARDEN.channel_id) -> list[Post]:
    return world.posted(channel)


async def stable(world: World) -> None:
    """Let everything that was begun be done: the next answer comes after it."""
    await world.slash("help", user=PEBBLE)


# --- presses on a public message ---------------------------------------------------------------


@pytest.mark.parametrize("button", [CM, "Steps", "Sources"])
async def test_a_strangers_press_posts_and_changes_nothing_that_others_see(
    world: World, keeper: Keeper, button: str
) -> None:
    async with world.running(keeper()):
        await set_to(world, "public")
        answer = await world.slash("distance", TUBE)
        before = answer.text
        label = next(name for name in answer.buttons if name.startswith(button))
        pressed = await world.press(answer, label, user=MOSS)
    assert not answer.ephemeral
    assert pressed.ephemeral
    assert answer.text == before
    assert public_posts(world) == [answer.post]


async def test_the_asker_changes_the_public_answer_in_place(world: World, keeper: Keeper) -> None:
    async with world.running(keeper()):
        await set_to(world, "public")
        answer = await world.slash("distance", TUBE)
        swapped = await world.press(answer, CM)
    assert swapped.post is answer.post
    assert "38 to 51 cm (15 to 20 in)" in answer.text
    assert SHARE not in answer.buttons
    assert public_posts(world) == [answer.post]


@pytest.mark.parametrize("presser", [FERN, MOSS], ids=["who asked", "for whom"])
async def test_an_answer_for_a_member_is_changed_by_both_and_keeps_its_words(
    world: World, keeper: Keeper, presser: Person
) -> None:
    async with world.running(keeper()):
        answer = await world.slash("distance", {**TUBE, "for": MOSS})
        swapped = await world.press(answer, CM, user=presser)
    assert swapped.post is answer.post
    assert answer.text.startswith(f"<@{MOSS.id}>, <@{FERN.id}> asked this for you:")
    assert "38 to 51 cm" in answer.text


async def test_a_stranger_is_answered_alone_under_an_answer_for_a_member(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        await set_to(world, "public")
        answer = await world.slash("distance", {**TUBE, "for": MOSS})
        swapped = await world.press(answer, CM, user=PEBBLE)
    assert swapped.ephemeral
    assert SHARE in swapped.buttons
    assert public_posts(world) == [answer.post]


async def test_the_pages_of_a_public_guide_are_turned_by_the_asker_alone(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        await set_to(world, "public")
        page = await world.slash("guide", {"page": "screens"})
        before = page.text
        turned = await world.press(page, _next(page), user=MOSS)
        assert (turned.ephemeral, page.text) == (True, before)
        own = await world.press(page, _next(page))
    assert own.post is page.post
    assert page.text != before
    assert public_posts(world) == [page.post]


def _next(page: Answer) -> str:
    return next(label for label in page.buttons if label.startswith("Next: "))


async def test_what_was_put_right_by_a_form_stays_private_and_can_be_shared(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        await set_to(world, "public")
        refused = await world.slash("distance", {**TUBE, "tube": "banana"})
        form = await world.press(refused, "Change")
        answer = await world.submit(form, {"tube": "12%"})
    assert answer.post is refused.post
    assert answer.ephemeral
    assert SHARE in answer.buttons
    assert public_posts(world) == []


# --- a channel whose answers are private -------------------------------------------------------


@pytest.mark.slow
async def test_a_private_channel_has_no_share_and_no_for(world: World, keeper: Keeper) -> None:
    async with world.running(keeper()):
        await set_to(world, "private")
        answer = await world.slash("distance", TUBE)
        addressed = await world.slash("distance", {**TUBE, "for": MOSS})
        told = world.says(MOSS, "my beardie has a 12% in a shiny hood, 12 inches to the log")
        checked = await world.menu("Check this set-up", told)
    assert SHARE not in answer.buttons
    assert addressed.ephemeral
    assert addressed.text.startswith(STAYS)
    assert addressed.post.pings == frozenset()
    assert SHARE not in addressed.buttons
    assert "Hang it" in addressed.text
    assert REPLY not in checked.buttons
    assert public_posts(world) == [told]


async def test_a_share_button_from_before_shares_nothing_once_the_channel_is_private(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        answer = await world.slash("distance", TUBE)
        await set_to(world, "private")
        pressed = await world.press(answer, SHARE)
        await stable(world)
    assert pressed.ephemeral
    assert pressed.text.startswith(STAYS)
    assert public_posts(world) == []


async def test_in_a_private_channel_even_the_asker_leaves_an_older_public_answer(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        answer = await world.slash("distance", {**TUBE, "for": MOSS})
        before = answer.text
        await set_to(world, "private")
        swapped = await world.press(answer, CM)
    assert swapped.ephemeral
    assert answer.text == before


@pytest.mark.parametrize("show", ["public", "private"])
async def test_a_thread_takes_its_channels_setting(world: World, keeper: Keeper, show: str) -> None:
    async with world.running(keeper()):
        await set_to(world, show)
        answer = await world.slash("distance", TUBE, where=in_thread())
        addressed = await world.slash("distance", {**TUBE, "for": MOSS}, where=in_thread())
    assert answer.ephemeral is (show == "private")
    assert addressed.ephemeral is (show == "private")
    assert SHARE not in answer.buttons


async def test_a_threads_own_setting_goes_before_its_channels(world: World, keeper: Keeper) -> None:
    async with world.running(keeper()):
        await set_to(world, "public")
        await world.slash("server answers", {"show": "private"}, user=PEBBLE, where=in_thread())
        inside = await world.slash("distance", TUBE, where=in_thread())
        outside = await world.slash("distance", TUBE)
    assert inside.ephemeral
    assert not outside.ephemeral


# --- pings -------------------------------------------------------------------------------------


async def test_a_member_is_pinged_once_a_minute_by_one_asker(world: World, keeper: Keeper) -> None:
    client, now = keeper(), 1000.0
    client.pings._once._clock = lambda: now
    async with world.running(client):
        first = await world.slash("distance", {**TUBE, "for": MOSS})
        again = await world.slash("distance", {**TUBE, "for": MOSS})
        other = await world.slash("distance", {**TUBE, "for": MOSS}, user=PEBBLE)
        another = await world.slash("distance", {**TUBE, "for": PEBBLE})
        now += 61.0
        later = await world.slash("distance", {**TUBE, "for": MOSS})
    assert [bool(a.post.pings) for a in (first, again, other, another, later)] == [
        True,
        False,
        True,
        True,
        True,
    ]
    assert not again.ephemeral
    assert again.text == first.text


async def test_a_reply_counts_as_a_ping_too(world: World, keeper: Keeper) -> None:
    async with world.running(keeper()):
        told = world.says(MOSS, "my beardie has a 12% in a shiny hood, 12 inches to the log")
        for _ in range(2):
            checked = await world.menu("Check this set-up", told)
            await world.press(checked, REPLY)
        await world.platform.until(lambda: len(public_posts(world)) == 3, "the replies")
    assert [post.pings for post in public_posts(world)[1:]] == [{f"@{MOSS.id}"}, frozenset()]
