"""The one need that was asked about, and whether a temperature that was told is right there."""

from enum import Enum, auto

from calc.animal import Animal, Target

__all__ = ["About", "Fits", "WantsUv", "about_told", "fits", "wants_uv"]


class About(Enum):
    """What was asked about; the value is how it is typed."""

    UV = "uv"
    UVI = "uvi"
    BASKING = "basking"
    COOL = "cool"
    NIGHT = "night"
    WATER = "water"
    HOURS = "hours"


class WantsUv(Enum):
    """Whether an animal needs UV: all of its range is some, it may be none, or it is not known."""

    YES = auto()
    MAYBE = auto()
    NO = auto()
    UNKNOWN = auto()


class Fits(Enum):
    """How a temperature that was told stands to what is needed."""

    RIGHT = auto()
    BORDERLINE = auto()
    BETWEEN = auto()
    TOO_HOT = auto()
    TOO_COOL = auto()


def wants_uv(animal: Animal, *, has_air: bool) -> WantsUv:
    """Return whether an animal needs UV by its own range."""
    if not has_air:
        return WantsUv.NO
    if animal.uvi is None:
        return WantsUv.UNKNOWN
    return WantsUv.YES if animal.uvi.low > 0.0 else WantsUv.MAYBE


def about_told(animal: Animal, heard_c: float, about: About | None) -> About | None:
    """Return which need a temperature is held against where no place was named with it."""
    cool, spot = animal.cool_air_c, animal.basking_surface_c
    if about is not None:
        return about
    if cool is not None and heard_c <= cool.high:
        return About.COOL
    return About.BASKING if spot is not None or cool is not None else About.WATER


def fits(animal: Animal, heard_c: float, about: About | None) -> Fits | None:
    """Return how a temperature stands to what is needed there, or None where that is not known."""
    cool, spot = animal.cool_air_c, animal.basking_surface_c
    if about is About.BASKING and spot is None:
        # Without a basking spot no place may be warmer than its air.
        warmest = animal.warm_air_c or cool
        return None if warmest is None else _of_range(warmest, heard_c)
    target = {
        About.BASKING: spot,
        About.COOL: cool,
        About.WATER: animal.water_c,
        About.NIGHT: animal.night_floor_c,
    }.get(about or About.BASKING)
    if target is None:
        return None
    if about is About.NIGHT:
        return _of_night(animal, target, heard_c)
    if about is About.BASKING and cool is not None and cool.high < heard_c < target.low:
        return Fits.BETWEEN
    return _of_range(target, heard_c)


def _of_range(target: Target, heard_c: float) -> Fits:
    if heard_c > target.high + _SLACK_C:
        return Fits.TOO_HOT
    return Fits.TOO_COOL if heard_c < target.low - _SLACK_C else Fits.RIGHT


def _of_night(animal: Animal, floor: Target, heard_c: float) -> Fits:
    cool = animal.cool_air_c
    if cool is not None and heard_c > cool.high + _SLACK_C:
        return Fits.TOO_HOT
    if heard_c >= floor.high - _SLACK_C:
        return Fits.RIGHT
    return Fits.TOO_COOL if heard_c < floor.low - _SLACK_C else Fits.BORDERLINE


# Ranges are told in whole degrees of one unit: what is said of their end is not past it.
_SLACK_C = 0.3
