"""What moderators are shown of the counts: in words, as weeks, and as a picture."""

from collections.abc import Mapping
from datetime import timedelta

import pytest

from bot.ask import ask as ask_purely
from bot.command import Command
from bot.commands import COMMANDS
from bot.database.store import Store
from bot.drawing import Tally
from bot.guide import pages
from bot.preferences import Preferences
from bot.questions.uv.curves import MOST_ALT
from bot.render.picture import draw
from bot.render.post import render_post
from bot.reply import Reply
from bot.saved.counts import Asked
from calc.animals import animals
from tests.bot.keeping.conftest import NOW, Ask
from tests.bot.keeping.people import FERN, GARDEN, row, whole

BURROW = GARDEN + 1
TODAY = NOW.date()
DISTANCE, UVI = (Asked.QUESTION, "distance"), (Asked.QUESTION, "uvi")
DRAGON, SCREENS = (Asked.ANIMAL, "bearded-dragon"), (Asked.PAGE, "screens")


async def counted(
    store: Store, asked: Mapping[tuple[Asked, str], int], weeks_ago: int = 0, server: int = GARDEN
) -> None:
    await store.counts.add(server, TODAY - timedelta(weeks=weeks_ago), asked)


def weeks(reply: Reply) -> list[tuple[str, ...]]:
    assert reply.table is not None
    assert reply.table.columns == ("Week from", "Questions", "Animals", "Pages")
    return list(reply.table.rows)


def tally(reply: Reply) -> Tally:
    assert reply.picture is not None
    assert isinstance(reply.picture.drawing, Tally)
    return reply.picture.drawing


async def test_each_week_tells_of_all_three_and_an_empty_one_is_not_left_out(
    ok: Ask, store: Store
) -> None:
    await counted(store, {DISTANCE: 4, DRAGON: 3}, weeks_ago=3)
    await counted(store, {UVI: 1, SCREENS: 2}, weeks_ago=1)
    await counted(store, {DISTANCE: 2, DRAGON: 1})
    reply = await ok("server stats")
    assert weeks(reply) == [
        ("4 May 2026 (so far)", "2", "1", "0"),
        ("27 April 2026", "1", "0", "2"),
        ("20 April 2026", "0", "0", "0"),
        ("13 April 2026", "4", "3", "0"),
    ]
    assert reply.answer.startswith(
        "7 questions asked in 4 weeks, since Monday 13 April 2026. "
        "4 animals named and 2 guide pages opened."
    )
    assert row(reply, "Questions") == "distance 6, uvi 1"
    assert row(reply, "Trend") == (
        "1 question, 0 animals, 2 pages in the last whole week; "
        "0 questions, 0 animals, 0 pages in the one before"
    )
    assert row(reply, "A week").startswith("from Monday to Sunday, by UTC; the newest is not")


async def test_one_of_each_is_told_in_the_singular(ok: Ask, store: Store) -> None:
    await counted(store, {DISTANCE: 1, DRAGON: 1, SCREENS: 1})
    assert (await ok("server stats")).answer == (
        "1 question asked in 1 week, since Monday 4 May 2026. "
        "1 animal named and 1 guide page opened."
    )


@pytest.mark.parametrize("only", [DISTANCE, DRAGON, SCREENS])
async def test_counts_of_one_kind_alone_are_counts(
    ok: Ask, store: Store, only: tuple[Asked, str]
) -> None:
    await counted(store, {only: 3}, weeks_ago=1)
    reply = await ok("server stats")
    assert "Nothing" not in reply.answer
    assert sorted(weeks(reply)[1][1:]) == ["0", "0", "3"]
    assert [sum(course.times) for course in tally(reply).courses] == [3]


async def test_without_counts_there_is_no_picture_and_a_next_step(ok: Ask, store: Store) -> None:
    await counted(store, {DISTANCE: 9}, weeks_ago=8)
    reply = await ok("server stats")
    assert reply.answer == "Nothing was counted in the last 8 weeks."
    assert reply.picture is None
    assert reply.table is None
    assert "server stats weeks:104" in reply.steps[-1]
    assert (await ok("server stats weeks:104")).answer.startswith("9 questions")
    assert len((await ok("server stats weeks:104", server=BURROW)).steps) == 1
    assert (await ok("server stats weeks:1")).answer == "Nothing was counted in this week."


async def test_each_server_sees_its_own_counts_and_others_see_none(
    ok: Ask, ask: Ask, store: Store
) -> None:
    await counted(store, {DISTANCE: 5})
    await counted(store, {UVI: 7}, server=BURROW)
    assert row(await ok("server stats"), "Questions") == "distance 5"
    assert row(await ok("server stats", server=BURROW), "Questions") == "uvi 7"
    assert (await ask("server stats", moderator=False)).status == "problem"
    assert (await ask("server stats", server=None)).status == "problem"
    assert str(FERN) not in whole(await ok("server stats"))


