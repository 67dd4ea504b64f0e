"""What somebody called wrong in a group, for its moderators. Words: ``words/<language>/wrong.ftl``.

Of the question its values are kept, never a text that somebody wrote, and nobody's number.
"""

from collections import Counter
from collections.abc import Sequence
from csv import writer
from dataclasses import dataclass
from datetime import date
from io import StringIO

from bot.command import Command
from bot.desk import Desk
from bot.facts import Say, Says
from bot.language.words import join_line
from bot.layered import Brief, Layered, Row, Table
from bot.preferences import Context
from bot.queries.server import WrongQuery
from bot.questions.saved.files import document_of
from bot.questions.saved.unable import server_of
from bot.reply import Document
from bot.saved.counts import monday_of, week_of
from bot.saved.wrongs import Wrong, WrongExport

__all__ = ["SERVER_WRONG", "tell_wrong", "wrong"]

_MOST_LINES = 20


@dataclass(frozen=True, slots=True)
class WrongLine:
    """A question whose answer was called wrong, and when."""

    day: date
    line: str


@dataclass(frozen=True, slots=True)
class WrongWeek:
    """How many were called wrong in the week of a Monday."""

    monday: date
    count: int


@dataclass(frozen=True, slots=True)
class WrongsShown:
    """What was called wrong, the newest first; ``cleared``: it has just been taken away."""

    lines: tuple[WrongLine, ...]
    weeks: tuple[WrongWeek, ...]
    count: int
    cleared: bool
    document: Document | None = None


async def wrong(query: WrongQuery, context: Context, desk: Desk) -> WrongsShown:
    """Return what was called wrong, or take all of it away."""
    server = server_of(desk, "server wrong")
    if query.clear == "yes":
        return WrongsShown((), (), await desk.store.wrongs.clear(server), cleared=True)
    kept = await desk.store.wrongs.newest(server)
    weeks = Counter(week_of(one.day) for one in kept)
    return WrongsShown(
        lines=tuple(map(_line, kept[:_MOST_LINES])),
        weeks=tuple(WrongWeek(monday_of(w), n) for w, n in sorted(weeks.items(), reverse=True)),
        count=len(kept),
        cleared=False,
        document=_document(query.file, kept) if query.file else None,
    )


def _document(kind: str, kept: Sequence[Wrong]) -> Document:
    """Return all that is kept as a file: every value, the newest first."""
    if kind == "json":
        return document_of("wrong.json", WrongExport(wrongs=tuple(kept)))
    table = StringIO()
    lines = writer(table, lineterminator="\n")
    lines.writerow(("day", "command", "option", "value"))
    for one in kept:
        options = one.given.items() or (("", ""),)
        lines.writerows((one.day, one.command, *option) for option in options)
    return Document(name="wrong.csv", text=table.getvalue())


def _line(one: Wrong) -> WrongLine:
    return WrongLine(one.day, join_line(one.command, one.given))


def tell_wrong(facts: WrongsShown) -> Layered:
    """Tell what was called wrong, by week and one by one."""
    say = Says("wrong", facts)
    return Layered(
        command="server wrong",
        title=say("title"),
        brief=Brief(head=say("gone") if facts.cleared else say("head"), range=(say("no-text"),)),
        steps=()
        if facts.cleared or not facts.count
        else (say("step-ask"), say("step-file"), say("step-clear")),
        numbers=tuple(Row(Say("wrong-week", w), Say("wrong-times", w)) for w in facts.weeks),
        table=Table(
            (say("column-day"), say("column-line")),
            tuple((Say("wrong-day", one), Say("wrong-line", one)) for one in facts.lines),
        )
        if facts.lines
        else None,
        document=facts.document,
    )


SERVER_WRONG = Command(
    name="server wrong",
    query=WrongQuery,
    stored=wrong,
    tell=tell_wrong,
    examples=("server wrong", "server wrong file:csv"),
    who="moderator",
    guide=("for-moderators",),
)
