"""What cannot wait in the facts of a set-up: far too much UV, an unwatched heater."""

from collections.abc import Iterator
from dataclasses import dataclass

from bot.dangers.past_limits import alarms_past
from bot.facts import Name, Say, Uvi, uvi
from bot.language.hearing import FactName
from bot.language.hearing.facts import LampKind
from bot.questions.setup.check_parts import Part, Piece
from bot.questions.setup.check_whom import Whom
from bot.questions.setup.told import SetUpTold
from bot.reply import Alarm
from calc.limits import Met, limits_of
from calc.setup.set_up import Sign
from calc.uncertainty import Estimate, spread
from calc.uv.meter import METER_DOUBT

__all__ = ["safety_parts"]

_HALF = 0.5
_WATCHED = {
    LampKind.HEAT_MAT: Name("lamp-heat-mat"),
    LampKind.HEAT_ROCK: Name("lamp-heat-rock"),
    LampKind.CERAMIC: Name("lamp-ceramic-emitter"),
    LampKind.RADIANT_PANEL: Name("lamp-radiant-panel"),
    LampKind.INFRARED_PROJECTOR: Name("lamp-infrared-projector"),
}


@dataclass(frozen=True, slots=True)
class StrongUv:
    """A UV past the limit of an animal; ``times`` is how many times the most it is given."""

    animal: Name
    uvi: Uvi
    times: Uvi | None


@dataclass(frozen=True, slots=True)
class Unwatched:
    """Heaters that run by themselves and have no thermostat."""

    heaters: tuple[Name, ...]


def safety_parts(told: SetUpTold, uv: Part, whom: Whom) -> Iterator[Part]:
    """Judge what cannot wait, from the facts and the UV."""
    yield from _strong_uv(uv, whom)
    yield from _unwatched(told)


def _strong_uv(uv: Part, whom: Whom) -> Iterator[Part]:
    """Judge a UV that is far above the range, by a reading or by every fixture it may be."""
    read = next((value for name, value in uv.values if name == "uvi"), None)
    if read is None:
        return
    told = Estimate(read.low, read.best, read.high)
    # One figure alone has the doubt of the meter that showed it.
    met = spread(told.best, [METER_DOUBT]) if told.low == told.high else told
    alarms = alarms_past(limits_of(whom.kept), Met(uvi=met))
    if not alarms:
        return
    wanted = whom.kept.uvi
    times = None if wanted is None else uvi(_halves(read.best / wanted.high))
    facts = StrongUv(whom.animal, uvi(_halves(read.best)), times)
    yield Part(Piece.SAFETY, Sign.CHANGE, Say("check-why-strong-uv", facts), alarms=alarms)


def _halves(value: float) -> float:
    return round(value / _HALF) * _HALF


def _unwatched(told: SetUpTold) -> Iterator[Part]:
    """Judge heaters that run by themselves and are said to have no thermostat."""
    without = [fact for fact in told.all(FactName.THERMOSTAT) if fact.value is False]
    heaters = [name for kind, name in _WATCHED.items() if any(x.value is kind for x in told.lamps)]
    if not (without and heaters):
        return
    facts = Unwatched(tuple(heaters))
    why, head = Say("check-why-unwatched", facts), Say("check-head-unwatched", facts)
    alarm = Alarm(key="no_thermostat", words=without[0].words)
    yield Part(Piece.SAFETY, Sign.CHANGE, why, head, alarms=(alarm,))
