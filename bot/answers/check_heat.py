"""The heat, the gradient, the night, the hours and the lamps of a set-up."""

from collections.abc import Iterator, Mapping

from bot.answers.animals import known_by
from bot.answers.check_beyond import set_aside
from bot.answers.check_parts import Mark, Part, Todo, Urgency
from bot.answers.figures import difference, hours, temperature
from bot.answers.heat_parts import Kept, target_text
from bot.answers.setup_told import Said, Told
from bot.answers.temps_words import doubt_text, finding_clause, missing_text, step_text
from bot.answers.verdicts import mark_of
from bot.language.hearing import FactName
from bot.language.hearing.facts import LampKind, Thermometer
from bot.language.quantities import Measure, Units
from bot.reply import Value
from calc.heat.judge import Judgement, Step, judge
from calc.heat.mending import Surroundings
from calc.heat.night import NightDecision, night_plan
from calc.heat.readings import Finding, Instrument, Readings
from calc.heat.sources_of_heat import Basking, HeatSource, find_heat_source
from calc.judgement import judge_value, with_doubt
from calc.limits import Met, limits_of, passed
from calc.quantities import Quantity
from calc.setup.measured import change_of, spot_of

__all__ = ["HEATED", "heat_parts"]

HEATED = ("Basking spot", "Cool end", "Warm end")
"""The parts that a change of the heat lamp moves together."""

_HOUR_S = 3600.0
_INSTRUMENTS = {
    Thermometer.INFRARED_GUN: Instrument.INFRARED_GUN,
    Thermometer.DIGITAL_PROBE: Instrument.DIGITAL_PROBE,
    Thermometer.DIAL: Instrument.DIAL_OR_STRIP,
}
_PLACES = {
    Quantity.BASKING_SURFACE: (HEATED[0], FactName.BASKING, Urgency.BASKING),
    Quantity.COOL_AIR: (HEATED[1], FactName.COOL, Urgency.COOL_END),
    Quantity.WARM_AIR: (HEATED[2], FactName.WARM, Urgency.REST),
}
_NAMES = {
    Quantity.BASKING_SURFACE: "basking_surface",
    Quantity.COOL_AIR: "cool_air",
    Quantity.WARM_AIR: "warm_air",
    Quantity.NIGHT_AIR: "night_low",
}
# Steps that are about measuring and not about changing.
_MEASURING = {
    Step.WAIT_AND_READ_AGAIN,
    Step.MEASURE_AGAIN,
    Step.USE_TRUSTED_THERMOMETER,
    Step.MEASURE_SURFACE_WITH_GUN,
    Step.MEASURE_AIR_WITH_PROBE,
    Step.MEASURE_SURFACE,
    Step.MEASURE_COOL_END,
    Step.CHECK_WARM_PROBE,
    Step.WATCH_WARM_END,
    Step.MOVE_PROBE_OUT_OF_BEAM,
}
_HEAT_AND_UV = ("mercury-vapour", "metal-halide")
_ONLY_UV = (LampKind.T5, LampKind.T5_HO, LampKind.T8, LampKind.UV_LED, LampKind.COMPACT)
_SOURCES_OF_HEAT = {
    LampKind.FLOOD: "incandescent flood",
    LampKind.COLOURED: "night lamp",
    LampKind.HEAT_ROCK: "heat rock",
}


def heat_parts(told: Told, kept: Kept, units: Units) -> Iterator[Part]:
    """Judge everything of a set-up that is not UV."""
    told, beyond = set_aside(told, kept, units)
    judgement = judge(_readings(told), kept.animal, _surroundings(told))
    if FactName.ON_FOR in beyond:
        yield beyond[FactName.ON_FOR]
    yield from _places(told, judgement, beyond, kept, units)
    yield from _gradient(judgement, kept, units)
    yield _hours(told, kept)
    nights = [beyond[name] for name in (FactName.NIGHT, FactName.ROOM_NIGHT) if name in beyond]
    yield nights[0] if nights else _night(told, kept, units)
    yield _lamps(told)


