"""What a few words tell by what stands before them: a number alone, an age, a kind of lamp."""

import re
from collections.abc import Collection, Mapping
from contextlib import suppress
from datetime import date

from bot.language.errors import NotUnderstoodError
from bot.language.lamps import read_tube
from bot.language.quantities import Measure, read_duration, read_length, read_temperature
from bot.language.readings import PlacedReading, read_placed_readings
from bot.language.units import Units
from bot.language.uv_lamps import UvLamp, find_uv_lamp

__all__ = [
    "NO_FIGURE",
    "age_told",
    "bare_told",
    "distance_alone",
    "is_distance",
    "lamp_told",
    "on_for_told",
    "only_number",
    "place_before",
    "tells_a_lamp",
    "unit_of",
]

NO_FIGURE = (
    r"(?:years?|yrs?|months?|mo|weeks?|days?|hours?|hrs?|min(?:utes?)?|jahre?n?|monate?n?|wochen?"
    r"|tage?n?|stunden?|minuten?|bucks|dollars?|euros?|pounds?|quid|people|times|mal"
    r"|gal(?:lons?)?|lit(?:er|re)s?|liter|percent|prozent|uhr|o'?clock|am|pm|watts?|w|grams?"
    r"|gramm|kilos?|kg|g)"
)
"""What a number counts that is neither a length nor a temperature."""
_ALONE = re.compile(
    r"^\W*(?:[^\W\d]+ ){0,7}(\d+(?:[.,]\d+)?)"
    rf"(?! ?{NO_FIGURE}\b)"
    r"(?:(?: [^\W\d]+){0,2}"
    r"|(?: [^\W\d]+)? (?:i (?:should |would )?(?:think|guess|say|reckon|believe)"
    r"|(?:or|oder) so|more or less|denke ich|glaube? ich)"
    # Where or when it is so: 12 in the shed, 62 on the far side.
    r"|(?: [^\W\d]+)? (?:in|on|at|by|over|under|near|from|for|when|here|there|now|right|im|am|auf"
    r"|an|bei|unter|über|in|wenn|dort|hier)(?: [^\W\d]+){1,4})\W*$"
)
# A number that is told in place of the one before, whatever follows it: no wait 14, he has a slate.
_INSTEAD = re.compile(
    r"^\W*(?:(?:no|nope|oh|wait|sorry|oops|actually|make (?:it|that)|rather|i mean[t]?|its|it's"
    r"|it is|nein|doch|ich meine?|es sind)[, ]+)+(\d+(?:[.,]\d+)?)(?=[,.;!]? |[,.;!]?$)"
    rf"(?! ?{NO_FIGURE}\b)"
    r"(?! ?(?:%|°|[cfhx]\b|in\b|inch|cm|ft|foot|feet)\b)[^\d]*$"
)
_ON_THE_WAY = re.compile(r"\d (?:over|above|away|from|off|über|weg|entfernt)\b")
_AGE = re.compile(
    r"(?<![\w.])(\d+(?:[.,]\d+)?|an?|one|two|three|half an?) "
    r"?(weeks?|wks?|months?|mo|mths?|years?|yrs?|wochen?|monate?n?|jahre?n?)\b"
)
_ON_FOR = re.compile(
    r"(?<![\w.])(\d+(?:[.,]\d+)?|an?|one|two|three) ?(min(?:ute)?n?s?|h|hrs?|hours?|stunden?)\b"
)
_SINCE = re.compile(
    r"\b(?:from|since|in|of|seit|von|vom) (?:last |this |early |late |mid |letzten |letztem )?"
    r"(jan|feb|mar|mär|apr|may|mai|jun|jul|aug|sep|oct|okt|nov|dec|dez)[a-zä]*\.?(?: (20\d\d))?\b"
)
_MONTHS = (
    *("jan", "feb", "mar mär", "apr", "may mai", "jun", "jul", "aug", "sep", "oct okt", "nov"),
    "dec dez",
)
_COUNTS = {"a": "1", "an": "1", "one": "1", "two": "2", "three": "3"}
_SPANS = {"w": "weeks", "m": "months", "y": "years", "j": "years"}
_OF_AN_ANIMAL = re.compile(r"\b(?:he|she|er|sie|hatched|baby)\b")
_T5 = re.compile(r"\bt5\b")
# No room is warmer than the first in Celsius nor colder than the second in Fahrenheit; the next
# pair is of surfaces and of air that a lamp warms.
_ROOM_C, _ROOM_F = 35.0, 40.0
_WARM_C, _WARM_F = 52.0, 60.0
_LIVED_IN_F = 55.0
# "The tube is at 15" tells a distance, whatever else has a number.
_OF_A_LAMP = re.compile(
    r"\b(?:tube|uvb?|t5|lamp|bulb|light|röhre|lampe)(?: (?:is|hangs|sits|hängt|ist|now|jetzt))+"
    r"(?: (?:at|about|auf|bei|now))* \d"
    # Somebody moves it there: can i go to 20, raise it to 14, hang it at 12.
    r"|\b(?:(?:i|we|ich|wir|me|to) (?:go|gehe?n?)|(?:move|put|hang|raise|lower|bring|lift|set|mount"
    r"|hänge?n?|setze?n?|mache?n?)(?: (?:it|that|this|them|the (?:lamp|tube|bulb|light)|es|ihn|sie"
    r"|die (?:lampe|röhre)))?)(?: (?:up|down|back|hoch|runter))? (?:to|at|auf) (?:about |etwa )?\d"
    r"|\bauf \d+ (?:gehe?|hänge?|setze?)\b"
)
_HEATS = ("room", "surface", "air", "reading")
_WEAKEST, _STRONGEST = 2.0, 14.0
# Nearer or farther hangs no lamp.
_DISTANCES = {Units.IN: (2.0, 60.0), Units.CM: (5.0, 150.0)}


