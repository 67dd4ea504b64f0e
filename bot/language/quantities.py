"""The doors for quantities: a text in, a measure in SI out, or one plain sentence.

The grammar is strict and reads the whole text or nothing. A range stays a range, feet and
inches add up, a number without a unit is refused unless the caller says which unit it takes.
"""

import re
from dataclasses import dataclass, replace
from fractions import Fraction
from functools import cache

from bot.facts import Say
from bot.language.errors import NotUnderstoodError
from bot.language.normal import normalise
from bot.language.numerals import NUMERAL, numeral
from bot.language.sides import LONGEST, Side, split_sides
from bot.language.units import Dimension, Units, convert, exact, system_of
from bot.language.wanted import Whole, number_told

__all__ = [
    "SI",
    "Dimension",
    "Measure",
    "Units",
    "convert",
    "read_air_temperature",
    "read_convertible",
    "read_duration",
    "read_length",
    "read_number",
    "read_number_range",
    "read_percent",
    "read_power",
    "read_setting",
    "read_surface_temperature",
    "read_temperature",
    "read_temperature_difference",
    "read_volume",
    "single",
]

SI = {
    Dimension.LENGTH: "m",
    Dimension.TEMPERATURE: "degC",
    Dimension.TEMPERATURE_DIFFERENCE: "K",
    Dimension.POWER: "W",
    Dimension.DURATION: "s",
    Dimension.VOLUME: "meter ** 3",
}
_ACCEPTED = {
    Dimension.LENGTH: (Say("wanted-length"), "14in"),
    Dimension.TEMPERATURE: (Say("wanted-temperature"), "103F"),
    Dimension.TEMPERATURE_DIFFERENCE: (Say("wanted-difference"), "10F"),
    Dimension.POWER: (Say("wanted-power"), "75W"),
    Dimension.DURATION: (Say("wanted-time"), "6 months"),
    Dimension.VOLUME: (Say("wanted-volume"), "40 gallons"),
}
_NUMBER, _NUMBER_RANGE = Say("wanted-number"), Say("wanted-number-range")
_PERCENT = Say("wanted-percent")
_ASKED_FOR = {Dimension.LENGTH: "in", Dimension.TEMPERATURE: "F"}
_MOST_SHOWN = 1000.0
_ONE_PERCENT = 0.01
_LEAST_SETTING = 0.5
_ABSOLUTE_ZERO_C = Fraction("-273.15")
_DIFFERENCE = re.compile(
    r"^(?:difference|diff|delta|interval)(?: of)?\b|\b(?:difference|diff)$", re.I
)


@dataclass(frozen=True, slots=True)
class Measure:
    """What was read, in SI (m, °C, K for differences, W, s, m³); one value has low == high.

    ``unit`` is the unit as read ("in", "ft", "cm", "degF" ...), ``text`` the words it was read
    from; ``assumed`` is true where a bare number took the unit from the caller.
    """

    dimension: Dimension
    low: float
    high: float
    unit: str
    text: str
    assumed: bool

    @property
    def system(self) -> Units | None:
        """Return the system of the unit that was read, or None for one that all share."""
        return system_of(self.unit)

    @property
    def middle(self) -> float:
        """The middle of its ends, in SI."""
        return (self.low + self.high) / 2.0

    def narrowed(self) -> "Measure":
        """Return the middle of a range as one value; a single value stays as it is.

        >>> read_length("10-12in").narrowed().low, read_length("14in").narrowed().high
        (0.2794, 0.3556)
        """
        return replace(self, low=self.middle, high=self.middle)


def measured(low: Side, high: Side, dimension: Dimension, unit: str, text: str) -> Measure:
    """Return the measure of one or two sides; a side without a unit takes ``unit``."""
    si = SI[dimension]
    one = exact(low.value, low.unit or unit, si)
    other = one if high is low else exact(high.value, high.unit or unit, si)
    ends = sorted((one, other))
    assumed = not (low.unit or high.unit)
    if dimension is Dimension.TEMPERATURE and ends[0] < _ABSOLUTE_ZERO_C:
        raise NotUnderstoodError(text, Say("wanted-above-zero"), "103F")
    if ends[0] < 0 and "temperature" not in dimension:
        accepted, example = _ACCEPTED[dimension]
        raise NotUnderstoodError(text, Say("wanted-not-negative", Whole(accepted)), example)
    return Measure(dimension, float(ends[0]), float(ends[1]), unit, text, assumed)