async def test_a_page_that_nobody_opens_is_shown_with_what_can_be_done(
    ok: Ask, store: Store
) -> None:
    await counted(store, {DISTANCE: 30, UVI: 10, (Asked.PAGE, "reflectors"): 12})
    reply = await ok("server stats")
    assert reply.answer.endswith("Often pointed to, hardly opened: “Measuring the distance”.")
    assert row(reply, "Page hardly opened") == (
        "“Measuring the distance”: 40 answers pointed to it (distance 30, uvi 10), and it was "
        "opened 0 times"
    )
    assert "“Reflectors”:" not in whole(reply)
    assert "cannot say why" in row(reply, "How a page gets on this list")
    told = " ".join(reply.steps)
    assert "guide measuring-the-distance" in told
    assert "board post topic:guide" in told
    group = tally(reply).groups[-1]
    assert [(r.label, r.times, r.beside) for r in group.rows[:1]] == [
        ("Measuring the distance", 0, 40)
    ]


async def test_pages_that_are_opened_are_not_called_overlooked(ok: Ask, store: Store) -> None:
    opened = {(Asked.PAGE, page): 1 for page in ("measuring-the-distance", "screens", "reflectors")}
    await counted(store, {DISTANCE: 9, **opened})
    reply = await ok("server stats")
    assert "hardly" not in whole(reply)
    assert len(tally(reply).groups) == 2


async def test_where_the_guide_is_on_a_site_nothing_is_said_of_pages_not_seen(
    ok: Ask, store: Store
) -> None:
    await ok("server set site:https://guide.example")
    await counted(store, {DISTANCE: 40})
    reply = await ok("server stats")
    assert "hardly opened" not in whole(reply)
    assert "is not counted" in row(reply, "Pages on your site")
    assert [group.heading for group in tally(reply).groups] == ["Questions asked: 40"]


async def test_a_page_or_an_animal_of_long_ago_keeps_its_short_name(ok: Ask, store: Store) -> None:
    await counted(store, {(Asked.PAGE, "a-page-gone"): 2, (Asked.ANIMAL, "an-animal-gone"): 1})
    reply = await ok("server stats")
    assert row(reply, "Guide pages opened") == "“a-page-gone” 2"
    assert row(reply, "Animals named") == "an-animal-gone 1"


async def test_the_picture_shows_what_the_words_say(ok: Ask, store: Store) -> None:
    await counted(store, {DISTANCE: 4, DRAGON: 3}, weeks_ago=2)
    await counted(store, {DISTANCE: 1, SCREENS: 2})
    reply = await ok("server stats")
    drawing = tally(reply)
    assert drawing.weeks == ("20 Apr", "27 Apr", "4 May")
    assert drawing.unfinished
    assert {c.label: c.times for c in drawing.courses} == {
        "Questions": (4, 0, 1),
        "Animals": (3, 0, 0),
        "Pages": (0, 0, 2),
    }
    groups = {
        group.heading: [(r.label, r.times, r.text) for r in group.rows] for group in drawing.groups
    }
    assert groups["Questions asked: 5"] == [("distance", 5, "5")]
    assert groups["Animals named: 3"] == [("bearded dragon", 3, "3")]
    assert groups["Guide pages opened: 2"] == [("What a screen does", 2, "2")]
    assert reply.picture is not None
    alt = reply.picture.alt
    assert "Questions asked by week, the oldest first: 4, 0, 1 so far." in alt
    assert "Questions asked most often: distance 5." in alt
    assert "Hardly opened: “Measuring the distance”, 0 times, while 5 answers pointed to it." in alt
    assert draw(drawing).startswith(b"\x89PNG")


@pytest.mark.slow
async def test_two_years_of_everything_fit_the_words_the_picture_and_a_message(
    ok: Ask, store: Store
) -> None:
    asked = {(Asked.QUESTION, command.name): 900 for command in COMMANDS}
    asked |= {(Asked.ANIMAL, slug): 700 for slug in animals()}
    asked |= {(Asked.PAGE, page.slug): 1 for page in pages()}
    for ago in range(104):
        await counted(store, asked, weeks_ago=ago)
    reply = await ok("server stats weeks:104")
    assert len(weeks(reply)) == 104
    assert reply.picture is not None
    assert 300 < len(reply.picture.alt) <= MOST_ALT
    assert "at most" in reply.picture.alt
    assert max(len(group.rows) for group in tally(reply).groups) <= 8
    assert "6 of " in tally(reply).groups[0].shown
    assert "4 May 2026 (so far)" in render_post(reply).text


@pytest.mark.parametrize("command", [c for c in COMMANDS if c.facts], ids=lambda c: c.name)
def test_the_answers_of_a_question_point_to_the_pages_that_its_entry_names(
    command: Command,
) -> None:
    """Else a page would be called overlooked that no answer showed."""
    for line in command.examples:
        shown = {page.slug for page in ask_purely(line, Preferences()).guide}
        assert shown >= set(command.guide)
