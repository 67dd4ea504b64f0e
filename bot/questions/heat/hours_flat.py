"""A day of light that is the same all year, as facts: the simple one, or the keeper's own."""

from dataclasses import dataclass
from datetime import time

from bot.dangers.past_limits import alarms_past
from bot.facts import Hours, Name, Say, hours
from bot.preferences import Context
from bot.queries.day import HoursQuery
from bot.questions.shared import animal_name, known_by
from bot.reply import Alarm
from calc.animal import Animal, Subject, Target
from calc.judgement import Verdict, judge_reading
from calc.limits import Met, limits_of
from calc.quantities import Quantity
from calc.timer import LightTimes, flat_times

__all__ = ["FlatHours", "flat_hours"]

_HOUR_S = 3600.0
_DAY_MIN, _HALF_DAY_MIN = 24 * 60, 12 * 60
# Every place that people live in is dark then, or sleeps [min after midnight].
_DEEPEST_NIGHT = range(60, 240)
_MORNING = range(4, 13)


@dataclass(frozen=True, slots=True)
class FlatHours:
    """A day that is the same all year: as it was told, else the simple one.

    ``verdict`` is None where no times were told, or no target is known; ``morning`` is when the
    lights may go on instead of at night.
    """

    animal: Name
    on: time
    off: time
    lit: Hours
    told: bool
    light: Hours
    target: Hours | None
    target_is_range: bool
    target_known: Say | None
    verdict: Verdict | None
    at_night: bool
    basking: bool
    morning: time
    unused: tuple[str, ...]
    alarms: tuple[Alarm, ...]
    sources: tuple[str, ...]


def flat_hours(query: HoursQuery, animal: Animal, context: Context) -> FlatHours:
    """Work out a day that is the same all year."""
    target = animal.light_hours
    told = _times_told(query)
    times = told or (flat_times() if query.on is None else flat_times(on=query.on))
    alarms = alarms_past(limits_of(animal), Met(light_s=times.hours * _HOUR_S))
    low, high = (12.0, 12.0) if target is None else (target.low, target.high)
    known = None
    if target is not None:
        known = known_by(animal, Subject.LIGHT_HOURS, target, context.own)
    return FlatHours(
        animal=animal_name(animal),
        on=times.on,
        off=times.off,
        lit=hours(times.hours),
        told=told is not None,
        light=hours(12.0, (min(low, 12.0), max(high, 12.0))),
        target=None if target is None else hours(target.aim, (low, high)),
        target_is_range=low < high,
        target_known=known,
        verdict=None if told is None or target is None else _judged(told, target),
        # Where it is light all day, what is done about that comes first.
        at_night=_burns_at_night(times) and not alarms,
        basking=bool(animal.basking),
        morning=_morning(times.on),
        unused=tuple(x for x in ("zone", "months", "year") if x in query.model_fields_set),
        alarms=alarms,
        sources=("common_practice", *(() if target is None else (target.source,))),
    )


def _times_told(query: HoursQuery) -> LightTimes | None:
    """Return the keeper's own times, where it was told when the lights go off."""
    if query.off is None:
        return None
    off = _minutes(query.off)
    on = (off - _HALF_DAY_MIN) % _DAY_MIN if query.on is None else _minutes(query.on)
    lit = (off - on) % _DAY_MIN or _DAY_MIN
    return LightTimes(time(on // 60, on % 60), query.off, lit / 60.0)


def _minutes(moment: time) -> int:
    return 60 * moment.hour + moment.minute


def _judged(told: LightTimes, target: Target) -> Verdict:
    """Return how the keeper's own hours are, by the one judgement."""
    return judge_reading(Quantity.LIGHT_HOURS, told.hours, target.low, target.high).verdict


def _burns_at_night(times: LightTimes) -> bool:
    """Say whether lights burn in the middle of the night."""
    on, lit = _minutes(times.on), round(60.0 * times.hours)
    return any((minute - on) % _DAY_MIN < lit for minute in _DEEPEST_NIGHT)


def _morning(on: time) -> time:
    """Return when they may go on instead: then, half a day later where that is a morning, or 8."""
    half_a_day_later = on.replace(hour=(on.hour + 12) % 24)
    mornings = (start for start in (on, half_a_day_later) if start.hour in _MORNING)
    return next(mornings, time(8))
