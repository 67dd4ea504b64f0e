"""When the lights go on and off. Words: ``words/<language>/hours.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import time

from bot.command import Command
from bot.dangers.past_limits import alarms_past
from bot.facts import Hours, Name, Say, Says, hours
from bot.layered import Brief, Care, Layered, Row, Table, Weight
from bot.preferences import Context
from bot.queries.day import Home, HoursQuery
from bot.questions.animals import animal_asked
from bot.questions.heat.hours_picture import year_picture
from bot.questions.heat.hours_seasons import Seasons, seasons
from bot.questions.heat.shared import HEAT_CARE
from bot.questions.shared import animal_name, known_by
from bot.reply import Alarm, Picture
from calc.animal import Animal, Subject, Target
from calc.judgement import Verdict, judge_reading
from calc.limits import Met, limits_of
from calc.quantities import Quantity
from calc.timer import LightTimes, flat_times

__all__ = ["HOURS", "FlatHours", "HomeUnknown", "light_hours", "tell"]

_GUIDE = ("day-length", "nights")
_HOUR_S = 3600.0
_DAY_MIN, _HALF_DAY_MIN = 24 * 60, 12 * 60
# Every place that people live in is dark then, or sleeps [min after midnight].
_DEEPEST_NIGHT = range(60, 240)
_MORNING = range(4, 13)


@dataclass(frozen=True, slots=True)
class HomeUnknown:
    """An animal of which nobody told where it comes from."""

    animal: Name


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


def light_hours(query: HoursQuery, context: Context) -> FlatHours | Seasons | HomeUnknown:
    """Work out a flat day, or the light of each month where a latitude is given."""
    if query.latitude is None:
        return _flat(query, animal_asked(query.animal, context), context)
    if not isinstance(query.latitude, Home):
        # A place has its seasons whoever lives there: the animal is not asked for.
        return seasons(query, None)
    animal = animal_asked(query.animal, context)
    if animal.home_latitude_deg is None:
        return HomeUnknown(animal_name(animal))
    return seasons(query, animal)


def _flat(query: HoursQuery, animal: Animal, context: Context) -> FlatHours:
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


def tell(facts: FlatHours | Seasons | HomeUnknown) -> Layered:
    """Tell the hours, then how to set the timer."""
    if isinstance(facts, FlatHours):
        return _flat_told(facts)
    return _seasons_told(facts) if isinstance(facts, Seasons) else _home_unknown_told(facts)


def _home_unknown_told(facts: HomeUnknown) -> Layered:
    say = Says("hours", facts)
    return Layered(
        command="hours",
        status="problem",
        title=say("no-home-title"),
        brief=Brief(head=say("no-home"), steps=(say("no-home-do"),)),
        steps=(say("no-home-do"),),
        guide=_GUIDE,
    )


def _flat_told(facts: FlatHours) -> Layered:
    say = Says("hours", facts)
    return Layered(
        command="hours",
        title=say("title"),
        brief=_flat_brief(facts, say),
        steps=(
            *([say("step-morning")] if facts.at_night else []),
            say("step-set"),
            *_timer_steps(say),
            say("step-seasons"),
        ),
        numbers=tuple(_flat_numbers(facts, say)),
        why=(say("why-flat"),),
        care=_care(say),
        values=(("light", facts.light), ("light_told", facts.lit if facts.told else None)),
        guide=_GUIDE,
        sources=facts.sources,
        alarms=facts.alarms,
    )


def _flat_brief(facts: FlatHours, say: Says) -> Brief:
    if facts.at_night:
        awake = say("awake" if facts.basking else "asleep")
        lit = () if facts.verdict is None else (say("lit-at-night"),)
        return Brief(head=say("night"), range=(awake, *lit), steps=(say("do-morning"),))
    if not facts.told:
        return Brief(head=say("simple"), range=(say("times"),), steps=(say("do-set"),))
    if facts.verdict is None:
        return Brief(head=say("unjudged"), range=(say("no-target"),), steps=(say("do-twelve"),))
    fine = facts.verdict is Verdict.FINE
    steps = (say("do-keep" if fine else "do-twelve"),)
    return Brief(head=say.by("judged", facts.verdict), range=(say("aim"),), steps=steps)


def _timer_steps(say: Says) -> tuple[Say, ...]:
    return say("step-one-timer"), say("step-dark")


def _care(say: Says) -> tuple[Care, ...]:
    # No lamp is hotter for it: the guard is told where heat is asked about.
    return (Care(say("care"), say("care-short"), Weight.STEP), *HEAT_CARE[1:])


def _flat_numbers(facts: FlatHours, say: Says) -> Iterator[Row]:
    yield Row(say("label-simple"), say("simple-known"))
    if facts.told:
        yield Row(say("label-told"), say("told"))
    if facts.target is not None and facts.target_is_range:
        yield Row(say("label-target"), say("target"))
    if facts.unused:
        yield Row(say("label-unused"), say("unused-flat"))


def _seasons_told(facts: Seasons) -> Layered:
    say = Says("hours", facts)
    return Layered(
        command="hours",
        title=say("title-home" if facts.home_of else "title-year"),
        brief=Brief(
            head=say("steady" if facts.steady else "seasons"),
            range=(say("just-as-good"), *_turned(facts, say)),
            assumed=() if facts.zone else (say("no-zone-short"),),
            steps=(say("do-month"),),
        ),
        steps=(say("step-month"), *_timer_steps(say), say("step-rest")),
        numbers=tuple(_seasons_numbers(facts, say)),
        table=_table(facts),
        care=_care(say),
        values=tuple((f"light_{n:02d}", lit.lit) for n, lit in enumerate(facts.months, 1)),
        guide=_GUIDE,
        sources=facts.sources,
        picture=lambda teller: Picture.later(year_picture, facts, teller),
    )


def _turned(facts: Seasons, say: Says) -> Iterator[Say]:
    """Yield in whose summer the months stand, where that is not plain."""
    if facts.by_itself:
        yield say("turned-short")
    elif facts.south and not facts.turned:
        yield say("south-short")


def _seasons_numbers(facts: Seasons, say: Says) -> Iterator[Row]:
    yield Row(say("label-latitude"), say("latitude"))
    yield Row(say("label-bound"), say("bound"))
    yield Row(say("label-day"), say("day-meant"))
    yield Row(say("label-clock"), say("clock" if facts.zone else "no-zone"))
    if facts.turned or facts.south:
        yield Row(say("label-seasons"), say("turned" if facts.turned else "south"))
    if facts.unused:
        yield Row(say("label-unused"), say("unused-seasons"))
    if facts.polar:
        yield Row(say("label-polar"), say("polar"))


def _table(facts: Seasons) -> Table:
    columns = (
        Say("hours-column-month"),
        Say("hours-column-lit"),
        Say("hours-column-on"),
        Say("hours-column-off"),
        Say("hours-column-outside"),
    )
    rows = tuple(
        (
            lit.month,
            Say("hours-cell-lit", lit),
            Say("hours-cell-on", lit),
            Say("hours-cell-off", lit),
            Say("hours-cell-outside", lit),
        )
        for lit in facts.months
    )
    return Table(columns, rows)


HOURS = Command(
    name="hours",
    query=HoursQuery,
    facts=light_hours,
    tell=tell,
    examples=(
        "hours animal:bearded dragon",
        "hours animal:corn snake latitude:home zone:America/Chicago year:2026",
        "hours latitude:30S zone:Europe/London months:turned",
    ),
    guide=_GUIDE,
)
