"""What cannot wait in the facts of a set-up: far too much UV, an unwatched heater."""

from collections.abc import Iterator

from bot.answers.check_parts import Mark, Part
from bot.answers.figures import number
from bot.answers.heat_parts import Kept
from bot.answers.limits_told import with_meter_doubt
from bot.answers.setup_told import Told
from bot.dangers.past_limits import alarms_past
from bot.language.hearing import FactName
from bot.language.hearing.facts import LampKind
from bot.reply import Alarm
from calc.limits import Met, limits_of
from calc.uncertainty import Estimate

__all__ = ["safety_parts"]

_NAME = "Safety"
_WATCHED = {
    LampKind.HEAT_MAT: "heat mat",
    LampKind.HEAT_ROCK: "heat rock",
    LampKind.CERAMIC: "ceramic heater",
    LampKind.RADIANT_PANEL: "radiant panel",
    LampKind.INFRARED_PROJECTOR: "infrared projector",
}


def safety_parts(told: Told, uv: Part, kept: Kept) -> Iterator[Part]:
    """Judge what cannot wait, from the facts and the UV."""
    yield from _strong_uv(uv, kept)
    yield from _unwatched(told)


def _strong_uv(uv: Part, kept: Kept) -> Iterator[Part]:
    """Judge a UV that is far above the range, by a reading or by every fixture it may be."""
    wanted = kept.animal.uvi
    read = next((value for value in uv.values if value.name == "uvi"), None)
    if read is None:
        return
    told = with_meter_doubt(Estimate(read.low, read.best, read.high))
    alarms = alarms_past(limits_of(kept.animal), Met(uvi=told))
    if not alarms:
        return
    why = f"a UV index of about {number(read.best, 0.5)} hurts eyes and skin of nearly every animal"
    if wanted is not None:
        why = (
            f"the UV is about {number(read.best / wanted.high, 0.5)} times the most that "
            f"{kept.whom} is given: it can hurt eyes and skin"
        )
    yield Part(_NAME, Mark.CHANGE, why, alarms=alarms)


def _unwatched(told: Told) -> Iterator[Part]:
    """Judge heaters that run by themselves and are said to have no thermostat."""
    without = any(fact.value is False for fact in told.all(FactName.THERMOSTAT))
    kinds = [name for kind, name in _WATCHED.items() if any(x.value is kind for x in told.lamps)]
    if not (without and kinds):
        return
    names = " and ".join(kinds)
    said = next(fact.words for fact in told.all(FactName.THERMOSTAT) if fact.value is False)
    why = f"a {names} without a thermostat can overheat and burn (common practice, no source)"
    yield Part(_NAME, Mark.CHANGE, why, alarms=(Alarm(key="no_thermostat", words=said),))
