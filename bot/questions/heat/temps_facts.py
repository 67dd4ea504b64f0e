"""The facts of readings: how each one stands, and the steps in order."""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, replace
from typing import Any

from bot.facts import Name, Say, Temp, degrees
from bot.language.mistaken import check_unit
from bot.language.shown import shown
from bot.preferences import Context
from bot.queries.heat import TempsQuery
from bot.questions.animals import animal_asked
from bot.questions.heat.gauges import GaugesTold, gauges_told
from bot.questions.heat.heat_changes import HeatChangeTold, heat_change_told, surroundings_asked
from bot.questions.heat.readings import (
    HeatReading,
    HeatStep,
    Ranged,
    Stand,
    missing_said,
    ranged,
    reading_told,
    step_told,
)
from bot.questions.heat.shared import Box, box_told
from bot.questions.shared import (
    BodyTold,
    animal_name,
    bodies_told,
    others_say,
)
from calc.animal import Animal, Subject
from calc.heat.judge import Judgement, Step, judge
from calc.heat.readings import Doubtful, Instrument, Readings
from calc.limits import Due, Met, limits_of, passed, soonest
from calc.quantities import Quantity
from calc.setup.measured import measured_set_up
from calc.setup.set_up import SetUp, Sign

__all__ = ["Temps", "temps"]

_HOUR_S = 3600.0
_ABOUT = (
    Subject.BASKING_SURFACE,
    Subject.COOL_AIR,
    Subject.WARM_AIR,
    Subject.NIGHT_FLOOR,
    Subject.WATER,
)
_INSTRUMENTS = {
    "infrared gun": Instrument.INFRARED_GUN,
    "digital probe": Instrument.DIGITAL_PROBE,
    "dial or strip": Instrument.DIAL_OR_STRIP,
}
# A box with its lamp on is never so cold: the unit was mistaken.
_COLDEST_SURFACE_C, _COLDEST_AIR_C = 13.0, 5.0
_NAMES = {
    Quantity.BASKING_SURFACE: ("basking_surface", "basking_surface_wanted"),
    Quantity.COOL_AIR: ("cool_air", "cool_air_wanted"),
    Quantity.WARM_AIR: ("warm_air", "warm_air_wanted"),
    Quantity.NIGHT_AIR: ("night_low", "night_low_wanted"),
    Quantity.WATER: ("water", "water_wanted"),
}


@dataclass(frozen=True, slots=True)
class Temps:
    """The readings of one animal's box, and the steps; None: not told, or not so.

    ``warm_past`` is the most that the cool end should have, where it is warmer and no room was
    told; ``mistaken`` is a reading as typed that makes sense in °F only;
    ``unchecked``: a reading is judged by a range from memory alone.
    """

    animal: Name
    readings: tuple[HeatReading, ...]
    names: tuple[tuple[str, str], ...]
    steps: tuple[HeatStep, ...]
    doubts: tuple[Doubtful, ...]
    missing: tuple[Quantity, ...]
    changes: tuple[HeatChangeTold, ...]
    room: Temp | None
    warm_past: Temp | None
    box: Box | None
    mistaken: str | None
    unchecked: bool
    others: tuple[Say, ...]
    bodies: tuple[BodyTold, ...]
    sources: tuple[str, ...]
    set_up: SetUp
    gauges: GaugesTold

    @property
    def first(self) -> Step:
        """Return the one thing to do first."""
        return self.steps[0].step

    @property
    def told(self) -> tuple[Say, ...]:
        """Return what was read, to be listed."""
        return tuple(Say("heat-clause", reading) for reading in self.readings)

    @property
    def right(self) -> tuple[Say, ...]:
        """Return the places that are right, to be listed."""
        return tuple(Say("heat-listed", r) for r in self.readings if r.stand is Stand.RIGHT)

    @property
    def unread(self) -> tuple[Say, ...]:
        """Return what is still to be measured, to be listed."""
        return missing_said(self.missing)

    @property
    def contradict(self) -> bool:
        """Say whether the readings contradict each other."""
        return any(each.step is Step.CHECK_PROBE_PLACES for each in self.steps)

    @property
    def leaves_open(self) -> bool:
        """Say whether nothing is wrong, and a reading has no target."""
        unknown = any(reading.stand is Stand.NO_TARGET for reading in self.readings)
        return unknown and self.first is Step.LEAVE_AS_IT_IS


