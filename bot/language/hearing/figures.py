"""The figures in a sentence: numbers with or without a unit, sizes, clock times, shares."""

import re
from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from functools import cache

from bot.language.numerals import NUMERAL
from bot.language.sides import TO, WORDED, Side, read_side
from bot.language.sizes import cross_pattern
from bot.language.units import Dimension, first_letters

__all__ = ["Figure", "figures_of"]

_DIMENSIONS = (
    Dimension.LENGTH,
    Dimension.TEMPERATURE,
    Dimension.POWER,
    Dimension.DURATION,
    Dimension.VOLUME,
)
_START = re.compile(rf"(?<![a-z0-9_])(?:[-+]?\.?[0-9]|(?:{WORDED})(?= ))")
_DEGREES = re.compile(r"\s*(?:°|deg(?:rees?)?|grad(?:e|es|os)?)(?![a-z])")
_PERCENT = re.compile(r"\s*(?:%|percent|per cent|pct|perc(?![a-z]))")
_CLOCK = re.compile(r"([0-9]{1,2})(?::([0-9]{2}))?\s*(am|pm|a\.m\.|p\.m\.)?(?![0-9a-z])")
_PAIR = re.compile(r"([0-9]{2,3})\s?/\s?([0-9]{2,3})(?![0-9/a-z%°]|[.,][0-9])")
_ROW = re.compile(r"([0-9]{2,3})/([0-9]{2,3})/([0-9]{2,3})(?![0-9/a-z%°]|[.,][0-9])")
_SKIP = re.compile(
    r"24/7|[0-9]{1,2}/[0-9]{1,2}/[0-9]{2,4}|[0-9]{4}-[0-9]{2}-[0-9]{2}|[0-9]+(?:st|nd|rd|th)(?![a-z])"
)
_NUMBER = re.compile(rf"[-+]?\s?{NUMERAL}\s*")
_WORDED = re.compile(rf"(?:{WORDED})(?:\s+and\s+an?\s+half)?\s+")
_HAS_CROSS = re.compile(r"[x*]|by")
_TIMES = re.compile(r"[0-9]{1,2}\s?x\s?(?=[0-9]{2,3}\s?w|[0-9]{1,2}(?:\.0(?![0-9])|\s?%))")
_GALLONS = re.compile(
    r"([0-9]{2,3})(?:\s?g(?=\s(?:tank|breeder|long|aquarium|tall)\b)|(?=\s(?:gallon )?breeder\b))"
    r"|(20|33|40|55)(?=\slong\b(?! x))"
)
# After these words a lone "in" is the preposition: a 12 in a shiny hood.
_IN_THE = re.compile(
    r"\s+(?:a|an|the|my|his|her|their|our|this|that|it|one|summer|winter|there|here"
    r"|day|night|january|february|march|april|may|june|july|august|september|october|november|december)\b"
)
# After these a "w" is short for "with": 88 w a 60w bulb, 10.0 w/ reflector.
_WITH = re.compile(r"/|(?<=\sw)\s+(?:a|an|the|my|his|her|no|both|only|some|this|it)\b")
_UP_TO = re.compile(r"\s+(?:up|down|back)\s+to\s+")
_CROSSES = re.compile(r"\s?x\s?[0-9]")
_OR = re.compile(r"\s+or\s+")
_NEXT = Fraction(4, 3)
_AND = re.compile(r"\s+(?:and|to)\s+")
_ISH = re.compile(r"(?<=[0-9])[- ]?ish(?= ?(?:in|inch|inches|cm|°|degrees?|f|c)\b)")
_HYPHEN = re.compile(
    r"(?<=[0-9])-(?=(?:in|inch|cm|ft|foot|gal|gallon|litre|liter|w|watt|hour|hr|week|month|year|yr)"
    r"(?:s|es)?\b)"
)
# One letter alone is a unit only where it touches its number.
_APART = re.compile(r"[0-9]\s+[dhklsy]$")
_HOURS_APART = re.compile(
    r"[0-9]\s+h(?=\s*(?:of (?:light|uv)|a day|per day|/ ?day|daily|day|on|off|light|[,.;)]|\Z))"
)
_APART_IN = re.compile(r"\s+in$")
_A_LETTER = re.compile(r"an?\s+\w{1,2}$")
_A_METER = re.compile(r"an?\s+(?:meter|metre)")
_GOT = re.compile(r"\b(?:borrowed|bought|got|have|own|need|use|used|with) \Z")
_FAR = re.compile(r"\s+(?:long|away|above|from|over|of|and|wide|tall|up|high|deep|to|square)\b")
_LITRES = re.compile(r"\s+(?:tank|viv|tub|box|terrarium|aquarium|rub|bin)\b")
_LONGEST_MONTH, _MONTHS = 31, 12
_PASSED = re.compile(r"[-+]?[0-9.,_]*[0-9]|\S")
# The letter of a side: 20L x 12W x 12H.
_SIDE_LETTER = re.compile(r"\s?[lwdh](?![a-z])")
_IN_INCHES = re.compile(r"\s*(?:tank|viv|cage|enclosure)?\s*in inches\b")


