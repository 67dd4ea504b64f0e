"""A keeper's settings; everything kept of a person as a file, taken back, or deleted.

Words: ``words/<language>/mine-prefer.ftl``, ``mine-export.ftl``, ``mine-import.ftl``,
``mine-forget.ftl``.
"""

import asyncio
from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date

from bot.command import Command
from bot.desk import Desk
from bot.facts import Says
from bot.language.tongue import Tongue
from bot.language.units import Units
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.queries.mine import ExportQuery, ForgetQuery, ImportQuery, PreferQuery
from bot.queries.saved import NONE, Cleared
from bot.questions.saved.files import document_of, read_file
from bot.reply import Document
from bot.saved.keeper_file import KeeperExport

__all__ = [
    "MINE_EXPORT",
    "MINE_FORGET",
    "MINE_IMPORT",
    "MINE_PREFER",
    "Forgetting",
    "Forgotten",
    "MineTaken",
    "Preferred",
    "export",
    "forget",
    "import_",
    "prefer",
    "tell_export",
    "tell_forget",
    "tell_import",
    "tell_prefer",
]


@dataclass(frozen=True, slots=True)
class Preferred:
    """How a keeper wants to be answered; None is not set."""

    changed: bool
    units: Units | None
    language: Tongue | None
    zone: str | None


async def prefer(query: PreferQuery, context: Context, desk: Desk) -> Preferred:
    """Change how a keeper wants to be answered, everywhere."""
    changed: dict[str, object] = {}
    if query.units is not None:
        changed["units"] = None if isinstance(query.units, Cleared) else query.units
    if query.language is not None:
        changed["language"] = None if isinstance(query.language, Cleared) else query.language
    if query.zone:
        changed["zone"] = None if query.zone == NONE else query.zone
    kept = (
        await desk.store.keepers.change(desk.keeper, **changed)
        if changed
        else await desk.store.keepers.settings(desk.keeper)
    )
    return Preferred(bool(changed), kept.units, kept.language, kept.zone)


def tell_prefer(facts: Preferred) -> Layered:
    """Tell how it is set now."""
    say = Says("mine-prefer", facts)
    return Layered(
        command="mine prefer",
        title=say("title"),
        brief=Brief(head=say("kept" if facts.changed else "now")),
        steps=(say("step"),),
        numbers=(
            Row(say("label-units"), say("units")),
            Row(say("label-language"), say("language")),
            Row(say("label-zone"), say("zone")),
        ),
    )


async def export(query: ExportQuery, context: Context, desk: Desk) -> Document:
    """Make a file of everything that is kept of a person."""
    return document_of("mine.json", await desk.store.exchange.keeper(desk.keeper))


def tell_export(facts: Document) -> Layered:
    """Hand the file over."""
    say = Says("mine-export", None)
    return Layered(
        command="mine export",
        title=say("title"),
        brief=Brief(head=say("head"), range=(say("alone"),)),
        steps=(say("step"),),
        document=facts,
    )


@dataclass(frozen=True, slots=True)
class MineTaken:
    """What was in a file that was taken back."""

    enclosures: int
    readings: int
    elsewhere: int


async def import_(query: ImportQuery, context: Context, desk: Desk) -> MineTaken:
    """Take an export back: it adds and replaces by name, and leaves the rest."""
    # A large file takes long to check: beside the event loop, so that others are answered.
    given = await asyncio.to_thread(read_file, KeeperExport, query.file, "mine import")
    await desk.store.exchange.take_keeper(desk.keeper, given, desk.now, desk.server)
    readings = sum(len(enclosure.readings) for enclosure in given.enclosures)
    elsewhere = sum(one.group != desk.server for one in given.given)
    return MineTaken(len(given.enclosures), readings, elsewhere)


