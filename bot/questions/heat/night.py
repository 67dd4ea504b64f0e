"""Whether the night needs heat, and how to give it. Words: ``words/<language>/night.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto

from bot.command import Command
from bot.facts import Name, Power, Say, Says, Temp, degrees, watts
from bot.layered import Brief, Care, Layered, Row, Weight
from bot.preferences import Context
from bot.queries.heat import NightQuery
from bot.questions.animals import animal_asked
from bot.questions.heat.pictured import pictured
from bot.questions.heat.seen import Pictured, Seen
from bot.questions.heat.shared import (
    HEAT_CARE,
    LAMP_PLACES,
    VET_CARE,
    WARM_THE_ROOM,
    Box,
    Untold,
    aimed,
    box_asked,
    box_told,
    read,
)
from bot.questions.shared import animal_name, known_by, others_say
from calc.animal import Animal, Subject
from calc.heat.enclosure import LampPlace
from calc.heat.night import Emitter, NightDecision, NightPlan, emitter_for, night_plan
from calc.heat.wattages import Family, steps_sold
from calc.judgement import Verdict
from calc.limits import limits_of
from calc.quantities import Quantity

__all__ = ["NIGHT", "Fit", "Night", "night", "tell"]

# Below it the balance of a box is not reckoned, and the animal must not stay there anyway.
_COLDEST_RECKONED_C = 0.0
_MOST_HEATERS_W = 2.0 * steps_sold(Family.DARK_EMITTER)[-1]
_ABOUT = (Subject.NIGHT_FLOOR, Subject.NIGHT_HEAT_OFF)
_WET = (NightDecision.WATER, NightDecision.WATER_TOO_COLD)
_HEATED = (NightDecision.HEAT, NightDecision.KEEPERS_DIFFER)
_VERDICTS = {
    NightDecision.NOTHING: Verdict.FINE,
    NightDecision.HEAT: Verdict.LOW,
    NightDecision.TOO_WARM: Verdict.HIGH,
}


class Fit(Enum):
    """Whether one heater that is sold covers the coldest hour."""

    ONE = auto()
    TWO = auto()
    TOO_MANY = auto()
    OPEN = auto()


@dataclass(frozen=True, slots=True)
class NightHeater:
    """The heater of one enclosure: what it takes in the coldest hour, and the one to buy."""

    need: Power
    one: Power | None
    fit: Fit
    place: LampPlace


@dataclass(frozen=True, slots=True)
class Night:
    """The night of one animal in one room; None where it is not known."""

    animal: Name
    room: Temp
    decision: NightDecision
    floor: Temp | None
    floor_is_range: bool
    floor_known: Say | None
    off: Temp | None
    off_is_practice: bool
    water: Temp | None
    cold_water: Temp | None
    box: Box | None
    heater: NightHeater | None
    others: tuple[Say, ...]
    sources: tuple[str, ...]

    @property
    def heated(self) -> bool:
        """Say whether the night may be heated."""
        return self.decision in _HEATED

    @property
    def one(self) -> Power | None:
        """Return the heater to buy."""
        return self.heater.one if self.heater else None


def night(query: NightQuery, context: Context) -> Night:
    """Work out what the night asks for."""
    room_c = query.room.low
    animal = animal_asked(query.animal, context)
    plan = night_plan(animal, room_c)
    floor = plan.floor_c
    heater = _heater(query, plan, room_c)
    box = box_told(query.enclosure, query.material, query.lid, query.model_fields_set)
    cold = limits_of(animal).cold_water_c
    return Night(
        animal=animal_name(animal),
        room=degrees(read(room_c)),
        decision=plan.decision,
        floor=None if floor is None else aimed(floor),
        floor_is_range=bool(floor and floor.low < floor.high),
        floor_known=(
            None if floor is None else known_by(animal, Subject.NIGHT_FLOOR, floor, context.own)
        ),
        off=None if plan.heat_off_c is None else degrees(read(plan.heat_off_c)),
        off_is_practice=plan.heat_off_source == "common_practice",
        water=None if animal.water_c is None else aimed(animal.water_c),
        cold_water=None if cold is None else degrees(cold.value),
        box=box,
        heater=None if heater is None else _heater_told(heater, box),
        others=others_say(animal, *_ABOUT),
        sources=tuple(_sources(animal, plan, heater)),
    )


def _heater(query: NightQuery, plan: NightPlan, room_c: float) -> Emitter | None:
    size = query.enclosure
    if plan.decision not in _HEATED or size is None or room_c < _COLDEST_RECKONED_C:
        return None
    box = box_asked(size, query.material, query.lid)
    return emitter_for(box, plan, room_c, LAMP_PLACES[query.place])


def _heater_told(emitter: Emitter, box: Box | None) -> NightHeater:
    need, step_w = emitter.power_w, emitter.step_w
    if box is not None and box.is_open:
        # Its air is the room's, whatever hangs in it.
        return NightHeater(need=watts(need), one=None, fit=Fit.OPEN, place=emitter.place)
    fit = Fit.ONE
    if step_w is None:
        fit = Fit.TOO_MANY if need.high > _MOST_HEATERS_W else Fit.TWO
    one = None if step_w is None else watts(step_w)
    return NightHeater(need=watts(need), one=one, fit=fit, place=emitter.place)


def _sources(animal: Animal, plan: NightPlan, emitter: Emitter | None) -> Iterator[str]:
    yield "common_practice"
    if plan.floor_c is not None:
        yield plan.floor_c.source
    if plan.heat_off_source is not None:
        yield plan.heat_off_source
    if emitter is not None:
        yield from ("enclosure_model", "lamp_steps")
    yield from (d.source for d in animal.disagreements_about(*_ABOUT))


def tell(facts: Night) -> Layered:
    """Tell the decision first, then how to heat or cool."""
    say = Says("night", facts)
    return Layered(
        command="night",
        title=say("title"),
        brief=_brief(facts, say),
        steps=tuple(_steps(facts, say)),
        numbers=tuple(_numbers(facts, say)),
        why=(say.by("why", facts.decision), *facts.others),
        care=tuple(_care(facts, say)),
        values=(
            ("room_low", facts.room),
            ("night_floor", facts.floor),
            ("thermostat_off", facts.off),
            ("emitter_power", facts.heater.need if facts.heater else None),
        ),
        guide=("nights", "heat-sources", "day-length"),
        sources=facts.sources,
        picture=pictured(_seen(facts, _brief(facts, say).head)),
    )


def _seen(facts: Night, head: Say) -> Pictured:
    say = Says("night", facts)
    floor = facts.floor
    place = Seen(
        Quantity.NIGHT_AIR,
        Say("gauge-place-night_air"),
        say("picture-unknown") if floor is None else say("range"),
        say("picture-read"),
        _VERDICTS.get(facts.decision, Verdict.CANNOT_TELL),
        met=(facts.room.low, facts.room.high),
        below=None if floor is None else floor.low,
    )
    return Pictured(say("title"), head, (place,), facts.animal)


def _brief(facts: Night, say: Says) -> Brief:
    if facts.heated:
        fit = facts.heater.fit if facts.heater else Fit.ONE
        steps = [say.by("do", fit), *([say("do-thermostat")] if facts.off else [])]
        if fit is Fit.OPEN:
            steps = [say("do-open"), say("do-cover")]
    elif facts.decision is NightDecision.TOO_WARM:
        steps = [say("do-cool")]
    elif facts.decision is NightDecision.NOTHING:
        steps = [say("do-nothing")]
    elif facts.decision in _WET:
        cold = facts.decision is NightDecision.WATER_TOO_COLD
        steps = [say("do-warm-water") if cold else say("do-read-water")]
    else:
        steps = [say("do-ask")]
    assumes = facts.box and facts.heater and facts.box.untold is not Untold.NOTHING
    return Brief(
        head=say.by("head", facts.decision),
        range=(say("range"),) if facts.floor else _wet(facts, say),
        assumed=(Say("box-assumed", facts.box),) if assumes else (),
        steps=tuple(steps),
    )


def _wet(facts: Night, say: Says) -> tuple[Say, ...]:
    return (say("water"),) if facts.decision in _WET else ()


def _steps(facts: Night, say: Says) -> Iterator[Say]:
    if facts.decision is NightDecision.TOO_WARM:
        yield say("step-cool")
    if facts.heater is not None and facts.heater.fit is Fit.OPEN:
        yield from (WARM_THE_ROOM, say("step-cover"), say("step-morning"))
    elif facts.heated:
        yield say("step-heater")
        yield Say("night-heater", facts.heater) if facts.heater else say("step-ask-watts")
        yield say("step-thermostat")
        yield say("step-morning")
    yield say("step-water" if facts.decision in _WET else "step-measure")


def _numbers(facts: Night, say: Says) -> Iterator[Row]:
    if facts.floor is not None:
        yield Row(say("label-floor"), say("floor"))
    if facts.heated and facts.off is not None:
        yield Row(say("label-off"), say("off"))
    if facts.box is not None:
        yield Row(Say("box-label"), Say("box-told", facts.box))
    if facts.heater is not None:
        told = Says("night", facts.heater)
        opened = facts.heater.fit is Fit.OPEN
        yield Row(say("label-heater"), told("heater-open") if opened else told("heater"))


def _care(facts: Night, say: Says) -> Iterator[Care]:
    if facts.decision is NightDecision.TOO_WARM:
        yield Care(say("care-too-warm"), say("care-too-warm-short"), Weight.STEP)
    if facts.decision in _WET:
        yield Care(say("care-water"), say("care-water-short"), Weight.STEP)
    weight = Weight.ALWAYS if facts.heated else Weight.STEP
    yield Care(say("care-colours"), say("care-colours-short"), weight)
    # Where the floor is not known somebody may heat all the same, and must know how.
    unknown = facts.decision is NightDecision.FLOOR_UNKNOWN
    yield from HEAT_CARE if facts.heated or unknown else (VET_CARE,)


NIGHT = Command(
    name="night",
    query=NightQuery,
    facts=night,
    tell=tell,
    examples=(
        "night room:64F animal:bearded dragon",
        "night room:16C animal:corn snake enclosure:120x60x60cm material:wood lid:solid",
    ),
    guide=("nights", "heat-sources"),
)
