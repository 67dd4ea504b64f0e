"""A day under the tube beside a day of sun, and how long people may stay in its light.

Words: ``words/<language>/dose.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto
from math import floor

from bot.command import Command
from bot.facts import (
    Angle,
    Hours,
    Length,
    Number,
    Say,
    Says,
    Share,
    Uvi,
    angle,
    hours,
    metres,
    plain_number,
    share,
    uvi,
)
from bot.layered import Brief, Care, Layered, Row, Weight
from bot.preferences import Context
from bot.queries.uv_depth import DoseQuery
from bot.questions.uv.length_asked import lit_length
from calc.shape.line import line_shape
from calc.uncertainty import Estimate
from calc.uv.dose import SUN_DOUBTS, SunDay, dose_sed, safe_time, sun_day
from calc.uv.tube import STANDARD_T5_HO

__all__ = ["DOSE", "Dose", "dose", "tell"]

_SOURCES = ("cie125", "cie_17_26_073", "directive_2006_25", "acgih1992")
_HOUR_S, _MINUTE_S, _HOUR_MIN = 3600.0, 60.0, 60.0
_WORKING_DAY_H = 8.0
_ARM_M = 0.60
# From here on an hour says more than a minute, and half a day of noon is no comparison.
_IN_HOURS_MIN, _HALF_A_DAY_MIN = 100.0, 720.0
_SHARE_TO = 2.0
# A midday sun that people know from a summer, to tell a dose by where no place is named.
_STRONG_UVI = 10.0
# A noon sun weaker than this is no measure of anything.
_LEAST_NOON_UVI = 0.5


class Noon(Enum):
    """How long a midday sun is told to shine for the same dose; ``NONE``: that sun is too weak."""

    MINUTES = auto()
    HOURS = auto()
    HALF_A_DAY = auto()
    NONE = auto()


class Stay(Enum):
    """How long people may stay in the light."""

    MINUTES = auto()
    HOURS = auto()
    WHOLE_DAY = auto()


@dataclass(frozen=True, slots=True)
class People:
    """How long healthy grown people may stay at a UV index; rounded down, never past the limit."""

    at: Uvi
    stay: Stay
    minutes: int
    time: Hours
    allowed: Hours
    arm: Length


@dataclass(frozen=True, slots=True)
class SunThere:
    """The sun of the place and month that were named.

    ``share`` of a clear day is told up to twice as much, beyond that how often: ``times``.
    """

    latitude: Angle
    south: bool
    month: Say
    noon_uvi: Uvi
    dose: Number
    strong: Hours
    share: Share | None
    times: Number | None


@dataclass(frozen=True, slots=True)
class Dose:
    """The dose of a day [SED] at one UV index, and the time that people have there."""

    at: Uvi
    lit: Hours
    dose: Number
    noon: Noon
    noon_time: Number
    sun: SunThere | None
    month: Say | None
    people: People
    at_arm: People | None
    length_assumed: bool
    sources: tuple[str, ...]


def dose(query: DoseQuery, context: Context) -> Dose:
    """Work out the day's dose, the sun's, and the time that people have."""
    lit_h = query.hours.low / _HOUR_S
    low, high = query.uvi
    middle = (low + high) / 2
    lamp = Estimate(dose_sed(low, lit_h), dose_sed(middle, lit_h), dose_sed(high, lit_h))
    sun = None
    if query.latitude is not None and query.month is not None:
        sun = sun_day(query.latitude, query.month)
    noon, noon_time = _noon(lamp, sun)
    return Dose(
        at=uvi(middle, (low, high)),
        lit=hours(lit_h),
        dose=plain_number(lamp),
        noon=noon,
        noon_time=noon_time,
        sun=None if sun is None else _sun(query, sun, lamp),
        month=None if query.month is None else _month(query.month),
        people=_people(high),
        at_arm=None if query.distance is None else _people(_uvi_at_arm(query)),
        length_assumed=query.distance is not None and query.length is None,
        sources=tuple(_sources(query, sun)),
    )


def _month(month: int) -> Say:
    return Say.of("figures-month", str(month))


def _noon(lamp: Estimate, sun: SunDay | None) -> tuple[Noon, Number]:
    """Return for how long the midday sun gives the dose of the lamp's day [SED]."""
    at = Estimate.exact(_STRONG_UVI) if sun is None else sun.noon_uvi
    if at.best < _LEAST_NOON_UVI:
        return Noon.NONE, plain_number(0.0)
    hour = Estimate(*(dose_sed(uvi, 1.0) for uvi in (at.low, at.best, at.high)))
    span = _over(lamp, hour)
    ends = [_HOUR_MIN * end for end in (span.best, span.low, span.high)]
    if ends[1] >= _HALF_A_DAY_MIN:
        return Noon.HALF_A_DAY, plain_number(0.0)
    if ends[0] >= _IN_HOURS_MIN:
        best, low, high = (round(2.0 * end / _HOUR_MIN) / 2.0 for end in ends)
        return Noon.HOURS, plain_number(best, (low, high))
    best, low, high = (round(end) if end >= 1.0 else round(end, 1) for end in ends)
    return Noon.MINUTES, plain_number(best, (low, high))