@dataclass(frozen=True, slots=True)
class Figure:
    """A figure in the normalised text.

    ``kind`` is a dimension, or "plain", "degrees", "percent", "size", "cross", "clock", "pair",
    "row".
    ``sides`` holds what was written: one side, two of a range or a pair, three of a row or a size.
    ``told_to`` is where a correction ends that gave the figure its value; 0 if there was none.
    """

    kind: str
    sides: tuple[Side, ...]
    text: str
    start: int
    end: int
    told_to: int = 0

    @property
    def low(self) -> Fraction:
        """Return the smaller end in its own unit."""
        first = self.sides[0].value
        return first if len(self.sides) == 1 else min(side.value for side in self.sides)

    @property
    def high(self) -> Fraction:
        """Return the larger end in its own unit."""
        first = self.sides[0].value
        return first if len(self.sides) == 1 else max(side.value for side in self.sides)

    @property
    def unit(self) -> str | None:
        """Return the unit that was written."""
        last = self.sides[-1].unit
        if last or len(self.sides) == 1:
            return last
        return next((side.unit for side in reversed(self.sides) if side.unit), None)


def figures_of(text: str, taken: Iterable[tuple[int, int]], most: int) -> list[Figure]:
    """Return the first figures of a normalised lower-case text outside the taken spans."""
    free = _ISH.sub(lambda found: " " * len(found[0]), _blanked(text, taken))
    # A unit stands on the line of its number: "Night: 19" is followed by "Hours: 12".
    free = _HYPHEN.sub(" ", free).replace("\n", "|")
    found: list[Figure] = []
    closing = _closing_quotes(free)
    at = 0
    while len(found) < most and (match := _START.search(free, at)):
        at = match.start()
        row = _ROW.match(free, at)
        if row and not _is_date(row):
            found.append(_in_row("row", row))
            at = row.end()
            continue
        skip = _SKIP.match(free, at) or _TIMES.match(free, at)
        if skip:
            at = skip.end()
            continue
        figure = _figure(free, at, closing)
        if figure is None:
            at = _after_number(free, at)
            continue
        found.append(figure)
        at = max(figure.end, at + 1)
    return found


def _in_row(kind: str, row: re.Match[str]) -> Figure:
    numbers = enumerate(row.groups(), 1)
    sides = tuple(Side(Fraction(number), None, row.end(at)) for at, number in numbers)
    return Figure(kind, sides, row[0], row.start(), row.end())


def _is_date(row: re.Match[str]) -> bool:
    day, month = sorted((int(row[1]), int(row[2])), reverse=True)
    return day <= _LONGEST_MONTH and month <= _MONTHS


def _after_number(text: str, at: int) -> int:
    return _PASSED.match(text, at).end()  # type: ignore[union-attr]


def _blanked(text: str, taken: Iterable[tuple[int, int]]) -> str:
    for start, end in taken:
        text = text[:start] + "|" * (end - start) + text[end:]
    return text


def _closing_quotes(text: str) -> frozenset[int]:
    """Return the places of double quotes that close a quotation and are no inches."""
    closing, is_open = set(), False
    for match in re.finditer('"', text):
        at = match.start()
        opens = (at == 0 or text[at - 1] in " \n(") and text[at + 1 : at + 2].strip() != ""
        if is_open and not opens:
            closing.add(at)
            is_open = False
        elif opens:
            is_open = True
    return frozenset(closing)


def _figure(text: str, at: int, closing: frozenset[int]) -> Figure | None:
    size = _size(text, at, closing) if _HAS_CROSS.search(text, at, at + 24) else None
    if size:
        return size
    pair = _PAIR.match(text, at)
    if pair:
        return _in_row("pair", pair)
    gallons = _GALLONS.match(text, at)
    if gallons:
        side = Side(Fraction(gallons[1] or gallons[2]), "gal", gallons.end())
        return Figure(Dimension.VOLUME, (side,), gallons[0], at, gallons.end())
    clock = _CLOCK.match(text, at)
    if clock and (clock[2] or clock[3]):
        return _clock(clock, at)
    return _quantity(text, at, closing)


def _clock(clock: re.Match[str], at: int) -> Figure | None:
    hour, minute = int(clock[1]), int(clock[2] or 0)
    half = (clock[3] or "")[:1]
    if hour > (12 if half else 24) or minute > 59:
        return None
    hour = hour % 12 + (12 if half == "p" else 0) if half else hour
    side = Side(hour + Fraction(minute, 60), None, clock.end())
    return Figure("clock", (side,), clock[0], at, clock.end())


