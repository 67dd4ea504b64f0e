"""Boards: previewed, wanted in a channel, taken down. Words: ``board.ftl``."""

from dataclasses import dataclass, replace
from enum import Enum, auto

from bot.command import Command
from bot.desk import PICTURES, PINNING, Desk
from bot.facts import Say, Says
from bot.language.lists import read_list
from bot.language.wanted import UpTo
from bot.language.words import join_line
from bot.layered import Brief, Layered
from bot.preferences import Context
from bot.queries.server import BoardQuery, TopicQuery
from bot.questions.animals import animal_asked
from bot.questions.saved.board_content import Board, board_of, tell_board
from bot.questions.saved.unable import server_of, unable
from bot.saved.boards import MOST_ON_BOARD, Topic
from calc.naming import Known, named

__all__ = [
    "BOARD_POST",
    "BOARD_PREVIEW",
    "BOARD_REMOVE",
    "animals_wanted",
    "post",
    "preview",
    "remove",
    "tell_post",
    "tell_preview",
    "tell_removed",
]

_PREVIEW, _POST, _REMOVE = "board preview", "board post", "board remove"
_TWO_ANIMALS = "animal:bearded dragon; leopard gecko"


class Promise(Enum):
    """What becomes of a wish: no more is promised than the bot's rights allow."""

    CHANGED = auto()
    UNPINNED = auto()
    NOTED = auto()
    POSTED = auto()


@dataclass(frozen=True, slots=True)
class BoardSeen:
    """What a board would say, and the question that pins it."""

    board: Board
    line: str


@dataclass(frozen=True, slots=True)
class BoardWanted:
    """A board that is wanted in this channel; ``lacking`` are rights by Discord's names."""

    topic: Topic
    promise: Promise
    lacking: tuple[str, ...]

    @property
    def typed(self) -> str:
        """Return the topic as it is typed."""
        return self.topic.value


@dataclass(frozen=True, slots=True)
class BoardGone:
    """A board of this channel that is taken down."""

    topic: Topic


async def preview(query: BoardQuery, context: Context, desk: Desk) -> BoardSeen:
    """Find what a board would say, for the asker alone."""
    server_of(desk, _PREVIEW)
    board = board_of(query.topic, animals_wanted(query, context), context)
    asked = {"topic": query.topic.value} | ({"animal": query.animal} if query.animal else {})
    return BoardSeen(board, join_line(_POST, asked))


def animals_wanted(query: BoardQuery, context: Context) -> tuple[str, ...]:
    """Return the keys of the animals that a board is for, as named, or the group's."""
    wish = query.animal.strip() or context.default_animal
    if not wish or not query.asks_of_an_animal():
        return ()

    def slug(name: str) -> str:
        return animal_asked(name, context).slug

    # A name may hold what parts a list.
    if isinstance(named(wish, context.own.names).what, Known):
        return (slug(wish),)
    wanted = Say("wanted-animals", UpTo(MOST_ON_BOARD))
    found = read_list(wish, slug, MOST_ON_BOARD, wanted, _TWO_ANIMALS)
    return tuple(dict.fromkeys(found))


def tell_preview(facts: BoardSeen) -> Layered:
    """Tell what a board would say, and how to pin it."""
    told = tell_board(facts.board)
    return replace(told, command=_PREVIEW, steps=(*told.steps, Say("board-step-pin", facts)))


async def post(query: BoardQuery, context: Context, desk: Desk) -> BoardWanted:
    """Want a board in the channel in which this is asked."""
    server = server_of(desk, _POST)
    if desk.channel is None:
        example = f"board preview topic:{query.topic.value}"
        raise unable(_POST, Say("group-no-channel"), example=example)
    slugs = animals_wanted(query, context)
    # What cannot be shown is refused now, and not later where nobody would see it.
    board_of(query.topic, slugs, context, _POST)
    _, known = await desk.store.boards.put(server, desk.channel, query.topic, slugs, desk.by)
    return BoardWanted(query.topic, _promise(desk.lacking, known=known), desk.lacking)


def _promise(lacking: tuple[str, ...], *, known: bool) -> Promise:
    if known:
        return Promise.CHANGED
    if set(lacking) - {PINNING, PICTURES}:
        return Promise.NOTED
    return Promise.UNPINNED if PINNING in lacking else Promise.POSTED


def tell_post(facts: BoardWanted) -> Layered:
    """Tell what becomes of the wish, and which rights are missing."""
    say = Says("board", facts)
    lacking = (say("lacking"),) if facts.lacking else ()
    more = () if facts.promise is Promise.NOTED else (say("kept-up"),)
    return Layered(
        command=_POST,
        title=say("title"),
        brief=Brief(head=say.by("will", facts.promise), range=(*lacking, *more)),
        steps=(
            *((say("step-rights"),) if facts.lacking else ()),
            say("step-list"),
            say("step-remove"),
        ),
    )


async def remove(query: TopicQuery, context: Context, desk: Desk) -> BoardGone:
    """Want a board of this channel taken down."""
    server = server_of(desk, _REMOVE)
    gone = desk.channel is not None and await desk.store.boards.leave(
        server, desk.channel, query.topic, desk.by
    )
    if not gone:
        raise unable(_REMOVE, Say("board-no-such"), example="board list")
    return BoardGone(query.topic)


def tell_removed(facts: BoardGone) -> Layered:
    """Tell that a board is taken down."""
    say = Says("board", facts)
    return Layered(
        command=_REMOVE,
        title=say("title"),
        brief=Brief(head=say("removed")),
        steps=(say("step-left"),),
    )


BOARD_PREVIEW = Command(
    name="board preview",
    query=BoardQuery,
    stored=preview,
    tell=tell_preview,
    examples=(
        "board preview topic:distances animal:bearded dragon",
        "board preview topic:first day",
    ),
    who="moderator",
    guide=("for-moderators",),
)

BOARD_POST = Command(
    name="board post",
    query=BoardQuery,
    stored=post,
    tell=tell_post,
    examples=(
        "board post topic:temperatures animal:bearded dragon",
        f"board post topic:distances {_TWO_ANIMALS}",
    ),
    who="moderator",
    guide=("for-moderators",),
)

BOARD_REMOVE = Command(
    name="board remove",
    deletes=True,
    query=TopicQuery,
    stored=remove,
    tell=tell_removed,
    examples=("board remove topic:temperatures",),
    who="moderator",
)
