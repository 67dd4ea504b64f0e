"""The basking spot, the two ends and how far they are apart, as they were read."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from bot.facts import Diff, Say, degrees, kelvins
from bot.language.hearing import FactName
from bot.language.hearing.facts import Thermometer
from bot.questions.heat.readings import (
    Ranged,
    do_said,
    doubts_said,
    ranged,
    reading_told,
    step_said,
    step_told,
)
from bot.questions.setup.check_beyond import set_aside
from bot.questions.setup.check_lamps import lamps_part
from bot.questions.setup.check_light import hours_part, night_part
from bot.questions.setup.check_parts import Missing, Part, Piece, Todo, Urgency, find_out, sign
from bot.questions.setup.told import SetUpTold
from bot.saved.group import Own
from calc.animal import Animal
from calc.heat.judge import Judgement, Step, judge
from calc.heat.mending import Surroundings
from calc.heat.readings import Finding, Instrument, Readings, is_asked_for
from calc.judgement import judge_reading
from calc.limits import Met, limits_of, passed
from calc.quantities import Quantity
from calc.setup.measured import change_of, spot_of
from calc.setup.set_up import Sign

__all__ = ["HEATED", "heat_parts"]

HEATED = (Piece.BASKING, Piece.COOL, Piece.WARM)
"""The parts that a change of the heat lamp moves together."""

_HOUR_S = 3600.0
_INSTRUMENTS = {
    Thermometer.INFRARED_GUN: Instrument.INFRARED_GUN,
    Thermometer.DIGITAL_PROBE: Instrument.DIGITAL_PROBE,
    Thermometer.DIAL: Instrument.DIAL_OR_STRIP,
}
_PLACES = {
    Quantity.BASKING_SURFACE: (Piece.BASKING, FactName.BASKING, Urgency.BASKING),
    Quantity.COOL_AIR: (Piece.COOL, FactName.COOL, Urgency.COOL_END),
    Quantity.WARM_AIR: (Piece.WARM, FactName.WARM, Urgency.REST),
    Quantity.WATER: (Piece.WATER, FactName.WATER, Urgency.COOL_END),
}
_MISSING = {
    Quantity.BASKING_SURFACE: Missing.BASKING,
    Quantity.COOL_AIR: Missing.COOL,
    Quantity.WATER: Missing.WATER,
}
# Steps that are about measuring and not about changing.
_MEASURING = {
    Step.WAIT_AND_READ_AGAIN,
    Step.CHECK_THE_RANGE,
    Step.MEASURE_AGAIN,
    Step.USE_TRUSTED_THERMOMETER,
    Step.MEASURE_SURFACE_WITH_GUN,
    Step.MEASURE_AIR_WITH_PROBE,
    Step.MEASURE_SURFACE,
    Step.MEASURE_COOL_END,
    Step.MEASURE_WATER,
    Step.CHECK_WARM_PROBE,
    Step.WATCH_WARM_END,
    Step.MOVE_PROBE_OUT_OF_BEAM,
}


@dataclass(frozen=True, slots=True)
class HeatApart:
    """How far the basking spot and the cool end are apart, and how far they should be."""

    apart: Diff
    least: Diff
    most: Diff


def heat_parts(told: SetUpTold, animal: Animal, own: Own) -> Iterator[Part]:
    """Judge everything of a set-up that is not UV."""
    told, beyond = set_aside(told, animal)
    ranges = _ranges(told, animal)
    judgement = judge(_readings(told, ranges), animal, _surroundings(told))
    if FactName.ON_FOR in beyond:
        yield beyond[FactName.ON_FOR]
    if Step.SWITCH_LAMP_OFF in judgement.steps:
        yield _lamp_off(judgement, animal)
    for place in _PLACES:
        yield from _place(place, told, judgement, beyond, animal, own, ranges.get(place))
    yield from _apart(judgement)
    yield from _of_day_and_night(told, beyond, animal, own)


def _of_day_and_night(
    told: SetUpTold, beyond: dict[FactName, Part], animal: Animal, own: Own
) -> Iterator[Part]:
    """Judge hours, night and lamps; what lives in water alone is asked for none of them."""
    wet = animal.is_of_water_alone
    if not wet or told.measure(FactName.HOURS):
        yield hours_part(told, animal, own)
    nights = [name for name in (FactName.NIGHT, FactName.ROOM_NIGHT) if told.measure(name)]
    past = [beyond[name] for name in (FactName.NIGHT, FactName.ROOM_NIGHT) if name in beyond]
    # The night of what swims is that of its water.
    if nights or past or (animal.night_floor_c is not None or animal.water_c is None):
        yield past[0] if past else night_part(told, animal, own)
    if not animal.needs_no_basking or told.lamps:
        yield lamps_part(told)


def _middle(told: SetUpTold, name: FactName) -> float | None:
    said = told.measure(name)
    return None if said is None else said.value.middle


def _surroundings(told: SetUpTold) -> Surroundings | None:
    room_c = _middle(told, FactName.ROOM)
    return None if room_c is None else Surroundings(room_c)


def _ranges(told: SetUpTold, animal: Animal) -> dict[Quantity, Ranged]:
    """Return each reading as it was told: one value, or a range with the end that is judged."""
    read = {place: told.measure(name) for place, (_, name, _) in _PLACES.items()}
    return {p: ranged(p, said.value, animal) for p, said in read.items() if said is not None}


def _readings(told: SetUpTold, ranges: Mapping[Quantity, Ranged]) -> Readings:
    read = {place: each.reading_c for place, each in ranges.items()}
    on_for = told.measure(FactName.ON_FOR)
    return Readings(
        basking_surface_c=read.get(Quantity.BASKING_SURFACE),
        cool_air_c=read.get(Quantity.COOL_AIR),
        warm_air_c=read.get(Quantity.WARM_AIR),
        water_c=read.get(Quantity.WATER),
        lamp_on_h=None if on_for is None else on_for.value.low / _HOUR_S,
        instruments=frozenset(_INSTRUMENTS[x] for x in told.thermometers),
    )


def _lamp_off(judgement: Judgement, animal: Animal) -> Part:
    """Return why the lamp goes off: the spot burns, or there is no cool place to go to."""
    found = {finding.place: finding for finding in judgement.findings}
    spot = found.get(Quantity.BASKING_SURFACE)
    burns = spot and passed(limits_of(animal), Met(surface_c=spot.reading_c))
    if burns or (spot is not None and spot.is_high):
        why = Say("check-why-burns")
    else:
        why = Say("check-why-no-cool-place")
    return Part(Piece.SAFETY, Sign.CHANGE, why, Say("check-head-lamp-off"))


def _place(
    place: Quantity,
    told: SetUpTold,
    judgement: Judgement,
    beyond: dict[FactName, Part],
    animal: Animal,
    own: Own,
    read: Ranged | None,
) -> Iterator[Part]:
    piece, name, urgency = _PLACES[place]
    found = next((x for x in judgement.findings if x.place is place), None)
    if name in beyond:
        yield beyond[name]
    elif found is not None:
        yield _read_part(found, judgement, urgency, animal, own, read)
    elif place in _MISSING and _is_due(place, animal):
        missing = _MISSING[place]
        why = Say("check-why-unclear") if told.all(name) else Say("check-why-untold")
        yield Part(piece, Sign.CANNOT_TELL, why, todo=(find_out(missing),), missing=(missing,))


def _is_due(place: Quantity, animal: Animal) -> bool:
    """Say whether a place is asked for: no basking spot of an animal that needs none."""
    if place is Quantity.BASKING_SURFACE and animal.needs_no_basking:
        return False
    if place is Quantity.COOL_AIR and animal.cool_air_c is None and animal.water_c is not None:
        return False
    return is_asked_for(place, animal)


def _mark(found: Finding, animal: Animal) -> Sign:
    """Return the sign of a reading; a spot that nobody needs is fine up to its limit."""
    spot = found.place is Quantity.BASKING_SURFACE
    if not (spot and animal.needs_no_basking):
        return sign(found.judged)
    past = passed(limits_of(animal), Met(surface_c=found.reading_c))
    return Sign.CHANGE if past else Sign.FINE


def _read_part(
    found: Finding,
    judgement: Judgement,
    urgency: Urgency,
    animal: Animal,
    own: Own,
    read: Ranged | None,
) -> Part:
    facts, mark = reading_told(found, animal, own, read), _mark(found, animal)
    todo = tuple(_todo(judgement, urgency)) if mark is Sign.CHANGE else ()
    if found.is_unsure:
        warmed = change_of(Step.WARMER_WATER) if found.place is Quantity.WATER else None
        told = _todo(judgement, urgency)
        todo = tuple(x for x in told if x.is_reading or (warmed and x.change == warmed))
    doubts = judgement.doubts if found.place is Quantity.BASKING_SURFACE else ()
    return Part(
        _PLACES[found.place][0],
        mark,
        Say("heat-row", facts),
        head=Say("cell-head", facts),
        read=Say("cell-read", facts),
        aim=None if facts.wanted is None else Say("cell-aim", facts),
        more=doubts_said(doubts),
        todo=todo,
        values=((found.place.value, degrees(found.reading_c)),),
        sources=(found.target.source,) if found.target else (),
        spot=spot_of(found.place, found, animal),
        needless=found.place is Quantity.BASKING_SURFACE and animal.needs_no_basking,
    )


def _todo(judgement: Judgement, urgency: Urgency) -> Iterator[Todo]:
    """Return the steps of the judgement; they hold for basking spot and cool end together."""
    for step in judgement.steps:
        if step not in (Step.LEAVE_AS_IT_IS, Step.SWITCH_LAMP_OFF):
            due = Urgency.MEASURE if step in _MEASURING else urgency
            told = step_told(step, judgement.changes)
            yield Todo(due, step_said(told), do_said(told), change_of(step))


def _apart(judgement: Judgement) -> Iterator[Part]:
    found = {finding.place: finding for finding in judgement.findings}
    spot, cool = found.get(Quantity.BASKING_SURFACE), found.get(Quantity.COOL_AIR)
    if spot is None or cool is None or spot.target is None or cool.target is None:
        return
    apart = spot.reading_c - cool.reading_c
    if apart < 0.0:
        yield Part(Piece.APART, Sign.CANNOT_TELL, Say("check-why-swapped"))
        return
    least = spot.target.low - cool.target.high
    most = max(least, spot.target.high - cool.target.low)
    judged = judge_reading(Quantity.GRADIENT, apart, least, most)
    facts = HeatApart(kelvins(apart), kelvins(least), kelvins(most))
    if judged.is_fine:
        why = Say("check-why-apart", facts)
    elif apart < least:
        why = Say("check-why-alike", facts)
    else:
        why = Say("check-why-far-apart", facts)
    alike, far = Say("check-head-alike", facts), Say("check-head-far-apart", facts)
    head = alike if apart < least else far
    cell = Say("cell-apart", facts)
    yield Part(Piece.APART, sign(judged), why, head, cell, Say("cell-apart-aim", facts))
