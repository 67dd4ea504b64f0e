"""The questions about saved data, in the order of the list.

Their examples work one after the other, beginning with a store in which there is nothing.
"""

from bot.command import Command
from bot.moderator_commands import MODERATOR_COMMANDS
from bot.queries.mine import (
    CompareQuery,
    ExportQuery,
    ForgetQuery,
    ImportQuery,
    ListQuery,
    NamedQuery,
    PreferQuery,
    ReadingQuery,
    RemoveQuery,
    SaveQuery,
    UnreadQuery,
)
from bot.queries.remind import NumberQuery, RemindQuery, SnoozeQuery
from bot.questions.saved import (
    comparing,
    enclosures,
    listing,
    person,
    reading,
    reminding,
    saving,
    showing,
)

__all__ = ["GROUPS", "STORED_COMMANDS"]

_MINE = (
    Command(
        name="mine save",
        summary="Keep an enclosure of yours, or change what is told of it; only you see it",
        query=SaveQuery,
        stored=saving.save,
        tell=saving.tell_save,
        examples=(
            (
                "mine save name:Pebble's box animal:bearded dragon tube:12% reflector:polished "
                "screen:none distance:16in age:new"
            ),
            "mine save name:Spare box enclosure:120x60x60cm",
            (
                "mine save name:Fern's box words:beardie with a 12% in a shiny hood, no screen, "
                "18 inches above his back, 4x2x2"
            ),
        ),
        guide=("keeping-notes",),
    ),
    Command(
        name="mine reading",
        summary="Write down what you read today: UV index and temperatures",
        query=ReadingQuery,
        stored=reading.read,
        tell=reading.tell_read,
        examples=(
            "mine reading name:Pebble's box uvi:4.2 distance:16in basking:103F cool:79F",
            "mine reading name:Pebble's box uvi:4.4 distance:16in day:2026-01-10",
        ),
        guide=("keeping-notes", "how-to-take-a-reading"),
    ),
    Command(
        name="mine show",
        summary="An enclosure of yours: set-up, history, how the tube fades, when to read again",
        query=NamedQuery,
        stored=showing.show,
        tell=showing.tell_show,
        examples=("mine show name:Pebble's box",),
        guide=("keeping-notes", "when-a-lamp-is-worn-out"),
    ),
    Command(
        name="mine compare",
        summary="Two days of an enclosure beside each other",
        query=CompareQuery,
        stored=comparing.compare,
        tell=comparing.tell_compare,
        examples=("mine compare name:Pebble's box",),
        guide=("keeping-notes",),
    ),
    Command(
        name="mine unread",
        summary="Take the readings of a day away again",
        query=UnreadQuery,
        stored=reading.unread,
        tell=reading.tell_unread,
        examples=("mine unread name:Pebble's box day:today of:cool",),
    ),
    Command(
        name="mine list",
        summary="All that is kept for you: enclosures and reminders",
        query=ListQuery,
        stored=listing.list_,
        tell=listing.tell_list,
        examples=("mine list",),
        guide=("keeping-notes",),
    ),
    Command(
        name="mine remove",
        summary="Take an enclosure of yours away, with its readings and reminders",
        query=RemoveQuery,
        stored=enclosures.remove,
        tell=enclosures.tell_removed,
        examples=("mine remove name:Spare box",),
    ),
    Command(
        name="mine prefer",
        summary="Your first unit and your time zone, everywhere",
        query=PreferQuery,
        stored=person.prefer,
        tell=person.tell_prefer,
        examples=("mine prefer units:cm zone:Europe/Berlin", "mine prefer units:none"),
    ),
    Command(
        name="mine export",
        summary="All that is kept for you, as a file",
        query=ExportQuery,
        stored=person.export,
        tell=person.tell_export,
        examples=("mine export",),
    ),
    Command(
        name="mine import",
        summary="Take a file back that mine export made",
        query=ImportQuery,
        stored=person.import_,
        tell=person.tell_import,
        examples=('mine import file:{"noonstone": "keeper"}',),
    ),
    Command(
        name="mine forget",
        summary="Delete all that is kept for you, for good",
        query=ForgetQuery,
        stored=person.forget,
        tell=person.tell_forget,
        examples=("mine forget", "mine forget sure:yes"),
    ),
)
_REMIND = (
    Command(
        name="remind me",
        summary="A reminder to read the meter, replace the tube, or re-check, in your time zone",
        query=RemindQuery,
        stored=reminding.remind,
        tell=reminding.tell_remind,
        examples=("remind me about:meter when:in 3 months", "remind me about:season"),
        guide=("keeping-notes",),
    ),
    Command(
        name="remind list",
        summary="Your reminders, and why one could not be delivered",
        query=ListQuery,
        stored=reminding.list_,
        tell=reminding.tell_list,
        examples=("remind list",),
    ),
    Command(
        name="remind snooze",
        summary="Put a reminder off",
        query=SnoozeQuery,
        stored=reminding.snooze,
        tell=reminding.tell_snooze,
        examples=("remind snooze number:1 until:in 2 days",),
    ),
    Command(
        name="remind off",
        summary="Take a reminder away",
        query=NumberQuery,
        stored=reminding.off,
        tell=reminding.tell_off,
        examples=("remind off number:1",),
    ),
)
GROUPS = {
    "mine": "Your own enclosures and readings, kept for you alone",
    "remind": "Reminders to read, replace or re-check",
    "server": "For moderators: the group's settings and its own figures",
    "board": "For moderators: pinned boards, kept up to date",
}
"""The first words of these questions, and what they are about."""

STORED_COMMANDS: tuple[Command, ...] = (*_MINE, *_REMIND, *MODERATOR_COMMANDS)
