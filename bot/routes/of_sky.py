"""What is heard of real sun: where on earth, in which month, at what hour, through what."""

import re
from datetime import time

from bot.language.dates import MONTH
from bot.language.skies import read_latitude, read_month
from bot.language.zones import read_clock
from bot.routes.asked import Asked

__all__ = ["OF_SUN", "OUTSIDE", "sky_hour", "sky_latitude", "sky_month", "sky_place"]

OUTSIDE = (
    r"\b(?:outside|outdoors?|garden|balcony|patio|sunbath\w*|(?:real|natural|open|direct) sun\w*"
    r"|sunlight|sunshine|the sun|greenhouses?|windows?|window ?sills?)\b"
)
OF_SUN = r"\b(?:how (?:strong|much|long)|uv\w*|when|what time|hours?|ok\w*|safe|good|can)\b"
_LATITUDE = re.compile(
    r"\b(?:lat(?:itude)?\.? ?(?:of )?-?\d{1,2}(?:\.\d)?(?: ?°)?(?: ?[ns](?:orth|outh)?)?"
    r"|\d{1,2}(?:\.\d)? ?(?:°|deg(?:rees?)?)? ?(?:north|south)|\d{1,2}(?:\.\d)?°? ?[ns])\b"
)
# A bare "may" is no month.
_MONTH = re.compile(
    rf"(?:\b(?:in|during|of|early|mid|late|this|im|for)(?: the)?|[,;]) ?({MONTH})\b", re.I | re.A
)
_HOUR = re.compile(r"\bat (\d{1,2}(?::\d{2})? ?(?:am|pm|o'?clock)|\d{1,2}:\d{2})")
_PLACES = (
    ("greenhouse", re.compile(r"\b(?:greenhouses?|cold frames?|conservator\w+|polytunnels?)\b")),
    ("window", re.compile(r"\b(?:windows?|window ?sills?|behind glass|through (?:the )?glass)\b")),
)


def sky_latitude(asked: Asked) -> float | None:
    """Return the latitude that is told, with its side or its name."""
    found = _LATITUDE.search(asked.words)
    return read_latitude(found[0].replace("of ", "")) if found else None


def sky_month(asked: Asked) -> int | None:
    """Return the month that is named."""
    found = _MONTH.search(asked.words)
    return read_month(found[1]) if found else None


def sky_hour(asked: Asked) -> time | None:
    """Return the hour that is told."""
    found = _HOUR.search(asked.words)
    return read_clock(re.sub(r" ?o'?clock", ":00", found[1])) if found else None


def sky_place(asked: Asked) -> str:
    """Return what is between sun and animal, where something is."""
    return next((name for name, form in _PLACES if form.search(asked.words)), "")
