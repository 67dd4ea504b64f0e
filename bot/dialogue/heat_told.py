"""A reading where a room was spoken of, and a wish for another basking temperature."""

import re
from collections.abc import Mapping

from bot.dialogue.bare import is_distance, only_number
from bot.dialogue.figures import bare_degrees
from bot.dialogue.phrases import names_a_season
from bot.dialogue.places import place_named
from bot.queries.question import Question
from bot.queries.typed import typed
from bot.routes.asked import Asked

__all__ = ["OF_THE_AIR", "OF_THE_ROOM", "doubted_there", "read_there", "wished_for"]

_WISHES = re.compile(
    r"^\W*(?:(?:i|but|and|we|ich|so) )*(?:want|need|wanted|aim(?:ing)? (?:for|at)|target|would like"
    r"|my goal is|goal|will|möchte|ziel)\b"
)
_DOUBTS = re.compile(
    r"\b(?:too|to|zu) (?:hot|cold|warm|cool|high|low|much|heiß|kalt|kühl|viel|hoch|wenig)\b"
    r"|\b(?:ok\w*|fine|alright|safe|bad|good|enough|right|dangerous|passt|gut|schlimm|in ordnung)\b"
)
_OK = re.compile(r"^\W*(?:ok\w*|right|good|fine|alright|gut)\b(?![^,]*\?)")
_NEEDED = {"night": "room", "basking": "basking", "cool": "cool", "warm": "warm", "water": "water"}
# No room is warmer, or has a number between.
_HOTTEST_ROOM_C, _COLDEST_ROOM, _HOTTEST_ROOM = 36.0, 50.0, 94.0
# Told of all of the box, it is no basking spot.
OF_THE_AIR = re.compile(
    r"\bin (?:there|(?:the|his|her|its|my) (?:tank|viv\w*|box|cage|enclosure))\b|\binside\b"
    r"|\b(?:da drin|drinnen)\b"
)
OF_THE_ROOM = re.compile(
    r"\b(?:room|house|bedroom|flat|apartment|kitchen|basement|zimmer|wohnung|raum)\b"
)


def wished_for(given: Mapping[str, object], line: str) -> Question | None:
    """Return how a basking spot comes to what a line wishes for, where its reading was told."""
    number = only_number(line)
    if not number or not _WISHES.match(line.lower()) or "basking" not in given:
        return None
    told = {"surface": given["basking"], "want": number, "animal": given.get("animal")}
    return Question("basking", {option: value for option, value in told.items() if value})


def doubted_there(
    before: Question, line: str, asked: Asked, known: Mapping[str, object]
) -> Question | None:
    """Return the question of a temperature that is doubted where warmth was spoken of.

    Its place is the one that was spoken of; None where a line names one, or none was.
    """
    number = asked.degrees or bare_degrees(line)
    place = _spoken_of(before)
    of_needs = before.command == "needs" and bool(only_number(line))
    doubts = of_needs or _DOUBTS.search(_OK.sub("", line.lower()))
    if not number or not place or not doubts:
        return None
    if place_named(line) or asked.uv or asked.at_a_distance:
        return None
    animal = {"animal": known["animal"]} if "animal" in known else {}
    return Question("night" if place == "room" else "temps", {**animal, place: number})


def _spoken_of(before: Question) -> str:
    """Return the place that a question before is about, by the option of a temperature there."""
    if before.command in ("watts", "basking", "surface"):
        return "basking"
    if before.command == "night":
        return "room"
    return (
        _NEEDED.get(typed(before.values.get("about", "")), "") if before.command == "needs" else ""
    )


def read_there(line: str, asked: Asked, place: object) -> dict[str, object]:
    """Return the reading of a basking spot that a line tells, where a room was spoken of."""
    if OF_THE_ROOM.search(line.lower()) or names_a_season(line):
        return {}
    if is_distance(only_number(line), place):
        return {}
    number = str(asked.degrees or bare_degrees(line))
    found = re.match(r"\d+(?:\.\d+)?", number)
    degrees = float(found[0]) if found else 0.0
    # Between both there is a room in neither unit.
    place = place_named(line)
    if degrees and place in ("basking", "cool", "water"):
        return {place: number}
    is_room = degrees <= _HOTTEST_ROOM_C or _COLDEST_ROOM <= degrees <= _HOTTEST_ROOM
    return {} if is_room else {place or "basking": number}
