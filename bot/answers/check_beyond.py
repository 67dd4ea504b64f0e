"""Figures of a set-up beyond what can be believed: each is told by itself, the rest is judged."""

from collections.abc import Callable
from dataclasses import replace

from bot.answers.check_parts import Mark, Part, Todo, Urgency
from bot.answers.heat_parts import Kept
from bot.answers.outside import outside_clause
from bot.answers.setup_told import Told
from bot.language.hearing import FactName
from bot.language.quantities import Units
from calc.heat.night import night_plan
from calc.heat.readings import Readings
from calc.validity import OutsideModelError

__all__ = ["beyond_part", "set_aside"]

_HOUR_S = 3600.0
# How each figure is given again, and what its part is called.
_PARTS = {
    FactName.BASKING: ("Basking spot", "basking:98F"),
    FactName.COOL: ("Cool end", "cool:78F"),
    FactName.WARM: ("Warm end", "warm:83F"),
    FactName.ON_FOR: ("Time the lamp was on", "lamp_on:3 hours"),
    FactName.NIGHT: ("Night", "night:64F"),
    FactName.ROOM_NIGHT: ("Night", "night:64F"),
}


def beyond_part(name: str, error: OutsideModelError, example: str, units: Units) -> Part:
    """Return the part that says which figure cannot be judged, and what is accepted."""
    why = f"{outside_clause(error, units)}; give it again, such as {example}"
    text = f"Check the figure for the {error.name} and give it again, such as {example}."
    return Part(name, Mark.CANNOT_TELL, why, (Todo(Urgency.MEASURE, text),))


def set_aside(told: Told, kept: Kept, units: Units) -> tuple[Told, dict[FactName, Part]]:
    """Return the set-up without the readings that cannot be believed, and a part for each."""
    tried: dict[FactName, Callable[[float], object]] = {
        FactName.BASKING: lambda value: Readings(basking_surface_c=value),
        FactName.COOL: lambda value: Readings(cool_air_c=value),
        FactName.WARM: lambda value: Readings(warm_air_c=value),
        FactName.ON_FOR: lambda value: Readings(lamp_on_h=value / _HOUR_S),
        FactName.NIGHT: lambda value: night_plan(kept.animal, value),
        FactName.ROOM_NIGHT: lambda value: night_plan(kept.animal, value),
    }
    beyond: dict[FactName, Part] = {}
    for name, believe in tried.items():
        said = told.measure(name)
        if said is None:
            continue
        label, example = _PARTS[name]
        try:
            believe(said.value.low)
            believe(said.value.high)
        except OutsideModelError as error:
            beyond[name] = beyond_part(label, error, example, units)
    facts = {name: rows for name, rows in told.facts.items() if name not in beyond}
    return replace(told, facts=facts), beyond
