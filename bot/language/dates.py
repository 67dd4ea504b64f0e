"""Dates and ages as people write them; a date that can be read in two ways is asked about."""

import re
from datetime import date, timedelta

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.normal import normalise
from bot.language.quantities import Measure, read_duration
from bot.language.sides import LONGEST
from bot.language.wanted import EitherOf

__all__ = ["DATE", "MONTH", "read_age", "read_date", "refuse_short_year"]

_MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")
MONTH = (
    r"(?:jan(?:uary)?|feb(?:ruary)?|mar(?:ch)?|apr(?:il)?|may|june?|july?|aug(?:ust)?"
    r"|sept?(?:ember)?|oct(?:ober)?|nov(?:ember)?|dec(?:ember)?)\.?"
)
DATE = (
    r"(?:[0-9]{4}[-/.][0-9]{1,2}[-/.][0-9]{1,2}|[0-9]{1,2}[-/.][0-9]{1,2}[-/.][0-9]{4}"
    rf"|[0-9]{{1,2}}(?:st|nd|rd|th|\.)?(?: of)?[ -]?{MONTH},?[ -]?[0-9]{{4}}"
    rf"|{MONTH} ?[0-9]{{1,2}}(?:st|nd|rd|th)?,? ?[0-9]{{4}})(?![0-9])"
)
# A date whose year has two digits: 03/01/26, 3 Jan 26, Jan 3, '26.
_SHORT = re.compile(
    r"(?<![0-9.,/-])(?:[0-9]{1,2}[-/.][0-9]{1,2}[-/.]'?[0-9]{2}"
    rf"|[0-9]{{1,2}}(?:st|nd|rd|th|\.)?(?: of)?[ -]?{MONTH},?[ -]?'?[0-9]{{2}}"
    rf"|{MONTH} ?[0-9]{{1,2}}(?:st|nd|rd|th)?(?:, ?| )'?[0-9]{{2}})(?![0-9/-]|[,.][0-9])",
    re.I | re.A,
)
_WORDED = re.compile(
    rf"(?:(?P<day>[0-9]{{1,2}})\D*?(?P<month>{MONTH})"
    rf"|(?P<month2>{MONTH}) ?(?P<day2>[0-9]{{1,2}}))"
    r"\D*(?P<year>[0-9]{4})",
    re.I | re.A,
)
_EARLIEST, _LATEST = 1990, 2100
_ACCEPTED = Say("wanted-date")
_EXAMPLE = "2026-01-03"


def read_date(text: str, today: date | None = None) -> date:
    """Read a date; ``today`` and ``yesterday`` are known where the caller says what day it is.

    >>> read_date("3 Jan 2026"), read_date("2026-03-01")
    (datetime.date(2026, 1, 3), datetime.date(2026, 3, 1))
    """
    plain = " ".join(normalise(text[:LONGEST]).lower().split())
    ago = {"today": 0, "now": 0, "yesterday": 1}.get(plain)
    if today is not None and ago is not None:
        return today - timedelta(days=ago)
    if len(text) > LONGEST or not re.fullmatch(DATE, plain, re.A):
        refuse_short_year(plain, _EXAMPLE)
        raise NotUnderstoodError(text, _ACCEPTED, _EXAMPLE)
    year, month, day = _parts(plain, text)
    if _EARLIEST <= year <= _LATEST:
        try:
            return date(year, month, day)
        except ValueError:
            pass
    raise NotUnderstoodError(text, Say("wanted-date-calendar"), _EXAMPLE)


def refuse_short_year(plain: str, example: str) -> None:
    """Refuse a text that holds a date with a year of two digits, which may be any part of it."""
    short = _SHORT.search(plain)
    if short:
        raise NotUnderstoodError(short[0], Say("wanted-date-year"), example)


def _parts(plain: str, text: str) -> tuple[int, int, int]:
    """Return year, month and day of a text that has the form of a date."""
    worded = _WORDED.fullmatch(plain)
    if worded:
        name = worded["month"] or worded["month2"]
        return (
            int(worded["year"]),
            _MONTHS.index(name[:3]) + 1,
            int(worded["day"] or worded["day2"]),
        )
    first, second, third = (int(part) for part in re.split(r"[-/.]", plain))
    if first > 31:
        return first, second, third
    if first == second or first > 12 or "." in plain:
        # A point between the parts is the way of those who put the day first.
        return third, second, first
    if second > 12:
        return third, first, second
    day_first = f"{third}-{second:02}-{first:02}"
    month_first = f"{third}-{first:02}-{second:02}"
    wanted = Say("wanted-date-clear", EitherOf(day_first, month_first))
    raise NotUnderstoodError(text, wanted, day_first)


def read_age(text: str) -> Measure:
    """Read how long something has been in use: 6 months, a year, 1.5 years, new."""
    plain = " ".join(normalise(text[:LONGEST]).lower().split())
    if len(text) <= LONGEST and plain in ("new", "brand new", "just new", "unused"):
        return read_duration("0 days")
    words = re.sub(r"\s+old$", "", text, flags=re.I) if len(text) <= LONGEST else text
    return read_duration(words)