def tell_import(facts: MineTaken) -> Layered:
    """Tell what is kept again."""
    say = Says("mine-import", facts)
    return Layered(
        command="mine import",
        title=say("title"),
        brief=Brief(head=say("head"), range=(say("rest"),)),
        why=(
            say("reminders"),
            say("cases"),
            *((say("elsewhere"),) if facts.elsewhere else ()),
        ),
        steps=(say("step"),),
    )


@dataclass(frozen=True, slots=True)
class Forgetting:
    """What would be deleted."""

    enclosures: int
    reminders: int
    spares: int
    cases: int
    given: int


@dataclass(frozen=True, slots=True)
class Forgotten:
    """What was deleted, and where a number was taken out: of servers' logs, of advice to others."""

    day: date
    enclosures: int
    readings: int
    reminders: int
    settings: bool
    log_lines: int
    cases: int
    spares: int
    advice: int
    given: int
    posts: int


async def forget(query: ForgetQuery, context: Context, desk: Desk) -> Forgetting | Forgotten:
    """Delete everything of a person, once that person is sure."""
    if query.sure != "yes":
        kept = await desk.store.exchange.keeper(desk.keeper)
        return Forgetting(
            enclosures=len(kept.enclosures),
            reminders=len(kept.reminders),
            spares=len(kept.spares),
            cases=len(kept.cases),
            given=len(kept.given),
        )
    gone = await desk.store.forgetting.keeper(desk.keeper)
    return Forgotten(
        day=desk.now.date(),
        enclosures=gone.enclosures,
        readings=gone.readings,
        reminders=gone.reminders,
        settings=bool(gone.settings),
        log_lines=gone.log_lines,
        cases=gone.cases,
        spares=gone.spares,
        advice=gone.advice,
        given=gone.given,
        posts=gone.posts,
    )


def tell_forget(facts: Forgetting | Forgotten) -> Layered:
    """Ask whether it is meant, or tell what is gone."""
    say = Says("mine-forget", facts)
    if isinstance(facts, Forgetting):
        given = (say("would-given"),) if facts.given else ()
        return Layered(
            command="mine forget",
            title=say("ask-title"),
            brief=Brief(head=say("ask"), range=(say("would"), *given)),
            steps=(say("step-export"), say("step-sure")),
        )
    return Layered(
        command="mine forget",
        title=say("title"),
        brief=Brief(head=say("head")),
        why=(say("backups"),),
        numbers=tuple(_gone(facts)),
    )


def _gone(facts: Forgotten) -> Iterator[Row]:
    say = Says("mine-forget", facts)
    yield Row(say("label-enclosures"), say("enclosures"))
    yield Row(say("label-readings"), say("readings"))
    yield Row(say("label-reminders"), say("reminders"))
    if facts.spares:
        yield Row(say("label-spares"), say("spares"))
    if facts.cases:
        yield Row(say("label-cases"), say("cases"))
    yield Row(say("label-settings"), say("settings"))
    if facts.given:
        yield Row(say("label-given"), say("given"))
    if facts.log_lines:
        yield Row(say("label-logs"), say("logs"))
    if facts.advice:
        yield Row(say("label-advice"), say("advice"))
    if facts.posts:
        yield Row(say("label-posts"), say("posts"))


MINE_PREFER = Command(
    name="mine prefer",
    query=PreferQuery,
    stored=prefer,
    tell=tell_prefer,
    examples=("mine prefer units:cm zone:Europe/Berlin", "mine prefer units:none"),
)

MINE_EXPORT = Command(
    name="mine export",
    query=ExportQuery,
    stored=export,
    tell=tell_export,
    examples=("mine export",),
)

MINE_IMPORT = Command(
    name="mine import",
    query=ImportQuery,
    stored=import_,
    tell=tell_import,
    examples=('mine import file:{"noonstone": "keeper"}',),
)

MINE_FORGET = Command(
    name="mine forget",
    query=ForgetQuery,
    stored=forget,
    tell=tell_forget,
    examples=("mine forget", "mine forget sure:yes"),
)