def _side(text: str, at: int, closing: frozenset[int]) -> tuple[str, Side] | None:
    """Return the side at ``at`` with the dimension whose unit reaches furthest."""
    best: tuple[str, Side] | None = None
    number = _NUMBER.match(text, at) or _WORDED.match(text, at)
    letter = text[number.end() : number.end() + 1] if number else ""
    for dimension in _dimensions(letter) if letter else _DIMENSIONS:
        side = read_side(text, at, dimension)
        if side is None or side.unit is None or _is_no_unit(text, at, side, closing):
            continue
        if best is None or side.end > best[1].end:
            best = dimension, side
    if best:
        return best
    plain = read_side(text, at, None)
    if plain is None:
        return None
    for kind, pattern in (("percent", _PERCENT), ("degrees", _DEGREES)):
        unit = pattern.match(text, plain.end)
        if unit:
            return kind, Side(plain.value, None, unit.end(), plain.doubt)
    return "plain", plain


def _is_no_unit(text: str, at: int, side: Side, closing: frozenset[int]) -> bool:
    written = text[at : side.end].rstrip(".")
    last = written[-1]
    if _A_METER.fullmatch(written):
        # "Borrowed a meter" tells of a UV meter.
        return _FAR.match(text, side.end) is None or _GOT.search(text, 0, at) is not None
    if last == "l" and _LITRES.match(text, side.end):
        return False
    if last == '"':
        return side.end - 1 in closing
    if written.endswith("day") and side.value > 1:
        # "Room is 73 day 67 night" tells of no 73 days.
        return True
    if last == "w" and _WITH.match(text, side.end):
        return True
    if last == "'":
        return text[side.end : side.end + 1].isalpha() and text[side.end] != "x"
    if _APART_IN.search(written):
        return bool(_IN_THE.match(text, side.end))
    if _HOURS_APART.search(text, max(at, side.end - 6)) and not _SIDE_LETTER.search(
        text, max(0, at - 4), at
    ):
        return False
    return bool(_APART.search(written) or _A_LETTER.match(written))


def _quantity(text: str, at: int, closing: frozenset[int]) -> Figure | None:
    first = _side(text, at, closing)
    if first is None:
        return None
    kind, low = first
    between = text.endswith("between ", 0, at)
    to = _AND.match(text, low.end) if between else TO.match(text, low.end)
    if to is None and text.endswith("from ", 0, at):
        to = _UP_TO.match(text, low.end)
    to = to or _OR.match(text, low.end)
    second = _side(text, to.end(), closing) if to and text[low.end : to.end()] else None
    if to and second and to.re is _OR and not _reads_on(kind, low, *second):
        second = None
    if second and _CROSSES.match(text, second[1].end):
        # "From 40 gal to 4x2x2" is no range.
        second = None
    if to and second and second[1].value >= 0 and _same(kind, second[0]):
        kind = second[0] if kind == "plain" else kind
        high = second[1]
        return Figure(kind, (low, high), text[at : high.end].strip(), at, high.end)
    return Figure(kind, (low,), text[at : low.end].strip(), at, low.end)


def _reads_on(kind: str, low: Side, other: str, high: Side) -> bool:
    """Say whether "or" joins two ends of one figure: 5 or 6 inches."""
    near = low.value < high.value <= _NEXT * low.value
    return kind == "plain" and near and other in (Dimension.LENGTH, Dimension.DURATION, "degrees")


def _same(kind: str, other: str) -> bool:
    return kind == other or kind == "plain" or (other == "plain" and kind != "clock")


def _size(text: str, at: int, closing: frozenset[int]) -> Figure | None:
    sides: list[Side] = []
    end = at
    while len(sides) < 4:
        side = read_side(text, end, Dimension.LENGTH)
        if side is None or side.value <= 0:
            break
        if side.unit and _is_no_unit(text, end, side, closing):
            side = read_side(text, end, None)
            if side is None:
                break
        sides.append(side)
        lettered = _SIDE_LETTER.match(text, side.end) if not side.unit else None
        cross = _cross().match(text, lettered.end() if lettered else side.end)
        if cross is None or not re.match(NUMERAL, text[cross.end() : cross.end() + 12]):
            break
        end = cross.end()
    if len(sides) not in (2, 3):
        return None
    last = sides[-1].end
    tail = _IN_INCHES.match(text, last) if len(sides) == 3 else None
    kind = "size" if len(sides) == 3 else "cross"
    end = tail.end() if tail else last
    return Figure(kind, tuple(sides), text[at:end].strip(), at, end)


@cache
def _dimensions(letter: str) -> tuple[Dimension, ...]:
    """Return the dimensions of which a unit may start with a character."""
    return tuple(each for each in _DIMENSIONS if letter in first_letters(each))


@cache
def _cross() -> re.Pattern[str]:
    return cross_pattern()