def _middle(said: Said[Measure] | None) -> float | None:
    return None if said is None else (said.value.low + said.value.high) / 2.0


def _surroundings(told: Told) -> Surroundings | None:
    room_c = _middle(told.measure(FactName.ROOM))
    return None if room_c is None else Surroundings(room_c)


def _readings(told: Told) -> Readings:
    on_for = told.measure(FactName.ON_FOR)
    return Readings(
        basking_surface_c=_middle(told.measure(FactName.BASKING)),
        cool_air_c=_middle(told.measure(FactName.COOL)),
        warm_air_c=_middle(told.measure(FactName.WARM)),
        lamp_on_h=None if on_for is None else on_for.value.low / _HOUR_S,
        instruments=frozenset(_INSTRUMENTS[x] for x in told.thermometers),
    )


def _places(
    told: Told, judgement: Judgement, beyond: dict[FactName, Part], kept: Kept, units: Units
) -> Iterator[Part]:
    found = {finding.place: finding for finding in judgement.findings}
    steps = _steps(judgement)
    if Step.SWITCH_LAMP_OFF in judgement.steps:
        yield Part("Safety", Mark.CHANGE, _why_off(found, kept))
    for place, (label, name, urgency) in _PLACES.items():
        finding = found.get(place)
        if name in beyond:
            yield beyond[name]
            continue
        if finding is None:
            if place is Quantity.WARM_AIR:
                continue
            missing = missing_text((place,))
            why = "was not said" if not told.all(name) else "was not said clearly"
            measure = (Todo(Urgency.MEASURE, f"Measure {missing}."),)
            yield Part(label, Mark.CANNOT_TELL, why, measure, (missing,))
            continue
        mark = mark_of(finding.judged)
        doubts = f"; but {doubt_text(judgement.doubts)}" if _doubted(judgement, place) else ""
        why = f"{finding_clause(finding, units)}{_target(finding, units)}{doubts}"
        todo = tuple(_todo(steps, urgency)) if mark is Mark.CHANGE else ()
        if finding.is_unsure:
            todo = tuple(x for x in _todo(steps, urgency) if x.urgency is Urgency.MEASURE)
        source = (finding.target.source,) if finding.target else ()
        spot = spot_of(place, finding, kept.animal)
        yield Part(label, mark, why, todo, values=(_value(finding),), sources=source, spot=spot)


def _why_off(found: Mapping[Quantity, Finding], kept: Kept) -> str:
    """Return why the lamp goes off: the spot burns, or there is no cool place to go to."""
    spot = found.get(Quantity.BASKING_SURFACE)
    burns = spot and passed(limits_of(kept.animal), Met(surface_c=spot.reading_c))
    if burns or (spot is not None and spot.is_high):
        return "a surface this hot burns"
    return "with a cool end this hot the animal has no cool place to go to"


def _doubted(judgement: Judgement, place: Quantity) -> bool:
    return place is Quantity.BASKING_SURFACE and bool(judgement.doubts)


def _target(finding: Finding, units: Units) -> str:
    return f"; wanted {target_text(finding.target, units)}" if finding.target else ""


def _value(finding: Finding) -> Value:
    reading = finding.reading_c
    return Value(name=_NAMES[finding.place], low=reading, best=reading, high=reading, unit="degC")


def _steps(judgement: Judgement) -> tuple[Step, ...]:
    skipped = (Step.LEAVE_AS_IT_IS, Step.SWITCH_LAMP_OFF)
    return tuple(step for step in judgement.steps if step not in skipped)


def _todo(steps: tuple[Step, ...], urgency: Urgency) -> Iterator[Todo]:
    """Return the steps of the judgement; they hold for basking spot and cool end together."""
    for step in steps:
        due = Urgency.MEASURE if step in _MEASURING else urgency
        yield Todo(due, step_text(step), change_of(step))


