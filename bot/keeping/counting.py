"""What is asked for, counted without text and without person, and shown to moderators."""

from collections import Counter
from collections.abc import Mapping
from datetime import timedelta

from bot import guide
from bot.desk import Desk
from bot.keeping.places import server_of
from bot.kept.counts import Asked
from bot.preferences import Context
from bot.queries.server import StatsQuery
from bot.reply import Reply, Row, Table
from calc.animals import animals, find

__all__ = ["asked_for", "stats"]

_MOST = 10


def asked_for(command: str, given: Mapping[str, str]) -> tuple[tuple[Asked, str], ...]:
    """Return what an answered question counts as: itself, its animal, its page.

    Only names of ours are counted, never what was typed.
    """
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
    since = desk.now.date() - timedelta(weeks=query.weeks - 1)
    counts = await desk.store.counts.since(server_of(desk), since)
    totals: Counter[tuple[Asked, str]] = Counter()
    weeks: Counter[str] = Counter()
    for count in counts:
        totals[count.kind, count.name] += count.times
        if count.kind is Asked.QUESTION:
            weeks[count.week] += count.times
    table = tuple(
        (kind.value, _name(kind, name), str(times))
        for wanted in Asked
        for (kind, name), times in totals.most_common()
        if kind is wanted
    )
    return Reply(
        command="server stats",
        status="ok",
        title=f"What was asked here in {query.weeks} weeks",
        answer=f"{sum(weeks.values())} questions in {len(weeks)} weeks."
        if weeks
        else "Nothing was counted in these weeks.",
        rows=tuple(Row(label=week, text=f"{times} questions") for week, times in weeks.items()),
        table=Table(columns=("Kind", "What", "Times"), rows=_most_of_each(table))
        if table
        else None,
        steps=("Counts hold no text and no person; they are kept for two years.",),
    )


def _most_of_each(rows: tuple[tuple[str, ...], ...]) -> tuple[tuple[str, ...], ...]:
    kinds = dict.fromkeys(row[0] for row in rows)
    return tuple(row for kind in kinds for row in [row for row in rows if row[0] == kind][:_MOST])


def _name(kind: Asked, name: str) -> str:
    known = animals()
    return known[name].name if kind is Asked.ANIMAL and name in known else name