def bare_told(
    name: str,
    names: Collection[str],
    given: Mapping[str, object],
    line: str,
    lacking: Collection[str],
    units: Units | None,
) -> tuple[str, object] | None:
    """Return the option that a number without a unit is for, and its value with the unit.

    It is what the question before lacks; else what it varies, in the unit that stood there.
    """
    told = only_number(line)
    if not told:
        return None
    number = float(told)
    place = place_before(given) if "distance" in names else None
    if place and (tells_a_lamp(line) or (name != "night" and _far_too_cold(told, place))):
        return "distance", read_length(told, unit_of(place) or Units.IN)
    heat = next((option for option in _HEATS if option in lacking), "")
    if not heat and name == "night":
        heat = "room"
    if heat and (measure := _degrees(heat, told)):
        return heat, measure
    if "tube" in lacking and _WEAKEST <= number <= _STRONGEST:
        return "tube", read_tube(f"{told}%")
    if "distance" in names and ("distance" in lacking or place):
        unit = unit_of(place) or units
        if unit and is_distance(told, place or unit):
            return "distance", read_length(told, unit)
    return None


def place_before(given: Mapping[str, object]) -> object:
    """Return how far away a lamp was told to be, or was read last; None: it was not told."""
    if place := given.get("distance"):
        return place
    rows = given.get("readings")
    with suppress(NotUnderstoodError):
        read = read_placed_readings(rows) if isinstance(rows, str) else rows
        last = read[-1] if isinstance(read, tuple) and read else None
        return last.distance if isinstance(last, PlacedReading) else None
    return None


def tells_a_lamp(line: str) -> bool:
    """Whether a number is told of a lamp itself: the tube is at 15."""
    return _OF_A_LAMP.search(line.lower()) is not None


def _far_too_cold(told: str, place: object) -> bool:
    """Whether a number can be how far a lamp is, and no temperature that anybody lives in."""
    return is_distance(told, place) and _ROOM_C < float(told) < _LIVED_IN_F


