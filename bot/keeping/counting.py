"""What is asked for, counted without text and without person, and shown to moderators."""

from collections.abc import Iterator, Mapping
from datetime import timedelta

from bot import guide
from bot.answers.figures import calendar_day
from bot.answers.linking import page_links
from bot.desk import Desk
from bot.keeping.counts_told import counted, listed, page_title, picture_of
from bot.keeping.places import server_of
from bot.keeping.weekly import LEAST_POINTED, OPENED_ONCE_IN, Passed, Tallied, passed_by, tallied
from bot.kept.counts import Asked
from bot.preferences import Context
from bot.queries.server import StatsQuery
from bot.reply import Picture, Reply, Row, Table
from calc.naming import find

__all__ = ["asked_for", "stats"]

_FORGETTING = "server forget"
_GUIDE = ("for-moderators",)
_MOST_NAMES = 10
_MOST_PASSED = 3
_LABELS = {
    Asked.QUESTION: "Questions",
    Asked.ANIMAL: "Animals named",
    Asked.PAGE: "Guide pages opened",
}
_NOUNS = {Asked.QUESTION: "question", Asked.ANIMAL: "animal", Asked.PAGE: "page"}
_KEPT = (
    "what kind of question was answered, the animal it named and the guide page that was opened, "
    "in this server alone; no text and no person. Counts are deleted after two years"
)
_WEEK = "runs from Monday to Sunday, by UTC"


def asked_for(command: str, given: Mapping[str, str]) -> tuple[tuple[Asked, str], ...]:
    """Return what an answered question counts as: itself, its animal, its page.

    Only names of ours are counted, never what was typed.
    """
    if command == _FORGETTING:
        # Else the counts would begin anew with the question that deleted them.
        return ()
    found = [(Asked.QUESTION, command)]
    animal = find(given.get("animal", ""))
    if animal is not None:
        found.append((Asked.ANIMAL, animal.slug))
    if command == "guide":
        wish = "-".join(given.get("page", "").lower().split())
        pages = (p.slug for p in guide.pages() if wish in (p.slug, _dashed(p.title)))
        found += [(Asked.PAGE, slug) for slug in pages]
    return tuple(found)


def _dashed(title: str) -> str:
    return "-".join(title.lower().split())


async def stats(query: StatsQuery, context: Context, desk: Desk) -> Reply:
    """Show what was asked for in the last weeks."""
    today = desk.now.date()
    since = today - timedelta(weeks=query.weeks - 1)
    found = tallied(await desk.store.counts.since(server_of(desk), since), today)
    span = "this week" if query.weeks == 1 else f"the last {query.weeks} weeks"
    if not found.weeks:
        return _nothing(span, query.weeks, context)
    # What is read on a site of the group's own does not come past here.
    passed = () if context.guide_url else passed_by(found, desk.pages_of)
    return Reply(
        command="server stats",
        status="ok",
        title=f"What was asked here in {span}",
        answer=_told(found, passed),
        rows=(
            *_rows(found),
            *_guide_rows(passed, on_a_site=bool(context.guide_url)),
            Row(label="A week", text=_week(found)),
            Row(label="What is counted", text=_KEPT),
        ),
        table=_table(found),
        steps=tuple(_steps(passed, query.weeks)),
        guide=page_links(_GUIDE, context.guide_url),
        picture=Picture.later(picture_of, found, passed),
    )


def _nothing(span: str, weeks: int, context: Context) -> Reply:
    steps = ["Ask anything here, then look again: convert 14in"]
    if weeks < 104:
        steps.append("Look further back: server stats weeks:104")
    return Reply(
        command="server stats",
        status="ok",
        title=f"What was asked here in {span}",
        answer=f"Nothing was counted in {span}.",
        rows=(Row(label="What is counted", text=_KEPT), Row(label="A week", text=_WEEK)),
        steps=tuple(steps),
        guide=page_links(_GUIDE, context.guide_url),
    )


def _told(found: Tallied, passed: tuple[Passed, ...]) -> str:
    asked = counted(found.total(Asked.QUESTION), "question")
    named = counted(found.total(Asked.ANIMAL), "animal")
    opened = counted(found.total(Asked.PAGE), "guide page")
    weeks = counted(len(found.weeks), "week")
    first = calendar_day(found.weeks[0].monday)
    hint = f" Often pointed to, hardly opened: “{page_title(passed[0].page)}”." if passed else ""
    return (
        f"{asked} asked, {named} named and {opened} opened in {weeks}, since Monday {first}.{hint}"
    )


def _rows(found: Tallied) -> Iterator[Row]:
    for kind, label in _LABELS.items():
        if found.names[kind]:
            yield Row(label=label, text=_most(found, kind))
    yield Row(label="Trend", text=_trend(found))


def _week(found: Tallied) -> str:
    if found.weeks[-1].over:
        return _WEEK
    return f"{_WEEK}; the newest is not over, so it shows what came so far"


def _most(found: Tallied, kind: Asked) -> str:
    names = found.names[kind]
    shown = listed(kind, names[:_MOST_NAMES])
    rest = names[_MOST_NAMES:]
    times = sum(times for _, times in rest)
    others = "1 other" if len(rest) == 1 else f"{len(rest)} others"
    return f"{shown}; {others}, {times} times in all" if rest else shown


def _trend(found: Tallied) -> str:
    over = [week for week in found.weeks if week.over]
    if len(over) < 2:
        return "cannot be told before two weeks are over"
    last, before = (
        ", ".join(counted(week.times[kind], noun) for kind, noun in _NOUNS.items())
        for week in (over[-1], over[-2])
    )
    return f"{last} in the last whole week; {before} in the one before"


def _table(found: Tallied) -> Table:
    return Table(
        columns=("Week from", "Questions", "Animals", "Pages"),
        # The newest first: what does not fit a message is cut at its end.
        rows=tuple(
            (
                calendar_day(week.monday) + ("" if week.over else " (so far)"),
                *(str(week.times[kind]) for kind in Asked),
            )
            for week in reversed(found.weeks)
        ),
    )


def _guide_rows(passed: tuple[Passed, ...], *, on_a_site: bool) -> Iterator[Row]:
    if on_a_site:
        yield Row(
            label="Pages on your site",
            text="the answers link to your own site, and what is read there is not counted; so "
            "these counts cannot show which page is hardly read",
        )
        return
    for page in passed[:_MOST_PASSED]:
        by = ", ".join(f"{question} {times}" for question, times in page.by)
        yield Row(
            label="Page hardly opened",
            text=f"“{page_title(page.page)}”: {counted(page.pointed, 'answer')} pointed to it "
            f"({by}), and it was opened {counted(page.opened, 'time')}",
        )
    if passed:
        more = len(passed) > _MOST_PASSED
        first = f"It has {len(passed)} pages, {_MOST_PASSED} are shown. " if more else ""
        yield Row(
            label="How a page gets on this list",
            text=f"{first}At least {LEAST_POINTED} answers pointed to it, and it was opened at "
            f"most once for every {OPENED_ONCE_IN} of them. The counts cannot say why: the "
            "answer may have been enough, or nobody sees the button",
        )


def _steps(passed: tuple[Passed, ...], weeks: int) -> Iterator[str]:
    if passed:
        page = passed[0].page
        yield f"Read the page, and share it in the channel if it helps: guide {page}"
        yield "Pin links to all pages where newcomers read first: board post topic:guide"
    yield f"Look at another span: server stats weeks:{8 if weeks == 26 else 26}"
