"""A first wattage: an honest, wide range, and what to buy. Words: ``watts.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto

from bot.command import Command
from bot.facts import Length, Power, Say, Says, Temp, degrees, metres, watts
from bot.layered import Brief, Care, Layered, Row, Weight
from bot.preferences import Context
from bot.queries.heat import WattsQuery
from bot.questions.heat.guards import guard_care
from bot.questions.heat.pictured import pictured
from bot.questions.heat.seen import Pictured, Seen
from bot.questions.heat.shared import AFTER_A_CHANGE, HEAT_CARE, LAMP_SHAPES, Box, Untold
from bot.questions.heat.warmth import SurfaceAim, WantedHeat, aim_doubts, aim_rows, surface_wanted
from bot.questions.heat.watts_box import Boxed, boxed
from bot.questions.heat.watts_refused import (
    BoxTooHot,
    TooFar,
    box_too_hot,
    check_the_room_is_cooler,
    refusal_told,
    too_far,
)
from calc.heat.basking import MOST_DIMMING
from calc.heat.first_wattage import FirstWattage, LampShape, first_wattage
from calc.heat.guards import Guard, guards
from calc.heat.wattages import steps_sold
from calc.quantities import Quantity

__all__ = ["WATTS", "Dims", "FirstLamp", "LampSize", "tell", "watts_first"]

_GUIDE = ("dimmers-and-wattage", "basking-lamps", "the-basking-spot")
_SOURCES = ("lamp_beams", "davis2008", "lamp_steps", "holder_mark", "fire_service_lamps")


class Dims(Enum):
    """What a dimmer is for beside the lamps to buy."""

    ALONE = auto()
    LARGER = auto()
    NONE = auto()


@dataclass(frozen=True, slots=True)
class LampSize:
    """A wattage that is sold."""

    size: Power


@dataclass(frozen=True, slots=True)
class FirstLamp:
    """The lamps to buy for a surface; ``smaller`` is None where only one fits."""

    shape: LampShape
    shape_told: bool
    distance: Length
    room: Temp
    aim: SurfaceAim
    aimed: Temp
    found: Power
    span: Power
    several: bool
    sizes: tuple[Say, ...]
    larger: Power
    smaller: Power | None
    dims: Dims
    holder: Power | None
    holder_short: bool
    tripped: tuple[Guard, ...]
    box: Box | None
    held: Temp | None
    sources: tuple[str, ...]


def watts_first(query: WattsQuery, context: Context) -> FirstLamp | TooFar | BoxTooHot:
    """Work out a range of wattages, snapped to what is sold, and what to buy."""
    shape = LAMP_SHAPES[query.lamp]
    wanted = surface_wanted("watts", query.want, query.animal, context)
    check_the_room_is_cooler(query, wanted)
    box = boxed(query)
    within = () if box is None else (box.enclosure, box.place)
    found = first_wattage(shape, query.room.low, wanted.aim_c, query.distance.low, *within)
    sources = (*wanted.sources, *_SOURCES)
    if found.watts.best > steps_sold()[-1]:
        return too_far(query, wanted, found, sources)
    if box is not None:
        hot = box_too_hot(box, found, query, context)
        if hot is not None:
            return hot
    return _first(query, wanted, found, box, sources)


def _first(
    query: WattsQuery,
    wanted: WantedHeat,
    found: FirstWattage,
    box: Boxed | None,
    sources: tuple[str, ...],
) -> FirstLamp:
    holder = None if query.holder is None else query.holder.low
    smaller, larger = min(found.buy_w), max(found.buy_w)
    return FirstLamp(
        shape=LAMP_SHAPES[query.lamp],
        shape_told="lamp" in query.model_fields_set,
        distance=metres(query.distance.low),
        room=degrees(query.room.low),
        aim=wanted.told,
        aimed=wanted.told.aim,
        found=watts(found.watts),
        span=watts(found.steps_w[0], (found.steps_w[0], found.steps_w[-1])),
        several=len(found.steps_w) > 1,
        sizes=tuple(Say("watts-size", LampSize(watts(step))) for step in found.steps_w),
        larger=watts(larger),
        smaller=watts(smaller) if len(found.buy_w) > 1 else None,
        dims=_dims(found),
        holder=None if holder is None else watts(holder),
        holder_short=holder is not None and larger > holder,
        tripped=guards(watts=larger, holder_mark_w=holder),
        box=None if box is None else box.told,
        held=None if box is None else degrees(box.held_c(found, query.room.low)),
        sources=(*sources, *(() if box is None else ("enclosure_model",))),
    )


def _dims(found: FirstWattage) -> Dims:
    if len(found.buy_w) == 1:
        return Dims.ALONE
    # Turned down to the smaller one, the larger must keep about four fifths of its power.
    spared = min(found.buy_w) >= (1.0 - MOST_DIMMING) * max(found.buy_w)
    return Dims.LARGER if spared else Dims.NONE


def tell(facts: FirstLamp | TooFar | BoxTooHot) -> Layered:
    """Tell the range and what to buy, or why there is no lamp for it."""
    return _told(facts) if isinstance(facts, FirstLamp) else refusal_told(facts)


def _told(facts: FirstLamp) -> Layered:
    say = Says("watts", facts)
    return Layered(
        command="watts",
        title=say("title"),
        brief=_brief(facts, say),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        why=(say("why-wide"), *facts.aim.others),
        care=(*_care(facts, say), *guard_care(facts.tripped), *HEAT_CARE),
        values=(
            ("lamp_power", facts.found),
            ("room", facts.room),
            ("basking_surface_wanted", facts.aimed),
        ),
        guide=_GUIDE,
        sources=facts.sources,
        picture=pictured(_seen(facts, _brief(facts, say).head)),
    )


def _care(facts: FirstLamp, say: Says) -> Iterator[Care]:
    if facts.shape is LampShape.NARROW:
        yield Care(say("care-narrow"), say("care-narrow-short"), Weight.STEP)


def _seen(facts: FirstLamp, head: Say) -> Pictured:
    say = Says("watts", facts)
    ends = (facts.aimed.low, facts.aimed.high)
    place = Seen(
        Quantity.BASKING_SURFACE, Say("gauge-place-basking_surface"), say("picture-aim"), ends=ends
    )
    return Pictured(say("title"), head, (place,), facts.aim.animal, facts.distance)


def _brief(facts: FirstLamp, say: Says) -> Brief:
    assumed = tuple(_assumed(facts, say))
    if facts.shape is LampShape.NARROW:
        told = (say("if-narrow"),)
        return Brief(say("narrow"), told, assumed, (say("do-flood"), *_holder_first(facts, say)))
    if facts.holder_short:
        told = (say("expect"),)
        return Brief(say("holder-short"), told, assumed, tuple(_holder_first(facts, say)))
    return Brief(say("expect"), (), assumed, (say("do-buy"), say("do-start")))


def _holder_first(facts: FirstLamp, say: Says) -> Iterator[Say]:
    if facts.holder_short:
        yield say("do-holder")


def _assumed(facts: FirstLamp, say: Says) -> Iterator[Say]:
    if not facts.shape_told:
        yield say("assumed-shape")
    if facts.box is not None and facts.box.untold is not Untold.NOTHING:
        yield Say("box-assumed", facts.box)
    yield from aim_doubts(facts.aim)


def _steps(facts: FirstLamp, say: Says) -> Iterator[Say]:
    if facts.shape is LampShape.NARROW:
        yield say("step-flood")
    if facts.holder_short:
        yield say("step-holder")
    yield say("step-buy")
    yield from (say("step-hang"), say("step-read"), AFTER_A_CHANGE)


def _numbers(facts: FirstLamp, say: Says) -> Iterator[Row]:
    yield Row(say("label-sizes"), say("sizes-told"))
    yield from aim_rows(facts.aim)
    if not facts.shape_told:
        yield Row(say("label-shape"), say("shape-told"))
    if facts.box is not None:
        yield Row(Say("box-label"), Say("box-told", facts.box))
    if facts.held is not None:
        yield Row(say("label-held"), say("held-told"))
    yield Row(say("label-found"), say("found-told"))


WATTS = Command(
    name="watts",
    query=WattsQuery,
    facts=watts_first,
    tell=tell,
    examples=(
        "watts room:70F want:103F distance:10in lamp:flood",
        "watts room:21C distance:30cm lamp:wide dome animal:bearded dragon",
    ),
    guide=("dimmers-and-wattage", "basking-lamps"),
)
