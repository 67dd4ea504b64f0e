"""Watts to hold the air of an enclosure, and where the warmth goes. Words: ``air.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto

from bot.command import Command
from bot.dangers.past_limits import alarms_past
from bot.facts import Name, Power, Say, Says, Share, Temp, degrees, share, watts
from bot.layered import Brief, Layered, Row
from bot.preferences import Context
from bot.queries.heat import AirQuery
from bot.questions.animals import animal_asked
from bot.questions.heat.shared import (
    AFTER_A_CHANGE,
    HEAT_CARE,
    LAMP_PLACES,
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
from calc.heat.basking import check_power
from calc.heat.box import MOST_RISE_K, Ends, HeatNeed, Spot, ends_held, watts_to_hold
from calc.heat.enclosure import Enclosure, LampPlace, Lid
from calc.heat.held import judge_held
from calc.heat.wattages import steps_sold
from calc.judgement import Judged, Verdict
from calc.limits import Limits, Met
from calc.uncertainty import Estimate
from calc.validity import OutsideModelError

__all__ = ["AIR", "AirHeat", "AirLamp", "Covers", "air", "tell"]

_SOURCES = ("enclosure_model", "ashrae_films", "en12524")
_LID_SOURCE = {Lid.SOLID: "ashrae_stack"}
# More than this share of what the walls lose is worth closing some mesh for.
_LEAKS = 0.3


class Covers(Enum):
    """Whether the lamp in use holds the air, or is past a limit."""

    FINE = auto()
    SHORT = auto()
    JUST = auto()
    MAYBE_MORE = auto()
    MORE = auto()
    HARMS = auto()


@dataclass(frozen=True, slots=True)
class AirLamp:
    """The lamp in use: what of its watts warms the inside, and the air that it holds."""

    power: Power
    inside: Power
    all_inside: bool
    place: LampPlace
    place_told: bool
    held: Temp
    warm_held: Temp
    covers: Covers


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
    held = None if query.watts is None else _held(query, enclosure)
    judged = None if held is None else judge_held(held.cool_c, target, limits)
    alarms = () if held is None else _overheats(held, judged, limits)
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
        lamp=None if held is None else _lamp_told(query, held, judged, harms=bool(alarms)),
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


def _held(query: AirQuery, enclosure: Enclosure) -> Ends:
    """Return the air of both ends that the lamp holds by itself."""
    assert query.watts is not None
    check_power(query.watts.low)
    inside_w = query.watts.low * LAMP_PLACES[query.place].value
    try:
        return ends_held(enclosure, inside_w, query.room.low, Spot.WARM_END)
    except OutsideModelError:
        # Hotter than is answered, and hotter than any animal may have it.
        most = Estimate.exact(query.room.low + MOST_RISE_K)
        return Ends(most, most)


def _overheats(held: Ends, judged: Judged | None, limits: Limits) -> tuple[Alarm, ...]:
    """Return the hazard of the air that a lamp holds by itself, where it passes a limit."""
    if judged is None or judged.verdict is not Verdict.DANGEROUS:
        return ()
    return alarms_past(limits, Met(coolest_air_c=held.cool_c.best))


def _lamp_told(query: AirQuery, held: Ends, judged: Judged | None, *, harms: bool) -> AirLamp:
    assert query.watts is not None
    place = LAMP_PLACES[query.place]
    return AirLamp(
        power=watts(query.watts.low),
        inside=watts(query.watts.low * place.value),
        all_inside=place.value == 1.0,
        place=place,
        place_told="place" in query.model_fields_set,
        held=degrees(held.cool_c),
        warm_held=degrees(held.warm_c),
        covers=Covers.HARMS if harms else _covers(judged),
    )


def _covers(judged: Judged | None) -> Covers:
    if judged is None or judged.is_fine:
        return Covers.FINE
    is_warm = judged.value.best > judged.high
    if judged.verdict.wants_change:
        return Covers.MORE if is_warm else Covers.SHORT
    return Covers.MAYBE_MORE if is_warm else Covers.JUST


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
    )


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
