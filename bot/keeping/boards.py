"""Boards: previewed, wanted in a channel, looked at again, taken down."""

from bot.answers.animals import animal_asked
from bot.desk import Desk
from bot.keeping.board_content import board_reply
from bot.keeping.places import server_of
from bot.kept.boards import Board, BoardState
from bot.kept.reminders import Trouble
from bot.language.errors import NotUnderstoodError
from bot.language.words import join_line
from bot.preferences import Context
from bot.queries.server import BoardQuery, ShowQuery, TopicQuery
from bot.reply import Reply, Table
from calc.animals import animal_name

__all__ = ["BOARD_TROUBLE", "list_", "post", "preview", "refresh", "remove"]

_PINNING = "Pin Messages"
BOARD_TROUBLE = {
    Trouble.NONE: "",
    Trouble.CHANNEL_GONE: "the channel is gone",
    Trouble.NO_RIGHT: "I may not see or write in that channel: give me View Channel, Send "
    "Messages, Embed Links and Read Message History there",
    Trouble.REFUSED: "Discord refuses it (an archived thread must be opened again); I try again "
    "every hour",
    Trouble.NO_PIN_RIGHT: "posted, not pinned: I need the right Pin Messages there",
    Trouble.PINS_FULL: "posted, not pinned: the channel has 250 pins, unpin one first",
}


async def preview(query: BoardQuery, context: Context, desk: Desk) -> Reply:
    """Show what a board would say, to the asker alone."""
    server_of(desk)
    shown = board_reply(query.topic, _slug(query, context), context)
    asked = {"topic": query.topic.value} | ({"animal": query.animal} if query.animal else {})
    return shown.model_copy(
        update={
            "command": "board preview",
            "steps": (
                *shown.steps,
                f"Pin it in this channel: {join_line('board post', asked)}",
            ),
        }
    )


def _slug(query: BoardQuery, context: Context) -> str | None:
    wish = query.animal.strip() or context.default_animal
    return animal_asked(wish, context).slug if wish else None


async def post(query: BoardQuery, context: Context, desk: Desk) -> Reply:
    """Want a board in the channel in which this is asked."""
    server = server_of(desk)
    if desk.channel is None:
        raise NotUnderstoodError(
            "a console",
            "a channel of a Discord server, where it can be pinned",
            f"board preview topic:{query.topic.value}",
        )
    slug = _slug(query, context)
    # What cannot be shown is refused now, and not later where nobody would see it.
    board_reply(query.topic, slug, context)
    _, known = await desk.store.boards.put(server, desk.channel, query.topic, slug, desk.by)
    return Reply(
        command="board post",
        status="ok",
        title=f"Board: {query.topic.value}",
        answer=_promised(desk.lacking, known=known),
        cautions=(f"I lack rights in this channel: {', '.join(desk.lacking)}.",)
        if desk.lacking
        else (),
        steps=(
            *(
                ("Have an administrator give me what I lack here, then: board refresh",)
                if desk.lacking
                else ()
            ),
            "See whether it is up: board list",
            f"Take it down: board remove topic:{query.topic.value}",
        ),
    )


def _promised(lacking: tuple[str, ...], *, known: bool) -> str:
    """Say what becomes of a wish, and promise no more than the bot's rights allow."""
    if known:
        return "It is changed in place in a moment; there is one board a topic and channel."
    if lacking == (_PINNING,):
        return "It is posted here in a moment and kept up to date, but I may not pin it."
    if lacking:
        return "It is noted, but I may not post it here yet."
    return "It is posted and pinned here in a moment, and kept up to date from then on."


async def list_(query: ShowQuery, context: Context, desk: Desk) -> Reply:
    """List a group's boards and how they stand; the query has no options."""
    boards = await desk.store.boards.all(server_of(desk))
    return Reply(
        command="board list",
        status="ok",
        title="The group's boards",
        answer=f"{len(boards)} board{'' if len(boards) == 1 else 's'}.",
        table=Table(
            columns=("Topic", "Animal", "Channel", "How it stands"),
            rows=tuple(
                (
                    board.topic.value,
                    animal_name(board.animal) if board.animal else "none",
                    str(board.channel),
                    _standing(board),
                )
                for board in boards
            ),
        )
        if boards
        else None,
        steps=("See one first: board preview topic:distances",),
    )


def _standing(board: Board) -> str:
    if board.state is BoardState.LEAVING:
        return "is being taken down"
    if board.trouble is not Trouble.NONE:
        return BOARD_TROUBLE[board.trouble]
    return "pinned" if board.pinned else "waiting to be posted"


async def refresh(query: ShowQuery, context: Context, desk: Desk) -> Reply:
    """Have all boards of a group looked at again; the query has no options."""
    server = server_of(desk)
    await desk.store.boards.look_again(desk.now, server)
    count = len(await desk.store.boards.all(server))
    return Reply(
        command="board refresh",
        status="ok",
        title="The boards are looked at again",
        answer=f"{count} board{'' if count == 1 else 's'}: posted, pinned or changed where needed.",
        steps=("See how they stand: board list",),
    )


async def remove(query: TopicQuery, context: Context, desk: Desk) -> Reply:
    """Want a board of this channel taken down."""
    server = server_of(desk)
    gone = desk.channel is not None and await desk.store.boards.leave(
        server, desk.channel, query.topic, desk.by
    )
    if not gone:
        raise NotUnderstoodError(
            query.topic.value, "the topic of a board in this channel", "board list", "topic"
        )
    return Reply(
        command="board remove",
        status="ok",
        title=f"Board: {query.topic.value}",
        answer="It is unpinned and deleted in a moment.",
        steps=("What is left: board list",),
    )
