"""The figures of a set-up against the limits of its animal."""

from collections.abc import Iterator
from typing import Any

from bot.answers.setup_told import Told
from bot.dangers.past_limits import alarms_past
from bot.language.hearing import FactName
from bot.reply import Alarm
from calc.animals import Animal
from calc.limits import Met, limits_of

__all__ = ["limit_alarms"]

_TELLS = {
    FactName.BASKING: "surface_c",
    FactName.WARM: "warm_air_c",
    FactName.COOL: "coolest_air_c",
    FactName.ROOM: "room_c",
    FactName.NIGHT: "night_c",
    FactName.ROOM_NIGHT: "night_c",
    FactName.DISTANCE_BACK: "tube_m",
    FactName.DISTANCE: "tube_m",
    FactName.HOURS: "light_s",
}
_LEAST = ("night_c", "tube_m")


def limit_alarms(told: Told, animal: Animal) -> Iterator[Alarm]:
    """Yield the hazards of the limits that the told figures pass, each figure by itself."""
    limits = limits_of(animal)
    for name, field in _TELLS.items():
        said = told.measure(name)
        if said is not None:
            worst = said.value.low if field in _LEAST else said.value.high
            met: dict[str, Any] = {field: worst}
            yield from alarms_past(limits, Met(**met), said.words)
