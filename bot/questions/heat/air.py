"""Watts to hold the air of an enclosure, and where the warmth goes. Words: ``air.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.command import Command
from bot.facts import Name, Power, Say, Says, Share, Temp, degrees, share, watts
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.queries.heat import AirQuery
from bot.questions.animals import animal_asked
from bot.questions.heat.air_lamp import AirLamp, Covers, held_by, lamp_told, overheats
from bot.questions.heat.pictured import pictured
from bot.questions.heat.seen import Leaves, Pictured, Seen
from bot.questions.heat.shared import (
    AFTER_A_CHANGE,
    HEAT_CARE,
    WARM_THE_ROOM,
    Box,
    aimed,
    box_asked,
    box_told,
    has_best,
)
from bot.questions.heat.warmth import air_past, air_unknown
from bot.questions.shared import animal_name, known_by, limits_for
from bot.reply import Alarm
from calc.animal import Subject, Target
from calc.heat.box import HeatNeed, Spot, watts_to_hold
from calc.heat.enclosure import Enclosure, Lid
from calc.heat.held import judge_held
from calc.heat.wattages import steps_sold
from calc.judgement import Judged
from calc.limits import Limits
from calc.quantities import Quantity
from calc.uncertainty import Estimate

__all__ = ["AIR", "AirHeat", "AirLamp", "Covers", "air", "tell"]

_SOURCES = ("enclosure_model", "ashrae_films", "en12524")
_LID_SOURCE = {Lid.SOLID: "ashrae_stack"}
# More than this share of what the walls lose is worth closing some mesh for.
_LEAKS = 0.3


@dataclass(frozen=True, slots=True)
class AirHeat:
    """What it takes to hold the air of an enclosure; ``asked``: that air was told as wanted."""

    aim: Temp
    target: Temp
    has_best: bool
    asked: bool
    animal: Name | None
    known: Say | None
    box: Box
    room: Temp
    need: Power
    walls: Power
    walls_share: Share
    leaving: Power
    leaving_share: Share
    warm: Temp
    no_heat: bool
    too_much: bool
    leaks: bool
    lamp: AirLamp | None
    alarms: tuple[Alarm, ...]
    sources: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class _Wish:
    """The air that is worked towards, whose it is and how it is known."""

    target: Target
    animal: Name | None = None
    known: Say | None = None


def air(query: AirQuery, context: Context) -> AirHeat:
    """Work out the watts, the two ways the warmth leaves, and whether the lamp is enough."""
    enclosure = box_asked(query.enclosure, query.material, query.lid)
    limits = limits_for(query.animal, context)
    wish = _wished(query, limits, context)
    target, room_c = wish.target, query.room.low
    need = watts_to_hold(enclosure, target.aim, room_c, Spot.WARM_END)
    total, lost = need.total_w, need.walls_w + need.air_w
    held = None if query.watts is None else held_by(query, enclosure)
    judged = None if held is None else judge_held(held.cool_c, target, limits)
    alarms = () if held is None else overheats(held, judged, limits)
    factor = 1.0 if total.best == 0.0 else total.high / total.best
    box = box_told(query.enclosure, query.material, query.lid, query.model_fields_set)
    assert box is not None
    return AirHeat(
        aim=degrees(target.aim),
        target=aimed(target),
        has_best=has_best(target),
        asked=query.want is not None,
        animal=wish.animal,
        known=wish.known,
        box=box,
        room=degrees(room_c),
        need=watts(total),
        walls=watts(need.walls_w, (need.walls_w / factor, need.walls_w * factor)),
        walls_share=share(need.walls_w / lost if lost else 0.0),
        leaving=watts(need.air_w, (need.air_w / factor, need.air_w * factor)),
        leaving_share=share(need.air_w / lost if lost else 0.0),
        warm=degrees(need.warm_c),
        no_heat=total.best == 0.0,
        too_much=_wants_room(enclosure, total, judged),
        leaks=_leaks(enclosure, need),
        lamp=None if held is None else lamp_told(query, held, judged, harms=bool(alarms)),
        alarms=alarms,
        sources=(
            *(() if query.want is not None else (target.source,)),
            *_SOURCES,
            _LID_SOURCE.get(enclosure.lid, "epstein1988"),
            *(() if held is None else ("lamp_split",)),
        ),
    )


def _wants_room(enclosure: Enclosure, total: Estimate, judged: Judged | None) -> bool:
    """Say whether the room is warmed and not the box: for more than a lamp, and behind no wall."""
    enough = judged is not None and judged.is_fine
    in_vain = enclosure.is_open and total.best > 0.0
    return not enough and (in_vain or total.best > steps_sold()[-1])


def _leaks(enclosure: Enclosure, need: HeatNeed) -> bool:
    may_close = not enclosure.is_open and enclosure.lid is not Lid.SOLID
    return may_close and need.air_w > _LEAKS * need.walls_w


def _wished(query: AirQuery, limits: Limits, context: Context) -> _Wish:
    """Return the air that was asked for, or else the animal's own."""
    is_named = bool(query.animal.strip() or context.default_animal)
    if query.want is not None:
        caution = limits.caution_c
        if caution is not None and query.want.high > caution.value:
            whose = animal_asked(query.animal, context) if is_named else None
            raise air_past("air", query.want, caution.value, whose, context)
        return _Wish(Target(query.want.low, None, query.want.high, "common_practice"))
    animal = animal_asked(query.animal, context)
    target = animal.cool_air_c
    if target is None:
        raise air_unknown("air", animal)
    known = known_by(animal, Subject.COOL_AIR, target, context.own)
    return _Wish(target, animal_name(animal), known)


