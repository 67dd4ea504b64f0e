"""First lamps that are not told: too far away, too hot a box, too warm a room."""

from collections.abc import Iterator
from dataclasses import dataclass
from math import sqrt

from bot.facts import Diff, Length, Power, Say, Says, Temp, degrees, kelvins, metres, watts
from bot.language.shown import shown
from bot.layered import Brief, Care, Layered, Row, Weight
from bot.preferences import Context
from bot.queries.heat import WattsQuery
from bot.questions.heat.shared import AFTER_A_CHANGE, HEAT_CARE, Box
from bot.questions.heat.warmth import SurfaceAim, WantedHeat, aim_rows
from bot.questions.heat.watts_box import Boxed
from bot.questions.shared import limits_for
from bot.refusal import RefusedError
from calc.heat.first_wattage import LEAST_RISE_K, FirstWattage
from calc.heat.wattages import steps_sold
from calc.limits import Met, passed

__all__ = [
    "BoxTooHot",
    "RoomTooWarm",
    "TooFar",
    "box_too_hot",
    "check_the_room_is_cooler",
    "refusal_told",
    "too_far",
]


@dataclass(frozen=True, slots=True)
class TooFar:
    """A distance from which no lamp that is sold is likely to be enough."""

    aim: SurfaceAim
    aimed: Temp
    distance: Length
    near: Length
    found: Power
    strongest: Power
    shape_told: bool
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class BoxTooHot:
    """A box whose cool end such a lamp would take past a limit."""

    box: Box
    larger: Power
    cool: Temp
    found: Power


@dataclass(frozen=True, slots=True)
class RoomTooWarm:
    """A room nearly as warm as what is wanted of the surface."""

    room: str
    least: Diff
    aimed: Temp
    example: str


def check_the_room_is_cooler(query: WattsQuery, wanted: WantedHeat) -> None:
    """Refuse a room that is nearly as warm as what is wanted of the surface."""
    if wanted.aim_c - query.room.low >= LEAST_RISE_K:
        return
    room_f = round((wanted.aim_c - LEAST_RISE_K - 1.0) * 1.8 + 32.0)
    facts = RoomTooWarm(
        shown(query.room.text), kelvins(LEAST_RISE_K), wanted.told.aim, f"room:{room_f}F"
    )
    raise RefusedError(facts, _room_told, "room")


def too_far(
    query: WattsQuery, wanted: WantedHeat, found: FirstWattage, sources: tuple[str, ...]
) -> TooFar:
    """Return that the lamp would be too far away, and how near it has to be."""
    strongest = steps_sold()[-1]
    # Heat falls about with the square of the distance: from here most lamps sold would do.
    near_m = query.distance.low * sqrt(strongest / found.watts.high)
    return TooFar(
        aim=wanted.told,
        aimed=wanted.told.aim,
        distance=metres(query.distance.low),
        near=metres(near_m),
        found=watts(found.watts),
        strongest=watts(strongest),
        shape_told="lamp" in query.model_fields_set,
        sources=sources,
    )


def box_too_hot(
    box: Boxed, found: FirstWattage, query: WattsQuery, context: Context
) -> BoxTooHot | None:
    """Return that no such lamp may go into this box, where its cool end passes a limit."""
    held = box.held_c(found, query.room.low)
    if not passed(limits_for(query.animal, context), Met(coolest_air_c=held.best)):
        return None
    if held.best < query.room.low + 1.0:
        # It is the room that is past the limit, and that is said as what was told.
        return None
    return BoxTooHot(box.told, watts(max(found.buy_w)), degrees(held), watts(found.watts))


def refusal_told(facts: TooFar | BoxTooHot) -> Layered:
    """Tell why there is no lamp, and what would work."""
    return _too_far_told(facts) if isinstance(facts, TooFar) else _box_told(facts)


def _too_far_told(facts: TooFar) -> Layered:
    say = Says("watts", facts)
    return Layered(
        command="watts",
        status="problem",
        title=say("far-title"),
        brief=Brief(head=say("far"), range=(say("far-range"),), steps=(say("do-near"),)),
        steps=(say("step-near"), say("step-ask-near"), AFTER_A_CHANGE),
        numbers=tuple(_far_numbers(facts, say)),
        why=(say("why-wide"), *facts.aim.others),
        care=(Care(say("care-label"), say("care-label-short"), Weight.STEP), *HEAT_CARE),
        values=(("lamp_power", facts.found), ("basking_surface_wanted", facts.aimed)),
        guide=("dimmers-and-wattage", "basking-lamps", "the-basking-spot"),
        sources=facts.sources,
    )


def _far_numbers(facts: TooFar, say: Says) -> Iterator[Row]:
    yield from aim_rows(facts.aim)
    yield Row(say("label-found"), say("found-told"))
    if not facts.shape_told:
        yield Row(say("label-shape"), say("shape-told"))


def _box_told(facts: BoxTooHot) -> Layered:
    say = Says("watts", facts)
    return Layered(
        command="watts",
        status="problem",
        title=say("box-title"),
        brief=Brief(head=say("box-hot"), range=(say("box-why"),), steps=(say("do-box"),)),
        steps=(say("step-box"), AFTER_A_CHANGE),
        numbers=(Row(Say("box-label"), Say("box-told", facts.box)),),
        care=HEAT_CARE,
        values=(("lamp_power", facts.found), ("air_held", facts.cool)),
        guide=("the-cool-end", "warm-end-and-cool-end"),
        sources=("enclosure_model", "lamp_beams", "lamp_steps"),
    )


def _room_told(facts: RoomTooWarm) -> Layered:
    say = Says("watts", facts)
    return Layered(
        command="watts",
        status="problem",
        title=say("room-title"),
        brief=Brief(head=say("room-warm"), range=(say("room-why"),), steps=(say("do-room"),)),
        steps=(say("do-room"), say("step-room")),
        care=HEAT_CARE,
        guide=("dimmers-and-wattage",),
    )
