"""What becomes public is the moderators' to say: who posts, how often; a log without text."""

from dataclasses import replace

import pytest

from bot.database.store import Store
from bot.saved.public import Posted
from tests.discord.answers import Answer, post_text
from tests.discord.cast import FERN, GARDEN, MOSS, PEBBLE, Person, Place, in_server, in_thread
from tests.discord.payloads import bot_user
from tests.discord.platform import Post
from tests.discord.saving import Keeper, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

ROLE = 9_000_000_000_000_001
HELPER = replace(MOSS, roles=(ROLE,))
NEWCOMER = FERN
TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "bearded dragon"}
SHARE, REPLY = "Share", "Reply in the channel"
SET_UP = "my beardie has a 12% in a shiny hood, 12 inches to the log"


async def let(world: World, at: Place | None = None, **given: str) -> Answer:
    """Let a moderator set what becomes public."""
    return await world.slash("server public", given, user=PEBBLE, where=at)


async def log(store: Store) -> list[Posted]:
    return list(await store.public.newest(GARDEN.id, 50))


def public_posts(world: World, place: Place | None = None) -> list[Post]:
    me = bot_user()["id"]
    found = world.posted((place or in_server()).channel_id)
    return [post for post in found if post.payload["author"]["id"] == me]


@pytest.mark.parametrize(
    ("who", "person", "may"),
    [
        ("helpers", NEWCOMER, False),
        ("helpers", HELPER, True),
        ("helpers", PEBBLE, True),
        ("moderators", HELPER, False),
        ("moderators", PEBBLE, True),
    ],
)
async def test_who_may_post_is_a_role_or_the_moderators(
    world: World, keeper: Keeper, store: Store, who: str, person: Person, may: bool
) -> None:
    async with world.running(keeper()):
        before = await world.slash("distance", TUBE, user=person)
        await let(world, who=who, role=f"<@&{ROLE}>")
        answer = await world.slash("distance", TUBE, user=person)
        pressed = await world.press(before, SHARE, user=person)
        addressed = await world.slash("distance", {**TUBE, "for": MOSS}, user=person)
        checked = await world.menu("Check this set-up", world.says(MOSS, SET_UP), user=person)
    assert (SHARE in answer.buttons, REPLY in checked.buttons) == (may, may)
    assert addressed.ephemeral is not may
    assert "20 in" in addressed.text
    if not may:
        assert "nly" in pressed.text
        assert "show an answer to others" in pressed.text
        assert "show an answer to others" in addressed.text
        assert addressed.post.pings == frozenset()
    assert len(public_posts(world)) == len(await log(store)) == (2 if may else 0)


async def test_a_thread_takes_its_parents_rule_and_goes_before_it_with_its_own(
    world: World, keeper: Keeper
) -> None:
    async with world.running(keeper()):
        await let(world, in_thread(), who="moderators", where="parent")
        inside = await world.slash("distance", TUBE, where=in_thread())
        outside = await world.slash("distance", TUBE)
        await let(world, in_thread(), who="everybody")
        own = await world.slash("distance", TUBE, where=in_thread())
        lost = await let(world, who="moderators", where="parent")
    assert [SHARE in each.buttons for each in (inside, outside, own)] == [False, False, True]
    assert "There is no channel around this one" in lost.text


@pytest.mark.parametrize("place", [in_server(), in_thread()], ids=["channel", "thread"])
async def test_a_mention_is_answered_alone_where_its_writer_may_not_post(
    world: World, keeper: Keeper, place: Place
) -> None:
    async with world.running(keeper()):
        await let(world, who="helpers", role=f"<@&{ROLE}>")
        await world.writes(NEWCOMER, "convert 14in", place)
        await world.platform.until(lambda: public_posts(world, place), "an answer")
        await world.writes(HELPER, "convert 14in", place)
        await world.platform.until(lambda: len(public_posts(world, place)) == 2, "an answer")
    alone, shown = public_posts(world, place)
    assert post_text(alone) == "Here I answer each person alone."
    assert "35.56 cm" in post_text(shown)


async def test_a_limit_is_told_and_the_answer_stays_whole_with_the_asker(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await let(world, most="1")
        first = await world.slash("distance", TUBE)
        second = await world.slash("distance", {**TUBE, "for": MOSS})
        more = await world.press(first, SHARE)
        by_others = await world.slash("distance", {**TUBE, "for": FERN}, user=MOSS)
        await world.slash("distance", {**TUBE, "for": FERN}, user=PEBBLE)
        full = await world.slash("distance", {**TUBE, "for": MOSS}, user=replace(MOSS, id=77))
        told = await world.slash("server posts", {}, user=PEBBLE)
    assert not second.ephemeral
    assert "You have posted as often" in more.text
    assert "<t:" in more.text
    assert SHARE in first.buttons
    assert not by_others.ephemeral
    assert full.ephemeral
    assert "This channel has as many posts" in full.text
    assert "20 in" in full.text
    assert SHARE in full.buttons
    assert len(await log(store)) == len(public_posts(world)) == 3
    assert "distance" in told.text
    assert str(FERN.id) in told.text


async def test_the_log_holds_no_text_and_is_forgotten_with_its_person(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        told = world.says(MOSS, SET_UP)
        checked = await world.menu("Check this set-up", told)
        await world.press(checked, REPLY)
        await world.platform.until(lambda: public_posts(world), "the reply")
        [line] = await log(store)
        forgot = await world.slash("mine forget", {"sure": "yes"})
        [after] = await log(store)
        seen = await world.slash("server posts", {}, user=PEBBLE)
    assert (line.who, line.channel, line.pings) == (FERN.id, GARDEN.channel_id, 1)
    assert line.command == "check"
    assert "out of 1 line" in forgot.text
    assert after.who is None
    assert "forgotten" in seen.text


@pytest.mark.slow
async def test_where_answers_are_for_all_anyway_nothing_is_counted(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await world.slash("server answers", {"show": "public"}, user=PEBBLE)
        await let(world, most="1")
        for _ in range(3):
            assert not (await world.slash("distance", TUBE)).ephemeral
    assert await log(store) == []
