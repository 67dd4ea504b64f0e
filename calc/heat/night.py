"""Does the night need heat: from the coldest the room gets and what the animal stands."""

from dataclasses import dataclass
from enum import Enum, auto
from math import inf

from calc.animal import Animal, Target
from calc.heat.box import HeatNeed, Spot, watts_to_hold
from calc.heat.enclosure import Enclosure, LampPlace, Lid
from calc.heat.readings import finding_for
from calc.heat.wattages import Family, next_step_up
from calc.judgement import judge_value, with_doubt
from calc.limits import limits_of
from calc.quantities import Quantity
from calc.uncertainty import Estimate
from calc.validity import check

__all__ = ["Emitter", "NightDecision", "NightPlan", "emitter_for", "night_plan"]

_COLDEST_C, _HOTTEST_C = -10.0, 45.0
_OVER_FLOOR_K = 3.0
# What of an emitter's heat ends up inside: it gives more to the air above a mesh than a lamp does.
_INSIDE = {LampPlace.INSIDE: 1.0, LampPlace.ABOVE_MESH: 0.6}


class NightDecision(Enum):
    """What the night asks for."""

    NOTHING = auto()
    KEEPERS_DIFFER = auto()
    HEAT = auto()
    TOO_WARM = auto()
    FLOOR_UNKNOWN = auto()
    WATER = auto()
    WATER_TOO_COLD = auto()


@dataclass(frozen=True, slots=True)
class NightPlan:
    """The decision for one room and animal.

    ``heat_off_c`` is where a simple on/off thermostat turns the heat off [degC];
    ``heat_off_source`` is the key of where that comes from.
    """

    decision: NightDecision
    floor_c: Target | None
    heat_off_c: float | None
    heat_off_source: str | None


@dataclass(frozen=True, slots=True)
class Emitter:
    """Watts to carry the enclosure through the coldest hour, and the step sold that covers them.

    ``power_w`` is what the emitter takes where it hangs [W]: more than the need above a mesh.
    ``step_w`` covers its high end; None where no single one does.
    """

    need: HeatNeed
    place: LampPlace
    power_w: Estimate
    step_w: float | None


def night_plan(animal: Animal, room_low_c: float) -> NightPlan:
    """Decide whether the night needs heat.

    below the low end of the floor: heat; between its ends: keepers differ; above: nothing

    Parameters
    ----------
    animal : whose floor and thermostat point count
    room_low_c : coldest the room gets at night [degC], -10 to 45

    Returns
    -------
    NightPlan

    Notes
    -----
    An unheated enclosure is taken to fall to the room by morning. A night warmer than the warm
    edge of the cool end's day is too warm. Where no thermostat point is known, 3 K above the
    floor, but not above the cool end's day.
    Source: the animal's own rows; enclosure_model for the 3 K.

    Examples
    --------
    >>> from calc.animals import animals
    >>> night_plan(animals()["bearded-dragon"], 18.0).decision
    <NightDecision.NOTHING: 1>
    """
    check("room at night", room_low_c, _COLDEST_C, _HOTTEST_C, "degC")
    floor, cool = animal.night_floor_c, animal.cool_air_c
    found = finding_for(Quantity.NIGHT_AIR, room_low_c, animal)
    warm = found.is_likely_high
    if floor is None and cool is not None:
        warm = judge_value(
            Quantity.NIGHT_AIR, with_doubt(Quantity.NIGHT_AIR, room_low_c), -inf, cool.high
        ).is_likely_above
    if warm:
        decision = NightDecision.TOO_WARM
    elif floor is None:
        decision = _of_water(animal, room_low_c)
    elif found.wants_heat:
        decision = NightDecision.HEAT
    elif found.keepers_differ:
        decision = NightDecision.KEEPERS_DIFFER
    else:
        decision = NightDecision.NOTHING
    heat_off_c, source = _heat_off(animal)
    return NightPlan(decision, floor, heat_off_c, source)


def emitter_for(
    enclosure: Enclosure,
    plan: NightPlan,
    room_low_c: float,
    place: LampPlace = LampPlace.INSIDE,
) -> Emitter | None:
    """Return the watts that hold the floor in the coldest hour, or None where it is not known.

    watts_to_hold(floor, room low) at the warm end / share inside; the step sold that covers the
    high end

    Parameters
    ----------
    enclosure : size, walls and lid
    plan : the decision for this room and animal
    room_low_c : coldest the room gets at night [degC], 0 to 45
    place : inside, or above the mesh; a solid lid has it inside

    Returns
    -------
    Emitter or None
        Heat [W].

    Notes
    -----
    The cool end holds the floor. The thermostat takes off what is too much, so too large a step
    is safe and too small is not.
    Source: enclosure_model; lamp_steps.

    Examples
    --------
    >>> from calc.animals import animals
    >>> plan = night_plan(animals()["bearded-dragon"], 12.0)
    >>> emitter_for(Enclosure(1.2, 0.6, 0.6), plan, 12.0).step_w
    250.0
    """
    if plan.floor_c is None:
        return None
    where = LampPlace.INSIDE if enclosure.lid is Lid.SOLID else place
    floor_c = max(plan.floor_c.high, room_low_c)
    need = watts_to_hold(enclosure, floor_c, room_low_c, Spot.WARM_END)
    total, share = need.total_w, _INSIDE[where]
    power = Estimate(total.low / share, total.best / share, total.high / share)
    return Emitter(need, where, power, next_step_up(power.high, Family.DARK_EMITTER))


def _of_water(animal: Animal, room_low_c: float) -> NightDecision:
    """Return what the night of an animal without a floor asks for: its water follows the room."""
    if animal.water_c is None:
        return NightDecision.FLOOR_UNKNOWN
    warm, cold = limits_of(animal).water_caution_c, limits_of(animal).cold_water_c
    if warm is not None and room_low_c >= warm.value:
        return NightDecision.TOO_WARM
    if cold is not None and room_low_c < cold.value:
        return NightDecision.WATER_TOO_COLD
    return NightDecision.WATER


def _heat_off(animal: Animal) -> tuple[float | None, str | None]:
    if animal.night_heat_off_c is not None:
        return animal.night_heat_off_c.aim, animal.night_heat_off_c.source
    if animal.night_floor_c is None:
        return None, None
    highest = animal.night_floor_c.high + _OVER_FLOOR_K
    if animal.cool_air_c is not None:
        highest = min(highest, animal.cool_air_c.high)
    return highest, "enclosure_model"
