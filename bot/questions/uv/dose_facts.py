"""A day under the lamp beside a day of sun as facts, and how long people may stay in its light.

Words: ``words/<language>/dose.ftl``.
"""

from collections.abc import Iterator
from dataclasses import dataclass
from enum import Enum, auto
from math import floor

from bot.dangers.past_limits import alarms_past
from bot.facts import (
    Angle,
    Hours,
    Length,
    Number,
    Say,
    Share,
    Uvi,
    angle,
    hours,
    metres,
    plain_number,
    share,
    uvi,
)
from bot.language.uv_lamps import TUBES, UvLamp
from bot.preferences import Context
from bot.queries.uv_depth import DoseQuery
from bot.questions.shared import limits_for
from bot.questions.uv.lamp_asked import lamp_asked
from bot.questions.uv.length_asked import lit_length
from bot.questions.uv.readings import (
    LampRead,
    enough_read,
    read_lamp,
)
from bot.questions.uv.readings_refused import check_believed
from bot.reply import Alarm
from calc.judgement import as_read
from calc.limits import Met
from calc.quantities import Quantity
from calc.shape.line import line_shape
from calc.uncertainty import Estimate
from calc.uv.dose import SUN_DOUBTS, SunDay, dose_sed, safe_time, sun_day
from calc.uv.lamp import Lamp
from calc.uv.lamp_unknowns import uvi_estimate
from calc.uv.point import FARTHEST_BEHIND_M
from calc.uv.screen import NoScreen
from calc.uv.tube import STANDARD_T5_HO

__all__ = ["STRONG_UVI", "Dose", "People", "SunThere", "Waves", "dose"]

_SOURCES = ("cie125", "cie_17_26_073", "directive_2006_25", "acgih1992")
_HOUR_S, _MINUTE_S, _HOUR_MIN = 3600.0, 60.0, 60.0
_WORKING_DAY_H = 8.0
_ARM_M = 0.60
# From here on an hour says more than a minute, and half a day of noon is no comparison.
_IN_HOURS_MIN, _HALF_A_DAY_MIN = 100.0, 720.0
_SHARE_TO = 2.0
# A midday sun that people know from a summer, to tell a dose by where no place is named.
STRONG_UVI = 10.0
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


class Waves(Enum):
    """What is assumed of the shortest waves: of tubes nothing, of other lamps nobody knows."""

    TUBE = auto()
    OTHER = auto()


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
    """The dose of a day [SED] at one UV index, and the time that people have there.

    ``by_kept``: the UV index is that of the group's own lamp, with nothing in between.
    """

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
    kind: UvLamp
    read: LampRead | None
    by_kept: bool
    alarms: tuple[Alarm, ...]
    sources: tuple[str, ...]

    @property
    def waves(self) -> Waves:
        """Return what is assumed of its shortest waves."""
        return Waves.TUBE if self.kind in TUBES else Waves.OTHER


def dose(query: DoseQuery, context: Context) -> Dose:
    """Work out the day's dose, the sun's, and the time that people have."""
    lit_h = query.hours.low / _HOUR_S
    lamp_read = _read(query)
    law = _law(lamp_read)
    at = _there(query, law)
    lamp = Estimate(*(dose_sed(end, lit_h) for end in (at.low, at.best, at.high)))
    sun = None
    if query.latitude is not None and query.month is not None:
        sun = sun_day(query.latitude, query.month)
    noon, noon_time = _noon(lamp, sun)
    return Dose(
        at=uvi(at),
        lit=hours(lit_h),
        dose=plain_number(lamp),
        noon=noon,
        noon_time=noon_time,
        sun=None if sun is None else _sun(query, sun, lamp),
        month=None if query.month is None else _month(query.month),
        people=_people(at.high),
        at_arm=None if query.distance is None else _people(_uvi_at_arm(query, at, law)),
        length_assumed=query.distance is not None and _lit_m(query) is None and _is_long(query),
        kind=query.kind,
        read=lamp_read,
        by_kept=lamp_read is not None and lamp_read.fit is None and law is not None,
        alarms=() if lamp_read is None else alarms_past(limits_for("", context), Met(uvi=at)),
        sources=tuple(_sources(query, sun)),
    )


def _read(query: DoseQuery) -> LampRead | None:
    """Return the lamp as it was read, by its keeper or its group, where that tells the UV index.

    Readings of today go before those that the group keeps, also where they are too few.
    """
    readings = query.readings
    if query.uvi is not None or (readings is None and query.kept is None):
        return None
    enough = readings if readings and enough_read(readings, query.kind) else None
    kept = query.kept if enough or not readings else None
    lamp = lamp_asked(kept, None, query.length, None)
    read = read_lamp(lamp, enough, NoScreen(), query.kind, is_named=False)
    check_believed(read, "dose")
    return read


def _law(read: LampRead | None) -> Lamp | None:
    """Return the lamp whose readings tell how its UV falls, if there is one."""
    return None if read is None or read.lamp.own is None else read.lamp


def _there(query: DoseQuery, law: Lamp | None) -> Estimate:
    """Return the UV index of the place: as it was told, or by readings, where it was asked for.

    Of readings that are too few for that kind of lamp the highest counts.
    """
    if query.uvi is not None:
        low, high = query.uvi
        return Estimate(low, (low + high) / 2.0, high)
    readings = query.readings or ()
    if law is not None:
        place_m = query.distance.low if query.distance else readings[0].distance.low
        return uvi_estimate(law, place_m, NoScreen())
    return as_read(Quantity.UVI, max(reading.value for reading in readings))


def _is_long(query: DoseQuery) -> bool:
    return query.kind in TUBES


def _lit_m(query: DoseQuery) -> float | None:
    """Return how long the tube shines [m], as the group keeps it or as it was told."""
    if query.kept is not None:
        return query.kept.lamp.lit_length_m
    return lit_length(query.length) if query.length else None


def _month(month: int) -> Say:
    return Say.of("figures-month", str(month))


def _noon(lamp: Estimate, sun: SunDay | None) -> tuple[Noon, Number]:
    """Return for how long the midday sun gives the dose of the lamp's day [SED]."""
    at = Estimate.exact(STRONG_UVI) if sun is None else sun.noon_uvi
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


def _uvi_at_arm(query: DoseQuery, at: Estimate, law: Lamp | None) -> float:
    """Return the UVI at arm's length from the lamp, by its readings or its shape alone.

    Without a length it is the most that any standard tube gives there, and of a small lamp what one
    gives whose light comes from far behind its face, because people ask.
    """
    if law is not None:
        return uvi_estimate(law, _ARM_M, NoScreen()).high
    near = query.distance.low if query.distance else _ARM_M
    if not _is_long(query):
        behind = FARTHEST_BEHIND_M if near < _ARM_M else 0.0
        return at.high * ((near + behind) / (_ARM_M + behind)) ** 2
    lit_m = _lit_m(query)
    lit = [t.lit_length_m for t in STANDARD_T5_HO] if lit_m is None else [lit_m]
    return at.high * max(line_shape(_ARM_M, long) / line_shape(near, long) for long in lit)


def _sources(query: DoseQuery, sun: SunDay | None) -> Iterator[str]:
    yield from _SOURCES
    if sun:
        yield from ("cooper1969", "klein1977", *(doubt.source for doubt in SUN_DOUBTS))
    if query.distance:
        yield "keitz1971" if _is_long(query) else "inverse_square"
    if query.readings or query.kept:
        yield from ("student_posterior", "uv_meter_judgement")
