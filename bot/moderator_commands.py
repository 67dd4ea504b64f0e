"""The questions of a group's moderators, in the order of the list; the examples work in turn."""

from bot.command import Command
from bot.keeping import boards, counting, server
from bot.queries.mine import ExportQuery, ForgetQuery, ImportQuery
from bot.queries.server import (
    AnimalQuery,
    AnswersQuery,
    BoardQuery,
    DropQuery,
    LampQuery,
    ScreenQuery,
    SettingsQuery,
    ShowQuery,
    StatsQuery,
    TargetQuery,
    TopicQuery,
)
from bot.questions.saved import group, log, own_animals, own_removed, own_targets, own_uv

__all__ = ["MODERATOR_COMMANDS"]

_SERVER = (
    Command(
        name="server show",
        summary="What this group has set: settings, own lamps, screens, targets and animals",
        query=ShowQuery,
        stored=group.show,
        tell=group.tell_shown,
        examples=("server show",),
        who="moderator",
        guide=("for-moderators",),
    ),
    Command(
        name="server set",
        summary="The group's first unit, animal, guide address and time zone",
        query=SettingsQuery,
        stored=group.settings,
        tell=group.tell_settings,
        examples=("server set units:in animal:bearded dragon", "server set units:none"),
        who="moderator",
        guide=("for-moderators",),
    ),
    Command(
        name="server answers",
        summary="Whether answers in this channel are for the asker alone or for everybody",
        query=AnswersQuery,
        stored=group.answers,
        tell=group.tell_answers,
        examples=("server answers show:public",),
        who="moderator",
        guide=("for-moderators",),
    ),
    Command(
        name="server lamp",
        summary="Keep a lamp class of the group's own, from meter readings",
        query=LampQuery,
        stored=own_uv.lamp,
        tell=own_uv.tell_lamp,
        examples=(
            "server lamp name:Hood by the door readings:4.2 at 12 in, 2.9 at 15 in length:34in",
        ),
        who="moderator",
        guide=("for-moderators", "how-to-take-a-reading"),
    ),
    Command(
        name="server screen",
        summary="Keep a screen of the group's own",
        query=ScreenQuery,
        stored=own_uv.screen,
        tell=own_uv.tell_screen,
        examples=(
            "server screen name:Mesh lid screen:passes 55%",
            "server screen name:Fine mesh readings:3.3 at 12 in without:6.0 at 12 in",
        ),
        who="moderator",
        guide=("for-moderators", "screens"),
    ),
    Command(
        name="server target",
        summary="Keep a target of the group's own for an animal",
        query=TargetQuery,
        stored=own_targets.target,
        tell=own_targets.tell_target,
        examples=(
            "server target animal:bearded dragon of:basking range:98-106F best:103F",
            "server target animal:bearded dragon of:uvi range:3-4",
        ),
        who="moderator",
        guide=("for-moderators",),
    ),
    Command(
        name="server animal",
        summary="Add an animal of the group's own, with targets and limits",
        query=AnimalQuery,
        stored=own_animals.animal,
        tell=own_animals.tell_animal,
        examples=(
            "server animal name:Moss lizard uvi:2-3 basking:88-93F cool:70-76F night:58-64F",
            (
                "server animal name:Moss lizard basking:88-93F cool:70-76F surface_limit:104F "
                "cool_limit:86F night_limit:52F uvi_limit:6"
            ),
        ),
        who="moderator",
        guide=("for-moderators",),
    ),
    Command(
        name="server remove",
        summary="Take a lamp, a screen, a target or an animal of the group's own away",
        query=DropQuery,
        stored=own_removed.remove,
        tell=own_removed.tell_removed,
        examples=(
            "server remove screen:Fine mesh",
            "server remove animal:bearded dragon of:uvi",
            "server remove animal:Moss lizard",
        ),
        who="moderator",
    ),
    Command(
        name="server changes",
        summary="Which moderator changed what, and when",
        query=ShowQuery,
        stored=log.changes,
        tell=log.tell_changes,
        examples=("server changes",),
        who="moderator",
    ),
    Command(
        name="server stats",
        summary="What was asked here by week: questions, animals, guide pages; no text, no person",
        query=StatsQuery,
        stored=counting.stats,
        examples=("server stats", "server stats weeks:26"),
        who="moderator",
        guide=("for-moderators",),
    ),
    Command(
        name="server export",
        summary="All that this group has set, as a file",
        query=ExportQuery,
        stored=server.export,
        examples=("server export",),
        who="moderator",
    ),
    Command(
        name="server import",
        summary="Take a file back that server export made",
        query=ImportQuery,
        stored=server.import_,
        examples=('server import file:{"noonstone": "server"}',),
        who="moderator",
    ),
    Command(
        name="server forget",
        summary="Delete all that is kept of this group, for good",
        query=ForgetQuery,
        stored=server.forget,
        examples=("server forget", "server forget sure:yes"),
        who="moderator",
    ),
)
_BOARD = (
    Command(
        name="board preview",
        summary="What a pinned board would say, shown to you alone",
        query=BoardQuery,
        stored=boards.preview,
        examples=(
            "board preview topic:distances animal:bearded dragon",
            "board preview topic:first day",
        ),
        who="moderator",
        guide=("for-moderators",),
    ),
    Command(
        name="board post",
        summary="Post and pin a board in this channel, kept up to date from then on",
        query=BoardQuery,
        stored=boards.post,
        examples=("board post topic:temperatures animal:bearded dragon",),
        who="moderator",
        guide=("for-moderators",),
    ),
    Command(
        name="board list",
        summary="The group's boards and how they stand",
        query=ShowQuery,
        stored=boards.list_,
        examples=("board list",),
        who="moderator",
    ),
    Command(
        name="board refresh",
        summary="Have all boards looked at again now",
        query=ShowQuery,
        stored=boards.refresh,
        examples=("board refresh",),
        who="moderator",
    ),
    Command(
        name="board remove",
        summary="Unpin and delete a board of this channel",
        query=TopicQuery,
        stored=boards.remove,
        examples=("board remove topic:temperatures",),
        who="moderator",
    ),
)
MODERATOR_COMMANDS: tuple[Command, ...] = (*_SERVER, *_BOARD)
