"""What real sun gives an animal at a place, in a month, at an hour, as facts.

Words: ``outdoors.ftl``.
"""

from dataclasses import dataclass
from datetime import time
from enum import Enum, auto

from bot.facts import Angle, Name, Say, Temp, Uvi, angle, degrees, uvi
from bot.preferences import Context
from bot.queries.outdoors import OPEN, OutdoorsQuery
from bot.questions.animals import animal_asked
from bot.questions.shared import animal_name
from bot.questions.uv.lamp_asked import wanted_asked
from bot.questions.uv.shared import Wish, wish_told
from bot.reply import Alarm
from calc.animal import Animal
from calc.heat.readings import finding_for
from calc.judgement import Judged
from calc.quantities import Quantity
from calc.uv.danger import judge_uvi
from calc.uv.sun import SunCourse, sun_course

__all__ = ["BehindGlass", "HourOfSun", "Outdoors", "Shady", "Span", "Suits", "outdoors"]

_ON_GLASS = "sun_on_glass"
_SOURCES = ("madronich2007", "cooper1969", "klein1977", "temis", "common_practice")
_GLASS_SOURCES = ("float_glass_uv", "sun_heated_cars", "common_practice")
_HOURS = (6, 7, 8, 9, 10, 11, 12)
_NOON_H, _MINUTES = 12.0, 60.0
# From six to six, in thirds of an hour.
_DRAWN = range(3 * 6, 3 * 18 + 1)


class Suits(Enum):
    """How the sun of a day stands to what is wanted."""

    ANYBODY = auto()
    NONE = auto()
    WEAK = auto()
    NOON = auto()
    EDGES = auto()
    STRONG = auto()


class Shady(Enum):
    """How the air of the shade is for the animal."""

    UNTOLD = auto()
    UNKNOWN = auto()
    HOT = auto()
    COLD = auto()
    FINE = auto()


@dataclass(frozen=True, slots=True)
class Span:
    """A part of the day, by sun time."""

    start: time
    end: time


@dataclass(frozen=True, slots=True)
class HourOfSun:
    """The UV index at an hour and at the one as far behind noon; how it is judged, if it is."""

    hour: time
    later: time
    there: Uvi
    verdict: Say | None


@dataclass(frozen=True, slots=True)
class BehindGlass:
    """A window or a greenhouse, through which no UVB worth counting comes."""

    window: bool
    alarms: tuple[Alarm, ...]
    sources: tuple[str, ...] = _GLASS_SOURCES


@dataclass(frozen=True, slots=True)
class Outdoors:
    """The open sun of a clear day; ``here`` is the hour asked for.

    ``parts`` are right, [h] in ``spans``; ``course`` is the UV index at hours of the day.
    """

    animal: Name | None
    wish: Wish | None
    latitude: Angle
    south: bool
    month: Say
    noon: Uvi
    suits: Suits
    parts: tuple[Say, ...]
    spans: tuple[tuple[float, float], ...]
    here: HourOfSun | None
    hours: tuple[HourOfSun, ...]
    course: tuple[tuple[float, Uvi], ...]
    shade: Temp | None
    shady: Shady
    shade_wanted: Temp | None
    sources: tuple[str, ...]

    @property
    def wanted(self) -> Uvi | None:
        """Return the UV index to aim at, where an animal or a range was told."""
        return self.wish.wanted if self.wish else None

    @property
    def highest(self) -> time:
        """Return when the sun is highest, by its own time."""
        return _clock(_NOON_H)


def outdoors(query: OutdoorsQuery, context: Context) -> Outdoors | BehindGlass:
    """Work out the sun of the day, or why none of its UV comes through."""
    if query.place != OPEN:
        alarm = Alarm(key=_ON_GLASS, words=query.place, asked=True)
        return BehindGlass(query.place == "window", (alarm,))
    latitude, month = query.latitude or 0.0, query.month or 1
    course = sun_course(latitude, month)
    named = query.animal.strip() or context.default_animal
    animal = animal_asked(query.animal, context) if named else None
    wish = _wish(query, animal, context)
    ends = None if wish is None else (wish.wanted.low, wish.wanted.high)
    spans = () if ends is None else course.hours_within(*ends)
    cool = None if animal is None else animal.cool_air_c
    return Outdoors(
        animal=None if animal is None else animal_name(animal),
        wish=wish,
        latitude=angle(abs(latitude)),
        south=latitude < 0.0,
        month=Say.of("figures-month", str(month)),
        noon=uvi(course.uvi(_NOON_H)),
        suits=_suits(course, animal, ends, spans),
        parts=tuple(Say("outdoors-part", Span(_clock(a), _clock(b))) for a, b in spans),
        spans=tuple(spans),
        here=None if query.hour is None else _hour(course, _hours_of(query.hour), wish),
        hours=tuple(_hour(course, float(hour), wish) for hour in _HOURS),
        course=tuple((hour / 3.0, uvi(course.uvi(hour / 3.0))) for hour in _DRAWN),
        shade=None if query.shade is None else degrees(query.shade.low),
        shady=_shady(query, animal),
        shade_wanted=None if cool is None else degrees(cool.aim, (cool.low, cool.high)),
        sources=(*(wish.sources if wish else ()), *_SOURCES),
    )


def _wish(query: OutdoorsQuery, animal: Animal | None, context: Context) -> Wish | None:
    if query.uvi is None and (animal is None or animal.uvi is None):
        return None
    return wish_told(wanted_asked(query.animal, query.uvi, context), context)


def _suits(
    course: SunCourse,
    animal: Animal | None,
    ends: tuple[float, float] | None,
    spans: tuple[tuple[float, float], ...],
) -> Suits:
    if ends is None:
        return Suits.ANYBODY if animal is None else Suits.NONE
    noon = course.uvi(_NOON_H).best
    if noon < ends[0]:
        return Suits.WEAK
    if noon <= ends[1]:
        return Suits.NOON
    return Suits.EDGES if spans else Suits.STRONG


def _shady(query: OutdoorsQuery, animal: Animal | None) -> Shady:
    """Return how the shade is, held against the cool end, which it stands for."""
    if query.shade is None:
        return Shady.UNTOLD
    if animal is None or animal.cool_air_c is None:
        return Shady.UNKNOWN
    found = finding_for(Quantity.COOL_AIR, query.shade.low, animal)
    if found.is_likely_high or found.is_high:
        return Shady.HOT
    return Shady.COLD if found.is_low else Shady.FINE


def _hour(course: SunCourse, hour: float, wish: Wish | None) -> HourOfSun:
    there = course.uvi(hour)
    judged: Judged | None = None
    if wish is not None:
        judged = judge_uvi(there, wish.wanted.low, wish.wanted.high, unchecked=wish.unchecked)
    return HourOfSun(
        hour=_clock(hour),
        later=_clock(2.0 * _NOON_H - hour if hour > 0.0 else 0.0),
        there=uvi(there),
        verdict=None if judged is None else Say.by("verdict", judged.verdict),
    )


def _hours_of(clock: time) -> float:
    return clock.hour + clock.minute / _MINUTES


def _clock(hour: float) -> time:
    """Return an hour of the day as a clock shows it, to a quarter of an hour."""
    quarters = round(hour * 4.0) % (24 * 4)
    return time(quarters // 4, 15 * (quarters % 4))
