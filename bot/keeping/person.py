"""A keeper's settings; everything kept of a person as a file, taken back, or deleted."""

import asyncio

from bot.answers.figures import calendar_day
from bot.desk import Desk
from bot.keeping.words import exported, language_told, read_file
from bot.kept.keeper import KeeperExport
from bot.preferences import Context
from bot.queries.mine import ExportQuery, ForgetQuery, ImportQuery, PreferQuery
from bot.queries.saved import NONE, Cleared
from bot.reply import Reply, Row

__all__ = ["export", "forget", "import_", "prefer"]


async def prefer(query: PreferQuery, context: Context, desk: Desk) -> Reply:
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
    units = {"in": "inches and °F", "cm": "centimetres and °C"}.get(kept.units or "", "not set")
    return Reply(
        command="mine prefer",
        status="ok",
        title="How you want to be answered",
        answer="Kept, and it goes before what a server has set."
        if changed
        else "So it is set now.",
        rows=(
            Row(label="First unit", text=units),
            Row(label="Language", text=language_told(kept.language) or "as your Discord is set"),
            Row(label="Time zone", text=kept.zone or "not set; moments are told in UTC"),
        ),
        steps=("Change it: mine prefer units:cm language:de zone:Europe/Berlin",),
    )


async def export(query: ExportQuery, context: Context, desk: Desk) -> Reply:
    """Hand over everything that is kept of a person."""
    kept = await desk.store.exchange.keeper(desk.keeper)
    return exported("mine export", "All that I keep for you", "mine.json", kept)


async def import_(query: ImportQuery, context: Context, desk: Desk) -> Reply:
    """Take an export back: it adds and replaces by name, and leaves the rest."""
    # A large file takes long to check: beside the event loop, so that others are answered.
    given = await asyncio.to_thread(read_file, KeeperExport, query.file, "mine import")
    await desk.store.exchange.take_keeper(desk.keeper, given, desk.now)
    readings = sum(len(enclosure.readings) for enclosure in given.enclosures)
    return Reply(
        command="mine import",
        status="ok",
        title="The file is taken back",
        answer=(
            f"{len(given.enclosures)} enclosures with {readings} readings are kept as the file "
            "has them; what it does not name stays. Reminders come by direct message, and past "
            "ones are left out."
        ),
        steps=("Look at it: mine list",),
    )


async def forget(query: ForgetQuery, context: Context, desk: Desk) -> Reply:
    """Delete everything of a person, once that person is sure."""
    if query.sure != "yes":
        kept = await desk.store.exchange.keeper(desk.keeper)
        return Reply(
            command="mine forget",
            status="ok",
            title="Delete everything I keep for you?",
            answer=(
                f"This deletes {len(kept.enclosures)} enclosures with all readings, "
                f"{len(kept.reminders)} reminders and your settings, for good."
            ),
            steps=("Keep a copy first: mine export", "Then delete: mine forget sure:yes"),
        )
    gone = await desk.store.forgetting.keeper(desk.keeper)
    rows = [
        Row(label="Enclosures", text=str(gone.enclosures)),
        Row(label="Readings", text=str(gone.readings)),
        Row(label="Reminders", text=str(gone.reminders)),
        Row(label="Settings", text="deleted" if gone.settings else "there were none"),
    ]
    if gone.log_lines:
        told = f"your number was taken out of {gone.log_lines} lines; what was changed stays"
        rows.append(Row(label="Logs of servers", text=told))
    return Reply(
        command="mine forget",
        status="ok",
        title="Everything of yours is deleted",
        answer=(
            f"Deleted for good on {calendar_day(desk.now.date())}. Backups that the people who "
            "run this bot made before still hold it, until they are thrown away."
        ),
        rows=tuple(rows),
    )
