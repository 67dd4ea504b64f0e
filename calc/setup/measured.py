"""The set-up that a keeper's readings tell: each place with what is wanted and its verdict."""

from collections.abc import Iterable

from calc.animal import Animal
from calc.heat.readings import PLACES, Finding, target_at
from calc.heat.steps import Step
from calc.judgement import with_doubt
from calc.quantities import Quantity
from calc.setup.set_up import Act, Movement, SetUp, Spot, Thing

__all__ = ["change_of", "measured_set_up", "spot_of", "wanted_at"]

_CHANGES = {
    Step.SWITCH_LAMP_OFF: (Act.SWITCH_OFF, Thing.HEAT_LAMP),
    Step.COOL_DOWN_IF_TRUE: (Act.SWITCH_OFF, Thing.HEAT_LAMP),
    Step.WARM_IT_TONIGHT: (Act.ADD, Thing.HEATER),
    Step.HEAT_THE_NIGHT: (Act.ADD, Thing.HEATER),
    Step.CONSIDER_NIGHT_HEAT: (Act.ADD, Thing.HEATER),
    Step.COOLER_NIGHT: (Act.LESS, Thing.HEATER),
    Step.LOWER_LAMP: (Act.MOVE, Thing.HEAT_LAMP),
    Step.RAISE_LAMP: (Act.MOVE, Thing.HEAT_LAMP),
    Step.MOVE_LAMP_INWARD: (Act.MOVE, Thing.HEAT_LAMP),
    Step.MORE_POWER: (Act.MORE, Thing.HEAT_LAMP),
    Step.LESS_POWER: (Act.LESS, Thing.HEAT_LAMP),
    Step.SECOND_WEAKER_LAMP: (Act.ADD, Thing.HEAT_LAMP),
    Step.MORE_AIR: (Act.MORE, Thing.MESH),
    Step.LESS_AIR: (Act.LESS, Thing.MESH),
    Step.COOLER_ROOM: (Act.LESS, Thing.ROOM_HEAT),
    Step.WARMER_ROOM: (Act.MORE, Thing.ROOM_HEAT),
    Step.WARMER_WATER: (Act.ADD, Thing.HEATER),
    Step.COOLER_WATER: (Act.LESS, Thing.HEATER),
    Step.LONGER_ENCLOSURE: (Act.EXCHANGE, Thing.BOX),
    Step.USE_TRUSTED_THERMOMETER: (Act.EXCHANGE, Thing.THERMOMETER),
    Step.CHECK_PROBE_PLACES: (Act.MOVE, Thing.THERMOMETER),
    Step.MOVE_PROBE_OUT_OF_BEAM: (Act.MOVE, Thing.THERMOMETER),
    Step.CHECK_WARM_PROBE: (Act.MOVE, Thing.THERMOMETER),
    Step.WAIT_AND_READ_AGAIN: (Act.MEASURE, Thing.THERMOMETER),
    Step.MEASURE_SURFACE_WITH_GUN: (Act.MEASURE, Thing.THERMOMETER),
    Step.MEASURE_AIR_WITH_PROBE: (Act.MEASURE, Thing.THERMOMETER),
    Step.MEASURE_SURFACE: (Act.MEASURE, Thing.THERMOMETER),
    Step.MEASURE_COOL_END: (Act.MEASURE, Thing.THERMOMETER),
    Step.MEASURE_WATER: (Act.MEASURE, Thing.THERMOMETER),
    Step.WATCH_WARM_END: (Act.MEASURE, Thing.THERMOMETER),
    Step.CHECK_THE_RANGE: (Act.MEASURE, Thing.THERMOMETER),
    Step.MEASURE_AGAIN: (Act.MEASURE, Thing.THERMOMETER),
}
# Down a shown way or up it, by how much is not known.
_UP, _DOWN, _IN = (0, 0, 1), (0, 0, -1), (1, 0, 0)
_WAYS = {Step.LOWER_LAMP: _DOWN, Step.RAISE_LAMP: _UP, Step.MOVE_LAMP_INWARD: _IN}


def measured_set_up(
    findings: Iterable[Finding], animal: Animal, first: Step | None = None
) -> SetUp:
    """Return the set-up of findings: places read, places with a target, and the first step."""
    found = {finding.place: finding for finding in findings}
    spots = (spot_of(place, found.get(place), animal) for place in PLACES)
    return SetUp(
        animal=animal.slug,
        spots=tuple(spot for spot in spots if spot.value is not None or spot.wanted is not None),
        first=change_of(first) if first else None,
    )


def change_of(step: Step) -> Movement | None:
    """Return a step as a change; None where nothing is to be changed."""
    if step is Step.LEAVE_AS_IT_IS:
        return None
    act, thing = _CHANGES[step]
    return Movement(act, (thing,), toward=_WAYS.get(step))


def wanted_at(place: Quantity, animal: Animal) -> tuple[float, float] | None:
    """Return the range that counts as right at a place [degC]; None where no target is known.

    A night is right from where it needs no heat up to the cool end's day.
    """
    target = target_at(place, animal)
    if target is None:
        return None
    if place is not Quantity.NIGHT_AIR:
        return target.low, target.high
    day = animal.cool_air_c
    return (target.high, day.high) if day else None


def spot_of(place: Quantity, finding: Finding | None, animal: Animal) -> Spot:
    """Return a place with what is wanted there and, where it was read, its reading and verdict."""
    wanted = wanted_at(place, animal)
    if finding is None:
        return Spot(place, None, wanted)
    value = with_doubt(place, finding.reading_c)
    return Spot(place, None, wanted, value, finding.judged, keepers_differ=finding.keepers_differ)
