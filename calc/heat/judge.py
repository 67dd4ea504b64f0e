"""From a keeper's readings to the one thing to do first, and then the next.

Order of importance: basking surface, cool-end air, warm-end air (mostly an early warning),
night. No words here: findings, doubts and steps are enums and figures.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from calc.animal import Animal
from calc.heat.mending import HeatChange, Surroundings, heat_changes
from calc.heat.readings import (
    Doubtful,
    Finding,
    Readings,
    doubts_about,
    finding_for,
    is_asked_for,
)
from calc.heat.steps import Step
from calc.judgement import Move
from calc.limits import Due, LimitName, Met, Passed, limits_of, passed, soonest
from calc.quantities import Quantity

__all__ = ["Judgement", "Step", "judge"]


@dataclass(frozen=True, slots=True)
class Judgement:
    """What the readings say: findings and missing readings in order of importance, then steps.

    ``changes`` is what each change would make of the cool end, where the room was told.
    """

    findings: tuple[Finding, ...]
    doubts: tuple[Doubtful, ...]
    missing: tuple[Quantity, ...]
    steps: tuple[Step, ...]
    changes: tuple[HeatChange, ...] = ()

    @property
    def first(self) -> Step:
        """The one thing to do first."""
        return self.steps[0]


_HEAT = {LimitName.SURFACE, LimitName.WARM_AIR, LimitName.COOLEST_AIR}
_WARMING = {
    Step.WARMER_ROOM,
    Step.LESS_AIR,
    Step.LOWER_LAMP,
    Step.MORE_POWER,
    Step.SECOND_WEAKER_LAMP,
    Step.MOVE_LAMP_INWARD,
    Step.WATCH_WARM_END,
}
_NIGHTS = {Quantity.NIGHT_AIR}
_APART = _NIGHTS | {Quantity.WATER}
_COOLING = {Step.RAISE_LAMP, Step.LESS_POWER}
_COOLING_ALL = {Step.LESS_POWER, Step.MORE_AIR, Step.LONGER_ENCLOSURE, Step.COOLER_ROOM}
_OF_ROOM_AND_LID = {Step.LESS_AIR, Step.COOLER_ROOM, Step.WARMER_ROOM}
_OF_COOL_END = {
    Step.LESS_POWER,
    Step.MORE_POWER,
    Step.MOVE_LAMP_INWARD,
    Step.SECOND_WEAKER_LAMP,
    Step.MORE_AIR,
    Step.LONGER_ENCLOSURE,
}
_LOW, _FINE, _HIGH = Move.UP, Move.STAY, Move.DOWN

_LAMP_STEPS: dict[tuple[Move | None, Move | None], tuple[Step, ...]] = {
    (_LOW, _LOW): (Step.MORE_POWER, Step.SECOND_WEAKER_LAMP),
    (_LOW, _FINE): (Step.LOWER_LAMP, Step.MORE_POWER),
    (_LOW, _HIGH): (Step.LOWER_LAMP, Step.MORE_AIR, Step.LONGER_ENCLOSURE),
    (_LOW, None): (Step.LOWER_LAMP, Step.MEASURE_COOL_END),
    (_FINE, _LOW): (Step.MOVE_LAMP_INWARD, Step.SECOND_WEAKER_LAMP),
    (_FINE, _FINE): (),
    (_FINE, _HIGH): (Step.LESS_POWER, Step.MORE_AIR, Step.LONGER_ENCLOSURE),
    (_FINE, None): (Step.MEASURE_COOL_END,),
    (_HIGH, _LOW): (Step.RAISE_LAMP, Step.SECOND_WEAKER_LAMP),
    (_HIGH, _FINE): (Step.RAISE_LAMP, Step.LESS_POWER),
    (_HIGH, _HIGH): (Step.LESS_POWER, Step.MORE_AIR, Step.LONGER_ENCLOSURE),
    (_HIGH, None): (Step.RAISE_LAMP, Step.MEASURE_COOL_END),
    (None, _LOW): (Step.SECOND_WEAKER_LAMP,),
    (None, _FINE): (),
    (None, _HIGH): (Step.LESS_POWER, Step.MORE_AIR),
    (None, None): (Step.MEASURE_COOL_END,),
}

_DOUBT_STEPS = {
    Doubtful.COOL_END_ABOVE_SURFACE: Step.CHECK_PROBE_PLACES,
    Doubtful.COOL_END_ABOVE_WARM_END: Step.CHECK_PROBE_PLACES,
    Doubtful.DIAL_NOT_TRUSTED: Step.USE_TRUSTED_THERMOMETER,
    Doubtful.PROBE_FOR_SURFACE: Step.MEASURE_SURFACE_WITH_GUN,
    Doubtful.GUN_FOR_AIR: Step.MEASURE_AIR_WITH_PROBE,
    Doubtful.WARM_PROBE_IN_BEAM: Step.MOVE_PROBE_OUT_OF_BEAM,
}


def judge(
    readings: Readings, animal: Animal, surroundings: Surroundings | None = None
) -> Judgement:
    """Judge a keeper's readings for an animal.

    Parameters
    ----------
    readings : what was measured [degC]; with none, the steps say what to measure
    animal : whose targets count
    surroundings : the room, and as far as told the box and its lamp; then what mends the cool
        end is worked out and comes first

    Returns
    -------
    Judgement
        Findings, doubts, missing readings, and the steps in order; never without a step.

    Notes
    -----
    A reading that is too high before two hours of lamp time stands: it will only rise. Past a
    limit of heat no step warms anything, past one of cold none cools. Nothing is changed for what
    is off by no more than a thermometer may be: it is read again. Where the range is from memory
    alone only water is warmed; else the range is checked first.
    Source: the animal's own rows; limits_memory; common_practice for the order and the steps.

    Examples
    --------
    >>> from calc.animals import animals
    >>> dragon = animals()["bearded-dragon"]
    >>> judge(Readings(basking_surface_c=36.7, cool_air_c=23.9, lamp_on_h=3.0), dragon).first.name
    'MEASURE_AGAIN'
    """
    given = readings.by_place()
    findings = tuple(
        finding_for(place, reading, animal)
        for place, reading in given.items()
        if reading is not None
    )
    doubts = doubts_about(readings)
    missing = tuple(
        place for place, reading in given.items() if reading is None and is_asked_for(place, animal)
    )
    told = _for_swimmers(_steps(readings, animal, findings, doubts), animal, missing)
    plain = tuple(dict.fromkeys(told))
    changes = _changes(findings, animal, surroundings, plain)
    steps = _within_limits(_mending(plain, changes), _passed(readings, animal))
    return Judgement(findings, doubts, missing, steps or (_nothing(findings),), changes)


def _nothing(findings: tuple[Finding, ...]) -> Step:
    """Return what is done where nothing is changed."""
    if any(finding.is_unchecked for finding in findings):
        return Step.CHECK_THE_RANGE
    unsure = any(finding.is_unsure for finding in findings)
    return Step.MEASURE_AGAIN if unsure else Step.LEAVE_AS_IT_IS


def _steps(
    readings: Readings,
    animal: Animal,
    findings: tuple[Finding, ...],
    doubts: tuple[Doubtful, ...],
) -> Iterator[Step]:
    moves = {finding.place: _move(finding) for finding in findings if finding.place not in _APART}
    night = next((finding for finding in findings if finding.place in _NIGHTS), None)
    past = _passed(readings, animal)
    too_hot = tuple(p for p in past if p.name in _HEAT)
    contradict = Step.CHECK_PROBE_PLACES in (_DOUBT_STEPS.get(doubt) for doubt in doubts)
    off = soonest(too_hot) is Due.NOW and not contradict
    if too_hot and contradict:
        # The act does not wait for the doubt.
        yield Step.COOL_DOWN_IF_TRUE
    if off:
        yield Step.SWITCH_LAMP_OFF
    if any(p.name is LimitName.NIGHT for p in past):
        yield Step.WARM_IT_TONIGHT
    yield from (step for doubt, step in _DOUBT_STEPS.items() if doubt in doubts)
    if contradict:
        # Readings that contradict each other are no ground for moving a lamp.
        return
    if readings.is_too_soon and moves:
        yield from _held_cool(_early_steps(findings, animal), too_hot)
        if not too_hot:
            # A lamp that goes off, or is made weaker today, is not left as it is for two hours.
            yield Step.WAIT_AND_READ_AGAIN
    elif moves or not findings:
        yield from _held_cool(_day_steps(moves, animal), too_hot)
    yield from _night_steps(night)
    yield from _water_steps(findings)


def _changes(
    findings: tuple[Finding, ...],
    animal: Animal,
    around: Surroundings | None,
    steps: tuple[Step, ...],
) -> tuple[HeatChange, ...]:
    """Return what the changes in question would make of the cool end."""
    cool = next((found for found in findings if found.place is Quantity.COOL_AIR), None)
    if cool is None or around is None or Step.CHECK_PROBE_PLACES in steps:
        return ()
    changes = heat_changes(cool, animal, around)
    return tuple(
        change for change in changes if change.step in steps or change.step in _OF_ROOM_AND_LID
    )


def _mending(steps: tuple[Step, ...], changes: tuple[HeatChange, ...]) -> tuple[Step, ...]:
    """Return the steps with what mends the cool end first of what changes it."""
    at = next((i for i, step in enumerate(steps) if step in _OF_COOL_END), None)
    mended = tuple(change.step for change in changes if change.mends)
    if at is None or not mended:
        return steps
    fails = {change.step for change in changes if not change.mends}
    others = tuple(step for step in steps[at:] if step in _OF_COOL_END and step not in fails)
    rest = tuple(step for step in steps[at:] if step not in _OF_COOL_END)
    return (*steps[:at], *dict.fromkeys((*mended, *others)), *rest)


def _within_limits(steps: tuple[Step, ...], past: tuple[Passed, ...]) -> tuple[Step, ...]:
    """Return the steps without those that lead further past a limit, hot or cold."""
    names = {p.name for p in past}
    if names & _HEAT:
        return tuple(step for step in steps if step not in _WARMING)
    if LimitName.COLD_DAY in names:
        return tuple(step for step in steps if step not in _COOLING_ALL)
    return steps


def _passed(readings: Readings, animal: Animal) -> tuple[Passed, ...]:
    met = Met(
        surface_c=readings.basking_surface_c,
        warm_air_c=readings.warm_air_c,
        coolest_air_c=readings.cool_air_c,
        night_c=readings.night_low_c,
        water_c=readings.water_c,
    )
    return passed(limits_of(animal), met)


def _held_cool(steps: Iterator[Step], too_hot: tuple[Passed, ...]) -> Iterator[Step]:
    """Return the steps; past a limit of heat none that warms, and one at least that cools."""
    told = tuple(steps)
    if not too_hot:
        yield from told
        return
    kept = tuple(step for step in told if step not in _WARMING)
    if _COOLING.isdisjoint(kept):
        yield Step.LESS_POWER
    yield from kept


def _early_steps(findings: tuple[Finding, ...], animal: Animal) -> Iterator[Step]:
    """What is too high so soon stands; what is too low or in range does not count yet."""
    by_day = [finding for finding in findings if finding.place not in _APART]
    if any(finding.is_likely_high for finding in by_day):
        so_far = {found.place: _HIGH if found.is_likely_high else _FINE for found in by_day}
        yield from _day_steps(so_far, animal)


def _day_steps(by_day: Mapping[Quantity, Move | None], animal: Animal) -> Iterator[Step]:
    surface, cool = by_day.get(Quantity.BASKING_SURFACE), by_day.get(Quantity.COOL_AIR)
    if surface is None and animal.basking_surface_c is not None:
        yield Step.MEASURE_SURFACE
    yield from _LAMP_STEPS[surface, cool]
    warm = by_day.get(Quantity.WARM_AIR)
    ends_fine = all(move not in (_LOW, _HIGH) for move in (surface, cool))
    if ends_fine and warm in (_LOW, _HIGH):
        yield Step.CHECK_WARM_PROBE
        yield Step.MORE_AIR if warm is _HIGH else Step.WATCH_WARM_END


def _night_steps(night: Finding | None) -> Iterator[Step]:
    """Return what the night asks for."""
    if night is None:
        return
    if night.wants_heat:
        yield Step.HEAT_THE_NIGHT
    elif night.keepers_differ:
        yield Step.CONSIDER_NIGHT_HEAT
    elif night.is_likely_high:
        yield Step.COOLER_NIGHT


def _for_swimmers(
    steps: Iterator[Step], animal: Animal, missing: tuple[Quantity, ...]
) -> Iterator[Step]:
    """Return the steps; what cools down in its water has that read in place of a cool end."""
    swims = animal.water_c is not None and animal.cool_air_c is None
    for step in steps:
        if not (swims and step is Step.MEASURE_COOL_END):
            yield step
        elif Quantity.WATER in missing:
            yield Step.MEASURE_WATER


def _water_steps(findings: tuple[Finding, ...]) -> Iterator[Step]:
    """Return what the water asks for: cooled in doubt, warmed where it is surely too cool.

    A range from memory is enough for that: slowly, on a thermostat, it does no harm.
    """
    for water in (found for found in findings if found.place is Quantity.WATER):
        too_cool = water.judged is not None and water.judged.is_surely_below
        if water.is_low or too_cool:
            yield Step.WARMER_WATER
        elif water.is_likely_high:
            yield Step.COOLER_WATER


def _move(finding: Finding) -> Move | None:
    """Return which way a place has to go; it stays where that is not sure. None: no target."""
    if finding.judged is None:
        return None
    return _LOW if finding.is_low else _HIGH if finding.is_high else _FINE
