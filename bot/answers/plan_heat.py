"""The heat of a plan: the basking lamp, the air, the night, the hours, and what each must reach."""

from dataclasses import dataclass

from bot.answers.animals import known_by
from bot.answers.figures import hours, length, temperature, watts, watts_range
from bot.answers.heat_parts import target_text
from bot.answers.plan_told import Basis
from bot.language.quantities import Units
from bot.reply import Row, Value
from calc.animals import Animal
from calc.heat.enclosure import watts_to_hold
from calc.heat.first_wattage import FirstWattage, LampShape, first_wattage
from calc.heat.night import NightDecision, emitter_for, night_plan
from calc.uncertainty import Estimate
from calc.validity import OutsideModelError

__all__ = ["HeatPlan", "heat_plan"]

# Lamp and holder under a closed lid; over mesh the lamp's face is right above it.
_HOLDER_M, _OVER_MESH_M = 0.15, 0.02
# Shorter than this, both ends are nearly alike whatever the lamp (from memory, no source).
_SHORTEST_M = {True: 0.9, False: 0.6}
_FLAT_DAY_H = 12.0
# Lamps nearer than this are within an animal's reach (from memory, no source).
_NEAR_M = 0.25


@dataclass(frozen=True, slots=True)
class HeatPlan:
    """The heat of a plan."""

    answer: str
    too_short: str
    rows: tuple[Row, ...]
    steps: tuple[str, ...]
    shopping: tuple[tuple[str, str, str], ...]
    values: tuple[Value, ...]
    sources: tuple[str, ...]


def heat_plan(basis: Basis, platform_m: float, units: Units) -> HeatPlan:
    """Plan the heat for an animal in a box with a platform of this height."""
    animal = basis.kept.animal
    distance_m = _lamp_distance(basis, platform_m)
    lamp = _lamp(basis, distance_m)
    rows = [*_targets(animal, units)]
    shopping: list[tuple[str, str, str]] = []
    values: list[Value] = []
    answer = "For the heat I can name no lamp: ask watts with the surface you want."
    if animal.basking_surface_c is None:
        answer = "No basking spot is known here for it: hold the air instead."
    if lamp is not None:
        size = watts(lamp.buy_w[0])
        spare = f" and the {watts(lamp.buy_w[1])} below it" if len(lamp.buy_w) > 1 else ""
        answer = f"For the heat, a flood lamp: start with {size}{spare}."
        span = watts_range(lamp.watts.low, lamp.watts.high)
        told = (
            f"{length(distance_m, units)} from its face to the platform; {span} may be right, "
            "lamps of one wattage differ by tens of degrees, so let the thermometer decide"
        )
        if distance_m < _NEAR_M:
            told += "; that is near, so never nearer than its label allows, and guard it well"
        rows.append(Row(label="Basking lamp", text=told))
        sizes = " and ".join(watts(step) for step in lamp.buy_w)
        why = "makes the basking spot" if animal.basking else "a gentle warm spot, on a dimmer"
        shopping.append(("Basking lamp", f"white flood, {sizes}", why))
        shopping.append(("Lamp holder", "ceramic, guarded, marked for those watts", "fire safety"))
        values.append(Value.of("lamp_power", lamp.watts, "W"))
    air, air_values = _air(basis, units)
    night, night_items, night_values = _night(basis, units)
    rows += [*air, *night, _hours(animal)]
    shopping += night_items
    shopping += [
        ("Infrared gun", "any with a setting near 95 %", "the basking surface"),
        ("Digital probes", "two", "the air at both ends"),
        ("Timer", "for lamp and tube together", "the same hours every day"),
    ]
    return HeatPlan(
        answer=answer,
        too_short=_too_short(basis, units),
        rows=tuple(rows),
        steps=_steps(animal, units),
        shopping=tuple(shopping),
        values=(*values, *air_values, *night_values),
        sources=_sources(animal),
    )


def _lamp_distance(basis: Basis, platform_m: float) -> float:
    height = basis.size.height_m
    face = height - _HOLDER_M if basis.mesh is None else height + _OVER_MESH_M
    return face - platform_m


def _lamp(basis: Basis, distance_m: float) -> FirstWattage | None:
    target = basis.kept.animal.basking_surface_c
    if target is None:
        return None
    try:
        return first_wattage(LampShape.FLOOD, basis.room_c, target.aim, distance_m)
    except OutsideModelError:
        return None


def _targets(animal: Animal, units: Units) -> tuple[Row, ...]:
    wanted = (
        ("Basking surface", animal.basking_surface_c),
        ("Warm end, in shade", animal.warm_air_c),
        ("Cool end", animal.cool_air_c),
    )
    unknown = "not known here; ask a keeper or reptile vet"
    return tuple(
        Row(label=label, text=target_text(target, units) if target else unknown)
        for label, target in wanted
    )