def _read(text: str, dimension: Dimension, bare: str | None) -> Measure:
    refusal = NotUnderstoodError(text, *_ACCEPTED[dimension])
    if len(text) > LONGEST:
        raise refusal
    sides = split_sides(normalise(text), dimension)
    if sides is None:
        raise refusal
    low, high = sides
    for side in sides:
        if side.doubt:
            raise NotUnderstoodError(text, *side.doubt)
    unit = low.unit or high.unit or bare
    if unit is None:
        raise NotUnderstoodError(text, *_with_unit(dimension, sides))
    if low.unit is None:
        low = replace(low, unit=high.unit)
    if high.unit is None:
        high = replace(high, unit=low.unit)
    return measured(low, high, dimension, unit, " ".join(text.split()))


def _with_unit(dimension: Dimension, sides: tuple[Side, Side]) -> tuple[Say, str]:
    """Return what is accepted in place of a number without its unit, in the asker's own number."""
    accepted, example = _ACCEPTED[dimension]
    unit, number = _ASKED_FOR.get(dimension), float(sides[0].value)
    own = unit is not None and sides[0] == sides[1] and 0.0 < number < _MOST_SHOWN
    if own and dimension is Dimension.TEMPERATURE:
        accepted = Say("wanted-which-degrees", number_told(number))
    return accepted, f"{number:g}{unit}" if own else example


def read_length(text: str, bare: Units | None = None) -> Measure:
    """Read a length or a range of lengths; a bare number is taken in ``bare`` if given.

    >>> read_length("14 1/2 in").low, read_length("10–12 in").high, read_length("1'2\\"").low
    (0.3683, 0.3048, 0.3556)
    """
    return _read(text, Dimension.LENGTH, bare and bare.value)


def read_temperature(text: str, bare: Units | None = None) -> Measure:
    """Read a temperature or a range; a bare number is °F with inches, °C with centimetres.

    >>> read_temperature("95-110F").low, read_temperature("39,5 °C").low
    (35.0, 39.5)
    """
    return _read(text, Dimension.TEMPERATURE, _degrees(bare))


def read_surface_temperature(text: str, bare: Units | None = None) -> Measure:
    """Read the temperature of a lit surface; a bare number may tell its unit by itself.

    >>> read_surface_temperature("98").unit, read_surface_temperature("38").unit
    ('degF', 'degC')
    """
    return _read(text, Dimension.TEMPERATURE, _degrees(bare) or _told_by_size(text, 44.0, 66.0))


def read_air_temperature(text: str, bare: Units | None = None) -> Measure:
    """Read the temperature of air around animals; a bare number may tell its unit by itself.

    >>> read_air_temperature("62").unit, read_air_temperature("24").unit
    ('degF', 'degC')
    """
    return _read(text, Dimension.TEMPERATURE, _degrees(bare) or _told_by_size(text, 34.0, 45.0))


def _told_by_size(text: str, highest_c: float, lowest_f: float) -> str | None:
    """Return the only unit in which a bare number can be meant, or None where both can."""
    sides = split_sides(normalise(text), Dimension.TEMPERATURE) if len(text) <= LONGEST else None
    ends = [float(side.value) for side in sides or ()]
    if ends and min(ends) >= lowest_f:
        return "degF"
    return "degC" if ends and min(ends) >= 0.0 and max(ends) <= highest_c else None


def read_temperature_difference(text: str, bare: Units | None = None) -> Measure:
    """Read a difference of temperatures, where 10F is 5.56 K and not −12.2 °C."""
    words = _DIFFERENCE.sub("", text.strip()).strip() if len(text) <= LONGEST else text
    unit = _degrees(bare)
    return _read(words, Dimension.TEMPERATURE_DIFFERENCE, unit and f"delta_{unit}")


