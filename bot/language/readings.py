"""Lists of UV index readings: at distances, or on dates."""

import re
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import date
from functools import cache

from bot.facts import Say
from bot.language.dates import DATE, MONTH, read_date, refuse_short_year
from bot.language.errors import NotUnderstoodError
from bot.language.normal import normalise
from bot.language.numerals import NUMERAL
from bot.language.quantities import (
    Measure,
    Units,
    read_length,
    read_number_range,
    single,
)
from bot.language.sides import LONGEST
from bot.language.wanted import Whole

__all__ = [
    "DatedReading",
    "PlacedReading",
    "read_dated_readings",
    "read_placed_readings",
    "read_uvi_range",
]

# Forty readings are more than any meter session; the limit keeps the work bounded.
_LONGEST_LIST = 1000
_PLACED = (Say("wanted-placed"), "4.2 at 12 in, 2.9 at 15 in")
_DATED = (Say("wanted-dated"), "2026-01-03 4.2, 2026-03-01 3.9")
_NOT_UVI = re.compile(r"[µμu]\s?w\b|m\s?w\b|watt", re.I)
# A comma between two digits is a decimal, unless there is one already or a date stands behind it.
_COMMA = (
    r",(?=\s|$)|(?<![0-9]),|(?<=\.[0-9]),|(?<=\.[0-9][0-9]),|,(?=[0-9]{4}-[0-9])"
    r"|(?:,\s*)?(?:\b(?:and|then)\b|&|\+)"
)
_NEXT = re.compile(rf"\s*(?:[;\n]+|{_COMMA})\s*", re.I)
# The two ends of what a meter showed lie no farther apart than this, or it was no one reading.
_ENDS_APART = 1.5


@dataclass(frozen=True, slots=True)
class PlacedReading:
    """A UV index read at a distance; one that was ``kept`` is not doubted again."""

    value: float
    distance: Measure
    text: str
    kept: bool = False


@dataclass(frozen=True, slots=True)
class DatedReading:
    """A value read on a day."""

    value: float
    day: date
    text: str
    is_relative: bool = False


def read_placed_readings(text: str, bare: Units | None = None) -> tuple[PlacedReading, ...]:
    """Read ``4.2 at 12 in, 2.9 at 15 in`` or ``12in 4.2; 15in 2.9``, one reading or more.

    A reading between two near figures, such as ``4.0-4.4``, is their middle.

    >>> [(r.value, r.distance.low) for r in read_placed_readings("4.2 at 12 in; 12cm: 2,9")]
    [(4.2, 0.3048), (2.9, 0.12)]
    """
    found = []
    for piece in _pieces(text, _beside_place(), *_PLACED):
        after = _value_first().fullmatch(piece)
        match = after or _side_by_side().fullmatch(piece) or _distance_first().fullmatch(piece)
        _refuse_other_meters(piece, _PLACED[1])
        if match is None:
            raise NotUnderstoodError(piece, *_PLACED)
        with _part(match["distance"], _PLACED[1]):
            distance = single(read_length(match["distance"], bare))
        found.append(PlacedReading(_shown(match["value"], _PLACED), distance, piece))
    return tuple(found)


def read_dated_readings(text: str, today: date | None = None) -> tuple[DatedReading, ...]:
    """Read ``2026-01-03 4.2, 2026-03-01 3.9``, oldest first in the result.

    >>> [r.value for r in read_dated_readings("1 Mar 2026: 3.9; 2026-01-03 4.2")]
    [4.2, 3.9]
    """
    found = []
    for piece in _pieces(text, _beside_day(), *_DATED):
        match = _dated().fullmatch(piece)
        _refuse_other_meters(piece, _DATED[1])
        if match is None:
            refuse_short_year(piece, _DATED[1])
            raise NotUnderstoodError(piece, *_DATED)
        written = match["day"] or match["day2"]
        with _part(written, _DATED[1]):
            day = read_date(written, today)
        value = _shown(match["value"] or match["value2"], _DATED)
        is_relative = not any(sign.isdigit() for sign in written)
        found.append(DatedReading(value, day, piece, is_relative))
    return tuple(sorted(found, key=lambda reading: reading.day))


def _shown(text: str, wanted: tuple[Say, str]) -> float:
    """Return what a meter showed: one figure, or the middle of two near each other."""
    low, high = read_number_range(text, *wanted)
    if high > _ENDS_APART * low:
        raise NotUnderstoodError(text, Say("wanted-one-figure"), wanted[1])
    return round((low + high) / 2.0, 6)


