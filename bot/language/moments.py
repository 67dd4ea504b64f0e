"""Moments ahead as people write them: in 3 months, tomorrow 8:00, 2026-06-01 at 7 pm."""

import re
from datetime import UTC, date, datetime, time, timedelta

from bot.facts import Say
from bot.language.dates import read_date
from bot.language.errors import NotUnderstoodError
from bot.language.normal import normalise
from bot.language.quantities import read_duration, single
from bot.language.sides import LONGEST
from bot.language.zones import read_clock

__all__ = ["read_moment"]

_ACCEPTED = Say("wanted-moment")
_EXAMPLE = "in 3 months"
_MORNING = time(9, 0)
_DAY_S = 86_400.0
_FARTHEST_DAYS = 3 * 366
_DAYS = {"today": 0, "tonight": 0, "tomorrow": 1}
_CLOCK = re.compile(
    r"(?P<day>.+?)(?:,?\s+at\s+|,?\s+)(?P<clock>[0-9]{1,2}(?::[0-9]{2}\s*(?:[ap]\.?m\.?)?"
    r"|\s*[ap]\.?m\.?))",
    re.I | re.A,
)


def read_moment(text: str, now: datetime) -> datetime:
    """Read a moment after ``now``, which has the asker's zone; a day alone means nine o'clock.

    >>> from datetime import UTC
    >>> noon = datetime(2026, 5, 4, 12, tzinfo=UTC)
    >>> read_moment("in 2 weeks", noon).isoformat()
    '2026-05-18T12:00:00+00:00'
    >>> read_moment("tomorrow 7:30 pm", noon).isoformat()
    '2026-05-05T19:30:00+00:00'
    """
    plain = " ".join(normalise(text[:LONGEST]).lower().split())
    if len(text) > LONGEST or not plain:
        raise NotUnderstoodError(text, _ACCEPTED, _EXAMPLE)
    moment = _after(plain, now) or _on_day(text, plain, now)
    if not now < moment <= now + timedelta(days=_FARTHEST_DAYS):
        raise NotUnderstoodError(text, Say("wanted-moment-ahead"), _EXAMPLE)
    return moment


def _after(plain: str, now: datetime) -> datetime | None:
    """Return now and a duration, in whole days by the calendar where it is a day or longer."""
    try:
        seconds = single(read_duration(plain.removeprefix("in "))).low
    except NotUnderstoodError:
        return None
    if seconds < _DAY_S:
        return (now.astimezone(UTC) + timedelta(seconds=seconds)).astimezone(now.tzinfo)
    days = min(round(seconds / _DAY_S), 10 * _FARTHEST_DAYS)
    return now + timedelta(days=days)


def _on_day(text: str, plain: str, now: datetime) -> datetime:
    match = _CLOCK.fullmatch(plain)
    day, clock = (match["day"], match["clock"]) if match else (plain, "")
    on = _day(day.removeprefix("on "), text, now.date())
    at = read_clock(clock) if clock else _MORNING
    return datetime.combine(on, at, now.tzinfo)


def _day(words: str, text: str, today: date) -> date:
    if words in _DAYS:
        return today + timedelta(days=_DAYS[words])
    try:
        return read_date(words)
    except NotUnderstoodError as error:
        raise NotUnderstoodError(text, _ACCEPTED, _EXAMPLE) from error
