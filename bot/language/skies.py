"""Where and when under the sky: a latitude, a month."""

import re
from functools import cache

from bot.facts import Say
from bot.language.dates import MONTH
from bot.language.errors import NotUnderstoodError
from bot.language.normal import normalise
from bot.language.numerals import NUMERAL, numeral

__all__ = ["read_latitude", "read_month"]

_LONGEST = 40
_LATITUDE = (Say("wanted-latitude"), "40N")
_MONTH = (Say("wanted-month"), "June")
_MONTHS = ("jan", "feb", "mar", "apr", "may", "jun", "jul", "aug", "sep", "oct", "nov", "dec")


def read_latitude(text: str) -> float:
    """Read a latitude [degree]; south, and a minus, are negative.

    >>> read_latitude("40N"), read_latitude("33.9° south"), read_latitude("-12")
    (40.0, -33.9, -12.0)
    """
    match = _latitude().fullmatch(normalise(text).strip()) if len(text) <= _LONGEST else None
    number = numeral(match["number"]) if match else None
    if match is None or number is None or number.doubtful or number.value > 90:
        raise NotUnderstoodError(text, *_LATITUDE)
    if match["minus"] and match["side"]:
        raise NotUnderstoodError(text, Say("wanted-latitude-side"), "40S")
    south = match["minus"] or (match["side"] or "n").lower().startswith("s")
    return float(-number.value if south else number.value)


def read_month(text: str) -> int:
    """Read a month, 1 to 12.

    >>> read_month("June"), read_month("6"), read_month("sept")
    (6, 6, 9)
    """
    plain = normalise(text).strip().lower() if len(text) <= _LONGEST else ""
    if re.fullmatch(MONTH, plain, re.I | re.A):
        return _MONTHS.index(plain[:3]) + 1
    if re.fullmatch(r"0?[1-9]|1[0-2]", plain, re.A):
        return int(plain)
    raise NotUnderstoodError(text, *_MONTH)


@cache
def _latitude() -> re.Pattern[str]:
    return re.compile(
        rf"(?:lat(?:itude)?\s*)?(?P<minus>-)?\s*(?P<number>{NUMERAL})\s*(?:°|deg(?:rees?)?)?\s*"
        r"(?P<side>n(?:orth)?|s(?:outh)?)?",
        re.I | re.A,
    )
