"""Lamps in stock and in use: a spare kept, hung over an enclosure, taken away; all with their age.

Words: ``words/<language>/stock.ftl``.
"""

from dataclasses import dataclass
from datetime import date
from typing import Any

from pydantic import ValidationError

from bot.asker import today
from bot.command import Command
from bot.desk import Desk
from bot.facts import Say, Says
from bot.language.lamps import OtherLamp
from bot.language.uv_lamps import UvLamp
from bot.layered import Brief, Layered, Table
from bot.preferences import Context
from bot.queries.mine import ListQuery, SpareQuery
from bot.queries.typed import typed
from bot.questions.saved.boxes import is_worn
from bot.questions.saved.enclosures import enclosure_asked
from bot.questions.saved.reading import day_of
from bot.questions.saved.refused import Why, refused
from bot.questions.saved.setup import setup_told
from bot.questions.uv.length_asked import tube_length_m
from bot.refusal import RefusedError
from bot.saved.keeper import Setup, Spare
from bot.saved.values import name_key

__all__ = [
    "MINE_LAMPS",
    "MINE_SPARE",
    "LampLine",
    "LampsKept",
    "SpareTold",
    "lamps",
    "spare",
    "tell_lamps",
    "tell_spare",
]


@dataclass(frozen=True, slots=True)
class SpareTold:
    """A spare lamp that was kept, hung over an enclosure (``box``), or taken away (``gone``)."""

    name: str
    lamp: Say | None
    bought: date | None
    box: str | None = None
    gone: bool = False


@dataclass(frozen=True, slots=True)
class LampLine:
    """A lamp in the list: over which enclosure and since when, or in stock and when bought."""

    name: str
    lamp: Say
    used: bool
    since: date | None
    due: bool


@dataclass(frozen=True, slots=True)
class LampsKept:
    """All lamps, those in use first, the oldest first."""

    lines: tuple[LampLine, ...]

    @property
    def used(self) -> int:
        """Return how many are in use."""
        return sum(line.used for line in self.lines)

    @property
    def spares(self) -> int:
        """Return how many are in stock."""
        return len(self.lines) - self.used

    @property
    def worn(self) -> int:
        """Return for how many it is time by their age alone."""
        return sum(line.due for line in self.lines)


def _lamp_said(setup: Setup) -> Say | None:
    told = setup_told(setup)
    return None if told.lamp is None else Say("home-told-lamp", told)


def _as_setup(kept: Spare) -> Setup:
    kind = None if kept.lamp is UvLamp.T5_HO and kept.tube_percent else kept.lamp
    return Setup(lamp=kind, tube_percent=kept.tube_percent, tube_length_m=kept.tube_length_m)


async def spare(query: SpareQuery, context: Context, desk: Desk) -> SpareTold:
    """Keep a spare lamp, hang it over an enclosure, or take it away."""
    if query.gone == "yes" or query.into:
        return await _out_of_stock(query, desk)
    now = await today(desk)
    bought = day_of("mine spare", query.bought, now, "bought") if query.bought else None
    try:
        kept = Spare(name=query.name, bought_on=bought, **_lamp(query))
    except ValidationError as error:
        option = "length" if "tube_length_m" in str(error.errors()[0]["loc"]) else "tube"
        example = f"mine spare name:{query.name} tube:12% length:22in"
        value = query.length if option == "length" else query.tube
        raise refused("mine spare", Why.CANNOT_BE, example, option, typed(value)) from error
    await desk.store.spares.put(desk.keeper, kept)
    return SpareTold(kept.name, _lamp_said(_as_setup(kept)), bought)


def _lamp(query: SpareQuery) -> dict[str, Any]:
    told: dict[str, Any] = {"lamp": query.lamp or UvLamp.T5_HO}
    if isinstance(query.tube, OtherLamp):
        told = {"lamp": query.tube.kind, "tube_percent": query.tube.number}
    elif query.tube is not None:
        told["tube_percent"] = query.tube.percent
    if query.length is not None:
        told["tube_length_m"] = tube_length_m(query.length)
    return told