def read_power(text: str) -> Measure:
    """Read a wattage; a bare number is watts, the only unit there is."""
    return _read(text, Dimension.POWER, "W")


def read_duration(text: str, bare: str | None = None) -> Measure:
    """Read a time such as 12 hours or half a year; ``bare`` is the unit of a bare number."""
    return _read(text, Dimension.DURATION, bare)


def read_volume(text: str) -> Measure:
    """Read a volume in US gallons or litres."""
    return _read(text, Dimension.VOLUME, None)


def read_convertible(text: str, bare: Units | None = None) -> Measure:
    """Read a length, a temperature or a ``difference 10F``; a bare number could be either."""
    if len(text) <= LONGEST:
        if _DIFFERENCE.search(text.strip()):
            return read_temperature_difference(text, bare)
        plain = normalise(text)
        for dimension in (Dimension.LENGTH, Dimension.TEMPERATURE):
            sides = split_sides(plain, dimension)
            if sides and (sides[0].unit or sides[1].unit):
                return _read(text, dimension, None)
    raise NotUnderstoodError(text, Say("wanted-convertible"), "14in")


def single(measure: Measure) -> Measure:
    """Return the measure if it is one value, and refuse a range."""
    if measure.low != measure.high:
        _, example = _ACCEPTED[measure.dimension]
        raise NotUnderstoodError(measure.text, Say("wanted-one-value"), example)
    return measure


def read_number(text: str, accepted: Say = _NUMBER, example: str = "4") -> float:
    """Read one plain number."""
    low, high = _numbers(text, accepted, example)
    if low != high:
        raise NotUnderstoodError(text, accepted, example)
    return low


def read_number_range(
    text: str, accepted: Say = _NUMBER_RANGE, example: str = "3-5"
) -> tuple[float, float]:
    """Read a number or a range of numbers, such as a wanted UV index.

    >>> read_number_range("3 to 5"), read_number_range("4")
    ((3.0, 5.0), (4.0, 4.0))
    """
    words = re.sub(r"(?i)^\s*uvi?\b|\buvi?\s*$", "", text) if len(text) <= LONGEST else text
    low, high = _numbers(words, accepted, example)
    if low < 0:
        raise NotUnderstoodError(text, Say("wanted-not-negative", Whole(accepted)), example)
    return low, high


def read_percent(text: str, accepted: Say = _PERCENT, example: str = "80%") -> float:
    """Read a percentage, with or without its sign, as a fraction from 0 to 1."""
    match = _percent().fullmatch(normalise(text)) if len(text) <= LONGEST else None
    number = numeral(match[1]) if match else None
    if number is None or number.doubtful or not 0 <= number.value <= 100:
        raise NotUnderstoodError(text, accepted, example)
    return float(number.value / 100)


def read_setting(text: str) -> float:
    """Read the emissivity that an infrared gun is set to, as a fraction: a gun shows 0.95.

    >>> read_setting("0.95"), read_setting("95%")
    (0.95, 0.95)
    """
    accepted = Say("wanted-setting")
    read = read_percent(text, accepted, "95%")
    setting = read * 100.0 if read <= _ONE_PERCENT else read
    if setting < _LEAST_SETTING:
        raise NotUnderstoodError(text, accepted, "95%")
    return setting


@cache
def _percent() -> re.Pattern[str]:
    return re.compile(rf"\s*({NUMERAL})\s*(?:%|percent|per cent|pct)?\s*", re.I | re.A)


def _degrees(bare: Units | None) -> str | None:
    return {Units.IN: "degF", Units.CM: "degC"}[bare] if bare else None


def _numbers(text: str, accepted: Say, example: str) -> tuple[float, float]:
    sides = split_sides(normalise(text), None) if len(text) <= LONGEST else None
    if sides is None:
        raise NotUnderstoodError(text, accepted, example)
    for side in sides:
        if side.doubt:
            raise NotUnderstoodError(text, *side.doubt)
    low, high = sorted(side.value for side in sides)
    return float(low), float(high)
