"""One side of a quantity (14 1/2 in, 1 ft 2 in, 39,5 °C) and the two sides of a range."""

import re
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache

from bot.facts import Say
from bot.language.numerals import NUMERAL, numeral
from bot.language.units import Dimension, alias_pattern, unit_named
from bot.language.wanted import EitherOf

__all__ = ["LONGEST", "TO", "WORDED", "Side", "read_side", "split_sides"]

# No quantity that people write is longer; what is longer is refused before it is looked at.
LONGEST = 64

_ONES = ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine")
_TEENS = (
    *("ten", "eleven", "twelve", "thirteen", "fourteen", "fifteen"),
    *("sixteen", "seventeen", "eighteen", "nineteen"),
)
_TENS = ("twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety")
_WORDS = {
    "half an": Fraction(1, 2),
    "half a": Fraction(1, 2),
    **{
        f"{ten} {one}": Fraction(10 * tens + ones)
        for tens, ten in enumerate(_TENS, 2)
        for ones, one in enumerate(_ONES, 1)
    },
    **{ten: Fraction(10 * tens) for tens, ten in enumerate(_TENS, 2)},
    **{word: Fraction(value) for value, word in enumerate((*_ONES, *_TEENS), 1)},
    **dict.fromkeys(("an", "a"), Fraction(1)),
}
# A pattern for every number that is written in words.
WORDED = (
    rf"half\s+an?|(?:{'|'.join(_TENS)})(?:[\s-]+(?:{'|'.join(_ONES)}))?"
    rf"|{'|'.join(_TEENS)}|{'|'.join(_ONES)}|an?"
)
_HALF_MORE = re.compile(r"\s+and\s+an?\s+half(?![a-z])", re.I)
# What follows a larger unit inside one quantity, and below which number.
_SMALLER = {
    "ft": ("in", 12),
    "m": ("cm", 100),
    "h": ("min", 60),
    "year": ("month", 12),
    "week": ("day", 7),
}
_HEDGE = re.compile(
    r"(?:~|(?:about|around|approx(?:imately|\.)?|roughly|circa|ca\.)(?![a-z]))\s*", re.I
)
_BETWEEN = re.compile(r"(between|from)(?![a-z])\s*", re.I)
TO = re.compile(r"\s*(?:-|~|\.{2,3}|(?:to|till|until)(?![a-z]))\s*", re.I)
_AND = re.compile(r"\s*(?:and|&)(?![a-z])\s*", re.I)


@dataclass(frozen=True, slots=True)
class Side:
    """A number with the unit it was written with, in that unit.

    ``doubt`` holds what to ask (accepted, example) where the number may be read in two ways.
    """

    value: Fraction
    unit: str | None
    end: int
    doubt: tuple[Say, str] | None = None


def split_sides(text: str, dimension: Dimension | None) -> tuple[Side, Side] | None:
    """Return the two ends of a normalised text, the same end twice where it is no range."""
    text = text.strip()
    hedge = _HEDGE.match(text)
    at = hedge.end() if hedge else 0
    between = _BETWEEN.match(text, at)
    low = read_side(text, between.end() if between else at, dimension)
    if low is None:
        return None
    if low.end == len(text) and not between:
        return low, low
    joint = _AND if between and between[1].lower() == "between" else TO
    to = joint.match(text, low.end)
    high = read_side(text, to.end(), dimension) if to else None
    return (low, high) if high and high.end == len(text) else None


def read_side(text: str, at: int, dimension: Dimension | None) -> Side | None:
    """Return the side that starts at ``at`` in a normalised text, as far as it goes."""
    match = _side(dimension).match(text, at)
    if match is None:
        return None
    word, alias = match["word"], match["unit"] if dimension else None
    if word:
        if alias is None:
            return None
        value = _WORDS[" ".join(re.split(r"[\s-]+", word.lower()))]
        side = Side(value, None, match.end())
    else:
        number = numeral(match["number"])
        if number is None:
            return None
        value = -number.value if match["sign"] == "-" else number.value
        side = Side(value, None, match.end(), _doubt(match["number"], number.doubtful, alias))
    if match["half"]:
        side = replace(side, value=side.value + Fraction(1, 2))
    if alias is None or dimension is None:
        return side
    side = Side(side.value, unit_named(alias, dimension), side.end, side.doubt)
    half = _HALF_MORE.match(text, side.end)
    if half and side.value.denominator == 1:
        return replace(side, value=side.value + Fraction(1, 2), end=half.end())
    return _compound(text, side, alias, dimension)


def _compound(text: str, side: Side, alias: str, dimension: Dimension) -> Side:
    """Return the side with the smaller unit that follows it, as in 1 ft 2 in."""
    smaller, below = _SMALLER.get(side.unit or "", ("", 0))
    match = _follower(dimension).match(text, side.end) if smaller else None
    if match is None or side.value < 0 or side.value.denominator != 1:
        return side
    touching = alias == "'" and match.start("number") == side.end
    unit = unit_named(match["unit"], dimension) if match["unit"] else touching and smaller
    number = numeral(match["number"])
    if unit != smaller or number is None or number.value >= below:
        return side
    return Side(side.value + number.value / below, side.unit, match.end())


def _doubt(number: str, doubtful: bool, alias: str | None) -> tuple[Say, str] | None:
    """Return what to ask where a comma, or a point before mm, may set off thousands."""
    whole, _, places = number.replace(",", ".").partition(".")
    in_mm = (alias or "").lower() in ("mm", "mms") and len(places) == 3 and whole.strip("0")
    if not doubtful and not in_mm:
        return None
    few = f"{whole}.{places}".rstrip("0").rstrip(".")
    accepted = Say("wanted-clear-number", EitherOf(f"{whole}{places}", few))
    return accepted, f"{whole}{places} {alias or ''}".rstrip()


@cache
def _side(dimension: Dimension | None) -> re.Pattern[str]:
    number = rf"(?:(?P<sign>[+-])?\s?(?P<number>{NUMERAL})|(?P<word>{WORDED})(?=\s))"
    number += rf"(?P<half>{_HALF_MORE.pattern})?"
    if dimension is None:
        return re.compile(rf"{number}(?P<unit>(?!))?", re.I | re.A)
    unit = rf"(?P<unit>{alias_pattern(dimension)})\.?"
    if "temperature" in dimension:
        # A degree sign alone does not say which degrees.
        unit = rf"{unit}|(?:°|deg(?:rees?)?)(?![a-z])"
    return re.compile(rf"{number}(?:\s*(?:{unit}))?", re.I | re.A)


@cache
def _follower(dimension: Dimension) -> re.Pattern[str]:
    return re.compile(
        rf"\s*(?:,|and\s)?\s*(?P<number>{NUMERAL})(?:\s*(?P<unit>{alias_pattern(dimension)}))?",
        re.I | re.A,
    )