def temps(query: TempsQuery, context: Context) -> Temps:
    """Work out the verdict on each reading, and what to do in order."""
    check_unit(query.basking, _COLDEST_SURFACE_C, "basking")
    check_unit(query.cool, _COLDEST_AIR_C, "cool")
    check_unit(query.warm, _COLDEST_AIR_C, "warm")
    animal = animal_asked(query.animal, context)
    told = _told(query, animal)
    judgement = judge(_readings(query, told), animal, surroundings_asked(query))
    found = judgement.findings
    set_up = measured_set_up(found, animal, judgement.first)
    if Step.CHECK_PROBE_PLACES in judgement.steps:
        # Of readings that contradict each other nobody can tell anything.
        held = tuple(replace(spot, held=Sign.CANNOT_TELL) for spot in set_up.spots)
        set_up = replace(set_up, spots=held)
    return Temps(
        animal=animal_name(animal),
        readings=tuple(reading_told(f, animal, context.own, told.get(f.place)) for f in found),
        names=tuple(_NAMES[finding.place] for finding in found),
        steps=tuple(step_told(step, judgement.changes) for step in judgement.steps),
        doubts=judgement.doubts,
        missing=judgement.missing,
        changes=tuple(map(heat_change_told, judgement.changes)),
        room=None if query.room is None else degrees(query.room.low),
        warm_past=None if query.room is not None else _too_warm_past(judgement),
        box=box_told(query.enclosure, query.material, query.lid, query.model_fields_set),
        mistaken=_mistaken(query, animal),
        unchecked=any(f.target is not None and f.target.is_unchecked for f in found),
        others=others_say(animal, *_ABOUT) if found else (),
        bodies=bodies_told(animal) if found else (),
        sources=tuple(_sources(judgement, animal)),
        set_up=set_up,
        gauges=gauges_told(set_up, animal),
    )


def _told(query: TempsQuery, animal: Animal) -> dict[Quantity, Ranged]:
    """Return each reading as it was told: one value, or a range with the end that is judged."""
    read = {
        Quantity.BASKING_SURFACE: query.basking,
        Quantity.COOL_AIR: query.cool,
        Quantity.WARM_AIR: query.warm,
        Quantity.NIGHT_AIR: query.night,
        Quantity.WATER: query.water,
    }
    return {place: ranged(place, m, animal) for place, m in read.items() if m is not None}


def _readings(query: TempsQuery, told: Mapping[Quantity, Ranged]) -> Readings:
    read = {place: each.reading_c for place, each in told.items()}
    return Readings(
        read.get(Quantity.BASKING_SURFACE),
        read.get(Quantity.COOL_AIR),
        read.get(Quantity.WARM_AIR),
        read.get(Quantity.NIGHT_AIR),
        None if query.lamp_on is None else query.lamp_on.low / _HOUR_S,
        frozenset(_INSTRUMENTS[name] for name in query.measured),
        read.get(Quantity.WATER),
    )


def _too_warm_past(judgement: Judgement) -> Temp | None:
    """Return the high end that the cool end is past, or None."""
    for finding in judgement.findings:
        if finding.place is Quantity.COOL_AIR and finding.is_high and finding.target is not None:
            return degrees(finding.target.high)
    return None


def _mistaken(query: TempsQuery, animal: Animal) -> str | None:
    """Return a reading as typed that passes a limit in °C and none in °F, where there is one."""
    limits = limits_of(animal)
    read = {"surface_c": query.basking, "warm_air_c": query.warm, "coolest_air_c": query.cool}
    for field, measure in read.items():
        if measure is None or measure.unit != "degC":
            continue
        in_c: dict[str, Any] = {field: measure.high}
        in_f: dict[str, Any] = {field: (measure.high - 32.0) / 1.8}
        past, past_f = passed(limits, Met(**in_c)), passed(limits, Met(**in_f))
        if soonest(past) is Due.NOW and not past_f:
            return shown(measure.text)
    return None


def _sources(judgement: Judgement, animal: Animal) -> Iterator[str]:
    targets = [finding.target.source for finding in judgement.findings if finding.target]
    yield from targets
    yield "common_practice"
    if not targets:
        return
    if judgement.changes:
        yield from ("enclosure_model", "lamp_steps")
    yield from (d.source for d in animal.disagreements_about(*_ABOUT))
    yield from (body.source for body in animal.bodies)
