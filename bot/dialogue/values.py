"""The value that a line tells of a part of the set-up, once it is known which part it tells of."""

import re
from collections.abc import Mapping

from bot.dialogue.bare import age_told, is_distance, lamp_told, on_for_told, unit_of
from bot.dialogue.figures import length_told
from bot.dialogue.kept import Dialogue
from bot.dialogue.told import named_again, states_now, told_in_words
from bot.language.hearing import FactName
from bot.language.lamps import Fixture, read_tube
from bot.language.quantities import Measure, read_length, read_power
from bot.language.units import Units
from bot.preferences import Preferences
from bot.routes.asked import Asked
from bot.routes.filled import filled

__all__ = ["value_for"]

_DEGREES = re.compile(
    r"(?<![\w.,])(-?\d{1,3}(?:[.,]\d)?)\s*(?:°|degrees?|deg|grad)?\s*"
    r"(f(?:ahrenheit|arenheit)?|c(?:elsius|elcius)?)?\b"
    # What has another unit is no temperature; "64 in there" has none.
    r"(?!\s?(?:%|\"|w\b|watts?|in(?! (?:the|there|here|my|an?|our|winter|summer|all|now|it)\b)\b"
    r"|inch|cm|mm|ft|h\b|hours?|hrs?|std|stunden|min|mo|months?|monate?|years?|yrs?|weeks?"
    r"|x\s?\d|[.,]?\d))",
    re.I,
)
_BARE = re.compile(r"(?<![\w.,%])(\d+(?:[.,]\d+)?)(?![\w%°]|[.,]\d)")
_WATTS = re.compile(r"(?<![\w.])(\d{1,4}) ?w?(?:atts?)?\b", re.I)
_FEET = re.compile(r"\b(?:an?|one|1) (?:foot|ft|fuß)\b(?P<half> and (?:a )?half)?", re.I)
_NO_MIRROR = re.compile(
    r"\b(?:no|none|without|kein\w*|ohne|nope|nah|plain|white|weiß\w*|matt\w*)\b", re.I
)
_MIRROR = re.compile(
    r"\b(?:reflector|mirror\w*|shiny|polished|alu\w*|silver|chrome|reflektor|spiegel\w*|glänz\w*"
    r"|yes|yeah|ja)\b",
    re.I,
)
_NEW = re.compile(r"\b(?:brand )?new\b|\b(?:nagel)?neu\b", re.I)
_FACTS = {
    "water": (FactName.WATER,),
    "length": (FactName.TUBE_LENGTH, FactName.ENCLOSURE_LENGTH),
    "hours": (FactName.HOURS,),
    "on": (FactName.ON_FOR,),
    "age": (FactName.AGE, FactName.ANIMAL_AGE),
    "distance": (
        FactName.DISTANCE_BACK,
        FactName.DISTANCE,
        FactName.DISTANCE_PERCH,
        FactName.LAMP_DISTANCE,
        FactName.DISTANCE_FLOOR,
    ),
    "watts": (FactName.WATTS, FactName.OTHER_WATTS),
    "enclosure": (FactName.ENCLOSURE, FactName.ENCLOSURE_LENGTH, FactName.VOLUME),
    "basking": (FactName.BASKING,),
    "cool": (FactName.COOL,),
    "warm": (FactName.WARM,),
    "night": (FactName.NIGHT, FactName.ROOM_NIGHT, FactName.ROOM),
    "room": (FactName.ROOM, FactName.ROOM_NIGHT),
    "uvi": (FactName.UVI,),
    "tube": (FactName.TUBE,),
}
"""Which facts hold a value, the surest first."""
_HEATS = ("basking", "cool", "warm", "night", "room", "water")
_STRONGEST = 15.0


def value_for(
    name: str,
    asked: Asked,
    dialogue: Dialogue,
    told: Mapping[str, object],
    preferences: Preferences,
) -> object | None:
    """Return the value that a line tells of ``name``, as its option holds it; else None."""
    line = asked.said
    for fact in _FACTS.get(name, ()):
        if rows := asked.told.all(fact):
            return rows[-1].value
    if name in _HEATS:
        return _degrees(asked)
    if name == "distance":
        return _distance(line, dialogue, told, preferences)
    if name == "length":
        return length_told(line)
    return _other_value(name, asked, preferences)


def _other_value(name: str, asked: Asked, preferences: Preferences) -> object | None:
    """Return what is no temperature and no length, as a line tells it."""
    line = asked.said
    match name:
        case "tube":
            number = _bare(line)
            return read_tube(f"{number}%") if 2.0 <= number <= _STRONGEST else None
        case "age":
            new = _NEW.search(line)
            return age_told(line, preferences.today) or ("new" if new else None)
        case "on":
            return on_for_told(line)
        case "watts":
            found = _WATTS.search(line)
            return read_power(f"{found[1]} W") if found else None
        case "uvi":
            number = _bare(line)
            return f"{number:g}" if 0.0 < number <= _STRONGEST else None
        case "animal":
            return (
                asked.told.animal
                or named_again(line)
                or (asked.unclear_animal.words if asked.unclear_animal else None)
            )
        case "lid":
            return filled("plan", asked).get("lid") or _in_words("screen", asked)
        case "screen":
            return _in_words("screen", asked)
        case "reflector":
            return _mirror(asked)
        case "lamp":
            return (
                asked.told.uv_lamp
                or lamp_told(asked.words)
                or (asked.lamps[0] if asked.lamps else None)
            )
        case "measured":
            return filled("temps", asked).get("measured")
        case "state":
            return states_now(asked)
    return None


def _degrees(asked: Asked) -> str | None:
    """Return the last temperature of a line as it was typed, with its unit if it has one."""
    found = [(n, unit) for n, unit in _DEGREES.findall(asked.said) if n]
    if not found:
        return None
    with_unit = [row for row in found if row[1]]
    number, unit = (with_unit or found)[-1]
    text = number.replace(",", ".")
    return f"{text} {unit[0].upper()}" if unit else text


def _bare(line: str) -> float:
    found = _BARE.findall(line)
    return float(found[-1].replace(",", ".")) if found else 0.0


def _distance(
    line: str, dialogue: Dialogue, told: Mapping[str, object], preferences: Preferences
) -> Measure | str | None:
    if length := length_told(line):
        return length
    if feet := _FEET.search(line):
        return read_length("1.5 ft" if feet["half"] else "1 ft")
    place = told.get("distance") or dialogue.known.get("distance")
    unit = unit_of(place) or dialogue.units or preferences.bare or Units.IN
    number = f"{_bare(line):g}"
    if unit is Units.IN and not is_distance(number, unit):
        return None
    return read_length(number, unit) if is_distance(number, unit) else None


def _in_words(option: str, asked: Asked) -> object | None:
    heard = filled("distance", asked).get(option)
    typed_so = dict(told_in_words(asked.said, asked, (option,)))
    told = asked.told.screen if option == "screen" else None
    return (told.value if told else None) or typed_so.get(option) or (heard if told else None)


def _mirror(asked: Asked) -> object | None:
    if told := asked.told.reflector:
        return told.value
    if _NO_MIRROR.search(asked.said):
        return Fixture.PLAIN
    return Fixture.POLISHED if _MIRROR.search(asked.said) else None
