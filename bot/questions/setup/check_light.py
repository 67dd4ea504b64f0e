"""The hours of light and the night of a set-up."""

from dataclasses import dataclass

from bot.facts import Hours, Say, Temp, degrees, hours
from bot.language.hearing import FactName
from bot.questions.heat.readings import do_said, step_said, step_told
from bot.questions.heat.shared import aimed, has_best
from bot.questions.setup.check_parts import Missing, Part, Piece, Todo, Urgency
from bot.questions.setup.told import SetUpTold
from bot.questions.shared import known_by
from bot.saved.group import Own
from calc.animal import Animal, Subject
from calc.heat.judge import Step
from calc.heat.night import NightDecision, night_plan
from calc.judgement import Move, judge_reading
from calc.limits import Met, limits_of, passed
from calc.quantities import Quantity
from calc.setup.set_up import Sign

__all__ = ["hours_part", "night_part"]

_HOUR_S = 3600.0
_STEPS = {
    NightDecision.HEAT: Step.HEAT_THE_NIGHT,
    NightDecision.KEEPERS_DIFFER: Step.CONSIDER_NIGHT_HEAT,
    NightDecision.TOO_WARM: Step.COOLER_NIGHT,
}
_SIGNS = {
    NightDecision.NOTHING: Sign.FINE,
    NightDecision.KEEPERS_DIFFER: Sign.CANNOT_TELL,
    NightDecision.HEAT: Sign.CHANGE,
    NightDecision.TOO_WARM: Sign.CHANGE,
    NightDecision.FLOOR_UNKNOWN: Sign.CANNOT_TELL,
    NightDecision.WATER: Sign.CANNOT_TELL,
    NightDecision.WATER_TOO_COLD: Sign.CANNOT_TELL,
}

_UNKNOWN = (NightDecision.FLOOR_UNKNOWN, NightDecision.WATER, NightDecision.WATER_TOO_COLD)


@dataclass(frozen=True, slots=True)
class LightRead:
    """How long the lights are on, and how long they should be."""

    lit: Hours
    day: Hours
    known: Say
    long: bool


@dataclass(frozen=True, slots=True)
class LightOnly:
    """How long the lights are on, where no target is known."""

    lit: Hours


@dataclass(frozen=True, slots=True)
class NightRead:
    """The coldest of the night; ``cold`` where it is past the limit of an animal."""

    coldest: Temp
    floor: Temp | None
    has_aim: bool
    known: Say | None
    decision: NightDecision
    cold: bool


def hours_part(told: SetUpTold, animal: Animal, own: Own) -> Part:
    """Judge how long the lights are on."""
    said, wanted = told.measure(FactName.HOURS), animal.light_hours
    if said is None:
        why = Say("check-why-hours-untold")
        return Part(Piece.HOURS, Sign.CANNOT_TELL, why, missing=(Missing.HOURS,))
    lit = said.value.middle / _HOUR_S
    if wanted is None:
        only = LightOnly(hours(lit))
        why, cell = Say("check-why-hours-only", only), Say("check-read-hours", only)
        return Part(Piece.HOURS, Sign.CANNOT_TELL, why, read=cell)
    judged = judge_reading(Quantity.LIGHT_HOURS, lit, wanted.low, wanted.high)
    facts = LightRead(
        lit=hours(lit),
        day=hours(wanted.aim, (wanted.low, wanted.high)),
        known=known_by(animal, Subject.LIGHT_HOURS, wanted, own),
        long=judged.move is Move.DOWN,
    )
    fine = judged.move is Move.STAY
    timer = Todo(Urgency.REST, Say("check-do-timer", facts), Say("check-do-timer-short", facts))
    return Part(
        Piece.HOURS,
        Sign.FINE if fine else Sign.CHANGE,
        Say("check-why-hours", facts),
        head=Say("check-head-hours", facts),
        read=Say("cell-hours", facts),
        aim=Say("cell-hours-aim", facts),
        todo=() if fine else (timer,),
        values=(("hours", facts.lit),),
        sources=(wanted.source,),
    )


def night_part(told: SetUpTold, animal: Animal, own: Own) -> Part:
    """Judge the coldest of the night."""
    said = told.measure(FactName.NIGHT) or told.measure(FactName.ROOM_NIGHT)
    if said is None:
        why = Say("check-why-untold")
        return Part(Piece.NIGHT, Sign.CANNOT_TELL, why, missing=(Missing.NIGHT,))
    low_c = said.value.low
    plan = night_plan(animal, low_c)
    floor, cold = plan.floor_c, bool(passed(limits_of(animal), Met(night_c=low_c)))
    facts = NightRead(
        coldest=degrees(low_c),
        floor=None if floor is None else aimed(floor),
        has_aim=floor is not None and has_best(floor),
        known=None if floor is None else known_by(animal, Subject.NIGHT_FLOOR, floor, own),
        decision=plan.decision,
        cold=cold,
    )
    unknown = plan.decision in _UNKNOWN
    return Part(
        Piece.NIGHT,
        Sign.CHANGE if unknown and cold else _SIGNS[plan.decision],
        _night_why(facts),
        head=Say("check-head-night", facts),
        read=Say("cell-night", facts),
        aim=None if facts.floor is None else Say("cell-night-aim", facts),
        todo=_night_todo(plan.decision, cold=cold),
        values=(("night_low", facts.coldest),),
        sources=() if floor is None else (floor.source,),
    )


def _night_why(facts: NightRead) -> Say:
    if facts.floor is None:
        return Say("check-why-night-unknown", facts)
    return Say("check-why-night", facts)


def _night_todo(decision: NightDecision, *, cold: bool) -> tuple[Todo, ...]:
    step = _STEPS.get(decision)
    unknown = decision in _UNKNOWN
    first = (_todo(Urgency.DANGER, Step.WARM_IT_TONIGHT),)
    then = () if step is None else (_todo(Urgency.REST, step),)
    return (*(first if cold and (then or unknown) else ()), *then)


def _todo(urgency: Urgency, step: Step) -> Todo:
    told = step_told(step)
    return Todo(urgency, step_said(told), do_said(told))
