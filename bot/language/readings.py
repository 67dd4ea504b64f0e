"""Lists of UV index readings: at distances, or on dates."""

import re
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from datetime import date
from functools import cache

from bot.language.dates import DATE, MONTH, read_date, refuse_short_year
from bot.language.errors import NotUnderstoodError
from bot.language.normal import normalise
from bot.language.numerals import NUMERAL
from bot.language.quantities import (
    Measure,
    Units,
    read_length,
    read_number,
    read_number_range,
    single,
)
from bot.language.sides import LONGEST

__all__ = [
    "DatedReading",
    "PlacedReading",
    "read_dated_readings",
    "read_placed_readings",
    "read_uvi_range",
]

# Forty readings are more than any meter session; the limit keeps the work bounded.
_LONGEST_LIST = 1000
_PLACED = ("readings with their distances", "4.2 at 12 in, 2.9 at 15 in")
_DATED = ("readings with their dates", "2026-01-03 4.2, 2026-03-01 3.9")
_NOT_UVI = re.compile(r"[µμu]\s?w\b|m\s?w\b|watt", re.I)
_UVI_WANTED = (
    "a UV index, because µW/cm² or mW is what another kind of meter shows and no fixed number "
    "turns it into a UV index"
)
_NEXT = re.compile(r"\s*(?:[;\n]+|,(?=\s)|(?:,\s*)?\band\b)\s*", re.I)


@dataclass(frozen=True, slots=True)
class PlacedReading:
    """A UV index read at a distance."""

    value: float
    distance: Measure
    text: str


@dataclass(frozen=True, slots=True)
class DatedReading:
    """A value read on a day."""

    value: float
    day: date
    text: str


def read_placed_readings(text: str, bare: Units | None = None) -> tuple[PlacedReading, ...]:
    """Read ``4.2 at 12 in, 2.9 at 15 in`` or ``12in 4.2; 15in 2.9``, one reading or more.

    >>> [(r.value, r.distance.low) for r in read_placed_readings("4.2 at 12 in; 12cm: 2,9")]
    [(4.2, 0.3048), (2.9, 0.12)]
    """
    found = []
    for piece in _pieces(text, *_PLACED):
        after = _value_first().fullmatch(piece)
        before = None if after else _distance_first().fullmatch(piece)
        match = after or before
        _refuse_other_meters(piece, _PLACED[1])
        if match is None:
            raise NotUnderstoodError(piece, *_PLACED)
        with _part(match["distance"], _PLACED[1]):
            distance = single(read_length(match["distance"], bare))
        found.append(PlacedReading(read_number(match["value"], *_PLACED), distance, piece))
    return tuple(found)


def read_dated_readings(text: str, today: date | None = None) -> tuple[DatedReading, ...]:
    """Read ``2026-01-03 4.2, 2026-03-01 3.9``, oldest first in the result.

    >>> [r.value for r in read_dated_readings("1 Mar 2026: 3.9; 2026-01-03 4.2")]
    [4.2, 3.9]
    """
    found = []
    for piece in _pieces(text, *_DATED):
        match = _dated().fullmatch(piece)
        _refuse_other_meters(piece, _DATED[1])
        if match is None:
            refuse_short_year(piece, _DATED[1])
            raise NotUnderstoodError(piece, *_DATED)
        written = match["day"] or match["day2"]
        with _part(written, _DATED[1]):
            day = read_date(written, today)
        value = read_number(match["value"] or match["value2"], *_DATED)
        found.append(DatedReading(value, day, piece))
    return tuple(sorted(found, key=lambda reading: reading.day))


def _refuse_other_meters(piece: str, example: str) -> None:
    if _NOT_UVI.search(piece):
        raise NotUnderstoodError(piece, _UVI_WANTED, example)


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


def _pieces(text: str, accepted: str, example: str) -> list[str]:
    if len(text) > _LONGEST_LIST:
        raise NotUnderstoodError(text, f"{accepted}, at most {_LONGEST_LIST} characters", example)
    plain = re.sub(r"[^\S\n]+", " ", normalise(text).strip())
    plain = _comma_of_year().sub(r"\1", plain)
    pieces = [piece for piece in _NEXT.split(plain) if piece]
    if not pieces:
        raise NotUnderstoodError(text, accepted, example)
    return pieces


_UVI = r"(?:\s*(?:uvi|uv index|uv))?"


@cache
def _value_first() -> re.Pattern[str]:
    return re.compile(
        rf"(?:uvi?\s*)?(?P<value>{NUMERAL}){_UVI}\s*(?:at|@|from)\s*(?P<distance>.+)",
        re.I | re.A,
    )


@cache
def _distance_first() -> re.Pattern[str]:
    return re.compile(
        rf"(?:at\s+)?(?P<distance>.+?)\s*[:=]?\s*(?:uvi?\s*)?(?<![0-9.,])(?P<value>{NUMERAL}){_UVI}",
        re.I | re.A,
    )


@cache
def _comma_of_year() -> re.Pattern[str]:
    # The comma inside "January 3, 2026" is no border between two readings.
    return re.compile(rf"({MONTH} ?[0-9]{{1,2}}(?:st|nd|rd|th)?),(?=\s*[0-9]{{4}})", re.I | re.A)


@cache
def _dated() -> re.Pattern[str]:
    day = rf"{DATE}|today|yesterday|now"
    return re.compile(
        rf"(?:on\s+)?(?P<day>{day})\s*[:=]?\s*(?:uvi?\s*)?(?P<value>{NUMERAL}){_UVI}"
        rf"|(?P<value2>{NUMERAL}){_UVI}\s*(?:on|at|@)?\s*(?P<day2>{day})",
        re.I | re.A,
    )
