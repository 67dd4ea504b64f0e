"""The keeper's clock: time zones, times of day, years."""

import re
from datetime import time
from functools import cache
from zoneinfo import ZoneInfo, available_timezones

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.names import closest
from bot.language.normal import normalise
from bot.language.sides import LONGEST
from bot.language.wanted import Closest

__all__ = ["read_clock", "read_year", "read_zone", "zone_names"]

_ZONE = "America/Chicago"
_CLOCK = (Say("wanted-clock"), "8:00")
_YEAR = (Say("wanted-year"), "2026")
# What people write for the zone they live in; each is the largest city of its zone.
_SHORT = {
    "est": "America/New_York",
    "edt": "America/New_York",
    "et": "America/New_York",
    "eastern": "America/New_York",
    "cst": "America/Chicago",
    "cdt": "America/Chicago",
    "central": "America/Chicago",
    "mst": "America/Denver",
    "mdt": "America/Denver",
    "mountain": "America/Denver",
    "pst": "America/Los_Angeles",
    "pdt": "America/Los_Angeles",
    "pt": "America/Los_Angeles",
    "pacific": "America/Los_Angeles",
    "gmt": "Europe/London",
    "bst": "Europe/London",
    "uk": "Europe/London",
    "cet": "Europe/Berlin",
    "cest": "Europe/Berlin",
    "aest": "Australia/Sydney",
    "aedt": "Australia/Sydney",
    "utc": "UTC",
    "none": "UTC",
}


def read_zone(text: str) -> ZoneInfo:
    """Return a time zone by its name, its city, or the short form people use for it.

    >>> read_zone("america/chicago").key, read_zone("New York").key
    ('America/Chicago', 'America/New_York')
    """
    if len(text) > LONGEST:
        raise NotUnderstoodError(text, Say("wanted-zone", Closest(None)), _ZONE)
    plain = "_".join(normalise(text).strip().lower().split())
    name = _SHORT.get(plain) or _by_name().get(plain)
    if name is None:
        near = _by_name().get(closest(plain, _by_name()) or "")
        raise NotUnderstoodError(text, Say("wanted-zone", Closest(near)), near or _ZONE)
    return ZoneInfo(name)


def zone_names() -> tuple[str, ...]:
    """Return the names of all zones with a continent, in order."""
    return tuple(sorted(set(_by_name().values())))


@cache
def _by_name() -> dict[str, str]:
    regions = ("Africa", "America", "Antarctica", "Asia", "Atlantic", "Australia", "Europe")
    full = [
        name
        for name in sorted(available_timezones())
        if name.split("/")[0] in (*regions, "Indian", "Pacific") and "/" in name
    ]
    by_city = {name.rsplit("/", 1)[1].lower(): name for name in reversed(full)}
    return by_city | {name.lower(): name for name in full}


def read_clock(text: str) -> time:
    """Return a time of day.

    >>> read_clock("8"), read_clock("7:30 pm")
    (datetime.time(8, 0), datetime.time(19, 30))
    """
    plain = normalise(text[:LONGEST]).strip().lower()
    match = re.fullmatch(r"(\d{1,2})(?:[:.](\d{2}))?\s*(a\.?m\.?|p\.?m\.?)?", plain, re.A)
    if match is None or len(text) > LONGEST:
        raise NotUnderstoodError(text, *_CLOCK)
    hour, minute, half = int(match[1]), int(match[2] or 0), (match[3] or "").replace(".", "")
    if half and not 1 <= hour <= 12:
        raise NotUnderstoodError(text, *_CLOCK)
    if half:
        hour = hour % 12 + 12 * (half == "pm")
    if hour > 23 or minute > 59:
        raise NotUnderstoodError(text, *_CLOCK)
    return time(hour, minute)


def read_year(text: str) -> int:
    """Return a year of four digits."""
    plain = normalise(text[:LONGEST]).strip()
    if not re.fullmatch(r"\d{4}", plain, re.A) or not 1950 <= int(plain) <= 2090:
        raise NotUnderstoodError(text, *_YEAR)
    return int(plain)