def _over(lamp: Estimate, sun: Estimate) -> Estimate:
    return Estimate(lamp.low / sun.high, lamp.best / sun.best, lamp.high / sun.low)


def _sun(query: DoseQuery, sun: SunDay, lamp: Estimate) -> SunThere:
    part = None if sun.noon_uvi.best < _LEAST_NOON_UVI else _over(lamp, sun.dose)
    latitude = query.latitude or 0.0
    return SunThere(
        latitude=angle(abs(latitude)),
        south=latitude < 0.0,
        month=_month(query.month or 1),
        noon_uvi=uvi(sun.noon_uvi),
        dose=plain_number(sun.dose),
        strong=hours(sun.strong_hours),
        share=None if part is None or part.best > _SHARE_TO else share(part),
        times=None if part is None or part.best <= _SHARE_TO else plain_number(part),
    )


def _people(at_uvi: float) -> People:
    safe = safe_time(at_uvi)
    minutes = floor(safe.seconds / _MINUTE_S)
    stay = Stay.HOURS if minutes >= _HOUR_MIN else Stay.MINUTES
    allowed_h = safe.seconds / _HOUR_S
    return People(
        at=uvi(at_uvi),
        stay=Stay.WHOLE_DAY if safe.whole_day else stay,
        minutes=minutes,
        time=hours(_WORKING_DAY_H if safe.whole_day else minutes / _HOUR_MIN),
        allowed=hours(allowed_h, (allowed_h, max(allowed_h, _WORKING_DAY_H))),
        arm=metres(_ARM_M),
    )


def _uvi_at_arm(query: DoseQuery) -> float:
    """Return the UVI at arm's length from the tube, by its shape alone.

    Without a length it is the most that any standard tube gives there, because people ask.
    """
    near = query.distance.low if query.distance else _ARM_M
    lit = [lit_length(query.length)] if query.length else [t.lit_length_m for t in STANDARD_T5_HO]
    return query.uvi[1] * max(line_shape(_ARM_M, long) / line_shape(near, long) for long in lit)


def _sources(query: DoseQuery, sun: SunDay | None) -> Iterator[str]:
    yield from _SOURCES
    if sun:
        yield from ("cooper1969", "klein1977", *(doubt.source for doubt in SUN_DOUBTS))
    if query.distance:
        yield "keitz1971"


def tell(facts: Dose) -> Layered:
    """Tell the day as time in the sun, then how long people may stay."""
    say = Says("dose", facts)
    return Layered(
        command="dose",
        title=say("title"),
        brief=Brief(
            head=say.by("head", facts.noon),
            range=(Say.by("dose-people", facts.people.stay, facts.people),),
            assumed=(say("assumed"),),
            steps=(say("do-shade"), say("do-off")),
        ),
        steps=(say("step-shade"), say("step-off")),
        numbers=tuple(_numbers(facts, say)),
        why=tuple(_why(facts, say)),
        care=(
            Care(say("care-look"), Say("care-eyes-short"), Weight.STEP),
            Care(say("care-whom")),
            Care(say("care-waves")),
        ),
        values=tuple(_values(facts)),
        guide=("uv-and-your-eyes", "sun-and-shade", "reading-a-uv-meter"),
        sources=facts.sources,
    )


def _numbers(facts: Dose, say: Says) -> Iterator[Row]:
    yield Row(say("label-tube"), say("tube"))
    sun = facts.sun
    yield Row(say("label-beside"), say.by("beside", facts.noon))
    if sun is not None:
        if sun.share is not None:
            yield Row(say("label-clear-day"), Say("dose-share", sun))
        if sun.times is not None:
            yield Row(say("label-clear-day"), Say("dose-times", sun))
        yield Row(say("label-sun"), Say("dose-sun", sun))
    yield Row(say("label-people"), Say.by("dose-limit", facts.people.stay, facts.people))
    if facts.at_arm is not None:
        at_arm = facts.at_arm
        yield Row(say("label-arm"), Say("dose-arm", at_arm))
        yield Row(say("label-at-arm"), Say.by("dose-limit", at_arm.stay, at_arm))


def _why(facts: Dose, say: Says) -> Iterator[Say]:
    yield say("why-most")
    if facts.length_assumed:
        yield say("why-length")


def _values(facts: Dose) -> Iterator[tuple[str, Number | Hours | Uvi]]:
    yield "dose_sed", facts.dose
    yield "people_hours_at_spot", facts.people.allowed
    if facts.at_arm is not None:
        yield "uvi_at_arm", facts.at_arm.at
        yield "people_hours_at_arm", facts.at_arm.allowed
    if facts.sun is not None:
        yield "sun_noon_uvi", facts.sun.noon_uvi
        yield "sun_dose_sed", facts.sun.dose


DOSE = Command(
    name="dose",
    query=DoseQuery,
    facts=dose,
    tell=tell,
    examples=(
        "dose uvi:4 hours:4",
        "dose uvi:4 hours:10 distance:14in latitude:27S month:June",
    ),
    guide=("uv-and-your-eyes", "sun-and-shade"),
)
