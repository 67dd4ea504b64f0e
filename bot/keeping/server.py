"""A group's settings: shown, changed, exported, taken back, forgotten; the log of changes."""

from bot.answers.animals import animal_asked
from bot.answers.figures import calendar_day
from bot.answers.own import lamp_told, screen_told
from bot.desk import LOCAL, Desk
from bot.keeping.changes_told import value_told, what_told
from bot.keeping.own_animals import animal_told
from bot.keeping.places import server_of
from bot.keeping.targets import target_told
from bot.keeping.words import exported, language_told, read_file
from bot.kept.group import Change, ServerExport, Shown
from bot.language.errors import NotUnderstoodError
from bot.preferences import Context
from bot.queries.mine import ExportQuery, ForgetQuery, ImportQuery
from bot.queries.saved import NONE, Cleared
from bot.queries.server import AnswersQuery, SettingsQuery, ShowQuery
from bot.reply import Reply, Row, Table
from calc.animals import animal_name

__all__ = [
    "answers",
    "changes",
    "export",
    "forget",
    "import_",
    "settings",
    "show",
]

_MOST_LINES = 20
_NOTHING = "nothing is set: questions are answered as everywhere"


async def show(query: ShowQuery, context: Context, desk: Desk) -> Reply:
    """Show all that a group has set; the query has no options."""
    server = server_of(desk)
    kept = await desk.store.exchange.server(server)
    rows = [Row(label=label, text=text) for label, text in _settings(kept)]
    rows += [Row(label=f"Lamp {x.name}", text=lamp_told(x, context)) for x in kept.lamps]
    rows += [Row(label=f"Screen {x.name}", text=screen_told(x)) for x in kept.screens]
    rows += [
        Row(label=f"Target {animal_name(x.animal)}", text=target_told(x, context))
        for x in kept.targets
    ]
    rows += [Row(label=f"Own animal {x.name}", text=animal_told(x, context)) for x in kept.animals]
    count = len(kept.lamps) + len(kept.screens) + len(kept.targets) + len(kept.animals)
    return Reply(
        command="server show",
        status="ok",
        title="What this group has set",
        answer=f"{count} figures of the group's own; {len(rows) - count} settings."
        if rows
        else f"So far {_NOTHING}.",
        rows=tuple(rows),
        steps=("Change a setting: server set units:cm", "Who changed what: server changes"),
    )


def _settings(kept: ServerExport) -> list[tuple[str, str]]:
    settings = kept.settings
    public = sum(shown is Shown.PUBLIC for shown in kept.channels.values())
    told = {
        "First unit": {"in": "inches and °F", "cm": "centimetres and °C"}.get(
            settings.units or "", ""
        ),
        "Animal": animal_name(settings.animal) if settings.animal else "",
        "Guide": settings.guide_url or "",
        "Time zone": settings.zone or "",
        "Language": language_told(settings.language),
        "Channels": f"{public} public, {len(kept.channels) - public} private"
        if kept.channels
        else "",
    }
    return [(label, text) for label, text in told.items() if text]


async def settings(query: SettingsQuery, context: Context, desk: Desk) -> Reply:
    """Change what was named of a group's settings."""
    server = server_of(desk)
    changed: dict[str, object] = {}
    if query.units is not None:
        changed["units"] = None if isinstance(query.units, Cleared) else query.units
    if query.animal:
        named = query.animal.strip().lower()
        changed["animal"] = None if named == NONE else animal_asked(named, context).slug
    if query.site is not None:
        changed["guide_url"] = None if isinstance(query.site, Cleared) else query.site
    if query.language is not None:
        changed["language"] = None if isinstance(query.language, Cleared) else query.language
    if query.zone:
        changed["zone"] = None if query.zone == NONE else query.zone
    if not changed:
        raise NotUnderstoodError(
            "no setting",
            "one to change: units, animal, site, zone or language",
            "server set units:cm",
        )
    await desk.store.servers.change(server, desk.by, **changed)
    await desk.store.boards.look_again(desk.now, server)
    kept = await desk.store.exchange.server(server)
    rows = tuple(Row(label=label, text=text) for label, text in _settings(kept))
    return Reply(
        command="server set",
        status="ok",
        title="The group's settings are changed",
        answer="Kept. From the next question on, answers here follow it."
        if rows
        else f"Kept: {_NOTHING}.",
        rows=rows,
        steps=("Take one away again with none: server set units:none",),
    )


async def answers(query: AnswersQuery, context: Context, desk: Desk) -> Reply:
    """Set who sees the answers of the channel in which this is asked."""
    server = server_of(desk)
    if desk.channel is None:
        raise NotUnderstoodError(
            "a console", "a channel of a Discord server", "server answers show:public"
        )
    shown = None if query.show == "usual" else Shown(query.show)
    await desk.store.servers.show(server, desk.channel, shown, desk.by)
    told = {
        Shown.PRIVATE: "the asker alone sees the answers",
        Shown.PUBLIC: "everybody sees the answers",
        None: "the asker sees the answers, and may share them",
    }
    return Reply(
        command="server answers",
        status="ok",
        title="Who sees the answers here",
        answer=f"From now on, {told[shown]} in this channel.",
        steps=("Back to what is usual: server answers show:usual",),
    )


async def changes(query: ShowQuery, context: Context, desk: Desk) -> Reply:
    """Show the newest lines of the log; the query has no options."""
    lines = await desk.store.changes.newest(server_of(desk), _MOST_LINES)
    return Reply(
        command="server changes",
        status="ok",
        title="Who changed what",
        answer=f"The newest {len(lines)} changes." if lines else "Nothing was changed so far.",
        table=Table(
            columns=("When (UTC)", "What", "From", "To", "By"),
            rows=tuple(_line(line, context) for line in lines),
        )
        if lines
        else None,
    )


def _line(line: Change, context: Context) -> tuple[str, ...]:
    who = "forgotten" if line.who is None else "local" if line.who == LOCAL else str(line.who)
    at = f"{calendar_day(line.at.date())}, {line.at:%H:%M}"
    values = (value_told(line, text, context) for text in (line.before, line.after))
    return at, what_told(line), *values, who


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
