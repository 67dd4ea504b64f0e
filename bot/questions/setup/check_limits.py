"""What cannot wait in the figures and lamps of a set-up: limits passed, a pane between."""

from collections.abc import Iterator
from typing import Any

from bot.dangers.past_limits import alarms_past
from bot.language.hearing import FactName
from bot.questions.setup.told import SetUpTold
from bot.reply import Alarm
from calc.animal import Animal
from calc.limits import Met, limits_of

__all__ = ["NO_UV", "lamp_alarms", "limit_alarms"]

NO_UV = "no_uv_through_glass"
_TELLS = {
    FactName.BASKING: "surface_c",
    FactName.WARM: "warm_air_c",
    FactName.COOL: "coolest_air_c",
    FactName.WATER: "water_c",
    FactName.ROOM: "room_c",
    FactName.NIGHT: "night_c",
    FactName.ROOM_NIGHT: "night_c",
    FactName.DISTANCE_BACK: "tube_m",
    FactName.DISTANCE: "tube_m",
    FactName.HOURS: "light_s",
}
_LEAST = ("night_c", "tube_m")


def limit_alarms(told: SetUpTold, animal: Animal) -> Iterator[Alarm]:
    """Yield the hazards of the limits that the told figures pass, each figure by itself."""
    limits = limits_of(animal)
    for name, field in _TELLS.items():
        said = told.measure(name)
        if said is not None:
            worst = said.value.low if field in _LEAST else said.value.high
            met: dict[str, Any] = {field: worst}
            yield from alarms_past(limits, Met(**met), said.words)


def lamp_alarms(told: SetUpTold) -> Iterator[Alarm]:
    """Yield that no useful UV comes through what is between, where that was told."""
    if told.pane:
        yield Alarm(key=NO_UV, words=told.pane.words)
    elif told.pane_lid and (told.tube or told.uv_lamp):
        yield Alarm(key=NO_UV, words=told.pane_lid.words, asked=True)
