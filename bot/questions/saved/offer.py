"""A reading given to the group, and taken back. Words: ``words/<language>/offer.ftl``.

What would be kept is shown first, and nothing is kept before the keeper says yes to it.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.asker import today
from bot.command import Command
from bot.desk import Desk
from bot.facts import Say, Says
from bot.language.words import join_line
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.queries.pool import OfferQuery, WithdrawQuery
from bot.questions.saved.offered import given_of, offered_of
from bot.questions.saved.pooled_told import PooledTold, pooled_told
from bot.questions.saved.unable import server_of, unable
from bot.saved.pool import PooledReading

__all__ = ["MINE_OFFER", "MINE_WITHDRAW", "offer", "tell_offer", "tell_withdrawn", "withdraw"]

_OFFER, _WITHDRAW = "mine offer", "mine withdraw"
_MOST_LISTED = 20
_EXAMPLE = "mine offer readings:4.2 at 12 in tube:12% reflector:polished screen:none length:34in"


@dataclass(frozen=True, slots=True)
class Offering:
    """What would be kept for the group; ``again`` is the question with the keeper's yes."""

    readings: tuple[PooledTold, ...]
    again: str

    @property
    def count(self) -> int:
        """Return how many there are."""
        return len(self.readings)


@dataclass(frozen=True, slots=True)
class ReadingsGiven:
    """What is kept for the group now; ``new`` of them were not before."""

    readings: tuple[PooledTold, ...]
    new: int

    @property
    def count(self) -> int:
        """Return how many there are."""
        return len(self.readings)


async def offer(query: OfferQuery, context: Context, desk: Desk) -> Offering | ReadingsGiven:
    """Show what would be kept for the group, or keep it once the keeper is sure."""
    server = server_of(desk, _OFFER)
    readings, enclosure = await offered_of(query, desk, await today(desk))
    told = tuple(map(pooled_told, readings))
    if query.sure != "yes":
        day = str(readings[0].day)
        named = {"name": enclosure, "day": day} if enclosure else {}
        return Offering(told, join_line(_OFFER, {**given_of(query), **named, "sure": "yes"}))
    new = await desk.store.pool.give(server, desk.keeper, readings, enclosure)
    return ReadingsGiven(told, new)


def tell_offer(facts: Offering | ReadingsGiven) -> Layered:
    """Ask plainly whether the group may have it, or tell that it has it."""
    say = Says("offer", facts)
    if isinstance(facts, Offering):
        return Layered(
            command=_OFFER,
            title=say("title"),
            brief=Brief(head=say("ask"), range=(say("what"), say("back"))),
            steps=(say("step-yes"), say("step-no")),
            numbers=tuple(_rows(facts.readings)),
            why=(say("why"),),
            lines=(facts.again,),
            guide=("a-groups-readings",),
        )
    return Layered(
        command=_OFFER,
        title=say("given-title"),
        brief=Brief(head=say("given"), range=(say("what"), say("back"))),
        steps=(say("step-group"), say("step-withdraw")),
        numbers=tuple(_rows(facts.readings)),
        guide=("a-groups-readings",),
    )


def _rows(readings: tuple[PooledTold, ...]) -> Iterator[Row]:
    for one in readings:
        say = Says("offer", one)
        yield Row(say("label-read"), say("read"))
    say = Says("offer", readings[0])
    yield Row(say("label-lamp"), readings[0].lamp)
    yield Row(say("label-between"), say("between"))
    yield Row(say("label-age"), say("age"))


@dataclass(frozen=True, slots=True)
class NumberedReading:
    """A reading with its number."""

    number: int
    read: PooledTold


@dataclass(frozen=True, slots=True)
class GivenShown:
    """What the keeper gave to this group, the newest first."""

    readings: tuple[NumberedReading, ...]
    count: int


@dataclass(frozen=True, slots=True)
class Withdrawn:
    """How many readings were taken back, and how many are still there."""

    gone: int
    left: int


async def withdraw(query: WithdrawQuery, context: Context, desk: Desk) -> GivenShown | Withdrawn:
    """List what the keeper gave to this group, or take some or all of it back."""
    server = server_of(desk, _WITHDRAW)
    kept = await desk.store.pool.of_keeper(server, desk.keeper)
    if query.reading is None:
        return GivenShown(_numbered(kept), len(kept))
    if query.reading and query.reading not in kept:
        near = next(iter(kept), 0)
        example = f"{_WITHDRAW} reading:{near or 'all'}"
        raise unable(_WITHDRAW, Say("offer-no-such"), example=example, option="reading")
    gone = await desk.store.pool.take_back(server, desk.keeper, query.reading or None)
    return Withdrawn(gone, len(kept) - gone)


def _numbered(kept: dict[int, PooledReading]) -> tuple[NumberedReading, ...]:
    newest = sorted(kept, reverse=True)[:_MOST_LISTED]
    return tuple(NumberedReading(number, pooled_told(kept[number])) for number in newest)


def tell_withdrawn(facts: GivenShown | Withdrawn) -> Layered:
    """Tell what the group has of the keeper, or what it has no longer."""
    say = Says("offer", facts)
    if isinstance(facts, Withdrawn):
        return Layered(
            command=_WITHDRAW,
            title=say("gone-title"),
            brief=Brief(head=say("gone")),
            steps=(say("step-list"),) if facts.left else (),
            why=(say("backups"),),
        )
    return Layered(
        command=_WITHDRAW,
        title=say("list-title"),
        brief=Brief(head=say("list")),
        steps=(say("step-one"), say("step-all")) if facts.count else (say("step-first"),),
        numbers=tuple(
            Row(Say("offer-number", one), Say("offer-line", one.read)) for one in facts.readings
        ),
    )


MINE_OFFER = Command(
    name=_OFFER,
    query=OfferQuery,
    stored=offer,
    tell=tell_offer,
    examples=(
        _EXAMPLE,
        f"{_EXAMPLE} sure:yes",
    ),
    guide=("a-groups-readings",),
)

MINE_WITHDRAW = Command(
    name=_WITHDRAW,
    deletes=True,
    query=WithdrawQuery,
    stored=withdraw,
    tell=tell_withdrawn,
    examples=("mine withdraw", "mine withdraw reading:all"),
)