def _refuse_other_meters(piece: str, example: str) -> None:
    if _NOT_UVI.search(piece):
        raise NotUnderstoodError(piece, Say("wanted-uvi"), example)


def read_uvi_range(text: str) -> tuple[float, float]:
    """Read a UV index that is wanted, or a range of it.

    >>> read_uvi_range("3-5")
    (3.0, 5.0)
    """
    _refuse_other_meters(text[:LONGEST], "3-5")
    return read_number_range(text)


@contextmanager
def _part(text: str, example: str) -> Iterator[None]:
    """Have the refusal of a part give the example of the whole list."""
    try:
        yield
    except NotUnderstoodError as error:
        raise NotUnderstoodError(text, error.accepted, example) from error


def _pieces(text: str, beside: re.Pattern[str], accepted: Say, example: str) -> list[str]:
    """Return the readings of a list; ``beside`` finds where one follows with nothing between."""
    if len(text) > _LONGEST_LIST:
        raise NotUnderstoodError(text, Say("wanted-short-list", Whole(accepted)), example)
    plain = re.sub(r"[^\S\n]+", " ", normalise(text).strip())
    plain = beside.sub(r"\1; ", _comma_of_year().sub(r"\1", plain))
    pieces = [piece for piece in _NEXT.split(plain) if piece]
    if not pieces:
        raise NotUnderstoodError(text, accepted, example)
    return pieces


_UVI = r"(?:\s*(?:uvi|uv index|uv))?"
_AT = r"(?:at|@|from)"
_VALUE = rf"{NUMERAL}(?:\s*(?:-|to|or)\s*{NUMERAL})?"
_UNIT = r"(?:\b|(?<=[0-9]))(?:in|inch|inches|ft|foot|feet|cm|mm|m)\.?(?![a-z])|[\"']"
_TO_TUBE = r"(?:\s*(?:(?:away\s*)?from|under|below)\s*(?:the\s*)?(?:tube|lamp|bulb)|\s*away)?\.?"


@cache
def _value_first() -> re.Pattern[str]:
    return re.compile(
        rf"(?:uvi?\s*)?(?P<value>{_VALUE}){_UVI}\s*{_AT}\s*(?P<distance>.+?){_TO_TUBE}",
        re.I | re.A,
    )


@cache
def _side_by_side() -> re.Pattern[str]:
    # Half an inch is part of a number before it, and no distance of its own.
    return re.compile(
        rf"(?:uvi?\s*)?(?P<value>{_VALUE}){_UVI}(?:\s+|\s*/\s*)"
        rf"(?P<distance>(?![0-9]+/){NUMERAL}\s*(?:{_UNIT}))",
        re.I | re.A,
    )


@cache
def _distance_first() -> re.Pattern[str]:
    return re.compile(
        rf"(?:at\s+)?(?P<distance>.+?)\s*[:=]?\s*(?:uvi?\s*)?(?<![0-9.,-])(?P<value>{_VALUE}){_UVI}",
        re.I | re.A,
    )


@cache
def _beside_place() -> re.Pattern[str]:
    return re.compile(rf"({_UNIT})\s+(?=(?:uvi?\s*)?{_VALUE}{_UVI}\s*{_AT})", re.I | re.A)


@cache
def _beside_day() -> re.Pattern[str]:
    return re.compile(r"([0-9])\s+(?=[0-9]{4}-[0-9]{1,2}-[0-9])", re.A)


@cache
def _comma_of_year() -> re.Pattern[str]:
    # The comma inside "January 3, 2026" is no border between two readings.
    return re.compile(rf"({MONTH} ?[0-9]{{1,2}}(?:st|nd|rd|th)?),(?=\s*[0-9]{{4}})", re.I | re.A)


@cache
def _dated() -> re.Pattern[str]:
    day = rf"{DATE}|today|yesterday|now"
    return re.compile(
        rf"(?:on\s+)?(?P<day>{day})\s*[:=]?\s*(?:uvi?\s*)?(?P<value>{_VALUE}){_UVI}"
        rf"|(?P<value2>{_VALUE}){_UVI}\s*(?:on|at|@)?\s*(?P<day2>{day})",
        re.I | re.A,
    )
