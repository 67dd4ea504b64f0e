"""The question that a line is for by what it tells alone, whatever was asked before it."""

import re

from bot.dialogue.another import OF_UV
from bot.dialogue.bare import age_told, distance_alone, is_distance, only_number
from bot.dialogue.figures import PLACES, bare_degrees, length_told
from bot.dialogue.heat_told import OF_THE_AIR, OF_THE_ROOM
from bot.dialogue.phrases import names_a_season
from bot.dialogue.places import place_named
from bot.dialogue.told import part_told, told_of_set_up
from bot.preferences import Context
from bot.queries.question import Question
from bot.queries.setup import AskQuery
from bot.routes.routing import asked_in

__all__ = ["by_facts"]

_OF_A_TUBE = ("guide", "distance", "uvi", "tube", "decline", "meter")
_OF_HEAT = ("temps", "basking", "watts", "plan", "surface", "air")
_OF_A_HEAT_LAMP = re.compile(
    r"\b(?:(?:heat )?lamp|bulb|spot|halogen|dome|lampe|strahler|birne)\b"
    r"(?!.*\b(?:uvb?|tube|t5|röhre)\b)"
)
_FALLS = re.compile(
    r"\b(?:goes|gets|drops?|falls?|sinks|dips|geht|wird|fällt|sinkt)"
    r"(?: (?:down|as low|low|runter|bis|it))*(?: (?:to|as|auf|zu|about))* \d"
)
_COLDEST_F, _WARMEST_C, _WARMEST_F = 34.0, 22.0, 72.0
_OF_UV_WORDS = re.compile(r"\b(?:uv\w*|tube|t5|t8|röhre)\b")
# What it counts was not asked for, so it is nothing yet.
_ONLY_A_NUMBER = re.compile(r"^\W*\d+(?:[.,]\d+)?\W*$")


def by_facts(
    line: str, context: Context, *, place: object = None, before: str = ""
) -> Question | None:
    """Return the question that what a line tells is for, where it asks none: UV, or warmth.

    ``place`` is how far away a tube was told to be: a bare number that can be so is that.
    ``before`` is the question before: what the age of a lamp is told after it, is asked of it.
    """
    asked = asked_in(AskQuery(question=line), context)
    if before in _OF_A_TUBE and (age := age_told(line, context.day)):
        return Question("decline", {"age": age})
    if asked.readings and not asked.warmth:
        return Question("meter", {"readings": asked.readings, **_of_animal(line, context)})
    is_of_heat = before == "lamp" and not asked.uv and not _OF_UV_WORDS.search(line.lower())
    if is_of_heat and (far := length_told(line)):
        return Question("watts", {"distance": far})
    if before in _OF_HEAT and (far := length_told(line)) and _OF_A_HEAT_LAMP.search(line.lower()):
        return Question("watts" if before == "plan" else "basking", {"distance": far})
    warm = dict(part_told("temps", asked))
    night = dict(part_told("night", asked))
    if "room" in night and not warm.keys() & PLACES and OF_THE_ROOM.search(line.lower()):
        return Question("night", night)
    cold = only_number(line) if _FALLS.search(line.lower()) and before not in OF_UV else ""
    if cold and _is_of_a_night(cold) and place_named(line) in (None, "night"):
        return Question("night", {"room": cold})
    if "room" in warm and not asked.warmth:
        return Question("night", {"room": warm["room"]})
    if before in OF_UV and (far := distance_alone(line, place)) and not asked.warmth:
        return Question("uvi", {**told_of_set_up(line, context), "distance": far})
    if bare := "" if asked.warmth or asked.degrees or "room" in warm else bare_degrees(line):
        if before == "hours" and place_named(line) is None:
            return None
        return _of_a_bare_number(bare, warm, place, line, context)
    if asked.warmth:
        return Question("temps", warm)
    if asked.degrees and "room" not in warm:
        return Question("temps", {**warm, place_named(line) or "basking": asked.degrees})
    told = told_of_set_up(line, context)
    length = length_told(line)
    if length and not told.keys() & {"distance", "length"}:
        told["distance"] = length
    if "distance" in told:
        return Question("uvi", told)
    told_of_uv = told.keys() & {"tube", "reflector", "screen", "lamp"}
    return Question("distance", told) if told_of_uv else None


def _of_a_bare_number(
    bare: str, warm: dict[str, object], place: object, line: str, context: Context
) -> Question | None:
    """Return the question of a bare number: of a place that is named, of a tube's, or of a room."""
    named = place_named(line)
    if named is None and is_distance(bare, place) and not names_a_season(line):
        return Question("uvi", {**told_of_set_up(line, context), "distance": bare})
    if named is None and (names_a_season(line) or OF_THE_AIR.search(line.lower())):
        return Question("night", {"room": bare})
    if _ONLY_A_NUMBER.match(line):
        return None
    return Question("temps", {**warm, named or "basking": bare})


def _is_of_a_night(bare: str) -> bool:
    """Whether a number can be how cold a room gets."""
    number = float(bare)
    return number <= _WARMEST_C or _COLDEST_F <= number <= _WARMEST_F


def _of_animal(line: str, context: Context) -> dict[str, object]:
    told = told_of_set_up(line, context)
    return {"animal": told["animal"]} if "animal" in told else {}
