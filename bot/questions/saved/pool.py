"""What the readings of a group show, for all of it; and its readings, for its moderators.

Words: ``words/<language>/pool.ftl``.
"""

import asyncio
from collections.abc import Iterator
from dataclasses import dataclass

from bot.command import Command
from bot.desk import Desk
from bot.facts import Figure, Say, Says
from bot.layered import Brief, Layered, Row, Table
from bot.pooled import reads_of
from bot.preferences import Context
from bot.queries.pool import GroupQuery, ReadingsQuery
from bot.questions.saved.pool_facts import By, PoolLine, PoolShown, pool_shown
from bot.questions.saved.pool_picture import pool_picture
from bot.questions.saved.pooled_told import PooledTold, pooled_told
from bot.questions.saved.unable import server_of, unable
from bot.reply import Picture
from calc.uv.pool_read import far_reads

__all__ = ["MINE_GROUP", "SERVER_READINGS", "group", "readings", "tell_group", "tell_readings"]

_GROUP, _READINGS = "mine group", "server readings"
_GUIDE = ("a-groups-readings",)
_SOURCES = ("group_readings", "uv_pool_judgement", "gelman2013", "amc1989_robust")
_MOST_LISTED = 15


async def group(query: GroupQuery, context: Context, desk: Desk) -> PoolShown:
    """Work out what the readings of the group show."""
    server = server_of(desk, _GROUP)
    shared = await desk.store.pool.of_group(server)
    reads = reads_of(shared, desk.now.date())
    return await asyncio.to_thread(pool_shown, shared, reads, context.own)


def tell_group(facts: PoolShown) -> Layered:
    """Tell what the readings show, the classes of tube first."""
    say = Says("pool", facts)
    shown = tuple(line for line in facts.lines if line.middle is not None)
    return Layered(
        command=_GROUP,
        title=say("title"),
        brief=Brief(head=say("head"), range=tuple(_brief(facts, say))),
        steps=(say("step-give"), *((say("step-back"),) if facts.count else ())),
        numbers=tuple(_numbers(facts, say)),
        table=_table(shown, say) if shown else None,
        why=tuple(_why(facts, say)),
        values=tuple(_values(shown)),
        guide=_GUIDE,
        sources=_SOURCES if facts.count else (),
        picture=(lambda teller: Picture.later(pool_picture, facts, teller)) if shown else None,
    )


def _brief(facts: PoolShown, say: Says) -> Iterator[Say]:
    if facts.first is not None:
        yield Say("pool-first", facts.first)
    if facts.count:
        yield say("counting")
    else:
        yield say("none")


def _numbers(facts: PoolShown, say: Says) -> Iterator[Row]:
    if not facts.count:
        return
    yield Row(say("label-newest"), say("newest"))
    for line in facts.lines:
        if line.middle is None:
            yield Row(line.name, Say("pool-too-few", line))
    for kind in facts.kinds:
        yield Row(kind.name, Say("pool-kind" if kind.there else "pool-kind-too-few", kind))
    for one in facts.fading:
        label = say("label-fading") if one.of is None else Say("pool-label-fading-of", one)
        yield Row(label, Say("pool-fading" if one.loss else "pool-fading-too-few", one))


def _table(shown: tuple[PoolLine, ...], say: Says) -> Table:
    return Table(
        (say("column-kind"), say("column-keepers"), say("column-middle"), say("column-known")),
        tuple(
            (
                line.name,
                Say("pool-cell-keepers", line),
                Say("pool-cell-middle", line),
                Say("pool-cell-known" if line.known else "pool-cell-none", line),
            )
            for line in shown
        ),
    )


def _why(facts: PoolShown, say: Says) -> Iterator[Say]:
    if facts.count:
        yield say("why-expected")
        yield say("why-known")
        yield say("why-person")


def _values(shown: tuple[PoolLine, ...]) -> Iterator[tuple[str, Figure | None]]:
    for line in shown:
        if line.by is By.OWN:
            continue
        yield f"{line.by.name.lower()}_{line.key}_median", line.middle
        yield f"{line.by.name.lower()}_{line.key}_spread", line.spread
        yield f"{line.by.name.lower()}_{line.key}", line.known
        yield f"{line.by.name.lower()}_{line.key}_one", line.of_one


@dataclass(frozen=True, slots=True)
class ListedReading:
    """A reading of the group with its number; ``far`` from what is expected of its kind."""

    number: int
    read: PooledTold
    far: bool


@dataclass(frozen=True, slots=True)
class ReadingsShown:
    """The readings of a group, those that look wrong first; ``gone`` of them just cleared."""

    listed: tuple[ListedReading, ...]
    count: int
    odd: int
    gone: int | None

    @property
    def more(self) -> int:
        """Return how many there are beside those that are listed."""
        return self.count - len(self.listed)


async def readings(query: ReadingsQuery, context: Context, desk: Desk) -> ReadingsShown:
    """List the readings of the group, or clear one of them."""
    server = server_of(desk, _READINGS)
    if query.clear is not None and not await desk.store.pool.clear(server, query.clear):
        raise unable(_READINGS, Say("pool-no-such"), example=_READINGS)
    shared = await desk.store.pool.of_group(server)
    reads = reads_of(shared, desk.now.date())
    far = await asyncio.to_thread(far_reads, reads) if reads else frozenset()
    ordered = sorted(shared, key=lambda one: (one.number not in far, -one.number))
    return ReadingsShown(
        listed=tuple(
            ListedReading(one.number, pooled_told(one.reading), one.number in far)
            for one in ordered[:_MOST_LISTED]
        ),
        count=len(shared),
        odd=len(far),
        gone=query.clear,
    )


def tell_readings(facts: ReadingsShown) -> Layered:
    """Tell what keepers gave, with what looks wrong first and marked."""
    say = Says("pool", facts)
    head = say("cleared") if facts.gone is not None else say("list")
    return Layered(
        command=_READINGS,
        title=say("list-title"),
        brief=Brief(head=head, range=(say("far"),) if facts.odd else ()),
        steps=(say("step-clear"), say("step-all")) if facts.count else (say("step-tell"),),
        numbers=tuple(
            Row(Say("pool-number", one), Say("offer-line", one.read)) for one in facts.listed
        )
        + (() if facts.more <= 0 else (Row(say("label-more"), say("more")),)),
        why=(say("why-far"),) if facts.odd else (),
        guide=("for-moderators", *_GUIDE),
    )


MINE_GROUP = Command(
    name=_GROUP,
    query=GroupQuery,
    stored=group,
    tell=tell_group,
    examples=("mine group",),
    guide=_GUIDE,
)

SERVER_READINGS = Command(
    name=_READINGS,
    deletes=True,
    query=ReadingsQuery,
    stored=readings,
    tell=tell_readings,
    examples=("server readings",),
    who="moderator",
    guide=("for-moderators", *_GUIDE),
)
