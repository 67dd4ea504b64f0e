"""A group's own figures, as every question tells them. Words: ``words/<language>/owned.ftl``."""

from collections.abc import Iterator
from dataclasses import dataclass
from datetime import date
from enum import Enum, auto

from bot.facts import (
    Hours,
    Length,
    Number,
    Say,
    Share,
    Temp,
    Uvi,
    degrees,
    hours,
    metres,
    plain_number,
    share,
    uvi,
)
from bot.language.uv_lamps import UvLamp
from bot.questions.uv.lamp_asked import own_lamp
from bot.saved.group import OwnAnimal, OwnLamp, OwnScreen, OwnTarget
from calc.animal import Subject
from calc.uv.lamp_unknowns import uvi_estimate
from calc.uv.screen import NoScreen

__all__ = [
    "By",
    "OwnLampTold",
    "OwnLimit",
    "OwnScreenTold",
    "animal_told",
    "lamp_told",
    "limit_span",
    "limit_told",
    "own_limits",
    "range_told",
    "screen_told",
    "target_told",
    "value_told",
]


class OwnLimit(Enum):
    """What a group may say that an animal of its own may not have; the value is its field."""

    SURFACE = "surface_limit_c"
    COOLEST = "coolest_limit_c"
    NIGHT = "night_limit_c"
    UVI = "uvi_limit"


class By(Enum):
    """Who set a limit: the group, or this program where the group set none."""

    NOBODY = auto()
    GROUP = auto()
    CAREFUL = auto()


@dataclass(frozen=True, slots=True)
class OwnLampTold:
    """A lamp of the group's own by its readings; a line of the log has no day.

    A tube has a constant and a lit length; a small lamp is told by the UVI ``there``, ``at`` the
    middle of its readings.
    """

    name: str
    kind: UvLamp
    constant: Number | None
    lit: Length | None
    there: Uvi | None
    at: Length | None
    doubt: Share
    readings: int
    set_on: date | None

    @property
    def law(self) -> Say:
        """Return how its UV falls, as far as that is known."""
        return Say("owned-lamp-small" if self.there else "owned-lamp", self)


@dataclass(frozen=True, slots=True)
class OwnScreenTold:
    """A screen of the group's own."""

    name: str
    passes: Share
    blocks: Share
    set_on: date | None


@dataclass(frozen=True, slots=True)
class OwnRangeTold:
    """What is aimed at; the figure of its kind is there."""

    of: Subject
    uvi: Uvi | None
    warmth: Temp | None
    light: Hours | None
    deep: Length | None
    has_best: bool


@dataclass(frozen=True, slots=True)
class OwnLimitTold:
    """What an animal of the group's own may not have."""

    what: OwnLimit
    by: By
    uvi: Uvi | None
    warmth: Temp | None


@dataclass(frozen=True, slots=True)
class OwnSet:
    """A target, or all that a group said of an animal, and when."""

    told: tuple[Say, ...]
    set_on: date | None


@dataclass(frozen=True, slots=True)
class OwnLatin:
    """The scientific name of an animal of the group's own."""

    scientific: str


def lamp_told(kept: OwnLamp, *, dated: bool = True) -> OwnLampTold:
    """Return what is known of a lamp of the group's own."""
    point = kept.point
    around_m = None if point is None else point.around_m
    lamp = own_lamp(kept)
    there = None if around_m is None else uvi_estimate(lamp, around_m, NoScreen())
    factor = kept.doubt_factor if there is None else there.high / there.best
    constant, lit_m = kept.constant_uvi_m, kept.lit_length_m
    return OwnLampTold(
        name=kept.name,
        kind=kept.kind,
        constant=None if constant is None else plain_number(constant),
        lit=None if lit_m is None else metres(lit_m),
        there=None if there is None else uvi(there.best),
        at=None if around_m is None else metres(around_m),
        doubt=share(factor - 1.0),
        readings=kept.readings,
        set_on=kept.set_on if dated else None,
    )


def screen_told(kept: OwnScreen, *, dated: bool = True) -> OwnScreenTold:
    """Return what is known of a screen of the group's own."""
    passes, blocks = share(kept.passes), share(1.0 - kept.passes)
    return OwnScreenTold(kept.name, passes, blocks, kept.set_on if dated else None)


def target_told(kept: OwnTarget, *, dated: bool = True) -> Say:
    """Return a target of the group's own."""
    told = range_told(kept.subject, kept.low, kept.high, kept.best)
    return Say("owned-set", OwnSet((told,), kept.set_on if dated else None))


def animal_told(kept: OwnAnimal, *, dated: bool = True) -> Say:
    """Return all that a group said of an animal of its own."""
    return Say("owned-set", OwnSet(tuple(_told(kept)), kept.set_on if dated else None))


def _told(kept: OwnAnimal) -> Iterator[Say]:
    if kept.scientific:
        yield Say("owned-latin", OwnLatin(kept.scientific))
    for subject, span in kept.wants.items():
        yield range_told(subject, span.low, span.high)
    for what, value in own_limits(kept).items():
        yield limit_told(what, value)


def own_limits(kept: OwnAnimal) -> dict[OwnLimit, float]:
    """Return the limits that the group set of an animal of its own."""
    limits = {what: getattr(kept, what.value) for what in OwnLimit}
    return {what: value for what, value in limits.items() if value is not None}


def range_told(subject: Subject, low: float, high: float, best: float | None = None) -> Say:
    """Return what is aimed at, from where to where, and what is best where it is known."""
    told = _range(subject, low, high, best)
    if told.uvi is not None:
        return Say("owned-uvi", told)
    if told.deep is not None:
        return Say("owned-deep", told)
    return Say("owned-light", told) if told.light is not None else Say("owned-warmth", told)


def value_told(subject: Subject, value: float) -> Say:
    """Return one value of what is aimed at."""
    told = _range(subject, value, value, None)
    if told.uvi is not None:
        return Say("owned-value-uvi", told)
    if told.light is not None:
        return Say("owned-value-light", told)
    if told.deep is not None:
        return Say("owned-value-deep", told)
    return Say("owned-value-warmth", told)


def _range(subject: Subject, low: float, high: float, best: float | None) -> OwnRangeTold:
    aim, ends = low if best is None else best, (low, high)
    is_uvi, is_light = subject is Subject.UVI, subject is Subject.LIGHT_HOURS
    is_deep = subject is Subject.WATER_DEPTH
    return OwnRangeTold(
        of=subject,
        uvi=uvi(aim, ends) if is_uvi else None,
        warmth=None if is_uvi or is_light or is_deep else degrees(aim, ends),
        light=hours(aim, ends) if is_light else None,
        deep=metres(aim, ends) if is_deep else None,
        has_best=best is not None,
    )


def limit_told(what: OwnLimit, value: float, by: By = By.NOBODY) -> Say:
    """Return what an animal of the group's own may not have."""
    if what is OwnLimit.UVI:
        return Say("owned-limit-uvi", OwnLimitTold(what, by, uvi(value), None))
    return Say("owned-limit-warmth", OwnLimitTold(what, by, None, degrees(value)))


def limit_span(what: OwnLimit, low: float, high: float) -> Say:
    """Return what such a limit may be."""
    if what is OwnLimit.UVI:
        return Say("owned-span-uvi", OwnLimitTold(what, By.NOBODY, uvi(low, (low, high)), None))
    span = degrees(low, (low, high))
    return Say("owned-span-warmth", OwnLimitTold(what, By.NOBODY, None, span))
