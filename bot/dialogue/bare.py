"""What a few words tell by what stands before them: a number alone, an age, a kind of lamp."""

import re
from collections.abc import Collection, Mapping
from contextlib import suppress

from bot.language.errors import NotUnderstoodError
from bot.language.quantities import read_length
from bot.language.units import Units
from bot.language.uv_lamps import UvLamp

__all__ = ["age_told", "bare_told", "lamp_told", "on_for_told"]

_ALONE = re.compile(r"^\W*(?:[^\W\d]+ ){0,3}(\d+(?:[.,]\d+)?)(?: [^\W\d]+){0,2}\W*$")
_AGE = re.compile(
    r"(?<![\w.])(\d+(?:[.,]\d+)?|an?|one|two|three|half an?) "
    r"?(weeks?|wks?|months?|mo|mths?|years?|yrs?|wochen?|monate?n?|jahre?n?)\b"
)
_ON_FOR = re.compile(
    r"(?<![\w.])(\d+(?:[.,]\d+)?|an?|one|two|three) ?(min(?:ute)?n?s?|h|hrs?|hours?|stunden?)\b"
)
_COUNTS = {"a": "1", "an": "1", "one": "1", "two": "2", "three": "3"}
_SPANS = {"w": "weeks", "m": "months", "y": "years", "j": "years"}
_OF_AN_ANIMAL = re.compile(r"\b(?:he|she|er|sie|hatched|baby)\b")
_LAMPS = (
    (r"\bt5\b", UvLamp.T5_HO),
    (r"\bt8\b", UvLamp.OTHER_TUBE),
    (r"\b(?:compact|coil|spiral|kompakt\w*)\b", UvLamp.COMPACT),
    (r"\bmetal halide\b|\bhid\b", UvLamp.METAL_HALIDE),
    (r"\bmercury|\bmvb\b|\bquecksilber\w*", UvLamp.MERCURY),
    (r"\bleds?\b", UvLamp.LED),
)
# No room is warmer than the first in Celsius nor colder than the second in Fahrenheit; the next
# pair is of surfaces and of air that a lamp warms.
_ROOM_C, _ROOM_F = 35.0, 40.0
_WARM_C, _WARM_F = 52.0, 60.0
_HEATS = ("room", "surface", "air", "reading")
_WEAKEST, _STRONGEST = 2.0, 14.0


def bare_told(
    name: str,
    names: Collection[str],
    given: Mapping[str, str],
    line: str,
    lacking: Collection[str],
    units: Units | None,
) -> tuple[str, str] | None:
    """Return the option that a number without a unit is for, and its text with the unit.

    It is what the question before lacks; else what it varies, in the unit that stood there.
    """
    found = _ALONE.match(line.lower())
    if found is None:
        return None
    number = float(found[1].replace(",", "."))
    told = f"{number:g}"
    heat = next((option for option in _HEATS if option in lacking), "")
    if not heat and name == "night":
        heat = "room"
    if heat and (text := _degrees(heat, number)):
        return heat, text
    if "tube" in lacking and _WEAKEST <= number <= _STRONGEST:
        return "tube", f"{told}%"
    if "distance" in names and ("distance" in lacking or "distance" in given):
        unit = _unit_of(given.get("distance", "")) or (units.value if units else "")
        return ("distance", f"{told} {unit}") if unit else None
    return None


def _degrees(option: str, number: float) -> str:
    """Return a temperature with the only unit that it can have; nothing where it may be either."""
    celsius, fahrenheit = (_ROOM_C, _ROOM_F) if option == "room" else (_WARM_C, _WARM_F)
    if number >= fahrenheit:
        return f"{number:g} F"
    return f"{number:g} C" if 0.0 < number <= celsius else ""


def _unit_of(text: str) -> str:
    with suppress(NotUnderstoodError):
        return read_length(text).unit
    return ""


def age_told(line: str) -> str:
    """Return how old a line says that something is, and not the animal; else nothing.

    >>> age_told("its 8 months old"), age_told("he is 8 months old"), age_told("a year")
    ('8 months', '', '1 years')
    """
    plain = line.lower()
    found = _AGE.search(plain)
    if found is None or _OF_AN_ANIMAL.search(plain):
        return ""
    if found[1].startswith("half"):
        return "6 months" if found[2][0] in "yj" else ""
    return f"{_COUNTS.get(found[1], found[1])} {_SPANS[found[2][0]]}"


def on_for_told(line: str) -> str:
    """Return how long a line says that the lamp was on; else nothing.

    >>> on_for_told("now 3 hours and its 101"), on_for_told("its 101")
    ('3 hours', '')
    """
    found = _ON_FOR.search(line.lower())
    if found is None:
        return ""
    unit = "minutes" if found[2].startswith("m") else "hours"
    return f"{_COUNTS.get(found[1], found[1])} {unit}"


def lamp_told(line: str) -> str:
    """Return the kind of UV lamp that a line names, as the questions take it; else nothing.

    >>> lamp_told("its a t8"), lamp_told("its a mesh")
    ('T8 or other tube', '')
    """
    plain = line.lower()
    return next((str(lamp) for form, lamp in _LAMPS if re.search(form, plain)), "")