def _gradient(judgement: Judgement, kept: Kept, units: Units) -> Iterator[Part]:
    found = {finding.place: finding for finding in judgement.findings}
    spot, cool = found.get(Quantity.BASKING_SURFACE), found.get(Quantity.COOL_AIR)
    if spot is None or cool is None or spot.target is None or cool.target is None:
        return
    apart = spot.reading_c - cool.reading_c
    least = spot.target.low - cool.target.high
    most = spot.target.high - cool.target.low
    if apart < 0.0:
        why = "the cool end is said to be hotter than the basking spot: find out which is which"
        yield Part("Gradient", Mark.CANNOT_TELL, why)
        return
    shown = difference(apart, units)
    told = f"basking spot and cool end are {shown} apart"
    judged = judge_value(
        Quantity.GRADIENT, with_doubt(Quantity.GRADIENT, apart), least, max(least, most)
    )
    if judged.is_fine:
        why = f"{told}, so the animal can choose"
    elif apart < least:
        why = f"{told}, too alike for the animal to choose; at least {difference(least, units)}"
    else:
        why = f"{told}, more than the {difference(most, units)} between the targets"
    yield Part("Gradient", mark_of(judged), why)


def _hours(told: Told, kept: Kept) -> Part:
    said, wanted = told.measure(FactName.HOURS), kept.animal.light_hours
    if said is None:
        why = "was not said; 12 on and 12 off all year is a fine start (common practice, no source)"
        return Part(
            "Hours of light", Mark.CANNOT_TELL, why, missing=("how long the lights are on",)
        )
    lit = (said.value.low + said.value.high) / 2.0 / _HOUR_S
    if wanted is None:
        why = f"{hours(lit)}; no target is known here, 12 hours are a fine start"
        return Part("Hours of light", Mark.CANNOT_TELL, why)
    value = (Value(name="hours", low=lit, best=lit, high=lit, unit="h"),)
    span = f"{hours(wanted.low)} to {hours(wanted.high)}"
    span = hours(wanted.low) if wanted.low == wanted.high else span
    why = f"{hours(lit)}; wanted {span} ({known_by(wanted)})"
    # A clock's timer is set to the half hour, nobody's animal is worse for it.
    if wanted.low - 0.5 <= lit <= wanted.high + 0.5:
        return Part("Hours of light", Mark.FINE, why, values=value, sources=(wanted.source,))
    todo = (Todo(Urgency.REST, f"Set the timer to {span} of light a day."),)
    return Part("Hours of light", Mark.CHANGE, why, todo, values=value, sources=(wanted.source,))


def _night(told: Told, kept: Kept, units: Units) -> Part:
    said = told.measure(FactName.NIGHT) or told.measure(FactName.ROOM_NIGHT)
    if said is None:
        missing = missing_text((Quantity.NIGHT_AIR,))
        return Part("Night", Mark.CANNOT_TELL, "was not said", missing=(missing,))
    low = said.value.low
    plan = night_plan(kept.animal, low)
    sources = (plan.floor_c.source,) if plan.floor_c else ()
    value = (Value(name="night_low", low=low, best=low, high=low, unit="degC"),)
    shown = temperature(low, units)
    floor = f"; heat is wanted below {target_text(plan.floor_c, units)}" if plan.floor_c else ""
    step = {
        NightDecision.HEAT: Step.HEAT_THE_NIGHT,
        NightDecision.KEEPERS_DIFFER: Step.CONSIDER_NIGHT_HEAT,
        NightDecision.TOO_WARM: Step.COOLER_NIGHT,
    }.get(plan.decision)
    if step is None:
        known = plan.decision is NightDecision.NOTHING
        why = f"{shown} needs no heat{floor}" if known else f"{shown}; the floor is not known here"
        mark = Mark.FINE if known else Mark.CANNOT_TELL
        if not known and passed(limits_of(kept.animal), Met(night_c=low)):
            first = (Todo(Urgency.DANGER, step_text(Step.WARM_IT_TONIGHT)),)
            return Part("Night", Mark.CHANGE, f"{shown} is too cold", first, values=value)
        return Part("Night", mark, why, values=value, sources=sources)
    mark = Mark.CANNOT_TELL if step is Step.CONSIDER_NIGHT_HEAT else Mark.CHANGE
    verdict = {
        Step.HEAT_THE_NIGHT: "is too cold",
        Step.CONSIDER_NIGHT_HEAT: "is where keepers differ",
        Step.COOLER_NIGHT: "is too warm",
    }[step]
    todo: tuple[Todo, ...] = (Todo(Urgency.REST, step_text(step)),)
    if passed(limits_of(kept.animal), Met(night_c=low)):
        todo = (Todo(Urgency.DANGER, step_text(Step.WARM_IT_TONIGHT)), *todo)
    return Part("Night", mark, f"{shown} {verdict}{floor}", todo, values=value, sources=sources)


