"""The numbers people write: decimals with a point or a comma, and fractions of an inch.

A number is kept as the exact fraction that was typed. Every unit this bot knows is a rational
multiple of SI, so nothing is lost on the way and 95 °F is 35 °C, not 35.00000000000006.
"""

import re
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache

__all__ = ["NUMERAL", "Numeral", "numeral"]

# Denominators of a tape measure; 95/110 is a pair of readings and no fraction.
_BOTTOM = r"(?:2|3|4|5|8|16|32|64)"
NUMERAL = (
    r"(?<![0-9._])(?:"
    rf"(?:[0-9]{{1,5}}[ \-]{{1,2}})?[0-9]{{1,2}}/{_BOTTOM}(?![0-9.,/]*[0-9/])"
    r"|[0-9]{1,7}(?:[.,][0-9]{1,6})?(?![0-9_])(?![.,/][0-9])"
    r"|\.[0-9]{1,6}(?![0-9_])(?![.,/][0-9])"
    r")"
)
_FRACTION = re.compile(r"(?:([0-9]+)[ \-]+)?([0-9]+)/([0-9]+)", re.ASCII)


@dataclass(frozen=True, slots=True)
class Numeral:
    """A number as typed; ``doubtful`` where a separator may mean thousands or a decimal."""

    value: Fraction
    doubtful: bool


@lru_cache(maxsize=1024)
def numeral(text: str) -> Numeral | None:
    """Return the number a match of NUMERAL stands for, or None where it is no proper number.

    >>> numeral("14 1/2").value, numeral("35,5").value, numeral("1,200").doubtful
    (Fraction(29, 2), Fraction(71, 2), True)
    """
    if "/" in text:
        match = _FRACTION.fullmatch(text)
        if match is None or int(match[2]) >= int(match[3]):
            return None
        return Numeral(int(match[1] or 0) + Fraction(int(match[2]), int(match[3])), False)
    whole, comma, places = text.partition(",")
    doubtful = len(places) == 3 and whole.strip("0") != ""
    return Numeral(Fraction(f"{whole}.{places}" if comma else text), doubtful)