async def _out_of_stock(query: SpareQuery, desk: Desk) -> SpareTold:
    stock = await desk.store.spares.all(desk.keeper)
    kept = next((one for one in stock if name_key(one.name) == name_key(query.name)), None)
    if kept is None:
        raise _no_such(query.name, stock)
    lamp = _lamp_said(_as_setup(kept))
    if query.gone == "yes":
        await desk.store.spares.remove(desk.keeper, kept.name)
        return SpareTold(kept.name, lamp, kept.bought_on, gone=True)
    box = await enclosure_asked(desk, query.into, "mine spare")
    setup = _as_setup(kept)
    changed: dict[str, Any] = {
        "lamp": setup.lamp,
        "tube_percent": kept.tube_percent,
        "tube_length_m": kept.tube_length_m or box.setup.tube_length_m,
        "tube_since": await today(desk),
    }
    await desk.store.enclosures.put(desk.keeper, box.name, changed)
    await desk.store.spares.remove(desk.keeper, kept.name)
    await desk.store.cases.moved(desk.keeper, box.name, desk.now)
    return SpareTold(kept.name, lamp, kept.bought_on, box=box.name)


def _no_such(name: str, stock: tuple[Spare, ...]) -> RefusedError:
    known = tuple(one.name for one in stock)
    save = f"mine spare name:{name} tube:12%"
    example = f"mine spare name:{known[0]}" if known else save
    return refused("mine spare", Why.OTHER_LAMP, example, "name", name, known)


def tell_spare(facts: SpareTold) -> Layered:
    """Tell where the lamp is now."""
    say = Says("stock", facts)
    measured = (say("step-measure"),) if facts.box else ()
    return Layered(
        command="mine spare",
        title=say("title"),
        brief=Brief(head=say("head"), range=(*([say("lamp")] if facts.lamp else []), *measured)),
        steps=(*measured, say("step-all")),
        guide=("when-a-lamp-is-worn-out",),
    )


async def lamps(query: ListQuery, context: Context, desk: Desk) -> LampsKept:
    """Find all lamps, in use and in stock; the query has no options."""
    return LampsKept(
        (
            *sorted(
                (
                    LampLine(box.name, lamp, True, since, worn)
                    for box in await desk.store.enclosures.all(desk.keeper)
                    for lamp in [_lamp_said(box.setup)]
                    for since in [box.setup.tube_since]
                    for worn in [is_worn(since, box.setup.lamp, context.day)]
                    if lamp is not None
                ),
                key=lambda line: line.since or date.max,
            ),
            *(
                LampLine(one.name, lamp, False, one.bought_on, False)
                for one in await desk.store.spares.all(desk.keeper)
                for lamp in [_lamp_said(_as_setup(one))]
                if lamp is not None
            ),
        )
    )


def tell_lamps(facts: LampsKept) -> Layered:
    """Tell how many there are, and which is due."""
    say = Says("stock", facts)
    return Layered(
        command="mine lamps",
        title=say("list-title"),
        brief=Brief(head=say("list-head"), range=(say("worn"),) if facts.worn else ()),
        steps=(say("list-step-keep"), say("list-step-use")),
        table=Table(
            (say("column-where"), say("column-lamp"), say("column-age")),
            tuple(map(_cells, facts.lines)),
        )
        if facts.lines
        else None,
        guide=("when-a-lamp-is-worn-out",),
    )


def _cells(line: LampLine) -> tuple[Say, ...]:
    say = Says("stock", line)
    return say("where"), line.lamp, say("age")


MINE_SPARE = Command(
    name="mine spare",
    query=SpareQuery,
    stored=spare,
    tell=tell_spare,
    examples=(
        "mine spare name:Spare tube tube:12% length:22in bought:2026-01-10",
        "mine spare name:Spare tube into:Pebble's box",
    ),
    guide=("when-a-lamp-is-worn-out",),
)

MINE_LAMPS = Command(
    name="mine lamps",
    query=ListQuery,
    stored=lamps,
    tell=tell_lamps,
    examples=("mine lamps",),
    guide=("when-a-lamp-is-worn-out",),
)