def _lamps(told: Told) -> Part:
    kinds = [
        kind
        for lamp in told.lamps
        if lamp.value not in _ONLY_UV and (kind := _source_of_heat(lamp.value))
    ]
    if not kinds:
        missing = ("the kind of every lamp and heater",)
        return Part("Lamps", Mark.CANNOT_TELL, "no kind of heat lamp was named", missing=missing)
    read = bool(told.all(FactName.UVI) or told.all(FactName.UVI_AT))
    bad = [
        kind
        for kind in kinds
        if kind.basking is Basking.NOT_AT_ALL and not (read and kind.slug in _HEAT_AND_UV)
    ]
    sources = tuple(kind.source for kind in kinds)
    if bad:
        why = "; ".join(f"{kind.name}: not for this. {kind.why}".rstrip(".") for kind in bad)
        todo = tuple(Todo(Urgency.WRONG_LAMP, _replace(kind)) for kind in bad)
        return Part("Lamps", Mark.CHANGE, why, todo, sources=sources)
    metered = [kind for kind in kinds if kind.slug in _HEAT_AND_UV]
    if metered:
        return _by_meter(metered, sources, read=read)
    elsewhere = [kind for kind in kinds if kind.basking is Basking.NOT_FOR_BASKING]
    if elsewhere:
        why = "; ".join(
            f"{kind.name}: not for the basking spot. {kind.place}" for kind in elsewhere
        )
        if any(kind.basking is Basking.GOOD for kind in kinds):
            return Part("Lamps", Mark.FINE, why.rstrip("."), sources=sources)
        return Part("Lamps", Mark.CANNOT_TELL, why.rstrip("."), sources=sources)
    why = "; ".join(f"{kind.name}: good for the basking spot" for kind in kinds)
    return Part("Lamps", Mark.FINE, why, sources=sources)


def _by_meter(kinds: list[HeatSource], sources: tuple[str, ...], *, read: bool) -> Part:
    """Judge lamps that give heat and strong UV together: what was read decides."""
    names = " and ".join(kind.name for kind in kinds)
    if read:
        why = f"{names}: what your meter and the basking spot show decides"
        return Part("Lamps", Mark.FINE, why, sources=sources)
    why = f"{names}: its UV and heat come together, so both have to be read"
    return Part("Lamps", Mark.CANNOT_TELL, why, sources=sources)


def _source_of_heat(kind: object) -> HeatSource | None:
    name = _SOURCES_OF_HEAT.get(kind, str(kind)) if isinstance(kind, LampKind) else str(kind)
    return find_heat_source(name)


def _replace(kind: HeatSource) -> str:
    return (
        f"Plan to replace the {kind.name}; keep the animal warm until then. {kind.why.rstrip('.')}."
    )