def tell(facts: AirHeat) -> Layered:
    """Tell the watts, or whether the lamp is enough, then what to do first."""
    say = Says("air", facts)
    return Layered(
        command="air",
        title=say("title"),
        brief=_brief(facts, say),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        why=(*([say("why-open")] if facts.box.is_open else []), say("why-range"), say("why-ends")),
        care=HEAT_CARE,
        values=(
            ("power", facts.need),
            ("through_walls", facts.walls),
            ("with_air", facts.leaving),
            ("air_held", facts.lamp.held if facts.lamp else None),
            ("warm_air_held", facts.lamp.warm_held if facts.lamp else None),
        ),
        guide=("the-cool-end", "warm-end-and-cool-end", "fire-and-electrical-safety"),
        sources=facts.sources,
        alarms=facts.alarms,
        picture=pictured(_seen(facts, _brief(facts, say).head)),
    )


def _seen(facts: AirHeat, head: Say) -> Pictured:
    say = Says("air", facts)
    cool = Seen(
        Quantity.COOL_AIR,
        Say("gauge-place-cool_air"),
        say("picture-cool"),
        ends=(facts.target.low, facts.target.high),
    )
    warm = Seen(
        Quantity.WARM_AIR,
        Say("gauge-place-warm_air"),
        say("picture-warm"),
        met=(facts.warm.low, facts.warm.high),
    )
    leaves = None if facts.no_heat else Leaves(say("picture-walls"), say("picture-leaving"))
    return Pictured(say("title"), head, (cool, warm), facts.animal, leaves=leaves)


def _brief(facts: AirHeat, say: Says) -> Brief:
    lamp = facts.lamp
    if facts.alarms and lamp is not None:
        told = (Say("air-harms-why", lamp),)
        return Brief(head=_lamp_head(lamp), range=told, steps=(say("do-off"),))
    if facts.no_heat:
        return Brief(head=say("none"), range=(say("none-why"),), steps=(say("do-cool"),))
    assumed = [Say("air-assumed", lamp)] if lamp is not None and not lamp.place_told else []
    return Brief(
        head=say("need") if lamp is None else _lamp_head(lamp),
        range=(say("range" if lamp is None else "takes"),),
        assumed=tuple(assumed),
        steps=tuple(_first_steps(facts, say)),
    )


def _first_steps(facts: AirHeat, say: Says) -> Iterator[Say]:
    warm = facts.lamp is not None and facts.lamp.covers in (Covers.MORE, Covers.MAYBE_MORE)
    if facts.too_much or not warm:
        yield say("do-room" if facts.too_much else "do-spot")
    yield say("do-measure")


def _lamp_head(lamp: AirLamp) -> Say:
    return Say.by("air-lamp", lamp.covers, lamp)


def _steps(facts: AirHeat, say: Says) -> Iterator[Say]:
    if facts.alarms:
        yield say("step-off")
        return
    if facts.no_heat:
        yield from (say("step-cool"), say("step-read-again"))
        return
    if facts.too_much:
        yield WARM_THE_ROOM
    yield from (say("step-spot"), say("step-measure"))
    if facts.box.is_open:
        yield say("step-cover")
    elif facts.lamp is None or facts.lamp.covers in (Covers.SHORT, Covers.JUST):
        yield say("step-second")
    if facts.leaks:
        yield say("step-leaks")
    yield AFTER_A_CHANGE


def _numbers(facts: AirHeat, say: Says) -> Iterator[Row]:
    yield Row(Say("box-label"), Say("box-told", facts.box))
    yield Row(say("label-aim"), say("asked" if facts.asked else "target"))
    if not (facts.no_heat or facts.alarms):
        yield Row(say("label-need"), say("need-told"))
    if not facts.no_heat:
        yield Row(say("label-lost"), say("lost"))
    yield Row(say("label-warm"), say("warm-told"))
    if facts.lamp is not None:
        yield Row(say("label-lamp"), Say("air-lamp-told", facts.lamp))


AIR = Command(
    name="air",
    query=AirQuery,
    facts=air,
    tell=tell,
    examples=(
        "air enclosure:48x24x24in material:wood lid:solid room:68F want:80F",
        (
            "air enclosure:90x45x45cm material:glass lid:full mesh room:20C watts:75W "
            "place:above animal:corn snake"
        ),
    ),
    guide=("the-cool-end", "warm-end-and-cool-end"),
)
