"""What was asked in a group, week by week, for its moderators. Words: ``count.ftl``."""

from collections.abc import Iterator
from datetime import timedelta

from bot.command import Command
from bot.desk import Desk
from bot.facts import Say, Says
from bot.layered import Brief, Layered, Row, Table
from bot.preferences import Context
from bot.queries.server import StatsQuery
from bot.questions.saved.stats_facts import (
    CountedWeek,
    CountTrend,
    NothingCounted,
    Stats,
    page_passed,
    stats_told,
)
from bot.questions.saved.stats_picture import stats_picture
from bot.questions.saved.unable import server_of
from bot.questions.saved.weekly import passed_by, tallied
from bot.reply import Picture
from bot.saved.counts import Asked

__all__ = ["SERVER_STATS", "stats", "tell_stats"]

_STATS = "server stats"
_GUIDE = ("for-moderators",)
_MOST_WEEKS = 104
_MOST_PASSED = 3
_TO_TREND = 2


async def stats(query: StatsQuery, context: Context, desk: Desk) -> Stats | NothingCounted:
    """Find what was asked for in the last weeks."""
    today = desk.now.date()
    since = today - timedelta(weeks=query.weeks - 1)
    found = tallied(await desk.store.counts.since(server_of(desk, _STATS), since), today)
    if not found.weeks:
        return NothingCounted(query.weeks)
    # What is read on a site of the group's own does not come past here.
    on_site = bool(context.guide_url)
    passed = () if on_site else passed_by(found, desk.pages_of)
    told = tuple(page_passed(page, context.language) for page in passed)
    return stats_told(found, told, query.weeks, context.language, on_site=on_site)


def tell_stats(facts: Stats | NothingCounted) -> Layered:
    """Tell how much was asked, of what, and which pages hardly anybody opened."""
    say = Says("count", facts)
    if isinstance(facts, NothingCounted):
        older = (say("step-further"),) if facts.span < _MOST_WEEKS else ()
        return Layered(
            command=_STATS,
            title=say("title"),
            brief=Brief(head=say("nothing")),
            steps=(say("step-ask"), *older),
            numbers=(
                Row(say("label-kept"), say("kept")),
                Row(say("label-runs"), say("runs")),
            ),
            guide=_GUIDE,
        )
    return Layered(
        command=_STATS,
        title=say("title"),
        brief=Brief(head=say("head"), range=tuple(_brief(facts, say))),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        table=_table(facts, say),
        guide=_GUIDE,
        picture=lambda teller: Picture.later(stats_picture, facts, teller),
    )


def _brief(facts: Stats, say: Says) -> Iterator[Say]:
    yield say("others")
    if facts.passed:
        yield Say("count-passed-first", facts.passed[0])


def _steps(facts: Stats, say: Says) -> Iterator[Say]:
    if facts.passed:
        yield Say("count-step-read", facts.passed[0])
        yield say("step-pin")
    yield say("step-span")


def _numbers(facts: Stats, say: Says) -> Iterator[Row]:
    for names in facts.names:
        yield Row(Say.by("count-label", names.kind), Say("count-most", names.most))
    yield Row(say("label-trend"), _trend(facts))
    yield from _guide_rows(facts, say)
    yield Row(say("label-runs"), say("runs" if facts.over else "runs-on"))
    yield Row(say("label-kept"), say("kept"))


def _trend(facts: Stats) -> Say:
    over = [week for week in facts.weeks if week.over]
    if len(over) < _TO_TREND:
        return Say("count-no-trend")
    last, before = (Say("count-three", week) for week in (over[-1], over[-2]))
    return Say("count-trend", CountTrend(last, before))


def _guide_rows(facts: Stats, say: Says) -> Iterator[Row]:
    if facts.on_site:
        yield Row(say("label-site"), say("site"))
        return
    for page in facts.passed[:_MOST_PASSED]:
        yield Row(say("label-passed"), Say("count-passed", page))
    if facts.passed:
        yield Row(say("label-how"), say("how"))


def _table(facts: Stats, say: Says) -> Table:
    return Table(
        columns=(
            say("column-week"),
            *(Say.by("count-course", kind) for kind in Asked),
        ),
        # The newest first: what does not fit a message is cut at its end.
        rows=tuple(_line(week) for week in reversed(facts.weeks)),
    )


def _line(week: CountedWeek) -> tuple[Say, ...]:
    say = Says("count", week)
    return say("week"), say("questions"), say("animals"), say("pages")


SERVER_STATS = Command(
    name="server stats",
    query=StatsQuery,
    stored=stats,
    tell=tell_stats,
    examples=("server stats", "server stats weeks:26"),
    who="moderator",
    guide=("for-moderators",),
)
