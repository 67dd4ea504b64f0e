"""What a server asks, counted as it is meant and shown to its moderators alone, with a picture."""

from collections.abc import AsyncIterator, Callable, Mapping
from datetime import UTC, date, datetime, timedelta
from pathlib import Path

import pytest

from bot import guide
from bot.database.counts import Counts
from bot.database.errors import StoreUnavailableError
from bot.database.store import Store
from bot.drawing import Drawing
from bot.fronts.discord.client import Noonstone
from bot.preferences import Preferences
from bot.saved.counts import Asked
from bot.serving.studio import Studio
from tests.discord.artists import hopeless, no_time, told
from tests.discord.cast import BURROW, FERN, GARDEN, PEBBLE, direct, in_server
from tests.discord.message_limits import message_breaches
from tests.discord.saving import Keeper, keeper, store
from tests.discord.world import World

__all__ = ["keeper", "store"]

NOW = datetime.now(UTC)
TUBE = {"tube": "12%", "reflector": "polished", "screen": "none", "animal": "beardie"}
FREELY = "how far should a 12% tube be with a polished reflector and no screen, bearded dragon"

Artist = Callable[[Callable[[Drawing], bytes]], Noonstone]


@pytest.fixture
async def artist(tmp_path: Path, store: Store) -> AsyncIterator[Artist]:
    """Return a maker of bots that remember and draw in the way given."""
    studios: list[Studio] = []

    def make(job: Callable[[Drawing], bytes]) -> Noonstone:
        studios.append(Studio(job=job, sleep=no_time))
        return Noonstone(Preferences(), tmp_path, studios[-1], store=store)

    yield make
    for studio in studios:
        await studio.close()


async def counts(store: Store) -> dict[tuple[Asked, str], int]:
    found = await store.counts.since(GARDEN.id, NOW.date())
    return {(count.kind, count.name): count.times for count in found}


async def test_what_was_just_asked_is_shown_with_its_picture(
    world: World, store: Store, artist: Artist
) -> None:
    await store.counts.add(
        GARDEN.id, NOW.date() - timedelta(weeks=2), {(Asked.QUESTION, "distance"): 6}
    )
    bot = artist(told)
    async with world.running(bot):
        await world.slash("distance", TUBE)
        assert bot.memory is not None
        await bot.memory.keep_counts()
        shown = await world.slash("server stats", {"weeks": "8"}, user=PEBBLE)
    assert shown.kind == 5
    assert shown.ephemeral
    assert list(shown.post.files) == ["server-stats.png"]
    assert shown.post.files["server-stats.png"] == b"What was asked here"
    words = shown.post.payload["attachments"][0]["description"]
    assert "Questions asked by week, the oldest first: 6, 0, 1 so far." in words
    assert "7 questions asked" in shown.text
    assert "Measuring the distance" in shown.text
    assert "Share" not in shown.buttons


async def test_a_picture_that_cannot_be_drawn_leaves_the_counts(
    world: World, store: Store, artist: Artist
) -> None:
    await store.counts.add(GARDEN.id, NOW.date(), {(Asked.ANIMAL, "bearded-dragon"): 3})
    async with world.running(artist(hopeless)):
        shown = await world.slash("server stats", user=PEBBLE)
    assert not shown.post.files
    assert "3 animals named" in shown.text


async def test_without_counts_nothing_is_drawn_and_who_is_no_moderator_sees_none(
    world: World, artist: Artist
) -> None:
    async with world.running(artist(told)):
        shown = await world.slash("server stats", user=PEBBLE)
        refused = await world.slash("server stats", user=FERN)
    assert shown.kind == 4
    assert not shown.post.files
    assert "Nothing was counted" in shown.text
    assert "moderators" in refused.text


@pytest.mark.slow
async def test_two_years_of_counts_fit_a_message(
    world: World, store: Store, artist: Artist
) -> None:
    asked = {(Asked.PAGE, page.slug): 99_999 for page in guide.pages()}
    for ago in range(104):
        await store.counts.add(GARDEN.id, NOW.date() - timedelta(weeks=ago), asked)
    async with world.running(artist(told)):
        shown = await world.slash("server stats", {"weeks": "104"}, user=PEBBLE)
    assert "so far" in shown.text
    assert len(shown.post.payload["attachments"][0]["description"]) <= 1024
    assert message_breaches(shown.post.payload) == []


async def test_a_question_in_free_words_counts_as_the_one_it_meant(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        answer = await world.slash("ask", {"question": FREELY})
        await world.slash("ask", {"question": FREELY}, where=direct(FERN))
    assert "Hang it" in answer.text
    assert await counts(store) == {
        (Asked.QUESTION, "distance"): 1,
        (Asked.ANIMAL, "bearded-dragon"): 1,
    }


async def test_a_page_turned_to_is_opened_and_no_new_question(
    world: World, keeper: Keeper, store: Store
) -> None:
    first, second = guide.pages()[:2]
    async with world.running(keeper()):
        page = await world.slash("guide", {"page": first.slug})
        page = await world.press(page, f"Next: {second.title}"[:80])
        await world.press(page, f"Back: {first.title}"[:80])
    assert await counts(store) == {
        (Asked.QUESTION, "guide"): 1,
        (Asked.PAGE, first.slug): 2,
        (Asked.PAGE, second.slug): 1,
    }


async def test_the_other_unit_of_an_answer_is_not_counted_again(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await world.press(await world.slash("distance", TUBE), "In cm")
    assert await counts(store) == {
        (Asked.QUESTION, "distance"): 1,
        (Asked.ANIMAL, "bearded-dragon"): 1,
    }


async def test_what_was_asked_a_moment_ago_is_in_the_counts(world: World, keeper: Keeper) -> None:
    async with world.running(keeper()):
        await world.slash("distance", TUBE)
        shown = await world.slash("server stats", user=PEBBLE)
    assert "1 question asked" in shown.text


async def test_what_is_forgotten_does_not_come_back_with_the_next_round(
    world: World, keeper: Keeper, store: Store
) -> None:
    async with world.running(keeper()):
        await world.slash("distance", TUBE)
        asked = await world.slash("server forget", user=PEBBLE)
        done = await world.slash("server forget", {"sure": "yes"}, user=PEBBLE)
    assert "for good" in asked.text
    assert "deleted for good" in done.text
    assert await counts(store) == {}
    assert GARDEN.id not in await store.servers.known()


async def test_counts_that_cannot_be_kept_for_one_server_are_not_lost_for_another(
    world: World, keeper: Keeper, store: Store, monkeypatch: pytest.MonkeyPatch
) -> None:
    kept = Counts.add
    refused: list[int] = []

    async def refusing_once(
        self: Counts, server: int, day: date, asked: Mapping[tuple[Asked, str], int]
    ) -> None:
        if not refused:
            refused.append(server)
            raise StoreUnavailableError
        await kept(self, server, day, asked)

    bot = keeper()
    async with world.running(bot):
        for where in (in_server(GARDEN), in_server(BURROW)):
            await world.slash("convert", {"value": "14in"}, where=where)
        monkeypatch.setattr(Counts, "add", refusing_once)
        assert bot.memory is not None
        with pytest.raises(StoreUnavailableError):
            await bot.memory.keep_counts()
        await bot.memory.keep_counts()
    for server in (GARDEN, BURROW):
        assert [c.times for c in await store.counts.since(server.id, NOW.date())] == [1]