def _air(basis: Basis, units: Units) -> tuple[tuple[Row, ...], tuple[Value, ...]]:
    target = basis.kept.animal.cool_air_c
    if target is None:
        return (), ()
    try:
        need = watts_to_hold(basis.box, target.aim, basis.room_c).total_w
    except OutsideModelError:
        return (), ()
    if need.best == 0.0:
        told = (
            f"the room of {temperature(basis.room_c, units)} is as warm as the cool end should be"
        )
        return (Row(label="Air", text=told),), ()
    told = (
        f"about {watts(need.best)} ({watts_range(need.low, need.high)}) of heat inside, all lamps "
        f"counted, hold {temperature(target.aim, units)} at the cool end; the basking lamp counts"
    )
    return (Row(label="Air", text=told),), (Value.of("power", need, "W"),)


def _night(
    basis: Basis, units: Units
) -> tuple[tuple[Row, ...], list[tuple[str, str, str]], tuple[Value, ...]]:
    if basis.night_c is None:
        told = (
            "leave a thermometer that keeps the lowest reading in the room for a night, then ask "
            "night; most rooms need no heat"
        )
        return (Row(label="Night", text=told),), [], ()
    plan = night_plan(basis.kept.animal, basis.night_c)
    room = temperature(basis.night_c, units)
    value = (Value.of("room_low", Estimate.exact(basis.night_c), "degC"),)
    floor = f" (heat below {target_text(plan.floor_c, units)})" if plan.floor_c else ""
    match plan.decision:
        case NightDecision.NOTHING:
            text = f"nothing to do at {room}: everything off, dark and cooler is good{floor}"
        case NightDecision.TOO_WARM:
            text = f"{room} is warmer than it should be; no heat at all"
        case NightDecision.FLOOR_UNKNOWN:
            text = f"{room}: how cool a night may be is not known here, ask a keeper or vet"
        case _:
            return _heated_night(basis, room, floor, value)
    return (Row(label="Night", text=text),), [], value


def _heated_night(
    basis: Basis, room: str, floor: str, value: tuple[Value, ...]
) -> tuple[tuple[Row, ...], list[tuple[str, str, str]], tuple[Value, ...]]:
    assert basis.night_c is not None
    plan = night_plan(basis.kept.animal, basis.night_c)
    emitter = emitter_for(basis.box, plan, basis.night_c)
    size = watts(emitter.step_w) if emitter and emitter.step_w else "by the question night"
    kind = "if you heat, " if plan.decision is NightDecision.KEEPERS_DIFFER else ""
    text = f"{room} is cool: {kind}heat without light, {size}, on an on/off thermostat{floor}"
    items = [
        ("Night heater", f"ceramic emitter or radiant panel, {size}", "heat without light"),
        ("Thermostat", "on/off, its probe at the animal's height", "turns it off again"),
    ]
    values = (*value, Value.of("emitter_power", emitter.need.total_w, "W")) if emitter else value
    return (Row(label="Night", text=text),), items, values


def _hours(animal: Animal) -> Row:
    wanted = animal.light_hours
    text = f"{hours(_FLAT_DAY_H)} on, {hours(_FLAT_DAY_H)} off all year is a fine start"
    if wanted is not None and not wanted.low <= _FLAT_DAY_H <= wanted.high:
        text = f"{hours(wanted.aim)} of light a day ({known_by(wanted)})"
    return Row(label="Hours", text=f"{text}; lamp and tube on one timer")


def _too_short(basis: Basis, units: Units) -> str:
    least = _SHORTEST_M[basis.kept.animal.basking]
    have = basis.size.length_m
    if have >= least:
        return ""
    return (
        f"{length(have, units)} is short for a gradient: both ends will be nearly alike. At least "
        f"{length(least, units)} is wanted (from memory, no source)."
    )


def _steps(animal: Animal, units: Units) -> tuple[str, ...]:
    target = animal.basking_surface_c
    aim = f" ({temperature(target.aim, units)} is the aim)" if target else ""
    return (
        (
            "First day, without the animal: lamp and tube on for three hours, then read the "
            f"basking surface with the infrared gun{aim} and the air at both ends with probes."
        ),
        "Too hot or too cool? Ask basking with that reading: it says how far to move the lamp.",
        "First night: note the lowest temperature in the enclosure.",
        "First week: read all four places every day at the same hour; change one thing at a time.",
    )


def _sources(animal: Animal) -> tuple[str, ...]:
    targets = (
        animal.basking_surface_c,
        animal.warm_air_c,
        animal.cool_air_c,
        animal.night_floor_c,
    )
    keys = [target.source for target in targets if target]
    return (*keys, "lamp_beams", "lamp_steps", "enclosure_model", "common_practice")
