"""Whose limits count, and what of a question's own figures passes them.

Every option of every question that tells a temperature, a distance or a UV index is looked at
here, before it is answered and also where it cannot be.
"""

from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from bot.command import Command
from bot.language.quantities import Measure, Units
from bot.language.shown import shown
from bot.preferences import Context, Preferences
from bot.queries.query import Query
from bot.queries.typed import typed
from bot.question_context import read_alone, states_of
from bot.reply import Alarm
from calc.uncertainty import Estimate, spread

if TYPE_CHECKING:
    from calc.limits import Limits, Met

__all__ = ["told_alarms", "with_meter_doubt"]

# A lit box is never so cold in °F: the unit was mistaken, and that is asked first.
_COLDEST_LIT_C = 5.0


@dataclass(frozen=True, slots=True)
class _Tells:
    """What an option tells; ``planned``: of a place where nothing lies yet."""

    fields: tuple[str, ...]
    planned: bool = False


_TUBE = {"distance": _Tells(("tube_m",))}
_LIGHT = {"hours": _Tells(("light_s",))}
_READINGS = {
    "basking": _Tells(("surface_c",)),
    "cool": _Tells(("coolest_air_c",)),
    "warm": _Tells(("warm_air_c",)),
    "night": _Tells(("night_c",)),
    "water": _Tells(("water_c",)),
}
_TELLS: Mapping[str, Mapping[str, _Tells]] = {
    "temps": _READINGS | {"room": _Tells(("room_c",))},
    "check": _READINGS | _TUBE | _LIGHT,
    "basking": {
        "surface": _Tells(("surface_c",)),
        "air": _Tells(("warm_air_c",)),
        "wood": _Tells(("wood_c",)),
    },
    "surface": {"reading": _Tells(("surface_c",))},
    "air": {"room": _Tells(("room_c",))},
    "watts": {"room": _Tells(("room_c",))},
    "night": {"room": _Tells(("night_c", "room_c"))},
    "plan": {"room": _Tells(("room_c",)), "night": _Tells(("night_c",))},
    "uvi": _TUBE,
    "meter": _TUBE,
    "section": _TUBE,
    "tube": {"distance": _Tells(("tube_m",), planned=True)},
    "dose": {"uvi": _Tells(("uvi",))} | _TUBE | _LIGHT,
}


def with_meter_doubt(uvi: Estimate) -> Estimate:
    """Return a UV index as read; one figure alone has the doubt of the meter that showed it."""
    from calc.uv.meter import METER_DOUBT

    return spread(uvi.best, [METER_DOUBT]) if uvi.low == uvi.high else uvi


def told_alarms(
    command: Command, values: Mapping[str, object], preferences: Preferences
) -> tuple[Alarm, ...]:
    """Return the hazards of the limits that a question's own figures pass.

    Each figure is read by itself, so that one that cannot be read hides no other.
    """
    tells = _TELLS.get(command.name)
    if tells is None:
        return ()
    from bot.dangers.past_limits import merged
    from bot.questions.shared import limits_for

    default, own = preferences.default_animal, preferences.own
    states = states_of(values, preferences)
    context = Context(Units.IN, default_animal=default, own=own, states=states)
    limits = limits_for(typed(values.get("animal", "")), context)
    return merged(_alarms(command.query, values, tells, limits, preferences))


def _alarms(
    query: type[Query],
    values: Mapping[str, object],
    tells: Mapping[str, _Tells],
    limits: "Limits",
    preferences: Preferences,
) -> Iterator[Alarm]:
    from bot.dangers.past_limits import alarms_past

    for option, told in tells.items():
        value = read_alone(query, option, values.get(option, ""), preferences)
        met = None if value is None else _met(told.fields, value)
        if met is not None:
            words = f"{option} {shown(typed(values[option]))}"
            yield from alarms_past(limits, met, words, asked=told.planned)


def _met(names: tuple[str, ...], value: object) -> "Met | None":
    from calc.limits import Met

    if isinstance(value, tuple):
        low, high = value
        return Met(uvi=with_meter_doubt(Estimate(low, (low + high) / 2.0, high)))
    if not isinstance(value, Measure):
        return None
    mistaken = value.unit == "degF" and value.high < _COLDEST_LIT_C
    found: dict[str, Any] = {
        name: value.low if name in ("night_c", "tube_m") else value.high
        for name in names
        if not (mistaken and name == "coolest_air_c")
    }
    return Met(**found) if found else None
