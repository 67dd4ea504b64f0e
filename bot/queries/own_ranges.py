"""What a group types of a range, a best value or a limit of its own, by what it is of."""

from collections.abc import Iterator
from contextlib import contextmanager

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.quantities import (
    read_duration,
    read_length,
    read_number,
    read_number_range,
    read_temperature,
    single,
)
from calc.animal import Subject

__all__ = ["of_option", "range_read", "uvi_limit_read", "value_read", "warmth_read"]

_UVI_RANGE = (Say("wanted-uvi-range"), "3-5")
_UVI = Say("wanted-uvi-one")
_HOUR_S = 3600.0


@contextmanager
def of_option(name: str) -> Iterator[None]:
    """Name the option in a refusal of what was put into it."""
    try:
        yield
    except NotUnderstoodError as error:
        raise NotUnderstoodError(error.read, error.accepted, error.example, name) from error


def range_read(subject: Subject, text: str) -> tuple[float, float]:
    """Return the ends of a range of a target as typed, in the target's own unit."""
    if subject is Subject.UVI:
        return read_number_range(text, *_UVI_RANGE)
    if subject is Subject.LIGHT_HOURS:
        light = read_duration(text, "h")
        return light.low / _HOUR_S, light.high / _HOUR_S
    deep = subject is Subject.WATER_DEPTH
    measure = read_length(text, None) if deep else read_temperature(text, None)
    return measure.low, measure.high


def value_read(subject: Subject, text: str) -> float:
    """Return what is best of a target as typed, in the target's own unit."""
    if subject is Subject.UVI:
        return read_number(text, _UVI, "4")
    if subject is Subject.LIGHT_HOURS:
        return single(read_duration(text, "h")).low / _HOUR_S
    if subject is Subject.WATER_DEPTH:
        return single(read_length(text, None)).low
    return warmth_read(text)


def uvi_limit_read(text: str) -> float:
    """Return a limit of the UV index as typed."""
    return read_number(text, _UVI, "6")


def warmth_read(text: str) -> float:
    """Return a temperature [degC] as typed."""
    return single(read_temperature(text, None)).low
