"""A group's settings and figures: exported, taken back, forgotten."""

from bot.desk import Desk
from bot.keeping.places import server_of
from bot.keeping.words import exported
from bot.kept.group import ServerExport
from bot.preferences import Context
from bot.queries.mine import ExportQuery, ForgetQuery, ImportQuery
from bot.questions.saved.files import read_file
from bot.reply import Reply

__all__ = ["export", "forget", "import_"]


async def export(query: ExportQuery, context: Context, desk: Desk) -> Reply:
    """Hand over everything that moderators set."""
    kept = await desk.store.exchange.server(server_of(desk))
    return exported("server export", "All that this group has set", "server.json", kept)


async def import_(query: ImportQuery, context: Context, desk: Desk) -> Reply:
    """Take an export back: it adds and replaces, and leaves the rest."""
    server = server_of(desk)
    given = read_file(ServerExport, query.file, "server import")
    await desk.store.exchange.take_server(server, given, desk.by)
    await desk.store.boards.look_again(desk.now, server)
    figures = len(given.lamps) + len(given.screens) + len(given.targets)
    figures += len(given.animals)
    return Reply(
        command="server import",
        status="ok",
        title="The file is taken back",
        answer=(
            f"{figures} figures and {len(given.channels)} channels are kept as the file has them; "
            "what it does not name stays as it was."
        ),
        steps=("Look at it: server show",),
    )


async def forget(query: ForgetQuery, context: Context, desk: Desk) -> Reply:
    """Delete everything of a group, once somebody is sure."""
    server = server_of(desk)
    if query.sure != "yes":
        return Reply(
            command="server forget",
            status="ok",
            title="Delete everything of this group?",
            answer=(
                "This deletes the settings, the group's own figures, the boards' list, the counts "
                "and the log, for good. Reminders of keepers in this server's channels go too."
            ),
            steps=("Keep a copy first: server export", "Then delete: server forget sure:yes"),
        )
    boards = await desk.store.boards.all(server)
    found = await desk.store.forgetting.server(server)
    left = f" {len(boards)} pinned boards stay in their channels as messages." if boards else ""
    return Reply(
        command="server forget",
        status="ok",
        title="Everything of this group is deleted",
        answer=(
            f"Settings, own figures, counts, boards and the log are deleted for good.{left}"
            if found
            else "There was nothing to delete."
        ),
    )
