"""What becomes public: who may post it and how often, and what was. Words: ``public.ftl``."""

from dataclasses import dataclass
from datetime import date, time
from enum import Enum

from bot.command import Command
from bot.desk import Desk
from bot.facts import Say, Says
from bot.layered import Brief, Layered, Table
from bot.preferences import Context
from bot.queries.saved import Cleared
from bot.queries.server import PublicQuery, ShowQuery
from bot.questions.saved.lines import Lines, doer_said, people_in
from bot.questions.saved.unable import server_of, unable
from bot.saved.public import EVERYWHERE, IN_CHANNEL, Posted, Who, in_force

__all__ = ["SERVER_POSTS", "SERVER_PUBLIC", "posts", "public", "tell_posts", "tell_public"]

_PUBLIC, _POSTS = "server public", "server posts"
_EXAMPLE = f"{_PUBLIC} who:moderators where:everywhere"
_MOST_LINES = 20


class Place(Enum):
    """Where a rule holds."""

    HERE = "here"
    PARENT = "parent"
    EVERYWHERE = "everywhere"


@dataclass(frozen=True, slots=True)
class PublicSet:
    """Who may post publicly in a place from now on, and how often an hour."""

    place: Place
    who: Who
    most: int
    in_channel: int
    role: str | None


@dataclass(frozen=True, slots=True)
class PostLine:
    """A public post: when, by whom, in which channel, which question, how many were pinged."""

    day: date
    clock: time
    poster: Say
    channel: str
    command: str
    pings: int


@dataclass(frozen=True, slots=True)
class PostsShown(Lines):
    """The newest public posts."""

    lines: tuple[PostLine, ...]
    people: frozenset[int] = frozenset()
    channels: frozenset[int] = frozenset()


async def public(query: PublicQuery, context: Context, desk: Desk) -> PublicSet:
    """Set who may post publicly in a place, and how often."""
    server = server_of(desk, _PUBLIC)
    changed: dict[str, object] = {}
    if query.who is not None:
        changed["who"] = None if query.who == "usual" else Who(query.who)
    if query.most is not None:
        changed["most"] = None if isinstance(query.most, Cleared) else query.most
    if not changed and query.role is None:
        raise unable(_PUBLIC, Say("public-nothing"), example=_EXAMPLE)
    place = Place(query.where)
    number = _number(place, desk)
    known = (await desk.store.servers.settings(server)).helper_role
    role = known if query.role is None else None if isinstance(query.role, Cleared) else query.role
    if changed.get("who") is Who.HELPERS and role is None:
        raise unable(_PUBLIC, Say("public-no-role"), example=_EXAMPLE)
    if role != known:
        await desk.store.servers.change(server, desk.by, helper_role=role)
    if changed:
        await desk.store.public.change(server, number, desk.by, **changed)
    rules = await desk.store.public.rules(server)
    places = [number, desk.parent, EVERYWHERE] if place is Place.HERE else [number, EVERYWHERE]
    who, most = in_force(rules.get(one) for one in places if one is not None)
    return PublicSet(place, who, most, IN_CHANNEL * most, None if role is None else str(role))


def _number(place: Place, desk: Desk) -> int:
    if place is Place.EVERYWHERE:
        return EVERYWHERE
    if desk.channel is None:
        raise unable(_PUBLIC, Say("group-no-channel"), example=_EXAMPLE)
    if place is Place.HERE:
        return desk.channel
    if desk.parent is None:
        raise unable(_PUBLIC, Say("public-no-parent"), example=_EXAMPLE)
    return desk.parent


def tell_public(facts: PublicSet) -> Layered:
    """Tell who may post publicly in a place, and how often."""
    say = Says("public", facts)
    return Layered(
        command=_PUBLIC,
        title=say("title"),
        brief=Brief(head=say("who"), range=(say("most"),)),
        steps=(say("step-thread"), say("step-posts"), say("step-usual")),
        why=(say("where"), say("over"), say("mention")),
    )


async def posts(query: ShowQuery, context: Context, desk: Desk) -> PostsShown:
    """Return the newest public posts; the query has no options."""
    kept = await desk.store.public.newest(server_of(desk, _POSTS), _MOST_LINES)
    return PostsShown(
        lines=tuple(map(_line, kept)),
        people=people_in(post.who for post in kept),
        channels=frozenset(post.channel for post in kept),
    )


def _line(post: Posted) -> PostLine:
    return PostLine(
        day=post.at.date(),
        clock=post.at.time(),
        poster=doer_said(post.who),
        channel=str(post.channel),
        command=post.command,
        pings=post.pings,
    )


def tell_posts(facts: PostsShown) -> Layered:
    """Tell what was posted publicly, by whom."""
    say = Says("public", facts)
    columns = (
        say("column-when"),
        say("column-poster"),
        say("column-channel"),
        say("column-command"),
        say("column-pings"),
    )
    return Layered(
        command=_POSTS,
        title=say("posts-title"),
        brief=Brief(head=say("posts"), range=(say("no-text"),)),
        steps=(say("step-fewer"),),
        people=facts.people,
        channels=facts.channels,
        table=Table(
            columns,
            tuple(
                (
                    Say("public-when", line),
                    line.poster,
                    Say("public-channel", line),
                    Say("public-command", line),
                    Say("public-pings", line),
                )
                for line in facts.lines
            ),
        )
        if facts.lines
        else None,
    )


SERVER_PUBLIC = Command(
    name=_PUBLIC,
    query=PublicQuery,
    stored=public,
    tell=tell_public,
    examples=(_EXAMPLE, f"{_PUBLIC} most:10 where:everywhere"),
    form=True,
    who="moderator",
    guide=("for-moderators",),
)

SERVER_POSTS = Command(
    name=_POSTS,
    query=ShowQuery,
    stored=posts,
    tell=tell_posts,
    examples=(_POSTS,),
    who="moderator",
    guide=("for-moderators",),
)
