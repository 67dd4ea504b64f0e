"""All of a group as a file, taken back, or deleted. Words: ``words/<language>/groupfile.ftl``."""

import asyncio
from dataclasses import dataclass

from bot.command import Command
from bot.desk import Desk
from bot.facts import Says
from bot.layered import Brief, Layered
from bot.preferences import Context
from bot.queries.mine import ExportQuery, ForgetQuery, ImportQuery
from bot.questions.saved.files import document_of, read_file
from bot.questions.saved.unable import server_of
from bot.reply import Document
from bot.saved.group_file import ServerExport

__all__ = [
    "SERVER_EXPORT",
    "SERVER_FORGET",
    "SERVER_IMPORT",
    "export",
    "forget",
    "import_",
    "tell_export",
    "tell_forget",
    "tell_import",
]

_EXPORT, _IMPORT, _FORGET = "server export", "server import", "server forget"


@dataclass(frozen=True, slots=True)
class GroupTaken:
    """What was in a file that was taken back."""

    figures: int
    channels: int
    readings: int
    boards: int


@dataclass(frozen=True, slots=True)
class GroupForgetting:
    """Everything would be deleted, and nothing is yet."""


@dataclass(frozen=True, slots=True)
class GroupForgotten:
    """Everything is deleted; ``found``: there was something, ``boards``: messages that stay."""

    found: bool
    boards: int


async def export(query: ExportQuery, context: Context, desk: Desk) -> Document:
    """Make a file of everything that moderators set."""
    server = server_of(desk, _EXPORT)
    kept = await desk.store.exchange.server(server)
    shared = await desk.store.pool.of_group(server)
    readings = tuple(one.reading for one in shared)
    return document_of("server.json", kept.model_copy(update={"readings": readings}))


def tell_export(facts: Document) -> Layered:
    """Hand the file over."""
    say = Says("groupfile", None)
    return Layered(
        command=_EXPORT,
        title=say("title"),
        brief=Brief(head=say("head"), range=(say("alone"),)),
        steps=(say("step-back"),),
        document=facts,
    )


async def import_(query: ImportQuery, context: Context, desk: Desk) -> GroupTaken:
    """Take an export back: it adds and replaces, and leaves the rest."""
    server = server_of(desk, _IMPORT)
    # A large file takes long to check: beside the event loop, so that others are answered.
    given = await asyncio.to_thread(read_file, ServerExport, query.file, _IMPORT)
    await desk.store.exchange.take_server(server, given, desk.by)
    await desk.store.boards.look_again(desk.now, server)
    figures = len(given.lamps) + len(given.screens) + len(given.targets) + len(given.animals)
    return GroupTaken(figures, len(given.channels), len(given.readings), len(given.boards))


def tell_import(facts: GroupTaken) -> Layered:
    """Tell what is kept again."""
    say = Says("groupfile", facts)
    boards = (say("taken-boards"),) if facts.boards else ()
    return Layered(
        command=_IMPORT,
        title=say("taken-title"),
        brief=Brief(head=say("taken"), range=(*boards, say("taken-rest"))),
        why=(say("taken-readings"),) if facts.readings else (),
        steps=(say("step-look"),),
    )


async def forget(
    query: ForgetQuery, context: Context, desk: Desk
) -> GroupForgetting | GroupForgotten:
    """Delete everything of a group, once somebody is sure."""
    server = server_of(desk, _FORGET)
    if query.sure != "yes":
        return GroupForgetting()
    boards = await desk.store.boards.all(server)
    found = await desk.store.forgetting.server(server)
    return GroupForgotten(bool(found), len(boards))


def tell_forget(facts: GroupForgetting | GroupForgotten) -> Layered:
    """Ask whether it is meant, or tell what is gone."""
    say = Says("groupfile", facts)
    if isinstance(facts, GroupForgetting):
        return Layered(
            command=_FORGET,
            title=say("sure-title"),
            brief=Brief(head=say("sure"), range=(say("sure-what"), say("sure-reminders"))),
            steps=(say("step-copy"), say("step-sure")),
        )
    more = (say("gone-boards"),) if facts.found and facts.boards else ()
    return Layered(
        command=_FORGET,
        title=say("gone-title"),
        brief=Brief(head=say("gone"), range=more),
    )


SERVER_EXPORT = Command(
    name="server export",
    query=ExportQuery,
    stored=export,
    tell=tell_export,
    examples=("server export",),
    who="moderator",
)

SERVER_IMPORT = Command(
    name="server import",
    query=ImportQuery,
    stored=import_,
    tell=tell_import,
    examples=('server import file:{"noonstone": "server"}',),
    who="moderator",
)

SERVER_FORGET = Command(
    name="server forget",
    query=ForgetQuery,
    stored=forget,
    tell=tell_forget,
    examples=("server forget", "server forget sure:yes"),
    who="moderator",
)