def only_number(line: str) -> str:
    """Return the one number of a few words, which no unit stands beside; nothing: there is none."""
    found = _ALONE.match(line.lower()) or _INSTEAD.match(line.lower())
    return found[1].replace(",", ".") if found else ""


def distance_alone(line: str, place: object) -> str:
    """Return the bare number that a line tells as a way from a lamp: 10 over the dock; else ""."""
    number = only_number(line)
    told = number and _ON_THE_WAY.search(line.lower()) is not None
    return number if told and is_distance(number, place) else ""


def is_distance(number: str, place: object) -> bool:
    """Whether a bare number may be how far away a lamp is, told in the unit of ``place``.

    >>> is_distance("118", read_length("20in")), is_distance("45", read_length("30cm"))
    (False, True)
    """
    unit = place if isinstance(place, Units) else unit_of(place)
    if not number or unit is None:
        return False
    least, most = _DISTANCES[unit]
    return least <= float(number) <= most


def _degrees(option: str, told: str) -> Measure | None:
    """Return a temperature with the only unit that it can have; None where it may be either."""
    celsius, fahrenheit = (_ROOM_C, _ROOM_F) if option == "room" else (_WARM_C, _WARM_F)
    number = float(told)
    if number >= fahrenheit:
        return read_temperature(told, Units.IN)
    return read_temperature(told, Units.CM) if 0.0 < number <= celsius else None


def unit_of(length: object) -> Units | None:
    """Return the system that a length stands in."""
    with suppress(NotUnderstoodError):
        measure = read_length(length) if isinstance(length, str) else length
        return measure.system if isinstance(measure, Measure) else None
    return None


def age_told(line: str, today: date | None = None) -> Measure | None:
    """Return how old a line says that something is, and not the animal; else nothing.

    >>> [found and found.text for found in map(age_told, ("8 months old", "he is 8 months old"))]
    ['8 months', None]
    """
    plain = line.lower()
    if (since := _since(plain, today)) and not _OF_AN_ANIMAL.search(plain):
        return since
    found = _AGE.search(plain)
    if found is None or _OF_AN_ANIMAL.search(plain):
        return None
    if found[1].startswith("half"):
        return read_duration("6 months") if found[2][0] in "yj" else None
    return _span(found, _SPANS[found[2][0]])


def _since(plain: str, today: date | None) -> Measure | None:
    """Return the age of what is told to be of a month: from last june, since March 2025."""
    found = _SINCE.search(plain)
    if found is None or today is None:
        return None
    month = next(at for at, names in enumerate(_MONTHS, 1) if found[1][:3] in names)
    year = int(found[2]) if found[2] else today.year - (month > today.month)
    months = 12 * (today.year - year) + today.month - month
    return read_duration(f"{months} months") if months >= 0 else None


def on_for_told(line: str) -> Measure | None:
    """Return how long a line says that the lamp was on; else nothing.

    >>> [found and found.text for found in map(on_for_told, ("now 3 hours and 101", "its 101"))]
    ['3 hours', None]
    """
    found = _ON_FOR.search(line.lower())
    if found is None:
        return None
    return _span(found, "minutes" if found[2].startswith("m") else "hours")


def _span(found: re.Match[str], unit: str) -> Measure | None:
    """Return a count of days or hours as a measure; None where it is no number."""
    with suppress(NotUnderstoodError):
        return read_duration(f"{_COUNTS.get(found[1], found[1])} {unit}")
    return None


def lamp_told(words: str) -> UvLamp | None:
    """Return the kind of UV lamp that words of hearing name; else nothing.

    >>> lamp_told("its a t8"), lamp_told("its a t5"), lamp_told("its a mesh")
    (<UvLamp.OTHER_TUBE: 'T8 or other tube'>, <UvLamp.T5_HO: 'T5 HO tube'>, None)
    """
    return find_uv_lamp(words) or (UvLamp.T5_HO if _T5.search(words) else None)
